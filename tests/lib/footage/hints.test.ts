import { expect, test } from 'vitest'
import { hintsOf } from '@/lib/footage/hints'
import { readTranscript } from '@/lib/transcript/read'
import { toSentences } from '@/lib/transcript/sentence'

const hintsIn = (text: string) => {
  const read = readTranscript(new TextEncoder().encode(text), 'talk.txt')
  if (!read.ok) throw new Error(read.problems[0]?.message)
  const sentences = toSentences(read.value.transcript)
  return sentences.map(({ text }, i) => [text, hintsOf(read.value.transcript, sentences)?.[i]])
}

test('[F16] with one time a paragraph each sentence is looked for between its own and the next one', () => {
  const text = '[0:05] Take the lid off. Put it on the bench.\n\n[1:10] Now look inside.\n\n[2:30] Close it again.\n'
  expect(hintsIn(text)).toEqual([
    ['Take the lid off.', { start: 5, end: 70 }],
    ['Put it on the bench.', { start: 5, end: 70 }],
    ['Now look inside.', { start: 70, end: 150 }],
    ['Close it again.', { start: 150, end: expect.any(Number) }],
  ])
})

test('[F16] a text without times gives no hints', () => {
  expect(hintsIn('Take the lid off. Put it on the bench.')).toEqual([
    ['Take the lid off.', undefined],
    ['Put it on the bench.', undefined],
  ])
})
