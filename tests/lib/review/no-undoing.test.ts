import { describe, expect, test } from 'vitest'
import { toSheet } from '@/lib/procedure/sheet'
import { openItems } from '@/lib/review/ledger'
import { sample } from '@/lib/review/sample'

const left = (...steps: readonly string[]) =>
  openItems(toSheet(sample(steps.map(text => ['step', text] as const)))).map(
    ({ undone, thing }) => `${undone} ${thing.name}`,
  )

describe('what is worded as an undoing and leaves nothing to make good', () => {
  test('[R3] let go, a pedal or a stop switch goes back by itself', () => {
    expect(left('Release the pedal', 'Release the stop switch from the landing')).toEqual([])
    expect(left('Release the belt clamp')).toEqual(['loosened belt clamp'])
  })

  test('[R3] the machine itself comes off its ramps, and is low again', () => {
    expect(left('Run the front wheels up on ramps', 'Roll the mower off the ramps')).toEqual([])
  })

  test('[R3] a door opened for fresh air, wheel locks set, an isolator turned on', () => {
    expect(left('Open the roller door to ventilate the bay')).toEqual([])
    expect(left('Set both wheel locks')).toEqual([])
    expect(left('Turn the oven isolator to zero', 'Turn the oven isolator on')).toEqual([])
  })

  test('[R3] what a new part was wrapped in, what stood full of stuff', () => {
    expect(left('Slip the foam sleeve off the new lamp', 'Take the bottle away')).toEqual([])
  })

  test('[R3] drawn back until something is so, a motor is only moved', () => {
    expect(left('Draw the motor back with the bolt until the belts are tight')).toEqual([])
  })

  test('[R3] the old one out and the new one in, in one step; its head with the broken spoke', () => {
    expect(left('Slide the old seal out and the new one in')).toEqual([])
    expect(
      left(
        'Twist the old spoke out of its nipple',
        'Push the spoke head out of the hub',
        'Thread the new spoke through the hub',
      ),
    ).toEqual([])
  })

  test('[R3] an idler slackened is tight once the belt tension is set; a ladder tied by its head is untied', () => {
    expect(left('Slack the idler off', 'Set the belt tension at the idler')).toEqual([])
    expect(left('Tie the ladder head to the eye', 'Untie the ladder')).toEqual([])
  })

  test('[R2] the clip of a pin is not back with the pin', () => {
    expect(left('Pull the pad pin clip out', 'Drive the pad pin out', 'Push the pad pin in')).toEqual([
      'removed pad pin clip',
    ])
  })

  test('[R3] put back together, everything is back', () => {
    expect(left('Take the pump head off', 'Put it all back together')).toEqual([])
  })
})
