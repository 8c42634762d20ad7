import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type FrameMeasure, measureFrame, type Plane, pickStills } from '@/lib/footage/still-measure'

const plane = (paint: (x: number, y: number) => number, size = 64): Plane => ({
  width: size,
  height: size,
  values: Float32Array.from({ length: size * size }, (_, i) => paint(i % size, Math.floor(i / size))),
})

const board = (cell: number) => plane((x, y) => ((Math.floor(x / cell) + Math.floor(y / cell)) % 2 === 0 ? 60 : 190))
const soft = plane((x, y) => 125 + 65 * Math.sin(x / 5) * Math.sin(y / 5))

test('[F30] crisp edges measure sharper than soft ones', () => {
  expect(measureFrame(0, board(5)).sharpness).toBeGreaterThan(10 * measureFrame(0, soft).sharpness)
})

test('[F30] burnt, crushed and grey frames measure as badly exposed', () => {
  const good = measureFrame(0, board(8)).exposure
  for (const bad of [plane(() => 250), plane(() => 4), plane(() => 128)])
    expect(measureFrame(0, bad).exposure).toBeLessThan(0.1 * good)
})

test('[F30] motion is the change against the frame before', () => {
  const moved = plane((x, y) => ((Math.floor((x + 3) / 5) + Math.floor(y / 5)) % 2 === 0 ? 60 : 190))
  expect(measureFrame(0, board(5), board(5)).motion).toBe(0)
  expect(measureFrame(0, moved, board(5)).motion).toBeGreaterThan(50)
})

const frame = (time: number, sharpness: number, exposure = 1, motion = 0): FrameMeasure => ({
  time,
  sharpness,
  exposure,
  motion,
})

test('[F30] the best frames are picked, apart from each other', () => {
  const frames = [frame(0, 100), frame(0.5, 99), frame(1, 98), frame(6, 50), frame(9, 70), frame(9.5, 100, 1, 200)]
  expect(pickStills(frames, 3, 10).map(({ time }) => time)).toEqual([0, 9, 6])
})

test('[F30] as many as asked for are picked, each once, or all there are', () => {
  const frames = fc.array(
    fc.record({
      time: fc.nat(50),
      sharpness: fc.nat(100),
      exposure: fc.double({ min: 0, max: 1, noNaN: true }),
      motion: fc.nat(30),
    }),
    { maxLength: 30 },
  )
  fc.assert(
    fc.property(frames, fc.integer({ min: 1, max: 5 }), (frames, count) => {
      const picked = pickStills(frames, count, 10)
      expect(picked.length).toBe(Math.min(count, frames.length))
      expect(new Set(picked).size).toBe(picked.length)
    }),
  )
})
