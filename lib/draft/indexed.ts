import { toPartsIndex } from '@/lib/trade/model'
import type { Reading } from './feature'
import { eachNgram } from './ngram-feature'
import { placeFeatures } from './place-feature'

/** Features by index instead of by name. */
export type FeatureIndex = {
  /** @returns indices that hold for sentence i */
  readonly at: (
    readings: readonly Reading[],
    i: number,
    limits: ReadonlyMap<number, readonly string[]>,
  ) => readonly number[]
}

/** Builds the index of a model's features. */
export const toFeatureIndex = (names: readonly string[]): FeatureIndex => {
  const indexOf = new Map(names.map((name, i) => [name, i]))
  const grams = toPartsIndex(names.map(name => (/^(?:w|word):/.test(name) ? name : '')))
  // At which turn a feature was last told, so that each is told once a sentence.
  const toldAt = new Int32Array(names.length)
  let turn = 0
  return {
    at: (readings, i, limits) => {
      const indices: number[] = []
      turn++
      const tell = (index: number | undefined): void => {
        if (index === undefined || index < 0 || toldAt[index] === turn) return
        toldAt[index] = turn
        indices.push(index)
      }
      eachNgram(readings[i]?.tokens ?? [], grams.partOf, (prefix, a, b, c) => tell(grams.at(prefix, a, b, c)))
      for (const name of readings[i]?.own ?? []) tell(indexOf.get(name))
      for (const name of placeFeatures(readings, i, limits)) tell(indexOf.get(name))
      return indices
    },
  }
}
