import { readSentence } from '@/lib/draft/feature'
import type { NetworkModel } from '@/lib/draft/network'
import { featuresAt, limitFeatures } from '@/lib/draft/place-feature'
import { SENTENCE_KINDS as KINDS } from '@/lib/draft/sentence-kinds'
import { findLimits } from '@/lib/draft/spec-feature'
import { sigmoid } from '@/lib/trade/model'
import type { Case } from './cases'
import type { Sample } from './features'
import { learn, leftOut, type Settings, toModel, weigh } from './learn'
import { bestThreshold, calibrate, f1At, type Judged, toThreshold } from './logistic'

/** N-grams are many: each counts less than a hand-made feature. */
const SETTINGS: Settings = {
  leastCases: 8,
  scaleOf: name => (/^(?:w|word):/.test(name) ? 0.5 : 1),
  width: 64,
  context: 32,
  reach: 2,
  rounds: 5,
  rate: 0.004,
  penalty: 4,
  dropFeature: 0.3,
  dropUnit: 0.5,
}

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
export const fitSentences = (cases: readonly Case[], tests: readonly Case[]): NetworkModel => {
  const talks = cases.map(toSentenceSamples)
  const samples = talks.flat()
  const odds = leftOut(talks, KINDS, SETTINGS)
  const measured = samples.filter(sample => !sample.isOwn)
  const { thresholds, calibration } = report(
    'left out',
    measured.length > 0 ? measured : samples,
    (sample, kind) => odds.get(sample)?.[kind] ?? 0,
  )
  const fitted = learn(talks, KINDS, SETTINGS)
  if (tests.length > 0) {
    const unseen = weigh(fitted, tests.map(toSentenceSamples))
    report('test    ', [...unseen.keys()], (sample, kind) => unseen.get(sample)?.[kind] ?? 0, thresholds)
  }
  console.log(`${samples.length} sentences, ${fitted.names.length} features`)
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
  return toModel(fitted, thresholds, calibration)
}
