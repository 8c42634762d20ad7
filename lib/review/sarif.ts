import type { Project } from '@/lib/procedure/project'
import { formatFragment } from '@/lib/procedure/time'
import type { Finding, FindingLevel } from './rule'
import { RULES } from './rules/index'

const LEVELS: Readonly<Record<FindingLevel, 'error' | 'warning' | 'note'>> = {
  stop: 'error',
  fix: 'warning',
  consider: 'note',
}

/** A path as a relative reference of RFC 3986: separators forward, blanks and signs escaped. */
const toReference = (path: string): string => {
  if (/^[a-z][a-z\d+.-]+:/i.test(path)) return encodeURI(path)
  const forward = path.replaceAll('\\', '/').replace(/^[a-z]:\//i, drive => `file:///${drive}`)
  return encodeURI(forward).replaceAll(/[#?[\]]/g, encodeURIComponent)
}

/** Where a place lies in the project file, for the logical location. */
const pathOf = ({ place }: Finding, project: Project): string => {
  switch (place.at) {
    case 'mark':
      return `marks[${project.marks.findIndex(({ id }) => id === place.mark)}]`
    case 'list':
      return `list of ${place.kind}s`
    case 'talk':
      return 'recording.transcript'
    case 'whole':
      return 'procedure'
  }
}

const spanOf = ({ place }: Finding, project: Project): { readonly start: number; readonly end: number } | undefined => {
  if (place.at === 'talk') return place
  return place.at === 'mark' ? project.marks.find(({ id }) => id === place.mark) : undefined
}

const resultOf = (finding: Finding, project: Project, uri: string) => {
  const span = spanOf(finding, project)
  const path = pathOf(finding, project)
  return {
    ruleId: finding.rule,
    ruleIndex: RULES.findIndex(({ id }) => id === finding.rule),
    level: LEVELS[finding.level],
    message: { text: finding.message },
    locations: [
      {
        physicalLocation: { artifactLocation: { uri: toReference(uri) } },
        logicalLocations: [
          { fullyQualifiedName: path, ...(finding.place.at === 'mark' ? { name: finding.place.mark } : {}) },
        ],
      },
    ],
    ...(finding.waived === undefined ? {} : { suppressions: [{ kind: 'external', justification: finding.waived }] }),
    properties: { level: finding.level, ...(span === undefined ? {} : { fragment: formatFragment(span) }) },
  }
}

/**
 * Findings as a SARIF log, for tools that gather such results.
 *
 * @param uri of the project file, relative or absolute, or its path; escaped as a reference where it is none yet
 * @returns a SARIF 2.1.0 log with one run; stop is error, fix warning, consider note; waived findings are suppressed
 * @source OASIS SARIF 2.1.0
 */
export const toSarif = (findings: readonly Finding[], project: Project, uri: string) => ({
  $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
  version: '2.1.0',
  runs: [
    {
      tool: {
        driver: {
          name: 'Tellwright',
          rules: RULES.map(({ id, level, about, why, source }) => ({
            id,
            shortDescription: { text: about },
            fullDescription: { text: why },
            help: { text: `${why} Source: ${source}.` },
            defaultConfiguration: { level: LEVELS[level] },
          })),
        },
      },
      results: findings.map(finding => resultOf(finding, project, uri)),
    },
  ],
})
