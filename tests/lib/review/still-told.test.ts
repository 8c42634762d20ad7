import { describe, expect, test } from 'vitest'
import { toSheet } from '@/lib/procedure/sheet'
import { isDisposing } from '@/lib/review/disposing'
import { hazardsIn } from '@/lib/review/hazard-signs'
import { openItems } from '@/lib/review/ledger'
import { listedThing } from '@/lib/review/listed'
import { sample } from '@/lib/review/sample'
import { DISPOSAL } from '@/lib/trade/waste'
import { asked, steps } from './asked'

describe('what is near to something left alone is told all the same', () => {
  test('[R3] a screw set to two values turns both ways, but is not set as it was slackened', () => {
    const of = (...texts: string[]) => asked('direction-disagrees', steps(...texts))
    expect(
      of(
        'Turn the adjusting screw clockwise until the gauge reads 5 bar',
        'Turn the adjusting screw anticlockwise until the gauge reads 3 bar',
      ),
    ).toBe(0)
    expect(
      of(
        'Turn the adjusting screw anticlockwise until the belt sags',
        'Turn the adjusting screw anticlockwise until the gauge reads 3 bar',
      ),
    ).toBe(1)
  })

  test('[R3] told in another form, a verb with its particle orders nothing', () => {
    expect(asked('no-verb-first', steps('Taking off the cover'))).toBe(1)
    expect(asked('no-verb-first', steps('Rope off the stage'))).toBe(0)
  })

  test('[R3] a brake is tried by rolling, not fitted by it', () => {
    expect(asked('two-actions', steps('Push the trolley and pull the hand brake'))).toBe(0)
    expect(asked('two-actions', steps('Push the trolley in and refit the hand brake'))).toBe(1)
    expect(asked('two-actions', steps('Spin the nut off and fit the pedal'))).toBe(1)
  })

  test('[R3] half a turn and a turn and a half are not one', () => {
    const turn = (talk: string) =>
      asked('number-not-said', [['spec', 'turning', { quantity: { nominal: 1, unit: '{turn}' } }]], { talk: [talk] })
    expect(turn('Give it a full turn.')).toBe(0)
    expect(turn('Give it half a turn.')).toBe(1)
    expect(turn('Give it a turn and a half.')).toBe(1)
    expect(turn('Give it a couple of turns.')).toBe(1)
  })

  test('[R3] what is hot or eats skin burns people; a handle that is scratched is no hand', () => {
    const word = (text: string) =>
      asked('signal-word', [
        ['step', 'Run the pump'],
        ['caution', text, { level: 'notice' }],
      ])
    expect(word('The acid burns.')).toBe(1)
    expect(word('The steam burns.')).toBe(1)
    expect(word('It slips and scratches the handle.')).toBe(0)
    expect(word('It slips and scratches the hand.')).toBe(1)
  })

  test('[R3] the torque of a fuse clamp needs its limits, the rating of the fuse none', () => {
    const one = (text: string, unit: string) =>
      asked('spec-no-tolerance', [
        ['step', 'Tighten it'],
        ['spec', text, { quantity: { nominal: 8, unit } }],
      ])
    expect(one('fuse clamp bolt torque', 'N.m')).toBe(1)
    expect(one('fuse rating', 'A')).toBe(0)
  })

  test('[R3] a split pin kept in a box is not thrown away, nor what hangs on a metal rail', () => {
    expect(isDisposing('Put the split pin in the box')).toBe(false)
    expect(isDisposing('Put the split hose in the box')).toBe(true)
    expect(isDisposing('Hang the bent bar on the metal rail')).toBe(false)
    expect(DISPOSAL.test('Dry the plate with a cloth and lay it flat')).toBe(false)
    expect(DISPOSAL.test('Dry the oily rags flat outdoors')).toBe(true)
  })

  test('[R3] who climbs to a rail can fall; a belt that climbs a sprocket cannot', () => {
    const ids = (text: string) => hazardsIn(text).map(({ id }) => id)
    expect(ids('Climb to the platform and clip the harness to the rail')).toContain('climbing')
    expect(ids('Climb the step ladder and hold the guard rail')).toContain('height')
    expect(ids('See that the belt climbs no sprocket')).not.toContain('climbing')
  })

  test('[R3] a battery lifted out after its lead is off is one still', () => {
    const ids = (text: string) => hazardsIn(text).map(({ id }) => id)
    expect(ids('Disconnect the negative lead and lift out the battery')).toContain('battery')
    expect(ids('Disconnect the negative battery lead')).not.toContain('battery')
  })

  test('[R3] only what is changed for a new one is back, not the guard before it', () => {
    const left = (text: string) => openItems(toSheet(sample(steps(text)))).map(({ thing }) => thing.name)
    expect(left('Remove the guard and slide the old belt off and the new one on')).toEqual(['guard'])
    expect(left('Slide the old seal out and the new one in')).toEqual([])
  })

  test('[R3] a plug that let the oil run out is not back when the heater is plugged in', () => {
    const left = (...texts: string[]) => openItems(toSheet(sample(steps(...texts)))).map(({ thing }) => thing.name)
    expect(left('Remove the plug and let the oil run out', 'Plug the heater in')).toContain('plug')
    expect(left('Remove the plug', 'Plug the heater in')).toEqual([])
  })

  test('[R3] old acid poured away is acid still; cloths put in the drum bring nothing', () => {
    const of = (text: string) => asked('hazard-no-caution', steps(text))
    expect(of('Pour the used acid into the waste drum')).toBeGreaterThan(0)
    expect(of('Tip the old petrol into the waste can')).toBeGreaterThan(0)
    expect(of('Put the used cloths in the lidded solvent waste drum')).toBe(0)
  })

  test('[R3] a block of wood is a wood block, a roll of tape is tape', () => {
    const head = (text: string) => listedThing(text).head
    expect([head('Block of wood'), head('Block of soft wood')]).toEqual(['block', 'block'])
    expect([head('Roll of tape'), head('Set of spanners'), head('Length of hose')]).toEqual(['tape', 'spanner', 'hose'])
  })
})
