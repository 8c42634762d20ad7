import type { Lexeme } from './lexemes'
import { lateUnit, limits, suffixBound } from './phrase-limits'
import { type Bound, type Prefix, readPrefix } from './prefix'
import { type Ends, isRatio, readSecondEnd } from './range-ends'
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

/** "plus or minus six thou" with nothing before it: limits about nought. */
const aloneTolerance = (lexemes: readonly Lexeme[], i: number, prefix: Prefix, term: Term): Phrase => {
  const after = lexemes[term.to]
  const to = after?.is === 'role' && after.role === 'either-way' ? term.to + 1 : term.to
  return {
    low: -Math.abs(term.value),
    high: Math.abs(term.value),
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
