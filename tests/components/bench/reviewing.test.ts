import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type FromReviewer,
  heardReview,
  openFindingsTeller,
  openProjectListener,
  openProjectTeller,
  type Reviewed,
  type ToReviewer,
} from '@/components/bench/reviewing'
import { applyEdit } from '@/lib/procedure/edit'
import { atMark, type Finding } from '@/lib/review/rule'
import { anyProject } from '../../arbitraries'
import { projectOf, step } from '../../builders'

/** As a worker gets it. */
const posted = <T>(message: T): T => structuredClone(message)

test('whatever projects follow one another, the reviewer puts each of them together as it is', () => {
  fc.assert(
    fc.property(fc.array(anyProject(6), { minLength: 1, maxLength: 6 }), projects => {
      const [tell, hear] = [openProjectTeller(), openProjectListener()]
      for (const project of projects) expect(hear(posted(tell(project)))).toEqual(project)
    }),
  )
})

test('of an edit only the changed mark is sent, and all others stay the same objects there', () => {
  const [tell, hear] = [openProjectTeller(), openProjectListener()]
  const transcript = { name: 'a.vtt', form: 'webvtt' as const, cues: [{ start: 0, end: 4, text: 'Loosen it.' }] }
  const marks = [step(0, 1, 'Loosen', { place: 1 }), step(1, 2, 'Lift', { place: 2 }), step(2, 3, 'Turn', { place: 3 })]
  const project = { ...projectOf(...marks), recording: { footage: null, transcript } }
  const first = hear(posted(tell(project)))
  const edited = applyEdit(project, { do: 'change-mark', id: marks[1]?.id ?? '', to: { text: 'Lift it' } })
  const told: ToReviewer = posted(tell(edited))
  expect([told.ids, told.transcript, told.changed]).toEqual([undefined, undefined, [edited.marks[1]]])
  const second = hear(told)
  expect(second).toEqual(edited)
  expect(second.recording.transcript).toBe(first.recording.transcript)
  expect(second.marks.map((mark, i) => mark === first.marks[i])).toEqual([true, false, true])
})

const finding = (mark: string, message: string): Finding => ({
  rule: 'a-rule',
  level: 'fix',
  place: atMark({ id: mark }),
  message,
})
const reviewed = (...findings: Finding[]): Reviewed => ({
  findings,
  coverage: { instructing: 4, covered: 2, share: 0.5, left: [] },
})
const NOTHING: Reviewed = { findings: [], coverage: { instructing: 0, covered: 0, share: 1, left: [] } }

test('what a new review finds alike stays the same object; what it says otherwise is the new one', () => {
  const tell = openFindingsTeller()
  const first = heardReview(NOTHING, posted(tell(reviewed(finding('a', 'no unit'), finding('b', 'no unit')))))
  const next = reviewed(finding('c', 'no verb'), finding('a', 'no unit'), finding('b', 'no basis'))
  const second = heardReview(first, posted(tell(next)))
  expect(second).toEqual(next)
  expect(second.findings[1]).toBe(first.findings[0])
})

test('a review that finds all as before says nothing, and the list stays the same one', () => {
  const tell = openFindingsTeller()
  const first = heardReview(NOTHING, posted(tell(reviewed(finding('a', 'no unit')))))
  const told: FromReviewer = tell(reviewed(finding('a', 'no unit')))
  expect(told).toEqual({})
  expect(heardReview(first, told).findings).toBe(first.findings)
  // One fewer is not as before.
  expect(heardReview(first, tell(reviewed())).findings).toEqual([])
})

test('a finding let stand is another than the one before it', () => {
  const tell = openFindingsTeller()
  const first = heardReview(NOTHING, tell(reviewed(finding('a', 'no unit'))))
  const waived = { ...finding('a', 'no unit'), waived: 'seen' }
  expect(heardReview(first, tell(reviewed(waived))).findings).toEqual([waived])
})
