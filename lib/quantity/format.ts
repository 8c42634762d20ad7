import { formatFigure, parseFigure } from './figures'
import type { Quantity } from './quantity'
import { clean } from './rounding'
import { toSystem } from './systems'
import { findUnit, sameCode, unitSymbol } from './units'

export { toSystem }

export type FormatOptions = {
  /** Which units to show; `both` puts the other ones in brackets. Without it, the unit of the quantity. */
  readonly system?: 'metric' | 'us' | 'both'
  /** Puts `about` before a value that was said so. */
  readonly isApproximate?: boolean
}

const TIGHT = new Set(['°', ':1'])

const withUnit = (figures: string, unit: string | undefined, value: number): string => {
  if (unit === undefined || unit === '') return figures
  const symbol = unitSymbol(unit, value)
  return TIGHT.has(symbol) ? `${figures}${symbol}` : `${figures} ${symbol}`
}

/** The tolerance either side, where both sides are the same to the last digit. */
const evenTolerance = (low: number, nominal: number, high: number): number | undefined => {
  const size = clean(high - nominal)
  return size > 0 && clean(nominal + size) === high && clean(nominal - size) === low ? size : undefined
}

const unevenTolerance = (low: number, nominal: number, high: number): readonly [number, number] | undefined => {
  const [plus, minus] = [clean(high - nominal), clean(nominal - low)]
  return plus >= 0 && minus >= 0 && clean(nominal + plus) === high && clean(nominal - minus) === low
    ? [plus, minus]
    : undefined
}

const formatOne = ({ low, high, nominal, unit }: Quantity): string => {
  const figure = (value: number): string => formatFigure(value, unit)
  if (low !== undefined && high !== undefined && nominal !== undefined) {
    const even = evenTolerance(low, nominal, high)
    if (even !== undefined) return withUnit(`${figure(nominal)} ± ${figure(even)}`, unit, nominal)
    const uneven = unevenTolerance(low, nominal, high)
    if (uneven !== undefined)
      return withUnit(`${figure(nominal)} +${figure(uneven[0])}/−${figure(uneven[1])}`, unit, nominal)
    return withUnit(`${figure(nominal)}, from ${figure(low)} to ${figure(high)}`, unit, high)
  }
  const aim = nominal === undefined ? '' : `${figure(nominal)}, `
  if (low !== undefined && high !== undefined) return withUnit(`${figure(low)} to ${figure(high)}`, unit, high)
  if (low !== undefined) return withUnit(`${aim}at least ${figure(low)}`, unit, low)
  if (high !== undefined) return withUnit(`${aim}at most ${figure(high)}`, unit, high)
  return nominal === undefined ? '' : withUnit(figure(nominal), unit, nominal)
}

/**
 * A quantity for people: `18 to 22 N·m`, `at most 5 thou`, `44 ± 3 kN`, `1/2 to 3/4 turn`, `18 +2/−0 N·m`.
 *
 * @returns empty where it carries no number; values as they are (only another system rounds, see toSystem)
 */
export const formatQuantity = (quantity: Quantity, { system, isApproximate = false }: FormatOptions = {}): string => {
  const shown = system === undefined || system === 'both' ? quantity : (toSystem(quantity, system) ?? quantity)
  const first = formatOne(shown)
  if (first === '') return ''
  const about = isApproximate && quantity.low === undefined && quantity.high === undefined ? `about ${first}` : first
  if (system !== 'both') return about
  const other = toSystem(quantity, 'metric') ?? toSystem(quantity, 'us')
  return other === undefined ? about : `${about} (${formatOne(other)})`
}

type Shape = { readonly low?: number; readonly high?: number; readonly nominal?: number; readonly rest: string }

const afterFigure = (text: string): { value: number; rest: string } | undefined => {
  const figure = parseFigure(text)
  return figure === undefined ? undefined : { value: figure.value, rest: text.slice(figure.length) }
}

const bounded = (text: string, nominal?: number): Shape | undefined => {
  const aim = nominal === undefined ? {} : { nominal }
  for (const [word, field] of [
    ['at least ', 'low'],
    ['at most ', 'high'],
  ] as const)
    if (text.startsWith(word)) {
      const limit = afterFigure(text.slice(word.length))
      return limit === undefined ? undefined : { ...aim, [field]: limit.value, rest: limit.rest }
    }
  if (nominal === undefined || !text.startsWith('from ')) return undefined
  const low = afterFigure(text.slice(5))
  const high = low?.rest.startsWith(' to ') === true ? afterFigure(low.rest.slice(4)) : undefined
  return low === undefined || high === undefined
    ? undefined
    : { nominal, low: low.value, high: high.value, rest: high.rest }
}

const shapeOf = (text: string): Shape | undefined => {
  const limit = bounded(text)
  if (limit !== undefined) return limit
  const first = afterFigure(text)
  if (first === undefined) return undefined
  const { value, rest } = first
  if (rest.startsWith(', ')) return bounded(rest.slice(2), value)
  const second = rest.startsWith(' to ') ? afterFigure(rest.slice(4)) : undefined
  if (second !== undefined) return { low: value, high: second.value, rest: second.rest }
  const even = rest.startsWith(' ± ') ? afterFigure(rest.slice(3)) : undefined
  if (even !== undefined)
    return { low: clean(value - even.value), high: clean(value + even.value), nominal: value, rest: even.rest }
  const plus = rest.startsWith(' +') ? afterFigure(rest.slice(2)) : undefined
  const minus = plus?.rest.startsWith('/−') === true ? afterFigure(plus.rest.slice(2)) : undefined
  if (plus !== undefined && minus !== undefined)
    return { low: clean(value - minus.value), high: clean(value + plus.value), nominal: value, rest: minus.rest }
  return { nominal: value, rest }
}

/**
 * Reads what formatQuantity wrote, in one system and without brackets.
 *
 * @returns the same quantity (unit aliases such as `{turn}` come back as the table's code); undefined for any other text.
 *   Talk and handwriting are for readQuantities in read.ts.
 */
export const parseQuantity = (text: string): Quantity | undefined => {
  const shape = shapeOf(text.trim().replace(/^about /, ''))
  if (shape === undefined) return undefined
  const { rest, ...limits } = shape
  const symbol = rest.trim()
  if (symbol === '') return limits
  const known = findUnit(symbol) ?? findUnit(symbol.replace(/s$/, ''))
  if (known !== undefined) return { ...limits, unit: known.code }
  // A code the table does not hold was shown as it is.
  return /^\S*[[{/.]\S*$/.test(symbol) ? { ...limits, unit: sameCode(symbol) } : undefined
}
