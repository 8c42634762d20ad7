import { applyEdit } from '@/lib/procedure/edit'
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

const rows = async (): Promise<readonly BenchRow[]> => {
  let project = longProject(500)
  const whole = timed(() => reviewProject(project))
  const steps = project.marks.filter(({ kind }) => kind === 'step')
  const times: number[] = []
  for (let i = 0; i < 120; i++) {
    const step = steps[(i * 7) % steps.length]
    if (step === undefined) continue
    const edited = applyEdit(project, {
      do: 'change-mark',
      id: step.id,
      to: { text: `${step.text}, and look at bolt ${i}` },
    })
    times.push(timed(() => reviewProject(edited)))
    project = applyEdit(edited, { do: 'change-mark', id: step.id, to: { text: step.text } })
  }
  const warm = times.slice(40)
  return [
    { what: `review of ${steps.length} steps, first time`, value: whole, unit: 'ms' },
    {
      what: `re-check after an edit of ${steps.length} steps, median`,
      value: middle(warm),
      unit: 'ms',
      against: 'under 16 ms',
    },
    { what: 're-check after an edit, fastest', value: Math.min(...warm), unit: 'ms', against: 'under 16 ms' },
    { what: 'first review over a re-check', value: whole / middle(warm), unit: 'x' },
  ]
}

/** How long the findings take to follow an edit. */
export const bench: Bench = { name: 'review', run: rows }
