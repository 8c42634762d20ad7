import type { Mark } from '@/lib/procedure/mark'
import type { Sentence } from '@/lib/procedure/recording'
import { firstIndex } from '@/lib/procedure/search'
import { readNumeral } from '@/lib/quantity/numeral'
import { type Reading, readQuantities } from '@/lib/quantity/read'
import { toTokens } from '@/lib/quantity/tokens'
import { onceForText } from './memo'

/** @returns the limits read in a text, once a text. */
export const readingsIn = onceForText((text: string): readonly Reading[] => readQuantities(text))

/** @returns every number of a text, in figures or words, units left aside. */
export const numbersIn = onceForText((text: string): readonly number[] => {
  const tokens = toTokens(text)
  const numbers = new Set<number>()
  for (let i = 0; i < tokens.length; i++) {
    const numeral = readNumeral(tokens, i)
    if (numeral === undefined) continue
    numbers.add(numeral.value)
  }
  for (const [figure] of text.replaceAll(/(\d),(\d{3})\b/g, '$1$2').matchAll(/\d+(?:\.\d+)?/g))
    numbers.add(Number(figure))
  for (const [, up, down] of text.matchAll(/(\d+)\/(\d+)/g)) numbers.add(Number(up) / Number(down))
  return [...numbers]
})

/** @returns index of the first sentence that ends after a moment; the number of sentences where none does. */
export const sentenceAt = (sentences: readonly Sentence[], seconds: number): number =>
  firstIndex(sentences.length, i => (sentences[i]?.end ?? 0) > seconds)

/** @returns what was said over a mark's span, with so many sentences before and after. */
export const wordsAround = (sentences: readonly Sentence[], mark: Mark, before: number, after: number): string => {
  const from = Math.max(0, sentenceAt(sentences, mark.start) - before)
  let to = sentenceAt(sentences, mark.start)
  while (to < sentences.length && (sentences[to]?.start ?? 0) < mark.end) to++
  return sentences
    .slice(from, to + after)
    .map(({ text }) => text)
    .join(' ')
}
