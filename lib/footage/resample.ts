import type { SoundPiece } from './peaks'

/** Zero crossings of the sinc on each side; a Hann window over 12 keeps what folds back under -50 dB. */
const CROSSINGS = 12

/**
 * Mean of all channels.
 *
 * @param into memory to be used, where it is long enough: fresh memory costs more than the mean
 * @returns one sample for each; the channel itself where there is one
 */
export const toMono = ({ channels }: Omit<SoundPiece, 'start'>, into?: Float32Array): Float32Array => {
  const [first, ...others] = channels
  if (first === undefined) return new Float32Array()
  if (others.length === 0) return first
  const { length } = first
  const mono = into !== undefined && into.length >= length ? into.subarray(0, length) : new Float32Array(length)
  const share = 1 / channels.length
  const [second = first, ...more] = others
  for (let i = 0; i < length; i++) mono[i] = ((first[i] ?? 0) + (second[i] ?? 0)) * share
  for (const channel of more) for (let i = 0; i < length; i++) mono[i] = (mono[i] ?? 0) + (channel[i] ?? 0) * share
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
 * symmetrical where it sits on a sample. Four side by side: each addition would wait for the one before.
 *
 * @param middle index of the first output's sample
 * @param weights from the middle of the filter outwards
 */
const decimate = (out: Float32Array, all: Float32Array, middle: number, step: number, weights: Float64Array): void => {
  const { length } = weights
  const top = weights[0] ?? 0
  let at = middle
  let n = 0
  for (; n + 3 < out.length; n += 4) {
    const [a, b, c, d] = [at, at + step, at + 2 * step, at + 3 * step]
    let [p, q, r, s] = [top * (all[a] ?? 0), top * (all[b] ?? 0), top * (all[c] ?? 0), top * (all[d] ?? 0)]
    for (let k = 1; k < length; k++) {
      const weight = weights[k] ?? 0
      p += weight * ((all[a - k] ?? 0) + (all[a + k] ?? 0))
      q += weight * ((all[b - k] ?? 0) + (all[b + k] ?? 0))
      r += weight * ((all[c - k] ?? 0) + (all[c + k] ?? 0))
      s += weight * ((all[d - k] ?? 0) + (all[d + k] ?? 0))
    }
    out[n] = p
    out[n + 1] = q
    out[n + 2] = r
    out[n + 3] = s
    at += 4 * step
  }
  for (; n < out.length; n++, at += step) {
    let sum = top * (all[at] ?? 0)
    for (let k = 1; k < length; k++) sum += (weights[k] ?? 0) * ((all[at - k] ?? 0) + (all[at + k] ?? 0))
    out[n] = sum
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
  let memory = new Float32Array(half - 1)
  let held = half - 1
  let offset = -(half - 1)
  let produced = 0
  const push = (samples: Float32Array): Float32Array<ArrayBuffer> => {
    if (from === to) return new Float32Array(samples)
    if (memory.length < held + samples.length) {
      const larger = new Float32Array(2 * (held + samples.length))
      larger.set(memory.subarray(0, held))
      memory = larger
    }
    memory.set(samples, held)
    const all = memory.subarray(0, held + samples.length)
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
    memory.copyWithin(0, keep, all.length)
    held = all.length - keep
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
