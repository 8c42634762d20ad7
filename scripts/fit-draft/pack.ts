import type { Model } from '@/lib/trade/model'
import type { Fitted } from './features'

const round = (n: number): number => Math.round(n * 100) / 100

/** A fitted model as it is committed: weights in hundredths, features that weigh nothing left out. */
export const packModel = (
  { names, weights }: Fitted,
  thresholds: Readonly<Record<string, number>>,
  calibration: Model['calibration'],
  least = 0.015,
): Model => {
  const outcomes = Object.keys(weights)
  const kept = names
    .map((_, i) => i)
    .filter(i => outcomes.some(outcome => Math.abs(weights[outcome]?.[i] ?? 0) >= least))
  return {
    features: kept.map(i => names[i]?.replaceAll(' ', '_')).join(' '),
    weights: Object.fromEntries(
      outcomes.map(outcome => [outcome, kept.map(i => Math.round((weights[outcome]?.[i] ?? 0) * 100)).join(' ')]),
    ),
    calibration,
    thresholds: Object.fromEntries(Object.entries(thresholds).map(([outcome, at]) => [outcome, round(at)])),
  }
}
