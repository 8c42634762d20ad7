import { formatQuantity, parseQuantity, toSystem } from '@/lib/quantity/format'
import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import { readQuantities } from '@/lib/quantity/read'
import type { UnitChoice } from './publication'
import { toLine } from './text'

const one = (quantity: Quantity): string => toLine(formatQuantity(quantity))

/** The stated equivalent, where the first value is in the other system and the equivalent already in this one. */
const statedIn = (
  quantity: Quantity,
  equivalent: Quantity | undefined,
  system: 'metric' | 'us',
): Quantity | undefined =>
  equivalent?.unit !== undefined &&
  hasNumber(equivalent) &&
  toSystem(quantity, system) !== undefined &&
  toSystem(equivalent, system) === undefined
    ? equivalent
    : undefined

/**
 * A value for people, in the units chosen. Every publication writes values with this function and no other.
 *
 * @param equivalent a second value stated as equal to the first: shown in brackets as said, taken instead of a conversion
 * @returns a line; empty where the quantity carries no number
 */
export const formatValue = (quantity: Quantity, equivalent: Quantity | undefined, units: UnitChoice): string => {
  const first = one(quantity)
  if (first === '') return ''
  if (units === 'metric' || units === 'us') {
    const stated = statedIn(quantity, equivalent, units)
    return stated === undefined ? toLine(formatQuantity(quantity, { system: units })) : one(stated)
  }
  const second = equivalent === undefined ? '' : one(equivalent)
  if (second !== '') return `${first} (${second})`
  return units === 'both' ? toLine(formatQuantity(quantity, { system: 'both' })) : first
}

/** Figures as written by us, or as a hand writes them, if the whole text is one limit. */
const read = (text: string): Quantity | undefined => {
  const exact = parseQuantity(text)
  if (exact !== undefined && hasNumber(exact)) return exact
  if (!/\d/.test(text)) return undefined
  const [reading, ...more] = readQuantities(text)
  const isWhole = reading !== undefined && reading.at === 0 && reading.to === text.length
  return isWhole && more.length === 0 && hasNumber(reading.quantity) ? reading.quantity : undefined
}

/** @returns the quantity a person wrote in a sheet, its equivalent in brackets; undefined where there is none to read. */
export const parseValue = (text: string): { quantity: Quantity; equivalent?: Quantity } | undefined => {
  const bracketed = /^(.*\S) \(([^()]*)\)$/.exec(text)
  const equivalent = bracketed === null ? undefined : read(bracketed[2] ?? '')
  const quantity = read(equivalent === undefined ? text : (bracketed?.[1] ?? ''))
  if (quantity === undefined) return undefined
  return equivalent === undefined ? { quantity } : { quantity, equivalent }
}
