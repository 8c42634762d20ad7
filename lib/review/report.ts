import { countOf } from '@/lib/procedure/count'
import type { Project } from '@/lib/procedure/project'
import { toSheet } from '@/lib/procedure/sheet'
import { formatTime } from '@/lib/procedure/time'
import { type Coverage, coverageOf } from './coverage'
import { FINDING_LEVELS, type Finding, type FindingLevel, type FindingPlace } from './rule'

/** A finding with its place spelt out for other programs. Times in seconds; `step` is the step's number, counted from 1. */
export type ReportedFinding = Omit<Finding, 'place' | 'remedy'> & {
  readonly place: FindingPlace & {
    readonly kind?: string
    readonly step?: number
    readonly start?: number
    readonly end?: number
    readonly text?: string
  }
  /** What the remedy would do; its edits are left out. */
  readonly remedy?: string
}

/** A review for other programs: findings, how many of each level (waived ones apart), and coverage of the talk. */
export type Report = {
  readonly findings: readonly ReportedFinding[]
  readonly counts: Readonly<Record<FindingLevel | 'waived', number>>
  readonly coverage: Coverage
}

/** @returns the number of the step a mark is, or belongs to, by the mark's id. */
const stepNumbers = (project: Project): ReadonlyMap<string, number> => {
  const numbers = new Map<string, number>()
  for (const { number, mark, cautions, specs, checks, reasons, symptoms, tools, materials } of toSheet(project).steps)
    for (const own of [mark, ...cautions, ...specs, ...checks, ...reasons, ...symptoms, ...tools, ...materials])
      numbers.set(own.id, number)
  return numbers
}

/** @returns the review as plain data; waived findings carry `waived`. */
export const toReport = (project: Project, findings: readonly Finding[]): Report => {
  const numbers = stepNumbers(project)
  const marks = new Map(project.marks.map(mark => [mark.id, mark]))
  const reported = findings.map(({ place, remedy, ...rest }): ReportedFinding => {
    const mark = place.at === 'mark' ? marks.get(place.mark) : undefined
    const step = mark && numbers.get(mark.id)
    const spelt =
      mark === undefined ? place : { ...place, kind: mark.kind, start: mark.start, end: mark.end, text: mark.text }
    return {
      ...rest,
      place: { ...spelt, ...(step === undefined ? {} : { step }) },
      ...(remedy === undefined ? {} : { remedy: remedy.label }),
    }
  })
  const open = findings.filter(({ waived }) => waived === undefined)
  const count = (level: FindingLevel) => open.filter(finding => finding.level === level).length
  return {
    findings: reported,
    counts: {
      stop: count('stop'),
      fix: count('fix'),
      consider: count('consider'),
      waived: findings.length - open.length,
    },
    coverage: coverageOf(project),
  }
}

const whereIs = ({ place }: ReportedFinding): string => {
  const step = place.step === undefined ? '' : `step ${place.step}, `
  switch (place.at) {
    case 'mark':
      return `${step}${formatTime(place.start ?? 0)}`
    case 'talk':
      return `talk, ${formatTime(place.start)}`
    case 'list':
      return `${place.kind}s`
    case 'whole':
      return 'whole'
  }
}

/** @returns the review as text: gravest first, a line each with its place and rule, then counts and coverage. */
export const formatReport = ({ findings, counts, coverage }: Report): string => {
  const rows = FINDING_LEVELS.flatMap(level =>
    findings
      .filter(finding => finding.level === level && finding.waived === undefined)
      .map(finding => `${level.padEnd(8)} ${whereIs(finding)}: ${finding.message} [${finding.rule}]`),
  )
  const waived = findings.flatMap(finding =>
    finding.waived === undefined
      ? []
      : [`waived   ${whereIs(finding)}: ${finding.message} [${finding.rule}] because: ${finding.waived}`],
  )
  const share =
    coverage.instructing === 0
      ? []
      : [
          `The marks account for ${Math.round(coverage.share * 100)} % of the instructing talk; ${countOf(coverage.left.length, 'sentence is', 'sentences are')} left over.`,
        ]
  const total = `${counts.stop} stop, ${counts.fix} fix, ${counts.consider} consider${counts.waived === 0 ? '' : `, ${counts.waived} waived`}.`
  const caveat =
    'Findings are doubts of a program. A sheet without any can still be wrong: the maker’s manual, local codes and licensed practice decide.'
  return `${[...rows, ...waived, ...share, total, caveat].join('\n')}\n`
}
