import { describe, expect, test } from 'vitest'
import { missingOf } from './limits-of'

describe('counts, shares and distances told in passing', () => {
  test.for([
    ['nominal=1 [ft_i]', 'Zip ties for the cord, every foot, up the pipe.'],
    ['nominal=75 cm', 'Pin the wire, one peg each 75 centimetres.'],
    ['low=2 high=4', 'The belt must sit within 2 to 4 of the eye.'],
    ['low=3 high=5', 'It should say three to five upstairs.'],
    ['nominal=170 bar', 'The pressure ought to be 150 bar, and it’s not to pass 170 when the trigger is let go.'],
    ['nominal=2 circ', 'At the lowest hook two full dead turns stay on the drum.'],
    ['low=15 high=20', 'Watch it swing, 15 to 20 swings in a minute.'],
    ['high=10', 'Don’t give it more than ten seals a minute.'],
    ['nominal=10 %', 'Once it’s risen by a tenth the whole lot is renewed.'],
    ['high=10 %', 'It may have opened by no more than a tenth part of its original width.'],
    ['high=0.13 kPa', 'The loss is limited to 0.13 kilopascals per minute.'],
    [
      'low=25 high=26 V',
      'Voltmeter from the first cell to the last. // We’d like anything from twenty-five up to twenty-six.',
    ],
    [
      'high=110 [degF]',
      'The kiln was at nine hundred Fahrenheit. // Nobody lifts the lid till it’s down to 110 or under.',
    ],
  ] as const)('[D11] %s: %s', ([wanted, said]) => {
    expect(missingOf(wanted, said)).toEqual([])
  })
})
