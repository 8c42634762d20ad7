import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { differenceOf } from '@/lib/procedure/difference'
import { applyEdit, type Edit } from '@/lib/procedure/edit'
import { quoted, shorten } from '@/lib/procedure/shorten'
import { caution, projectOf, step } from '../../builders'

const pencilled = { confidence: 0.9, reason: 'said' }
const project = projectOf(
  step(0, 4, 'Pull the plug.', { id: 'a', place: 1, pencilled }),
  step(4, 8, 'Take the lid off', { id: 'b', place: 2, pencilled }),
  step(8, 12, 'Lift the drum', { id: 'c', place: 3 }),
  caution(4, 6, 'Mind the spring', { id: 'd', step: 'b' }),
)

describe('the difference of two states', () => {
  test.each<[string, Edit, string, string | undefined]>([
    ['one kept', { do: 'keep-marks', ids: ['a'] }, 'step “Pull the plug” kept', 'a'],
    ['several kept', { do: 'keep-marks', ids: ['a', 'b'] }, '2 marks kept', undefined],
    ['one dropped', { do: 'drop-marks', ids: ['c'] }, 'step “Lift the drum” taken out', 'c'],
    ['one dropped that others belong to', { do: 'drop-marks', ids: ['b'] }, 'step “Take the lid off” taken out', 'b'],
    [
      'one changed',
      { do: 'change-mark', id: 'd', to: { text: 'Mind it', level: 'danger' } },
      'caution “Mind it” changed (words, signal word)',
      'd',
    ],
    ['one moved', { do: 'move-step', id: 'c', place: 1 }, 'step “Lift the drum” moved from place 3 to place 1', 'c'],
    [
      'one moved up by one',
      { do: 'move-step', id: 'c', place: 2 },
      'step “Lift the drum” now stands before “Take the lid off”',
      'c',
    ],
    [
      'one moved down by one',
      { do: 'move-step', id: 'a', place: 2 },
      'step “Take the lid off” now stands before “Pull the plug”',
      'b',
    ],
    ['the head', { do: 'change-heading', to: { title: 'Drum' } }, 'the head changed', undefined],
    ['a release', { do: 'change-heading', to: { revision: 'A' } }, 'revision set to “A”', undefined],
    [
      'a waiver',
      { do: 'waive', rule: 'no-interval', reason: 'Done once only.' },
      'finding let stand: “Done once only”',
      undefined,
    ],
  ])('[J10] is told in words: %s', (_, edit, words, mark) => {
    expect(differenceOf(project, applyEdit(project, edit))).toEqual({ words, ...(mark === undefined ? {} : { mark }) })
  })

  test('[J10] taken back is told as well', () => {
    const kept = applyEdit(project, { do: 'keep-marks', ids: ['a'] })
    expect(differenceOf(kept, project).words).toBe('step “Pull the plug” pencilled again')
    const dropped = applyEdit(project, { do: 'drop-marks', ids: ['b'] })
    expect(differenceOf(dropped, project)).toEqual({ words: 'step “Take the lid off” added', mark: 'b' })
    expect(differenceOf(project, project)).toEqual({ words: '' })
  })
})

describe('a text in little room', () => {
  test('[J10] keeps whole words, and a quote has no full stop of its own', () => {
    expect(shorten('Loosen the two anvil nuts', 20)).toBe('Loosen the two…')
    expect(shorten('Loosen the two', 14)).toBe('Loosen the two')
    expect(quoted('Loosen the two anvil nuts.')).toBe('“Loosen the two anvil nuts”')
  })

  test('[J10] is never longer than its room, and never empty', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), fc.integer({ min: 2, max: 40 }), (text, most) => {
        const short = shorten(text, most)
        expect([...short].length).toBeLessThanOrEqual(most)
        expect(short).not.toBe('')
      }),
    )
  })
})
