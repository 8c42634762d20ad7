import fc from 'fast-check'
import { expect, test } from 'vitest'
import { arrowLines, insidePicture } from '@/lib/footage/draw'

const share = fc.double({ min: -3, max: 3, noNaN: true })

test('[F33] whatever a hand does, a shape stays inside the picture and large enough to grip', () => {
  fc.assert(
    fc.property(fc.constantFrom('ring', 'arrow', 'crop'), share, share, share, share, (is, x, y, w, h) => {
      const shape = insidePicture({ is, x, y, w, h })
      for (const [at, size] of [
        [shape.x, shape.w],
        [shape.y, shape.h],
      ] as const) {
        expect(Math.min(at, at + size)).toBeGreaterThanOrEqual(-1e-9)
        expect(Math.max(at, at + size)).toBeLessThanOrEqual(1 + 1e-9)
        if (is !== 'arrow') expect(size).toBeGreaterThanOrEqual(0.02)
      }
    }),
  )
})

test('[F33] the barbs of an arrow lie behind its head, one on each side', () => {
  const [tail, head, left, again, right] = arrowLines(0, 0, 10, 0, 2)
  expect([tail, head, again]).toEqual([
    [0, 0],
    [10, 0],
    [10, 0],
  ])
  expect(left?.[0]).toBeCloseTo(10 - 2 * Math.cos(Math.PI / 6))
  expect((left?.[1] ?? 0) + (right?.[1] ?? 0)).toBeCloseTo(0)
  expect(left?.[1]).not.toBeCloseTo(0)
})
