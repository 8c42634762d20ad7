import type { Sentence, Transcript } from '@/lib/procedure/recording'
import { toSentences } from '@/lib/transcript/sentence'
import { type Reading, readSentence } from './feature'
import { limitFeatures } from './place-feature'
import { findLimits, type LimitFound } from './spec-feature'
import { findReplaced, type Replaced, withoutTakenBack, withReplaced } from './taken-back'

/** A transcript read for drafting: its sentences, what they are made of, and the limits in them. */
export type Talk = {
  readonly sentences: readonly Sentence[]
  readonly readings: readonly Reading[]
  /** The same as a writer hears them: without what the speaker took back, in that sentence or the next. */
  readonly told: readonly Reading[]
  readonly limits: readonly LimitFound[]
  /** Limits that the next sentence takes back, by their sentence. */
  readonly replaced: ReadonlyMap<number, Replaced>
  /** Feature names of the limits, by sentence. */
  readonly limitNames: ReadonlyMap<number, readonly string[]>
}

/**
 * Reads a transcript for drafting.
 *
 * @param onProgress called with the share done, 0 to 1, now and then
 */
export const readTalk = (transcript: Transcript, onProgress: (done: number) => void = () => {}): Talk => {
  const sentences = toSentences(transcript)
  onProgress(0.2)
  const readings = sentences.map(sentence => readSentence(sentence.text))
  onProgress(0.5)
  const limits = findLimits(sentences, readings)
  onProgress(0.7)
  const replaced = findReplaced(readings, limits)
  const told = readings.map((reading, i) => {
    const slip = replaced.get(i)
    const text = withoutTakenBack(slip === undefined ? reading.text : withReplaced(reading.text, slip))
    return text === reading.text ? reading : readSentence(text)
  })
  return { sentences, readings, told, limits, replaced, limitNames: limitFeatures(limits) }
}
