import type { Network } from './sentence-network'

/** Kinds that are told by whole sentences. */
export const SENTENCE_KINDS = ['step', 'caution', 'check', 'reason', 'symptom'] as const
export type SentenceKind = (typeof SENTENCE_KINDS)[number]

/** How sentences are weighed. Made by `scripts/fit-draft.mjs`; see there how. */
export type SentenceModel = {
  /** Feature names, separated by blanks; blanks inside a name are written `_`. */
  readonly features: string
  readonly network: Network
  /** Bend of the probabilities: share of right ones among left-out cases, as slope and offset of the log odds. */
  readonly calibration: Readonly<Record<string, readonly [slope: number, offset: number]>>
  /** From which probability on a kind is taken: best F1 over left-out cases. */
  readonly thresholds: Readonly<Record<string, number>>
}
