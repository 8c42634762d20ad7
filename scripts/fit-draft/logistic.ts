/** One example: which features hold, and whether the outcome does. `weight` counts it more or less. */
export type Example = { readonly features: readonly number[]; readonly isTrue: boolean; readonly weight?: number }

/**
 * Fits logistic weights with a quadratic penalty by Adagrad on the whole batch. Deterministic.
 *
 * @param scales how strongly each feature counts: a smaller scale is a heavier penalty
 * @param penalty strength of the penalty (half the inverse of the prior's variance)
 * @returns weights to be summed over the features that hold
 */
export const fitLogistic = (
  examples: readonly Example[],
  scales: readonly number[],
  penalty: number,
  rounds = 200,
): Float64Array => {
  const n = scales.length
  const [w, square] = [new Float64Array(n), new Float64Array(n).fill(1e-8)]
  const s = Float64Array.from(scales)
  const rows = examples.map(example => Int32Array.from(example.features))
  // Accelerated gradient with a step from the largest curvature a row can have; restarts when the loss turns up.
  const velocity = new Float64Array(n)
  for (let round = 0; round < rounds; round++) {
    const g = new Float64Array(n)
    for (let i = 0; i < rows.length; i++) {
      const row = rows[i] as Int32Array
      let z = 0
      for (let k = 0; k < row.length; k++) {
        const j = row[k] as number
        z += (w[j] as number) * (s[j] as number)
      }
      const example = examples[i] as Example
      const e = (1 / (1 + Math.exp(-z)) - (example.isTrue ? 1 : 0)) * (example.weight ?? 1)
      for (let k = 0; k < row.length; k++) {
        const j = row[k] as number
        g[j] = (g[j] as number) + e * (s[j] as number)
      }
    }
    for (let j = 0; j < n; j++) {
      const gj = (g[j] as number) + 2 * penalty * (w[j] as number)
      square[j] = (square[j] as number) * 0.99 + gj * gj * 0.01
      velocity[j] = (velocity[j] as number) * 0.9 + gj * 0.1
      w[j] =
        (w[j] as number) -
        (0.1 * Math.min(1, 40 / (round + 1)) * (velocity[j] as number)) / (Math.sqrt(square[j] as number) + 1e-3)
    }
  }
  return w.map((value, j) => value * (s[j] as number))
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
