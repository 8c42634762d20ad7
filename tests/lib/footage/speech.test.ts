import fc from 'fast-check'
import { expect, test } from 'vitest'
import { detectorOn } from '@/lib/footage/detector'
import { loadFvad } from '@/lib/footage/engines-node'
import { snapToPause, withWholeWords } from '@/lib/footage/pauses'
import { speechFinder } from '@/lib/footage/speech'
import { voiceStream } from '@/lib/footage/voice-stream'
import type { Span } from '@/lib/procedure/time'
import { WHEEL } from './sentences'
import { makeSpeech, type Talk, withNoise } from './talk'

const fvad = await loadFvad()

/** Share of the speech found, and share of the pauses taken for speech, in per cent. */
const measure = ({ samples, sentences }: Talk) => {
  const finder = speechFinder(detectorOn(fvad, 1))
  finder.push(samples)
  const flags = (spans: readonly Span[]) => {
    const all = new Uint8Array(Math.floor(samples.length / 160))
    for (const { start, end } of spans) all.fill(1, Math.round(start * 100), Math.round(end * 100))
    return all
  }
  const [truth, heard] = [flags(sentences), flags(finder.end())]
  const share = (of: number) => {
    const those = truth.reduce((sum, flag) => sum + Number(flag === of), 0)
    return (100 * truth.reduce((sum, flag, i) => sum + Number(flag === of && heard[i] === 1), 0)) / those
  }
  return { speech: share(1), pauses: share(0) }
}

test.each([
  ['en-us', 165],
  ['en-gb-scotland', 150],
  ['en-us+f3', 190],
])(
  '[F8] 95 of 100 parts of the speech are found and at most 10 of 100 of the pauses, also under a fan or a hum (%s, %i words a minute)',
  async (voice, speed) => {
    const talk = await makeSpeech(WHEEL.slice(0, 20), { voice, speed })
    for (const heard of [talk, withNoise(talk, 'fan', 10), withNoise(talk, 'hum', 10)]) {
      const { speech, pauses } = measure(heard)
      expect(speech).toBeGreaterThan(95)
      expect(pauses).toBeLessThan(10)
    }
  },
)

test('[F8] in silence and in steady noise there is no speech', () => {
  const silence = new Float32Array(16_000 * 5)
  const steady = silence.map((_, i) => 0.05 * Math.sin(i * 0.31) + 0.02 * Math.sin(i * 1.7))
  for (const samples of [silence, steady]) {
    const finder = speechFinder(detectorOn(fvad, 1))
    finder.push(samples)
    expect(finder.end().reduce((sum, { start, end }) => sum + end - start, 0)).toBeLessThan(0.5)
  }
})

test('[F8] pieces of any rate become one stream from time 0, gaps filled', () => {
  let length = 0
  const stream = voiceStream(samples => {
    length += samples.length
  })
  stream.push({ start: -0.1, rate: 48_000, channels: [new Float32Array(48_000), new Float32Array(48_000)] })
  stream.push({ start: 2.9, rate: 48_000, channels: [new Float32Array(4_800), new Float32Array(4_800)] })
  stream.end()
  expect(length / 16_000).toBeCloseTo(3, 2)
})

const speech = [
  { start: 1, end: 3 },
  { start: 3.06, end: 5 },
  { start: 9, end: 20 },
]

test('[F9] an edge in speech lands in the nearest pause, an edge in a pause stays', () => {
  expect([0.5, 1.2, 2.8, 4.9, 7, 9.3, 25].map(at => Number(snapToPause(at, speech).toFixed(6)))).toEqual([
    0.5, 0.95, 3.03, 5.05, 7, 8.95, 25,
  ])
})

test('[F9] with no pause near, the edge stays where it was put', () => {
  expect(snapToPause(14, speech)).toBe(14)
})

test('[F9] a snapped edge never lies inside speech unless no pause was in reach, and never moves further than 1.5 s', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0.01, max: 3, noNaN: true }), { maxLength: 40 }),
      fc.double({ min: 0, max: 100, noNaN: true }),
      (steps, at) => {
        let time = 0
        const spans: Span[] = []
        for (let i = 0; i + 1 < steps.length; i += 2) {
          const start = time + (steps[i] ?? 0)
          time = start + (steps[i + 1] ?? 0)
          spans.push({ start, end: time })
        }
        const to = snapToPause(at, spans)
        expect(Math.abs(to - at)).toBeLessThanOrEqual(1.5)
        if (to !== at) expect(spans.some(({ start, end }) => to > start && to < end)).toBe(false)
      },
    ),
  )
})

test('[F9] a span takes in the words it would cut', () => {
  const words = [
    { start: 1, end: 1.4 },
    { start: 1.5, end: 2 },
    { start: 2.2, end: 2.6 },
  ]
  expect(withWholeWords({ start: 1.2, end: 2.3 }, words)).toEqual({ start: 1, end: 2.6 })
  expect(withWholeWords({ start: 1.5, end: 2.1 }, words)).toEqual({ start: 1.5, end: 2.1 })
})
