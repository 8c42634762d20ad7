import fc from 'fast-check'
import { expect, test } from 'vitest'
import { matchPhones } from '@/lib/footage/match'
import { random } from './talk'

const sequence = (...parts: (readonly number[])[]) => {
  const begins = [0]
  for (const part of parts) begins.push((begins.at(-1) ?? 0) + part.length)
  return { phones: Uint8Array.from(parts.flat()), begins }
}

const sentence = (seed: number, length = 30): readonly number[] => {
  const next = random(seed)
  return Array.from({ length }, () => Math.floor(next() * 39))
}

const [a, b, c, d] = [sentence(1), sentence(2), sentence(3), sentence(4)]
const run = (from: number, length: number) => Array.from({ length }, (_, i) => from + i)
const NONE = Array.from({ length: 30 }, () => -1)

test('[F11] a text that was said as written is matched phone by phone', () => {
  expect([...matchPhones(sequence(a, b, c), sequence(a, b, c)).matches]).toEqual(run(0, 90))
})

test('[F11] a sentence that was not said is left out whole', () => {
  expect([...matchPhones(sequence(a, d, b), sequence(a, b)).matches]).toEqual([...run(0, 30), ...NONE, ...run(30, 30)])
})

test('[F11] speech that is not written is left out whole, at the start and at the end too', () => {
  expect([...matchPhones(sequence(b), sequence(a, b, d)).matches]).toEqual(run(30, 30))
  expect([...matchPhones(sequence(a, b), sequence(a, d, b)).matches]).toEqual([...run(0, 30), ...run(60, 30)])
})

test('[F11] one said in place of another: both are left out', () => {
  expect([...matchPhones(sequence(a, c, b), sequence(a, d, b)).matches]).toEqual([
    ...run(0, 30),
    ...NONE,
    ...run(60, 30),
  ])
})

test('[F11] matches never go back, whatever is matched with whatever', () => {
  const phones = fc.array(fc.array(fc.nat(38), { maxLength: 12 }), { maxLength: 6 })
  fc.assert(
    fc.property(phones, phones, (written, heard) => {
      const matches = [...matchPhones(sequence(...written), sequence(...heard)).matches].filter(match => match >= 0)
      expect(matches).toEqual([...new Set(matches)].sort((x, y) => x - y))
    }),
  )
})

test('[F11] speech that is not written is known as such; one place at a time', () => {
  const { asides } = matchPhones(sequence(a, b), sequence(a, d, b))
  expect([...asides]).toEqual(run(0, 90).map(i => (i >= 30 && i < 60 ? 1 : 0)))
})

test('[F11] a sentence that fits its place badly counts as not said, and the speech there as not written', () => {
  const talk = run(1, 24).map(seed => sentence(seed))
  const alike = (talk[12] ?? []).map((phone, i) => (i % 4 === 0 ? phone : (sentence(99)[i] ?? 0)))
  const { matches, asides } = matchPhones(sequence(...talk), sequence(...talk.toSpliced(12, 1, alike)))
  expect([...matches.subarray(360, 390)]).toEqual(NONE)
  expect([...asides.subarray(360, 390)]).toEqual(NONE.map(() => 1))
  expect(matches.filter(match => match < 0).length).toBe(30)
})

test('[F16] where bounds are given nothing is matched outside of them', () => {
  const talk = run(1, 12).map(seed => sentence(seed))
  const bounds = talk.map((_, k) => ({ from: Math.max(0, 30 * k - 20), to: Math.min(360, 30 * k + 50) }))
  expect([...matchPhones(sequence(...talk), sequence(...talk), bounds).matches]).toEqual(run(0, 360))
  const turned = matchPhones(sequence(...talk.toReversed()), sequence(...talk), bounds).matches
  for (const [i, match] of turned.entries()) if (match >= 0) expect(Math.abs(match - i)).toBeLessThanOrEqual(50)
})
