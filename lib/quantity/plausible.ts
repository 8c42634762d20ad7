import { formatQuantity } from './format'
import { isAbout, PLAUSIBLE } from './plausible-table'
import type { Quantity } from './quantity'
import { convert, unitOf } from './units'

/** A magnitude that can hardly be meant. */
export type Implausible = {
  /** What is usual, in the unit of the table. */
  readonly usual: Quantity
  /** The thing the usual values are for, such as `tyre pressure`. */
  readonly about: string
  /** For people: what was said, what is usual, and what to look at. */
  readonly text: string
}

/** Not the value of the thing itself: how much two of them differ, where or when it is measured. */
const DERIVED =
  /\b(?:difference|drop|error|deviation|ripple|imbalance|height|travel|length|distance|adjustment|hysteresis)\b/i

/** How far outside the usual a value must lie, as a factor. */
const FACTOR = 1.5

/**
 * Whether a value lies far outside what is usual for its kind of quantity and for the thing it is said of.
 *
 * @param about the words around the value: the spec's name, the sentence
 * @returns undefined where nothing is wrong or nothing is known. Temperatures compare on the scale of the table, without factor.
 * @source plausible-table.ts: common practice, no source
 */
export const checkPlausible = (quantity: Quantity, about: string): Implausible | undefined => {
  const kind = unitOf(quantity.unit ?? '')?.kind
  if (quantity.unit === undefined || kind === undefined) return undefined
  const unit = quantity.unit
  for (const row of PLAUSIBLE) {
    if (row.kind !== kind || !isAbout(row, about) || (row.words.length > 0 && DERIVED.test(about))) continue
    const values = [quantity.low, quantity.nominal, quantity.high].flatMap(value => {
      const converted = value === undefined ? undefined : convert(value, unit, row.unit)
      return converted?.ok === true ? [converted.value] : []
    })
    const slack = kind === 'temperature' ? 1 : FACTOR
    const isHigh = values.some(value => value > row.high * slack)
    const isLow = values.some(value => value > 0 && value < row.low / slack)
    if (values.length === 0 || !(isHigh || isLow)) return undefined
    const usual = { low: row.low, high: row.high, unit: row.unit }
    const word = isHigh ? 'high' : 'low'
    return {
      usual,
      about: row.about,
      text: `${formatQuantity(quantity)} is far too ${word} for ${row.about}, which usually lies between ${formatQuantity(usual).replace(' to ', ' and ')}: check the number, the decimal point and the unit.`,
    }
  }
  return undefined
}
