import type { Mark } from '@/lib/procedure/mark'
import { checkPlausible } from '@/lib/quantity/plausible'
import type { Quantity } from '@/lib/quantity/quantity'
import { convert, dimensionOf, unitSymbol } from '@/lib/quantity/units'
import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'

/** What is wrong with the figures themselves. */
const crossed = ({ low, high, nominal }: Quantity): string | undefined => {
  if (low !== undefined && high !== undefined && low > high) return 'the lower limit is above the upper one'
  if (nominal === undefined) return undefined
  if ((low !== undefined && nominal < low) || (high !== undefined && nominal > high))
    return 'the nominal value lies outside its own limits'
  return undefined
}

/** What kind of quantity a spec's name promises. Kinds with one meaning only. */
const PROMISED: readonly (readonly [name: RegExp, kinds: readonly string[]])[] = [
  [/\btorque\b/i, ['torque', 'energy', 'angle']],
  [/\bpressure\b/i, ['pressure']],
  [/\bvoltage\b/i, ['voltage']],
  [/\b(?:gap|clearance|end ?float|runout|thickness|backlash|free play)\b/i, ['length', 'angle', 'ratio']],
  [/\btemperature\b|\b(?:freezing|boiling) point\b/i, ['temperature']],
  [/\bresistance\b/i, ['resistance']],
]

/** A torque in millimetres: the unit is of another kind than the name promises. */
const strayed = ({ text, quantity }: Mark): string | undefined => {
  const kind = dimensionOf(quantity?.unit ?? '')
  if (kind === undefined || quantity?.unit === undefined) return undefined
  const names = PROMISED.filter(([name]) => name.test(text))
  const [first] = names
  if (first === undefined || names.some(([, kinds]) => kinds.includes(kind))) return undefined
  return `the name speaks of ${first[1][0]} and ${unitSymbol(quantity.unit)} is a unit of ${kind}`
}

const GAP = /\b(?:gap|clearance|slack|free play|backlash|end ?float|runout|wear|thickness|lift|stroke|tread|groove)\b/i
/** Longest such distance of a machine at a bench, millimetres. Common practice, no source. */
const WIDEST = 2000

const isTooWide = ({ text, quantity }: Mark): boolean => {
  if (quantity?.unit === undefined || !GAP.test(text) || /\b(?:interval|distance|every|service)\b/i.test(text))
    return false
  const value = Math.max(quantity.low ?? 0, quantity.nominal ?? 0, quantity.high ?? 0)
  const converted = convert(value, quantity.unit, 'mm')
  return converted.ok && converted.value > WIDEST
}

/** Most that small parts take, newton metres. Wide on purpose; common practice, no source. */
const SMALL: readonly (readonly [name: RegExp, most: number])[] = [
  [/\b(?:main |pilot |slow |idle )?jets?\b/i, 8],
  [/\b(?:bleed(?:er)?|nipple|grease fitting|zerk)\b/i, 30],
  [/\b(?:hose|pipe) (?:clip|clamp)s?\b/i, 15],
  [/\b(?:grub|set) ?screws?\b/i, 60],
  [/\b(?:terminal|electrical|earth|ground|bus ?bar|breaker|socket) screws?\b/i, 30],
  [
    /\b(?:(?:cover|lid|panel|screen|trim|handle|hinge|clamp|latch|switch|blade|bracket|canopy|case|housing|fan|shower screen|brake cover|canister) )?screws?\b/i,
    150,
  ],
  [/\bspark plugs?\b/i, 60],
  [/\b(?:cable clamp|battery (?:terminal|clamp|post)|hold-?down)\b/i, 60],
  [/\bspokes?|nipples?\b/i, 10],
]

const isTooTight = ({ text, quantity }: Mark): number | undefined => {
  if (quantity?.unit === undefined || dimensionOf(quantity.unit) !== 'torque') return undefined
  const least = quantity.low ?? quantity.nominal ?? quantity.high
  const most = SMALL.find(([name]) => name.test(text))?.[1]
  if (least === undefined || most === undefined) return undefined
  const converted = convert(least, quantity.unit, 'N.m')
  return converted.ok && converted.value > most ? most : undefined
}

/** Hotter than water gets at a tap or in a tank, degrees Celsius; steam and heating elements left aside. Common practice, no source. */
const HOTTEST_WATER = 105
const isTooHot = ({ text, quantity }: Mark): boolean => {
  if (
    quantity?.unit === undefined ||
    !/\b(?:water|tap|sink|bath|shower|rinse|wash|room|box|fridge|cooler|oil)\b/i.test(text) ||
    /\b(?:fry|fryer|steam|flue|oven|exhaust|superheat)\w*\b/i.test(text)
  )
    return false
  const value = Math.max(quantity.low ?? -1e9, quantity.nominal ?? -1e9, quantity.high ?? -1e9)
  const converted = convert(value, quantity.unit, 'Cel')
  return converted.ok && converted.value > (/\boil\b/i.test(text) ? 200 : HOTTEST_WATER)
}

const doubt = (mark: Mark): string | undefined => {
  const { quantity } = mark
  if (quantity === undefined) return undefined
  const tight = isTooTight(mark)
  if (tight !== undefined) return `more than about ${tight} N·m shears such a part.`
  if (isTooHot(mark)) return 'hotter than that can get.'
  const wrong =
    crossed(quantity) ?? strayed(mark) ?? (isTooWide(mark) ? `more than ${WIDEST} mm can hardly be meant` : undefined)
  return wrong === undefined ? checkPlausible(quantity, `${mark.text} ${mark.reference ?? ''}`)?.text : `${wrong}.`
}

/** A point lost, a unit swapped. */
export const specImplausible: Rule = {
  id: 'spec-implausible',
  level: 'stop',
  about: 'A value can hardly be meant: far outside what is usual, or its limits cross.',
  why: 'A lost point or a swapped unit is off by ten or more, and no one notices until something breaks.',
  source: 'usual ranges in lib/quantity/plausible-table.ts: common practice, no source',
  trips: sample([
    ['spec', 'tyre pressure', { quantity: { nominal: 25, unit: 'bar' } }],
    ['spec', 'valve clearance', { quantity: { low: 0.3, high: 0.2, unit: 'mm' } }],
  ]),
  passes: sample([['spec', 'tyre pressure', { quantity: { nominal: 2.5, unit: 'bar' } }]]),
  ...eachMark(['spec'], mark => {
    const text = doubt(mark)
    return text === undefined
      ? []
      : [{ place: atMark(mark), message: `"${mark.text}": ${text} Look at the unit and the decimal point.` }]
  }),
}
