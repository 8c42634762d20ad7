import { describe, expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import { goldCases, goldProject, scoreCase } from './gold'

const folder = `${process.env.TELLWRIGHT_CASES ?? '../shared/cases'}/out`
const cases = goldCases(folder)

describe.skipIf(cases.length === 0)(
  'what the development cases list for a reviewer (skipped where they are not at hand)',
  () => {
    const scores = cases.map(([, gold]) => {
      const project = goldProject(gold)
      return scoreCase(gold, reviewProject(project), project)
    })
    const listed = scores.reduce((sum, score) => sum + score.listed, 0)

    test('[R4] at least 80 % of it is found', () => {
      const missed = scores.reduce((sum, score) => sum + score.missed.length, 0)
      expect((listed - missed) / listed).toBeGreaterThanOrEqual(0.8)
    })

    test('[R4] with at most one further stop or fix finding for each two listed', () => {
      const further = scores.reduce((sum, score) => sum + score.further.length, 0)
      expect(further).toBeLessThanOrEqual(listed / 2)
    })
  },
)
