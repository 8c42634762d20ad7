/** Coefficients of a second-order filter, a0 = 1. */
export type Biquad = {
  readonly b0: number
  readonly b1: number
  readonly b2: number
  readonly a1: number
  readonly a2: number
}

/** Hz the standard gives its coefficients for. */
const GIVEN = 48_000

/**
 * The two stages of K-weighting: the head's shelf, then the high-pass.
 *
 * @source ITU-R BS.1770-4 annex 1, tables 1 and 2 (from memory, as are all its values here; the tests hold them against
 *   ffmpeg's meter)
 */
const SHELF: Biquad = {
  b0: 1.53512485958697,
  b1: -2.69169618940638,
  b2: 1.19839281085285,
  a1: -1.69065929318241,
  a2: 0.73248077421585,
}
const HIGH_PASS: Biquad = { b0: 1, b1: -2, b2: 1, a1: -1.99004745483398, a2: 0.99007225036621 }

/**
 * The same filter for another rate: back through the bilinear transform to its analogue prototype, and forth again with
 * the corner kept where it was.
 *
 * @param given coefficients for 48 kHz
 * @param rate Hz, at least 8000
 */
export const atRate = ({ b0, b1, b2, a1, a2 }: Biquad, rate: number): Biquad => {
  // In s = (1 - 1/z)/(1 + 1/z) the filter is (n2 s² + n1 s + n0)/(d2 s² + d1 s + d0).
  const [n2, n1, n0] = [b0 - b1 + b2, 2 * (b0 - b2), b0 + b1 + b2]
  const [d2, d1, d0] = [1 - a1 + a2, 2 * (1 - a2), 1 + a1 + a2]
  const corner = Math.sqrt(d0 / d2)
  const stretch = corner / Math.tan((Math.atan(corner) * GIVEN) / rate)
  const back = (two: number, one: number, none: number) => {
    const [s2, s1] = [two * stretch * stretch, one * stretch]
    return [s2 + s1 + none, 2 * (none - s2), s2 - s1 + none] as const
  }
  const [e0, e1, e2] = back(d2, d1, d0)
  const [m0, m1, m2] = back(n2, n1, n0)
  return { b0: m0 / e0, b1: m1 / e0, b2: m2 / e0, a1: e1 / e0, a2: e2 / e0 }
}

/**
 * K-weighting of one channel, in a stream.
 *
 * @param rate Hz, at least 8000
 * @returns a function that takes the next samples and adds up the squares of [from, to) once weighted; its state goes on
 *   from call to call
 */
export const kWeighting = (rate: number): ((samples: Float32Array, from: number, to: number) => number) => {
  const p = atRate(SHELF, rate)
  const q = atRate(HIGH_PASS, rate)
  // Transposed direct form II: two numbers a stage.
  let [p1, p2, q1, q2] = [0, 0, 0, 0]
  return (samples, from, to) => {
    let sum = 0
    for (let i = from; i < to; i++) {
      const x = samples[i] ?? 0
      const y = p.b0 * x + p1
      p1 = p.b1 * x - p.a1 * y + p2
      p2 = p.b2 * x - p.a2 * y
      const z = q.b0 * y + q1
      q1 = q.b1 * y - q.a1 * z + q2
      q2 = q.b2 * y - q.a2 * z
      sum += z * z
    }
    // Denormal numbers in a long silence would make it crawl.
    if (sum < 1e-30) [p1, p2, q1, q2] = [0, 0, 0, 0]
    return sum
  }
}
