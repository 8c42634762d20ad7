import type { Kind } from './kinds'
import type { Mark } from './mark'
import { numbered, renumber, stepsInOrder } from './place'
import type { Project } from './project'
import { type Span, sharedTime } from './time'
import { without } from './without'

/** What stands already, so that it is not drafted a second time. */
type Settled = Span & { readonly kind: Kind; readonly text: string; readonly said?: string }

const overlaps = (a: Span, b: Span): boolean => sharedTime(a, b) > 0.5 * Math.min(a.end - a.start, b.end - b.start)

/** Text without times: all marks stand at nought, and only their words tell them apart. */
const isUntimed = ({ end }: Span): boolean => end === 0

const saysTheSame = (settled: Settled, mark: Mark): boolean =>
  settled.text.toLowerCase() === mark.text.toLowerCase() || (mark.said !== '' && settled.said === mark.said)

const isListed = (kind: Kind): boolean => kind === 'tool' || kind === 'material'

/**
 * Whether a mark is made of no words of the talk: a remedy's or one put in by hand, whose span only says beside what it
 * stands. Every drafted mark carries its words.
 */
const isWordless = (mark: { readonly said?: string }): boolean => mark.said === ''

/** Whether a drafted mark is there already: what is listed by its name, what was said by its span, the rest by its text. */
const isSettledBy =
  (mark: Mark) =>
  (settled: Settled): boolean => {
    if (settled.kind !== mark.kind) return false
    if (isListed(mark.kind) || isWordless(settled)) return settled.text.toLowerCase() === mark.text.toLowerCase()
    return isUntimed(mark) ? saysTheSame(settled, mark) : overlaps(settled, mark)
  }

/** Gives marks ids that are not taken: their own where they can. */
const freshIds = (marks: readonly Mark[], taken: Set<string>): ReadonlyMap<string, string> => {
  const ids = new Map<string, string>()
  for (const mark of marks) {
    let id = mark.id
    for (let n = 2; taken.has(id); n++) id = `${mark.id}-${n}`
    taken.add(id)
    ids.set(mark.id, id)
  }
  return ids
}

/** The step that now says what `old` said: itself, else the one that shares most of its time. */
const successorOf = (old: Mark, steps: readonly Mark[]): number => {
  const same = steps.findIndex(({ id, said, text }) => id === old.id && (said === old.said || text === old.text))
  if (same >= 0) return same
  if (isUntimed(old)) return steps.findIndex(step => saysTheSame(step, old))
  const shared = steps.map(step => (isWordless(step) ? 0 : sharedTime(step, old)))
  const most = Math.max(0, ...shared)
  return most === 0 ? -1 : shared.indexOf(most)
}

/** Puts the steps that are made of no words back where they stood: behind the step they followed, or in front of all. */
const putBack = (before: Project, project: Project): Project => {
  const order = stepsInOrder(before.marks)
  const worded = project.marks.filter(mark => !isWordless(mark))
  const steps = [...stepsInOrder(renumber({ ...project, marks: worded }).marks)]
  order.forEach((step, i) => {
    if (!isWordless(step) || !project.marks.includes(step)) return
    const followed = order.slice(0, i).reverse()
    const at = followed.map(old => successorOf(old, steps)).find(found => found >= 0)
    steps.splice((at ?? -1) + 1, 0, step)
  })
  return numbered(project, steps)
}

/** Whether drafting again brought nothing new: there is then nothing to take back. */
const holdsTheSame = (before: Project, after: Project): boolean => {
  const sorted = ({ marks }: Project) => JSON.stringify([...marks].sort((a, b) => (a.id < b.id ? -1 : 1)))
  return before.marks.length === after.marks.length && sorted(before) === sorted(after)
}

/**
 * A fresh draft replaces what was drafted and is pencilled still. What was kept or dropped stays as it is and is not drafted
 * a second time; what is made of no words of the talk stays where it was put and takes the place of none.
 *
 * @returns the project, steps numbered 1..n; the same project where nothing new was drafted
 */
export const redraft = (project: Project, drafted: readonly Mark[]): Project => {
  const kept = project.marks.filter(mark => mark.pencilled === undefined || isWordless(mark))
  const settled: readonly Settled[] = [...kept, ...(project.dropped ?? [])]
  const fresh = drafted.filter(mark => !settled.some(isSettledBy(mark)))
  const ids = freshIds(fresh, new Set(kept.map(mark => mark.id)))
  const keptSteps = kept.filter(mark => mark.kind === 'step' && !isWordless(mark))
  const stepFor = (mark: Mark): { step: string } | undefined => {
    if (mark.step === undefined) return undefined
    const id = ids.get(mark.step)
    if (id !== undefined) return { step: id }
    const original = drafted.find(other => other.id === mark.step)
    const twin =
      original &&
      keptSteps.find(other => (isUntimed(original) ? saysTheSame(other, original) : overlaps(other, original)))
    return twin && { step: twin.id }
  }
  const marks = fresh.map(mark => {
    const { step: _, ...rest } = mark
    return {
      ...(keptSteps.length > 0 && mark.kind === 'step' ? without(rest as Mark, ['place']) : rest),
      id: ids.get(mark.id) ?? mark.id,
      ...stepFor(mark),
    }
  })
  const redrafted = renumber(putBack(project, { ...project, marks: [...kept, ...marks] }))
  return holdsTheSame(project, redrafted) ? project : redrafted
}
