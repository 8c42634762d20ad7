import type { Quantity } from '@/lib/quantity/quantity'
import { convert } from '@/lib/quantity/units'

/** Share by which two figures of one value may differ: rounding from unit to unit. */
const NEAR = 0.005

const inUnit = (value: number | undefined, from: string, to: string): number | undefined => {
  if (value === undefined) return undefined
  const converted = convert(value, from, to)
  return converted.ok ? converted.value : undefined
}

const areNear = (a: number, b: number): boolean => Math.abs(a - b) <= NEAR * Math.max(Math.abs(a), Math.abs(b))

/** Whether two values of one dimension can't both hold: other limits, or a value outside the other's limits. */
export const disagree = (a: Quantity, b: Quantity): boolean => {
  const unit = a.unit ?? ''
  const from = b.unit ?? ''
  const of = (value: number | undefined) => inUnit(value, from, unit)
  const [low, high, nominal] = [of(b.low), of(b.high), of(b.nominal)]
  for (const [mine, theirs] of [
    [a.low, low],
    [a.high, high],
    [a.nominal, nominal],
  ] as const)
    if (mine !== undefined && theirs !== undefined && !areNear(mine, theirs)) return true
  const outside = (value: number | undefined, least: number | undefined, most: number | undefined) =>
    value !== undefined &&
    ((least !== undefined && value < least * (1 - NEAR)) || (most !== undefined && value > most * (1 + NEAR)))
  return outside(a.nominal, low, high) || outside(nominal, a.low, a.high)
}
