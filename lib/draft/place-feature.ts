import type { Reading } from './feature'
import { ngrams } from './ngram-feature'

/** What was read of limits in each sentence, for its features: shape and dimension. */
export type LimitNote = { readonly sentence: number; readonly shape: string; readonly dimension: string }

/** @returns feature names of the limits, by sentence. */
export const limitFeatures = (notes: readonly LimitNote[]): ReadonlyMap<number, readonly string[]> => {
  const found = new Map<number, string[]>()
  for (const { sentence, shape, dimension } of notes) {
    const list = found.get(sentence) ?? []
    list.push(`limit:${shape}`, `limit-of:${dimension}`, `limit:${shape}-of:${dimension}`, 'has-limit')
    found.set(sentence, list)
  }
  return found
}

const shares = (a: Reading | undefined, b: Reading | undefined): boolean => {
  if (a === undefined || b === undefined) return false
  for (const thing of a.things) if (b.things.has(thing)) return true
  return false
}

const WITH_LIMIT = /^(?:frame:[a-z]+|does:inspect|has:advice|question|acts:\d)$/

/** Fewer sentences than this are an excerpt, without a greeting and a farewell. */
const A_TALK = 20

/** Features of a sentence's place: its limits, what it shares with its neighbours, how far on it stands. */
export const placeFeatures = (
  readings: readonly Reading[],
  i: number,
  limits: ReadonlyMap<number, readonly string[]>,
): readonly string[] => {
  const here = readings[i]
  const own = limits.get(i) ?? []
  const found = [...own, 'bias']
  if (own.length > 0) for (const name of here?.own ?? []) if (WITH_LIMIT.test(name)) found.push(`limited+${name}`)
  if (limits.has(i - 1)) found.push('before:has-limit')
  if (limits.has(i + 1)) found.push('after:has-limit')
  if (shares(here, readings[i - 1])) found.push('shares:before')
  if (shares(here, readings[i - 2])) found.push('shares:before2')
  if (shares(here, readings[i + 1])) found.push('shares:after')
  const isTalk = readings.length >= A_TALK
  if (isTalk && i === 0) found.push('before:none')
  if (isTalk && i === readings.length - 1) found.push('after:none')
  const share = i / (readings.length - 1)
  const isMiddle = !isTalk || (share >= 0.08 && share <= 0.95)
  found.push(isMiddle ? 'at:middle' : share < 0.5 ? 'at:opening' : 'at:closing')
  return found
}

/** All features of a sentence by name: its own and its place's. For fitting; drafting goes by index. */
export const featuresAt = (
  readings: readonly Reading[],
  i: number,
  limits: ReadonlyMap<number, readonly string[]>,
): readonly string[] => [
  ...(readings[i]?.own ?? []),
  ...ngrams(readings[i]?.tokens ?? []),
  ...placeFeatures(readings, i, limits),
]
