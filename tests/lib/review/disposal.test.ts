import { expect, test } from 'vitest'
import { applyEdit } from '@/lib/procedure/edit'
import { reviewProject } from '@/lib/review/review'
import { sample } from '@/lib/review/sample'
import { WASTES } from '@/lib/trade/waste'

/** A step that leaves each kind of waste behind. */
const LEAVES: Readonly<Record<string, string>> = {
  oil: 'Drain the engine oil',
  coolant: 'Drain the coolant from the radiator',
  'brake-fluid': 'Siphon the old brake fluid out',
  fuel: 'Drain the petrol from the carburettor',
  battery: 'Lift the old battery out',
  filter: 'Fit a new oil filter',
  solvent: 'Wash the parts in paraffin',
  descaler: 'Fill the boiler with descaler',
  refrigerant: 'Recover the refrigerant',
  'gas-strut': 'Fit the new gas strut',
  lamp: 'Take the fluorescent tube out',
  'cutting-fluid': 'Pump out the cutting fluid',
  resin: 'Wipe the resin off the roller',
  'cooking-oil': 'Empty the grease trap',
  'blast-media': 'Empty the dust drawer',
  sharps: 'Take the worn blades out',
  pyrotechnic: 'Unclip the deployed airbag module',
  rags: 'Wipe the flange with greasy rags',
  ash: 'Sweep the ash out',
  'treated-water': 'Drain the heating system',
  'worn-part': 'Slide the old pads out',
  'old-part': 'Walk the old mixer out of the sink',
}

test.each(WASTES.map(waste => [waste.id, waste] as const))(
  '[R6] the remedy for %s is a step someone can do, pencilled with what only the shop knows',
  (id, { step, question }) => {
    const project = sample([['step', LEAVES[id] ?? '']])
    const finding = reviewProject(project).find(
      ({ rule, remedy }) => rule === 'no-disposal' && remedy?.label.includes(step),
    )
    const mended = (finding?.remedy?.edits ?? []).reduce(applyEdit, project)
    const added = mended.marks.find(({ text }) => text === step)
    expect(added?.pencilled?.question).toBe(question)
    expect(question).toMatch(/\?/)
    const after = reviewProject(mended)
    expect(after.filter(({ rule }) => rule === 'no-disposal')).toEqual([])
    const ofStep = after.filter(({ place }) => place.at === 'mark' && place.mark === added?.id)
    expect(ofStep.filter(({ rule }) => rule !== 'hazard-no-caution')).toEqual([])
    expect(step).not.toMatch(/^say\b|\bthe sheet\b/i)
  },
)
