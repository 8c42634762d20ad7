import { readSentence } from '@/lib/draft/feature'
import { gatherThings } from '@/lib/draft/gather'
import { toMentions } from '@/lib/draft/mention'
import { nameOfThing } from '@/lib/draft/thing-name'
import type { Model } from '@/lib/trade/model'
import type { Case, Gold } from './cases'
import { type Fitted, fitOutcomes, oddsOf, type Sample, type Settings } from './features'
import { calibrate } from './logistic'
import { sameName } from './names'
import { packModel } from './pack'

const KINDS = ['tool', 'material'] as const
const SETTINGS: Settings = {
  leastCases: Number(process.env.MMIN ?? 4),
  penalty: Number(process.env.MPEN ?? 2),
  scaleOf: name => (name.startsWith('head:') ? 0.3 : 1),
}

type MentionSample = Sample & {
  readonly sentence: number
  readonly thing: string
  readonly head: string
  readonly source: Case
}

const listOf = (gold: Gold, kind: string): readonly string[] => (kind === 'tool' ? gold.tools : gold.materials)

const toMentionSamples = (source: Case): readonly MentionSample[] =>
  source.sentences.flatMap((sentence, i) => {
    const reading = readSentence(sentence.text)
    return toMentions(reading).map(({ phrase, features }) => {
      const thing = nameOfThing(reading.tokens, phrase)
      const outcomes = new Set(KINDS.filter(kind => listOf(source.gold, kind).some(name => sameName(thing, name))))
      return { name: source.name, features, outcomes, sentence: i, thing, head: phrase.name, source }
    })
  })

/** Hits, found and wanted of the lists of several cases at a threshold. */
const countLists = (
  cases: readonly Case[],
  samples: readonly MentionSample[],
  kind: string,
  odds: (sample: MentionSample) => number,
  least: number,
) => {
  let [hit, found, wanted] = [0, 0, 0]
  const notes: string[] = []
  for (const source of cases) {
    const named = samples
      .filter(sample => sample.source === source)
      .map(sample => ({ sentence: sample.sentence, name: sample.thing, head: sample.head, odds: odds(sample) }))
    const list = gatherThings(named, least).map(({ name }) => name)
    const gold = [...listOf(source.gold, kind)]
    found += list.length
    wanted += gold.length
    const extra: string[] = []
    for (const name of list) {
      const at = gold.findIndex(other => sameName(name, other))
      if (at >= 0) {
        hit++
        gold.splice(at, 1)
      } else extra.push(name)
    }
    if (source.form === 'vtt') notes.push(`${source.name} extra: ${extra.join(', ')} | missing: ${gold.join(', ')}`)
  }
  return { f1: (2 * hit) / (found + wanted || 1), precision: hit / (found || 1), recall: hit / (wanted || 1), notes }
}

const GRID = Array.from({ length: 31 }, (_, i) => -2.5 + i * 0.15)

const report = (
  title: string,
  cases: readonly Case[],
  samples: readonly MentionSample[],
  odds: (sample: MentionSample, kind: string) => number,
  given?: Readonly<Record<string, number>>,
) =>
  Object.fromEntries(
    KINDS.map(kind => {
      const at =
        given?.[kind] ??
        GRID.reduce((best, least) =>
          countLists(cases, samples, kind, s => odds(s, kind), least).f1 >
          countLists(cases, samples, kind, s => odds(s, kind), best).f1
            ? least
            : best,
        )
      const rows = ['vtt', 'raw.srt'].map(form => {
        const { f1, precision, recall, notes } = countLists(
          cases.filter(c => c.form === form),
          samples,
          kind,
          s => odds(s, kind),
          at,
        )
        if (process.env.SHOW === kind && form === 'vtt') console.log(notes.join('\n'))
        return `${form} F1 ${f1.toFixed(3)} (p ${precision.toFixed(2)} r ${recall.toFixed(2)})`
      })
      console.log(`${title} ${kind.padEnd(8)} ${rows.join('  ')} at ${at.toFixed(2)}`)
      return [kind, at]
    }),
  )

/** Fits which mentions are tools and materials of the job; prints F1 of the lists on cases left out, and on `tests`. */
export const fitMentions = (all: readonly Case[], tests: readonly Case[]): Model => {
  // The short talks list tools that are not named in them.
  const cases = all.filter(one => !one.isOwn)
  const samples = cases.flatMap(toMentionSamples)
  const names = [...new Set(samples.map(sample => sample.name))]
  const folds = 6
  const odds = new Map<MentionSample, Record<string, number>>()
  const oddsBy = (model: Fitted, sample: MentionSample) =>
    Object.fromEntries(KINDS.map(kind => [kind, oddsOf(model, kind, sample.features)]))
  for (let fold = 0; fold < folds; fold++) {
    const out = new Set(names.filter((_, i) => i % folds === fold))
    const model = fitOutcomes(
      samples.filter(sample => !out.has(sample.name)),
      KINDS,
      SETTINGS,
    )
    for (const sample of samples) if (out.has(sample.name)) odds.set(sample, oddsBy(model, sample))
  }
  const least = report('left out', cases, samples, (sample, kind) => odds.get(sample)?.[kind] ?? 0)
  const model = fitOutcomes(samples, KINDS, SETTINGS)
  if (tests.length > 0)
    report(
      'test    ',
      tests,
      tests.flatMap(toMentionSamples),
      (sample, kind) => oddsOf(model, kind, sample.features),
      least,
    )
  const judged = (kind: string) =>
    samples.map(sample => ({
      p: 1 / (1 + Math.exp(-(odds.get(sample)?.[kind] ?? 0))),
      isTrue: sample.outcomes.has(kind),
    }))
  console.log(`${samples.length} mentions`)
  return packModel(model, least, Object.fromEntries(KINDS.map(kind => [kind, calibrate(judged(kind))])))
}
