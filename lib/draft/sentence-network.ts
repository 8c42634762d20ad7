/** Whole numbers from -127 to 127 as base64, row by row; each column is to be multiplied by its scale. */
export type Packed = { readonly bytes: string; readonly scales: readonly number[] }

/**
 * A small network over named binary features. A sentence adds up, over its features, a log odds for every outcome and what
 * it is like in `width` numbers; those of the sentences around it say what goes on there. Made by `scripts/fit-draft.mjs`.
 */
export type Network = {
  readonly outcomes: readonly string[]
  /** A row a feature: a column an outcome, then `width` columns. */
  readonly features: Packed
  /** What each outcome starts from. */
  readonly bias: readonly number[]
  /** Rows by neighbour (the farthest before first), then by number of it; a column a number of the surroundings. */
  readonly around: Packed
  readonly aroundBias: readonly number[]
  /** Rows by number of the sentence, then of the surroundings; a column an outcome. */
  readonly out: Packed
}

const toBytes = ({ bytes }: Packed): Int8Array => Int8Array.from(atob(bytes), letter => letter.charCodeAt(0))

const toWeights = (packed: Packed): Float32Array => {
  const { scales } = packed
  return Float32Array.from(toBytes(packed), (whole, i) => whole * (scales[i % scales.length] ?? 0))
}

/**
 * Unpacks a network.
 *
 * @returns log odds by sentence, then by outcome, of sentences that stand in a row, each given as indices of the features
 *   that hold
 */
export const toNetwork = (network: Network): ((rows: readonly (readonly number[])[]) => Float64Array) => {
  const outcomes = network.outcomes.length
  const { scales } = network.features
  const width = scales.length - outcomes
  const context = network.aroundBias.length
  const [bytes, around, out] = [toBytes(network.features), toWeights(network.around), toWeights(network.out)]
  const columns = scales.length
  const neighbours = around.length / (width * context)
  const reach = (neighbours - 1) / 2
  return rows => {
    const n = rows.length
    const odds = new Float64Array(n * outcomes)
    const likeness = new Float32Array(n * width)
    const sum = new Int32Array(columns)
    const addOut = (i: number, row: number, x: number): void => {
      for (let o = 0; o < outcomes; o++)
        odds[i * outcomes + o] = (odds[i * outcomes + o] as number) + x * (out[row * outcomes + o] as number)
    }
    rows.forEach((row, i) => {
      sum.fill(0)
      for (const j of row)
        for (let d = 0, at = j * columns; d < columns; d++, at++) sum[d] = (sum[d] as number) + (bytes[at] as number)
      for (let o = 0; o < outcomes; o++)
        odds[i * outcomes + o] = (network.bias[o] as number) + (sum[o] as number) * (scales[o] as number)
      for (let d = 0; d < width; d++) {
        const x = (sum[outcomes + d] as number) * (scales[outcomes + d] as number)
        if (x <= 0) continue
        likeness[i * width + d] = x
        addOut(i, d, x)
      }
    })
    const here = new Float32Array(context)
    for (let i = 0; i < n; i++) {
      here.set(network.aroundBias)
      for (let k = Math.max(0, reach - i); k < neighbours && i + k - reach < n; k++)
        for (let d = 0, from = (i + k - reach) * width; d < width; d++) {
          const x = likeness[from + d] as number
          if (x === 0) continue
          for (let u = 0, at = (k * width + d) * context; u < context; u++, at++)
            here[u] = (here[u] as number) + x * (around[at] as number)
        }
      for (let u = 0; u < context; u++) if ((here[u] as number) > 0) addOut(i, width + u, here[u] as number)
    }
    return odds
  }
}
