import { fitLogistics } from './logistic'

/** An example by feature names, with the outcomes that hold, in the case it is from. */
export type Sample = {
  readonly name: string
  readonly features: readonly string[]
  readonly outcomes: ReadonlySet<string>
  readonly weight?: number
}

/** Weights of several outcomes over the features that enough cases show. */
export type Fitted = {
  readonly names: readonly string[]
  readonly index: ReadonlyMap<string, number>
  readonly weights: Readonly<Record<string, Float64Array>>
}

export type Settings = {
  readonly leastCases: number
  readonly penalty: number
  readonly scaleOf: (feature: string) => number
}

/** Numbers of the features found in at least `leastCases` cases: others would be learnt by heart. */
export const indexFeatures = (samples: readonly Sample[], leastCases: number): ReadonlyMap<string, number> => {
  const cases = new Map<string, Set<string>>()
  for (const { name, features } of samples)
    for (const feature of features) {
      const found = cases.get(feature)
      if (found === undefined) cases.set(feature, new Set([name]))
      else found.add(name)
    }
  const names = [...cases].filter(([, found]) => found.size >= leastCases).map(([feature]) => feature)
  return new Map(names.map((name, i) => [name, i]))
}

/** Fits every outcome by the features that enough cases show. */
export const fitOutcomes = (
  samples: readonly Sample[],
  outcomes: readonly string[],
  { leastCases, penalty, scaleOf }: Settings,
): Fitted => {
  const index = indexFeatures(samples, leastCases)
  const names = [...index.keys()]
  const fitted = fitLogistics(
    {
      rows: samples.map(({ features }) => Int32Array.from(features.flatMap(name => index.get(name) ?? []))),
      weights: Float64Array.from(samples, ({ weight }) => weight ?? 1),
      truths: outcomes.map(outcome => Uint8Array.from(samples, ({ outcomes: held }) => (held.has(outcome) ? 1 : 0))),
    },
    names.map(scaleOf),
    penalty,
  )
  const weights = Object.fromEntries(outcomes.map((outcome, c) => [outcome, fitted[c] ?? new Float64Array()]))
  return { names, index, weights }
}

/** Log odds of an outcome for features by name. */
export const oddsOf = ({ index, weights }: Fitted, outcome: string, features: readonly string[]): number => {
  const row = weights[outcome]
  let sum = 0
  for (const feature of features) {
    const i = index.get(feature)
    if (i !== undefined) sum += row?.[i] ?? 0
  }
  return sum
}
