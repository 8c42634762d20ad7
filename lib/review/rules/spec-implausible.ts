import type { Mark } from '@/lib/procedure/mark'
import { checkPlausible } from '@/lib/quantity/plausible'
import type { Quantity } from '@/lib/quantity/quantity'
import { readQuantities } from '@/lib/quantity/read'
import { convert, dimensionOf, unitSymbol } from '@/lib/quantity/units'
import { HIGH_TENSION, USUAL } from '@/lib/trade/usual'
import { onceFor, onceForText } from '../memo'
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

/** Where the name of a value ends and its place begins: "oil pressure at idle". */
const PLACE =
  /\s+(?:of|at|above|below|between|over|in|for|before|after|under|on|to|from|with|when|per|across|against|while|during|by)\s/i
/** What the name ends in says what is measured: a "pressure test time" is a time. */
const headOf = (name: string): string => {
  const words = name.split(PLACE)[0]?.trim().split(/\s+/) ?? []
  return words
    .slice(-2)
    .join(' ')
    .replace(/^.*\b(?:test|check|recheck|release|build-up|rise)\b/i, '')
    .replace(OF_ANOTHER, '')
}
const OF_ANOTHER =
  /^\S+ (?:difference|drop|error|time|interval|distance|opening|setting|count|change|ratio|deviation|loss)$/i
/** Draughts and vacuums are told in millimetres or inches of water. */
const COLUMN =
  /\b(?:wind|draught|draft|static|duct|gas|vacuum|suction|manometer|water gauge|column|air) pressure\b|\bvacuum\b/i

/** A torque in millimetres: the unit is of another kind than the name promises. */
const strayed = ({ text, quantity }: Mark): string | undefined => {
  const kind = dimensionOf(quantity?.unit ?? '')
  if (kind === undefined || quantity?.unit === undefined) return undefined
  const names = PROMISED.filter(([name]) => name.test(headOf(text)) && !(kind === 'length' && COLUMN.test(text)))
  const [first] = names
  if (first === undefined || names.some(([, kinds]) => kinds.includes(kind))) return undefined
  return `the name speaks of ${first[1][0]} and ${unitSymbol(quantity.unit)} is a unit of ${kind}`
}

const GAP = /\b(?:gap|clearance|slack|free play|backlash|end ?float|runout|wear|thickness|lift|stroke|tread|groove)\b/i
/** Longest such distance of a machine at a bench, millimetres. Common practice, no source. */
const WIDEST = 2000

const isTooWide = ({ text, quantity }: Mark): boolean => {
  if (
    quantity?.unit === undefined ||
    !GAP.test(text) ||
    /\b(?:interval|distance|every|service|re-?check)\b/i.test(text)
  )
    return false
  const value = Math.max(quantity.low ?? 0, quantity.nominal ?? 0, quantity.high ?? 0)
  const converted = convert(value, quantity.unit, 'mm')
  return converted.ok && converted.value > WIDEST
}

/** Most that small parts take, newton metres. Wide on purpose; common practice, no source. */
const SMALL: readonly (readonly [name: RegExp, most: number])[] = [
  [/\b(?:main |pilot |slow |idle )?jets?\b/i, 8],
  [/\b(?:bleed(?:er)?|nipple|grease fitting|zerk)\b/i, 30],
  [/\b(?:hose|pipe) (?:clip|clamp)s?\b(?! (?:bolts?|nuts?))/i, 15],
  [/\b(?:grub|set) ?screws?\b/i, 60],
  [/\b(?:terminal|electrical|earth|ground|bus ?bar|breaker|socket) screws?\b/i, 30],
  [
    /\b(?:(?:cover|lid|panel|screen|trim|handle|hinge|clamp|latch|switch|blade|bracket|canopy|case|housing|fan|shower screen|brake cover|canister) )?screws?\b/i,
    150,
  ],
  [/\bspark plugs?\b/i, 60],
  [/\b(?:cable clamp|battery (?:terminal|clamp|post)|hold-?down)\b/i, 60],
  [/\bspokes?|nipples?\b/i, 10],
  [/\bwing ?nuts?\b/i, 20],
  [/\b(?:terminal|battery|bus ?bar|bridge bar|post|earth|ground) (?:nuts?|bolts?)\b/i, 120],
  [
    /\b(?:stem|handlebar|seat ?post|crank|pedal|lockring|cassette|through[- ]axle|foot) (?:bolts?|nuts?|torque)\b(?! of the motor)/i,
    150,
  ],
  [/\b(?:blade|knife|cutter|gib) (?:nuts?|bolts?)\b/i, 400],
  [/\b(?:cover|lid|cap|guard|panel|clamp|bracket|sensor) (?:nuts?|bolts?)\b/i, 400],
  [/\b(?:oil filter|filter housing|glow plug|injector|thermostat housing|packing gland|gland nut)\b/i, 200],
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

/** A supply of 230 V feeds nothing of 25 kV: so many times the highest voltage the heading names. Common practice, no source. */
const TIMES_SUPPLY = 20

const inUnit = (quantity: Quantity, unit: string): number | undefined => {
  const least = quantity.low ?? quantity.nominal ?? quantity.high
  const converted = least === undefined || quantity.unit === undefined ? undefined : convert(least, quantity.unit, unit)
  return converted?.ok === true ? converted.value : undefined
}

/** Voltages that a heading names: "400 V three-phase", "twenty 12 V batteries". */
const suppliesIn = onceForText((heading: string): number =>
  Math.max(
    0,
    ...readQuantities(heading).flatMap(({ quantity }) =>
      dimensionOf(quantity.unit ?? '') === 'voltage' ? [inUnit(quantity, 'V') ?? 0] : [],
    ),
  ),
)

/** What the class of machine rules out. */
const beyondMachine = ({ text, reference, quantity }: Mark, machine: string): string | undefined => {
  const kind = dimensionOf(quantity?.unit ?? '')
  if (quantity === undefined || kind === undefined) return undefined
  const about = `${text} ${reference ?? ''} ${machine}`
  const supply = kind === 'voltage' && !HIGH_TENSION.test(about) ? suppliesIn(machine) : 0
  if (supply > 0 && (inUnit(quantity, 'V') ?? 0) > TIMES_SUPPLY * supply) return `the machine is fed with ${supply} V.`
  const row = USUAL.find(
    own =>
      own.kind === kind &&
      own.name.test(text) &&
      own.machine.test(about) &&
      own.not?.test(about) !== true &&
      (inUnit(quantity, own.unit) ?? 0) > own.most,
  )
  return row === undefined
    ? undefined
    : `more than about ${row.most} ${unitSymbol(row.unit)} is not found in ${row.where}.`
}

/** Ends of the scale of acids and alkalis. @source the pH scale as taught, 0 to 14 (from memory) */
const MOST_PH = 14
/** Highest pressure of pumps, hoses and tyres in service work, bar; water jets and diesel rails go beyond. Common practice, no source. */
const MOST_BAR = 1000
const BEYOND_BAR =
  /\b(?:water ?jet|common rail|rail|injector|diesel|blast|autofrettage|hydraulic tension\w*|bolt tension\w*)\b/i
/** A protective conductor that measures more protects nobody, ohms. @source IEC 60364-6: low-ohm continuity (from memory) */
const MOST_EARTH = 10
const ohmsOf = ({ high, nominal, low, unit }: Quantity): number => {
  const converted = convert(high ?? nominal ?? low ?? 0, unit ?? '', 'Ohm')
  return converted.ok ? converted.value : 0
}
const beyondScale = ({ text, quantity }: Mark): string | undefined => {
  if (quantity === undefined) return undefined
  const value = quantity.low ?? quantity.nominal ?? quantity.high ?? 0
  if (/\bph\b/i.test(text) && value > MOST_PH) return `pH ends at ${MOST_PH}.`
  const kind = dimensionOf(quantity.unit ?? '')
  if (kind === 'pressure' && !BEYOND_BAR.test(text) && (inUnit(quantity, 'bar') ?? 0) > MOST_BAR)
    return `more than ${MOST_BAR} bar bursts any common hose.`
  if (
    kind === 'resistance' &&
    /\b(?:protective (?:earth|conductor)|earth (?:bond|continuity|resistance)|pe (?:resistance|conductor))\b/i.test(
      text,
    ) &&
    !/\b(?:rod|electrode|spike)\b/i.test(text) &&
    ohmsOf(quantity) > MOST_EARTH
  )
    return `an earth of more than ${MOST_EARTH} Ω protects nobody.`
  return undefined
}

const doubt = (mark: Mark): string | undefined => {
  const { quantity } = mark
  if (quantity === undefined) return undefined
  const tight = isTooTight(mark)
  if (tight !== undefined) return `more than about ${tight} N·m shears such a part.`
  if (isTooHot(mark)) return 'hotter than that can get.'
  const beyond = beyondScale(mark)
  if (beyond !== undefined) return beyond
  const wrong =
    crossed(quantity) ?? strayed(mark) ?? (isTooWide(mark) ? `more than ${WIDEST} mm can hardly be meant` : undefined)
  return wrong === undefined ? checkPlausible(quantity, `${mark.text} ${mark.reference ?? ''}`)?.text : `${wrong}.`
}

const doubtOf = onceFor(doubt)
const doubtOn = onceForText((machine: string) => onceFor((mark: Mark) => doubtOf(mark) ?? beyondMachine(mark, machine)))

/** A point lost, a unit swapped. */
export const specImplausible: Rule = {
  id: 'spec-implausible',
  level: 'stop',
  about: 'A value can hardly be meant: far outside what is usual, or its limits cross.',
  why: 'A lost point or a swapped unit is off by ten or more, and no one notices until something breaks.',
  source: 'usual ranges in lib/quantity/plausible-table.ts and lib/trade/usual.ts: common practice, no source',
  trips: sample([
    ['spec', 'tyre pressure', { quantity: { nominal: 25, unit: 'bar' } }],
    ['spec', 'valve clearance', { quantity: { low: 0.3, high: 0.2, unit: 'mm' } }],
  ]),
  passes: sample([['spec', 'tyre pressure', { quantity: { nominal: 2.5, unit: 'bar' } }]]),
  check: ({ project, sheet }) => {
    const doubtHere = doubtOn(`${sheet.heading.title} ${sheet.heading.equipment}`)
    return project.marks.flatMap(mark => {
      const text = mark.kind === 'spec' ? doubtHere(mark) : undefined
      return text === undefined
        ? []
        : [{ place: atMark(mark), message: `"${mark.text}": ${text} Look at the unit and the decimal point.` }]
    })
  },
}
