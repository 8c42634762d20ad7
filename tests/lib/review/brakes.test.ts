import { expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import { type SampleMark, sample } from '@/lib/review/sample'

const found = (marks: readonly SampleMark[], title = 'Sample job') =>
  reviewProject(sample(marks, { heading: { title, equipment: 'floor scrubber' } })).filter(
    ({ rule }) => rule === 'brakes-not-tested',
  )

const PADS: readonly SampleMark[] = [
  ['step', 'Take the two bolts out'],
  ['step', 'Slide the old pads out'],
  ['step', 'Slide the new pads in'],
  ['step', 'Plug the battery back in'],
]

test('[R2] a brake that only the marks name is tried too, whatever the sheet is called', () => {
  expect(found([...PADS, ['material', 'brake pads']]).map(({ level, place }) => [level, place])).toEqual([
    ['stop', { at: 'mark', mark: 'step-3' }],
  ])
  expect(found([['step', 'Take the two bolts on the caliper out'], ...PADS])).toHaveLength(1)
  expect(found([['caution', 'Brake dust harms: keep the brake pads wet'], ...PADS])).toHaveLength(1)
  expect(found(PADS, 'brake')).toHaveLength(1)
})

test('[R3] pads of something else, a caliper that measures and a brake put on are no work on a brake', () => {
  expect(found(PADS)).toEqual([])
  expect(found([['step', 'Measure the bolt with the caliper'], ...PADS, ['tool', 'caliper']])).toEqual([])
  expect(found([['step', 'Set the parking brake'], ...PADS, ['tool', 'vernier caliper']])).toEqual([])
})

test('[R3] a brake that is tried is left in peace', () => {
  const tried: SampleMark = ['check', 'Brake holds the machine when it is pushed']
  expect(found([...PADS, ['material', 'brake pads'], tried])).toEqual([])
})
