import type { SoundPiece } from './peaks'

/** Zero crossings of the sinc on each side; a Hann window over 12 keeps what folds back under -50 dB. */
const CROSSINGS = 12

/** Mean of all channels. */
export const toMono = ({ channels }: Omit<SoundPiece, 'start'>): Float32Array => {
  const [first, ...others] = channels
  if (first === undefined) return new Float32Array()
  if (others.length === 0) return first
  const mono = new Float32Array(first.length)
  const [second, ...more] = others
  for (let i = 0; i < mono.length; i++) mono[i] = ((first[i] ?? 0) + (second?.[i] ?? 0)) / channels.length
  for (const channel of more)
    for (let i = 0; i < mono.length; i++) mono[i] = (mono[i] ?? 0) + (channel[i] ?? 0) / channels.length
  return mono
}

/** Steps of the table between two input samples. */
const PHASES = 64

/** Weights of a low-pass at the lower of both rates, for each phase: PHASES + 1 rows of `taps`. */
const weights = (ratio: number, crossings: number): { table: Float64Array; taps: number } => {
  const cut = Math.min(1, ratio) * 0.95
  const half = Math.ceil(crossings / cut)
  const taps = 2 * half
  const table = new Float64Array((PHASES + 1) * taps)
  for (let phase = 0; phase <= PHASES; phase++) {
    let sum = 0
    for (let tap = 0; tap < taps; tap++) {
      const x = tap - half + 1 - phase / PHASES
      const sinc = x === 0 ? 1 : Math.sin(Math.PI * cut * x) / (Math.PI * cut * x)
      const weight = Math.abs(x) >= half ? 0 : sinc * (0.5 + 0.5 * Math.cos((Math.PI * x) / half))
      table[phase * taps + tap] = weight
      sum += weight
    }
    for (let tap = 0; tap < taps; tap++) table[phase * taps + tap] = (table[phase * taps + tap] ?? 0) / sum
  }
  return { table, taps }
}

/**
 * Every `step`th sample, low-passed: the common case (48 to 16 kHz) in half the multiplications, as the filter is
 * symmetrical where it sits on a sample.
 *
 * @param middle index of the first output's sample
 * @param weights from the middle of the filter outwards
 */
const decimate = (out: Float32Array, all: Float32Array, middle: number, step: number, weights: Float64Array): void => {
  const [length, stride] = [weights.length, step | 0]
  let at = middle | 0
  for (let n = 0; n < out.length; n++) {
    // Two sums side by side: each addition would wait for the one before.
    let even = (weights[0] ?? 0) * (all[at] ?? 0)
    let odd = 0
    let k = 1
    for (; k + 1 < length; k += 2) {
      odd += (weights[k] ?? 0) * ((all[at - k] ?? 0) + (all[at + k] ?? 0))
      even += (weights[k + 1] ?? 0) * ((all[at - k - 1] ?? 0) + (all[at + k + 1] ?? 0))
    }
    if (k < length) odd += (weights[k] ?? 0) * ((all[at - k] ?? 0) + (all[at + k] ?? 0))
    out[n] = even + odd
    at = (at + stride) | 0
  }
}

/**
 * Resamples a mono stream piece by piece, exactly as if it were one: what a piece still needs from the next one waits.
 *
 * @param from Hz of the input
 * @param to Hz of the output; output sample n lies at n / `to` seconds after the first input sample
 * @param crossings of the filter on each side; 4 is three times faster and good enough to tell speech from none
 * @returns `push` takes the next samples and gives what is ready, `end` gives the rest
 */
export const resampler = (from: number, to: number, crossings = CROSSINGS) => {
  const ratio = to / from
  const { table, taps } = weights(ratio, crossings)
  const half = taps / 2
  // Half a filter of silence before the first sample, so that the output starts with it.
  let held = new Float32Array(half - 1)
  let offset = -(half - 1)
  let produced = 0
  const push = (samples: Float32Array): Float32Array<ArrayBuffer> => {
    if (from === to) return Float32Array.from(samples)
    const all = new Float32Array(held.length + samples.length)
    all.set(held)
    all.set(samples, held.length)
    const last = offset + all.length - half - 1
    const ready = Math.max(0, Math.floor(last * ratio) - produced + 1)
    const out = new Float32Array(ready)
    const begin = -half + 1 - offset
    if (from % to === 0)
      decimate(out, all, produced * (from / to) + begin + half - 1, from / to, table.subarray(half - 1, taps))
    else
      for (let n = 0; n < ready; n++) {
        const at = (produced + n) / ratio
        const base = Math.floor(at)
        const row = Math.round((at - base) * PHASES) * taps
        const first = (base + begin) | 0
        let sum = 0
        for (let tap = 0; tap < taps; tap++) sum += (all[first + tap] ?? 0) * (table[row + tap] ?? 0)
        out[n] = sum
      }
    produced += ready
    const keep = Math.max(0, Math.min(all.length, Math.floor(produced / ratio) - half + 1 - offset))
    held = all.slice(keep)
    offset += keep
    return out
  }
  return {
    push,
    end: (): Float32Array<ArrayBuffer> => (from === to ? new Float32Array() : push(new Float32Array(half + 1))),
  }
}

/** Resamples a whole mono recording at once. */
export const resample = (samples: Float32Array, from: number, to: number): Float32Array<ArrayBuffer> => {
  const { push, end } = resampler(from, to)
  const [body, rest] = [push(samples), end()]
  const out = new Float32Array(Math.min(body.length + rest.length, Math.round((samples.length * to) / from)))
  out.set(body.subarray(0, out.length))
  out.set(rest.subarray(0, out.length - body.length), Math.min(body.length, out.length))
  return out
}
