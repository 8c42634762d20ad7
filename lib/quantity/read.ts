import { settleBare, settleParts } from './bare-numbers'
import { findCondition, findQualities, readSpanned } from './conditions'
import { applyCorrections, sliceOf } from './corrections'
import { type Draft, type Drafted, type NoteKind, toDrafts } from './draft'
import { markEquivalents } from './equivalent-talk'
import type { Lexeme } from './lexemes'
import { joinLimits, shareUnits } from './lists'
import { placeTolerances } from './lone-tolerances'
import { whyNoSpec } from './not-specs'
import type { Quantity } from './quantity'
import { turnRejections } from './rejections'
import { type Surroundings, settleUnit } from './resolve'
import type { UnitWord } from './unit-words'

/** What was mended, settled or left open while reading. */
export type ReadingNote = {
  /** mended: a slip of the recogniser; settled: an ambiguity and how; withdrawn: a value taken back; question: still open. */
  readonly kind: NoteKind
  readonly text: string
}

/** A limit found in talk. */
export type Reading = {
  /** Empty where the limit is only qualitative. Without `unit` where none was said and none could be told. */
  readonly quantity: Quantity
  /** The condition it holds under or counts from, or the qualitative limit, as said. */
  readonly reference?: string
  /** The qualitative limit, where there is no number. */
  readonly qualitative?: string
  /** The words it was read from; offsets [at, to) into the text. */
  readonly text: string
  readonly at: number
  readonly to: number
  readonly notes: readonly ReadingNote[]
  readonly isApproximate?: boolean
  /** Which pass of a sequence it is, counted from 0: `to 10, then 20, then 34`. */
  readonly part?: number
  /** Index of the reading it is stated to equal: `32 N·m (24 lbf·ft)`. */
  readonly equivalentOf?: number
}

export type ReadOptions = {
  /** What was said before, nearest last; settles units and systems that the text leaves open. */
  readonly context?: string
}

const WINDOW = 24

const surroundings = (drafted: Drafted, draft: Draft, context: string): Surroundings => {
  const { lexemes, text, drafts } = drafted
  const words = (from: number, to: number): readonly string[] =>
    lexemes
      .slice(Math.max(0, from), to)
      .flatMap(lexeme => (lexeme.is === 'stop' ? [] : lexeme.text.replace(/'s$/, '').split(' ')))
  return {
    before: words(draft.from - WINDOW, Math.max(draft.from, draft.phrase.term.from)),
    after: words(draft.to, draft.to + WINDOW),
    beside: beside(drafts, draft),
    context,
    text,
    value: draft.nominal ?? draft.high ?? draft.low ?? 0,
    codes: drafts.flatMap(other =>
      other !== draft && other.dropped === undefined && other.unit?.code !== undefined ? [other.unit.code] : [],
    ),
  }
}

/** The values next to a draft whose units are certain. */
const beside = (drafts: readonly Draft[], draft: Draft): Surroundings['beside'] => {
  const live = drafts.filter(other => other.dropped === undefined)
  const i = live.indexOf(draft)
  return [live[i - 1], live[i + 1]].flatMap(other => {
    const value = other?.nominal ?? other?.high ?? other?.low
    const code = other?.code ?? other?.unit?.code
    return value === undefined || code === undefined ? [] : [{ value, code }]
  })
}

const unitWordOf = (drafted: Drafted, draft: Draft): string => {
  for (let i = draft.to - 1; i >= draft.from; i--) {
    const lexeme = drafted.lexemes[i]
    if (lexeme?.is === 'unit') return lexeme.text
  }
  return ''
}

const settleNamed = (drafted: Drafted, draft: Draft, unit: UnitWord, context: string): void => {
  const { code, note, isOpen } = settleUnit(unit, unitWordOf(drafted, draft), surroundings(drafted, draft, context))
  if (code !== undefined) draft.code = code
  if (note !== undefined) draft.notes.push({ kind: isOpen === true ? 'question' : 'settled', text: note })
  if (draft.isInherited === true && code !== undefined)
    draft.notes.push({ kind: 'settled', text: 'unit taken from the value beside it' })
}

const settle = (drafted: Drafted, draft: Draft, context: string): void => {
  if (draft.unit === undefined) {
    if (!settleParts(draft)) settleBare(drafted, draft, context)
  } else settleNamed(drafted, draft, draft.unit, context)
}

const isDuplicate = (a: Draft, b: Draft): boolean =>
  a.low === b.low && a.high === b.high && a.nominal === b.nominal && (a.code === b.code || b.unit === undefined)

/** The same value said twice is one reading. */
const dropRepeats = (drafts: readonly Draft[]): void => {
  const kept: Draft[] = []
  for (const draft of drafts) {
    if (draft.dropped !== undefined) continue
    if (kept.some(other => isDuplicate(other, draft))) draft.dropped = 'said before'
    else kept.push(draft)
  }
}

/** A tool's size said again is the same tool: `13 mil, no, 12, 12 mil spanner`. */
const dropToolSizes = (drafts: readonly Draft[]): void => {
  const sizes = drafts.filter(draft => draft.dropped === 'the size of a tool')
  for (const draft of drafts)
    if (
      draft.dropped === undefined &&
      sizes.some(
        size =>
          size.nominal !== undefined &&
          size.nominal === draft.nominal &&
          size.unit?.code === draft.unit?.code &&
          size.unit?.ambiguous === draft.unit?.ambiguous,
      )
    )
      draft.dropped = 'the size of a tool'
}

const markParts = (lexemes: readonly Lexeme[], drafts: readonly Draft[]): void => {
  let run: Draft[] = []
  const close = (): void => {
    if (run.length > 1)
      run.forEach((draft, i) => {
        draft.part = i
      })
    run = []
  }
  for (const draft of drafts) {
    const last = run.at(-1)
    if (last !== undefined && !isThen(lexemes, last.to, draft.from)) close()
    run.push(draft)
  }
  close()
}

const isThen = (lexemes: readonly Lexeme[], from: number, to: number): boolean => {
  if (to - from > 8) return false
  let isSequence = false
  for (let i = from; i < to; i++) {
    const word = lexemes[i]?.text ?? ''
    if (['.', ';', '?', '!'].includes(word)) return false
    if (
      ['then', 'pass', 'stage', 'followed', 'finally', 'plus', 'final', 'next', 'second', 'step', 'another'].includes(
        word,
      )
    )
      isSequence = true
  }
  return isSequence
}

const toReading = (drafted: Drafted, draft: Draft, kept: readonly Draft[]): Reading => {
  const { lexemes, text } = drafted
  const reference = draft.reference ?? findCondition(drafted, draft)
  const origin = draft.equivalentOf === undefined ? -1 : kept.indexOf(draft.equivalentOf)
  return {
    quantity: {
      ...(draft.low === undefined ? {} : { low: draft.low }),
      ...(draft.high === undefined ? {} : { high: draft.high }),
      ...(draft.nominal === undefined ? {} : { nominal: draft.nominal }),
      ...(draft.code === undefined ? {} : { unit: draft.code }),
    },
    ...(reference === undefined ? {} : { reference }),
    text: sliceOf(text, lexemes, draft),
    at: lexemes[draft.from]?.at ?? 0,
    to: lexemes[draft.to - 1]?.to ?? 0,
    notes: draft.notes,
    ...(draft.isApproximate ? { isApproximate: true } : {}),
    ...(draft.part === undefined ? {} : { part: draft.part }),
    ...(origin < 0 ? {} : { equivalentOf: origin }),
  }
}

/**
 * Every limit said or written in a text, in order: ranges, tolerances, one-sided limits, sequences, stated equivalents,
 * and limits without a number. What is no limit (sizes, grades, prices, dates, counts, values taken back) is left out.
 *
 * @param text one sentence or many; any string
 * @returns readings in the order of the text; values in the unit said, unrounded. Never throws; linear in length.
 */
export const readQuantities = (text: string, { context = '' }: ReadOptions = {}): readonly Reading[] => {
  const drafted = toDrafts(text)
  const { drafts, lexemes } = drafted
  applyCorrections(drafted)
  placeTolerances(drafted, context)
  shareUnits(drafted)
  joinLimits(drafted)
  for (const draft of drafts) {
    if (draft.dropped !== undefined || draft.unit === undefined) continue
    const reason = whyNoSpec(drafted, draft)
    if (reason !== undefined) draft.dropped = reason
  }
  dropToolSizes(drafts)
  readSpanned(drafted)
  for (const draft of drafts) if (draft.dropped === undefined) settle(drafted, draft, context)
  turnRejections(drafted)
  dropRepeats(drafts)
  const kept = drafts.filter(draft => draft.dropped === undefined)
  markEquivalents(lexemes, kept)
  markParts(lexemes, kept)
  const readings = kept.map(draft => toReading(drafted, draft, kept))
  const qualities = findQualities(drafted).map(
    ({ from, to, text: said }): Reading => ({
      quantity: {},
      reference: said,
      qualitative: said,
      text: said,
      at: lexemes[from]?.at ?? 0,
      to: lexemes[to - 1]?.to ?? 0,
      notes: [],
    }),
  )
  return qualities.length === 0 ? readings : merge(readings, qualities)
}

/** Qualities put among the readings by place; indices of equivalents follow. */
const merge = (readings: readonly Reading[], qualities: readonly Reading[]): readonly Reading[] => {
  const all = [...readings, ...qualities].sort((a, b) => a.at - b.at)
  return all.map(reading => {
    const original = reading.equivalentOf === undefined ? undefined : readings[reading.equivalentOf]
    return original === undefined ? reading : { ...reading, equivalentOf: all.indexOf(original) }
  })
}
