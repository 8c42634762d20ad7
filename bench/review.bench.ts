import { applyEdit, type Edit } from '@/lib/procedure/edit'
import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import { reviewProject } from '@/lib/review/review'
import { SOUND } from '../tests/lib/review/sound/all'
import type { Bench, BenchRow } from './row'

const LENGTH = 6

/** Marks of one sound procedure, told once more from a moment on, with ids and words of their own. */
const again = (marks: readonly Mark[], round: number, from: number, place: number): readonly Mark[] => {
  let at = place
  const id = (old: string) => `${old}-${from}`
  return marks.map((mark, i): Mark => {
    const { step, ...rest } = mark
    const start = from + i * LENGTH
    return {
      ...rest,
      id: id(mark.id),
      text: round === 0 ? mark.text : `${mark.text}, bay ${round}`,
      start,
      end: start + LENGTH - 1,
      ...(step === undefined ? {} : { step: id(step) }),
      ...(mark.kind === 'step' ? { place: ++at } : {}),
    }
  })
}

/** The sound procedures of the tests, one after the other, until there are so many steps. */
export const longProject = (steps: number): Project => {
  const marks: Mark[] = []
  const [first] = SOUND
  if (first === undefined) throw new Error('there are no sound procedures')
  let count = 0
  for (let round = 0; count < steps; round++)
    for (const { project } of SOUND) {
      if (count >= steps) break
      marks.push(...again(project.marks, round, marks.length * LENGTH, count))
      count = marks.filter(({ kind }) => kind === 'step').length
    }
  const cues = marks.map(({ start, end, text }) => ({ start, end, text: `${text}.` }))
  const footage = { name: 'long.mp4', bytes: 1, seconds: marks.length * LENGTH, fingerprint: '' }
  return { ...first.project, marks, recording: { footage, transcript: { name: 'long.vtt', form: 'webvtt', cues } } }
}

const timed = (work: () => unknown): number => {
  const begun = performance.now()
  work()
  return performance.now() - begun
}

const middle = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0

/** Edits of every kind the bench makes, by what they change; `i` tells one round from the next. */
const EDITS: Readonly<Record<string, (project: Project, step: Mark, spec: Mark, i: number) => Edit>> = {
  'the text of a step': (_, step, __, i) => ({
    do: 'change-mark',
    id: step.id,
    to: { text: `${step.text}, and look at bolt ${i}` },
  }),
  'the value of a spec': (_, __, spec, i) => ({
    do: 'change-mark',
    id: spec.id,
    to: { quantity: { ...spec.quantity, low: 3 + (i % 5), high: 9 + (i % 5) } },
  }),
  'a step dropped': (_, step) => ({ do: 'drop-marks', ids: [step.id] }),
  'a step moved': (_, step, __, i) => ({ do: 'move-step', id: step.id, place: 1 + ((i * 31) % 400) }),
  'a caution added': (_, step, __, i) => ({
    do: 'add-marks',
    marks: [
      {
        id: `new-${i}`,
        kind: 'caution',
        start: step.start,
        end: step.end,
        text: `Parts of bay ${i} are hot and can burn; let them cool`,
        said: '',
        step: step.id,
        level: 'caution',
      },
    ],
  }),
  'a tool listed': (_, step, __, i) => ({
    do: 'add-marks',
    marks: [{ id: `tool-${i}`, kind: 'tool', start: step.start, end: step.end, text: `${i} mm spanner`, said: '' }],
  }),
  'the heading': (_, __, ___, i) => ({ do: 'change-heading', to: { scope: `Bay ${i} only` } }),
}

const WARM = 80
const ROUNDS = 90

/** Milliseconds of each re-check after one kind of edit, the first ones left out; between edits all is as it was. */
const recheckTimes = (project: Project, editFor: (typeof EDITS)[string]): readonly number[] => {
  const of = (kind: Mark['kind']) => project.marks.filter(mark => mark.kind === kind)
  const [steps, specs] = [of('step'), of('spec')]
  const times: number[] = []
  for (let i = 0; i < WARM + ROUNDS; i++) {
    const [step, spec] = [steps[(i * 7) % steps.length], specs[i % specs.length]]
    if (step === undefined || spec === undefined) continue
    reviewProject(project)
    const edited = applyEdit(project, editFor(project, step, spec, i))
    times.push(timed(() => reviewProject(edited)))
  }
  return times.slice(WARM)
}

const rows = async (): Promise<readonly BenchRow[]> => {
  const project = longProject(500)
  const whole = timed(() => reviewProject(project))
  const steps = project.marks.filter(({ kind }) => kind === 'step').length
  const all = Object.entries(EDITS).map(([what, editFor]) => ({ what, times: recheckTimes(project, editFor) }))
  const text = all[0]?.times ?? []
  const unchanged = Array.from({ length: ROUNDS }, () => timed(() => reviewProject(project)))
  return [
    { what: `review of ${steps} steps, first time`, value: whole, unit: 'ms' },
    ...all.flatMap(({ what, times }): readonly BenchRow[] => [
      { what: `re-check after an edit: ${what}, median`, value: middle(times), unit: 'ms', against: 'under 16 ms' },
      { what: `re-check after an edit: ${what}, fastest`, value: Math.min(...times), unit: 'ms' },
    ]),
    { what: 'the same project once more, median', value: middle(unchanged), unit: 'ms' },
    { what: 'first review over a re-check of a text', value: whole / middle(text), unit: 'x' },
  ]
}

/** How long the findings take to follow an edit. */
export const bench: Bench = { name: 'review', run: rows }
