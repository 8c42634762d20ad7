import { describe, expect, test } from 'vitest'
import { toSheet } from '@/lib/procedure/sheet'
import { openItems } from '@/lib/review/ledger'
import { sample } from '@/lib/review/sample'

const left = (...steps: readonly string[]) =>
  openItems(toSheet(sample(steps.map(text => ['step', text] as const)))).map(
    ({ undone, thing }) => `${undone} ${thing.name}`,
  )

describe('what is put back is not missed', () => {
  test('[R3] taps shut first and opened at the end, two in one phrase', () => {
    expect(
      left('Turn the flow and return valves shut', 'Change the filter', 'Open the flow and return valves'),
    ).toEqual([])
  })

  test('[R3] a fastener renewed goes where another kind of it came off', () => {
    expect(left('Slacken the clamp nut', 'Tighten a new flange nut')).toEqual([])
  })

  test('[R3] who did it ends the name of a part', () => {
    expect(left('Hang your padlock on the isolator', 'Take off the padlock you hung there')).toEqual([])
  })

  test('[R3] a direction after the particle', () => {
    expect(left('Loosen the arbor nut', 'Screw the arbor nut up clockwise')).toEqual([])
  })

  test('[R3] a battery plug pulled and pushed home', () => {
    expect(left('Pull the battery plug', 'Push the battery plug home')).toEqual([])
  })

  test('[R3] valves at the point of use, an emergency stop drawn out, a listed lifter', () => {
    expect(left('Shut both burner valves')).toEqual([])
    expect(left('Pull the emergency stop out')).toEqual([])
    expect(left('Jack the sprocket off the shaft with a forcing screw')).toEqual([])
  })
})

describe('what is put back in other words', () => {
  test('[R3] two halves pushed together, a plug put in with something', () => {
    expect(
      left('Uncouple the air connector of the spindle', 'Press the air connector of the spindle together'),
    ).toEqual([])
    expect(left('Pull the kettle plug out of the socket', 'Plug the kettle in with a dry cloth')).toEqual([])
  })

  test('[R3] what hangs below is shut by swinging it up until it catches', () => {
    expect(left('Unlatch the ceiling hatch', 'Fold the ceiling hatch up until both hooks click')).toEqual([])
  })

  test('[R3] what is stripped for good', () => {
    expect(left('Peel the insulation off the wire end')).toEqual([])
  })

  test('[R3] the last of a list that reads like a verb', () => {
    expect(left('Pull the sleeve, the crank and the handle off', 'Refit the sleeve, crank and handle')).toEqual([])
    expect(left('Draw the worm and drive gear out', 'Refit the worm and drive gear')).toEqual([])
  })

  test('[R3] hung or laid where it was, not where it is set aside', () => {
    expect(left('Slip the belt off', 'Grease the hub', 'Hang the belt')).toEqual([])
    expect(left('Slip the belt off', 'Grease the hub', 'Lay the belt on the bench')).toEqual(['removed belt'])
  })

  test('[R3] its bolts by their verb, a part by the bolts refitted', () => {
    expect(left('Take the four foot bolts out', 'Bolt the pump down')).toEqual([])
    expect(left('Take the chain guard off', 'Refit and torque the guard bolts')).toEqual([])
    expect(left('Slacken the U-bolt', 'Tighten the U-bolt nuts')).toEqual([])
  })

  test('[R3] what takes nothing apart: out of service, only if it binds, jewellery', () => {
    expect(left('Take the lift out of service')).toEqual([])
    expect(left('Take the roller out if it binds')).toEqual([])
    expect(left('Take off rings, watch and chains')).toEqual([])
  })

  test('[R3] the manner of it ends the name of a part', () => {
    expect(left('Slip the belt off', 'Fit a new belt following the sketch')).toEqual([])
    expect(left('Pull the rear half off', 'Slide the rear half onto the shaft')).toEqual([])
  })
})

describe('what is left undone is found', () => {
  test('[R2] a battery plug pulled, locked away and never pushed home', () => {
    expect(left('Pull the battery plug', 'Lock the battery plug in its box')).toContain('disconnected battery plug')
  })

  test('[R2] a drain plug pulled is taken out, not unplugged', () => {
    expect(left('Pull the drain plug', 'Wipe the pan')).toContain('removed drain plug')
  })

  test('[R2] a cock left open on a machine that stores something', () => {
    const project = sample(
      [
        ['step', 'Open the drain cock'],
        ['step', 'Change the anode'],
      ],
      {
        heading: { title: 'Anode change on a storage heater' },
      },
    )
    expect(openItems(toSheet(project)).map(({ undone }) => undone)).toEqual(['opened'])
  })
})
