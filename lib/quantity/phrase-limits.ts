import type { Lexeme } from './lexemes'
import type { Bound } from './prefix'
import type { Ends } from './range-ends'
import type { Term } from './terms'
import type { Tolerance } from './tolerance'
import type { UnitWord } from './unit-words'

export const suffixBound = (lexemes: readonly Lexeme[], to: number): { bound: Bound; to: number } | undefined => {
  let at = to
  if (lexemes[at]?.text === ',' || lexemes[at]?.text === '(') at++
  if (at > to && lexemes[at]?.is === 'word' && lexemes[at]?.text === 'and') return undefined
  at = passNoun(lexemes, at)
  const lexeme = lexemes[at]
  const next = lexemes[at + 1]
  const startsNext =
    next?.is === 'number' ||
    (next?.is === 'role' && ['about', 'between', 'plus-minus'].includes(next.role)) ||
    ['a', 'an', 'of'].includes(next?.text ?? '')
  if (lexeme?.is === 'unit' && lexeme.text === 'min' && !startsNext) return { bound: 'low', to: at + 1 }
  if (lexeme?.is !== 'role' || startsNext) return undefined
  const bound = SUFFIX[lexeme.role]
  return bound === undefined ? undefined : { bound, to: at + 1 }
}

/** `of runout max`, `of pad left minimum`: a few words of what is measured before the bound. */
const passNoun = (lexemes: readonly Lexeme[], i: number): number => {
  if (lexemes[i]?.text !== 'of') return i
  for (let j = i + 2; j < i + 5; j++) {
    const lexeme = lexemes[j]
    if (lexeme?.is === 'role' && SUFFIX[lexeme.role] !== undefined) return j
    if (lexeme?.is !== 'word') return i
  }
  return i
}

const SUFFIX: Readonly<Record<string, Bound>> = Object.setPrototypeOf(
  {
    max: 'high',
    'at-most': 'high',
    'max-after': 'high',
    min: 'low',
    'at-least': 'low',
    'min-after': 'low',
  },
  null,
)

/** Limits from ends, tolerance and bound. */
export const limits = (
  ends: Ends | undefined,
  term: Term,
  tolerance: Tolerance | undefined,
  bound: Bound | undefined,
): { low?: number; high?: number; nominal?: number } => {
  if (tolerance !== undefined) {
    const low = term.value - tolerance.minus
    const high = term.value + tolerance.plus
    return { low: clean(Math.min(low, high)), high: clean(Math.max(low, high)), nominal: term.value }
  }
  if (ends !== undefined) {
    const [low, high] =
      ends.low.value <= ends.high.value ? [ends.low.value, ends.high.value] : [ends.high.value, ends.low.value]
    return low === high ? { nominal: low } : { low, high }
  }
  if (bound === 'high') return { high: term.value }
  if (bound === 'low') return { low: term.value }
  return { nominal: term.value }
}

/** Sums of decimal figures without the dust of binary ones. */
const clean = (value: number): number => Number(value.toPrecision(12))

/** A comma, or the place a number stands for: `thirty rear psi`. */
const LATE = new Set([',', 'front', 'rear', 'intake', 'exhaust', 'inlet'])

/** `thirty-four, give or take one, psi`: the unit after a comma and nothing else. */
export const lateUnit = (lexemes: readonly Lexeme[], i: number): { unit: UnitWord; to: number } | undefined => {
  const here = lexemes[i]
  // "5 (+0.2/-0.1) mm"
  if (here?.is === 'unit' && lexemes[i - 1]?.text === ')') return { unit: here.unit, to: i + 1 }
  const unit = lexemes[i + 1]
  if (
    !LATE.has(lexemes[i]?.text ?? '') ||
    unit?.is !== 'unit' ||
    unit.unit.isSymbol === true ||
    // A sigh, not ampere hours.
    unit.text === 'ah' ||
    unit.unit.code === undefined
  )
    return undefined
  const after = lexemes[i + 2]
  return after === undefined || after.is === 'stop' ? { unit: unit.unit, to: i + 2 } : undefined
}
