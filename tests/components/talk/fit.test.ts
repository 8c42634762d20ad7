import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fitLanes } from '@/components/talk/fit'

test('two brackets on one line stand side by side, one below the other shares the lane', () => {
  expect(
    fitLanes([
      { top: 1, height: 20 },
      { top: 1, height: 20 },
      { top: 29, height: 20 },
    ]),
  ).toEqual([0, 1, 0])
})

test('brackets that meet end to end are told apart', () => {
  expect(
    fitLanes([
      { top: 1, height: 40 },
      { top: 41, height: 20 },
    ]),
  ).toEqual([0, 1])
})

test('a bracket that goes on over paragraphs keeps its lane, the others go around it', () => {
  expect(
    fitLanes([
      { top: 1, height: 20 },
      { top: 0, height: 80, held: 1 },
      { top: 1, height: 20 },
    ]),
  ).toEqual([0, 1, 2])
})

test('none lies over another, however many there are', () => {
  const box = fc.record(
    { top: fc.integer({ min: 0, max: 200 }), height: fc.integer({ min: 18, max: 90 }), held: fc.nat({ max: 5 }) },
    { requiredKeys: ['top', 'height'] },
  )
  fc.assert(
    fc.property(fc.array(box, { maxLength: 30 }), boxes => {
      const lanes = fitLanes(boxes)
      for (const [i, a] of boxes.entries())
        for (const [j, b] of boxes.entries())
          if (i < j && lanes[i] === lanes[j])
            expect(a.top + a.height <= b.top || b.top + b.height <= a.top, `${i} over ${j}`).toBe(true)
    }),
  )
})
