import { describe, expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import type { Finding } from '@/lib/review/rule'
import { RULES } from '@/lib/review/rules/index'
import { faultsOf } from './faults'
import { SOUND } from './sound/all'

const keyOf = ({ rule, place }: Finding): string => `${rule} ${JSON.stringify(place)}`

/** Rules that no fault here can trip: they need a shop's rules, or stand in samples of their own. */
const ELSEWHERE = new Set(['shop-phrase', 'shop-hazard', 'shop-name', 'told-late', 'several-names', 'driver-not-named'])

describe('faults put into sound procedures one at a time', () => {
  const runs = SOUND.flatMap(sound => {
    const before = new Set(reviewProject(sound.project).map(keyOf))
    return faultsOf(sound).map(fault => {
      const fresh = reviewProject(fault.project).filter(finding => !before.has(keyOf(finding)))
      const isFound = fresh.some(({ rule, place }) => fault.rules.includes(rule) && fault.isPlace(place, fault.project))
      return { fault, isFound, name: sound.name }
    })
  })

  test('[R2] there are at least a thousand, in at least six trades', () => {
    expect(runs.length).toBeGreaterThanOrEqual(1000)
    expect(SOUND.length).toBeGreaterThanOrEqual(6)
  })

  test('[R2] at least 95 % are found at the right place', () => {
    const share = runs.filter(({ isFound }) => isFound).length / runs.length
    expect(share).toBeGreaterThanOrEqual(0.95)
  })

  test('[R2] at least 60 % of every single kind are found', () => {
    const kinds = [...new Set(runs.map(({ fault }) => fault.kind))]
    const low = kinds.filter(kind => {
      const own = runs.filter(({ fault }) => fault.kind === kind)
      return own.length > 2 && own.filter(({ isFound }) => isFound).length < 0.6 * own.length
    })
    expect(low).toEqual([])
  })

  test('[R2] faults of every rule are among them', () => {
    const seeded = new Set(runs.flatMap(({ fault }) => fault.rules))
    expect(RULES.map(({ id }) => id).filter(id => !seeded.has(id) && !ELSEWHERE.has(id))).toEqual([])
  })

  test('[R3] sound procedures have at most one false finding in 40 steps', () => {
    const steps = SOUND.reduce(
      (sum, { project }) => sum + project.marks.filter(({ kind }) => kind === 'step').length,
      0,
    )
    const findings = SOUND.flatMap(({ project }) => reviewProject(project))
    expect(findings.length).toBeLessThanOrEqual(steps / 40)
  })
})
