/** Buckets a second: fine enough to see a syllable, 1.4 MB for an hour. */
export const PEAKS_PER_SECOND = 100

/** Loudest sample of each bucket. */
export type Peaks = {
  readonly perSecond: number
  /** Greatest absolute sample of each bucket, 0 to about 1. */
  readonly peaks: Float32Array
  /** Duration covered, seconds. */
  readonly seconds: number
}

/** One piece of decoded sound: what every channel plays from `start` on. */
export type SoundPiece = {
  /** Time of the first sample, seconds; may be below 0 (samples before 0 are never played). */
  readonly start: number
  /** Hz */
  readonly rate: number
  /** Samples a channel, all of one length, -1 to 1. */
  readonly channels: readonly Float32Array[]
}

/**
 * Takes the peaks of one piece into the buckets; pieces may come in any order and overlap.
 *
 * @param peaks changed in place; buckets of 1/`perSecond` s from time 0
 * @param piece decoded sound
 * @param perSecond buckets a second
 */
export const addPeaks = (peaks: Float32Array, piece: SoundPiece, perSecond: number = PEAKS_PER_SECOND): void => {
  const { start, rate } = piece
  for (const samples of piece.channels) {
    let at = start < 0 ? Math.ceil(-start * rate) : 0
    while (at < samples.length) {
      const bucket = Math.floor((start + at / rate) * perSecond + 1e-6)
      if (bucket >= peaks.length) break
      const until = Math.min(
        samples.length,
        Math.max(at + 1, Math.ceil(((bucket + 1) / perSecond - start) * rate - 1e-6)),
      )
      let loudest = peaks[bucket] ?? 0
      for (; at < until; at++) {
        const sample = samples[at] ?? 0
        if (sample > loudest) loudest = sample
        else if (-sample > loudest) loudest = -sample
      }
      peaks[bucket] = loudest
    }
  }
}

/** @returns buckets for `seconds` of sound, all silent */
export const silentPeaks = (seconds: number, perSecond: number = PEAKS_PER_SECOND): Float32Array =>
  new Float32Array(Math.max(1, Math.ceil(seconds * perSecond - 1e-6)))

/**
 * Coarser peaks for a wider view: the loudest of each group of buckets.
 *
 * @param count how many buckets are wanted; at least 1
 * @returns `count` buckets over the same duration; the same array when it is already as coarse
 */
export const coarser = (peaks: Float32Array, count: number): Float32Array => {
  if (count >= peaks.length) return peaks
  const out = new Float32Array(Math.max(1, Math.floor(count)))
  for (let i = 0; i < peaks.length; i++) {
    const to = Math.min(out.length - 1, Math.floor((i * out.length) / peaks.length))
    const value = peaks[i] ?? 0
    if (value > (out[to] ?? 0)) out[to] = value
  }
  return out
}
