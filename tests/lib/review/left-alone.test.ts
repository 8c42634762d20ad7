import { describe, expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import { sample } from '@/lib/review/sample'

type Options = Parameters<typeof sample>[1]
const asked = (rule: string, marks: Parameters<typeof sample>[0], options?: Options): number =>
  reviewProject(sample(marks, options)).filter(finding => finding.rule === rule).length
const steps = (...texts: readonly string[]): Parameters<typeof sample>[0] => texts.map(text => ['step', text] as const)

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
})
