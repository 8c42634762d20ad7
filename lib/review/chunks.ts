import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { onceFor } from './memo'
import type { Found } from './rule'
import type { Subject } from './subject'

/** Entries a chunk: an edit disturbs one chunk, and rules look at thirty of them in 500 steps. */
const SIZE = 16
/** A chunk that an edit lets grow is cut from here on. */
const MOST = 24

const isAt = <T>(chunk: readonly T[], list: readonly T[], at: number): boolean =>
  at >= 0 && at + chunk.length <= list.length && chunk.every((entry, i) => entry === list[at + i])

/** Cuts a stretch of a list into chunks of about one size. */
const cut = <T>(list: readonly T[], from: number, to: number): readonly (readonly T[])[] => {
  const count = to - from <= MOST ? 1 : Math.ceil((to - from) / SIZE)
  return to <= from
    ? []
    : Array.from({ length: count }, (_, i) =>
        list.slice(from + Math.round(((to - from) * i) / count), from + Math.round(((to - from) * (i + 1)) / count)),
      )
}

/**
 * Cuts lists into chunks that keep their identity from one list to the next as long as their entries do, wherever an entry
 * added or dropped before them puts them.
 *
 * @returns a cutter that remembers the last list it cut
 */
export const cutter = <T>(): ((list: readonly T[]) => readonly (readonly T[])[]) => {
  let lastList: readonly T[] = []
  let last: readonly (readonly T[])[] = []
  return list => {
    if (list === lastList) return last
    let [first, from, end, to] = [0, 0, last.length, list.length]
    for (let chunk = last[first]; chunk !== undefined && isAt(chunk, list, from); chunk = last[++first])
      from += chunk.length
    for (let chunk = last[end - 1]; end > first && chunk !== undefined; chunk = last[--end - 1]) {
      if (to - chunk.length < from || !isAt(chunk, list, to - chunk.length)) break
      to -= chunk.length
    }
    last = [...last.slice(0, first), ...cut(list, from, to), ...last.slice(end)]
    lastList = list
    return last
  }
}

/** `flat` and `flatMap` cost several times as much. */
const joined = <T>(lists: readonly (readonly T[])[]): readonly T[] => {
  const all: T[] = []
  for (const list of lists) for (const value of list) all.push(value)
  return all
}

const joinedOf = <V, T>(values: readonly V[], of: (value: V) => readonly T[]): readonly T[] => {
  const all: T[] = []
  for (const value of values) for (const own of of(value)) all.push(own)
  return all
}

/** @returns what chunks give, joined; asked again only for those that were not there the last time. */
export const joining = <C extends object, T>(
  of: (chunk: C) => readonly T[],
): ((chunks: readonly C[]) => readonly T[]) => {
  let last: readonly C[] = []
  let known = new Map<C, readonly T[]>()
  let all: readonly T[] = []
  return chunks => {
    if (chunks === last) return all
    last = chunks
    known = new Map(chunks.map(chunk => [chunk, known.get(chunk) ?? of(chunk)]))
    all = joined([...known.values()])
    return all
  }
}

/** A step but for where it stands. */
export type StepBody = Omit<SheetStep, 'number'>

const LISTS = ['cautions', 'specs', 'checks', 'reasons', 'symptoms', 'tools', 'materials'] as const

/** @returns whether two lists hold the very same entries */
export const isSameList = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a === b || (a.length === b.length && a.every((value, i) => value === b[i]))

type Steady = { readonly step: SheetStep; readonly body: StepBody }
let lastOf = new Map<Mark, Steady>()

const steadyOf = (step: SheetStep): Steady => {
  const old = lastOf.get(step.mark)
  if (old === undefined || !LISTS.every(list => isSameList(old.step[list], step[list]))) return { step, body: step }
  return old.step.number === step.number ? old : { step, body: old.body }
}

let lastSteps: readonly SheetStep[] = []
let lastBodies: readonly StepBody[] = []

/**
 * @returns the steps, each as it was in the last sheet if it says what it said there, so that what was found out about it is known
 *   still; one that only moved keeps what was found out about its body
 */
export const steadied = (steps: readonly SheetStep[]): readonly SheetStep[] => {
  const all = steps.map(steadyOf)
  lastOf = new Map(all.map(own => [own.step.mark, own]))
  lastSteps = all.map(({ step }) => step)
  lastBodies = all.map(({ body }) => body)
  return lastSteps
}

const cutBodies = cutter<StepBody>()
const chunksOf = (steps: readonly SheetStep[]): readonly (readonly StepBody[])[] =>
  cutBodies(steps === lastSteps ? lastBodies : steps)

/**
 * What each step gives by itself, all steps together and in order; asked again only where a step changed.
 *
 * @param of pure; may look at nothing but the step, and not at its number
 */
export const inSteps = <T>(of: (step: StepBody) => readonly T[]): ((sheet: Pick<Sheet, 'steps'>) => readonly T[]) => {
  const all = joining((chunk: readonly StepBody[]): readonly T[] => joinedOf(chunk, of))
  return ({ steps }) => all(chunksOf(steps))
}

type AtStep<T> = T & { readonly step: SheetStep; readonly number: number }

/** What a chunk gives, each with the step in it that gives it. Facts are of the last sheet only and move with their step. */
type Placed<T> = readonly { readonly i: number; readonly fact: T & { step: SheetStep; number: number } }[]

/** The same, each with its step as it stands now, and that step's number; not to be kept from one sheet to the next. */
export const atSteps = <T extends object>(
  of: (step: StepBody) => readonly T[],
): ((sheet: Pick<Sheet, 'steps'>) => readonly AtStep<T>[]) => {
  let last: readonly SheetStep[] = []
  let known = new Map<readonly StepBody[], Placed<T>>()
  let all: readonly AtStep<T>[] = []
  return ({ steps }) => {
    if (steps === last) return all
    last = steps
    let from = 0
    const now = new Map<readonly StepBody[], Placed<T>>()
    const facts: AtStep<T>[] = []
    for (const chunk of chunksOf(steps)) {
      const old = known.get(chunk)
      const own =
        old ??
        chunk.flatMap((_, i) => {
          const step = steps[from + i]
          return step === undefined ? [] : of(step).map(fact => ({ i, fact: { ...fact, step, number: step.number } }))
        })
      for (const { i, fact } of own) {
        const step = steps[from + i]
        if (step !== undefined && fact.step !== step) {
          fact.step = step
          fact.number = step.number
        }
        facts.push(fact)
      }
      now.set(chunk, own)
      from += chunk.length
    }
    known = now
    all = facts
    return all
  }
}

/** Cuts the marks of a project. */
export const cutMarks = cutter<Mark>()

/** A check that looks at one mark and at the talk around it; checked again only where the mark or the transcript changed. */
export const eachMarkInTalk = (
  kinds: readonly Kind[],
  check: (mark: Mark, sentences: Subject['sentences']) => readonly Found[],
): ((subject: Subject) => readonly Found[]) => {
  const wanted = new Set<Kind>(kinds)
  const ofTalk = onceFor((sentences: Subject['sentences']) => {
    const once = onceFor((mark: Mark) => check(mark, sentences))
    return joining((marks: readonly Mark[]) => marks.flatMap(mark => (wanted.has(mark.kind) ? once(mark) : [])))
  })
  return ({ project, sentences }) => ofTalk(sentences)(cutMarks(project.marks))
}
