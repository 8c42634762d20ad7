import { expect, test } from 'vitest'
import { readSentence } from '@/lib/draft/feature'
import { wordStep } from '@/lib/draft/wording'
import { withAllWorn } from '@/lib/draft/wording-worn'

test.each([
  ['Harness, visor, ear defenders.', 'Put on harness, visor and ear defenders.'],
  ['Goggles, and leather gloves.', 'Put on goggles and leather gloves.'],
  ['Ear muffs, boots with toecaps, gloves.', 'Put on ear muffs, boots and gloves.'],
  ['Glasses on, and gloves.', 'Put on the glasses and gloves.'],
  // Refused, another's, off or only at times.
  ['Goggles that seal, not glasses, gauntlets.', 'Put on goggles that seal and gauntlets.'],
  ['Goggles, gauntlets, no gloves.', 'Put on goggles and gauntlets.'],
  ['Safety boots, and ear plugs for your wife.', 'Put on safety boots.'],
  ["Gloves on, you don't need goggles.", 'Put on the gloves.'],
  ['Put on gloves, forget the goggles.', 'Put on gloves.'],
  ['Gloves on, goggles can stay on the hook.', 'Put on the gloves.'],
  ['Gloves on, goggles stay on too.', 'Put on the gloves and goggles.'],
  ['Rubber gloves, and a mask if you use the powder.', 'Put on rubber gloves.'],
])('[D16] %s: all that is worn is put on', (text, expected) => {
  expect(wordStep(readSentence(text)).text).toBe(expected)
})

test('[D16] nothing is put on that another order is about', () => {
  const reading = readSentence('Gloves on, then lift the visor.')
  expect(withAllWorn('put on the gloves and lift the visor', reading)).toBe('put on the gloves and lift the visor')
  expect(withAllWorn('lift the visor', reading)).toBe('lift the visor')
})
