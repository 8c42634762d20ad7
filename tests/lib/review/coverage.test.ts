import { expect, test } from 'vitest'
import { coverageOf } from '@/lib/review/coverage'
import { sample } from '@/lib/review/sample'

const talk = ['Take the cover off.', 'I had a coffee first, mind you.', 'Now disconnect the fan lead.']

test('[R8] what marks cover of the instructing talk counts, chatter does not', () => {
  const project = sample([['step', 'Take the cover off', { start: 0, end: 5 }]], { talk })
  const { share, left, instructing, covered } = coverageOf(project)
  expect(share).toBeCloseTo(0.5, 1)
  expect(left.map(({ text }) => text)).toEqual(['Now disconnect the fan lead.'])
  expect(covered).toBeLessThan(instructing)
})

test('[R8] with every instruction marked the share is one and nothing is left', () => {
  const project = sample(
    [
      ['step', 'Take the cover off', { start: 0, end: 5 }],
      ['step', 'Disconnect the fan lead', { start: 10, end: 15 }],
    ],
    { talk },
  )
  expect(coverageOf(project)).toMatchObject({ left: [] })
  expect(coverageOf(project).share).toBeGreaterThan(0.95)
})

test('[R8] without talk there is nothing to cover', () => {
  expect(coverageOf(sample([['step', 'Take the cover off']]))).toEqual({
    instructing: 0,
    covered: 0,
    share: 1,
    left: [],
  })
})
