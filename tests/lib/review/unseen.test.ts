import { describe, expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import type { Finding } from '@/lib/review/rule'
import { faultyProject, isAnswer, soundProject, unseenSets } from './unseen'

const keyOf = ({ rule, place }: Finding): string => `${rule} ${JSON.stringify(place)}`

describe.each(unseenSets())('procedures and faults written by hand, %s', (_, procedures) => {
  test('[R13] at least 95 % of the faults are found where a foreman may point', () => {
    const missed = procedures.flatMap(unseen => {
      const sound = soundProject(unseen)
      const before = new Set(reviewProject(sound).map(keyOf))
      return unseen.faults
        .filter(fault => {
          const fresh = reviewProject(faultyProject(sound, fault)).filter(finding => !before.has(keyOf(finding)))
          return !fresh.some(finding => isAnswer(finding, fault))
        })
        .map(({ rule, what }) => `${unseen.name}: ${rule}: ${what}`)
    })
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
