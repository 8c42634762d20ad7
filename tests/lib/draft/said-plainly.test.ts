import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sayPlainly } from '@/lib/draft/said-plainly'
import { limitsOf } from './limits-of'

const METRIC = 'The grey one by the kerb, two metres out, takes a litre.'

describe('figures put as they are mostly said', () => {
  test.for([
    ['Idle it at fifteen-fifty.', 'Idle it at 1550         .'],
    ['From three-oh to four-oh.', 'From 30       to 40     .'],
    ['Within a 32nd.', 'Within 1/32  .'],
    ['Ten grams to every litre.', 'Ten grams per litre     .'],
    ['Between fifteen-twenty of them.', 'Between fifteen-twenty of them.'],
    ['A sixteenth of a turn.', 'A sixteenth of a turn.'],
  ] as const)('[D11] %s', ([said, plain]) => {
    expect(sayPlainly(said)).toBe(plain)
  })

  test('[D11] places stay the same, whatever is said', () => {
    const words = fc.constantFrom(
      ...'a one single 32nd sixteenth fifteen-fifty seven-oh than, oh, grams to the litre two metres twelve 7'.split(
        ' ',
      ),
    )
    fc.assert(
      fc.property(fc.array(words, { maxLength: 12 }), list => {
        const said = list.join(' ')
        expect(sayPlainly(said)).toHaveLength(said.length)
      }),
    )
  })
})

describe('limits that are said another way', () => {
  test.for([
    ['It takes twenty grams to the litre.', [{ nominal: 20, unit: 'g/L' }]],
    ['I want no more than a single bar on it.', [{ high: 1, unit: 'bar' }]],
    ['If it swings more than, uh, six millimetres, it is scrap.', [{ high: 6, unit: 'mm' }]],
    ['It should weep between ten and twenty drops a minute.', [{ low: 10, high: 20 }]],
    ['Leave at least four threads showing.', [{ low: 4 }]],
    ['Wind on six wraps of tape.', [{ nominal: 6, unit: 'circ' }]],
    ['Then count to forty.', [{ nominal: 40, unit: 's' }]],
    ['30 newton metres, up to 34.', [{ low: 30, high: 34, unit: 'N.m' }]],
    ['The nut is pulled up to ninety newton metres.', [{ nominal: 90, unit: 'N.m' }]],
    ['The two may differ by two millimetres.', [{ high: 2, unit: 'mm' }]],
    ['Four bar maximum.', [{ high: 4, unit: 'bar' }]],
    ['Back it off half a turn and no more.', [{ nominal: 0.5, unit: 'circ' }]],
    ['Snug it, then a quarter back.', [{ nominal: 0.25, unit: 'circ' }]],
    ['Look at the nuts again after the first hour.', [{ nominal: 1, unit: 'h' }]],
    ['Let it soak for another minute.', [{ nominal: 1, unit: 'min' }]],
    ['They shall be no further apart than 4 millimetres.', [{ high: 4, unit: 'mm' }]],
    ['I like anything from two megohm up.', [{ low: 2, unit: 'MOhm' }]],
    ['The hole must not be bigger as 7 millimetres.', [{ high: 7, unit: 'mm' }]],
    ['It may never be thinner as four millimetres.', [{ low: 4, unit: 'mm' }]],
    ['A thousand, twelve hundred revs.', [{ low: 1000, high: 1200, unit: '{rev}/min' }]],
  ] as const)('[D11] %s', ([text, limits]) => {
    expect(limitsOf([text]).filter(({ nominal, low, high }) => (nominal ?? low ?? high) !== undefined)).toEqual(limits)
  })

  test('[D11] an interval told short is of the unit told before', () => {
    expect(limitsOf(['Grease it every three months, and the chain every two.'])).toEqual([
      { nominal: 3, unit: 'mo' },
      { nominal: 2, unit: 'mo' },
    ])
  })

  test('[D11] the unit of one figure tells nothing of another', () => {
    expect(limitsOf([METRIC, 'Let the motor run for ten minutes at 900.']).at(-1)).toEqual({
      nominal: 900,
      unit: '{rev}/min',
    })
  })

  test('[D11] a number before a word of size is read', () => {
    expect(limitsOf([METRIC, 'The bead should be 6 to 8 wide.'])).toEqual([{ low: 6, high: 8, unit: 'mm' }])
  })
})
