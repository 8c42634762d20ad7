import type { SoundPiece } from './peaks'
import { resampler, toMono } from './resample'

/** Hz that speech detector and aligner hear. */
export const VOICE_RATE = 16_000

/** Zero crossings of the filter: coarse, for telling speech from none; see resample.ts. */
const COARSE = 4

/** Gaps between pieces below this are rounding, seconds. */
const ROUNDING = 0.03

/**
 * Turns pieces of any rate and number of channels into one mono stream at 16 kHz that begins at time 0: what lies before
 * it is dropped, gaps are filled with silence.
 *
 * @param onSamples takes the stream, part by part
 * @param crossings of the filter; 12 for alignment
 * @param from time the stream begins at instead, seconds
 */
export const voiceStream = (onSamples: (samples: Float32Array<ArrayBuffer>) => void, crossings = COARSE, from = 0) => {
  let stream: ReturnType<typeof resampler> | undefined
  let rate = 0
  let scratch = new Float32Array()
  let at = from
  const silence = (seconds: number) => {
    for (let left = seconds; left > 0; left -= 10)
      onSamples(stream?.push(new Float32Array(Math.round(Math.min(10, left) * rate))) ?? new Float32Array())
  }
  return {
    push: (piece: SoundPiece): void => {
      if (stream === undefined || piece.rate !== rate) {
        if (stream !== undefined) onSamples(stream.end())
        rate = piece.rate
        stream = resampler(rate, VOICE_RATE, crossings)
      }
      const late = piece.start - at
      if (late > ROUNDING) {
        silence(late)
        at = piece.start
      }
      const { length } = piece.channels[0] ?? []
      if (scratch.length < length) scratch = new Float32Array(length)
      const mono = toMono(piece, scratch)
      const early = late < -ROUNDING ? Math.min(mono.length, Math.round(-late * rate)) : 0
      const fresh = mono.subarray(early)
      onSamples(stream.push(fresh))
      at += fresh.length / rate
    },
    end: (): void => {
      if (stream !== undefined) onSamples(stream.end())
    },
  }
}
