import type { Quantity } from './quantity'
import { clean, digitsOf, roundLike, roundTo, stepFor } from './rounding'
import { convert, dimensionOf, sameCode, unitOf } from './units'

type Choice = readonly [code: string, below?: number]

/**
 * The unit shown for a value in the other system; the first whose bound (in that unit) the value stays below.
 *
 * @source common practice, no source
 */
const TO_US: Readonly<Record<string, readonly Choice[]>> = Object.setPrototypeOf(
  {
    torque: [['[in_i].[lbf_av]', 120], ['[ft_i].[lbf_av]']],
    pressure: [['[psi]']],
    length: [['[in_i]', 120], ['[ft_i]']],
    distance: [['[mi_i]']],
    temperature: [['[degF]']],
    volume: [['[foz_us]', 24], ['[qt_us]', 20], ['[gal_us]']],
    mass: [['[oz_av]', 16], ['[lb_av]']],
    force: [['[lbf_av]']],
    power: [['[HP]']],
    velocity: [['[mi_i]/h']],
    flow: [['[gal_us]/min']],
  },
  null,
)
const TO_METRIC: Readonly<Record<string, readonly Choice[]>> = Object.setPrototypeOf(
  {
    torque: [['N.m']],
    pressure: [['kPa', 100], ['bar', 200], ['MPa']],
    length: [['mm', 3000], ['m']],
    distance: [['km']],
    temperature: [['Cel']],
    volume: [['mL', 1000], ['L']],
    mass: [['g', 1000], ['kg']],
    force: [['N', 1000], ['kN']],
    velocity: [['km/h']],
    flow: [['L/min']],
  },
  null,
)
/** Kinds and units that both systems share, or that no one converts. */
const KEPT = new Set(['W', 'kW', 'mW'])
const MERCURY: Readonly<Record<string, string>> = Object.setPrototypeOf(
  { "[in_i'Hg]": 'kPa', 'mm[Hg]': "[in_i'Hg]" },
  null,
)

const targetFor = (quantity: Quantity, unit: string, system: 'metric' | 'us'): string | undefined => {
  const from = unitOf(unit)
  if (from === undefined || from.system === 'any' || KEPT.has(from.code)) return undefined
  if (from.system === system || (system === 'us' && from.system === 'imperial')) return undefined
  const mercury = MERCURY[from.code]
  if (mercury !== undefined && unitOf(mercury)?.system === system) return mercury
  const kind = dimensionOf(unit)
  const choices = kind === undefined ? undefined : (system === 'us' ? TO_US : TO_METRIC)[kind]
  const largest = Math.max(...[quantity.low, quantity.nominal, quantity.high].map(value => Math.abs(value ?? 0)))
  return choices?.find(([code, below]) => {
    const value = convert(largest, unit, code)
    return below === undefined || (value.ok && value.value < below)
  })?.[0]
}

/** At least so many digits for a limit, so that rounding inwards takes little of it. */
const LIMIT_DIGITS = 3
/** Share of the tolerance that one step of rounding may be. */
const SHARE = 10

const isTemperature = (unit: string): boolean => dimensionOf(unit) === 'temperature'

/** The power of ten that limits are rounded to: a tenth of the tolerance or finer; one-sided limits by their digits. */
const fineness = (from: Quantity, to: Quantity): number => {
  if (to.low !== undefined && to.high !== undefined && to.high > to.low)
    return Math.floor(Math.log10((to.high - to.low) / SHARE) + 1e-9)
  const original = from.low ?? from.high ?? 0
  const converted = to.low ?? to.high ?? 0
  return stepFor(converted, Math.max(LIMIT_DIGITS, digitsOf(original)))
}

const untoleranced = (converted: number, original: number, unit: string): number => {
  if (!isTemperature(unit)) return roundLike(converted, original)
  const decimals = String(original).split('.')[1]?.length ?? 0
  return roundTo(converted, -decimals, 'nearest')
}

const mapLimits = (quantity: Quantity, change: (value: number) => number): Quantity => ({
  ...(quantity.low === undefined ? {} : { low: change(quantity.low) }),
  ...(quantity.high === undefined ? {} : { high: change(quantity.high) }),
  ...(quantity.nominal === undefined ? {} : { nominal: change(quantity.nominal) }),
})

/**
 * A quantity in another unit, rounded so that its limits never lie outside the original ones.
 *
 * @param unit UCUM code of the same kind
 * @returns limits rounded inwards to a tenth of the tolerance or finer, an untoleranced value to the digits it carries;
 *   undefined where the units do not compare
 * @source ISO 370 and IEEE/ASTM SI 10, rounding inwards (from memory: the fineness here is our own choice); NIST SP 811 B.7
 */
export const toUnit = (quantity: Quantity, unit: string): Quantity | undefined => {
  const from = quantity.unit
  if (from === undefined || !convert(0, from, unit).ok) return undefined
  if (sameCode(from) === sameCode(unit)) return { ...quantity, unit: sameCode(unit) }
  const exact = mapLimits(quantity, value => {
    const converted = convert(value, from, unit)
    return converted.ok ? clean(converted.value) : value
  })
  if (quantity.low === undefined && quantity.high === undefined)
    return quantity.nominal === undefined || exact.nominal === undefined
      ? { unit }
      : { nominal: untoleranced(exact.nominal, quantity.nominal, unit), unit }
  const power = fineness(quantity, exact)
  const low = exact.low === undefined ? undefined : roundTo(exact.low, power, 'up')
  const high = exact.high === undefined ? undefined : roundTo(exact.high, power, 'down')
  const near = exact.nominal === undefined ? undefined : roundTo(exact.nominal, power, 'nearest')
  const nominal = near === undefined ? undefined : Math.min(Math.max(near, low ?? near), high ?? near)
  return {
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    ...(nominal === undefined ? {} : { nominal }),
    unit,
  }
}

/**
 * A quantity in metric or US units, as a sheet shows it.
 *
 * @returns undefined where it is in that system already, belongs to both (turns, volts, hours), or has no unit
 */
export const toSystem = (quantity: Quantity, system: 'metric' | 'us'): Quantity | undefined => {
  if (quantity.unit === undefined) return undefined
  const unit = targetFor(quantity, quantity.unit, system)
  return unit === undefined ? undefined : toUnit(quantity, unit)
}
