import type { Sheet } from '@/lib/procedure/sheet'
import type { PublishedFinding, PublishOptions } from './publication'
import { toLine } from './text'

/** @returns a finding in one line: message, then where. */
export const findingLine = ({ message, where }: PublishedFinding): string =>
  toLine(where === undefined || where === '' ? message : `${message} (${where})`)

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
