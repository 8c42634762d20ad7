import { describe, expect, test } from 'vitest'
import { applyEdit } from '@/lib/procedure/edit'
import type { Quantity } from '@/lib/quantity/quantity'
import { reviewProject } from '@/lib/review/review'
import { sample } from '@/lib/review/sample'

const SPEC = ['spec', 'plug torque', { quantity: { nominal: 9, unit: 'N.m' } }] as const
const remedyOf = (said: string) =>
  reviewProject(sample([['step', 'Torque the plug to 12 N·m', { said }], SPEC])).find(
    ({ rule }) => rule === 'text-contradicts-spec',
  )?.remedy

describe('[R2] what was corrected by hand holds against the talk', () => {
  test('a number nobody spoke goes into the spec, one that was spoken gives way to it', () => {
    expect(remedyOf('Torque it to nine newton metres.')?.label).toBe('Say 12 N·m in the spec')
    expect(remedyOf('Torque it to twelve newton metres.')?.label).toBe('Say 9 N·m in the step')
    expect(remedyOf('')?.label).toBe('Say 9 N·m in the step')
  })

  test('the corrected value keeps the tolerance of the old one, a sole limit stays one', () => {
    const corrected = (quantity: Quantity, text = 'Torque the plug to 12 N·m') => {
      const project = sample([
        ['step', text, { said: 'Torque it to nine newton metres.' }],
        ['spec', 'plug torque', { quantity }],
      ])
      const remedy = reviewProject(project).find(({ rule }) => rule === 'text-contradicts-spec')?.remedy
      const done = (remedy?.edits ?? []).reduce(applyEdit, project)
      return done.marks.find(({ kind }) => kind === 'spec')?.quantity
    }
    expect(corrected({ low: 8, high: 10, unit: 'N.m' })).toEqual({ low: 11, high: 13, unit: 'N.m' })
    expect(corrected({ low: 8.5, high: 10, nominal: 9, unit: 'N.m' })).toEqual({
      low: 11.5,
      high: 13,
      nominal: 12,
      unit: 'N.m',
    })
    expect(corrected({ high: 9, unit: 'N.m' })).toEqual({ high: 12, unit: 'N.m' })
    const inFeet = { low: 6, high: 7, unit: '[ft_i].[lbf_av]' }
    expect(corrected(inFeet)).toEqual(inFeet)
  })

  test('the remedy leaves no contradiction', () => {
    const project = sample([['step', 'Torque the plug to 12 N·m', { said: 'Torque it to nine newton metres.' }], SPEC])
    const remedy = reviewProject(project).find(({ rule }) => rule === 'text-contradicts-spec')?.remedy
    const done = (remedy?.edits ?? []).reduce(applyEdit, project)
    expect(done.marks.find(({ kind }) => kind === 'spec')?.quantity).toEqual({ nominal: 12, unit: 'N.m' })
    expect(reviewProject(done).map(({ rule }) => rule)).not.toContain('text-contradicts-spec')
  })
})

test('[R2] many specs that were only spoken are named in part and counted', () => {
  const specs = Array.from(
    { length: 30 },
    (_, i) => ['spec', `gap ${i}`, { quantity: { nominal: i + 1, unit: 'mm' } }] as const,
  )
  const summary = reviewProject(sample([['step', 'Set the gaps'], ...specs])).find(
    ({ rule, place }) => rule === 'spec-no-basis' && place.at === 'list',
  )
  expect(summary?.message).toMatch(/^30 specs were only spoken: "gap 0",.* "gap 7" and 22 more\./)
})

test('[R2] a step put in by a remedy is not told to stand where the talk has nothing of it', () => {
  const talk = ['Take the belt guard off.', 'Mind the belt, it takes fingers off.', 'Fit the belt.', 'Start the motor.']
  const project = sample(
    [
      ['step', 'Remove the belt guard', { start: 0, end: 5, said: 'Take the belt guard off.' }],
      ['step', 'Fit the belt', { start: 10, end: 15, said: 'Fit the belt.' }],
      ['step', 'Start the motor', { start: 15, end: 20, said: 'Start the motor.' }],
    ],
    { talk },
  )
  const remedy = reviewProject(project).find(({ rule }) => rule === 'not-refitted')?.remedy
  const done = (remedy?.edits ?? []).reduce(applyEdit, project)
  expect(done.marks).toHaveLength(4)
  const rules = reviewProject(done).map(({ rule }) => rule)
  expect(rules).not.toContain('order-unlike-talk')
  expect(rules).not.toContain('caution-late')
})
