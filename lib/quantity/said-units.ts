import type { Lexeme } from './lexemes'
import { UNITS } from './unit-table'
import type { UnitWord } from './unit-words'

const FACTORS: ReadonlyMap<string, { kind: string; factor: number }> = new Map(
  UNITS.map(({ code, kind, factor }) => [code, { kind, factor }]),
)

/** Words that may stand between number and unit. */
export const BETWEEN = new Set([
  'full',
  'complete',
  'whole',
  'more',
  'extra',
  'additional',
  'further',
  'solid',
  'good',
  'clear',
  'another',
  'entire',
  'or so',
  '- ish',
  'ish',
  'level',
  'standard',
  'single',
  'lousy',
  'dead',
  'slow',
  'gentle',
  'easy',
  'odd',
])

/** Words after `5 in` that show it is not inches. */
const AFTER_IN = new Set([
  'of',
  'deep',
  'wide',
  'long',
  'thick',
  'apart',
  'max',
  'maximum',
  'minimum',
  'min',
  'gap',
  'travel',
  'clearance',
  'or',
  'to',
  'and',
])

const isUnitHere = (lexemes: readonly Lexeme[], i: number, number: Lexeme): boolean => {
  const lexeme = lexemes[i]
  if (lexeme?.is !== 'unit') return false
  const hasFigures = number.is === 'number' && (number.numeral.hasFigures === true || number.numeral.hasPoint === true)
  if (lexeme.unit.isSymbol === true && !hasFigures) return false
  if (lexeme.text === 'in') {
    const next = lexemes[i + 1]
    return (
      next === undefined || next.is === 'stop' || next.is === 'number' || next.is === 'role' || AFTER_IN.has(next.text)
    )
  }
  if (lexeme.text === '"' || lexeme.text === "'") return lexeme.isGlued
  return true
}

const BRACKETS: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}', '<': '>' }

/** The unit after a number: directly, after a hyphen, or after `of a`, `full`, `more`. */
export const findUnit = (
  lexemes: readonly Lexeme[],
  i: number,
  number: Lexeme,
): { unit: UnitWord; to: number } | undefined => {
  let at = i
  if (lexemes[at]?.text === '-' && lexemes[at]?.isGlued === true && lexemes[at + 1]?.isGlued === true) at++
  if (isUnitHere(lexemes, at, number)) return unitAt(lexemes, at)
  // "20 (kg)"
  const closing = BRACKETS[lexemes[at]?.text ?? '']
  if (
    closing !== undefined &&
    closing === lexemes[at + 2]?.text &&
    isUnitHere(lexemes, at + 1, number) &&
    lexemes[at + 1]?.text !== 'in'
  ) {
    const inside = unitAt(lexemes, at + 1)
    return inside === undefined ? undefined : { ...inside, to: at + 3 }
  }
  const isFraction = number.is === 'number' && (number.numeral.denominator !== undefined || number.numeral.value < 1)
  if (isFraction) {
    if (lexemes[at]?.text === 'of') at++
    if (['a', 'an', 'one', 'the'].includes(lexemes[at]?.text ?? '')) at++
    else if (lexemes[at]?.is === 'number' && lexemes[at]?.text === 'one' && at > i) at++
  }
  for (let n = 0; n < 2 && BETWEEN.has(lexemes[at]?.text ?? ''); n++) at++
  if (lexemes[at]?.text === '-' && lexemes[at]?.isGlued === true) at++
  return at > i && isUnitHere(lexemes, at, number) ? unitAt(lexemes, at) : undefined
}

export const unitAt = (lexemes: readonly Lexeme[], i: number): { unit: UnitWord; to: number } | undefined => {
  const lexeme = lexemes[i]
  return lexeme?.is === 'unit' ? { unit: lexeme.unit, to: i + 1 } : undefined
}

const OUNCES: Readonly<Record<string, { kind: string; factor: number; system: string }>> = Object.setPrototypeOf(
  {
    pound: { kind: 'mass', factor: 16, system: 'pounds' },
    ounce: { kind: 'mass', factor: 1, system: 'pounds' },
  },
  null,
)

export const sized = (unit: UnitWord | undefined): { kind: string; factor: number; system: string } | undefined => {
  if (unit === undefined) return undefined
  if (unit.ambiguous !== undefined) return OUNCES[unit.ambiguous]
  const known = FACTORS.get(unit.code ?? '')
  if (known === undefined) return undefined
  return { ...known, system: unit.code?.startsWith('[') === true ? 'us' : 'other' }
}
