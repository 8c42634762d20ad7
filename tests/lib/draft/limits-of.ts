import { readSentence } from '@/lib/draft/feature'
import { findLimits } from '@/lib/draft/spec-feature'

/** Limits of a talk without the words they were read from, those of its last sentence only. */
export const limitsOf = (talk: readonly string[]) => {
  const sentences = talk.map((text, i) => ({ text, start: i * 4, end: i * 4 + 4, words: [] }))
  return findLimits(
    sentences as never,
    sentences.map(({ text }) => readSentence(text)),
  )
    .filter(({ sentence }) => sentence === talk.length - 1)
    .map(({ quantity }) => quantity)
}
