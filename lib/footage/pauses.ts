import { firstIndex } from '@/lib/procedure/search'
import type { Span } from '@/lib/procedure/time'

/** How far a moment may be moved to a pause, seconds. */
const REACH = 1.5

/** Room left between an edge and the speech beside it, seconds; half the pause where that is shorter. */
const MARGIN = 0.05

/** @returns index of the first span that ends after `at`; spans in order, not overlapping */
const firstAfter = (spans: readonly Span[], at: number): number =>
  firstIndex(spans.length, i => (spans[i]?.end ?? 0) > at)

/**
 * Where an edge let go at a moment should land so that it cuts no speech.
 *
 * @param at seconds
 * @param speech spans of speech, in order
 * @returns `at` itself when it lies in a pause or no pause lies within 1.5 s; else a moment in the nearest pause, close
 *   to the speech it was in
 */
export const snapToPause = (at: number, speech: readonly Span[]): number => {
  const i = firstAfter(speech, at)
  const inside = speech[i]
  if (inside === undefined || at < inside.start) return at
  const before = inside.start - Math.min(MARGIN, (inside.start - (speech[i - 1]?.end ?? inside.start - 1)) / 2)
  const after = inside.end + Math.min(MARGIN, ((speech[i + 1]?.start ?? inside.end + 1) - inside.end) / 2)
  const nearest = at - before <= after - at ? Math.max(0, before) : after
  return Math.abs(nearest - at) <= REACH ? nearest : at
}

/**
 * A span with its edges moved out of the words they cut: outwards, so that no word that was begun inside is lost.
 *
 * @param words with times, in order
 */
export const withWholeWords = (span: Span, words: readonly Span[]): Span => {
  const cut = (at: number) => {
    const word = words[firstAfter(words, at)]
    return word !== undefined && word.start < at ? word : undefined
  }
  return { start: cut(span.start)?.start ?? span.start, end: cut(span.end)?.end ?? span.end }
}
