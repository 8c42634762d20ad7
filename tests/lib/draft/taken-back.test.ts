import { describe, expect, test } from 'vitest'
import { withoutTakenBack } from '@/lib/draft/taken-back'
import { draftOf } from './talks'

const AROUND = ['Take the cover off.', 'Put the cover back on.'] as const
const stepFor = (...said: readonly string[]): string =>
  draftOf('step', AROUND[0], ...said, AROUND[1])
    .map(({ text }) => text)
    .slice(1, -1)
    .join(' ')

describe('[D15] a value taken back stands in no text', () => {
  test.for([
    [
      'Slide the drawer in and torque the screws to twelve newton meters, no sorry, nine newton meters.',
      'Slide the drawer in and torque the screws to nine newton meters.',
    ],
    [
      'Fill the gearbox with four liters, I mean five liters of gear oil.',
      'Fill the gearbox with five liters of gear oil.',
    ],
    ['Set the tyre pressure to 32 psi, wait, 36 psi cold.', 'Set the tyre pressure to 36 psi cold.'],
    ['Replace the fuse, not the 10 amp one, the 15 amp one.', 'Replace the 15 amp fuse.'],
  ] as const)('%s', ([said, text]) => {
    expect(stepFor(said)).toBe(text)
  })

  test('nor where the next sentence takes it back; the spec is one, of the same thing', () => {
    const said = ['Torque the drain plug to forty newton meters.', 'Sorry, that should be thirty newton meters.']
    expect(stepFor(...said)).toBe('Torque the drain plug to thirty newton meters.')
    expect(draftOf('spec', AROUND[0], ...said, AROUND[1]).map(({ text, quantity }) => ({ text, quantity }))).toEqual([
      { text: 'drain plug torque', quantity: { nominal: 30, unit: 'N.m' } },
    ])
  })

  test('nor where the right value comes some sentences later', () => {
    const said = [
      'Screw the drain plug in and torque it to nine newton metres.',
      'Sorry, no, nine is the old pump.',
      "This one's twelve.",
      'Twelve newton metres, I looked it up.',
    ]
    expect(stepFor(...said)).toMatch(/torque it to twelve newton metres/i)
    expect(draftOf('spec', AROUND[0], ...said, AROUND[1]).map(({ text, quantity }) => ({ text, quantity }))).toEqual([
      { text: 'drain plug torque', quantity: { nominal: 12, unit: 'N.m' } },
    ])
    const other = [said[0] ?? '', 'Sorry, no, the gloves come first.', 'Twelve newton metres for the cap.']
    expect(draftOf('spec', AROUND[0], ...other, AROUND[1]).map(({ quantity }) => quantity?.nominal)).toEqual([9, 12])
  })

  test('two values of two things both stay', () => {
    const said = [
      'Torque the drain plug to forty newton meters.',
      'No, wait, the filler cap gets thirty newton meters.',
    ]
    expect(stepFor(...said)).toMatch(/drain plug to forty newton meters/)
    expect(withoutTakenBack('Wait 5 minutes, no more than 6 minutes.')).toBe('Wait 5 minutes, no more than 6 minutes.')
  })

  test('a bound said once holds for the figure that stands, unless that has its own', () => {
    expect(withoutTakenBack('At least four, sorry, five millimetres.')).toBe('At least five millimetres.')
    expect(withoutTakenBack('At least .4, sorry, .5 millimetres.')).toBe('At least .5 millimetres.')
    expect(withoutTakenBack('At least 40, no, at most 50 newton metres.')).toBe('at most 50 newton metres.')
  })

  test('what is spoken of another thing is not put in its place', () => {
    expect(withoutTakenBack('Torque the studs to 25, no wait, the nuts are 30 newton metres.')).toBe(
      'Torque the studs.',
    )
  })
})
