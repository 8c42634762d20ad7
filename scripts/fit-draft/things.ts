import { readSentence } from '@/lib/draft/feature'
import { gatherThings } from '@/lib/draft/gather'
import { type Model, sigmoid } from '@/lib/trade/model'
import type { Case, Gold } from './cases'
import { fitOutcomes, oddsOf, type Sample, type Settings } from './features'
import { bestThreshold, calibrate, f1At, type Judged, toThreshold } from './logistic'
import { overlapOf, sameName } from './names'
import { packModel } from './pack'

const KINDS = ['tool', 'material'] as const

/** The head of a thing's name counts most, as far as several cases show it; what all its mentions share counts a little. */
const SETTINGS: Settings = {
  leastCases: 4,
  penalty: 6,
  scaleOf: name => (name.startsWith('head:') ? 2 : name.startsWith('all:') ? 0.4 : 1),
}

/** A list with a thing too few is mended sooner than one with things nobody uses. */
const GIVEN_UP = 0.005

type ThingSample = Sample & { readonly form: string; readonly thing: string }
type Part = {
  readonly source: Case
  readonly samples: readonly ThingSample[]
  readonly missed: Readonly<Record<string, number>>
}

const listOf = (gold: Gold, kind: string): readonly string[] => (kind === 'tool' ? gold.tools : gold.materials)

const headOf = (name: string): string =>
  name
    .toLowerCase()
    .split(/[\s-]+/)
    .at(-1)
    ?.replace(/s$/, '') ?? ''

/** Where names are equally alike, the one with the same head is meant ("copper washer", not "drain plug", for a drain plug washer). */
const likeness = (name: string, other: string): number =>
  overlapOf(name, other) + (headOf(name) === headOf(other.split(' with ')[0] ?? other) ? 0.1 : 0)

/** Pairs names with entries of a list, the most alike first, each used once; as the cases' scorer does it. */
const pairUp = (names: readonly string[], list: readonly string[]): ReadonlySet<number> => {
  const all = names.flatMap((name, i) =>
    list.flatMap((other, j) => (sameName(name, other) ? [{ i, j, overlap: likeness(name, other) }] : [])),
  )
  const [found, used] = [new Set<number>(), new Set<number>()]
  for (const { i, j } of all.sort((a, b) => b.overlap - a.overlap)) {
    if (found.has(i) || used.has(j)) continue
    found.add(i)
    used.add(j)
  }
  return found
}

/** Things of a case, each told whether a list of the gold has it (each entry once), and how many entries nothing names. */
const toPart = (source: Case): Part => {
  const things = gatherThings(source.sentences.map(sentence => readSentence(sentence.text)))
  const names = things.map(({ name }) => name)
  const inList = Object.fromEntries(KINDS.map(kind => [kind, pairUp(names, listOf(source.gold, kind))]))
  const samples = things.map(
    ({ name, features }, i): ThingSample => ({
      name: source.name,
      form: source.form,
      weight: source.weight,
      features,
      outcomes: new Set(KINDS.filter(kind => inList[kind]?.has(i))),
      thing: name,
    }),
  )
  const missed = KINDS.map(kind => [kind, listOf(source.gold, kind).length - (inList[kind]?.size ?? 0)])
  return { source, samples, missed: Object.fromEntries(missed) }
}

const report = (
  title: string,
  parts: readonly Part[],
  odds: (sample: ThingSample, kind: string) => number,
  given?: Readonly<Record<string, number>>,
) =>
  Object.fromEntries(
    KINDS.map(kind => {
      const judged = (form?: string): Judged[] =>
        parts
          .filter(({ source }) => form === undefined || source.form === form)
          .flatMap(({ samples }) =>
            samples.map(sample => ({
              p: sigmoid(odds(sample, kind)),
              isTrue: sample.outcomes.has(kind),
              weight: toThreshold(sample.weight),
            })),
          )
      const missed = (form?: string) =>
        parts
          .filter(({ source }) => form === undefined || source.form === form)
          .reduce((n, part) => n + toThreshold(part.source.weight) * (part.missed[kind] ?? 0), 0)
      const at = given?.[kind] ?? bestThreshold(judged(), missed(), GIVEN_UP)
      const rows = ['vtt', 'raw.srt'].map(form => {
        const { f1, precision, recall } = f1At(judged(form), at, missed(form))
        return `${form} F1 ${f1.toFixed(3)} (p ${precision.toFixed(2)} r ${recall.toFixed(2)}) lost ${missed(form)}`
      })
      console.log(`${title} ${kind.padEnd(8)} ${rows.join('  ')} at ${at.toFixed(2)}`)
      if (process.env.SHOW === kind)
        for (const { source, samples } of parts.filter(part => part.source.form === 'vtt')) {
          const of = (test: (sample: ThingSample, p: number) => boolean) =>
            samples
              .filter(sample => test(sample, sigmoid(odds(sample, kind))))
              .map(sample => sample.thing)
              .join(', ')
          console.log(
            `${source.name} extra: ${of((s, p) => p >= at && !s.outcomes.has(kind))} | missing: ${of((s, p) => p < at && s.outcomes.has(kind))}`,
          )
        }
      return [kind, at]
    }),
  )

/** Fits which things named are tools and materials of the job; prints F1 of the lists on cases left out, and on `tests`. */
export const fitThings = (all: readonly Case[], tests: readonly Case[]): Model => {
  // The short talks list tools that are not named in them.
  const parts = all.filter(one => !one.isOwn).map(toPart)
  const samples = parts.flatMap(part => part.samples)
  const names = [...new Set(samples.map(sample => sample.name))]
  const odds = new Map<ThingSample, Record<string, number>>()
  for (let fold = 0; fold < 6; fold++) {
    const out = new Set(names.filter((_, i) => i % 6 === fold))
    const model = fitOutcomes(
      samples.filter(sample => !out.has(sample.name)),
      KINDS,
      SETTINGS,
    )
    for (const sample of samples)
      if (out.has(sample.name))
        odds.set(sample, Object.fromEntries(KINDS.map(kind => [kind, oddsOf(model, kind, sample.features)])))
  }
  const thresholds = report('left out', parts, (sample, kind) => odds.get(sample)?.[kind] ?? 0)
  const model = fitOutcomes(samples, KINDS, SETTINGS)
  if (tests.length > 0)
    report('test    ', tests.map(toPart), (sample, kind) => oddsOf(model, kind, sample.features), thresholds)
  const judged = (kind: string): Judged[] =>
    samples.map(sample => ({ p: sigmoid(odds.get(sample)?.[kind] ?? 0), isTrue: sample.outcomes.has(kind) }))
  console.log(`${samples.length} things`)
  return packModel(model, thresholds, Object.fromEntries(KINDS.map(kind => [kind, calibrate(judged(kind))])))
}
