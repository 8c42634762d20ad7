import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formatQuantity } from '@/lib/quantity/format'
import { readQuantities } from '@/lib/quantity/read'
import { PHRASES } from './phrases'

const only = (text: string, context?: string) => {
  const readings = readQuantities(text, context === undefined ? {} : { context })
  expect(readings).toHaveLength(1)
  const [reading] = readings
  if (reading === undefined) throw new Error('no reading')
  return reading
}

describe('readings', () => {
  test('[Q2] a reading holds quantity, reference, words, offsets and notes', () => {
    const text = 'Then snug the gland to nine or ten newton metres, cold, and leave it.'
    expect(readQuantities(text)).toEqual([
      {
        quantity: { low: 9, high: 10, unit: 'N.m' },
        reference: 'cold',
        text: 'nine or ten newton metres',
        at: 23,
        to: 48,
        notes: [],
      },
    ])
    expect(text.slice(23, 48)).toBe('nine or ten newton metres')
  })

  test('[Q2] the power of a unit’s sign touches it: in 3 is no in3', () => {
    expect(only('The flap shuts in 3 to 5 seconds.').quantity).toEqual({ low: 3, high: 5, unit: 's' })
    expect(only('Grease it again in 3 months.').quantity).toEqual({ nominal: 3, unit: 'mo' })
    expect(only('Fill it with 12 in³ of oil.').quantity).toEqual({ nominal: 12, unit: '[cin_i]' })
  })

  test('[Q2] a value taken back is no reading, and the one that stands names it', () => {
    const reading = only('gland nuts, 26, no, hang on, 16 newton metres')
    expect(reading.quantity).toEqual({ nominal: 16, unit: 'N.m' })
    expect(reading.notes).toEqual([{ kind: 'withdrawn', text: '“26” was said first and taken back' }])
  })

  test.for([
    ['twenty one new to meters', 'mended', 'new to meters'],
    ['a gap of eighteen thousands', 'mended', 'thousandths'],
    ['tighten the cover to nine pounds', 'settled', 'foot-pounds'],
    ['inflate it to nine pounds', 'settled', 'psi'],
    ['seven mil of clearance', 'settled', 'millimetres'],
    ['nine pounds', 'question', 'of what'],
    ['it wants forty degrees', 'question', 'degrees'],
    ['gap of point oh one nine', 'question', 'no unit was said'],
  ])('[Q2] “%s” says so: %s', ([text = '', kind, part]) => {
    const { notes } = only(text)
    expect(notes.map(note => note.kind)).toContain(kind)
    expect(notes.map(note => note.text).join(' ')).toContain(part)
  })

  test('[Q2] what stays open has no unit', () => {
    expect(only('nine pounds').quantity).toEqual({ nominal: 9 })
    expect(only('it wants forty degrees').quantity).toEqual({ nominal: 40 })
  })

  test('[Q2] what was said before settles units, and the note says so', () => {
    expect(only('43 plus or minus 4 on the upper ones', 'The lower nuts get 60 foot-pounds.').quantity).toEqual({
      low: 39,
      high: 47,
      nominal: 43,
      unit: '[ft_i].[lbf_av]',
    })
    expect(only('keep the oven under 200 degrees', 'The tray is 400 millimetres wide.').quantity.unit).toBe('Cel')
    expect(only('keep the oven under 200 degrees', 'The tray is 16 inches wide.').quantity.unit).toBe('[degF]')
    expect(only('plus or minus ten percent is fine', 'This one is marked 50 ohms.').quantity).toEqual({
      low: 45,
      high: 55,
      nominal: 50,
      unit: 'Ohm',
    })
  })

  test('[Q1] passes of a sequence are numbered, a stated equivalent points at its original', () => {
    expect(
      readQuantities('to 12 newton metres, then 25, then 38').map(({ quantity, part }) => [quantity.nominal, part]),
    ).toEqual([
      [12, 0],
      [25, 1],
      [38, 2],
    ])
    expect(readQuantities('17 foot-pounds, that is 23 newton metres').map(({ equivalentOf }) => equivalentOf)).toEqual([
      undefined,
      0,
    ])
  })

  test.for([
    ['half a turn past contact', 'past contact'],
    ['1.8 bar cold', 'cold'],
    ['snug plus an eighth of a turn', 'snug plus'],
    ['ten millimetres per metre', 'per metre'],
    ['no more than two thou over six inches', 'over six inches'],
    ['12.4 volts with no load', 'with no load'],
  ])('[Q1] “%s” holds under the condition “%s”', ([text = '', reference]) => {
    expect(only(text).reference).toBe(reference)
  })

  // Common practice, no source: a spin-on element goes half to three quarters of a turn past gasket contact, by hand.
  test('[Q1] half to three quarters of a turn is 180 to 270 degrees', () => {
    const { quantity, reference } = only('a half to three quarters of a turn past gasket contact, by hand')
    expect([(quantity.low ?? 0) * 360, (quantity.high ?? 0) * 360, quantity.unit, reference]).toEqual([
      180,
      270,
      'circ',
      'past gasket contact',
    ])
  })

  // Common practice, no source.
  test('[Q1] a service every 100 hours', () => {
    expect(only('that service comes round every 100 hours').quantity).toEqual({ nominal: 100, unit: 'h' })
  })
})

const WORDS = [
  ...Object.values(PHRASES).flatMap(cases => cases.flatMap(([say]) => say.split(' '))),
  ...'( ) , . ; - – ± + / % " ° ½ 1 2.5 0,75 1,250 M8 x 3/8-16 10W-30 $5 6:30'.split(' '),
]

describe('any input at all', () => {
  test('[Q11] nothing makes the reader throw, and offsets give back the words', () => {
    const talk = fc.array(fc.constantFrom(...WORDS), { maxLength: 60 }).map(words => words.join(' '))
    const anything = fc.oneof(
      talk,
      fc.string({ maxLength: 200, unit: 'binary' }),
      fc.tuple(talk, fc.string()).map(pair => pair.join('')),
    )
    fc.assert(
      fc.property(anything, anything, (text, context) => {
        let last = 0
        for (const reading of readQuantities(text, { context })) {
          expect(text.slice(reading.at, reading.to)).toBe(reading.text)
          expect(reading.text.length).toBeGreaterThan(0)
          expect(reading.at).toBeGreaterThanOrEqual(last)
          last = reading.at
          const { low, high, nominal } = reading.quantity
          for (const value of [low, high, nominal]) if (value !== undefined) expect(Number.isFinite(value)).toBe(true)
          if (low !== undefined && high !== undefined) expect(low).toBeLessThanOrEqual(high)
        }
      }),
      { numRuns: 1000 },
    )
  })

  test('[Q11] very long and very dull texts are read as well', () => {
    for (const dull of [
      '1 ',
      'one ',
      '5 mm, no, ',
      'between ',
      '5 mm to ',
      '1/',
      'half ',
      '10 mm ',
      'hundred ',
      '(',
      'not ',
    ])
      expect(() => readQuantities(dull.repeat(600))).not.toThrow()
  })

  test('[Q5] the reader understands what the formatter wrote', () => {
    for (const text of [
      '17 to 23 N·m',
      'at most 6 thou',
      'at least 3.5 mm',
      '44 ± 3 N·m',
      '1/2 to 3/4 turn',
      '2.4 bar',
      '40 °C',
      '12 lbf·ft',
      '60 lbf·in',
      '33 psi',
    ])
      expect(formatQuantity(only(text).quantity)).toBe(text)
  })
})
