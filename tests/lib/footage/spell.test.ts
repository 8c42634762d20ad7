import fc from 'fast-check'
import { expect, test } from 'vitest'
import { guessPronunciation } from '@/lib/footage/pronounce'
import { PHONES } from '@/lib/footage/recogniser'
import { sayWord, spellNumber } from '@/lib/footage/spell'

test.each([
  ['35Nm,', 'thirty five newton metres'],
  ['1.25', 'one point two five'],
  ['10,000', 'ten thousand'],
  ['M8', 'm eight'],
  ['90°', 'ninety degrees'],
  ['5%', 'five percent'],
  ['don’t', "don't"],
  ['half-inch', 'half inch'],
  ['½', 'half'],
  ['—', ''],
  ['café.', 'cafe'],
  ['1967', 'one thousand nine hundred and sixty seven'],
])('[F10] %s is said as "%s"', (written, said) => {
  expect(sayWord(written).join(' ')).toBe(said)
})

test('[F10] every number is spelled in words the dictionary knows', () => {
  fc.assert(
    fc.property(fc.nat(), n => {
      expect(spellNumber(n).length).toBeGreaterThan(0)
      for (const word of spellNumber(n)) expect(word).toMatch(/^[a-z]+$/)
    }),
  )
})

test('[F10] any word gets a pronunciation in the phones of the model', () => {
  fc.assert(
    fc.property(fc.string(), word => {
      const phones = guessPronunciation(word.toLowerCase()).split(' ')
      expect(phones.length).toBeGreaterThan(0)
      for (const phone of phones) expect(PHONES).toContain(phone)
    }),
  )
})
