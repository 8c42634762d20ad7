import type { Project } from '@/lib/procedure/project'
import type { Sentence, Transcript } from '@/lib/procedure/recording'
import { type Sheet, type SheetStep, toSheet } from '@/lib/procedure/sheet'
import { toSentences } from '@/lib/transcript/sentence'
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

let lastSteps: readonly SheetStep[] = []

const LISTS = ['cautions', 'specs', 'checks', 'reasons', 'symptoms', 'tools', 'materials'] as const

const isSameList = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a === b || (a.length === b.length && a.every((value, i) => value === b[i]))

/** A step that says what it said keeps its identity, so that what was found out about it is known still. */
const steady = (step: SheetStep): SheetStep => {
  const old = lastSteps[step.number - 1]
  return old !== undefined && old.mark === step.mark && LISTS.every(list => isSameList(old[list], step[list]))
    ? old
    : step
}

const steadySheet = (sheet: Sheet): Sheet => {
  const steps = sheet.steps.map(steady)
  lastSteps = steps
  return { ...sheet, steps }
}

/** @returns everything the rules look at, computed once for all of them. */
export const toSubject = (project: Project, shop: ShopRules = NO_SHOP_RULES): Subject => ({
  project,
  sheet: steadySheet(toSheet(project)),
  sentences: talkOf(project),
  shop,
})
