import { readSentence } from '@/lib/draft/feature'
import { featuresAt, limitFeatures } from '@/lib/draft/place-feature'
import { SENTENCE_KINDS as KINDS, type SentenceModel } from '@/lib/draft/sentence-kinds'
import { type Network, toNetwork } from '@/lib/draft/sentence-network'
import { findLimits } from '@/lib/draft/spec-feature'
import { sigmoid } from '@/lib/trade/model'
import type { Case } from './cases'
import { indexFeatures, type Sample } from './features'
import { bestThreshold, calibrate, f1At, type Judged, toThreshold } from './logistic'
import { fitNetwork, type NetworkSettings, type Sequence } from './network'
import { packNetwork } from './pack-network'

const SETTINGS: NetworkSettings = {
  width: 64,
  context: 32,
  reach: 2,
  rounds: 5,
  rate: 0.004,
  penalty: 4,
  dropFeature: 0.3,
  dropUnit: 0.5,
}
/** Features found in fewer cases would be learnt by heart. */
const LEAST_CASES = 8
/** N-grams are many: each counts less than a hand-made feature. */
const scaleOf = (name: string): number => (/^(?:w|word):/.test(name) ? 0.5 : 1)

export type SentenceSample = Sample & { readonly form: string; readonly text: string; readonly isOwn: boolean }

export const toSentenceSamples = ({ name, form, gold, sentences, isOwn, weight }: Case): readonly SentenceSample[] => {
  const readings = sentences.map(sentence => readSentence(sentence.text))
  const limits = limitFeatures(findLimits(sentences, readings))
  return sentences.map((sentence, i) => {
    const outcomes = new Set<string>()
    for (const mark of gold.marks) {
      const shared = Math.min(mark.end, sentence.end) - Math.max(mark.start, sentence.start)
      if (shared > 0.5 * Math.min(mark.end - mark.start, sentence.end - sentence.start)) outcomes.add(mark.kind)
    }
    return {
      name,
      form,
      text: sentence.text,
      features: featuresAt(readings, i, limits),
      outcomes,
      isOwn,
      weight,
    }
  })
}

type Fitted = { readonly names: readonly string[]; readonly network: Network }

/** Fits the network to talks, each given as its sentences in order. */
const learn = (talks: readonly (readonly SentenceSample[])[]): Fitted => {
  const index = indexFeatures(talks.flat(), LEAST_CASES)
  const names = [...index.keys()]
  const sequences = talks.map(
    (talk): Sequence => ({
      rows: talk.map(({ features }) => Int32Array.from(features.flatMap(name => index.get(name) ?? []))),
      truths: talk.map(({ outcomes }) => Uint8Array.from(KINDS, kind => (outcomes.has(kind) ? 1 : 0))),
      weight: talk[0]?.weight ?? 1,
    }),
  )
  const weights = fitNetwork(sequences, names.length, KINDS.length, Float32Array.from(names, scaleOf), SETTINGS)
  return { names, network: packNetwork(weights, KINDS) }
}

type Odds = Readonly<Record<string, number>>

/** Log odds of the kinds of every sentence of talks, as drafting weighs them. */
const weigh = (
  { names, network }: Fitted,
  talks: readonly (readonly SentenceSample[])[],
): Map<SentenceSample, Odds> => {
  const index = new Map(names.map((name, i) => [name, i]))
  const run = toNetwork(network)
  return new Map(
    talks.flatMap(talk => {
      const odds = run(talk.map(({ features }) => features.flatMap(name => index.get(name) ?? [])))
      return talk.map((sample, i): [SentenceSample, Odds] => [
        sample,
        Object.fromEntries(KINDS.map((kind, k) => [kind, odds[i * KINDS.length + k] ?? 0])),
      ])
    }),
  )
}

const report = (
  title: string,
  samples: readonly SentenceSample[],
  odds: (sample: SentenceSample, kind: string) => number,
  thresholds?: Readonly<Record<string, number>>,
) => {
  const judgedOf = (kind: string, form?: string): Judged[] =>
    samples
      .filter(sample => form === undefined || sample.form === form)
      .map(sample => ({
        p: sigmoid(odds(sample, kind)),
        isTrue: sample.outcomes.has(kind),
        weight: toThreshold(sample.weight),
      }))
  const found: Record<string, number> = {}
  for (const kind of KINDS) {
    const at = thresholds?.[kind] ?? bestThreshold(judgedOf(kind))
    found[kind] = at
    const rows = ['vtt', 'raw.srt'].map(form => {
      const { f1, precision, recall } = f1At(judgedOf(kind, form), at)
      return `${form} F1 ${f1.toFixed(3)} (p ${precision.toFixed(2)} r ${recall.toFixed(2)}) best ${f1At(judgedOf(kind, form), bestThreshold(judgedOf(kind, form))).f1.toFixed(3)}`
    })
    console.log(`${title} ${kind.padEnd(8)} ${rows.join('  ')} at ${at.toFixed(2)}`)
  }
  return { thresholds: found, calibration: Object.fromEntries(KINDS.map(kind => [kind, calibrate(judgedOf(kind))])) }
}

/** Fits the kinds of sentences; prints how well they hold on cases left out, and on `tests`. */
export const fitSentences = (cases: readonly Case[], tests: readonly Case[]): SentenceModel => {
  const talks = cases.map(toSentenceSamples)
  const samples = talks.flat()
  const names = [...new Set(samples.map(sample => sample.name))]
  const folds = 6
  const odds = new Map<SentenceSample, Odds>()
  for (let fold = 0; fold < folds; fold++) {
    const out = new Set(names.filter((_, i) => i % folds === fold))
    const isOut = (talk: readonly SentenceSample[]): boolean => out.has(talk[0]?.name ?? '')
    const model = learn(talks.filter(talk => !isOut(talk)))
    for (const [sample, found] of weigh(model, talks.filter(isOut))) odds.set(sample, found)
  }
  const measured = samples.filter(sample => !sample.isOwn)
  const { thresholds, calibration } = report(
    'left out',
    measured.length > 0 ? measured : samples,
    (sample, kind) => odds.get(sample)?.[kind] ?? 0,
  )
  const model = learn(talks)
  if (tests.length > 0) {
    const unseen = weigh(model, tests.map(toSentenceSamples))
    report('test    ', [...unseen.keys()], (sample, kind) => unseen.get(sample)?.[kind] ?? 0, thresholds)
  }
  console.log(`${samples.length} sentences, ${model.names.length} features`)
  const show = process.env.SHOW
  if (show !== undefined) {
    const wrong = samples
      .filter(sample => sample.form === 'vtt')
      .map(sample => ({ sample, p: sigmoid(odds.get(sample)?.[show] ?? 0), isTrue: sample.outcomes.has(show) }))
    const list = wrong
      .sort((a, b) => Math.abs(Number(b.isTrue) - b.p) - Math.abs(Number(a.isTrue) - a.p))
      .slice(0, Number(process.env.N ?? 50))
    for (const { sample, p, isTrue } of list)
      console.log(
        `${p.toFixed(2)} ${isTrue ? '+' : '-'} ${sample.name} [${[...sample.outcomes].join(' ')}] ${sample.text}`,
      )
  }
  return {
    features: model.names.map(name => name.replaceAll(' ', '_')).join(' '),
    network: model.network,
    calibration,
    thresholds: Object.fromEntries(Object.entries(thresholds).map(([kind, at]) => [kind, Math.round(at * 100) / 100])),
  }
}
