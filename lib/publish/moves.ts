import { longestRise } from '@/lib/procedure/rise'

/** A step to be moved, and its place counted from 1. */
export type Move = { readonly id: string; readonly place: number }

/**
 * The fewest moves that bring steps from one order into another.
 *
 * @param now ids in the order they have; those that are not wanted stay where they are
 * @param wanted ids in the order they should have; those that are not there now are passed over
 * @returns moves to be made one after the other, each to a place counted from 1
 */
export const moves = (now: readonly string[], wanted: readonly string[]): readonly Move[] => {
  const there = new Set(now)
  const target = wanted.filter(id => there.has(id))
  const rank = new Map(now.map((id, i) => [id, i]))
  const stay = longestRise(target.map(id => rank.get(id) ?? 0))
  const order = [...now]
  const made: Move[] = []
  for (const [i, id] of target.entries()) {
    if (stay.has(i)) continue
    const previous = target[i - 1]
    order.splice(order.indexOf(id), 1)
    const at = previous === undefined ? 0 : order.indexOf(previous) + 1
    order.splice(at, 0, id)
    made.push({ id, place: at + 1 })
  }
  return made
}
