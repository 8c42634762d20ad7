import type { Project } from '@/lib/procedure/project'
import type { Sentence, Transcript } from '@/lib/procedure/recording'
import { type Sheet, toSheet } from '@/lib/procedure/sheet'
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

/** @returns everything the rules look at, computed once for all of them. */
export const toSubject = (project: Project, shop: ShopRules = NO_SHOP_RULES): Subject => ({
  project,
  sheet: toSheet(project),
  sentences: talkOf(project),
  shop,
})
