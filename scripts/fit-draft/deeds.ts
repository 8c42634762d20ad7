import { toNameDeed } from '@/lib/draft/deed'
import { type Course, deedFeatures, deedOf, furtherCourse, isOpenDeed } from '@/lib/draft/deed-feature'
import { DEEDS } from '@/lib/draft/deed-text'
import { type Reading, readSentence } from '@/lib/draft/feature'
import { type Worded, wordStep } from '@/lib/draft/wording'
import type { Model } from '@/lib/trade/model'
import { type Case, OTHERS } from './cases'
import { fitOutcomes, type Sample, type Settings } from './features'
import { overlapOf } from './names'
import { packModel } from './pack'

const SETTINGS: Settings = { leastCases: 10, penalty: 1.5, scaleOf: () => 1 }
const FOLDS = 4
/** Verbs that fewer steps are named by are not learned. */
const LEAST_STEPS = 20
/** Share of their union in time from which on a sentence is the step. */
const SHARED = 0.3

type Told = Sample & {
  readonly worded: Worded
  readonly reading: Reading
  readonly course: Course
  readonly gold: string
  readonly form: string
}

type Span = { readonly start: number; readonly end: number }

const sharedBy = (a: Span, b: Span): number =>
  Math.max(0, Math.min(a.end, b.end) - Math.max(a.start, b.start)) /
  (Math.max(a.end, b.end) - Math.min(a.start, b.start))

/** The steps of a case as they are worded, with the verb its writer gave each. */
const toTold = (source: Case): readonly Told[] => {
  const { sentences, gold, name, form, weight } = source
  const readings = sentences.map(({ text }) => readSentence(text))
  const steps = gold.marks.filter(({ kind }) => kind === 'step')
  let course: Course = { share: 0, undone: new Set(), before: '' }
  const open = new Set(steps)
  return sentences.flatMap((sentence, i): readonly Told[] => {
    const step = steps.find(mark => open.has(mark) && sharedBy(mark, sentence) >= SHARED)
    if (step !== undefined) open.delete(step)
    const reading = readings[i]
    if (step === undefined || reading === undefined) return []
    const worded = wordStep(reading, readings[i - 1], readings[i + 1])
    course = { ...course, share: i / sentences.length }
    const told = {
      name,
      form,
      weight,
      worded,
      reading,
      course,
      gold: step.text,
      features: deedFeatures(worded.text, reading, course),
      outcomes: new Set([deedOf(step.text)]),
    }
    course = furtherCourse(course, worded.text)
    return isOpenDeed(worded.text, reading) ? [told] : []
  })
}

const print = (title: string, set: readonly Told[], modelOf: (told: Told) => Model): void => {
  for (const least of [0.2, 0.3, 0.4, 0.5]) {
    const makers = new Map<Model, ReturnType<typeof toNameDeed>>()
    let [before, after, changed, better, worse, right, was] = [0, 0, 0, 0, 0, 0, 0]
    for (const told of set) {
      const model = modelOf(told)
      const name = makers.get(model) ?? toNameDeed(model, least)
      makers.set(model, name)
      const { text } = name(told.worded, told.reading, told.course)
      const [a, b] = [overlapOf(told.worded.text, told.gold), overlapOf(text, told.gold)]
      before += a
      after += b
      was += deedOf(told.worded.text) === deedOf(told.gold) ? 1 : 0
      right += deedOf(text) === deedOf(told.gold) ? 1 : 0
      if (text === told.worded.text) continue
      changed++
      if (b > a + 1e-9) better++
      if (b < a - 1e-9) worse++
      if (process.env.SHOW === 'deed' && least === 0.2)
        console.log(
          `${b > a ? '+' : b < a ? '-' : '='} ${told.reading.text} | ${told.worded.text} -> ${text} | ${told.gold}`,
        )
    }
    const n = set.length || 1
    console.log(
      `${title} deeds at ${least}: wording ${(before / n).toFixed(3)} -> ${(after / n).toFixed(3)}, verb ${(was / n).toFixed(3)} -> ${(right / n).toFixed(3)}, ${changed} of ${set.length} changed, ${better} better, ${worse} worse`,
    )
  }
}

/** Fits by which verb a step is named where the talk names none; prints how that holds on cases left out, and on `tests`. */
export const fitDeeds = (cases: readonly Case[], tests: readonly Case[]): Model => {
  // By our own talks alone: the development cases tell how the words of others are met.
  const told = cases.filter(({ isOwn, weight }) => !isOwn && weight !== OTHERS).flatMap(toTold)
  const counts = new Map<string, number>()
  for (const { outcomes } of told) for (const deed of outcomes) counts.set(deed, (counts.get(deed) ?? 0) + 1)
  const deeds = DEEDS.filter(deed => (counts.get(deed) ?? 0) >= LEAST_STEPS)
  const learn = (samples: readonly Told[]): Model => packModel(fitOutcomes(samples, deeds, SETTINGS), {}, {}, 0.05)
  const names = [...new Set(told.map(({ name }) => name))]
  const foldOf = new Map(names.map((name, i) => [name, i % FOLDS]))
  const models = Array.from({ length: FOLDS }, (_, fold) => learn(told.filter(({ name }) => foldOf.get(name) !== fold)))
  for (const form of ['vtt', 'raw.srt'])
    print(
      `left out ${form}`,
      told.filter(one => one.form === form),
      ({ name }) => models[foldOf.get(name) ?? 0] as Model,
    )
  const model = learn(told)
  for (const form of ['vtt', 'raw.srt'])
    if (tests.length > 0)
      print(
        `test ${form}`,
        tests.flatMap(toTold).filter(one => one.form === form),
        () => model,
      )
  return model
}
