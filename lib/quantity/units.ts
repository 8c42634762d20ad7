import { done, type Outcome, refused } from './outcome'
import type { QuantityKind, Unit } from './unit-row'
import { UNITS } from './unit-table'

const BY_CODE: ReadonlyMap<string, Unit> = new Map(UNITS.map(unit => [unit.code, unit]))

/** Other codes for the same unit, as files may hold them. @source UCUM: a turn is `circ`; `{turn}` and `{rpm}` are annotations */
const ALIASES: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    '{turn}': 'circ',
    '{turns}': 'circ',
    '{rpm}': '{rev}/min',
    '{revs}/min': '{rev}/min',
    'circ/min': '{rev}/min',
    '[lbf_av].[ft_i]': '[ft_i].[lbf_av]',
    '[lbf_av].[in_i]': '[in_i].[lbf_av]',
    'm.N': 'N.m',
    ml: 'mL',
    l: 'L',
    dl: 'dL',
    cl: 'cL',
    cm3: 'mL',
    '[lbf_av]/[sin_i]': '[psi]',
  },
  null,
)

/** @returns the table's code for a unit: aliases such as `{turn}` and `{rpm}` brought to one; other codes unchanged */
export const sameCode = (code: string): string => ALIASES[code] ?? code

/** @returns the table's entry for a UCUM code or one of its aliases */
export const unitOf = (code: string): Unit | undefined => BY_CODE.get(sameCode(code))

/**
 * What a unit measures.
 *
 * @param code UCUM code
 * @returns undefined for a code the table does not hold (the full UCUM library, ucum.ts, may know it)
 */
export const dimensionOf = (code: string): QuantityKind | undefined => unitOf(code)?.kind

/**
 * A unit for people, such as `N·m`, `lbf·ft`, `°C`, `thou`.
 *
 * @param value decides between singular and plural where the symbol is a word (turn, year)
 * @returns the code itself for one the table does not hold
 */
export const unitSymbol = (code: string, value?: number): string => {
  const symbol = PEOPLE[sameCode(code)] ?? unitOf(code)?.symbol
  if (symbol === undefined) return code
  return COUNTED.has(symbol) && value !== undefined && Math.abs(value) !== 1 && !isFraction(value)
    ? `${symbol}s`
    : symbol
}

const isFraction = (value: number): boolean => Math.abs(value) < 1 && value !== 0

const PEOPLE: Readonly<Record<string, string>> = Object.setPrototypeOf(
  { wk: 'week', mo: 'month', a: 'year', d: 'day', '[cup_us]': 'cup' },
  null,
)
const COUNTED = new Set(['turn', 'week', 'month', 'year', 'day', 'cup'])

/** How one unit compares with another of its kind. Temperatures need `isDifference` where a rise is meant, not a reading. */
export type ConvertOptions = { readonly isDifference?: boolean }

/**
 * Converts a value between two units of one kind.
 *
 * @param value in `from`; finite
 * @returns the value in `to`, unrounded; problems `unknown-unit` and `not-comparable` (torque and energy are not, though
 *   both are N.m in UCUM; neither are a temperature and a difference). Never throws.
 */
export const convert = (
  value: number,
  from: string,
  to: string,
  { isDifference = false }: ConvertOptions = {},
): Outcome<number> => {
  const source = unitOf(from)
  const target = unitOf(to)
  if (source === undefined || target === undefined)
    return refused(
      'unknown-unit',
      `There is no unit "${source === undefined ? from : to}" in the table. Give a UCUM code such as N.m, [psi] or mm.`,
    )
  if (source.code === target.code) return done(value)
  if (!areComparable(source, target, isDifference))
    return refused(
      'not-comparable',
      `${unitSymbol(from)} (${source.kind}) cannot be converted to ${unitSymbol(to)} (${target.kind}).`,
    )
  const offset = isDifference ? 0 : (source.offset ?? 0) - (target.offset ?? 0)
  return done((value * source.factor + offset) / target.factor)
}

const NEAR: ReadonlyMap<string, string> = new Map([['distance', 'length']])

const areComparable = (a: Unit, b: Unit, isDifference: boolean): boolean => {
  const kind = (unit: Unit): string => NEAR.get(unit.kind) ?? unit.kind
  if (isDifference && a.kind.startsWith('temperature') && b.kind.startsWith('temperature')) return true
  return kind(a) === kind(b)
}

/** @returns whether two codes measure the same kind of quantity, so that their values can be compared */
export const isComparable = (a: string, b: string): boolean => {
  const [one, other] = [unitOf(a), unitOf(b)]
  return one !== undefined && other !== undefined && areComparable(one, other, false)
}

const NAMES: ReadonlyMap<string, Unit> = (() => {
  const names = new Map<string, Unit>()
  const add = (name: string, unit: Unit) => {
    if (!names.has(name)) names.set(name, unit)
  }
  for (const unit of UNITS) {
    add(unit.code, unit)
    add(unit.symbol, unit)
    for (const name of unit.written) add(name, unit)
  }
  for (const unit of UNITS) {
    for (const pair of unit.names)
      for (const name of pair.split('/')) for (const spelt of respell(name)) add(spelt, unit)
    add(unit.symbol.toLowerCase(), unit)
  }
  return names
})()

function respell(name: string): readonly string[] {
  const other = name.replaceAll('metre', 'meter').replaceAll('litre', 'liter')
  const inPlural = (text: string): string => (text.endsWith('inch') ? `${text}es` : `${text}s`)
  return other === name ? [name, inPlural(name)] : [name, inPlural(name), other, inPlural(other)]
}

/** Names that are certain enough in a field where a unit is typed, though in talk they may mean another. */
const TYPED: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    pounds: '[lb_av]',
    lb: '[lb_av]',
    lbs: '[lb_av]',
    oz: '[oz_av]',
    mil: '[mil_i]',
    degrees: 'deg',
    deg: 'deg',
    '°': 'deg',
    gallon: '[gal_us]',
    gallons: '[gal_us]',
    gal: '[gal_us]',
    quart: '[qt_us]',
    quarts: '[qt_us]',
    qt: '[qt_us]',
    pint: '[pt_us]',
    pints: '[pt_us]',
    pt: '[pt_us]',
    cup: '[cup_us]',
    cups: '[cup_us]',
    'fluid ounce': '[foz_us]',
    'fl oz': '[foz_us]',
    micron: 'um',
    microns: 'um',
    kilo: 'kg',
    'ft-lb': '[ft_i].[lbf_av]',
    ft·lb: '[ft_i].[lbf_av]',
    'ft.lb': '[ft_i].[lbf_av]',
    'in-lb': '[in_i].[lbf_av]',
    turns: 'circ',
    weeks: 'wk',
    days: 'd',
    inhg: "[in_i'Hg]",
  },
  null,
)

/**
 * The unit a name, symbol or UCUM code stands for.
 *
 * @param name as typed or said: `newton metres`, `N·m`, `ft-lb`, `[psi]`
 * @returns undefined where no unit of the table goes by that name
 */
export const findUnit = (name: string): Unit | undefined => {
  const typed = name.trim().replace(/\s+/g, ' ')
  const alias = unitOf(typed)
  if (alias !== undefined) return alias
  const exact = NAMES.get(typed)
  if (exact !== undefined) return exact
  const lower = typed.toLowerCase()
  const code = TYPED[lower]
  return (
    (code === undefined ? undefined : BY_CODE.get(code)) ?? NAMES.get(lower) ?? NAMES.get(lower.replace(/[-.·*]/g, ' '))
  )
}

/** A unit offered while one is being typed. */
export type Completion = {
  readonly code: string
  readonly symbol: string
  readonly name: string
  readonly kind: QuantityKind
}

/**
 * Units whose symbol, name or code begins with what was typed: exact hits first, then symbols, then names.
 *
 * @param prefix as typed; empty gives every unit, those used most on a service sheet first
 * @param limit at most so many
 * @returns each unit once
 */
export const completeUnit = (prefix: string, limit = 8): readonly Completion[] => {
  const typed = prefix.trim().toLowerCase()
  const found =
    typed === '' ? [...new Set([...COMMON.flatMap(code => BY_CODE.get(code) ?? []), ...UNITS])] : rank(typed)
  return found.slice(0, limit).map(unit => ({
    code: unit.code,
    symbol: unitSymbol(unit.code),
    name: unit.names[0]?.split('/')[0] ?? unit.symbol,
    kind: unit.kind,
  }))
}

const COMMON = ['N.m', '[ft_i].[lbf_av]', 'mm', '[in_i]', '[psi]', 'bar', 'circ', 'h']

const rank = (typed: string): readonly Unit[] => {
  const exact = findUnit(typed)
  const loose = typed.replace(/[-.·* ]/g, '')
  const bare = (text: string): string => text.toLowerCase().replace(/[-.·* ]/g, '')
  const bySymbol = UNITS.filter(
    unit => bare(unit.symbol).startsWith(loose) || unit.written.some(sign => bare(sign).startsWith(loose)),
  )
  const byName = UNITS.filter(unit =>
    unit.names.some(pair => pair.split('/').some(name => respell(name).some(spelt => spelt.startsWith(typed)))),
  )
  const byCode = UNITS.filter(unit => unit.code.toLowerCase().startsWith(typed))
  return [...new Set([...(exact === undefined ? [] : [exact]), ...bySymbol, ...byName, ...byCode])]
}
