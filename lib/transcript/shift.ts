import type { Transcript } from '@/lib/procedure/recording'
import type { Span } from '@/lib/procedure/time'

const moved = <T extends Span>(item: T, seconds: number): T => ({
  ...item,
  start: Math.max(0, item.start + seconds),
  end: Math.max(0, item.end + seconds),
})

/**
 * Moves cues and words in time, for a transcript that runs ahead of its footage or behind it.
 *
 * @param seconds to add, negative to subtract; no time goes below 0
 * @param range cues and words that start in it are moved; all where absent. Seconds, half-open
 */
export const shiftTranscript = (transcript: Transcript, seconds: number, range?: Span): Transcript => {
  const isMeant = (item: Span) => range === undefined || (item.start >= range.start && item.start < range.end)
  const shift = <T extends Span>(item: T): T => (isMeant(item) ? moved(item, seconds) : item)
  const { words } = transcript
  return {
    ...transcript,
    cues: transcript.cues.map(shift),
    ...(words === undefined ? {} : { words: words.map(shift) }),
  }
}
