import { describe, expect, test } from 'vitest'
import { readSentence } from '@/lib/draft/feature'
import { findLimits } from '@/lib/draft/spec-feature'
import { limitsOf } from './limits-of'

const featuresOf = (talk: readonly string[]) =>
  findLimits(
    talk.map((text, i) => ({ text, start: i * 4, end: i * 4 + 4, words: [] })),
    talk.map(readSentence),
  ).map(({ features }) => features)

describe('what a limit is to the others of its talk', () => {
  test('[D11] a figure that the range after it holds', () => {
    const [figure, range] = featuresOf(['Fifty millimetres of sag.', 'Well, forty-five to fifty-five millimetres.'])
    expect(figure).toContain('after-holds-it:near')
    expect(range).toContain('before-held:near')
  })

  test('[D11] a figure that is said again', () => {
    const [first, other, again] = featuresOf([
      'The cap bolts get 12 newton metres.',
      'Wait an hour.',
      'So, 12 newton metres.',
    ])
    expect(first).toContain('said-later:nominal')
    expect(other).not.toContain('said-later')
    expect(again).toContain('said-before:nominal')
  })
})

describe('a bare figure that has its unit elsewhere in the talk', () => {
  test('[D11] takes it over where nothing nearer tells', () => {
    const talk = ['A wedge holds it at 85 degrees of angle.', 'The lid next.', 'Clean the rail.', 'Then open it to 85.']
    expect(limitsOf(talk)).toEqual([{ nominal: 85, unit: 'deg' }])
  })
})

test('[D11] degrees of a level and of what stands apart are of an angle, those of a thermometer are not', () => {
  expect(
    limitsOf(['The grey one by the kerb takes a litre.', 'It must be level within about 4 degrees.']),
  ).toContainEqual({
    high: 4,
    unit: 'deg',
  })
  expect(
    limitsOf(['The grey one by the kerb takes a litre.', 'By the thermometer they are 15 degrees apart.']),
  ).toEqual([{ nominal: 15, unit: 'Cel' }])
})

describe('figures of two units, of turns and of mixtures', () => {
  test.for([
    ['It stops softly, between 150 millimetres and a metre.', [{ low: 150, high: 1000, unit: 'mm' }]],
    [
      'Sixty millilitres to four litres of water.',
      [
        { nominal: 60, unit: 'mL' },
        { nominal: 4, unit: 'L' },
      ],
    ],
    ['Spin it, and it should go round at least four times.', [{ low: 4, unit: 'circ' }]],
    ['Turn the drum by hand, eight rounds.', [{ nominal: 8, unit: 'circ' }]],
    ['It is done up somewhere in the twenty to twenty-five newton metre range.', [{ low: 20, high: 25, unit: 'N.m' }]],
    ['The toe wants to be nought to two millimetres.', [{ low: 0, high: 2, unit: 'mm' }]],
    ['Time it, five minutes forty to six minutes twenty.', [{ low: 5 + 40 / 60, high: 6 + 20 / 60, unit: 'min' }]],
  ] as const)('[D11] %s', ([text, limits]) => {
    const found = limitsOf(['The grey one by the kerb, two metres out, takes a litre.', text])
    expect(found.slice(0, limits.length)).toEqual(limits)
  })
})

describe('a bound told by what follows', () => {
  test.for([
    ['The felt may drop two millimetres, more is scrap.', [{ high: 2, unit: 'mm' }]],
    ['Two millimetres of difference is where I’d scrap it.', [{ high: 2, unit: 'mm' }]],
    ['Bond to the frame, a fifth of an ohm or better.', [{ high: 0.2, unit: 'Ohm' }]],
    ['It can sag 4 millimetres.', [{ high: 4, unit: 'mm' }]],
    ['You should not get a 2 millimetre strip in anywhere.', [{ high: 2, unit: 'mm' }]],
    ['Let it drain, 20 minutes, more if it is cold.', [{ low: 20, unit: 'min' }]],
    ['Thirty millimetres of air, more is nice.', [{ low: 30, unit: 'mm' }]],
    ['Leave it overnight, or five hours if you must.', [{ low: 5, unit: 'h' }]],
    ['The card says ten minutes, and I give it no less than that.', [{ low: 10, unit: 'min' }]],
    ['The film should still be there after six minutes.', [{ low: 6, unit: 'min' }]],
    ['And after 9 years it retires.', [{ high: 9, unit: 'a' }]],
    ['An eighth of a turn, no more.', [{ high: 0.125, unit: 'circ' }]],
    ['Slacken it half a turn and no more.', [{ nominal: 0.5, unit: 'circ' }]],
  ] as const)('[D11] %s', ([text, limits]) => {
    expect(limitsOf(['The grey one by the kerb, two metres out, takes a litre.', text])).toEqual(limits)
  })
})
