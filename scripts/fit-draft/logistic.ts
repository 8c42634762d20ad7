/** One example: which features hold, and whether the outcome does. `weight` counts it more or less. */
export type Example = { readonly features: readonly number[]; readonly isTrue: boolean; readonly weight?: number }

/** Examples of several outcomes: the features of each, how much it counts, and by outcome whether it holds (1) or not (0). */
export type Examples = {
  readonly rows: readonly Int32Array[]
  readonly weights: Float64Array
  readonly truths: readonly Uint8Array[]
}

/**
 * Fits logistic weights of several outcomes at once with a quadratic penalty by Adagrad on the whole batch. Deterministic; each
 * outcome comes out as if it were fitted alone.
 *
 * @param scales how strongly each feature counts: a smaller scale is a heavier penalty
 * @param penalty strength of the penalty (half the inverse of the prior's variance)
 * @returns by outcome, weights to be summed over the features that hold
 */
export const fitLogistics = (
  { rows, weights, truths }: Examples,
  scales: readonly number[],
  penalty: number,
  rounds = 200,
): readonly Float64Array[] => {
  const [n, m] = [scales.length, truths.length]
  // Weight of feature j for outcome c at j * m + c: one pass over the features of an example serves all outcomes.
  const [w, square] = [new Float64Array(n * m), new Float64Array(n * m).fill(1e-8)]
  const s = Float64Array.from(scales)
  const [z, e] = [new Float64Array(m), new Float64Array(m)]
  // Accelerated gradient with a step from the largest curvature a row can have; restarts when the loss turns up.
  const velocity = new Float64Array(n * m)
  const g = new Float64Array(n * m)
  for (let round = 0; round < rounds; round++) {
    g.fill(0)
    for (let i = 0; i < rows.length; i++) {
      const row = rows[i] as Int32Array
      z.fill(0)
      for (let k = 0; k < row.length; k++) {
        const j = row[k] as number
        const [at, by] = [j * m, s[j] as number]
        for (let c = 0; c < m; c++) z[c] = (z[c] as number) + (w[at + c] as number) * by
      }
      for (let c = 0; c < m; c++)
        e[c] =
          (1 / (1 + Math.exp(-(z[c] as number))) - ((truths[c] as Uint8Array)[i] as number)) * (weights[i] as number)
      for (let k = 0; k < row.length; k++) {
        const j = row[k] as number
        const [at, by] = [j * m, s[j] as number]
        for (let c = 0; c < m; c++) g[at + c] = (g[at + c] as number) + (e[c] as number) * by
      }
    }
    for (let j = 0; j < n * m; j++) {
      const gj = (g[j] as number) + 2 * penalty * (w[j] as number)
      square[j] = (square[j] as number) * 0.99 + gj * gj * 0.01
      velocity[j] = (velocity[j] as number) * 0.9 + gj * 0.1
      w[j] =
        (w[j] as number) -
        (0.1 * Math.min(1, 40 / (round + 1)) * (velocity[j] as number)) / (Math.sqrt(square[j] as number) + 1e-3)
    }
  }
  return truths.map((_, c) => s.map((scale, j) => (w[j * m + c] as number) * scale))
}

/** Fits one outcome; see `fitLogistics`. */
export const fitLogistic = (
  examples: readonly Example[],
  scales: readonly number[],
  penalty: number,
  rounds = 200,
): Float64Array => {
  const [weights] = fitLogistics(
    {
      rows: examples.map(({ features }) => Int32Array.from(features)),
      weights: Float64Array.from(examples, ({ weight }) => weight ?? 1),
      truths: [Uint8Array.from(examples, ({ isTrue }) => (isTrue ? 1 : 0))],
    },
    scales,
    penalty,
    rounds,
  )
  return weights ?? new Float64Array(scales.length)
}

export type Judged = { readonly p: number; readonly isTrue: boolean; readonly weight?: number }

/** F1 over judged examples at a threshold, `missed` more true ones being out of reach. */
export const f1At = (
  judged: readonly Judged[],
  threshold: number,
  missed = 0,
): { f1: number; precision: number; recall: number } => {
  let [hit, wrong, lost] = [0, 0, missed]
  for (const { p, isTrue, weight = 1 } of judged) {
    if (p < threshold) lost += isTrue ? weight : 0
    else if (isTrue) hit += weight
    else wrong += weight
  }
  return {
    f1: (2 * hit) / (2 * hit + wrong + lost || 1),
    precision: hit / (hit + wrong || 1),
    recall: hit / (hit + lost || 1),
  }
}

/** How much an example counts for the threshold: others' cases, of which there are few, about as much as all of our own. */
export const toThreshold = (weight = 1): number => weight ** 2.5

/**
 * The threshold of best F1, smoothed over its neighbours so that it does not sit on a needle.
 *
 * @param givenUp F1 that fewer wrong ones are worth: of thresholds that near to the best the highest is taken
 */
export const bestThreshold = (judged: readonly Judged[], missed = 0, givenUp = 0): number => {
  const grid = Array.from({ length: 41 }, (_, i) => 0.1 + i * 0.02)
  const raw = grid.map(t => f1At(judged, t, missed).f1)
  const smooth = raw.map((_, i) => {
    const near = raw.slice(Math.max(0, i - 2), i + 3)
    return near.reduce((a, b) => a + b, 0) / near.length
  })
  const least = Math.max(...smooth) - givenUp
  return grid[smooth.findLastIndex(f1 => f1 >= least)] ?? 0.5
}

/** Platt scaling: slope and offset that make the log odds say the share of right ones. */
export const calibrate = (judged: readonly Judged[]): readonly [number, number] => {
  let [slope, offset] = [1, 0]
  const odds = judged.map(({ p }) => Math.log(Math.max(1e-6, p) / Math.max(1e-6, 1 - p)))
  for (let round = 0; round < 4000; round++) {
    let [ga, gb] = [0, 0]
    odds.forEach((z, i) => {
      const e = 1 / (1 + Math.exp(-(slope * z + offset))) - (judged[i]?.isTrue ? 1 : 0)
      ga += e * z
      gb += e
    })
    slope -= (0.05 * ga) / judged.length
    offset -= (0.2 * gb) / judged.length
  }
  return [Math.round(slope * 100) / 100, Math.round(offset * 100) / 100]
}
