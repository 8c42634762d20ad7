import { firstIndex } from './search'

/** @returns the longest run of numbers of which none is less than the one before it, as a set of their indices (patience sorting). */
export const longestRise = (numbers: readonly number[]): ReadonlySet<number> => {
  // ends[n]: where the run of n + 1 numbers ends that ends lowest; before[i]: what precedes i in its run.
  const ends: number[] = []
  const before: (number | undefined)[] = []
  for (const [i, n] of numbers.entries()) {
    const low = firstIndex(ends.length, at => (numbers[ends[at] ?? 0] ?? 0) > n)
    before[i] = low === 0 ? undefined : ends[low - 1]
    ends[low] = i
  }
  const kept = new Set<number>()
  for (let i = ends.at(-1); i !== undefined; i = before[i]) kept.add(i)
  return kept
}
