import { describe, expect, test } from 'vitest'
import { limitsOf, METRIC } from './limits-of'

describe('of a value taken back only what stands in its place is a limit', () => {
  test.for([
    [
      'The key screws, five newton metre, ah, no, five is for the case, forget five, in these it’s three and half.',
      3.5,
    ],
    ['The nuts take sixty newton metres, get away, that’s for the iron ones, here you’d crush the grain, forty.', 40],
    ['How strong, twelve newton metres, ah no, twelve is the fan, the pot gets eight.', 8],
    ['How tight, twelve newton metres, ah wait, twelve is for the lid, the cup gets eight.', 8],
    ['Leave it on for forty minutes, hang on, forty’s for marble, on limestone it’s twenty-five.', 25],
    ['Sixty newton metres on the rail bolts, get out of it, that’s for the steel rail, here it’s wood, forty.', 40],
    ['Ten newton metres on those bolts, hold your horses, that’s the water pump, these are eight.', 8],
    ['Burn it in for fifty minutes, nah, forty.', 40],
    ['It is sixty psi, wait, sixty was the old hose, forty-five.', 45],
    ['Two millimetres of clearance, that’s what it used to be, now they want one point two.', 1.2],
    ['Locknuts, 24, no, hear me out, 32 newton metres.', 32],
  ] as const)('[D15] %s', ([said, value]) => {
    expect(limitsOf([METRIC, said]).map(({ nominal }) => nominal)).toEqual([value])
  })
})
