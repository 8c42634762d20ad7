import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { applyEdit } from '@/lib/procedure/edit'
import { KINDS } from '@/lib/procedure/kinds'
import { stepsInOrder } from '@/lib/procedure/place'
import { formatProject, parseProject } from '@/lib/procedure/project-file'
import { toReport } from '@/lib/review/report'
import { isAtLeast, reviewProject } from '@/lib/review/review'
import type { Finding } from '@/lib/review/rule'
import { RULES } from '@/lib/review/rules/index'
import { sample } from '@/lib/review/sample'
import { toSarif } from '@/lib/review/sarif'
import { NO_SHOP_RULES } from '@/lib/review/shop'
import { waiverFor } from '@/lib/review/waiver'
import { SOUND } from './sound/all'

const keyOf = ({ rule, place }: Finding): string => `${rule} ${JSON.stringify(place)}`
const spoilt = sample([
  ['step', 'Take off the belt guard'],
  ['step', 'Tighten the cover screws'],
  ['spec', 'cover screw torque', { quantity: { nominal: 4 }, basis: 'manual' }],
  ['step', 'Run the machine and listen'],
])

describe('findings', () => {
  test('[R5] come in order of the footage, lists and the whole last, and twice the same', () => {
    const findings = reviewProject(spoilt)
    expect(findings.map(({ rule, level }) => `${level} ${rule}`)).toEqual([
      'stop not-refitted',
      'fix hazard-no-caution',
      'stop spec-no-unit',
      'consider spec-no-tolerance',
      'fix run-unready',
    ])
    expect(reviewProject(spoilt)).toEqual(findings)
    expect(findings.length).toBeGreaterThan(2)
  })

  test('[R5] that are waived stay, with the reason, and no longer weigh in the counts', () => {
    const [first] = reviewProject(spoilt)
    if (first === undefined) throw new Error('nothing found')
    const waived = applyEdit(spoilt, waiverFor(first, 'the guard stays off for the demonstration'))
    const after = reviewProject(waived)
    expect(after.find(finding => keyOf(finding) === keyOf(first))).toEqual({
      ...first,
      waived: 'the guard stays off for the demonstration',
    })
    expect(toReport(waived, after).counts.waived).toBe(1)
    expect(after.filter(finding => finding.waived !== undefined)).toHaveLength(1)
  })

  test('[R5] weigh stop over fix over consider', () => {
    const fix: Finding = { rule: 'x', level: 'fix', place: { at: 'whole' }, message: '' }
    expect([isAtLeast(fix, 'stop'), isAtLeast(fix, 'fix'), isAtLeast(fix, 'consider')]).toEqual([false, true, true])
  })

  test('[R10] never come as an exception, whatever the marks hold', () => {
    const mark = fc.record({
      kind: fc.constantFrom(...KINDS),
      text: fc.oneof(
        fc.string(),
        fc.constantFrom(...SOUND.flatMap(({ project }) => project.marks.map(({ text }) => text))),
      ),
      start: fc.nat(300),
      length: fc.integer({ min: -5, max: 40 }),
      value: fc.option(fc.double({ noNaN: true, min: -1e6, max: 1e6 }), { nil: undefined }),
      unit: fc.option(fc.constantFrom('N.m', 'mm', 'nonsense', ''), { nil: undefined }),
    })
    fc.assert(
      fc.property(fc.array(mark, { maxLength: 25 }), fc.array(fc.string(), { maxLength: 5 }), (marks, talk) => {
        const project = sample(
          marks.map(({ kind, text, start, length, value, unit }) => {
            const quantity = {
              ...(value === undefined ? {} : { nominal: value }),
              ...(unit === undefined ? {} : { unit }),
            }
            return [
              kind,
              text,
              { start, end: Math.max(0, start + length), ...(kind === 'spec' ? { quantity } : {}) },
            ] as const
          }),
          { talk, footage: 200 },
        )
        expect(Array.isArray(reviewProject(project))).toBe(true)
      }),
      { numRuns: 60 },
    )
  })
})

describe('remedies', () => {
  test.each(RULES.map(rule => [rule.id, rule] as const))(
    '[R6] of %s mend its sample and leave a valid project',
    (_, rule) => {
      const rules = { ...NO_SHOP_RULES, ...rule.shop }
      for (const finding of reviewProject(rule.trips, { rules }).filter(({ rule: id }) => id === rule.id)) {
        if (finding.remedy === undefined) continue
        const mended = finding.remedy.edits.reduce(applyEdit, rule.trips)
        expect(parseProject(formatProject(mended)).ok).toBe(true)
        expect(reviewProject(mended, { rules }).map(keyOf)).not.toContain(keyOf(finding))
      }
    },
  )
})

test('[R6] a step that a remedy adds stands where the remedy says, with and without places in the file', () => {
  for (const isPlaced of [true, false]) {
    const marks = spoilt.marks.map(({ place, ...mark }) =>
      isPlaced && place !== undefined ? { ...mark, place } : mark,
    )
    const project = { ...spoilt, marks }
    const finding = reviewProject(project).find(({ rule }) => rule === 'not-refitted')
    const mended = (finding?.remedy?.edits ?? []).reduce(applyEdit, project)
    expect(stepsInOrder(mended.marks).map(({ text }) => text)).toEqual([
      'Take off the belt guard',
      'Tighten the cover screws',
      'Refit the belt guard',
      'Run the machine and listen',
    ])
  }
})

describe('the shop’s own levels', () => {
  test('[R7] replace those of the rules, and silence them', () => {
    const rules = { ...NO_SHOP_RULES, levels: { 'spec-no-unit': 'consider', 'not-refitted': 'off' } as const }
    const findings = reviewProject(spoilt, { rules })
    expect(findings.filter(({ rule }) => rule === 'not-refitted')).toEqual([])
    expect(findings.find(({ rule }) => rule === 'spec-no-unit')?.level).toBe('consider')
  })
})

describe('output for other programs', () => {
  const findings = reviewProject(spoilt)
  test('[R9] as SARIF 2.1.0 names the tool, its rules, and a result for each finding', () => {
    const { version, runs } = toSarif(findings, spoilt, 'job.tellwright.json')
    const [run] = runs
    expect(version).toBe('2.1.0')
    expect(run?.tool.driver.rules.map(({ id }) => id)).toEqual(RULES.map(({ id }) => id))
    expect(run?.results.map(({ ruleId, level }) => [ruleId, level])).toEqual(
      findings.map(({ rule, level }) => [rule, { stop: 'error', fix: 'warning', consider: 'note' }[level]]),
    )
    expect(run?.results.map(({ ruleId, ruleIndex }) => RULES[ruleIndex]?.id === ruleId)).not.toContain(false)
  })

  test('[R9] as a report spells out mark, step, times and text of the place', () => {
    const { findings: reported, counts } = toReport(spoilt, findings)
    expect(reported.find(({ rule }) => rule === 'spec-no-unit')?.place).toEqual({
      at: 'mark',
      mark: 'spec-3',
      kind: 'spec',
      start: 10,
      end: 15,
      text: 'cover screw torque',
      step: 2,
    })
    expect(counts.stop + counts.fix + counts.consider).toBe(findings.length)
  })
})
