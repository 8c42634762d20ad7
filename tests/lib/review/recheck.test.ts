import fc from 'fast-check'
import { expect, test } from 'vitest'
import { applyEdit, type Edit } from '@/lib/procedure/edit'
import { KINDS } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import { reviewProject } from '@/lib/review/review'
import { NO_SHOP_RULES, type ShopRules } from '@/lib/review/shop'
import { SOUND } from './sound/all'

const TEXTS = [...new Set(SOUND.flatMap(({ project }) => project.marks.map(({ text }) => text)))]
const SHOP: ShopRules = {
  levels: { 'spec-no-tolerance': 'stop', 'no-verb-first': 'off' },
  phrases: [{ phrase: 'wash hands', where: 'oil', level: 'fix', why: 'house rule' }],
  hazards: [{ id: 'oil-mist', words: ['oil'], caution: 'Oil mist harms lungs; wear a mask', level: 'caution' }],
  names: [{ use: 'isolator', not: ['breaker', 'switch'] }],
}

/** An edit by chance; numbers choose among the marks that are there when it is applied. */
type Chance = {
  readonly what: number
  readonly at: number
  readonly to: number
  readonly text: string
  readonly value: number
}

const pick = <T>(list: readonly T[], at: number): T | undefined =>
  list.length === 0 ? undefined : list[at % list.length]

const fresh = (project: Project, { at, to, text, value }: Chance): Mark => {
  const start = Math.round((at % 3000) / 10)
  const kind = KINDS[to % KINDS.length] ?? 'step'
  const id = `${kind}-new-${at}-${to}-${project.marks.length}`
  const of = pick(
    project.marks.filter(mark => mark.kind === 'step'),
    value,
  )
  return {
    id,
    kind,
    start,
    end: start + 4,
    text,
    said: '',
    ...(kind === 'step' || of === undefined ? {} : { step: of.id }),
    ...(kind === 'spec' ? { quantity: { low: value, high: value + 2, unit: 'N.m' } } : {}),
    ...(kind === 'caution' ? { level: 'warning' as const } : {}),
  }
}

/** Every kind of edit the bench makes. */
const editFor = (project: Project, chance: Chance): Edit | undefined => {
  const { what, at, to, text, value } = chance
  const mark = pick(project.marks, at)
  const spec = pick(
    project.marks.filter(({ kind }) => kind === 'spec'),
    at,
  )
  const step = pick(
    project.marks.filter(({ kind }) => kind === 'step'),
    at,
  )
  const cues = project.recording.transcript?.cues.length ?? 0
  switch (what % 14) {
    case 0:
    case 1:
      return mark && { do: 'change-mark', id: mark.id, to: { text } }
    case 2:
      return (
        spec && { do: 'change-mark', id: spec.id, to: { quantity: { nominal: value, unit: value % 2 ? 'N.m' : 'mm' } } }
      )
    case 3:
      return spec && { do: 'change-mark', id: spec.id, clear: ['quantity', 'basis'] }
    case 4:
      return mark && { do: 'drop-marks', ids: [mark.id] }
    case 5:
      return step && { do: 'move-step', id: step.id, place: 1 + (to % 20) }
    case 6:
      return { do: 'add-marks', marks: [fresh(project, chance)] }
    case 7:
      return { do: 'change-heading', to: { title: text } }
    case 8:
      return { do: 'change-heading', to: { equipment: text, scope: value % 2 ? text : '' } }
    case 9:
      return (
        mark && { do: 'change-mark', id: mark.id, to: { start: mark.start + (value % 7), end: mark.end + (value % 5) } }
      )
    case 10:
      return mark && { do: 'change-mark', id: mark.id, ...(step ? { to: { step: step.id } } : { clear: ['step'] }) }
    case 11:
      return cues === 0
        ? { do: 'set-transcript', transcript: transcriptOf(project) }
        : { do: 'correct-cue', cue: at % cues, text }
    case 12: {
      const found = pick(reviewProject(project), to)
      return (
        found && {
          do: 'waive',
          rule: found.rule,
          reason: text,
          ...(found.place.at === 'mark' ? { mark: found.place.mark } : {}),
        }
      )
    }
    default:
      return { do: 'clear-interval' }
  }
}

const transcriptOf = ({ marks }: Project) => ({
  name: 'talk.vtt',
  form: 'webvtt' as const,
  cues: marks.slice(0, 12).map(({ start, end, text }) => ({ start, end, text: `${text}.` })),
})

const chance = fc.record({
  what: fc.nat(10_000),
  at: fc.nat(100_000),
  to: fc.nat(1000),
  text: fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...TEXTS) }, fc.string({ maxLength: 30 })),
  value: fc.integer({ min: 1, max: 90 }),
})

/** A project of the same content that shares nothing with the one given, so that nothing is remembered of it. */
const stranger = (project: Project): Project => structuredClone(project)

test.each([
  ['without rules of a shop', NO_SHOP_RULES],
  ['with a shop’s own rules', SHOP],
])(
  '[R12] a re-check after any edit gives what a review from nothing gives, %s',
  (_, rules) => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SOUND.map(({ project }) => project)),
        fc.array(chance, { minLength: 3, maxLength: 14 }),
        (first, chances) => {
          let project = first
          const seen = [{ project, findings: reviewProject(project, { rules }) }]
          for (const one of chances) {
            const edit = editFor(project, one)
            if (edit === undefined) continue
            project = applyEdit(project, edit)
            seen.push({ project, findings: reviewProject(project, { rules }) })
          }
          // Only now, so that the reviews above followed one another as they do at the bench.
          for (const { project: own, findings } of seen)
            expect(findings).toEqual(reviewProject(stranger(own), { rules }))
        },
      ),
      { numRuns: 25 },
    )
  },
  120_000,
)

test('[R12] undoing an edit gives the findings that were there before', () => {
  for (const { project } of SOUND) {
    const before = reviewProject(project)
    const step = project.marks.find(({ kind }) => kind === 'step')
    if (step === undefined) continue
    reviewProject(applyEdit(project, { do: 'drop-marks', ids: [step.id] }))
    expect(reviewProject(project)).toEqual(before)
  }
})
