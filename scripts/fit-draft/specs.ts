import { readSentence } from '@/lib/draft/feature'
import type { NetworkModel } from '@/lib/draft/network'
import { findLimits } from '@/lib/draft/spec-feature'
import type { Quantity } from '@/lib/quantity/quantity'
import { sigmoid } from '@/lib/trade/model'
import type { Case } from './cases'
import type { Sample } from './features'
import { learn, leftOut, type Settings, toModel, weigh } from './learn'
import { bestThreshold, calibrate, f1At, type Judged, toThreshold } from './logistic'
import { sameQuantity } from './same-quantity'

const SETTINGS: Settings = {
  leastCases: 4,
  scaleOf: name => (/^(?:b|a|b1|b2|a1|a2|in):/.test(name) ? 0.6 : /^(?:said|[a-z]+-in):/.test(name) ? 0.5 : 1),
  width: 32,
  context: 16,
  reach: 1,
  rounds: 7,
  rate: 0.004,
  penalty: 6,
  dropFeature: 0.3,
  dropUnit: 0.5,
}

const KINDS = ['spec']

/** F1 that fewer wrong limits are worth: over a plateau of thresholds the highest is taken. */
const GIVEN_UP = 0.002

type SpecSample = Sample & { readonly form: string; readonly isOwn: boolean; readonly text: string }

/** Limits of a case, each told whether the gold has it; and how many of the gold no limit reaches. */
const toSpecSamples = (source: Case): { readonly samples: readonly SpecSample[]; readonly missed: number } => {
  const readings = source.sentences.map(sentence => readSentence(sentence.text))
  const found = findLimits(source.sentences, readings)
  const open = [...source.gold.specs]
  const samples = found.map(({ sentence, quantity, limit, features }): SpecSample => {
    const { start, end } = source.sentences[sentence] ?? { start: 0, end: 0 }
    let isTrue: boolean
    if (source.isOwn)
      isTrue = source.gold.marks.some(mark => mark.kind === 'spec' && mark.start < end - 0.3 && mark.end > start + 0.3)
    else {
      const at = open.findIndex(
        gold => sameQuantity(quantity as Quantity, gold) && start < gold.end + 6 && end > gold.start - 6,
      )
      isTrue = at >= 0
      if (isTrue) open.splice(at, 1)
    }
    return {
      name: source.name,
      form: source.form,
      isOwn: source.isOwn,
      weight: source.weight,
      features,
      outcomes: new Set(isTrue ? ['spec'] : []),
      text: `${limit.text} <= ${source.sentences[sentence]?.text}`,
    }
  })
  return { samples, missed: source.isOwn ? 0 : open.length }
}

/** Fits which limits are specs of the job; prints how well they hold on cases left out, and on `tests`. */
export const fitSpecs = (cases: readonly Case[], tests: readonly Case[]): NetworkModel => {
  const parts = cases.map(toSpecSamples)
  const samples = parts.flatMap(part => part.samples)
  const leftOutOdds = leftOut(
    parts.map(part => part.samples),
    KINDS,
    SETTINGS,
  )
  const oddsOf = (sample: SpecSample): number => leftOutOdds.get(sample)?.spec ?? 0
  const judged = (list: readonly SpecSample[], of: (sample: SpecSample) => number): Judged[] =>
    list.map(sample => ({
      p: sigmoid(of(sample)),
      isTrue: sample.outcomes.has('spec'),
      weight: toThreshold(sample.weight),
    }))
  const missed = (list: readonly Case[], set: readonly { missed: number }[], form: string) =>
    set.reduce((n, part, i) => n + (list[i]?.form === form ? toThreshold(list[i]?.weight) * part.missed : 0), 0)
  const measured = samples.filter(sample => !sample.isOwn)
  const at = bestThreshold(
    judged(measured, oddsOf),
    missed(cases, parts, 'vtt') + missed(cases, parts, 'raw.srt'),
    GIVEN_UP,
  )
  const print = (
    title: string,
    list: readonly SpecSample[],
    of: (sample: SpecSample) => number,
    lost: (form: string) => number,
  ) =>
    console.log(
      `${title} spec     ${['vtt', 'raw.srt']
        .map(form => {
          const { f1, precision, recall } = f1At(
            judged(
              list.filter(sample => sample.form === form),
              of,
            ),
            at,
            lost(form),
          )
          return `${form} F1 ${f1.toFixed(3)} (p ${precision.toFixed(2)} r ${recall.toFixed(2)}) lost ${lost(form)}`
        })
        .join('  ')} at ${at.toFixed(2)}`,
    )
  print('left out', measured, oddsOf, form => missed(cases, parts, form))
  const fitted = learn(
    parts.map(part => part.samples),
    KINDS,
    SETTINGS,
  )
  if (tests.length > 0) {
    const set = tests.map(toSpecSamples)
    const unseen = weigh(
      fitted,
      set.map(part => part.samples),
    )
    print(
      'test    ',
      set.flatMap(part => part.samples),
      sample => unseen.get(sample)?.spec ?? 0,
      form => missed(tests, set, form),
    )
  }
  if (process.env.SHOW === 'spec')
    for (const sample of measured.filter(s => s.form === 'vtt')) {
      const p = sigmoid(oddsOf(sample))
      if (p >= at !== sample.outcomes.has('spec'))
        console.log(p.toFixed(2), sample.outcomes.has('spec') ? '+' : '-', sample.name, sample.text)
    }
  return toModel(fitted, { spec: at }, { spec: calibrate(judged(measured, oddsOf)) })
}
