import type { Sheet } from '@/lib/procedure/sheet'
import { formatTime } from '@/lib/procedure/time'
import type { PublishedFinding, PublishOptions } from './publication'
import { stepNumbers } from './standing'
import { toLine } from './text'

/** Whether a message begins with the words of its place, such as `Step 9`, but not `Step 91`. */
const opensWith = (message: string, where: string): boolean =>
  message.toLowerCase().startsWith(where.toLowerCase()) && !/^[\p{L}\p{N}]/u.test(message.slice(where.length))

/** @returns a finding in one line: message, then where, unless the message begins with it. */
export const findingLine = ({ message, where = '' }: PublishedFinding): string =>
  toLine(where === '' || opensWith(message, where) ? message : `${message} (${where})`)

/** @returns all findings and all that was let stand, a line each; nothing where they were not asked for. */
export const findingLines = (
  sheet: Sheet,
  { findings = [], listFindings }: PublishOptions,
): { readonly findings: readonly string[]; readonly waived: readonly string[] } => {
  if (listFindings !== true) return { findings: [], waived: [] }
  const open = findings.filter(({ waived }) => waived === undefined)
  const known = findings.flatMap(finding =>
    finding.waived === undefined ? [] : [`${findingLine(finding)} Let stand: ${toLine(finding.waived)}`],
  )
  const stored = sheet.waivers.map(({ rule, reason }) => `${toLine(rule)}. Let stand: ${toLine(reason)}`)
  return {
    findings: open.map(finding => `${finding.level}: ${findingLine(finding)}`),
    waived: known.length > 0 ? known : stored,
  }
}

/** A finding as a review gives it, by its shape alone: review and publish do not know each other. */
export type ReviewedFinding = {
  readonly level: PublishedFinding['level']
  readonly message: string
  readonly waived?: string
  readonly place:
    | { readonly at: 'mark'; readonly mark: string }
    | { readonly at: 'list'; readonly kind: string }
    | { readonly at: 'talk'; readonly start: number; readonly end: number }
    | { readonly at: 'whole' }
}

/** @returns findings as publications show them, each with the step, list or time it lies at, in words. */
export const toPublishedFindings = (
  sheet: Sheet,
  findings: readonly ReviewedFinding[],
): readonly PublishedFinding[] => {
  const numbers = stepNumbers(sheet)
  const whereOf = (place: ReviewedFinding['place']): string | undefined => {
    if (place.at === 'talk') return `at ${formatTime(place.start)}`
    if (place.at === 'list') return `${place.kind}s`
    const number = place.at === 'mark' ? numbers.get(place.mark) : undefined
    return number === undefined ? undefined : `step ${number}`
  }
  return findings.map(({ level, message, waived, place }) => {
    const where = whereOf(place)
    return { level, message, ...(where === undefined ? {} : { where }), ...(waived === undefined ? {} : { waived }) }
  })
}
