/** Samples of a frame: 10 ms at 16 kHz. */
const FRAME = 160

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
  const levels = Float32Array.from({ length: Math.floor(samples.length / FRAME) }, (_, i) => {
    let sum = 0
    for (let k = i * FRAME; k < (i + 1) * FRAME; k++) sum += (samples[k] ?? 0) ** 2
    return 10 * Math.log10(sum / FRAME + 1e-9)
  })
  const sorted = levels.slice().sort()
  const [quiet, loud] = [0.1, 0.9].map(share => sorted[Math.floor(sorted.length * share)] ?? -90)
  const limit = (quiet ?? -90) + Math.max(RISE, SHARE * ((loud ?? 0) - (quiet ?? -90)))
  return (start, end) => {
    const first = Math.ceil(start * 100)
    let frame = first
    while (frame < end * 100 - 5 && (levels[frame] ?? 0) < limit) frame++
    return frame - first >= SILENCE ? frame / 100 : start
  }
}
