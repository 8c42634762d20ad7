import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import type { Sentence, Transcript } from '@/lib/procedure/recording'
import { type Sheet, toSheet } from '@/lib/procedure/sheet'
import { toSentences } from '@/lib/transcript/sentence'
import { isSameList, steadied } from './chunks'
import { onceFor } from './memo'
import { NO_SHOP_RULES, type ShopRules } from './shop'

/** What a check may look at. */
export type Subject = {
  readonly project: Project
  readonly sheet: Sheet
  /** The talk, reflowed; empty where there is no timed transcript. */
  readonly sentences: readonly Sentence[]
  readonly shop: ShopRules
}

const sentencesOf = onceFor((transcript: Transcript): readonly Sentence[] =>
  transcript.form === 'untimed' && transcript.cues.every(cue => cue.end === 0) ? [] : toSentences(transcript),
)

const NO_SENTENCES: readonly Sentence[] = []

/** @returns the sentences of a project's talk; computed once a transcript. */
export const talkOf = ({ recording }: Project): readonly Sentence[] =>
  recording.transcript === null ? NO_SENTENCES : sentencesOf(recording.transcript)

let lastMarks = new Map<string, Mark>()

const isSameButPlace = (a: Mark, b: Mark): boolean => {
  const [keys, others] = [Object.keys(a) as (keyof Mark)[], Object.keys(b)]
  return keys.length === others.length && keys.every(key => key === 'place' || a[key] === b[key])
}

/**
 * Steps that only moved up or down as the mark they were in the last review, so that what was found out about it is known still.
 * Where a step stands is the sheet's to say: no rule reads `place`.
 */
const steadyMarks = (marks: readonly Mark[]): readonly Mark[] => {
  const all = marks.map(mark => {
    const old = mark.kind === 'step' ? lastMarks.get(mark.id) : undefined
    return old !== undefined && (old === mark || isSameButPlace(old, mark)) ? old : mark
  })
  lastMarks = new Map(all.map(mark => [mark.id, mark]))
  return isSameList(all, marks) ? marks : all
}

/** @returns everything the rules look at, computed once for all of them. */
export const toSubject = (project: Project, shop: ShopRules = NO_SHOP_RULES): Subject => {
  const marks = steadyMarks(project.marks)
  const known = new Map(project.marks.map((mark, i) => [mark, marks[i]]))
  const sheet = toSheet(project)
  const steps = sheet.steps.map(step => {
    const mark = known.get(step.mark) ?? step.mark
    return mark === step.mark ? step : { ...step, mark }
  })
  return {
    project: marks === project.marks ? project : { ...project, marks },
    sheet: { ...sheet, steps: steadied(steps) },
    sentences: talkOf(project),
    shop,
  }
}
