import type { Quantity } from '@/lib/quantity/quantity'

/** Without the dust of binary fractions: 0.1 + 0.2 is 0.3. */
const round = (value: number): number => Number(value.toPrecision(12))

/** @returns a target with as much allowed either way of it */
export const aboutTarget = (nominal: number, by: number, unit: string | undefined): Quantity => ({
  low: round(nominal - by),
  high: round(nominal + by),
  nominal,
  ...(unit === undefined ? {} : { unit }),
})
