import { describe, expect, test } from 'vitest'
import { applyEdit } from '@/lib/procedure/edit'
import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import { cautionParts } from '@/lib/review/caution-parts'
import { reviewProject } from '@/lib/review/review'
import { needsLater } from '@/lib/review/rules/needs-later'
import { preparationLate } from '@/lib/review/rules/preparation-late'
import { runUnready } from '@/lib/review/rules/run-unready'
import { stepLate } from '@/lib/review/rules/step-late'
import { type SampleMark, sample } from '@/lib/review/sample'

const step = (text: string, start: number): SampleMark => ['step', text, { start, end: start + 5, said: text }]
const found = (project: Project, rule: string) => reviewProject(project).filter(finding => finding.rule === rule)
const told = (mark: Mark) => ({ start: mark.start, end: mark.end, text: mark.text })

describe('[R2] a sheet may have another order than the talk', () => {
  test.each([stepLate, preparationLate, needsLater, runUnready])('where a remedy of $id moved the step', rule => {
    const { trips } = rule
    const transcript = { name: 'sample.vtt', form: 'webvtt' as const, cues: trips.marks.map(told) }
    const project = { ...trips, recording: { ...trips.recording, transcript } }
    const [finding] = found(project, rule.id)
    const done = (finding?.remedy?.edits ?? []).reduce(applyEdit, project)
    expect(done).not.toEqual(project)
    expect(found(done, 'order-unlike-talk')).toEqual([])
  })

  const talk = ['Take the cover off.', 'Look.', 'Oh, I should have said, photograph the wiring.', 'Label each lead.']

  test('where the speaker tells several steps late, one after the other', () => {
    const late = [step('Photograph the wiring', 10), step('Label each lead', 15), step('Drain the tank', 20)]
    const project = sample([...late, step('Take the cover off', 0)], { talk: [...talk, 'Drain the tank.'] })
    expect(found(project, 'order-unlike-talk')).toEqual([])
  })

  test('but not where a step told later slipped', () => {
    const project = sample(
      [
        step('Photograph the wiring', 10),
        step('Take the cover off', 0),
        step('Drain the tank', 25),
        step('Label each lead', 20),
      ],
      { talk: [...talk.slice(0, 3), 'Look.', 'Label each lead.', 'Drain the tank.'] },
    )
    expect(found(project, 'order-unlike-talk')).toHaveLength(1)
  })

  test('steps moved together are told once', () => {
    const project = sample(
      [
        step('Photograph the wiring', 20),
        step('Label each lead', 25),
        step('Take the cover off', 0),
        step('Undo the strap', 5),
        step('Lift the tank', 10),
      ],
      {
        talk: [
          'Take the cover off.',
          'Undo the strap.',
          'Lift the tank.',
          'Look.',
          'Photograph the wiring.',
          'Label each lead.',
        ],
      },
    )
    expect(found(project, 'order-unlike-talk').map(({ message }) => message)).toEqual([
      'Steps 1 to 2, from "Photograph the wiring" on, stand before step 3, "Take the cover off"; the talk tells them the other way round. Check that it is meant so.',
    ])
  })

  test('and a step moved to the end takes its warning along', () => {
    const talked = [
      'Take the cover off.',
      'The ribbon tears at a glance.',
      'Wipe the tray.',
      'Look.',
      'Fold the ribbon.',
      'Wind the ribbon.',
    ]
    const marks = (start: number): SampleMark[] => [
      step('Take the cover off', 0),
      step('Fold the ribbon', 20),
      step('Wind the ribbon', 25),
      step('Wipe the tray', start),
      ['caution', 'The ribbon tears at a glance', { start: 5, end: 10, level: 'notice' }],
    ]
    expect(found(sample(marks(10), { talk: talked }), 'caution-late')).toEqual([])
    expect(found(sample(marks(30), { talk: [...talked, 'Wipe the tray.'] }), 'caution-late')).toHaveLength(1)
  })
})

test('[R2] a caution with a long run of numbers is read in no more ways than it has words', () => {
  const numbers = Array.from({ length: 60 }, (_, i) => i + 10).join(' ')
  expect(cautionParts(`Keep it at ${numbers} bar`).consequence).toBeUndefined()
})
