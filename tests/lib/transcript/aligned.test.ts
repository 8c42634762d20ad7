import { expect, test } from 'vitest'
import type { Transcript } from '@/lib/procedure/recording'
import { withFoundTimes } from '@/lib/transcript/aligned'
import { withRoughTimes } from '@/lib/transcript/rough'
import { toSentences } from '@/lib/transcript/sentence'

const untimed: Transcript = {
  name: 'a.txt',
  form: 'untimed',
  cues: ['Pull the cover off. Mind the spring.', 'Wipe the seat.'].map(text => ({ start: 0, end: 0, text })),
}

test('[T19] found times go to cues and words, and the sentences are timed by them', () => {
  const sentences = toSentences(untimed)
  const starts = [10, 14, 20]
  const words = sentences.flatMap((sentence, line) =>
    sentence.text
      .split(' ')
      .map((text, i) => ({ line, text, start: (starts[line] ?? 0) + i / 2, end: (starts[line] ?? 0) + i / 2 + 0.4 })),
  )
  const lines = sentences.map((_, line) => ({ line, start: starts[line] ?? 0, end: (starts[line] ?? 0) + 2 }))
  const timed = withFoundTimes(untimed, sentences, { lines, words })
  expect(timed.cues.map(({ start, end, text }) => [start, end, text])).toEqual([
    [10, 15.4, 'Pull the cover off. Mind the spring.'],
    [20, 21.4, 'Wipe the seat.'],
  ])
  expect(toSentences(timed).map(({ start, text }) => [start, text])).toEqual([
    [10, 'Pull the cover off.'],
    [14, 'Mind the spring.'],
    [20, 'Wipe the seat.'],
  ])
})

test('[T19] a line that was not heard keeps its place between its neighbours', () => {
  const sentences = toSentences(untimed)
  const lines = sentences.map((_, line) => ({ line, start: 10 + line * 5, end: 12 + line * 5 }))
  const timed = withFoundTimes(untimed, sentences, { lines, words: [] })
  expect(timed.cues.map(({ start, end }) => [start, end])).toEqual([
    [10, 17],
    [20, 22],
  ])
})

test('[T20] rough times go by the number of words, one cue after the other', () => {
  expect(withRoughTimes(untimed).cues.map(({ start, end }) => [start, end])).toEqual([
    [0, 2.8],
    [2.8, 4],
  ])
  expect(withRoughTimes(untimed).form).toBe('timed-text')
})
