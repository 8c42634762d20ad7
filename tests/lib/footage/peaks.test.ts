import fc from 'fast-check'
import { expect, test } from 'vitest'
import { addPeaks, coarser, silentPeaks } from '@/lib/footage/peaks'

const piece = (start: number, rate: number, ...samples: number[]) => ({
  start,
  rate,
  channels: [Float32Array.from(samples)],
})

test('[F5] a bucket holds its loudest sample, of either sign and any channel', () => {
  const peaks = silentPeaks(0.02)
  addPeaks(peaks, {
    start: 0,
    rate: 400,
    channels: [Float32Array.of(0.1, -0.5, 0, 0, 0.25, 0), Float32Array.of(0, 0, 0, 0.75, 0, 0)],
  })
  expect([...peaks]).toEqual([0.75, 0.25])
})

test('[F5] samples before 0 and past the end are left out', () => {
  const peaks = silentPeaks(0.02)
  addPeaks(peaks, piece(-0.01, 100, 0.9, 0.5, 0.25, 1))
  expect([...peaks]).toEqual([0.5, 0.25])
})

test('[F5] however the sound is cut into pieces, the peaks are the same', () => {
  fc.assert(
    fc.property(
      fc.array(fc.float({ min: -1, max: 1, noNaN: true }), { minLength: 1, maxLength: 400 }),
      fc.array(fc.nat(400), { maxLength: 6 }),
      fc.constantFrom(1000, 1102.5, 8000),
      (samples, cuts, rate) => {
        const whole = silentPeaks(samples.length / rate)
        addPeaks(whole, piece(0, rate, ...samples))
        const pieces = silentPeaks(samples.length / rate)
        const edges = [0, ...cuts.map(cut => cut % samples.length), samples.length].sort((a, b) => a - b)
        edges.forEach((from, i) => {
          addPeaks(pieces, piece(from / rate, rate, ...samples.slice(from, edges[i + 1] ?? from)))
        })
        expect([...pieces]).toEqual([...whole])
      },
    ),
  )
})

test('[F5] coarser peaks keep the loudest of each group', () => {
  expect([...coarser(Float32Array.of(0.5, 1, 0.25, 0, 0.75, 0.125), 3)]).toEqual([1, 0.25, 0.75])
  const same = Float32Array.of(1, 2)
  expect(coarser(same, 5)).toBe(same)
})
