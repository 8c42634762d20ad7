import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import type { Transcript } from '@/lib/procedure/recording'
import type { Coverage } from '@/lib/review/coverage'
import { onceFor } from '@/lib/review/memo'
import type { Finding } from '@/lib/review/rule'
import type { ShopRules } from '@/lib/review/shop'

/**
 * What the page and the reviewer tell each other: only what changed since last time. A talk of hours has thousands of marks
 * and findings; and a mark that is the same object as before need not be looked at again.
 */

/** What the page sends: the project without marks and transcript, and of these what changed. */
export type ToReviewer = {
  readonly project: Project
  /** Ids of all marks in order; absent: the same as before. */
  readonly ids?: readonly string[]
  /** Marks that are new or changed. */
  readonly changed: readonly Mark[]
  readonly transcript?: Transcript | null
  /** The shop's own rules; absent: as before. */
  readonly rules?: ShopRules
}

/** What a review says. */
export type Reviewed = { readonly findings: readonly Finding[]; readonly coverage: Coverage }

/** What comes back: findings in order, those of the last review by their number there; absent: all as before. */
export type FromReviewer = {
  readonly findings?: readonly (Finding | number)[]
  readonly coverage?: Coverage
}

/** Says what changed of a project since the last time it was asked. */
export const openProjectTeller = () => {
  let known: Project | undefined
  return (project: Project): Omit<ToReviewer, 'rules'> => {
    const { marks, recording } = project
    const before = known?.marks ?? []
    const old = new Set(before)
    const isSameOrder = before.length === marks.length && marks.every(({ id }, i) => id === before[i]?.id)
    const isSameTalk = known !== undefined && known.recording.transcript === recording.transcript
    known = project
    return {
      project: { ...project, marks: [], recording: { ...recording, transcript: null } },
      ...(isSameOrder ? {} : { ids: marks.map(({ id }) => id) }),
      changed: marks.filter(mark => !old.has(mark)),
      ...(isSameTalk ? {} : { transcript: recording.transcript }),
    }
  }
}

/** Puts together again what a teller said; marks and transcript that did not change are the same objects as before. */
export const openProjectListener = () => {
  let transcript: Transcript | null = null
  let ids: readonly string[] = []
  let marks: ReadonlyMap<string, Mark> = new Map()
  return (told: ToReviewer): Project => {
    if (told.transcript !== undefined) transcript = told.transcript
    if (told.ids !== undefined) ids = told.ids
    const news = new Map(told.changed.map(mark => [mark.id, mark]))
    const all = ids.flatMap(id => news.get(id) ?? marks.get(id) ?? [])
    marks = new Map(all.map(mark => [mark.id, mark]))
    return { ...told.project, marks: all, recording: { ...told.project.recording, transcript } }
  }
}

/** What a finding says, all of it; one that was kept is not spelt out again. */
const keyOf = onceFor((finding: Finding): string => JSON.stringify(finding))

/** Says what a review found otherwise than the one before. */
export const openFindingsTeller = () => {
  let numbers: ReadonlyMap<string, number> = new Map()
  let spelt: string | undefined
  return ({ findings, coverage }: Reviewed): FromReviewer => {
    const told = findings.map(finding => numbers.get(keyOf(finding)) ?? finding)
    const isSame = told.length === numbers.size && told.every((finding, i) => finding === i)
    const words = JSON.stringify(coverage)
    const isCovered = words === spelt
    numbers = new Map(findings.map((finding, i) => [keyOf(finding), i]))
    spelt = words
    return { ...(isSame ? {} : { findings: told }), ...(isCovered ? {} : { coverage }) }
  }
}

/** A review after what was told of it: what is found alike stays the same object, so that what shows it is not drawn anew. */
export const heardReview = (before: Reviewed, { findings, coverage = before.coverage }: FromReviewer): Reviewed => ({
  findings:
    findings === undefined
      ? before.findings
      : findings.flatMap(told => (typeof told === 'number' ? (before.findings[told] ?? []) : told)),
  coverage,
})
