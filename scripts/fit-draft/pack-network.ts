import type { Network, Packed } from '@/lib/draft/network'
import type { NetworkWeights } from './network'

const rounded = (n: number): number => Number(n.toPrecision(5))

/** Weights in bytes, row by row: a column's largest is 127. */
const packed = (weights: ArrayLike<number>, columns: number): Packed => {
  const most = new Float64Array(columns)
  for (let i = 0; i < weights.length; i++)
    most[i % columns] = Math.max(most[i % columns] as number, Math.abs(weights[i] as number))
  const scales = Array.from(most, largest => rounded(largest / 127))
  const bytes = Int8Array.from(weights, (w, i) =>
    scales[i % columns] === 0 ? 0 : Math.max(-127, Math.min(127, Math.round(w / (scales[i % columns] as number)))),
  )
  return { bytes: Buffer.from(bytes.buffer).toString('base64'), scales }
}

/** A fitted network as it is committed. */
export const packNetwork = (
  { linear, bias, embedding, around, aroundBias, out }: NetworkWeights,
  outcomes: readonly string[],
): Network => {
  const features = linear.length / outcomes.length
  const width = embedding.length / features
  const columns = outcomes.length + width
  const rows = new Float32Array(features * columns)
  for (let j = 0; j < features; j++) {
    rows.set(linear.subarray(j * outcomes.length, (j + 1) * outcomes.length), j * columns)
    rows.set(embedding.subarray(j * width, (j + 1) * width), j * columns + outcomes.length)
  }
  return {
    outcomes,
    features: packed(rows, columns),
    bias: Array.from(bias, rounded),
    around: packed(around, aroundBias.length),
    aroundBias: Array.from(aroundBias, rounded),
    out: packed(out, outcomes.length),
  }
}
