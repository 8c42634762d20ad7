import { describe, expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import type { Finding } from '@/lib/review/rule'
import { faultyProject, isAnswer, soundProject, type Unseen, unseenSets } from './unseen'

const keyOf = ({ rule, place }: Finding): string => `${rule} ${JSON.stringify(place)}`

/** Found of one set, and what was missed. */
const tried = (procedures: readonly Unseen[]) =>
  procedures.flatMap(unseen => {
    const sound = soundProject(unseen)
    const before = new Set(reviewProject(sound).map(keyOf))
    return unseen.faults.map(fault => {
      const fresh = reviewProject(faultyProject(sound, fault)).filter(finding => !before.has(keyOf(finding)))
      return {
        isFound: fresh.some(finding => isAnswer(finding, fault)),
        what: `${unseen.name}: ${fault.rule}: ${fault.what}`,
      }
    })
  })

describe.each(unseenSets('unseen'))('procedures and faults written by hand, %s', (_, procedures) => {
  test('[R13] at least 95 % of the faults are found where a foreman may point', () => {
    const missed = tried(procedures)
      .filter(({ isFound }) => !isFound)
      .map(({ what }) => what)
    const all = procedures.flatMap(({ faults }) => faults).length
    expect(missed.length, missed.join('\n')).toBeLessThanOrEqual(0.05 * all)
  })

  test('[R13] the sound ones have at most one finding in 40 steps, none of them a stop', () => {
    const findings = procedures.flatMap(unseen => reviewProject(soundProject(unseen)))
    const steps = procedures.flatMap(({ marks }) => marks).filter(({ kind }) => kind === 'step').length
    expect(findings.length).toBeLessThanOrEqual(steps / 40)
    expect(findings.filter(({ level }) => level === 'stop')).toEqual([])
  })
})

describe.each([
  ['taught', 'procedures whose kinds of fault were learned', 0.25, 25],
  ['fresh', 'procedures whose misses were looked at', 0.23, 18],
  ['first', 'procedures whose misses and wrong findings were looked at later', 0.35, 25],
  ['next', 'procedures of one more hand, looked at later too', 0.3, 21],
  ['later', 'procedures looked at last', 0.35, 20],
  ['since', 'procedures of one more hand, looked at last too', 0.45, 40],
  ['last', 'procedures from which nothing was learned', 0.3, 10],
] as const)('%s: %s', (sort, _, most, stepsEach) => {
  describe.each(unseenSets(sort))('%s', (__, procedures) => {
    test(`[R14] of the faults ${most} at most are not found where a foreman may point`, () => {
      const faults = tried(procedures)
      const missed = faults.filter(({ isFound }) => !isFound).map(({ what }) => what)
      expect(missed.length, missed.join('\n')).toBeLessThanOrEqual(most * faults.length)
    })

    test(`[R14] one finding in ${stepsEach} steps of the sound ones is wrong at most`, () => {
      const findings = procedures.flatMap(unseen => reviewProject(soundProject(unseen)))
      const steps = procedures.flatMap(({ marks }) => marks).filter(({ kind }) => kind === 'step').length
      expect(findings.length).toBeLessThanOrEqual(steps / stepsEach)
    })
  })
})
