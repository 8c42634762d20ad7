import type { Problem } from '@/lib/procedure/problem'
import type { Cue, Word } from '@/lib/procedure/recording'

/** What the reader of one format found: cues in the order of the file, and every line it could not read. */
export type Reading = {
  readonly cues: readonly Cue[]
  /** Words with times of their own, in order, where the format has them. */
  readonly words?: readonly Word[]
  readonly problems: readonly Problem[]
}

/** Lines of a text; line feed, carriage return or both end one. */
export const toLines = (text: string): readonly string[] => text.split(/\r\n|\n|\r/)

const LONGEST_QUOTE = 400

/** A line in quotation marks for a message, cut where it would flood the screen. */
export const quote = (text: string): string => {
  const flat = text
    .trim()
    .split('\n')
    .map(line => line.trim())
    .join(' / ')
  if (flat.length <= LONGEST_QUOTE) return `"${flat}"`
  return `"${flat.slice(0, LONGEST_QUOTE)}…" (${flat.length - LONGEST_QUOTE} more characters)`
}

/**
 * A problem about one line.
 *
 * @param line counted from 1
 */
export const atLine = (line: number, code: string, message: string): Problem => ({ code, message, place: { line } })

/** Words a second of someone who explains while working. Common practice, no source. */
export const SPEAKING_RATE = 2.7

/** Seconds it takes to say a text; at least one. */
export const toSpeakingTime = (text: string): number => Math.max(1, (text.match(/\S+/g)?.length ?? 0) / SPEAKING_RATE)

/** @returns a problem where a cue ends before it starts, which is kept as the file has it. */
export const doubtTimes = (cue: Cue, line: number): readonly Problem[] =>
  cue.end < cue.start
    ? [
        atLine(
          line,
          'ends-before-start',
          `this cue ends at ${cue.end} s, before it starts at ${cue.start} s; it is kept, and its words are timed at its start. Text: ${quote(cue.text)}`,
        ),
      ]
    : []

/** Share of a second, or of a ten-millionth, that recognisers count in besides whole seconds. */
const SCALES = [
  { slowerThan: 1e-5, scale: 1e-7 },
  { slowerThan: 0.1, scale: 0.001 },
] as const

/**
 * What turns times into seconds, by how fast people would speak if they were seconds: slower than a word in ten seconds
 * they must be milliseconds, slower than one in a day ticks of 100 ns.
 *
 * @param words said in all
 * @param length of all cues together in the unknown unit
 */
export const guessScale = (words: number, length: number): number =>
  words > 0 && length > 0 ? (SCALES.find(({ slowerThan }) => words / length < slowerThan)?.scale ?? 1) : 1
