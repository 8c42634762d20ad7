import { expect, test } from 'vitest'
import { toldOf } from '@/components/bench/told'
import { perform, redo, startHistory, undo } from '@/lib/procedure/history'
import { projectOf, step } from '../../builders'

const pencilled = { confidence: 0.9, reason: 'said' }
const start = startHistory(
  projectOf(step(0, 4, 'Pull the plug', { id: 'a', pencilled }), step(4, 8, 'Lift the lid', { id: 'b', pencilled })),
)
const kept = perform(start, [{ do: 'keep-marks', ids: ['a', 'b'] }])
const dropped = perform(kept, [{ do: 'drop-marks', ids: ['b'] }])

test('a change says what it did, so that what was said before does not stay', () => {
  expect(toldOf(start, kept)).toEqual({ text: '2 marks kept.' })
  expect(toldOf(kept, dropped)).toEqual({ text: 'Step “Lift the lid” taken out.' })
  expect(toldOf(kept, kept)).toBeUndefined()
})

test('undoing and redoing say what, and name the mark', () => {
  expect(toldOf(dropped, undo(dropped))).toEqual({
    text: 'Undone: step “Lift the lid” taken out. Ctrl + Shift + Z does it again.',
    mark: 'b',
  })
  expect(toldOf(undo(dropped), redo(undo(dropped)))).toEqual({
    text: 'Done again: step “Lift the lid” taken out.',
    mark: 'b',
  })
})

test('while a field is written nothing is said, and what was said goes', () => {
  const typed = perform(kept, [{ do: 'change-mark', id: 'a', to: { text: 'Pull it' } }], 'field')
  expect(toldOf(kept, typed)).toEqual({ text: '' })
})
