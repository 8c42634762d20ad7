import fc from 'fast-check'
import { expect, test } from 'vitest'
import { formatMoment } from '@/components/footage/clock'
import { markAt, placeMarks, ROW_HEIGHT, toPixels, toSeconds, type View } from '@/components/footage/lanes'
import type { StripMark } from '@/components/footage/types'

const view: View = { start: 10, end: 20, width: 1000 }
const mark = (id: string, kind: StripMark['kind'], start: number, end: number): StripMark => ({
  id,
  kind,
  label: id,
  start,
  end,
})

test('[F6] marks that overlap lie in rows of their own, steps on top', () => {
  const placed = placeMarks([mark('q', 'spec', 11, 12), mark('s', 'step', 10, 15), mark('t', 'tool', 11.5, 13)], view)
  expect(placed.map(({ mark, row, left, right }) => [mark.id, row, left, right])).toEqual([
    ['s', 0, 0, 500],
    ['q', 1, 100, 200],
    ['t', 2, 150, 300],
  ])
})

test('[F6] marks outside the view are left out', () => {
  expect(placeMarks([mark('a', 'step', 0, 10), mark('b', 'step', 20, 21)], view)).toEqual([])
})

test('[F6] a click finds the mark of its row, and the shortest where rows are taken twice', () => {
  const placed = placeMarks([mark('s', 'step', 10, 15), mark('q', 'spec', 11, 12)], view)
  expect(markAt(placed, 150, 2)?.id).toBe('s')
  expect(markAt(placed, 150, ROW_HEIGHT + 2)?.id).toBe('q')
  expect(markAt(placed, 400, ROW_HEIGHT + 2)?.id).toBe('s')
  expect(markAt(placed, 800, 2)).toBeUndefined()
})

test('[F6] pixels and seconds turn into each other', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1e5, noNaN: true }),
      fc.double({ min: 0.1, max: 1e4, noNaN: true }),
      fc.nat(5000),
      (start, length, x) => {
        const view = { start, end: start + length, width: 800 }
        expect(toPixels(view, toSeconds(view, x))).toBeCloseTo(x, 3)
      },
    ),
  )
})

test('[F6] a moment is shown to the tenth and never before it is reached', () => {
  expect([0, 59.99, 65.44, 3723.5].map(formatMoment)).toEqual(['0:00.0', '0:59.9', '1:05.4', '1:02:03.5'])
})
