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
