import { sigmoid } from '@/lib/trade/model'

/** Whole numbers from -127 to 127 as base64, row by row; each column is to be multiplied by its scale. */
export type Packed = { readonly bytes: string; readonly scales: readonly number[] }

/**
 * A small network over named binary features. A sentence, or a limit told, adds up over its features a log odds for
 * every outcome and what it is like in `width` numbers; those of its neighbours say what goes on there. Made by `scripts/fit-draft.mjs`.
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
  /** Rows by number of its own, then of the surroundings; a column an outcome. */
  readonly out: Packed
}

/** A plain loop: several times faster than going over the letters, of which there are more than a million. */
const toBytes = ({ bytes }: Packed): Int8Array => {
  const letters = atob(bytes)
  const whole = new Int8Array(letters.length)
  for (let i = 0; i < whole.length; i++) whole[i] = letters.charCodeAt(i)
  return whole
}

const toWeights = (packed: Packed): Float32Array => {
  const { scales } = packed
  return Float32Array.from(toBytes(packed), (whole, i) => whole * (scales[i % scales.length] ?? 0))
}

/**
 * Unpacks a network.
 *
 * @returns log odds by sentence, then by outcome, of what stands in a row, each given as indices of the features
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

/** A network with what it takes to use it. Made by `scripts/fit-draft.mjs`; see there how. */
export type NetworkModel = {
  /** Feature names, separated by blanks; blanks inside a name are written `_`. */
  readonly features: string
  readonly network: Network
  /** Bend of the probabilities: share of right ones among left-out cases, as slope and offset of the log odds. */
  readonly calibration: Readonly<Record<string, readonly [slope: number, offset: number]>>
  /** From which probability on an outcome is taken: best F1 over left-out cases. */
  readonly thresholds: Readonly<Record<string, number>>
}

/** A model unpacked for use. */
export type Weigher = {
  /** Names of the features, by index. */
  readonly names: readonly string[]
  /** @returns log odds by place in the row, then by outcome; see `toNetwork` */
  readonly weigh: (rows: readonly (readonly number[])[]) => Float64Array
  readonly threshold: (outcome: string) => number
  /** @returns probability bent to what held on left-out cases, 0 to 1, in hundredths */
  readonly confidence: (outcome: string, logOdds: number) => number
}

/** Unpacks a model. */
export const toWeigher = ({ features, network, calibration, thresholds }: NetworkModel): Weigher => ({
  names: features.split(' ').map(name => name.replaceAll('_', ' ')),
  weigh: toNetwork(network),
  threshold: outcome => thresholds[outcome] ?? 0.5,
  confidence: (outcome, logOdds) => {
    const [slope, offset] = calibration[outcome] ?? [1, 0]
    return Math.round(sigmoid(slope * logOdds + offset) * 100) / 100
  },
})

/** @returns indices of the features that are known, of each in a row */
export const toRows = (
  names: readonly string[],
): ((all: readonly (readonly string[])[]) => readonly (readonly number[])[]) => {
  const index = new Map(names.map((name, i) => [name, i]))
  return all => all.map(features => features.flatMap(name => index.get(name) ?? []))
}
