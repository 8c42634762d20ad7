import { type Kind, LEVELS } from './kinds'
import type { Mark } from './mark'
import { stepsInOrder } from './place'
import type { Heading, Project, Waiver } from './project'
import { gapBetween, sharedTime } from './time'

/** One numbered step with all that belongs to it. Cautions stand before the action. */
export type SheetStep = {
  /** Counted from 1, in procedure order. */
  readonly number: number
  readonly mark: Mark
  readonly cautions: readonly Mark[]
  readonly specs: readonly Mark[]
  readonly checks: readonly Mark[]
  readonly reasons: readonly Mark[]
  readonly symptoms: readonly Mark[]
  readonly tools: readonly Mark[]
  readonly materials: readonly Mark[]
}

/** The ordered procedure, cautions attached: what every publication is written from. */
export type Sheet = {
  readonly heading: Heading
  /** Name and duration (seconds) of the footage, if there is any. */
  readonly footage: { readonly name: string; readonly seconds: number } | null
  /** Every caution, gravest first, then in procedure order: the safety summary. */
  readonly safety: readonly Mark[]
  /** Tools and materials, each name once (the first mark of that name). */
  readonly tools: readonly Mark[]
  readonly materials: readonly Mark[]
  /** Every spec in procedure order. */
  readonly specs: readonly Mark[]
  readonly steps: readonly SheetStep[]
  /** Marks that belong to no step, because there is none. */
  readonly loose: readonly Mark[]
  /** Every symptom, for a fault list. */
  readonly symptoms: readonly Mark[]
  readonly waivers: readonly Waiver[]
  /** How many of the marks nobody has kept yet. */
  readonly pencilled: number
}

/**
 * The step a mark belongs to: the one it names; else the step it shares most time with; else, for a caution, the
 * nearest step (the following one on a tie), and for every other kind the last step begun before it.
 *
 * @param steps in order of start
 * @returns undefined only where there are no steps
 */
export const stepOf = (mark: Mark, steps: readonly Mark[]): Mark | undefined => {
  const named = steps.find(step => step.id === mark.step)
  if (named !== undefined) return named
  let best: Mark | undefined
  for (const step of steps) if (sharedTime(step, mark) > (best === undefined ? 0 : sharedTime(best, mark))) best = step
  if (best !== undefined) return best
  if (mark.kind === 'caution')
    return steps.reduce<Mark | undefined>(
      (near, step) => (near === undefined || gapBetween(step, mark) <= gapBetween(near, mark) ? step : near),
      undefined,
    )
  return steps.findLast(step => step.start <= mark.start) ?? steps[0]
}

const byTime = (a: Mark, b: Mark): number => a.start - b.start || a.end - b.end

const onceEach = (marks: readonly Mark[]): readonly Mark[] => {
  const seen = new Set<string>()
  return marks.filter(mark => {
    const name = mark.text.trim().toLowerCase()
    if (seen.has(name)) return false
    seen.add(name)
    return true
  })
}

const gravity = (mark: Mark): number => LEVELS.indexOf(mark.level ?? 'caution')

const NONE: readonly Mark[] = []
const NOTHING_OWNED = {
  cautions: NONE,
  specs: NONE,
  checks: NONE,
  reasons: NONE,
  symptoms: NONE,
  tools: NONE,
  materials: NONE,
}

/**
 * The ordered sheet of a project. Total and pure: the same project gives the same sheet.
 *
 * @param project any valid project
 */
export const toSheet = (project: Project): Sheet => {
  const { marks } = project
  const order = stepsInOrder(marks)
  const inTime = [...order].sort(byTime)
  const rest = marks.filter(mark => mark.kind !== 'step').sort(byTime)
  const owned = new Map<string, Mark[]>(order.map(step => [step.id, []]))
  const byId = new Map(order.map(step => [step.id, step]))
  const loose: Mark[] = []
  for (const mark of rest) {
    const step = (mark.step === undefined ? undefined : byId.get(mark.step)) ?? stepOf(mark, inTime)
    const list = owned.get(step?.id ?? '')
    if (list === undefined) loose.push(mark)
    else list.push(mark)
  }
  const steps = order.map((mark, i): SheetStep => {
    const own = owned.get(mark.id) ?? []
    if (own.length === 0) return { number: i + 1, mark, ...NOTHING_OWNED }
    const of = (kind: Kind) => own.filter(other => other.kind === kind)
    return {
      number: i + 1,
      mark,
      cautions: of('caution').sort((a, b) => gravity(a) - gravity(b)),
      specs: of('spec'),
      checks: of('check'),
      reasons: of('reason'),
      symptoms: of('symptom'),
      tools: of('tool'),
      materials: of('material'),
    }
  })
  const looseOf = (kind: Kind) => loose.filter(mark => mark.kind === kind)
  const { footage } = project.recording
  return {
    heading: project.procedure,
    footage: footage === null ? null : { name: footage.name, seconds: footage.seconds },
    safety: [...looseOf('caution'), ...steps.flatMap(step => step.cautions)].sort((a, b) => gravity(a) - gravity(b)),
    tools: onceEach(rest.filter(mark => mark.kind === 'tool')),
    materials: onceEach(rest.filter(mark => mark.kind === 'material')),
    specs: [...looseOf('spec'), ...steps.flatMap(step => step.specs)],
    steps,
    loose,
    symptoms: [...looseOf('symptom'), ...steps.flatMap(step => step.symptoms)],
    waivers: project.waivers,
    pencilled: marks.filter(mark => mark.pencilled !== undefined).length,
  }
}
