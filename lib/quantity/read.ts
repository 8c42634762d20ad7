import { findCondition, findQualities, type Places, placesOf, readSpanned } from './conditions'
import { applyCorrections, sliceOf } from './corrections'
import { type Draft, type Drafted, type NoteKind, toDrafts } from './draft'
import { markEquivalents } from './equivalent-talk'
import { joinLimits, shareUnits } from './lists'
import { placeTolerances } from './lone-tolerances'
import { findLooseQualities } from './loose-qualities'
import { whyNoSpec } from './not-specs'
import { joinPairs } from './pairs'
import type { Quantity } from './quantity'
import { turnRejections } from './rejections'
import { dropRepeats, dropToolSizes, markParts } from './repeats'
import { settleUnits } from './settle'

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
  /** Index of the reading it is stated to equal: `2.4 bar (35 psi)`. */
  readonly equivalentOf?: number
  /** Why it is probably no limit; only where doubtful readings were asked for. */
  readonly doubt?: string
}

export type ReadOptions = {
  /** What was said before, nearest last; settles units and systems that the text leaves open. */
  readonly context?: string
  /**
   * Keeps sizes, prices, asides and bare numbers too, each with its `doubt`, and leaves a bare number without unit where
   * its own sentence gives none: for a caller that weighs doubts itself.
   */
  readonly keepsDoubtful?: boolean
  /** The system the whole talk counts in, if the caller knows; else the text and what was said before tell. */
  readonly system?: 'us' | 'metric' | undefined
}

/** Doubts that no more of the talk can settle: such a phrase is left out even for a caller that weighs doubts itself. */
const SHUT_DOUBTS: ReadonlySet<string> = new Set([
  'the size of a tool',
  'a price',
  'part of what was said before',
  'what used to be',
])

const toReading = (
  { lexemes, text }: Drafted,
  draft: Draft,
  place: Places,
  indices: ReadonlyMap<Draft, number>,
): Reading => {
  const reference = draft.reference ?? findCondition(text, lexemes, draft, place)
  const origin = draft.equivalentOf === undefined ? undefined : indices.get(draft.equivalentOf)
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
    ...(origin === undefined ? {} : { equivalentOf: origin }),
    ...(draft.doubt === undefined ? {} : { doubt: draft.doubt }),
  }
}

/**
 * Every limit said or written in a text, in order: ranges, tolerances, one-sided limits, sequences, stated equivalents,
 * and limits without a number. What is no limit (sizes, grades, prices, dates, counts, values taken back) is left out.
 *
 * @param text one sentence or many; any string
 * @returns readings in the order of the text; values in the unit said, unrounded. Never throws; linear in length.
 */
export const readQuantities = (
  text: string,
  { context = '', keepsDoubtful = false, system }: ReadOptions = {},
): readonly Reading[] => {
  const drafted = toDrafts(text)
  const { drafts, lexemes } = drafted
  applyCorrections(drafted)
  placeTolerances(drafted, context)
  shareUnits(drafted)
  joinPairs(drafted)
  joinLimits(drafted)
  for (const draft of drafts) {
    if (draft.dropped !== undefined || draft.unit === undefined) continue
    const reason = whyNoSpec(drafted, draft)
    if (reason === undefined) continue
    if (keepsDoubtful && !SHUT_DOUBTS.has(reason)) draft.doubt = reason
    else draft.dropped = reason
  }
  dropToolSizes(drafts)
  readSpanned(drafted)
  settleUnits(drafted, context, { keepsDoubtful, system })
  turnRejections(drafted)
  dropRepeats(drafts)
  const kept = drafts.filter(draft => draft.dropped === undefined)
  markEquivalents(lexemes, kept)
  markParts(lexemes, kept)
  const places = placesOf(drafted)
  const indices = new Map(kept.map((draft, i) => [draft, i]))
  const readings = kept.map(draft => toReading(drafted, draft, places, indices))
  const qualities = findQualities(text, lexemes, places).map(
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
  if (keepsDoubtful) qualities.push(...looseOf(text, [...readings, ...qualities]))
  return qualities.length === 0 ? readings : merge(readings, qualities)
}

/** Limits without a number as freer talk puts them, but where something was read already. */
const looseOf = (text: string, read: readonly Reading[]): readonly Reading[] =>
  findLooseQualities(text)
    .filter(({ at, to }) => !read.some(other => at < other.to && to > other.at))
    .map(({ at, to, text: said }) => ({
      quantity: {},
      reference: said,
      qualitative: said,
      text: said,
      at,
      to,
      notes: [],
      doubt: 'a loose condition',
    }))

/** Qualities put among the readings by place; indices of equivalents follow. */
const merge = (readings: readonly Reading[], qualities: readonly Reading[]): readonly Reading[] => {
  const all = [...readings, ...qualities].sort((a, b) => a.at - b.at)
  return all.map(reading => {
    const original = reading.equivalentOf === undefined ? undefined : readings[reading.equivalentOf]
    return original === undefined ? reading : { ...reading, equivalentOf: all.indexOf(original) }
  })
}
