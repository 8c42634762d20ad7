import type { Transcript } from '@/lib/procedure/recording'

/** Words a second of someone talking while working. Common practice, no source: about 150 words a minute. */
const WORDS_PER_SECOND = 2.5

/**
 * Rough times for a text without any, from its number of words alone: for work without footage, until it is aligned.
 *
 * @returns cues one after the other from 0, form `timed-text`; words lose times of their own
 */
export const withRoughTimes = (transcript: Transcript): Transcript => {
  let at = 0
  const cues = transcript.cues.map(cue => {
    const start = at
    at += Math.max(1, cue.text.split(/\s+/).filter(word => word !== '').length) / WORDS_PER_SECOND
    return { ...cue, start, end: at }
  })
  const { words: _, ...rest } = transcript
  return { ...rest, form: 'timed-text', cues }
}
