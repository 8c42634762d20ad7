import { formatQuantity } from './format'
import type { Quantity } from './quantity'
import { clean } from './rounding'
import { convert } from './units'

/** Two values said to be the same. */
export type EquivalentCheck = {
  readonly agrees: boolean
  /** Largest difference between the two, per cent of the first. */
  readonly difference: number
  /** The first value in the unit of the second, and what was said, for people. */
  readonly text: string
}

/** Noughts at the end of a whole number may have been rounded; at most to this share of the value. */
const ROUNDED = 0.025

/** How far a said value may be from the true one, from its last figure: half a step of it. */
const slackOf = (value: number): number => {
  const text = String(Math.abs(value))
  const decimals = text.split('.')[1]?.length ?? 0
  if (decimals > 0) return 0.5 * 10 ** -decimals
  const noughts = /0*$/.exec(text)?.[0].length ?? 0
  return noughts === 0 ? 0.5 : Math.max(0.5, Math.min(0.5 * 10 ** noughts, ROUNDED * Math.abs(value)))
}

const FIELDS = ['low', 'nominal', 'high'] as const

/**
 * Whether two stated values agree within the rounding that their own digits allow.
 *
 * @returns undefined where the units do not compare or no limit was given for both
 */
export const compareEquivalents = (first: Quantity, second: Quantity): EquivalentCheck | undefined => {
  const { unit } = first
  const other = second.unit
  if (unit === undefined || other === undefined) return undefined
  const scale = (value: number): number | undefined => {
    const converted = convert(value, unit, other)
    return converted.ok ? clean(converted.value) : undefined
  }
  let agrees = true
  let difference = 0
  let isCompared = false
  for (const field of FIELDS) {
    const [a, b] = [first[field], second[field]]
    if (a === undefined || b === undefined) continue
    const [same, above] = [scale(a), scale(a + slackOf(a))]
    if (same === undefined || above === undefined) return undefined
    isCompared = true
    const slack = Math.abs(above - same) + slackOf(b)
    if (Math.abs(same - b) > slack * (1 + 1e-9)) agrees = false
    difference = Math.max(difference, same === 0 ? Math.abs(b) * 100 : (Math.abs(same - b) / Math.abs(same)) * 100)
  }
  if (!isCompared) return undefined
  const exact = Object.fromEntries(
    FIELDS.flatMap(field => {
      const value = first[field]
      const converted = value === undefined ? undefined : scale(value)
      return converted === undefined ? [] : [[field, Number(converted.toPrecision(4))]]
    }),
  )
  const text = `${formatQuantity(first)} is ${formatQuantity({ ...exact, unit: other })}; said was ${formatQuantity(second)}, ${Number(difference.toPrecision(2))} % off.`
  return { agrees, difference, text }
}
