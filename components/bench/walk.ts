import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import type { Finding } from '@/lib/review/rule'
import { waiverKey } from '@/lib/review/waiver'
import type { BenchNow } from './now'

/** @returns the marks as they were said. */
export const sortedMarks = (project: Project): readonly Mark[] =>
  [...project.marks].sort((a, b) => a.start - b.start || a.end - b.end)

/** Chooses the next or previous mark; from the playhead where none is chosen. */
export const nextMark = (now: BenchNow, by: 1 | -1): void => {
  const marks = sortedMarks(now.project)
  const at = marks.findIndex(mark => mark.id === now.chosen)
  const from = at >= 0 ? at : by > 0 ? marks.findLastIndex(mark => mark.start < now.playhead.get()) : marks.length
  const next = marks[(from + by + marks.length) % Math.max(1, marks.length)]
  if (next === undefined) now.tell('There are no marks yet.')
  else now.choose(next.id)
}

/** @returns the findings nobody let stand. */
export const openFindings = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(finding => finding.waived === undefined)

/** @returns the finding that says the same of the same place after a new review. */
export const sameFinding = (findings: readonly Finding[], wanted: Finding | undefined): Finding | undefined => {
  if (wanted === undefined) return undefined
  const alike = findings.filter(
    ({ rule, place }) =>
      rule === wanted.rule && place.at === wanted.place.at && waiverKey(place) === waiverKey(wanted.place),
  )
  return alike.find(finding => finding.message === wanted.message) ?? alike[0]
}

type Walking = Pick<BenchNow, 'findings' | 'isReviewed' | 'chosenFinding' | 'findingAt' | 'chooseFinding' | 'tell'>

/** Chooses the next or previous open finding; goes on from where a mended one stood. */
export const nextFinding = (now: Walking, by: 1 | -1): void => {
  if (!now.isReviewed) {
    now.tell('The sheet is still being reviewed: ask for its findings again in a moment.')
    return
  }
  const open = openFindings(now.findings)
  const at = now.chosenFinding === undefined ? -1 : open.indexOf(now.chosenFinding)
  const gone = now.findingAt ?? (by > 0 ? 0 : open.length)
  const to = at >= 0 ? at + by : by > 0 ? gone : gone - 1
  const next = open[(to + open.length) % Math.max(1, open.length)]
  now.chooseFinding(next)
  if (next === undefined) now.tell('No findings are open.')
  else now.tell(`Finding ${open.indexOf(next) + 1} of ${open.length}, ${next.level}`, next.message)
}
