import { describe, expect, test } from 'vitest'
import { readSentence } from '@/lib/draft/feature'
import { scaleOf } from '@/lib/draft/meant-unit'
import { toMeasurand } from '@/lib/draft/measurand'
import { findLimits } from '@/lib/draft/spec-feature'

const limitsOf = (...talk: readonly string[]) => {
  const sentences = talk.map((text, i) => ({ text, start: i * 4, end: i * 4 + 4, words: [] }))
  return findLimits(
    sentences as never,
    sentences.map(({ text }) => readSentence(text)),
  ).map(({ quantity, limit }) => ({ ...quantity, said: limit.text }))
}
const last = (...talk: readonly string[]) => {
  const { said: _, ...quantity } = limitsOf(...talk).at(-1) ?? { said: '' }
  return quantity
}

describe('a bare number takes its unit', () => {
  test('[D11] from what is measured, though another unit was said last', () => {
    expect(last('The rail is nine metres from the wall.', 'Battery voltage wants to be 12.6.')).toEqual({
      nominal: 12.6,
      unit: 'V',
    })
  })

  test('[D11] from what was said before of the same, and by the talk’s habit where nothing was', () => {
    const metric = 'The colour of the tyre is grey, two metres out.'
    expect(last('Flange bolts get 20 newton metres.', 'Cap bolts 35.').unit).toBe('N.m')
    expect(last(metric, 'Oven at two hundred and ten.')).toEqual({ nominal: 210, unit: 'Cel' })
    expect(last('Four gallons and two quarts, five inches deep.', 'Set the oven to 350.')).toEqual({
      nominal: 350,
      unit: '[degF]',
    })
  })

  test('[D11] part of a turn where something is turned', () => {
    expect(last('Screw it in until it touches, then an eighth.')).toEqual({ nominal: 0.125, unit: 'circ' })
  })

  test('[D11] the nearest word that names a measure tells', () => {
    expect(toMeasurand('the gap is 4 and the voltage 12', 11, 12)).toBe('length')
    expect(toMeasurand('the gap is 4 and the voltage 12', 29, 31)).toBe('voltage')
    expect(toMeasurand('that one is 4', 12, 13)).toBeUndefined()
  })
})

describe('a limit at a distance', () => {
  test.for([
    ['Five turns to begin with, no more.', { high: 5, unit: 'circ' }],
    ['Three hours, and that is the most.', { high: 3, unit: 'h' }],
    ['Six full turns by hand, at least, before the lever.', { low: 6, unit: 'circ' }],
    ['The handbook allows two millimetres of play.', { high: 2, unit: 'mm' }],
    ['A creep of more than 4 millimetres is a failure.', { high: 4, unit: 'mm' }],
    ['Anything under three millimetres rubs.', { low: 3, unit: 'mm' }],
    ['Half a millimetre of slack is my limit.', { high: 0.5, unit: 'mm' }],
  ] as const)('[D11] %s', ([text, quantity]) => {
    expect(last(text)).toEqual(quantity)
  })

  // Tread of a car tyre: not below 1.6 mm (Council Directive 89/459/EEC; from memory).
  test('[D11] the limit of what wears down is its least value', () => {
    expect(last('New tread is 8 millimetres and the limit is 1.6.')).toEqual({ low: 1.6, unit: 'mm' })
    expect(last('Brushes are 20 millimetres new.', 'I renew them at 10.')).toEqual({ low: 10, unit: 'mm' })
  })

  // Play grows with wear. Common practice, no source.
  test('[D11] the limit of what grows is its greatest', () => {
    expect(last('Side play, the limit is 0.4 millimetres.')).toEqual({ high: 0.4, unit: 'mm' })
  })

  test('[D11] a tolerance is laid about the target said before', () => {
    expect(last('The target is 180 bar.', 'It should stay within 5 either side of that.')).toEqual({
      low: 175,
      high: 185,
      nominal: 180,
      unit: 'bar',
    })
  })

  test('[D11] a wait is no fault turned round', () => {
    expect(last('Do not touch it until it is under 2 volts, replace the lid after.')).toEqual({ high: 2, unit: 'V' })
  })
})

test('[D11] the scale of temperature by its name, else by the talk’s spellings', () => {
  expect(scaleOf('ninety degrees celsius, three inches of foam', undefined)).toBe('Cel')
  expect(scaleOf('the colour of the grey tyre', undefined)).toBe('Cel')
  expect(scaleOf('two quarts and a gallon', undefined)).toBe('[degF]')
  expect(scaleOf('two quarts and a gallon', 'metric')).toBe('Cel')
  expect(scaleOf('nothing that tells', undefined)).toBeUndefined()
})
