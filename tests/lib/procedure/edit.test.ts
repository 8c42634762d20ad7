import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { applyEdit, type Edit } from '@/lib/procedure/edit'
import { perform, redo, startHistory, undo } from '@/lib/procedure/history'
import type { Mark } from '@/lib/procedure/mark'
import { stepsInOrder } from '@/lib/procedure/place'
import { emptyProject, type Project } from '@/lib/procedure/project'
import { anyMark, anyProject } from '../../arbitraries'
import { caution, projectOf, step, tool } from '../../builders'

const ids = (project: Project) => stepsInOrder(project.marks).map(mark => mark.id)
const places = (project: Project) => stepsInOrder(project.marks).map(mark => mark.place)

const anyEdit = (project: Project, n: number): fc.Arbitrary<Edit> => {
  const id = fc.constantFrom(...project.marks.map(mark => mark.id), 'nobody')
  return fc.oneof(
    anyMark(`new${n}`).map((mark): Edit => ({ do: 'add-marks', marks: [mark] })),
    fc.tuple(id, fc.string()).map(([id, text]): Edit => ({ do: 'change-mark', id, to: { text } })),
    id.map((id): Edit => ({ do: 'change-mark', id, to: { kind: 'step' }, clear: ['level'] })),
    id.map((id): Edit => ({ do: 'drop-marks', ids: [id] })),
    id.map((id): Edit => ({ do: 'keep-marks', ids: [id] })),
    fc.tuple(id, fc.integer({ min: -2, max: 9 })).map(([id, place]): Edit => ({ do: 'move-step', id, place })),
    fc.string().map((title): Edit => ({ do: 'change-heading', to: { title } })),
    fc.string().map((reason): Edit => ({ do: 'waive', rule: 'spec-unit', reason })),
  )
}

test('[J3] a choice made again is no change: there is nothing to take back', () => {
  const project = projectOf(caution(3, 5, 'Hot', { id: 'c', level: 'warning', quantity: { low: 1 } }))
  const history = startHistory(applyEdit(project, { do: 'add-marks', marks: [] }))
  for (const edit of [
    { do: 'change-mark', id: 'c', to: { level: 'warning' } },
    { do: 'change-mark', id: 'c', to: { quantity: { low: 1 } }, clear: ['basis'] },
  ] satisfies Edit[])
    expect(perform(history, [edit])).toBe(history)
  expect(perform(history, [{ do: 'change-mark', id: 'c', clear: ['level'] }]).past).toHaveLength(1)
})

test('[J3] undoing every change gives the project as it was, redoing gives it as it became', () => {
  const run = anyProject().chain(project =>
    fc.tuple(
      fc.constant(project),
      fc.array(fc.nat(), { maxLength: 8 }).chain(list => fc.tuple(...list.map((_, n) => anyEdit(project, n)))),
    ),
  )
  fc.assert(
    fc.property(run, ([project, edits]) => {
      let history = startHistory(project)
      for (const edit of edits) history = perform(history, [edit])
      const became = history.present
      const changes = history.past.length
      for (let i = 0; i < changes; i++) history = undo(history)
      expect(history.present).toBe(project)
      for (let i = 0; i < changes; i++) history = redo(history)
      expect(history.present).toBe(became)
    }),
  )
})

test('[J4] after any edits the steps are numbered 1..n', () => {
  const run = anyProject().chain(project => fc.tuple(fc.constant(project), anyEdit(project, 0), anyEdit(project, 1)))
  fc.assert(
    fc.property(run, ([project, first, second]) => {
      const start = applyEdit(project, { do: 'add-marks', marks: [] })
      const after = applyEdit(applyEdit(start, first), second)
      expect(places(after)).toEqual(places(after).map((_, i) => i + 1))
    }),
  )
})

test('[J3] an edit of a mark that is gone changes nothing, and leaves nothing to undo', () => {
  const history = startHistory(projectOf(step(1, 2, 'Wipe the seat')))
  expect(perform(history, [{ do: 'change-mark', id: 'gone', to: { text: 'Wipe it' } }])).toBe(history)
})

describe('[J4] moving a step', () => {
  const four = applyEdit(emptyProject(), {
    do: 'add-marks',
    marks: [1, 2, 3, 4].map(n => step(n * 10, n * 10 + 5, `Do ${n}`, { id: `s${n}` })),
  })

  test('[J4] puts it at its place and leaves the order of the rest', () => {
    expect(ids(applyEdit(four, { do: 'move-step', id: 's4', place: 1 }))).toEqual(['s4', 's1', 's2', 's3'])
    expect(ids(applyEdit(four, { do: 'move-step', id: 's1', place: 3 }))).toEqual(['s2', 's3', 's1', 's4'])
    expect(ids(applyEdit(four, { do: 'move-step', id: 's2', place: 99 }))).toEqual(['s1', 's3', 's4', 's2'])
  })

  test('[J4] a new step goes where its time puts it', () => {
    const added = applyEdit(four, { do: 'add-marks', marks: [step(22, 24, 'Do 2b', { id: 's2b' })] })
    expect(ids(added)).toEqual(['s1', 's2', 's2b', 's3', 's4'])
  })

  test('[J4] a mark that stops being a step loses its place and closes the gap', () => {
    const changed = applyEdit(four, { do: 'change-mark', id: 's2', to: { kind: 'check' } })
    expect(places(changed)).toEqual([1, 2, 3])
    expect(changed.marks.find(mark => mark.id === 's2')).not.toHaveProperty('place')
  })
})

describe('[J6] drafting again', () => {
  const pencilled = { confidence: 0.7, reason: 'an order' }
  const drafted = [
    step(10, 15, 'Pull the cover off', { id: 'd1', said: 'pull the cover off', pencilled, place: 1 }),
    step(20, 25, 'Wipe the seat', { id: 'd2', said: 'and wipe the seat', pencilled, place: 2 }),
    tool(20, 25, '10 mm socket', { id: 'd3', said: 'a ten mil socket', step: 'd2', pencilled }),
  ]

  test('[J6] changes nothing that was kept and does not pencil it a second time', () => {
    const first = applyEdit(emptyProject(), { do: 'redraft', marks: drafted })
    const kept = applyEdit(first, { do: 'keep-marks', ids: ['d1'] })
    const mine = applyEdit(kept, { do: 'change-mark', id: 'd1', to: { text: 'Lift the cover off' } })
    const again = applyEdit(mine, { do: 'redraft', marks: drafted })
    expect(again.marks.filter(mark => mark.kind === 'step').map(mark => mark.text)).toEqual([
      'Lift the cover off',
      'Wipe the seat',
    ])
    expect(again.marks.find(mark => mark.kind === 'tool')?.step).toBe(
      again.marks.find(mark => mark.text === 'Wipe the seat')?.id,
    )
  })

  test('[J6] is no change where it brings nothing new', () => {
    const first = applyEdit(emptyProject(), { do: 'redraft', marks: drafted })
    expect(applyEdit(first, { do: 'redraft', marks: drafted })).toBe(first)
  })

  test('[J6] brings back nothing that was dropped', () => {
    const first = applyEdit(emptyProject(), { do: 'redraft', marks: drafted })
    const dropped = applyEdit(first, { do: 'drop-marks', ids: ['d2', 'd3'] })
    expect(applyEdit(dropped, { do: 'redraft', marks: drafted }).marks.map(mark => mark.text)).toEqual([
      'Pull the cover off',
    ])
  })
})

describe('[J6] drafting again beside a remedy’s step', () => {
  const pencilled = { confidence: 0.7, reason: 'an order' }
  const drafted = ['Pull the key out', 'Take the bolts out', 'Slide the pads in', 'Plug the battery in'].map(
    (text, i) => step(10 * i, 10 * i + 8, text, { id: `d${i + 1}`, said: text.toLowerCase(), pencilled, place: i + 1 }),
  )
  const first = applyEdit(emptyProject(), { do: 'redraft', marks: drafted })
  const texts = (project: Project) => stepsInOrder(project.marks).map(mark => mark.text)
  const withRemedy = (place: number, more: Partial<Mark> = {}) => {
    const test = step(20, 28, 'Check that the brake holds', { id: 'remedy', ...more })
    const added = applyEdit(first, { do: 'add-marks', marks: [test] })
    return applyEdit(added, { do: 'move-step', id: 'remedy', place })
  }
  const redraft: Edit = { do: 'redraft', marks: drafted }

  test.each([1, 2, 3, 4, 5])('[J6] takes no drafted step away and leaves the remedy’s at place %i', place => {
    const before = withRemedy(place)
    const after = applyEdit(before, redraft)
    expect(texts(after)).toEqual(texts(before))
    expect(places(after)).toEqual([1, 2, 3, 4, 5])
  })

  test('[J6] leaves it where it is pencilled with a question, and brings it back no more once dropped', () => {
    const before = withRemedy(5, { pencilled: { confidence: 0.5, reason: 'a remedy', question: 'Where to?' } })
    expect(texts(applyEdit(before, redraft))).toEqual(texts(before))
    const dropped = applyEdit(before, { do: 'drop-marks', ids: ['remedy'] })
    expect(texts(applyEdit(dropped, redraft))).toEqual(texts(first))
  })

  test('[J6] leaves it behind the step it followed, kept or drafted anew, moved or not', () => {
    const before = applyEdit(withRemedy(4), { do: 'keep-marks', ids: ['d3'] })
    expect(texts(applyEdit(before, redraft))).toEqual(texts(before))
    const renamed = drafted.map(mark => ({ ...mark, id: `new-${mark.id}` }))
    expect(texts(applyEdit(withRemedy(3), { do: 'redraft', marks: renamed }))).toEqual(texts(withRemedy(3)))
  })

  test('[J6] tells marks of a text without times by their words', () => {
    const untimed = drafted.map(mark => ({ ...mark, start: 0, end: 0 }))
    const again: Edit = { do: 'redraft', marks: untimed }
    const draft = applyEdit(emptyProject(), again)
    const added = applyEdit(draft, { do: 'add-marks', marks: [step(0, 0, 'Check that it holds', { id: 'remedy' })] })
    const before = applyEdit(applyEdit(added, { do: 'move-step', id: 'remedy', place: 3 }), {
      do: 'keep-marks',
      ids: ['d1'],
    })
    expect(texts(applyEdit(before, again))).toEqual(texts(before))
  })

  test('[J6] drafts by the time of what was said, whatever time a remedy took', () => {
    const atEnd = applyEdit(withRemedy(5), { do: 'keep-marks', ids: ['d4'] })
    expect(texts(applyEdit(atEnd, redraft))).toEqual(texts(atEnd))
  })
})

test('[J8] correcting words keeps what the file had and every time', () => {
  const cue = { start: 1, end: 3, text: 'torque it to new to meters' }
  const transcript = { name: 'a.vtt', form: 'webvtt' as const, cues: [cue] }
  const project: Project = { ...emptyProject(), recording: { footage: null, transcript } }
  const corrected = applyEdit(project, { do: 'correct-cue', cue: 0, text: 'torque it to newton metres' })
  expect(corrected.recording.transcript?.cues).toEqual([{ ...cue, corrected: 'torque it to newton metres' }])
  const back = applyEdit(corrected, { do: 'correct-cue', cue: 0, text: cue.text })
  expect(back.recording.transcript?.cues).toEqual([cue])
})

test('[J5] dropping a step lets its cautions find another by time', () => {
  const project = projectOf(step(10, 15, 'One', { id: 'a' }), caution(10, 12, 'Mind', { id: 'c', step: 'a' }))
  expect(applyEdit(project, { do: 'drop-marks', ids: ['a'] }).marks).toEqual([
    expect.not.objectContaining({ step: 'a' }),
  ])
})
