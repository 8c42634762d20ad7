import { type Network, type NetworkModel, toNetwork, toRows } from '@/lib/draft/network'
import { indexFeatures, type Sample } from './features'
import { fitNetwork, type NetworkSettings, type Sequence } from './network'
import { packNetwork } from './pack-network'

export type Settings = NetworkSettings & {
  /** Features found in fewer cases would be learnt by heart. */
  readonly leastCases: number
  /** A smaller scale is a heavier penalty. */
  readonly scaleOf: (feature: string) => number
}

/** A network fitted and packed, with the names of its features. */
export type Fitted = { readonly names: readonly string[]; readonly network: Network }

/** Fits the network to talks, each given as its sentences, or its limits, in order. */
export const learn = (
  talks: readonly (readonly Sample[])[],
  outcomes: readonly string[],
  settings: Settings,
): Fitted => {
  const names = [...indexFeatures(talks.flat(), settings.leastCases).keys()]
  const rowsOf = toRows(names)
  const sequences = talks.map(
    (talk): Sequence => ({
      rows: rowsOf(talk.map(({ features }) => features)).map(row => Int32Array.from(row)),
      truths: talk.map(({ outcomes: held }) => Uint8Array.from(outcomes, outcome => (held.has(outcome) ? 1 : 0))),
      weight: talk[0]?.weight ?? 1,
    }),
  )
  const scales = Float32Array.from(names, settings.scaleOf)
  return { names, network: packNetwork(fitNetwork(sequences, outcomes.length, scales, settings), outcomes) }
}

export type Odds = Readonly<Record<string, number>>

/** @returns log odds of the outcomes of all there is in talks, as drafting weighs them */
export const weigh = <One extends Sample>(
  { names, network }: Fitted,
  talks: readonly (readonly One[])[],
): ReadonlyMap<One, Odds> => {
  const rowsOf = toRows(names)
  const run = toNetwork(network)
  const { outcomes } = network
  return new Map(
    talks.flatMap(talk => {
      const odds = run(rowsOf(talk.map(({ features }) => features)))
      return talk.map((sample, i): [One, Odds] => [
        sample,
        Object.fromEntries(outcomes.map((outcome, k) => [outcome, odds[i * outcomes.length + k] ?? 0])),
      ])
    }),
  )
}

const FOLDS = 6

/** @returns log odds of all there is, each by a network fitted without any form of its case */
export const leftOut = <One extends Sample>(
  talks: readonly (readonly One[])[],
  outcomes: readonly string[],
  settings: Settings,
): ReadonlyMap<One, Odds> => {
  const names = [...new Set(talks.flatMap(([first]) => first?.name ?? []))]
  const odds = new Map<One, Odds>()
  for (let fold = 0; fold < FOLDS; fold++) {
    const out = new Set(names.filter((_, i) => i % FOLDS === fold))
    const isOut = ([first]: readonly One[]): boolean => first !== undefined && out.has(first.name)
    const fitted = learn(
      talks.filter(talk => !isOut(talk)),
      outcomes,
      settings,
    )
    for (const [sample, found] of weigh(fitted, talks.filter(isOut))) odds.set(sample, found)
  }
  return odds
}

/** A fitted network as it is committed. */
export const toModel = (
  { names, network }: Fitted,
  thresholds: NetworkModel['thresholds'],
  calibration: NetworkModel['calibration'],
): NetworkModel => ({
  features: names.map(name => name.replaceAll(' ', '_')).join(' '),
  network,
  calibration,
  thresholds: Object.fromEntries(Object.entries(thresholds).map(([kind, at]) => [kind, Math.round(at * 100) / 100])),
})
