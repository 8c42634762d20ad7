import { type Scorer, toPartsIndex } from '@/lib/trade/model'
import type { Reading } from './feature'
import { eachNgram } from './ngram-feature'
import { placeFeatures } from './place-feature'

/** Where a model has a feature: of the sentence itself, of the one before, of the one after; -1 where it has not. */
type Sides = { own: number; before: number; after: number }

/** Features by index instead of by name: each name is looked up once, whichever sentence it is told of. */
export type FeatureIndex = {
  /** @returns indices that hold for sentence i, given its neighbours. */
  readonly at: (
    readings: readonly Reading[],
    i: number,
    limits: ReadonlyMap<number, readonly string[]>,
  ) => readonly number[]
}

/** Builds the index of a model. */
export const toFeatureIndex = <Outcome extends string>(scorer: Scorer<Outcome>): FeatureIndex => {
  const sides = new Map<string, Sides>()
  const sidesOf = (name: string): Sides => {
    const known = sides.get(name)
    if (known !== undefined) return known
    const fresh: Sides = { own: -1, before: -1, after: -1 }
    sides.set(name, fresh)
    return fresh
  }
  scorer.names.forEach((name, i) => {
    if (name.startsWith('before:')) sidesOf(name.slice(7)).before = i
    else if (name.startsWith('after:')) sidesOf(name.slice(6)).after = i
    sidesOf(name).own = i
  })
  const cache = new WeakMap<Reading, readonly Sides[]>()
  const sidesIn = (reading: Reading | undefined): readonly Sides[] => {
    if (reading === undefined) return []
    const known = cache.get(reading)
    if (known !== undefined) return known
    const found: Sides[] = []
    for (const name of reading.own) {
      const one = sides.get(name)
      if (one !== undefined) found.push(one)
    }
    cache.set(reading, found)
    return found
  }
  const grams = toPartsIndex(scorer.names.map(name => (/^(?:w|word):/.test(name) ? name : '')))
  // At which turn a feature was last told, so that each is told once a sentence.
  const toldAt = new Int32Array(scorer.names.length)
  let turn = 0
  return {
    at: (readings, i, limits) => {
      const indices: number[] = []
      turn++
      eachNgram(readings[i]?.tokens ?? [], grams.partOf, (prefix, a, b, c) => {
        const index = grams.at(prefix, a, b, c)
        if (index < 0 || toldAt[index] === turn) return
        toldAt[index] = turn
        indices.push(index)
      })
      for (const { own } of sidesIn(readings[i])) if (own >= 0) indices.push(own)
      for (const { before } of sidesIn(readings[i - 1])) if (before >= 0) indices.push(before)
      for (const { after } of sidesIn(readings[i + 1])) if (after >= 0) indices.push(after)
      for (const name of placeFeatures(readings, i, limits)) {
        const index = scorer.indexOf(name)
        if (index !== undefined) indices.push(index)
      }
      return indices
    },
  }
}
