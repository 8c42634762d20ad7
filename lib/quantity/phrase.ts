import type { Lexeme } from './lexemes'
import { type Bound, type Prefix, readPrefix } from './prefix'
import { readTerm, type Term } from './terms'
import { readTolerance, readUneven, type Tolerance } from './tolerance'
import type { UnitWord } from './unit-words'

/** A quantity as it stands in the talk, before units are resolved and doubtful ones thrown out. */
export type Phrase = {
  readonly low?: number
  readonly high?: number
  readonly nominal?: number
  readonly unit?: UnitWord
  /** Lexeme indices [from, to). */
  readonly from: number
  readonly to: number
  /** The first term, for what its number was like. */
  readonly term: Term
  readonly isApproximate: boolean
  readonly hasTolerance: boolean
  readonly isRange: boolean
  readonly bound?: Bound
  /** A comparison that a rejection after it may turn round: `if it's under six`. */
  readonly comparison?: 'more' | 'less'
  readonly prefix?: Prefix
  readonly notes: readonly string[]
}

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

type Ends = { readonly low: Term; readonly high: Term; readonly to: number; readonly notes: readonly string[] }

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
  const isUpTo = prefix.style === 'from' && sign.is === 'role' && sign.role === 'up-to'
  const isAnd = prefix.style === 'between' && ['and', '&', 'or'].includes(sign.text)
  if (!(isRangeSign(sign) || isUpTo || isOr || isAnd)) return undefined
  at++
  if (sign.text === 'to' && lexemes[at]?.text === '-' && lexemes[at]?.isGlued === true) at++
  return { to: at, isOr }
}

/** `fifty to one`: a ratio and no range. */
const isRatio = (lexemes: readonly Lexeme[], first: Term, i: number): boolean => {
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
const readSecondEnd = (lexemes: readonly Lexeme[], first: Term, prefix: Prefix): Ends | undefined => {
  const word = rangeWord(lexemes, first.to, prefix)
  if (word === undefined || isRatio(lexemes, first, word.to)) return undefined
  if (first.unit === undefined && prefix.style === undefined && isCounted(lexemes, first.from)) return undefined
  let at = kindly(lexemes, word.to)
  const sign = lexemes[at]
  if (sign?.is === 'role' && sign.role === 'plus' && first.isNegative === true) at++
  const second = readTerm(lexemes, at, false)
  if (second === undefined) return undefined
  if (word.isOr && !isAlternative(first, second)) return undefined
  if (
    !word.isOr &&
    first.unit !== undefined &&
    second.unit === undefined &&
    prefix.style !== 'between' &&
    isCountWord(lexemes[second.to])
  )
    return undefined
  return joinEnds(first, second, word.isOr)
}

const isCounted = (lexemes: readonly Lexeme[], i: number): boolean => {
  const before = lexemes[i - 1]
  return before !== undefined && (before.is === 'word' || before.is === 'unit') && COUNTERS.has(before.text)
}

const isCountWord = (lexeme: Lexeme | undefined): boolean =>
  lexeme?.is === 'word' && /^(?:of|bolts?|nuts?|screws?|times|each|studs?)$/.test(lexeme.text)

/** `two or three turns`, `an hour or two`: figures close together. `100 hours or 6 months` is two intervals. */
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
  // "point six to eight": the second end leaves out its point.
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

const suffixBound = (lexemes: readonly Lexeme[], to: number): { bound: Bound; to: number } | undefined => {
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

const SUFFIX: Readonly<Record<string, Bound>> = {
  max: 'high',
  'at-most': 'high',
  'max-after': 'high',
  min: 'low',
  'at-least': 'low',
  'min-after': 'low',
}

/** Limits from ends, tolerance and bound. */
const limits = (
  ends: Ends | undefined,
  term: Term,
  tolerance: Tolerance | undefined,
  bound: Bound | undefined,
): { low?: number; high?: number; nominal?: number } => {
  if (tolerance !== undefined) {
    const low = term.value - tolerance.minus
    const high = term.value + tolerance.plus
    return { low: clean(low), high: clean(high), nominal: term.value }
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

const MIXED = new Set([
  'mix',
  'ratio',
  'premix',
  'fuel',
  'oil',
  'gas',
  'petrol',
  'mixture',
  'blend',
  'dilution',
  'diluted',
  'dilute',
  'mixed',
  'water',
  'concentrate',
  'resin',
  'hardener',
  'gearing',
  'reduction',
])

/** `50:1`, `thirty-two to one mix`: a ratio, where something is mixed or geared. */
const readRatio = (lexemes: readonly Lexeme[], i: number, prefix: Prefix, term: Term): Phrase | undefined => {
  const sign = lexemes[term.to]
  if (sign?.text !== 'to' && !(sign?.text === ':' && sign.isGlued)) return undefined
  if (!isRatio(lexemes, term, term.to + 1)) return undefined
  const near = lexemes.slice(Math.max(0, i - 8), term.to + 6)
  const isWhole = i === 0 && (lexemes[term.to + 2] === undefined || lexemes[term.to + 2]?.is === 'stop')
  if (!isWhole && !near.some(lexeme => MIXED.has(lexeme.text))) return undefined
  return { ...build(lexemes, i, prefix, { ...term, unit: { code: '1', count: 'any' }, to: term.to + 2 }, undefined) }
}

/**
 * The phrase of a limit that starts at lexeme `i`, with everything that belongs to it: bound, range, tolerance.
 *
 * @returns undefined where none starts there
 */
export const readPhrase = (lexemes: readonly Lexeme[], i: number): Phrase | undefined => {
  const prefix = readPrefix(lexemes, i)
  const start = prefix.to
  const uneven = start === i ? readUneven(lexemes, i, { value: 0, numeral: undefined }) : undefined
  if (uneven !== undefined) return aloneUneven(i, prefix, uneven)
  const term = readTerm(lexemes, start, true)
  if (term === undefined) return undefined
  if (prefix.style === 'plus-minus') return aloneTolerance(lexemes, i, prefix, term)
  const ratio = readRatio(lexemes, i, prefix, term)
  if (ratio !== undefined) return ratio
  const ends = readSecondEnd(lexemes, term, prefix)
  return build(lexemes, i, prefix, term, ends)
}

/** `thirty-four, give or take one, psi`: the unit after a comma and nothing else. */
const lateUnit = (lexemes: readonly Lexeme[], i: number): { unit: UnitWord; to: number } | undefined => {
  const unit = lexemes[i + 1]
  if (lexemes[i]?.text !== ',' || unit?.is !== 'unit' || unit.unit.isSymbol === true || unit.unit.code === undefined)
    return undefined
  const after = lexemes[i + 2]
  return after === undefined || after.is === 'stop' ? { unit: unit.unit, to: i + 2 } : undefined
}

const build = (lexemes: readonly Lexeme[], i: number, prefix: Prefix, term: Term, ends: Ends | undefined): Phrase => {
  let to = ends?.to ?? term.to
  const unit = ends === undefined ? term.unit : (ends.high.unit ?? ends.low.unit)
  const tolerance = readTolerance(
    lexemes,
    to,
    { value: term.value, ...(unit === undefined ? {} : { unit }), numeral: term.number?.numeral },
    ends !== undefined,
  )
  const isToleranced = tolerance !== undefined && ends === undefined
  if (tolerance !== undefined) to = tolerance.to
  let bound = prefix.bound
  let isApproximate = prefix.isApproximate || term.isVague === true
  if (!isToleranced) {
    const orSo = lexemes[to]
    if (orSo?.is === 'role' && orSo.role === 'or-so') {
      isApproximate = true
      to++
    }
    const suffix = bound === undefined || ends !== undefined ? suffixBound(lexemes, to) : undefined
    if (suffix !== undefined) {
      to = suffix.to
      if (ends === undefined) bound = suffix.bound
    }
  }
  let finalUnit = isToleranced ? (unit ?? tolerance.unit) : unit
  if (finalUnit === undefined) {
    const late = lateUnit(lexemes, to)
    if (late !== undefined) {
      finalUnit = late.unit
      to = late.to
    }
  }
  return {
    ...limits(ends, term, isToleranced ? tolerance : undefined, bound),
    ...(finalUnit === undefined ? {} : { unit: finalUnit }),
    from: i,
    to,
    term: ends?.low ?? term,
    isApproximate,
    hasTolerance: isToleranced,
    isRange: ends !== undefined,
    ...(bound === undefined || isToleranced || ends !== undefined ? {} : { bound }),
    ...(prefix.comparison === undefined ? {} : { comparison: prefix.comparison }),
    prefix,
    notes: [...(ends?.notes ?? []), ...term.slips, ...(ends?.high.slips ?? []), ...(tolerance?.notes ?? [])],
  }
}

/** "plus zero minus two thou" with nothing before it. */
const aloneUneven = (i: number, prefix: Prefix, { plus, minus, unit, to, notes }: Tolerance): Phrase => ({
  low: minus === 0 ? 0 : -minus,
  high: plus,
  ...(unit === undefined ? {} : { unit }),
  from: i,
  to,
  term: { value: plus, from: i, to, slips: [] },
  isApproximate: false,
  hasTolerance: true,
  isRange: false,
  prefix,
  notes: [...notes, 'a tolerance without the value it is about'],
})

/** "plus or minus two thou" with nothing before it: limits about nought. */
const aloneTolerance = (lexemes: readonly Lexeme[], i: number, prefix: Prefix, term: Term): Phrase => {
  const after = lexemes[term.to]
  const to = after?.is === 'role' && after.role === 'either-way' ? term.to + 1 : term.to
  return {
    low: -term.value,
    high: term.value,
    ...(term.unit === undefined ? {} : { unit: term.unit }),
    from: i,
    to,
    term,
    isApproximate: false,
    hasTolerance: true,
    isRange: false,
    prefix,
    notes: ['a tolerance without the value it is about'],
  }
}
