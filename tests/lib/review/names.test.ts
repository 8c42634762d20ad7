import { describe, expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import { type SampleMark, type SampleMore, sample } from '@/lib/review/sample'

const at = (rule: string, marks: readonly SampleMark[], more: SampleMore = {}) =>
  reviewProject(sample(marks, more)).flatMap(finding =>
    finding.rule === rule && finding.place.at === 'mark' ? [finding.place.mark] : [],
  )

describe('one part under two names', () => {
  test('[R2] swung one way under the first and back under the second', () => {
    const lower: SampleMark = ['step', 'Swing the gate lever down']
    expect(at('several-names', [lower, ['step', 'Wipe the seat'], ['step', 'Swing the dump handle up']])).toEqual([
      'step-3',
    ])
    expect(
      at('several-names', [lower, ['step', 'Swing the gate lever up'], ['step', 'Swing the dump handle up']]),
    ).toEqual([])
  })

  test('[R2] a tool put to use and taken out as another', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Turn the drum with the turning bar'],
      ['tool', 'turning bar'],
    ]
    expect(at('several-names', [...marks, ['step', 'Take the winding handle out']])).toEqual(['step-3'])
    expect(at('several-names', [...marks, ['step', 'Take the turning bar out']])).toEqual([])
  })

  test('[R2] drawn out, listed new, and put in as something nobody listed', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Draw the felt pads out'],
      ['material', 'new felt pads'],
    ]
    expect(at('several-names', [...marks, ['step', 'Seat the soft discs in the cups']])).toEqual(['step-3'])
    expect(at('several-names', [...marks, ['step', 'Seat the new felt pads in the cups']])).toEqual([])
  })
})

describe('tools', () => {
  test('[R2] something is held against are listed', () => {
    const step: SampleMark = ['step', 'Undo the lock ring against the chain whip']
    expect(at('tool-not-listed', [step])).toEqual(['step-1'])
    expect(at('tool-not-listed', [step, ['tool', 'chain whip']])).toEqual([])
    expect(at('tool-not-listed', [['step', 'Push the slide against the plate']])).toEqual([])
  })

  test('[R2] of one purpose that is never served are not used, whatever is turned beside them', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Open the valve with the valve wrench'],
      ['tool', 'valve wrench'],
      ['step', 'Tighten the bolts with the valve wrench'],
    ]
    expect(at('tool-not-used', [...marks, ['tool', 'basin wrench']])).toEqual(['tool-4'])
    expect(at('tool-not-used', [...marks, ['tool', 'pipe cutter']])).toEqual(['tool-4'])
    expect(at('tool-not-used', [...marks, ['step', 'Undo the tap back nut'], ['tool', 'basin wrench']])).toEqual([])
  })
})
