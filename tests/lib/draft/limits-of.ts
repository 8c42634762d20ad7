import { readSentence } from '@/lib/draft/feature'
import { findLimits } from '@/lib/draft/spec-feature'
import { sameQuantity } from '@/scripts/fit-draft/same-quantity'

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

/** What a talk that counts in metric units, and one that counts in US ones, says before. */
export const [METRIC, US] = [
  'The grey one by the kerb, two metres out, takes a litre of oil.',
  'The gray one by the curb takes a gallon of gasoline, fifty psi, five inches deep.',
]

/** `low=3 high=4 mm` as a quantity. */
export const toQuantity = (said: string): Record<string, number | string> =>
  Object.fromEntries(
    said.split(' ').map(part => {
      const [name = '', value] = part.split('=')
      return value === undefined ? ['unit', name] : [name, Number(value)]
    }),
  )

/**
 * Of the limits wanted (`low=3 high=4 A ; nominal=5 mm`) those that the last sentence of a talk has not.
 *
 * @param said sentences split by ` // `, in a talk that counts in metric units, or in US ones behind `[us] `
 */
export const missingOf = (wanted: string, said: string): readonly string[] => {
  const parts = said.replace('[us] ', '').split(' // ')
  const found = limitsOf([said.startsWith('[us] ') ? US : METRIC, ...parts])
  return wanted.split(' ; ').filter(one => !found.some(quantity => sameQuantity(quantity, toQuantity(one))))
}
