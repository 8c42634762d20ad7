/** A logistic model for several outcomes over named binary features. Made by `scripts/fit-draft.mjs`; see there how. */
export type Model = {
  /** Feature names, separated by blanks; blanks inside a name are written `_`. */
  readonly features: string
  /** An outcome's weights in hundredths, one a feature, separated by blanks. */
  readonly weights: Readonly<Record<string, string>>
  /** Bend of the probabilities: share of right ones among left-out cases, as slope and offset of the log odds. */
  readonly calibration: Readonly<Record<string, readonly [slope: number, offset: number]>>
  /** From which probability on an outcome is taken: best F1 over left-out cases. */
  readonly thresholds: Readonly<Record<string, number>>
}

/** A model unpacked for use. */
export type Scorer<Outcome extends string> = {
  /** Names of the features, by index. */
  readonly names: readonly string[]
  /** @returns index of a feature, undefined where the model does not know it */
  readonly indexOf: (feature: string) => number | undefined
  /** Log odds of an outcome given indices of features that hold. */
  readonly logOdds: (outcome: Outcome, indices: readonly number[]) => number
  /** @returns probability as fitted, 0 to 1 */
  readonly probability: (outcome: Outcome, indices: readonly number[]) => number
  /** @returns probability bent to what held on left-out cases, 0 to 1 */
  readonly confidence: (outcome: Outcome, logOdds: number) => number
  readonly threshold: (outcome: Outcome) => number
}

/** Tells of a feature by its parts: "w:put the" is (`w`, `put`, `the`). Saves joining names that the model mostly does not know. */
export type Emit = (prefix: string, a?: string, b?: string, c?: string, d?: string) => void

type Node = { index: number; readonly next: Map<string, Node> }

const toNode = (): Node => ({ index: -1, next: new Map() })

/**
 * Looks features up by their parts.
 *
 * @param names of the features, by index; parts are told apart by a colon after the prefix and blanks between
 * @returns index of a feature, -1 where the model does not know it
 */
export const toPartsIndex = (
  names: readonly string[],
): ((prefix: string, a?: string, b?: string, c?: string, d?: string) => number) => {
  const root = toNode()
  names.forEach((name, index) => {
    const colon = name.indexOf(':')
    let node = root
    for (const part of colon < 0 ? [name] : [name.slice(0, colon), ...name.slice(colon + 1).split(' ')]) {
      const known = node.next.get(part) ?? toNode()
      node.next.set(part, known)
      node = known
    }
    node.index = index
  })
  return (prefix, a, b, c, d) => {
    let node = root.next.get(prefix)
    if (a !== undefined) node = node?.next.get(a)
    if (b !== undefined) node = node?.next.get(b)
    if (c !== undefined) node = node?.next.get(c)
    if (d !== undefined) node = node?.next.get(d)
    return node?.index ?? -1
  }
}

/** @returns the name of a feature told by its parts. */
export const nameOfParts = (prefix: string, a?: string, b?: string, c?: string, d?: string): string => {
  const parts = [a, b, c, d].filter(part => part !== undefined)
  return parts.length === 0 ? prefix : `${prefix}:${parts.join(' ')}`
}

const sigmoid = (z: number): number => 1 / (1 + Math.exp(-z))

/** Unpacks a model. */
export const toScorer = <Outcome extends string>(model: Model): Scorer<Outcome> => {
  const names = model.features.split(' ').map(name => name.replaceAll('_', ' '))
  const index = new Map(names.map((name, i) => [name, i]))
  const weights = new Map(
    Object.entries(model.weights).map(([outcome, row]) => [
      outcome,
      Float64Array.from(row.split(' '), text => Number(text) / 100),
    ]),
  )
  const logOdds = (outcome: Outcome, indices: readonly number[]): number => {
    const row = weights.get(outcome)
    let sum = 0
    if (row !== undefined) for (const i of indices) sum += row[i] ?? 0
    return sum
  }
  return {
    names,
    indexOf: feature => index.get(feature),
    logOdds,
    probability: (outcome, indices) => sigmoid(logOdds(outcome, indices)),
    confidence: (outcome, z) => {
      const [slope, offset] = model.calibration[outcome] ?? [1, 0]
      return sigmoid(slope * z + offset)
    },
    threshold: outcome => model.thresholds[outcome] ?? 0.5,
  }
}
