import { expect, test } from 'vitest'
import { sayingThat, shorten } from '@/lib/procedure/shorten'

test.each([
  ['wipe the seat and look at it', 80, '"wipe the seat and look at it".'],
  ['Wipe the seat.', 80, '"Wipe the seat."'],
  ['Is it dry?', 80, '"Is it dry?"'],
  ['wipe the seat with a clean rag', 16, '"wipe the seat…"'],
])('"%s" ends a sentence with one stop', (text, most, said) => {
  expect(sayingThat(text, most)).toBe(said)
})

test('whole words are kept', () => {
  expect(shorten('wipe the seat, then look', 15)).toBe('wipe the seat…')
})
