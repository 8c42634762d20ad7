import { describe, expect, test } from 'vitest'
import { withStages } from '@/lib/draft/spec-name'
import { draftOf } from './talks'

const specsOf = (...said: readonly string[]): readonly string[] => draftOf('spec', ...said).map(({ text }) => text)
const toolsOf = (...said: readonly string[]): readonly string[] => draftOf('tool', ...said).map(({ text }) => text)

describe('[D14] a spec is named by the thing and what is measured of it', () => {
  test.for([
    ['thing and measure said as one', ['Set the tyre pressure to 36 psi cold.'], 'tyre pressure'],
    [
      'the thing, not the unit said before',
      ['Slide the drawer in, and torque the screws to twelve newton meters, no sorry, nine newton meters.'],
      'screw torque',
    ],
    [
      'what wears down by its thickness',
      ['Slide the old pads out.', 'If they are under three millimeters they are done.'],
      'pad thickness',
    ],
    ['by what the thing does', ['Tighten the belt until it deflects 8 to 10 millimeters.'], 'belt deflection'],
    [
      'what is poured in',
      ['Take the level plug out and top it up with 80W-90 gear oil.', 'From dry it takes 80 to 100 millilitres.'],
      'gear oil quantity',
    ],
    ['by what no lexicon has', ['Open the drain.', 'Cut-in should be 6 bar, plus or minus 0.3.'], 'cut-in pressure'],
    ['the whole job by its service', ['Oil the chain.', 'We do this every six months.'], 'service interval'],
    ['what goes on for a time', ['Let it drip for 10 minutes.'], 'dripping time'],
    ['a designation whole', ['Torque the M8 bolts to 25 newton metres.'], 'M8 bolt torque'],
  ] as const)('%s', ([, said, name]) => {
    expect(specsOf('Take the cover off.', ...said, 'Put the cover back on.')).toEqual([name])
  })

  test('an angle is no torque', () => {
    const [name] = specsOf('Take the cover off.', 'Torque the head bolts a further 90 degrees.')
    expect(name).toBe('head bolt angle')
  })

  test('passes of one sequence are told apart by their turn in it', () => {
    const pass = (turn: number, part?: number) => ({ name: 'head bolt torque', turn, part })
    const staged = ['head bolt torque, second stage', 'head bolt torque, third stage']
    expect(withStages([pass(1), pass(2)], 'In three stages, 30, 60, then 90.')).toEqual(staged)
    expect(withStages([pass(1, 1), pass(2, 2)], 'To 30, then 60, then 90.')).toEqual(staged)
    expect(withStages([pass(0), pass(1)], 'Long ones 30, short ones 60.')).toEqual([
      'head bolt torque',
      'head bolt torque',
    ])
  })
})

describe('[D7] tools by their names', () => {
  test('a driver’s designation is no size in millimetres', () => {
    expect(toolsOf('Take the cover off with the T25 driver.', 'Put the cover back on.')).toEqual(['T25 driver'])
  })

  test('what is bolted on is a part of the job', () => {
    const said = [
      'Grab a thirteen millimeter socket and take out the two bolts on the caliper.',
      'Careful, the caliper is heavy.',
    ]
    expect(toolsOf(...said)).toEqual(['13 mm socket'])
    expect(toolsOf('Measure the disc with a caliper.', 'Write it down.')).toEqual(['caliper'])
  })
})
