import type { Quantity } from '@/lib/quantity/quantity'
import type { UnitChoice } from './publication'
import { toLine } from './text'

// Until lib/quantity/format.ts is there.
const formatQuantity = ({ low, high, nominal, unit }: Quantity): string => {
  const with_ = (n: string) => (unit === undefined || unit === '' ? n : `${n} ${unit}`)
  if (low !== undefined && high !== undefined) return with_(`${low} to ${high}`)
  if (low !== undefined) return with_(`at least ${low}`)
  if (high !== undefined) return with_(`at most ${high}`)
  return nominal === undefined ? '' : with_(`${nominal}`)
}

/**
 * A value for people, in the units chosen. Every publication writes values with this function and no other.
 *
 * @param equivalent a second value stated as equal to the first; shown in brackets where values are shown as said
 * @returns empty where the quantity carries no number
 */
export const formatValue = (quantity: Quantity, equivalent: Quantity | undefined, _units: UnitChoice): string => {
  const first = toLine(formatQuantity(quantity))
  const second = equivalent === undefined ? '' : toLine(formatQuantity(equivalent))
  return second === '' || first === '' ? first : `${first} (${second})`
}

/** @returns the quantity a person wrote in a sheet, its equivalent in brackets; undefined where there is none to read. */
export const parseValue = (_text: string): { quantity: Quantity; equivalent?: Quantity } | undefined => undefined
