import { levelAt, levelsOf } from './levels'

/** Silence shorter than this before a word may be a soft consonant, frames. */
const SILENCE = 15

/** Least rise above the quietest tenth, and the share of the way to the loudest tenth, decibels. */
const [RISE, SHARE] = [6, 0.3]

/**
 * Corrects starts of words that reach back into the silence before them, as forced alignment makes them where a pause is
 * short.
 *
 * @param samples 16 kHz mono of one piece
 * @returns a function from a word's start and end (seconds in the piece) to its start, later by the silence it began
 *   with where that is at least 0.15 s
 */
export const onsetIn = (samples: Float32Array): ((start: number, end: number) => number) => {
  const levels = levelsOf(samples)
  const sorted = levels.slice().sort()
  const [quiet, loud] = [levelAt(sorted, 0.1), levelAt(sorted, 0.9)]
  const limit = quiet + Math.max(RISE, SHARE * (loud - quiet))
  return (start, end) => {
    const first = Math.ceil(start * 100)
    let frame = first
    while (frame < end * 100 - 5 && (levels[frame] ?? 0) < limit) frame++
    return frame - first >= SILENCE ? frame / 100 : start
  }
}
