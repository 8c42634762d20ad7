import fc from 'fast-check'
import { expect, test } from 'vitest'
import { resample, resampler, toMono } from '@/lib/footage/resample'

const sine = (hertz: number, rate: number, seconds: number) =>
  Float32Array.from({ length: Math.round(rate * seconds) }, (_, i) => 0.5 * Math.sin((2 * Math.PI * hertz * i) / rate))

const loudness = (samples: Float32Array) =>
  Math.sqrt(samples.reduce((sum, sample) => sum + sample * sample, 0) / samples.length)

test.each([48_000, 44_100, 22_050, 8_000, 16_000])(
  '[F7] a tone of 440 Hz at %d Hz is the same tone at 16 kHz',
  rate => {
    const [made, true_] = [resample(sine(440, rate, 0.5), rate, 16_000), sine(440, 16_000, 0.5)]
    expect(made.length).toBe(true_.length)
    const inner = made.subarray(400, -400).map((sample, i) => sample - (true_[i + 400] ?? 0))
    expect(loudness(inner)).toBeLessThan(0.5 * 10 ** (-40 / 20))
  },
)

test('[F7] what 16 kHz cannot hold is taken out, not folded back', () => {
  const made = resample(sine(11_000, 48_000, 0.5), 48_000, 16_000)
  expect(loudness(made.subarray(400, -400))).toBeLessThan(0.5 * 10 ** (-50 / 20))
})

test('[F7] cut into pieces or not, the stream is the same', () => {
  const samples = sine(700, 44_100, 0.1)
  fc.assert(
    fc.property(fc.array(fc.nat(samples.length), { maxLength: 8 }), cuts => {
      const { push, end } = resampler(44_100, 16_000)
      const edges = [0, ...cuts, samples.length].sort((a, b) => a - b)
      const parts = edges.map((from, i) => push(samples.subarray(from, edges[i + 1] ?? from)))
      const all = [...parts, end()].flatMap(part => [...part])
      const whole = resampler(44_100, 16_000)
      expect(all).toEqual([...whole.push(samples), ...whole.end()])
    }),
  )
})

test('[F7] mono is the mean of the channels', () => {
  expect([...toMono({ rate: 1, channels: [Float32Array.of(1, 0.5), Float32Array.of(0, -0.5)] })]).toEqual([0.5, 0])
})
