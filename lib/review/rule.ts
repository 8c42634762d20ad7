import type { Edit } from '@/lib/procedure/edit'
import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import type { ShopRules } from './shop'
import type { Subject } from './subject'

/** How much a finding weighs: `stop` blocks a release, `fix` should be mended, `consider` is a thought. */
export const FINDING_LEVELS = ['stop', 'fix', 'consider'] as const
export type FindingLevel = (typeof FINDING_LEVELS)[number]

/** What a finding is about. Spans in seconds of footage. */
export type FindingPlace =
  | { readonly at: 'mark'; readonly mark: string }
  | { readonly at: 'list'; readonly kind: Kind }
  | { readonly at: 'talk'; readonly start: number; readonly end: number }
  | { readonly at: 'whole' }

/** A change that mends a finding, where one can be derived. */
export type Remedy = {
  /** What the button says: a verb and what it does, such as `Move the warning before step 4`. */
  readonly label: string
  readonly edits: readonly Edit[]
}

/** A questionable thing in a procedure. */
export type Finding = {
  /** Id of the rule. */
  readonly rule: string
  readonly level: FindingLevel
  readonly place: FindingPlace
  /** Names the thing, says what is doubtful and what to do. One or two sentences. */
  readonly message: string
  readonly remedy?: Remedy
  /** Reason of the waiver, where the user let it stand. */
  readonly waived?: string
}

/** What a rule's check gives back: the engine adds rule, level and waiver. A rule may lower its level for one finding. */
export type Found = Omit<Finding, 'rule' | 'level' | 'waived'> & { readonly level?: FindingLevel }

/** A rule is one object in one file; its samples are its tests and its docs page. */
export type Rule = {
  /** Kebab case; also the file's name. */
  readonly id: string
  readonly level: FindingLevel
  /** What it looks at, in one sentence. */
  readonly about: string
  /** Why that matters to the person who does the job. */
  readonly why: string
  /** Standard and clause, "common practice, no source", or "from memory". */
  readonly source: string
  /** A project that trips it. */
  readonly trips: Project
  /** A project that does not. */
  readonly passes: Project
  /** The shop's rules its samples are read with, for rules that need some. */
  readonly shop?: Partial<ShopRules>
  /** Where the rule looks at one mark at a time: that, pure and total. `check` then does it for every mark. */
  readonly checkMark?: (mark: Mark) => readonly Found[]
  /** Pure and total. */
  readonly check: (subject: Subject) => readonly Found[]
}

/** @returns the place of a mark. */
export const atMark = (mark: { readonly id: string }): FindingPlace => ({ at: 'mark', mark: mark.id })

/** The place of what concerns the procedure as a whole. */
export const WHOLE: FindingPlace = { at: 'whole' }
