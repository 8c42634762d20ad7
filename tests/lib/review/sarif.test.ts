import published from '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json' with { type: 'json' }
import { Ajv } from 'ajv'
import { describe, expect, test } from 'vitest'
import { applyEdit } from '@/lib/procedure/edit'
import { reviewProject } from '@/lib/review/review'
import { RULES } from '@/lib/review/rules/index'
import { toSarif } from '@/lib/review/sarif'
import { waiverFor } from '@/lib/review/waiver'
import { SOUND } from './sound/all'

/** The published schema, from @microsoft/jest-sarif (MIT): SARIF 2.1.0 rtm.5, JSON Schema draft 4. */
const readSchema = (): object => {
  const { $schema: _, id: __, ...schema } = published as Record<string, unknown>
  return schema
}

// It uses nothing of draft 4 that draft 7 reads otherwise, so its own names of the draft are left out; one of its patterns
// is none of Unicode mode. Formats are looked at below.
const validate = new Ajv({ strict: false, allErrors: true, validateFormats: false, unicodeRegExp: false }).compile(
  readSchema(),
)

const problemsOf = (log: unknown) => {
  validate(log)
  return validate.errors ?? []
}

describe('SARIF output, against the published schema', () => {
  test('[R9] the schema refuses what is none', () => {
    expect(problemsOf({ version: '2.1.0', runs: [{}] })).not.toEqual([])
    expect(problemsOf({ version: '2.0.0', runs: [] })).not.toEqual([])
  })

  test.each(RULES.map(rule => [rule.id, rule] as const))(
    '[R9] the log of the sample that trips %s is valid',
    (_, rule) => {
      const findings = reviewProject(rule.trips)
      expect(problemsOf(JSON.parse(JSON.stringify(toSarif(findings, rule.trips, 'job.tellwright.json'))))).toEqual([])
    },
  )

  test('[R9] so is one with nothing found, and one with a waived finding', () => {
    const [sound] = SOUND
    if (sound === undefined) throw new Error('there are no sound procedures')
    expect(problemsOf(toSarif([], sound.project, 'sound.json'))).toEqual([])
    const spoilt = applyEdit(sound.project, { do: 'change-heading', to: { equipment: '' } })
    const [finding] = reviewProject(spoilt)
    if (finding === undefined) throw new Error('nothing found')
    const waived = applyEdit(spoilt, waiverFor(finding, 'shown on the machine'))
    const log = toSarif(reviewProject(waived), waived, 'waived.json')
    expect(problemsOf(log)).toEqual([])
    expect(log.runs[0]?.results[0]?.suppressions).toEqual([{ kind: 'external', justification: 'shown on the machine' }])
  })

  test.each([
    ['job 7 (bay 2).tellwright.json', 'job%207%20(bay%202).tellwright.json'],
    ['C:\\jobs\\job#1.json', 'file:///C:/jobs/job%231.json'],
    ['jobs/50%.json', 'jobs/50%25.json'],
    ['-', '-'],
  ])('[R9] the path %j is a reference of RFC 3986', (path, reference) => {
    const [rule] = RULES
    if (rule === undefined) throw new Error('there are no rules')
    const log = toSarif(reviewProject(rule.trips), rule.trips, path)
    expect(log.runs[0]?.results[0]?.locations[0]?.physicalLocation.artifactLocation.uri).toBe(reference)
  })
})
