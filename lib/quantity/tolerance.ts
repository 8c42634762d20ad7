import type { Lexeme } from './lexemes'
import type { Numeral } from './numeral'
import { readTerm, type Term } from './terms'
import { UNITS } from './unit-table'
import type { UnitWord } from './unit-words'

/** How far a value may stray, in the unit of the value. */
export type Tolerance = {
  readonly plus: number
  readonly minus: number
  /** Index after the tolerance. */
  readonly to: number
  /** The unit it was said in, where the value had none. */
  readonly unit?: UnitWord
  readonly notes: readonly string[]
}

type Base = { readonly value: number; readonly unit?: UnitWord; readonly numeral: Numeral | undefined }

const FACTORS = new Map(UNITS.map(({ code, kind, factor }) => [code, { kind, factor }]))
const NOTHING = new Set(['nothing', 'zero', 'nought', 'naught', 'nil', 'none', '0'])

/** The tolerance's size in the base's unit: percent of it, another unit converted, a bare number as it is. */
const sizeOf = (term: Term, base: Base): number | undefined => {
  const unit = term.unit
  if (unit === undefined) {
    const denominator = base.numeral?.denominator
    const isCount = Number.isInteger(term.value) && term.value !== 0
    // "thirty thousandths plus or minus three": three thousandths.
    if (denominator !== undefined && denominator >= 10 && isCount && term.number?.numeral.denominator === undefined)
      return term.value / denominator
    return term.value
  }
  if (unit.code === '%' && base.unit?.code !== '%') return (Math.abs(base.value) * term.value) / 100
  // "Five and a half litres, give or take two hundred mil."
  if (unit.ambiguous === 'mil' && base.unit?.code === 'L') return term.value / 1000
  const mine = FACTORS.get(unit.code ?? '')
  const code = base.unit?.code ?? (unit.code === '[mil_i]' && Math.abs(base.value) < 1 ? '[in_i]' : undefined)
  const theirs = FACTORS.get(code ?? '')
  if (mine === undefined || theirs === undefined || base.unit?.code === unit.code) return term.value
  // Half an inch on inches of water or mercury.
  if (unit.code === '[in_i]' && base.unit?.code?.startsWith("[in_i'") === true) return term.value
  return mine.kind === theirs.kind ? (term.value * mine.factor) / theirs.factor : undefined
}

/** A tolerance in thou on a value without unit: the value is in inches. */
const impliedUnit = (term: Term, base: Base): UnitWord | undefined => {
  if (base.unit !== undefined || term.unit === undefined || term.unit.code === '%') return undefined
  if (term.unit.code === '[mil_i]' && base.value < 1) return { code: '[in_i]', count: 'any' }
  return term.unit
}

const result = (
  plus: number,
  minus: number,
  to: number,
  unit: UnitWord | undefined,
  notes: readonly string[],
): Tolerance => ({
  plus,
  minus,
  to,
  notes,
  ...(unit === undefined ? {} : { unit }),
})

/** A side of `plus four minus nothing`. */
const side = (lexemes: readonly Lexeme[], i: number): Term | undefined => {
  const lexeme = lexemes[i]
  if (lexeme !== undefined && lexeme.is !== 'number' && NOTHING.has(lexeme.text))
    return { value: 0, from: i, to: i + 1, slips: [] }
  return readTerm(lexemes, i, false)
}

const isRole = (lexeme: Lexeme | undefined, role: string): boolean => lexeme?.is === 'role' && lexeme.role === role
const isMinus = (lexeme: Lexeme | undefined): boolean => isRole(lexeme, 'minus') || lexeme?.text === '-'

/** `plus four minus nothing`, `+5/-0`, `minus zero plus four`. */
export const readUneven = (lexemes: readonly Lexeme[], i: number, base: Base): Tolerance | undefined => {
  const isPlusFirst = isRole(lexemes[i], 'plus')
  if (!isPlusFirst && !isMinus(lexemes[i])) return undefined
  const first = side(lexemes, i + 1)
  if (first === undefined) return undefined
  let at = first.to
  while ([',', '/', 'and', 'but', 'or'].includes(lexemes[at]?.text ?? '')) at++
  const isSecond = isPlusFirst ? isMinus(lexemes[at]) : isRole(lexemes[at], 'plus')
  if (!isSecond) return undefined
  const second = side(lexemes, at + 1)
  if (second === undefined) return undefined
  // A unit said once holds for both sides.
  const unit = second.unit ?? first.unit
  const withUnit = (term: Term): Term => (term.unit === undefined && unit !== undefined ? { ...term, unit } : term)
  const a = sizeOf(withUnit(first), base)
  const b = sizeOf(withUnit(second), base)
  if (a === undefined || b === undefined) return undefined
  return result(isPlusFirst ? a : b, isPlusFirst ? b : a, second.to, impliedUnit(withUnit(second), base), [])
}

/** `plus or minus three`, `give or take 7`, `within 2 either side`, `2 either way`, `with a tolerance of 3`. */
const readEven = (lexemes: readonly Lexeme[], i: number, base: Base): Tolerance | undefined => {
  let at = i
  if (isRole(lexemes[at], 'plus-minus')) at++
  else {
    if (lexemes[at]?.text === 'with') at++
    const start = at
    for (let n = 0; n < 4; n++)
      if (
        ['a', 'tolerance', 'of', 'tolerance of', 'is', ':'].includes(lexemes[at]?.text ?? '') ||
        isRole(lexemes[at], 'either-way')
      )
        at++
    const isNamed = at > start && lexemes.slice(start, at).some(lexeme => lexeme.text.includes('tolerance'))
    if (isRole(lexemes[at], 'plus-minus')) at++
    else if (!isNamed) return readEitherWay(lexemes, start, base)
  }
  while (isRole(lexemes[at], 'about') || isRole(lexemes[at], 'filler')) at++
  const term = readTerm(lexemes, at, true)
  if (term === undefined) return undefined
  const size = sizeOf(term, base)
  if (size === undefined) return undefined
  const to = isRole(lexemes[term.to], 'either-way') ? term.to + 1 : term.to
  return result(size, size, to, impliedUnit(term, base), term.slips)
}

/** `30, two either way`. */
const readEitherWay = (lexemes: readonly Lexeme[], i: number, base: Base): Tolerance | undefined => {
  const at = isRole(lexemes[i], 'within') ? i + 1 : i
  const term = readTerm(lexemes, at, true)
  if (term === undefined || !isRole(lexemes[term.to], 'either-way')) return undefined
  const size = sizeOf(term, base)
  return size === undefined ? undefined : result(size, size, term.to + 1, impliedUnit(term, base), [])
}

const UP = new Set([
  'up',
  'over',
  'more',
  'above',
  'high',
  'higher',
  'plus',
  'bigger',
  'longer',
  'wider',
  'warmer',
  'thicker',
])
const DOWN = new Set([
  'down',
  'under',
  'less',
  'below',
  'low',
  'lower',
  'minus',
  'smaller',
  'shorter',
  'narrower',
  'cooler',
  'thinner',
])

/** `eight mil, one up or one down`: each side told by its way. */
const readUpDown = (lexemes: readonly Lexeme[], i: number, base: Base): Tolerance | undefined => {
  const first = readTerm(lexemes, i, false)
  const way = lexemes[first?.to ?? 0]?.text ?? ''
  if (first === undefined || !(UP.has(way) || DOWN.has(way))) return undefined
  let at = first.to + 1
  while ([',', 'and', 'or', '/'].includes(lexemes[at]?.text ?? '')) at++
  const isSame = ['the same', 'same'].includes(lexemes[at]?.text ?? '')
  const second = isSame ? { ...first, to: at + 1 } : readTerm(lexemes, at, false)
  const back = lexemes[second?.to ?? 0]?.text ?? ''
  if (second === undefined || !(UP.has(way) ? DOWN.has(back) : UP.has(back))) return undefined
  const [a, b] = [sizeOf(first, base), sizeOf(second, base)]
  if (a === undefined || b === undefined || Math.max(a, b) > Math.abs(base.value) / 2) return undefined
  return result(UP.has(way) ? a : b, UP.has(way) ? b : a, second.to + 1, impliedUnit(first, base), [])
}

/** `22 degrees, within two degrees`: close to the value, not a limit of its own. */
const readWithin = (lexemes: readonly Lexeme[], i: number, base: Base): Tolerance | undefined => {
  if (!isRole(lexemes[i], 'within')) return undefined
  const term = readTerm(lexemes, i + 1, true)
  if (base.unit === undefined && term?.unit?.code !== '%') return undefined
  const after = lexemes[term?.to ?? 0]?.text
  if (
    term === undefined ||
    (term.unit !== undefined && term.unit.code !== '%' && !(base.unit !== undefined && isSame(term.unit, base.unit)))
  )
    return undefined
  const size = sizeOf(term, base)
  return size === undefined || size > Math.abs(base.value) / 2 || after === 'of'
    ? undefined
    : result(size, size, term.to, undefined, [])
}

const isSame = (a: UnitWord, b: UnitWord): boolean =>
  a.ambiguous === 'degree'
    ? ['Cel', '[degF]', 'deg'].includes(b.code ?? '') || b.ambiguous === 'degree'
    : a.code === b.code && a.ambiguous === b.ambiguous

const FAR = 7
/** Words that begin something new, so that a tolerance after them is of something else. */
const NEW_START = new Set(['and', 'then', 'but', 'if', 'when', 'so', 'next', 'while'])

/** `75 percent humidity plus or minus three`: a few words of what is measured before the tolerance. */
const readFar = (lexemes: readonly Lexeme[], i: number, base: Base): Tolerance | undefined => {
  if (base.unit === undefined) return undefined
  for (let at = i; at < i + FAR; at++) {
    const lexeme = lexemes[at]
    if (isRole(lexeme, 'plus-minus')) return at > i ? readEven(lexemes, at, base) : undefined
    if (lexeme === undefined || (lexeme.is !== 'word' && lexeme.text !== ',') || NEW_START.has(lexeme.text))
      return undefined
  }
  return undefined
}

/**
 * The tolerance that follows a value at lexeme `i`, a comma or bracket allowed between.
 *
 * @param hasEnds whether the value is a range already, which only swallows a tolerance
 */
export const readTolerance = (
  lexemes: readonly Lexeme[],
  i: number,
  base: Base,
  hasEnds: boolean,
): Tolerance | undefined => {
  if (hasEnds) return undefined
  let at = i
  while ([',', '(', 'and', 'uh', 'um', 'so'].includes(lexemes[at]?.text ?? '') && at < i + 2) at++
  const tolerance =
    readEven(lexemes, at, base) ??
    readUpDown(lexemes, at, base) ??
    readUneven(lexemes, at, base) ??
    readWithin(lexemes, at, base) ??
    readFar(lexemes, i, base)
  if (tolerance === undefined) return undefined
  return lexemes[tolerance.to]?.text === ')' && lexemes[i]?.text === '('
    ? { ...tolerance, to: tolerance.to + 1 }
    : tolerance
}
