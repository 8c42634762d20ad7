import { boundaryFeatures, paceOf, type RunWord, slackBucket, toRunWords } from '@/lib/transcript/boundary'
import { type BoundaryModel, divideRun, type Odds } from '@/lib/transcript/run'
import { toTimedTokens } from '@/lib/transcript/sentence'
import type { Case } from './cases'
import { type Fitted, fitOutcomes, oddsOf, type Sample, type Settings } from './features'
import { otherForms } from './other-forms'
import { packModel } from './pack'

const SETTINGS: Settings = { leastCases: 4, penalty: 0.7, scaleOf: () => 1 }
const MOST = 60

type Run = {
  readonly name: string
  readonly isOwn: boolean
  readonly words: readonly RunWord[]
  readonly ends: readonly boolean[]
  readonly features: readonly (readonly string[])[]
}

const keyOf = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '')

const toRun = ({ name, isOwn, gold, transcript }: Case): Run => {
  const tokens = toTimedTokens(transcript)
  const words = toRunWords(tokens, 0, tokens.length, paceOf(tokens))
  const goldEnds = new Set<number>()
  let n = 0
  for (const sentence of gold.sentences) {
    n += keyOf(sentence.text).length
    goldEnds.add(n)
  }
  let m = 0
  const ends = tokens.map(token => {
    m += keyOf(token.text).length
    return goldEnds.has(m)
  })
  return { name, isOwn, words, ends, features: boundaryFeatures(words) }
}

/** How long sentences are, and how often a cue that runs over holds an end. */
const shapeOf = (runs: readonly Run[]): Pick<BoundaryModel, 'lengths' | 'density' | 'held'> => {
  const lengths = new Array<number>(MOST + 1).fill(0.5)
  const held = Array.from({ length: 8 }, () => ({ yes: 0.5, all: 1 }))
  let [ends, places] = [0, 0]
  for (const run of runs) {
    let n = 0
    const cues = new Map<number, { slack: number; has: boolean }>()
    run.ends.forEach((isEnd, i) => {
      const word = run.words[i]
      if (word === undefined) return
      n++
      places++
      if (isEnd) {
        ends++
        const at = Math.min(n, MOST)
        lengths[at] = (lengths[at] ?? 0) + 1
        n = 0
      }
      const next = run.words[i + 1]
      const isSeen = word.isLastOfCue && next !== undefined && next.start - word.end >= 0.05
      if (word.slack === undefined) return
      const cue = cues.get(word.cue) ?? { slack: word.slack, has: false }
      cues.set(word.cue, { slack: cue.slack, has: cue.has || (isEnd && !isSeen) })
    })
    for (const { slack, has } of cues.values()) {
      const bucket = held[slackBucket(slack)]
      if (bucket === undefined) continue
      bucket.all++
      if (has) bucket.yes++
    }
  }
  const total = lengths.reduce((a, b) => a + b, 0)
  return {
    lengths: lengths.map(count => Math.round((count / total) * 1e5) / 1e5),
    density: Math.round((ends / places) * 1e4) / 1e4,
    held: held.map(({ yes, all }) => (all < 6 ? 0 : Math.round((yes / all) * 1000) / 1000)),
  }
}

/** What tells of cues and pauses; the rest are the words alone. */
const OF_TIME = /^(?:inside|end-of-cue|slack)\b/

/** Both fits over the features of the first. */
const fitEnds = (runs: readonly Run[]): Fitted => {
  const fitted = (outcome: keyof Odds, heeds: (feature: string) => boolean): Fitted => {
    const samples: Sample[] = runs.flatMap(run =>
      run.features.slice(0, -1).map((features, i) => ({
        name: run.name,
        features: features.filter(heeds),
        outcomes: new Set(run.ends[i] ? [outcome] : []),
      })),
    )
    return fitOutcomes(samples, [outcome], SETTINGS)
  }
  const timed = fitted('timed', () => true)
  const plain = fitted('plain', feature => !OF_TIME.test(feature))
  const row = timed.names.map(name => plain.weights.plain?.[plain.index.get(name) ?? -1] ?? 0)
  return { ...timed, weights: { ...timed.weights, plain: Float64Array.from(row) } }
}

type Shape = Pick<BoundaryModel, 'lengths' | 'density' | 'held'>

const count = (runs: readonly Run[], fitted: Fitted, shape: Shape) => {
  let [hit, found, wanted] = [0, 0, 0]
  const given = { ...shape, features: '', weights: {}, calibration: {}, thresholds: {} }
  for (const run of runs) {
    const odds = (outcome: keyof Odds) => run.features.slice(0, -1).map(features => oddsOf(fitted, outcome, features))
    const ends = divideRun(run.words, { timed: odds('timed'), plain: odds('plain') }, given)
    for (const end of ends)
      if (end < run.words.length - 1) {
        found++
        if (run.ends[end]) hit++
      }
    wanted += run.ends.filter((isEnd, i) => isEnd && i < run.words.length - 1).length
  }
  return { hit, found, wanted }
}

const f1 = ({ hit, found, wanted }: { hit: number; found: number; wanted: number }) =>
  `F1 ${((2 * hit) / (found + wanted)).toFixed(3)} (p ${(hit / found).toFixed(2)} r ${(hit / wanted).toFixed(2)})`

/** Fits where sentences end in captions without punctuation; prints how well it holds on cases left out, and on `tests`. */
export const fitBoundaries = (cases: readonly Case[], tests: readonly Case[]): BoundaryModel => {
  const rolling = cases.filter(one => one.form === 'raw.srt')
  const runs = rolling.map(toRun)
  const sums = new Map<string, { hit: number; found: number; wanted: number }>()
  const add = (form: string, counted: ReturnType<typeof count>): void => {
    const { hit, found, wanted } = sums.get(form) ?? { hit: 0, found: 0, wanted: 0 }
    sums.set(form, { hit: hit + counted.hit, found: found + counted.found, wanted: wanted + counted.wanted })
  }
  for (let fold = 0; fold < 6; fold++) {
    const train = runs.filter((_, i) => i % 6 !== fold)
    const [fitted, shape] = [fitEnds(train), shapeOf(train)]
    rolling.forEach((one, i) => {
      const run = runs[i]
      if (run === undefined || i % 6 !== fold || one.isOwn) return
      add('rolling captions', count([run], fitted, shape))
      for (const [form, transcript] of Object.entries(otherForms(one.gold)))
        add(form, count([toRun({ ...one, transcript })], fitted, shape))
    })
  }
  for (const [form, sum] of sums) console.log(`left out boundaries, ${form}: ${f1(sum)}`)
  const fitted = fitEnds(runs)
  const shape = shapeOf(runs)
  if (tests.length > 0)
    console.log(
      `test     boundaries ${f1(count(tests.filter(one => one.form === 'raw.srt').map(toRun), fitted, shape))}`,
    )
  return { ...packModel(fitted, { timed: 0.5, plain: 0.5 }, {}, 0.24), ...shape }
}
