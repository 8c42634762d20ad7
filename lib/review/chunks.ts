import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { onceFor } from './memo'
import type { Found } from './rule'
import type { Subject } from './subject'

/** Entries a chunk: an edit disturbs one chunk, and rules look at thirty of them in 500 steps. */
const SIZE = 16

/**
 * Cuts lists into chunks that keep their identity from one list to the next as long as their entries do.
 *
 * @returns a cutter that remembers the last list it cut
 */
export const cutter = <T>(): ((list: readonly T[]) => readonly (readonly T[])[]) => {
  let lastList: readonly T[] = []
  let last: readonly (readonly T[])[] = []
  return list => {
    if (list === lastList) return last
    const chunks: (readonly T[])[] = []
    for (let at = 0; at < list.length; at += SIZE) {
      const old = last[at / SIZE]
      const size = Math.min(SIZE, list.length - at)
      const isOld = old !== undefined && old.length === size && old.every((entry, i) => entry === list[at + i])
      chunks.push(isOld ? old : list.slice(at, at + size))
    }
    lastList = list
    last = chunks
    return chunks
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

/** @returns what chunks give, joined; asked again only for those that are not the ones at their place the last time. */
export const joining = <C extends object, T>(
  of: (chunk: C) => readonly T[],
): ((chunks: readonly C[]) => readonly T[]) => {
  let last: readonly C[] = []
  let values: (readonly T[])[] = []
  let all: readonly T[] = []
  return chunks => {
    if (chunks === last) return all
    values = chunks.map((chunk, i) => (last[i] === chunk ? (values[i] ?? of(chunk)) : of(chunk)))
    last = chunks
    all = joined(values)
    return all
  }
}

const cutSteps = cutter<SheetStep>()

/**
 * What each step gives by itself, all steps together and in order; asked again only where a step changed.
 *
 * @param of pure; may look at nothing but the step
 */
export const inSteps = <T>(of: (step: SheetStep) => readonly T[]): ((sheet: Pick<Sheet, 'steps'>) => readonly T[]) => {
  const all = joining((chunk: readonly SheetStep[]): readonly T[] => joinedOf(chunk, of))
  return ({ steps }) => all(cutSteps(steps))
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
