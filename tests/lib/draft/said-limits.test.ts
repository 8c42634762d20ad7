import { describe, expect, test } from 'vitest'
import { limitsOf as lastOf } from './limits-of'

const METRIC = 'The grey one by the kerb, two metres out, takes a litre.'
const US = 'Four quarts and a gallon, five inches deep.'

describe('a bound in people’s own ways', () => {
  test.for([
    ['Six millimetres is as thin as that plate may get.', [{ low: 6, unit: 'mm' }]],
    ['Two millimetres is as wide as it should ever be.', [{ high: 2, unit: 'mm' }]],
    ['Eight seconds is your lot.', [{ high: 8, unit: 's' }]],
    ['The maker lets you have 0.4 millimetres there.', [{ high: 0.4, unit: 'mm' }]],
    ['Leave it to dry for two hours or better.', [{ low: 2, unit: 'h' }]],
    ['It trips in forty milliseconds or better.', [{ low: 40, unit: 'ms' }]],
    ['Anything over four millimetres I leave alone.', [{ low: 4, unit: 'mm' }]],
    ['Once they are down to five millimetres I fit a new set.', [{ low: 5, unit: 'mm' }]],
    ['I want to see nothing under a megohm.', [{ low: 1, unit: 'MOhm' }]],
  ] as const)('[D11] %s', ([text, limits]) => {
    expect(lastOf([text])).toEqual(limits)
  })

  test('[D11] the limit of a thing that wears is its least, of one that swings its most', () => {
    expect(lastOf(['Three millimetres is the limit on that brake lining.'])).toEqual([{ low: 3, unit: 'mm' }])
    expect(lastOf(['Three millimetres of swing is the limit.'])).toEqual([{ high: 3, unit: 'mm' }])
  })
})

describe('what a bare figure counts in', () => {
  test.for([
    [
      'what is measured beats the thing it is measured on',
      [METRIC, 'Superheat at the coil wants nine to eleven.'],
      'Cel',
    ],
    ['a comparison tells what is compared', [METRIC, 'Water no hotter than 85.'], 'Cel'],
    ['what was spoken of just before', [METRIC, 'What heat is the platen at?', 'Set it to 180, no higher.'], 'Cel'],
    ['turning by the thousand', [METRIC, 'Idle it, and then up to 2,800, plus or minus 40.'], '{rev}/min'],
    ['a fraction of a length', [US, 'A groove deeper than an eighth, and it is scrap.'], '[in_i]'],
    [
      'another source gives nearly the same value',
      ['Cap bolts get 80 newton metres.', 'The card in the lid says 86, though.'],
      'N.m',
    ],
    ['degrees, where they are of heat', [US, 'The oven gets up to two hundred degrees.'], '[degF]'],
    ['mil, where millimetres are counted', [METRIC, 'Keep it 25 mil off the plastic hose.'], 'mm'],
    ['mil, where something is poured', [METRIC, 'In goes 120 mil of gear oil.'], 'mL'],
    [
      'which of the bolts is meant names no property',
      [METRIC, 'The cap bolts get 17 newton metres.', 'Only the long ones, those are 25.'],
      'N.m',
    ],
    ['mil of give', [METRIC, 'Press the chain, and 12 mil of give is right.'], 'mm'],
    ['standing water is a depth', ['There should be six inches of water over the grate.'], '[in_i]'],
  ] as const)('[D11] %s', ([, talk, unit]) => {
    expect(lastOf(talk).map(quantity => quantity.unit)).toEqual([unit])
  })
})

describe('a fine figure is a length, an interval counts in hours', () => {
  test.for([
    [
      METRIC,
      'Grab the roller, and a whisker is right, 0.04 to 0.12 if you have a dial.',
      { low: 0.04, high: 0.12, unit: 'mm' },
    ],
    [
      US,
      'We are putting a new nozzle in, so, .030 to .035, the bag has it.',
      { low: 0.03, high: 0.035, unit: '[in_i]' },
    ],
    [METRIC, 'The mixer may be run at seven hundred.', { nominal: 700, unit: '{rev}/min' }],
  ] as const)('[D11] %s %s', ([system, text, quantity]) => {
    expect(lastOf([system, text])).toEqual([quantity])
  })

  test('[D11] every ten after every forty hours', () => {
    expect(lastOf([METRIC, 'Grease the head every forty hours when you mow, and the tines every ten.'])).toEqual([
      { nominal: 40, unit: 'h' },
      { nominal: 10, unit: 'h' },
    ])
  })
})

describe('a figure as it is spoken', () => {
  test.for([
    ['The fan wants the full seven-twenty revs.', [{ nominal: 720, unit: '{rev}/min' }]],
    ['Inch and a half.', [{ nominal: 1.5, unit: '[in_i]' }]],
    [
      'The lug nuts, eleven-sixteenths, one turn.',
      [
        { nominal: 0.6875, unit: '[in_i]' },
        { nominal: 1, unit: 'circ' },
      ],
    ],
    ['No more than 14, pardon, 12 millimetres.', [{ high: 12, unit: 'mm' }]],
    ['I go at it with a pair of 13s.', []],
    ['Set it for 22, 24 degrees celsius.', [{ low: 22, high: 24, unit: 'Cel' }]],
  ] as const)('[D11] %s', ([text, limits]) => {
    expect(lastOf([text])).toEqual(limits)
  })
})

describe('a limit told without a figure of its own', () => {
  test.for([
    ['If a six-thou feeler goes in anywhere, the face is bowed.', [{ high: 6, unit: '[mil_i]' }]],
    ['A 0.2 millimetre feeler should not go in.', [{ high: 0.2, unit: 'mm' }]],
    ['If a 0.2 millimetre feeler will not go in, it is too tight.', [{ low: 0.2, unit: 'mm' }]],
    ['The antifreeze goes in fifty-fifty with water.', [{ nominal: 50, unit: '%' }]],
    ['I am happy with 5 either side of 90 volts.', [{ low: 85, high: 95, nominal: 90, unit: 'V' }]],
    ['It is 9, only 9 newton metres.', [{ nominal: 9, unit: 'N.m' }]],
  ] as const)('[D11] %s', ([text, limits]) => {
    expect(lastOf([text])).toEqual(limits)
  })

  test.for([
    'Shut the tap, fingers only.',
    'Turn the collar to the third click.',
    'Bring it to the lower half of the glass.',
    'It wants to be just weeping at the hole.',
    'Grease in, two-thirds of the way.',
  ])('[D11] %s', text => {
    expect(lastOf([text]).some(quantity => Object.keys(quantity).length === 0)).toBe(true)
  })
})
