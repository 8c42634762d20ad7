import { describe, expect, test } from 'vitest'
import { asked, steps } from './asked'

describe('what a sound sheet says is left alone', () => {
  test('[R3] plugged in, aired or carried away, nothing brings a hazard', () => {
    const of = (text: string) => asked('hazard-no-caution', steps(text))
    expect(of('Plug the welding set in')).toBe(0)
    expect(of('Put the used cloths in the lidded solvent waste drum')).toBe(0)
    expect(of('Open the roller door to ventilate the bay')).toBe(0)
    expect(of('Tap the bolts with a plastic hammer')).toBe(0)
    expect(of('Tap the bolts with a hammer')).toBe(1)
  })

  test('[R3] one is said as "a minute", "every year"', () => {
    const spec = (talk: string) =>
      asked('number-not-said', [['spec', 'contact time', { quantity: { nominal: 1, unit: 'min' } }]], { talk: [talk] })
    expect(spec('Leave it on for a good minute.')).toBe(0)
    expect(spec('Leave it on for the time on the label.')).toBe(1)
  })

  test('[R3] a cleaner sprayed and brushed leaves no rag', () => {
    expect(asked('no-disposal', steps('Clean the hose ends with brake cleaner and a brush'))).toBe(0)
    expect(asked('no-disposal', steps('Swab the hose ends with brake cleaner on a rag'))).toBe(1)
  })

  test('[R3] what is done while doing another is one action; a particle makes a verb', () => {
    expect(asked('two-actions', steps('Tip the old oil into a tray while stroking the leg'))).toBe(0)
    expect(asked('no-verb-first', steps('Rope off the stage under the bar'))).toBe(0)
  })

  test('[R3] a socket of one inch and a half is not a half-inch one', () => {
    const torque = (tool: string) =>
      asked('spec-torque', [
        ['step', `Tighten the ring bolts with the ${tool} socket`],
        ['spec', 'ring bolt torque', { quantity: { low: 240, high: 260, unit: '[ft_i].[lbf_av]' } }],
      ])
    expect(torque('1 1/2 in')).toBe(0)
    expect(torque('1/2 in')).toBe(1)
  })

  test('[R3] hands kept off take none off, a burnt lacquer hurts nobody', () => {
    const word = (text: string, level: 'caution' | 'notice' | 'warning') =>
      asked('signal-word', [
        ['step', 'Run the pump'],
        ['caution', text, { level }],
      ])
    expect(word('Keep fingers off the side rails; the frame folds and pinches', 'caution')).toBe(0)
    expect(word('Keep the cup moving in the flame; the lacquer burns', 'notice')).toBe(0)
    expect(word('The blade takes fingers off; keep away', 'caution')).toBe(1)
  })

  test('[R3] a listed block of wood is the wood block of a step', () => {
    const of = (tool: string) =>
      asked('tool-not-listed', [
        ['step', 'Tap the bushing in with a wood block'],
        ['tool', tool],
      ])
    expect(of('block of wood')).toBe(0)
    expect(of('tape measure')).toBe(1)
  })
})

describe('what short sheets of other trades showed', () => {
  test('[R3] a brake is tried by rolling; a supply open again brings nothing', () => {
    expect(asked('two-actions', steps('Push the trolley and pull the hand brake'))).toBe(0)
    expect(asked('hazard-no-caution', steps('Open the air supply valve'))).toBe(0)
  })

  test('[R3] kerosene poured in to burn is no waste, used to wash it is', () => {
    expect(asked('no-disposal', steps('Pour kerosene into the tank'))).toBe(0)
    expect(asked('no-disposal', steps('Wash the jets in kerosene'))).toBe(1)
  })

  test('[R2] a connector unplugged does not come back with the battery lead', () => {
    const left = (...texts: readonly string[]) => asked('not-reconnected', steps(...texts))
    expect(left('Unplug the motor connector', 'Reconnect the battery minus lead')).toBe(1)
    expect(left('Unplug the motor connector', 'Push the motor connector in')).toBe(0)
  })
})

describe('what is left on, turned wrongly or never picked up is found', () => {
  test('[R2] a handwheel left on its shaft, a strut left under, a block between', () => {
    const left = (tool: string, ...texts: readonly string[]) =>
      asked('aid-left-in', [...steps(...texts), ['tool', tool]])
    expect(left('handwheel', 'Push the handwheel onto the drive shaft')).toBe(1)
    expect(left('handwheel', 'Push the handwheel onto the drive shaft', 'Slide the handwheel off the shaft')).toBe(0)
    expect(left('torch', 'Push the handwheel onto the drive shaft')).toBe(0)
    expect(left('backrest strut', 'Lift the backrest onto the strut', 'Drive the pin out')).toBe(1)
    expect(left('backrest strut', 'Lift the backrest onto the strut', 'Take the strut away')).toBe(0)
    expect(left('wood block', 'Wedge the wood block between blade and deck')).toBe(1)
  })

  test('[R2] slackened and tensioned by the same turn', () => {
    const turned = (way: string) =>
      asked(
        'direction-disagrees',
        steps(
          'Turn the tension handwheel anticlockwise until the blade sags',
          `Turn the tension handwheel ${way} to the scale mark`,
        ),
      )
    expect(turned('anticlockwise')).toBe(1)
    expect(turned('clockwise')).toBe(0)
  })

  test('[R2] a drill, a spirit level that nothing takes up', () => {
    const unused = (text: string) =>
      asked('tool-not-used', [
        ['step', text],
        ['tool', 'cordless drill'],
      ])
    expect(unused('Wipe the baffle')).toBe(1)
    expect(unused('Drill out the rivet')).toBe(0)
  })

  test('[R2] an oil burner and a solar string are for the licensed', () => {
    const licensed = (equipment: string, scope: string, text: string) =>
      asked('licensed-work', steps(text), { heading: { title: 'Yearly service', equipment, scope } })
    expect(licensed('oil-fired boiler', 'Sweep and nozzle', 'Screw the new nozzle in')).toBe(1)
    expect(licensed('oil-fired boiler', 'For a registered heating engineer', 'Screw the new nozzle in')).toBe(0)
    expect(licensed('solar array, 600 V DC', 'Strings', 'Disconnect string one')).toBe(1)
  })

  test('[R2] proved dead says nothing of what happens', () => {
    const caution = 'Prove the burner dead before you touch any terminal'
    expect(
      asked('caution-incomplete', [
        ['step', 'Test the plug'],
        ['caution', caution, { level: 'danger', hazard: 'electric-shock' }],
      ]),
    ).toBe(1)
  })
})
