/** Sentences of one talk in order: which features each shows, which outcomes hold (1) or not (0), and how much the talk counts. */
export type Sequence = {
  readonly rows: readonly Int32Array[]
  readonly truths: readonly Uint8Array[]
  readonly weight: number
}

export type NetworkSettings = {
  /** Numbers that sum up a sentence, and its surroundings. */
  readonly width: number
  readonly context: number
  /** How many sentences before and after are heeded. */
  readonly reach: number
  readonly rounds: number
  readonly rate: number
  readonly penalty: number
  /** Share of features, and of what they sum up to, that is left out at random while fitting. */
  readonly dropFeature: number
  readonly dropUnit: number
}

/** Weights of a network; see lib/draft/network.ts for what is summed. */
export type NetworkWeights = {
  /** By feature, then by outcome. */
  readonly linear: Float32Array
  readonly bias: Float32Array
  /** By feature, then by unit. */
  readonly embedding: Float32Array
  /** By neighbour (the farthest before first), then by unit, then by context unit. */
  readonly around: Float32Array
  readonly aroundBias: Float32Array
  /** By unit, then by context unit, each by outcome. */
  readonly out: Float32Array
}

/** Even numbers from 0 to 1, the same each time. The mixing constants are those of mulberry32 (public domain), from memory. */
const toRandom = (seed: number) => {
  let state = seed
  return (): number => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** A group of weights with what Adam keeps of their gradients. */
class Group {
  readonly w: Float32Array
  readonly g: Float32Array
  readonly #m: Float32Array
  readonly #v: Float32Array
  constructor(size: number, at: () => number) {
    this.w = Float32Array.from({ length: size }, at)
    this.g = new Float32Array(size)
    this.#m = new Float32Array(size)
    this.#v = new Float32Array(size)
  }
  /** One step of Adam (Kingma and Ba 2015, its usual decay rates); gradients begin anew. */
  step(rate: number, turn: number): void {
    const { w, g } = this
    const [m, v] = [this.#m, this.#v]
    const [ofM, ofV] = [1 - 0.9 ** turn, 1 - 0.999 ** turn]
    for (let i = 0; i < w.length; i++) {
      const gi = g[i] as number
      const mi = 0.9 * (m[i] as number) + 0.1 * gi
      const vi = 0.999 * (v[i] as number) + 0.001 * gi * gi
      m[i] = mi
      v[i] = vi
      w[i] = (w[i] as number) - (rate * mi) / (ofM * (Math.sqrt(vi / ofV) + 1e-8))
      g[i] = 0
    }
  }
}

/** Sentences that are learned from at a time. */
const BATCH = 512

/**
 * Fits a small network: log odds of each outcome are a sum over the features of a sentence, and over units that sum up the
 * sentence and its neighbours. Deterministic.
 *
 * @param outcomes how many there are
 * @param scales how strongly each feature counts: a smaller scale is a heavier penalty
 */
export const fitNetwork = (
  sequences: readonly Sequence[],
  outcomes: number,
  scales: Float32Array,
  settings: NetworkSettings,
): NetworkWeights => {
  const { width: H, context: C, reach, rounds, rate, penalty, dropFeature, dropUnit } = settings
  const K = 2 * reach + 1
  const features = scales.length
  const random = toRandom(1)
  const about = (deviation: number) => (): number =>
    deviation * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
  const linear = new Group(features * outcomes, () => 0)
  const bias = new Group(outcomes, () => 0)
  const embedding = new Group(features * H, about(0.05))
  const bound = 1 / Math.sqrt(H * K)
  const around = new Group(K * H * C, () => (2 * random() - 1) * bound)
  const aroundBias = new Group(C, () => (2 * random() - 1) * bound)
  const out = new Group((H + C) * outcomes, about(0.1))
  const groups = [linear, bias, embedding, around, aroundBias, out]
  const total = sequences.reduce((n, { rows }) => n + rows.length, 0)
  const order = sequences.map((_, i) => i)
  const touched = new Int32Array(features)
  const [keptFeature, keptUnit] = [1 / (1 - dropFeature), 1 / (1 - dropUnit)]
  let turn = 0

  /** Tells of each number other than 0 that a sentence near sentence i shows, where it stands, and where its weights begin. */
  const eachNear = (
    h: Float32Array,
    n: number,
    i: number,
    visit: (x: number, from: number, at: number) => void,
  ): void => {
    for (let k = 0; k < K; k++) {
      const other = i + k - reach
      if (other < 0 || other >= n) continue
      for (let d = 0; d < H; d++) {
        const x = h[other * H + d] as number
        if (x !== 0) visit(x, other * H + d, (k * H + d) * C)
      }
    }
  }

  /** Adds the gradients of one talk, the loss counted as a share of `size`. */
  const learn = ({ rows, truths, weight }: Sequence, size: number): void => {
    const n = rows.length
    const [h, c] = [new Float32Array(n * H), new Float32Array(n * C)]
    const kept = rows.map(row => Uint8Array.from(row, () => (random() < dropFeature ? 0 : 1)))
    for (let i = 0; i < n; i++) {
      const [row, keep, to] = [rows[i] as Int32Array, kept[i] as Uint8Array, i * H]
      for (let k = 0; k < row.length; k++) {
        if (keep[k] === 0) continue
        const j = row[k] as number
        const [at, by] = [j * H, (scales[j] as number) * keptFeature]
        for (let d = 0; d < H; d++) h[to + d] = (h[to + d] as number) + by * (embedding.w[at + d] as number)
      }
      // What is left out at random is 0 from here on, as what is below 0 is; both pass nothing back.
      for (let d = 0; d < H; d++) {
        const x = h[to + d] as number
        h[to + d] = x > 0 && random() >= dropUnit ? x * keptUnit : 0
      }
    }
    for (let i = 0; i < n; i++) {
      const to = i * C
      for (let u = 0; u < C; u++) c[to + u] = aroundBias.w[u] as number
      eachNear(h, n, i, (x, _, at) => {
        for (let u = 0; u < C; u++) c[to + u] = (c[to + u] as number) + x * (around.w[at + u] as number)
      })
      for (let u = 0; u < C; u++) {
        const x = c[to + u] as number
        c[to + u] = x > 0 && random() >= dropUnit ? x * keptUnit : 0
      }
    }
    const [e, gh, gc] = [new Float32Array(outcomes), new Float32Array(n * H), new Float32Array(C)]
    for (let i = 0; i < n; i++) {
      const row = rows[i] as Int32Array
      for (let o = 0; o < outcomes; o++) e[o] = bias.w[o] as number
      for (let k = 0; k < row.length; k++) {
        const j = row[k] as number
        const by = scales[j] as number
        for (let o = 0; o < outcomes; o++) e[o] = (e[o] as number) + by * (linear.w[j * outcomes + o] as number)
      }
      for (let d = 0; d < H; d++) {
        const x = h[i * H + d] as number
        if (x !== 0)
          for (let o = 0; o < outcomes; o++) e[o] = (e[o] as number) + x * (out.w[d * outcomes + o] as number)
      }
      for (let u = 0; u < C; u++) {
        const x = c[i * C + u] as number
        if (x !== 0)
          for (let o = 0; o < outcomes; o++) e[o] = (e[o] as number) + x * (out.w[(H + u) * outcomes + o] as number)
      }
      const truth = truths[i] as Uint8Array
      for (let o = 0; o < outcomes; o++) {
        e[o] = ((1 / (1 + Math.exp(-(e[o] as number))) - (truth[o] as number)) * weight) / size
        bias.g[o] = (bias.g[o] as number) + (e[o] as number)
      }
      for (let k = 0; k < row.length; k++) {
        const j = row[k] as number
        const by = scales[j] as number
        for (let o = 0; o < outcomes; o++)
          linear.g[j * outcomes + o] = (linear.g[j * outcomes + o] as number) + by * (e[o] as number)
      }
      for (let d = 0; d < H; d++) {
        const x = h[i * H + d] as number
        if (x === 0) continue
        let sum = 0
        for (let o = 0; o < outcomes; o++) {
          const at = d * outcomes + o
          out.g[at] = (out.g[at] as number) + x * (e[o] as number)
          sum += (out.w[at] as number) * (e[o] as number)
        }
        gh[i * H + d] = (gh[i * H + d] as number) + sum
      }
      gc.fill(0)
      for (let u = 0; u < C; u++) {
        const x = c[i * C + u] as number
        if (x === 0) continue
        let sum = 0
        for (let o = 0; o < outcomes; o++) {
          const at = (H + u) * outcomes + o
          out.g[at] = (out.g[at] as number) + x * (e[o] as number)
          sum += (out.w[at] as number) * (e[o] as number)
        }
        gc[u] = sum * keptUnit
        aroundBias.g[u] = (aroundBias.g[u] as number) + (gc[u] as number)
      }
      eachNear(h, n, i, (x, from, at) => {
        let sum = 0
        for (let u = 0; u < C; u++) {
          const g = gc[u] as number
          around.g[at + u] = (around.g[at + u] as number) + x * g
          sum += (around.w[at + u] as number) * g
        }
        gh[from] = (gh[from] as number) + sum
      })
    }
    for (let i = 0; i < n; i++) {
      const [row, keep] = [rows[i] as Int32Array, kept[i] as Uint8Array]
      for (let d = 0; d < H; d++) if (h[i * H + d] === 0) gh[i * H + d] = 0
      for (let k = 0; k < row.length; k++) {
        if (keep[k] === 0) continue
        const j = row[k] as number
        const [at, by] = [j * H, (scales[j] as number) * keptFeature * keptUnit]
        for (let d = 0; d < H; d++)
          embedding.g[at + d] = (embedding.g[at + d] as number) + by * (gh[i * H + d] as number)
      }
    }
  }

  /** The penalty draws only on what was met, as often as it is met. */
  const penalise = (row: Int32Array): void => {
    for (const j of row) {
      if (touched[j] === turn) continue
      touched[j] = turn
      for (const [group, size] of [
        [linear, outcomes],
        [embedding, H],
      ] as const)
        for (let at = j * size; at < (j + 1) * size; at++)
          group.g[at] = (group.g[at] as number) + (penalty / total) * (group.w[at] as number)
    }
  }

  for (let round = 0; round < rounds; round++) {
    for (let i = order.length - 1; i > 0; i--) {
      const other = Math.floor(random() * (i + 1))
      ;[order[i], order[other]] = [order[other] as number, order[i] as number]
    }
    for (let first = 0; first < order.length; ) {
      const batch: Sequence[] = []
      let size = 0
      while (first < order.length && size < BATCH) {
        const sequence = sequences[order[first++] as number] as Sequence
        batch.push(sequence)
        size += sequence.rows.length
      }
      turn++
      for (const sequence of batch) learn(sequence, size)
      for (const { rows } of batch) for (const row of rows) penalise(row)
      for (const group of groups) group.step(rate * (1 - round / rounds), turn)
    }
  }
  const scaled = (weights: Float32Array, size: number): Float32Array =>
    weights.map((w, i) => w * (scales[Math.floor(i / size)] as number))
  return {
    linear: scaled(linear.w, outcomes),
    bias: bias.w,
    embedding: scaled(embedding.w, H),
    around: around.w,
    aroundBias: aroundBias.w,
    out: out.w,
  }
}
