import type { Lexeme } from './lexemes'
import type { Prefix } from './prefix'
import { clean } from './rounding'
import { sized } from './said-units'
import { readTerm, type Term } from './terms'

const isRangeSign = (lexeme: Lexeme | undefined): boolean =>
  lexeme !== undefined &&
  ((lexeme.is === 'role' && lexeme.role === 'range') || lexeme.text === '-' || lexeme.text === '—')

/** Words before a bare number that make it a count: `all six to 20 newton metres`. */
const COUNTERS = new Set(
  'all these those both other number step position your my numbers bolt bolts nut nuts cylinder the every first last'.split(
    ' ',
  ),
)

const kindly = (lexemes: readonly Lexeme[], i: number): number => {
  let at = i
  for (let n = 0; n < 3; n++) {
    const lexeme = lexemes[at]
    const isPassed = lexeme?.is === 'role' && ['about', 'up-to', 'filler', 'at-most', 'max'].includes(lexeme.role)
    const isWord = lexeme?.text === 'a' && lexemes[at + 1]?.is === 'role'
    if (!isPassed && !isWord) break
    at++
  }
  return at
}

/** Ends of a range of time lie no farther apart. Common practice, no source. */
const FAR = 6

export type Ends = { readonly low: Term; readonly high: Term; readonly to: number; readonly notes: readonly string[] }

/** The lexeme that makes a range of two ends: `to`, a dash, `and` after `between`, `or`. @returns the index after it */
const rangeWord = (
  lexemes: readonly Lexeme[],
  i: number,
  prefix: Prefix,
): { to: number; isOr: boolean } | undefined => {
  let at = i
  if (lexemes[at]?.text === ',' && prefix.style !== undefined && isRangeSign(lexemes[at + 1])) at++
  // "28-to-30"
  if (lexemes[at]?.text === '-' && lexemes[at + 1]?.text === 'to') at++
  const sign = lexemes[at]
  if (sign === undefined) return undefined
  const isOr = sign.text === 'or' && prefix.style === undefined
  const isUpTo = sign.is === 'role' && sign.text === 'up to' && (prefix.style === 'from' || prefix.bound === undefined)
  const isAnd = prefix.style === 'between' && ['and', '&', 'or'].includes(sign.text)
  if (!(isRangeSign(sign) || isUpTo || isOr || isAnd)) return undefined
  at++
  if (sign.text === 'to' && lexemes[at]?.text === '-' && lexemes[at]?.isGlued === true) at++
  return { to: at, isOr }
}

/** `fifty to one`: a ratio and no range. */
export const isRatio = (lexemes: readonly Lexeme[], first: Term, i: number): boolean => {
  const one = lexemes[i]
  return (
    first.unit === undefined &&
    first.value >= 2 &&
    one?.is === 'number' &&
    one.numeral.value === 1 &&
    (one.text === 'one' || one.text === '1') &&
    lexemes[i + 1]?.is !== 'unit'
  )
}

/** The second end of a range after its first. */
export const readSecondEnd = (lexemes: readonly Lexeme[], first: Term, prefix: Prefix): Ends | undefined => {
  const word = rangeWord(lexemes, first.to, prefix)
  if (word === undefined || isRatio(lexemes, first, word.to)) return undefined
  let at = kindly(lexemes, word.to)
  const sign = lexemes[at]
  if (sign?.is === 'role' && sign.role === 'plus' && first.isNegative === true) at++
  // "Ten minutes to an hour": an article counts as one after a time.
  const isImplied =
    sized(first.unit)?.kind === 'time' || (first.unit !== undefined && (first.value < 1 || prefix.style !== undefined))
  const said = readTerm(lexemes, at, isImplied)
  if (said === undefined) return undefined
  const isNear = said.unit !== undefined && said.value > first.value && said.value < first.value * 2
  if (first.unit === undefined && prefix.style === undefined && !isNear && isCounted(lexemes, first.from))
    return undefined
  if (prefix.style === undefined && isMixture(first, said)) return undefined
  // "Ten minutes up to a hundred and fifty": how long to get there.
  const isTimeTo = lexemes[first.to]?.text === 'up to' && sized(first.unit)?.kind === 'time' && said.unit === undefined
  if (isTimeTo && said.value > FAR * first.value) return undefined
  const second = inUnitOf(said, first)
  if (word.isOr && !isAlternative(first, second)) return undefined
  if (
    !word.isOr &&
    first.unit !== undefined &&
    second.unit === undefined &&
    prefix.style !== 'between' &&
    second.number?.numeral.denominator === undefined &&
    isCountWord(lexemes[second.to])
  )
    return undefined
  return joinEnds(first, second, word.isOr)
}

/** What is said in a larger unit at its other end: `between two hundred millimetres and a metre`. */
const CONVERTED = new Set(['time', 'length', 'volume', 'mass'])

/** `a hundred millilitres to five litres`: so much in so much. */
const isMixture = (first: Term, second: Term): boolean => {
  const [own, other] = [sized(first.unit), sized(second.unit)]
  const isVolume = own?.kind === 'volume' || own?.kind === 'mass' || first.unit?.ambiguous !== undefined
  return (
    isVolume &&
    second.unit !== undefined &&
    (first.unit?.code !== second.unit.code || first.unit?.ambiguous !== second.unit.ambiguous) &&
    (other?.kind === 'volume' || second.unit.ambiguous !== undefined) &&
    (own === undefined || other === undefined || second.value * other.factor > MIXED * first.value * own.factor)
  )
}
/** A part and its whole are farther apart than the ends of a range. Common practice, no source. */
const MIXED = 5

/** `from ten minutes to a quarter of an hour`: the second end in the unit of the first, where both measure the same. */
const inUnitOf = (term: Term, first: Term): Term => {
  const [own, other] = [sized(term.unit), sized(first.unit)]
  if (own === undefined || other === undefined || first.unit === undefined) return term
  if (own.kind !== other.kind || !CONVERTED.has(own.kind) || own.factor === other.factor) return term
  return { ...term, value: clean((term.value * own.factor) / other.factor), unit: first.unit }
}

const isCounted = (lexemes: readonly Lexeme[], i: number): boolean => {
  const before = lexemes[i - 1]
  return before !== undefined && (before.is === 'word' || before.is === 'unit') && COUNTERS.has(before.text)
}

const isCountWord = (lexeme: Lexeme | undefined): boolean =>
  lexeme?.is === 'word' && /^(?:of|bolts?|nuts?|screws?|times|each|studs?)$/.test(lexeme.text)

/** `two or three turns`, `an hour or two`: figures close together. `250 hours or 9 months` is two intervals. */
const isAlternative = (first: Term, second: Term): boolean => {
  if (second.value <= first.value || second.value > first.value * 3) return false
  return first.unit === undefined ? second.unit !== undefined : second.unit === undefined && first.value <= 2
}

const joinEnds = (first: Term, second: Term, isOr: boolean): Ends | undefined => {
  const notes: string[] = []
  let low = first
  const bottom = second.number?.numeral
  const top = first.number?.numeral
  // "five to seven tenths": both ends are tenths.
  if (
    first.unit === undefined &&
    top?.denominator === undefined &&
    bottom?.denominator !== undefined &&
    bottom.numerator !== undefined &&
    first.value >= second.value &&
    Number.isInteger(first.value)
  )
    low = { ...first, value: first.value / bottom.denominator }
  // "two to three hundred": both ends are hundreds.
  else if (
    first.unit === undefined &&
    bottom?.scale !== undefined &&
    first.value > 0 &&
    first.value < 20 &&
    first.value * bottom.scale < second.value &&
    top?.hasPoint !== true
  ) {
    low = { ...first, value: first.value * bottom.scale }
    notes.push(`“${first.number?.text ?? ''}” read as ${low.value}, like the other end of the range`)
  }
  let high = second
  // "three tenths to four": both ends are tenths.
  if (
    !isOr &&
    second.unit === undefined &&
    top?.denominator !== undefined &&
    top.denominator >= 10 &&
    bottom?.denominator === undefined &&
    Number.isInteger(second.value) &&
    second.value / top.denominator > low.value
  )
    high = { ...second, value: second.value / top.denominator }
  // "one twenty to thirty": the second end leaves out its hundred.
  if (
    !isOr &&
    high.value < low.value &&
    low.value >= 100 &&
    high.value >= 10 &&
    high.value < 100 &&
    (first.unit === undefined || second.unit === undefined)
  ) {
    const value = low.value - (low.value % 100) + high.value
    if (value > low.value) {
      notes.push(`“${high.number?.text ?? ''}” read as ${value}, like the other end of the range`)
      high = { ...high, value }
    }
  }
  // "point four to five": the second end leaves out its point.
  if (
    top?.hasPoint === true &&
    low.value < 1 &&
    high.number?.numeral.hasPoint !== true &&
    Number.isInteger(high.value) &&
    high.value > 0 &&
    high.value < 10 &&
    bottom?.denominator === undefined &&
    first.unit === undefined &&
    String(low.value).length === 3 &&
    high.value > low.value * 10
  ) {
    high = { ...high, value: high.value / 10 }
    notes.push(`“${second.number?.text ?? ''}” read as ${high.value}, like the other end of the range`)
  }
  return { low, high, to: second.to, notes }
}
