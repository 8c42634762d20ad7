import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import type { LimitFound } from './spec-feature'

/** How many sentences away another limit still belongs to the same matter. */
const NEAR = 2

const same = (a: Quantity, b: Quantity): boolean =>
  a.unit === b.unit && a.low === b.low && a.high === b.high && a.nominal === b.nominal

const figureOf = ({ low, high, nominal }: Quantity): number => nominal ?? high ?? low ?? 0

/** Whether the figure of one lies within the limits of the other. */
const lies = (a: Quantity, { low, high, nominal, unit }: Quantity): boolean =>
  a.unit === unit &&
  a.nominal !== undefined &&
  a.low === undefined &&
  (low !== undefined || high !== undefined) &&
  nominal !== a.nominal &&
  a.nominal >= (low ?? Number.NEGATIVE_INFINITY) &&
  a.nominal <= (high ?? Number.POSITIVE_INFINITY)

const isClose = (a: Quantity, b: Quantity): boolean => {
  const [x, y] = [figureOf(a), figureOf(b)]
  return a.unit === b.unit && x !== 0 && y !== 0 && x < 3 * y && y < 3 * x
}

const gapOf = (count: number): string => (count === 0 ? 'here' : count === 1 ? 'next' : count <= 3 ? 'near' : 'far')

/** Names of what a limit is to the one beside it, from `side`. */
const toNeighbour = (own: LimitFound, other: LimitFound | undefined, side: string): readonly string[] => {
  if (other === undefined) return [`${side}:none`]
  const count = Math.abs(own.sentence - other.sentence)
  const names = [`${side}:${gapOf(count)}`]
  if (count > NEAR) return names
  const [a, b] = [own.quantity, other.quantity]
  const where = count === 0 ? 'here' : 'near'
  if (same(a, b)) names.push(`${side}-same:${where}`)
  else if (lies(a, b)) names.push(`${side}-holds-it:${where}`)
  else if (lies(b, a)) names.push(`${side}-held:${where}`)
  else if (own.dimension === other.dimension)
    names.push(`${side}-${isClose(a, b) ? 'close' : 'alike'}:${where}`, `${own.shape}+${side}-alike:${where}`)
  else names.push(`${side}-other:${where}`)
  return names
}

/**
 * What each limit is to the others of its talk: said again, held by a range beside it, one of several.
 *
 * @param found limits in the order of the talk
 * @returns names of features, one list a limit
 */
export const relationsOf = (found: readonly LimitFound[]): readonly (readonly string[])[] => {
  const figures = found.filter(one => hasNumber(one.quantity))
  const byValue = new Map<string, LimitFound[]>()
  const keyOf = ({ quantity: { low, high, nominal, unit } }: LimitFound) => `${low} ${high} ${nominal} ${unit}`
  for (const one of figures) byValue.set(keyOf(one), [...(byValue.get(keyOf(one)) ?? []), one])
  const places = new Map(figures.map((one, i) => [one, i]))
  return found.map(one => {
    const i = places.get(one)
    if (i === undefined) return []
    const alike = byValue.get(keyOf(one)) ?? []
    const turn = alike.indexOf(one)
    return [
      ...toNeighbour(one, figures[i - 1], 'before'),
      ...toNeighbour(one, figures[i + 1], 'after'),
      ...(turn > 0 ? ['said-before', `said-before:${one.shape}`] : []),
      ...(turn < alike.length - 1 ? ['said-later', `said-later:${one.shape}`] : []),
    ]
  })
}
