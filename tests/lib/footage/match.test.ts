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
  expect([...matchPhones(sequence(a, b, c), sequence(a, b, c))]).toEqual(run(0, 90))
})

test('[F11] a sentence that was not said is left out whole', () => {
  expect([...matchPhones(sequence(a, d, b), sequence(a, b))]).toEqual([...run(0, 30), ...NONE, ...run(30, 30)])
})

test('[F11] speech that is not written is left out whole, at the start and at the end too', () => {
  expect([...matchPhones(sequence(b), sequence(a, b, d))]).toEqual(run(30, 30))
  expect([...matchPhones(sequence(a, b), sequence(a, d, b))]).toEqual([...run(0, 30), ...run(60, 30)])
})

test('[F11] one said in place of another: both are left out', () => {
  expect([...matchPhones(sequence(a, c, b), sequence(a, d, b))]).toEqual([...run(0, 30), ...NONE, ...run(60, 30)])
})

test('[F11] matches never go back, whatever is matched with whatever', () => {
  const phones = fc.array(fc.array(fc.nat(38), { maxLength: 12 }), { maxLength: 6 })
  fc.assert(
    fc.property(phones, phones, (written, heard) => {
      const matches = [...matchPhones(sequence(...written), sequence(...heard))].filter(match => match >= 0)
      expect(matches).toEqual([...new Set(matches)].sort((x, y) => x - y))
    }),
  )
})
