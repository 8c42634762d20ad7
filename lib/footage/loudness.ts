import { countOf } from '@/lib/procedure/count'
import type { Span } from '@/lib/procedure/time'
import { kWeighting } from './k-weighting'
import type { SoundPiece } from './peaks'
import { truePeak } from './true-peak'

/** What was measured of a sound. */
export type Loudness = {
  /** Integrated loudness, LUFS; -Infinity where nothing is louder than the absolute gate or it is shorter than 0.4 s. */
  readonly integrated: number
  /** Greatest value, between samples too, dBTP; -Infinity for silence. */
  readonly truePeak: number
  /** Greatest sample, dBFS; -Infinity for silence. */
  readonly samplePeak: number
  /** Seconds measured. */
  readonly seconds: number
}

// Values of ITU-R BS.1770-4 annex 1, from memory. Blocks of 0.4 s every 0.1 s.
const [HOPS_PER_SECOND, HOPS_IN_BLOCK] = [10, 4]
/** Offset that makes a 997 Hz sine of full scale in one channel read -3.01. */
const OFFSET = -0.691
/** Blocks below are never counted, LUFS. */
const ABSOLUTE_GATE = -70
/** Blocks so far below the mean of the others are not counted, LU. */
const RELATIVE_GATE = -10
/** Weight of sound from the side or behind (about +1.5 dB). */
const AROUND = 1.41

/** Weights in the usual order of channels (L R, L R C, L R Ls Rs, L R C Ls Rs, L R C LFE Ls Rs); others all count as in front. */
const WEIGHTS: Readonly<Record<number, readonly number[]>> = {
  4: [1, 1, AROUND, AROUND],
  5: [1, 1, 1, AROUND, AROUND],
  6: [1, 1, 1, 0, AROUND, AROUND],
}

const toDecibels = (power: number): number => 10 * Math.log10(power)
const toLoudness = (power: number): number => OFFSET + toDecibels(power)

/** Mean of what lies over both gates, as loudness. */
const gated = (powers: readonly number[]): number => {
  const mean = (over: number) => {
    let [sum, count] = [0, 0]
    for (const power of powers)
      if (toLoudness(power) > over) {
        sum += power
        count++
      }
    return count === 0 ? Number.NEGATIVE_INFINITY : toLoudness(sum / count)
  }
  return mean(Math.max(ABSOLUTE_GATE, mean(ABSOLUTE_GATE) + RELATIVE_GATE))
}

/**
 * Measures loudness in a stream.
 *
 * @param rate Hz, at least 8000
 * @param channels how many, in the usual order
 * @returns `push` takes the next samples of every channel, arrays of one length; `measure` gives the reading so far.
 *   Keeps 8 bytes for each 0.1 s, 0.3 MB an hour.
 * @source ITU-R BS.1770-4
 */
export const loudnessMeter = (rate: number, channels: number) => {
  const weights = WEIGHTS[channels] ?? Array.from({ length: channels }, () => 1)
  const weighted = weights.map(() => kWeighting(rate))
  const peaks = weights.map(() => truePeak(rate))
  const hops: number[] = []
  const blocks: number[] = []
  let [frames, hop, sum, loudest] = [0, 1, 0, 0]
  const close = () => {
    hops.push(sum)
    sum = 0
    if (hops.length > HOPS_IN_BLOCK) hops.shift()
    const length =
      Math.round((hop * rate) / HOPS_PER_SECOND) - Math.round(((hop - HOPS_IN_BLOCK) * rate) / HOPS_PER_SECOND)
    if (hops.length === HOPS_IN_BLOCK) blocks.push(hops.reduce((all, one) => all + one, 0) / length)
    hop++
  }
  return {
    push: (samples: readonly Float32Array[]): void => {
      const length = samples[0]?.length ?? 0
      for (let at = 0; at < length; ) {
        const end = Math.round((hop * rate) / HOPS_PER_SECOND)
        const to = Math.min(length, at + end - frames)
        for (const [i, weight] of weights.entries()) {
          const channel = samples[i]
          if (channel !== undefined && weight > 0) sum += weight * (weighted[i]?.(channel, at, to) ?? 0)
        }
        frames += to - at
        at = to
        if (frames === end) close()
      }
      for (const [i, channel] of samples.entries()) {
        peaks[i]?.push(channel)
        for (const sample of channel) loudest = Math.max(loudest, Math.abs(sample))
      }
    },
    measure: (): Loudness => ({
      integrated: gated(blocks),
      truePeak: 2 * toDecibels(Math.max(loudest, ...peaks.map(({ peak }) => peak))),
      samplePeak: 2 * toDecibels(loudest),
      seconds: frames / rate,
    }),
  }
}

/**
 * Measures decoded sound, such as soundPieces gives it.
 *
 * @param span seconds to be measured; what pieces hold outside of it is left out
 * @returns undefined where the span holds no sound
 * @throws RangeError where rate or channels change on the way; the signal's reason through `pieces`
 */
export const measureLoudness = async (
  pieces: AsyncIterable<SoundPiece> | Iterable<SoundPiece>,
  span: Span = { start: 0, end: Number.POSITIVE_INFINITY },
): Promise<Loudness | undefined> => {
  let meter: ReturnType<typeof loudnessMeter> | undefined
  let kind = ''
  for await (const { start, rate, channels } of pieces) {
    const own = `${countOf(channels.length, 'channel')} at ${rate} Hz`
    if (kind !== '' && own !== kind) throw new RangeError(`the sound changes from ${kind} to ${own} at ${start} s`)
    kind = own
    meter ??= loudnessMeter(rate, channels.length)
    const at = (seconds: number) => Math.max(0, Math.round(Math.min(seconds - start, 1e6) * rate))
    meter.push(channels.map(samples => samples.subarray(at(span.start), at(span.end))))
  }
  const measured = meter?.measure()
  return measured === undefined || measured.seconds === 0 ? undefined : measured
}
