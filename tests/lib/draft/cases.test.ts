import { existsSync } from 'node:fs'
import { expect, test } from 'vitest'
import { draftMarks } from '@/lib/draft/draft'
import { readCases } from '../../../scripts/fit-draft/cases'
import { countHits, f1Of } from './score'

const folder = process.env.TELLWRIGHT_CASES ?? '../shared/cases/out'
const isThere = existsSync(folder)
if (!isThere) console.info(`development cases not found at ${folder}: the scored test of the draft is skipped`)

/** F1 below which the draft is broken: somewhat under what the last fit reached; raw captions may be 0.08 lower. */
const FLOORS = {
  step: 0.88,
  caution: 0.88,
  spec: 0.88,
  tool: 0.86,
  material: 0.78,
  check: 0.85,
  reason: 0.85,
  symptom: 0.85,
} as const

test.skipIf(!isThere).each([
  ['vtt', 0],
  ['raw.srt', 0.08],
] as const)('[D11] each kind reaches its floor on the development cases, as %s', (form, less) => {
  const drafted = readCases(folder, [form]).map(({ gold, transcript }) => ({ gold, marks: draftMarks(transcript) }))
  for (const [kind, floor] of Object.entries(FLOORS)) {
    const f1 = f1Of(drafted.map(({ gold, marks }) => countHits(marks, gold, kind)))
    expect(f1, `${kind} in ${form}`).toBeGreaterThanOrEqual(floor - less)
  }
})
