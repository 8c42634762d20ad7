import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ACTIONS, IRREGULAR } from '@/lib/trade/actions'
import { guessBase, singular, verbOf } from '@/lib/trade/morphology'
import { toTokens } from '@/lib/trade/tagger'

const tagsOf = (text: string) => toTokens(text).map(({ word, tag }) => `${word}/${tag}`)

test('[E1] every word is tagged in order within the text, whatever the text', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200 }), text => {
      const tokens = toTokens(text)
      let last = 0
      for (const token of tokens) {
        expect(token.at).toBeGreaterThanOrEqual(last)
        expect(token.to).toBeGreaterThan(token.at)
        expect(token.to).toBeLessThanOrEqual(text.length)
        last = token.at
      }
    }),
  )
})

test('[E1] contractions open into halves that share their place', () => {
  expect(toTokens("you're gonna turn it").map(({ word, at }) => [word, at])).toEqual([
    ['you', 0],
    ["'re", 0],
    ['going', 7],
    ['to', 7],
    ['turn', 13],
    ['it', 18],
  ])
})

test('[E2] an order is told from a thing by its neighbours', () => {
  expect(tagsOf('Drain the oil')[0]).toBe('drain/verb')
  expect(tagsOf('Open the drain')[2]).toBe('drain/part')
  expect(tagsOf('Drain pan underneath')[0]).toBe('drain/part')
  expect(tagsOf('Torque wrench set to ten')[0]).toBe('torque/noun')
  expect(tagsOf('and then torque it')[2]).toBe('torque/verb')
})

test('[E2] an unknown word that opens a clause and takes an object is an order', () => {
  expect(tagsOf('Degauss the coil')[0]).toBe('degauss/verb')
})

test('[E3] irregular forms and regular ones lead back to the base form', () => {
  for (const [base, past, participle] of IRREGULAR) {
    expect(verbOf(base)?.base).toBeDefined()
    expect(verbOf(past)).toBeDefined()
    expect(verbOf(participle)).toBeDefined()
  }
  for (const verb of Object.values(ACTIONS).flat()) expect(verbOf(verb)).toEqual({ base: verb, form: 'base' })
  expect(verbOf('unscrewing')?.base).toBe('unscrew')
  expect(verbOf('wiped')?.base).toBe('wipe')
  expect(verbOf('torqued')?.base).toBe('torque')
  expect(verbOf('slipped')?.base).toBe('slip')
  expect(guessBase('degaussing')).toBe('degauss')
  expect(singular('washers')).toBe('washer')
  expect(singular('pliers')).toBe('pliers')
})
