import type { Mark } from '@/lib/procedure/mark'
import { stepOf } from '@/lib/procedure/sheet'
import type { Span } from '@/lib/procedure/time'
import type { Sighting, StepSighting } from './read-blocks'
import { reconcile } from './shown'
import { toLine } from './text'

/** A mark a hand wrote into a list or table at the front, with the number of the step it names. */
export type FrontSighting = Sighting & { readonly number?: number }

/** What stands in a sheet, section by section. */
export type Sightings = {
  readonly steps: readonly StepSighting[]
  readonly loose: readonly Sighting[]
  readonly front: readonly FrontSighting[]
}

export type Assembled = {
  readonly marks: readonly Mark[]
  readonly lines: ReadonlyMap<string, number>
  readonly fresh: readonly string[]
  /** Marks whose line has no time. */
  readonly untimed: readonly string[]
}

const stillOf = ({ read, alt }: Sighting): Pick<Mark, 'still'> | undefined => {
  const still = read.note?.more.still
  if (still === undefined) return undefined
  return { still: alt === undefined || alt === toLine(still.alt) ? still : { ...still, alt } }
}

const pencilOf = ({ read }: Sighting): Pick<Mark, 'pencilled'> | undefined => {
  if (!read.isFlagged) return undefined
  return { pencilled: read.note?.more.pencilled ?? { confidence: 0, reason: 'flagged by hand in the sheet' } }
}

/** Gives out ids: a note's own the first time it is seen, a made-up one to whatever has none or repeats one. */
const idGiver = (sightings: readonly Sighting[]) => {
  const noted = new Set(sightings.flatMap(({ read }) => read.note?.id ?? []))
  const given = new Set<string>()
  const fresh: string[] = []
  const idFor = ({ read }: Sighting): string => {
    const own = read.note?.id
    if (own !== undefined && !given.has(own)) {
      given.add(own)
      return own
    }
    let n = fresh.length + 1
    while (noted.has(`new-${n}`) || given.has(`new-${n}`)) n++
    fresh.push(`new-${n}`)
    given.add(`new-${n}`)
    return `new-${n}`
  }
  return { idFor, fresh }
}

const toMark = (id: string, sighting: Sighting, span: Span): Mark => {
  const { kind, read } = sighting
  const { text = '', ...fields } = reconcile(kind, read.shown, read.note?.fields ?? new Map())
  const capability = read.note?.more.capability
  return {
    id,
    kind,
    start: span.start,
    end: span.end,
    text,
    said: '',
    ...pencilOf(sighting),
    ...fields,
    ...(capability === undefined ? {} : { capability }),
    ...stillOf(sighting),
  }
}

/** Steps with ids, times and places. A step without a time gets the moment between its neighbours. */
const toSteps = (sightings: readonly StepSighting[], idFor: (sighting: Sighting) => string): readonly Mark[] => {
  let last = 0
  return sightings.map((sighting, i) => {
    const span = sighting.read.span ?? { start: last, end: last }
    last = span.end
    const { place, step } = sighting.read.note ?? {}
    const at = place?.shown === i + 1 ? place.place : i + 1
    const mark = toMark(idFor(sighting), sighting, span)
    return {
      ...mark,
      ...(at === undefined ? {} : { place: at }),
      ...(typeof step === 'object' ? { step: step.id } : {}),
    }
  })
}

/** The step a mark names: none where its time alone puts it under that step and its note does not tie it. A new mark always names it. */
const namedStep = (mark: Mark, sighting: Sighting, under: Mark, steps: readonly Mark[]): Pick<Mark, 'step'> => {
  const { note } = sighting.read
  const noted = note?.step
  if (note === undefined || noted === 'tied' || stepOf(mark, steps)?.id !== under.id) return { step: under.id }
  if (noted === undefined) return {}
  return { step: steps.some(step => step.id === noted.id) ? under.id : noted.id }
}

/** @returns the marks of a sheet, settled: ids, times, order, attachment. */
export const assemble = ({ steps, loose, front }: Sightings): Assembled => {
  const all: readonly Sighting[] = [...steps.flatMap(step => [step, ...step.owned]), ...loose, ...front]
  const { idFor, fresh } = idGiver(all)
  const lines = new Map<string, number>()
  const found = toSteps(steps, idFor)
  const inTime = [...found].sort((a, b) => a.start - b.start || a.end - b.end)
  const marks: Mark[] = []
  const untimed: string[] = []
  const add = (mark: Mark, sighting: Sighting) => {
    marks.push(mark)
    if (sighting.read.span === undefined) untimed.push(mark.id)
    lines.set(mark.id, sighting.line)
  }
  const placed = ({ read }: Sighting): Pick<Mark, 'place'> =>
    read.note?.place?.shown === 0 && read.note.place.place !== undefined ? { place: read.note.place.place } : {}
  for (const [i, sighting] of steps.entries()) {
    const step = found[i]
    if (step === undefined) continue
    add(step, sighting)
    for (const own of sighting.owned) {
      const mark = toMark(idFor(own), own, own.read.span ?? step)
      add({ ...mark, ...placed(own), ...namedStep(mark, own, step, inTime) }, own)
    }
  }
  for (const own of [...loose, ...front]) {
    const { number } = own as FrontSighting
    const step = number === undefined ? undefined : found[number - 1]
    const mark = toMark(idFor(own), own, own.read.span ?? step ?? found[0] ?? { start: 0, end: 0 })
    const noted = own.read.note?.step
    const named = typeof noted === 'object' ? { step: noted.id } : step === undefined ? {} : { step: step.id }
    add({ ...mark, ...placed(own), ...named }, own)
  }
  return { marks, lines, fresh, untimed }
}
