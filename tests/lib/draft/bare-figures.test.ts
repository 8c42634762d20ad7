import { describe, expect, test } from 'vitest'
import { missingOf } from './limits-of'

describe('what a bare figure counts in, by what is said around it', () => {
  test.for([
    // How long something lasts was told just before, and a figure without unit is none of that by the word “minutes” alone.
    [
      'nominal=38 Cel',
      'The water is at 20 Celsius. // It takes four hours to come up. // Set it to 38, and shut the lid.',
    ],
    ['nominal=48 h', 'The glue needs twenty-four hours. // The tin says forty-eight.'],
    ['nominal=10 min', 'It warms up for five minutes, no load. // Make that 10 altogether.'],
    ['high=30 s', 'Five seconds of smoke in the hood, and it must answer inside thirty.'],
    ['nominal=3.5 bar', 'To what pressure? // Three and a half.'],
    // Which instrument is read.
    ['low=250 high=310 Ohm', 'Meter across the heater, and a good one is somewhere from 250 to 310.'],
    ['high=18 %', 'Put a drop on the refractometer, and it has to be under 18.'],
    ['high=8.2 A', 'Tongs round one phase, and the plate allows 8.2 at most.'],
    ['low=11.5 V', 'The batteries sit there as a pair, rested, each at 11.5 or better.'],
    ['low=2.2 mm', 'Mike the brown disc, it was 2.5 once, and below 2.2 it’s scrap.'],
    // What was said long before is no torque where nothing is tightened.
    [
      'nominal=8 mm',
      'Leaf to floor is 6 millimetres. // The motor gets 10 newton metres. // It swings free. // And it swings again. // Down to the sill, eight.',
    ],
  ] as const)('[D11] %s: %s', ([wanted, said]) => {
    expect(missingOf(wanted, said)).toEqual([])
  })
})

describe('degrees of heat or of an angle', () => {
  test.for([
    ['nominal=35 deg', 'Grind the knives at 35 degrees, dipping them in water.'],
    ['nominal=26 deg', 'The timing is 26 degrees before top dead centre.'],
    ['low=15 high=25 Cel', 'Room between 15 and 25 degrees, window on the latch.'],
    ['high=40 Cel', 'Heat off, and let the roller turn until the display shows less than forty degrees.'],
    ['nominal=38 Cel', 'Digital thermometer in the jug. // We turn the spindle till it settles on 38 degrees.'],
    ['nominal=-18 Cel', '[us] The freezer is set to minus eighteen degrees.'],
    ['nominal=45 deg', 'The egg trays tip forty-five degrees each way.'],
  ] as const)('[D11] %s: %s', ([wanted, said]) => {
    expect(missingOf(wanted, said)).toEqual([])
  })
})

describe('units that are said, as they are meant', () => {
  test.for([
    ['high=0.3 nominal=0.2 %', 'Acid at 0.2 percent, no stronger than 0.3, for ten minutes.'],
    ['nominal=60 {rev}/min', 'Slow, like 60 turns a minute.'],
    ['high=8 {rev}/min', 'No faster than eight turns a minute to begin.'],
    ['low=33.2 high=33.5 {rev}/min', 'The platter runs at 33.2 to 33.5 revolutions.'],
    ['nominal=3 circ', 'Give it three full revs by hand.'],
    ['low=44.5 high=45.5 nominal=45 mm', 'Check the thickness, forty-five mil, give or take half a mil.'],
    ['low=150 high=200 mm', 'Leave a gap up top of 150 to 200 mil, so the water can lift the sand.'],
    ['nominal=20 mL', 'Squirt 20 mil of oil down the bore with the syringe.'],
  ] as const)('[D11] %s: %s', ([wanted, said]) => {
    expect(missingOf(wanted, said)).toEqual([])
  })
})
