import type { Sentence, Transcript } from '@/lib/procedure/recording'
import type { Span } from '@/lib/procedure/time'

/**
 * Roughly when each sentence is said, as a transcript with times tells: within the cues it stands in, each up to the next
 * one's start at the least. One time a paragraph is enough.
 *
 * @returns one a sentence; undefined where there are no times. Nothing at all for an untimed transcript
 */
export const hintsOf = (
  { form, cues }: Transcript,
  sentences: readonly Sentence[],
): readonly (Span | undefined)[] | undefined => {
  if (form === 'untimed' || cues.every(({ start }) => start === cues[0]?.start)) return undefined
  const starts = cues.map(({ start }) => start).sort((a, b) => a - b)
  const endOf = (cue: number): number => {
    const { start = 0, end = 0 } = cues[cue] ?? {}
    return Math.max(end, starts.find(other => other > start) ?? Number.POSITIVE_INFINITY)
  }
  return sentences.map(({ words }) => {
    const own = [...new Set(words.map(({ cue }) => cue))]
    if (own.length === 0) return undefined
    return { start: Math.min(...own.map(cue => cues[cue]?.start ?? 0)), end: Math.max(...own.map(endOf)) }
  })
}
