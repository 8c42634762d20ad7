import { expect, test } from 'vitest'
import { isUntimed, wordsBySaid } from '@/lib/transcript/said'
import { toSentences } from '@/lib/transcript/sentence'
import { textOfWords, toTalk } from '@/lib/transcript/talk'
import { step, tool } from '../../builders'
import { readText } from '../../transcripts'

const talkOf = (text: string) => toTalk(toSentences(readText(text).transcript))
const LINES =
  'Slide the pads out of the caliper.\nWipe it with a rag.\nCallipers are heavy: mind the caliper.\nWipe it with a rag.\n'

test('[T21] marks of a text without times stand at their words', () => {
  const talk = talkOf(LINES)
  const marks = [
    step(0, 0, 'Wipe it', { said: 'Wipe it with a rag.' }),
    step(0, 0, 'Wipe it again', { said: 'wipe it  with a rag.' }),
    tool(0, 0, 'rag', { said: 'rag' }),
    tool(0, 0, 'per', { said: 'per' }),
    tool(0, 0, 'remedy', { said: '' }),
  ]
  const places = wordsBySaid(talk, marks)
  expect(isUntimed(talk)).toBe(true)
  expect(marks.map(({ id }) => places.get(id)).map(words => words && textOfWords(talk, words))).toEqual([
    'Wipe it with a rag.',
    'Wipe it with a rag.',
    'rag.',
    undefined,
    undefined,
  ])
  expect(places.get(marks[1]?.id ?? '')?.from).toBeGreaterThan(places.get(marks[0]?.id ?? '')?.to ?? 99)
})

test('[T21] a talk with times is not taken for one without', () => {
  expect(isUntimed(talkOf('WEBVTT\n\n00:00.000 --> 00:01.000\nLift it.\n'))).toBe(false)
})
