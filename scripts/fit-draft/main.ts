import { writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { featuresAt, readSentence } from '@/lib/draft/feature'
import type { Model } from '@/lib/draft/model'
import { type Case, readCases } from './cases'
import { bestThreshold, calibrate, type Example, f1At, fitLogistic, type Judged, probabilityOf } from './logistic'

export const SENTENCE_KINDS = ['step', 'caution', 'check', 'reason', 'symptom'] as const

/** One sentence with the kinds it carries, in the case it is from. */
type Sample = { readonly name: string; readonly form: string; readonly text: string; readonly features: readonly string[]; readonly kinds: ReadonlySet<string> }

/** N-grams and neighbours are many: each counts less than a hand-made feature. */
const scaleOf = (name: string): number => (/^(?:w|word):/.test(name) ? 0.5 : /^(?:before|after):/.test(name) ? 0.5 : 1)

const toSamples = ({ name, form, gold, sentences }: Case): readonly Sample[] => {
  const readings = sentences.map(sentence => readSentence(sentence.text))
  return sentences.map((sentence, i) => {
    const kinds = new Set<string>()
    for (const mark of gold.marks) {
      const shared = Math.min(mark.end, sentence.end) - Math.max(mark.start, sentence.start)
      if (shared > 0.5 * Math.min(mark.end - mark.start, sentence.end - sentence.start)) kinds.add(mark.kind)
    }
    return { name, form, text: sentence.text, features: featuresAt(readings, i), kinds }
  })
}

/** Features found in at least this many cases; rarer ones would be learnt by heart. */
const LEAST_CASES = 5
const PENALTY = 3

type Fitted = { readonly names: readonly string[]; readonly index: ReadonlyMap<string, number>; readonly weights: Readonly<Record<string, Float64Array>> }

const fit = (samples: readonly Sample[]): Fitted => {
  const cases = new Map<string, Set<string>>()
  for (const { name, features } of samples)
    for (const feature of features) cases.set(feature, (cases.get(feature) ?? new Set()).add(name))
  const names = [...cases].filter(([, found]) => found.size >= LEAST_CASES).map(([feature]) => feature)
  const index = new Map(names.map((name, i) => [name, i]))
  const rows = samples.map(({ features }) => features.flatMap(name => index.get(name) ?? []))
  const weights = Object.fromEntries(
    SENTENCE_KINDS.map(kind => {
      const examples: Example[] = samples.map(({ kinds }, i) => ({ features: rows[i] ?? [], isTrue: kinds.has(kind) }))
      return [kind, fitLogistic(examples, names.map(scaleOf), PENALTY)]
    }),
  )
  return { names, index, weights }
}

const judge = ({ index, weights }: Fitted, samples: readonly Sample[], kind: string): readonly Judged[] =>
  samples.map(({ features, kinds }) => ({ p: probabilityOf(weights[kind] ?? new Float64Array(), features.flatMap(name => index.get(name) ?? [])), isTrue: kinds.has(kind) }))

const leftOut = (samples: readonly Sample[], folds: number): Record<string, Judged[]> => {
  const names = [...new Set(samples.map(sample => sample.name))]
  const judged: Record<string, Judged[]> = Object.fromEntries(SENTENCE_KINDS.map(kind => [kind, []]))
  for (let fold = 0; fold < folds; fold++) {
    const out = new Set(names.filter((_, i) => i % folds === fold))
    const model = fit(samples.filter(sample => !out.has(sample.name)))
    for (const kind of SENTENCE_KINDS) judged[kind]?.push(...judge(model, samples.filter(sample => out.has(sample.name)), kind))
  }
  return judged
}

const pack = ({ names, weights }: Fitted, judged: Record<string, readonly Judged[]>): Model => {
  const kept = names.map((_, i) => i).filter(i => SENTENCE_KINDS.some(kind => Math.abs(weights[kind]?.[i] ?? 0) >= 0.015))
  return {
    features: kept.map(i => names[i]?.replaceAll(' ', '_')).join(' '),
    weights: Object.fromEntries(SENTENCE_KINDS.map(kind => [kind, kept.map(i => Math.round((weights[kind]?.[i] ?? 0) * 100)).join(' ')])),
    calibration: Object.fromEntries(SENTENCE_KINDS.map(kind => [kind, calibrate(judged[kind] ?? [])])),
    thresholds: Object.fromEntries(SENTENCE_KINDS.map(kind => [kind, Math.round(bestThreshold(judged[kind] ?? []) * 100) / 100])),
  }
}

/** See scripts/fit-draft.mjs. */
export const fitDraft = (args: readonly string[]): void => {
  const { values, positionals } = parseArgs({ args: [...args], options: { write: { type: 'boolean' }, test: { type: 'string' }, only: { type: 'string' } }, allowPositionals: true })
  const samples = positionals.flatMap(folder => readCases(folder, ['vtt', 'raw.srt']).flatMap(toSamples))
  const judged = leftOut(samples, 6)
  for (const kind of SENTENCE_KINDS) {
    const list = judged[kind] ?? []
    const threshold = bestThreshold(list)
    const { f1, precision, recall } = f1At(list, threshold)
    console.log(`${kind.padEnd(8)} left out: F1 ${f1.toFixed(3)} precision ${precision.toFixed(2)} recall ${recall.toFixed(2)} at ${threshold.toFixed(2)}`)
  }
  const model = fit(samples)
  const packed = pack(model, judged)
  if (values.write) writeFileSync('lib/draft/sentence-model.json', `${JSON.stringify(packed, null, 1)}\n`)
  console.log(`${samples.length} sentences, ${packed.features.split(' ').length} features`)
}
