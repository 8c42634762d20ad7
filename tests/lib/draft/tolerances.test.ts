import { describe, expect, test } from 'vitest'
import { limitsOf, METRIC, missingOf } from './limits-of'

describe('how far off a target may be, as people put it', () => {
  test.for([
    ['nominal=410 tol=5 mm', 'The seat hangs at four hundred and ten millimetres, to the nearest five either way.'],
    ['nominal=7 tol=0.5 mm', 'Seven millimetres of key dip, with half a millimetre’s grace both ways.'],
    ['nominal=90 tol=0.5 deg', 'The blade stands at ninety degrees to the table, half a degree out at the very most.'],
    ['nominal=200 tol=10 g', 'Two hundred grams of starter, I don’t get upset over ten grams.'],
    ['nominal=24 tol=1 V', 'Twenty-four volts, one volt this way or that.'],
    ['nominal=10 tol=0.05 mm', 'Ream it to ten millimetres, spot on, five hundredths is all you get.'],
    ['nominal=2 tol=0.2 mm', 'Depth below the face, 2 millimetres, and not off by more than 0.2.'],
    ['nominal=9 tol=0.5 bar', 'Nine bar, says the whole world, and I accept half more or half less.'],
    ['nominal=160 tol=10 bar', 'Screw a gauge on here, and it’s 160 bar, more or less ten.'],
    ['nominal=3000 tol=50 {rev}/min', 'Run it at 3000 rpm, and the tachometer must agree within 50.'],
    ['nominal=20 tol=0.4 kPa', 'Pump it to 20 kPa, and my manometer should agree within 0.4.'],
    [
      'nominal=475 tol=15 Cel',
      'It runs at 475 degrees in the oven, and I’m happy with anything fifteen over or under.',
    ],
    ['nominal=95 tol=5 cm', 'The tip stands 95 centimetres over the road, five more or five less.'],
    ['nominal=5.5 tol=0.2 L', 'She holds five and a half litres, give or take a couple of hundred mil.'],
    ['nominal=230 tol=5 V', '230 volts, and I won’t quibble over five.'],
    ['nominal=6 tol=0.5 mm', 'Make it six millimetres, and half a mil of error is allowed.'],
    ['nominal=52 tol=3 {rev}/min', 'Count it with the watch, 52 turns a minute, three each way.'],
    ['nominal=134 tol=0.5 Cel', 'The screen should read 134 Celsius. // Half a degree off either way will pass.'],
  ] as const)('[D11] %s: %s', ([wanted, said]) => {
    expect(missingOf(wanted, said)).toEqual([])
  })

  test.for([
    'The row is 24 millimetres long. // The readings have to be within 5 percent of each other.',
    'It was 30 millimetres when new. // Side to side they mustn’t differ by more than three.',
  ])('[D11] what several may differ by is about no target: %s', said => {
    const [first] = limitsOf([METRIC, ...said.split(' // ')])
    expect(first?.nominal).toBeUndefined()
    expect(first?.low).toBeUndefined()
  })
})
