import { describe, expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import { type SampleMark, type SampleMore, sample } from '@/lib/review/sample'

const rules = (marks: readonly SampleMark[], more: SampleMore = {}) =>
  new Set(reviewProject(sample(marks, more)).map(({ rule }) => rule))
const spec = (text: string, low: number, high: number, unit: string): SampleMark => [
  'spec',
  text,
  { quantity: { low, high, unit } },
]
/** Whether a spec of a machine can hardly be meant. */
const isDoubted = (mark: SampleMark, equipment = 'bench machine') =>
  rules([['step', 'Measure it'], mark], { heading: { equipment } }).has('spec-implausible')

describe('values that the machine rules out', () => {
  test('[R2] a pressure no such line holds', () => {
    expect(isDoubted(spec('line pressure', 150, 180, 'bar'), 'greenhouse sprinkler line')).toBe(true)
    expect(isDoubted(spec('line pressure', 1.5, 1.8, 'bar'), 'greenhouse sprinkler line')).toBe(false)
    expect(isDoubted(spec('cylinder pressure', 150, 180, 'bar'), 'beer cooler with gas bottle')).toBe(false)
  })

  test('[R2] a voltage many times that of the supply, unless it is high by nature', () => {
    expect(isDoubted(spec('rack voltage', 40, 44, 'kV'), 'emergency light rack, 230 V, ten 12 V batteries')).toBe(true)
    expect(isDoubted(spec('rack voltage', 110, 140, 'V'), 'emergency light rack, 230 V, ten 12 V batteries')).toBe(
      false,
    )
    expect(isDoubted(spec('ignition voltage', 14, 18, 'kV'), 'oil burner, 230 V')).toBe(false)
  })

  test('[R2] a torque no such nut takes', () => {
    expect(isDoubted(spec('wing nut torque', 90, 100, 'N.m'))).toBe(true)
    expect(isDoubted(spec('knife bolt torque', 900, 950, 'N.m'))).toBe(true)
    expect(isDoubted(spec('lug nut torque', 130, 150, 'N.m'))).toBe(false)
  })

  test('[R2] a torque beyond the thread an inch socket turns', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Back the arbor nut off'],
      ['tool', '3/4 in socket'],
      ['step', 'Tighten the arbor nut'],
    ]
    expect(rules([...marks, spec('arbor nut torque', 700, 750, 'N.m')])).toContain('spec-torque')
    expect(rules([...marks, spec('arbor nut torque', 80, 90, 'N.m')])).not.toContain('spec-torque')
  })
})

describe('names that end in something else than they begin with', () => {
  test.each([
    spec('pressure hold time', 5, 6, 'min'),
    spec('torque recheck interval', 40, 50, 'h'),
    spec('winding resistance difference', 1, 2, '%'),
    spec('cell voltage difference', 0.02, 0.05, 'V'),
    spec('draught pressure', 2, 3, 'mm'),
    spec('valve stem height', 40, 42, 'mm'),
    spec('vacuum pressure', -0.7, -0.6, 'bar'),
  ])('[R3] %j is no slip', (...mark) => {
    expect(isDoubted(mark as unknown as SampleMark)).toBe(false)
  })

  test('[R2] a pressure in minutes is one', () => {
    expect(isDoubted(spec('oil pressure at idle', 2, 3, 'min'))).toBe(true)
  })
})

describe('tools and figures', () => {
  test('[R3] a jug for one liquid is not asked to measure the other', () => {
    const jug: SampleMark = ['tool', 'jug', { capability: { range: { low: 0, high: 5, unit: 'L' } } }]
    const marks: readonly SampleMark[] = [
      ['step', 'Fill the vat with water to its lines'],
      spec('water in the vat', 70, 80, 'L'),
      ['step', 'Add the soda with the jug'],
      spec('soda', 3, 4, 'L'),
    ]
    expect(rules([...marks, jug])).not.toContain('tool-cannot-verify')
    expect(rules([...marks.slice(0, 2), jug])).toContain('tool-cannot-verify')
  })

  test('[R3] the size of a spanner is said once for all its uses', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Undo the clamp bolt with the 5 mm hex key'],
      ...['Wipe the bar', 'Wipe the post', 'Wipe the ring', 'Wipe the nut'].map(text => ['step', text] as const),
      ['step', 'Undo the stem bolt with the 5 mm hex key'],
    ]
    const talk = ['Undo the clamp bolt, 5 mil hex key.', 'Bar.', 'Post.', 'Ring.', 'Nut.', 'Stem bolt, same key.']
    expect(rules(marks, { talk })).not.toContain('number-not-said')
    expect(rules(marks, { talk: ['Undo the clamp bolt, 6 mil hex key.', ...talk.slice(1)] })).toContain(
      'number-not-said',
    )
  })

  test('[R3] how long a wheel coasts is no limit of the job', () => {
    const talk = ['Stop the saw.', 'The blade coasts for more than two minutes and can bite.']
    expect(rules([['step', 'Stop the saw']], { talk })).not.toContain('limit-not-marked')
  })
})

describe('the order of the steps', () => {
  test('[R2] gloves and spark plug boot come before the blade', () => {
    const gloves: SampleMark = ['step', 'Pull the leather gloves on']
    const knife: SampleMark = ['step', 'Draw the worn knives out of the head']
    expect(rules([knife, gloves])).toContain('preparation-late')
    expect(rules([gloves, knife])).not.toContain('preparation-late')
    const boot: SampleMark = ['step', 'Lift the cap off the spark plug']
    const tines: SampleMark = ['step', 'Unbolt the tines']
    expect(rules([tines, boot])).toContain('preparation-late')
    expect(rules([boot, tines])).not.toContain('preparation-late')
  })

  test('[R2] a part of the guard that is off counts as the guard', () => {
    const off: SampleMark = ['step', 'Unscrew the front half of the guard']
    const on: SampleMark = ['step', 'Screw the front half of the guard on']
    const run: SampleMark = ['step', 'Run the machine for a minute']
    expect(rules([off, run, on])).toContain('run-unready')
    expect(rules([off, on, run])).not.toContain('run-unready')
  })

  test('[R3] what is poured away fills nothing', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Unscrew the drain plug'],
      ['step', 'Pour the rinse water into the gully'],
      ['step', 'Screw the drain plug in'],
    ]
    expect(rules(marks)).not.toContain('run-unready')
  })
})
