import { z } from 'zod'
import { openObject } from './schema'

const seconds = z.number().min(0)

/** The footage a project speaks of. The file itself is never stored; the fingerprint tells whether it is the same. */
export const footageSchema = openObject({
  name: z.string(),
  /** File size. */
  bytes: z.number().min(0),
  /** Duration. */
  seconds,
  /** Hex digest of size and samples of the file; see lib/footage/fingerprint.ts. */
  fingerprint: z.string(),
})
export type Footage = z.infer<typeof footageSchema>

/** A timed line as the file had it. Untimed text has start = end = 0 until aligned. */
export const cueSchema = openObject({
  start: seconds,
  end: seconds,
  /** As the file had it, mark-up removed; never altered. */
  text: z.string(),
  speaker: z.string().exactOptional(),
  /** What the user made of `text`; shown and read instead of it. */
  corrected: z.string().exactOptional(),
})
export type Cue = z.infer<typeof cueSchema>

/** One word with its time. */
export const wordSchema = openObject({ start: seconds, end: seconds, text: z.string() })
export type Word = z.infer<typeof wordSchema>

/** How a transcript was written. */
export const FORMS = ['webvtt', 'subrip', 'timed-text', 'recogniser-json', 'table', 'untimed'] as const
export const formSchema = z.enum(FORMS)
export type Form = z.infer<typeof formSchema>

export const transcriptSchema = openObject({
  name: z.string(),
  form: formSchema,
  cues: z.array(cueSchema).readonly(),
  words: z.array(wordSchema).readonly().exactOptional(),
})
export type Transcript = z.infer<typeof transcriptSchema>

export const recordingSchema = openObject({
  footage: footageSchema.nullable(),
  transcript: transcriptSchema.nullable(),
})

/** @returns the words of a cue as the user corrected them, or as the file had them. */
export const cueText = (cue: Cue): string => cue.corrected ?? cue.text

/**
 * A sentence reflowed across cues; computed by lib/transcript/sentence.ts, never stored. `text` is what was said as the
 * user corrected it (tail repeated by rolling captions left out), white space folded to single spaces.
 */
export type Sentence = {
  readonly start: number
  readonly end: number
  readonly text: string
  readonly speaker?: string
  /** Each spoken word of `text` with its time and its offset in `text`. */
  readonly words: readonly SpokenWord[]
}

/** A word of a sentence: offsets [at, to) into the sentence's text, time span in seconds, index of the cue it is from. */
export type SpokenWord = {
  readonly at: number
  readonly to: number
  readonly start: number
  readonly end: number
  readonly cue: number
}

/** @returns where a talk ends, in seconds; 0 for none and for one without times. */
export const talkEnd = (transcript: Transcript | null): number =>
  transcript?.cues.reduce((latest, { end }) => Math.max(latest, end), 0) ?? 0
