import type { Mark } from '@/lib/procedure/mark'
import type { SheetStep } from '@/lib/procedure/sheet'
import { onceFor } from './memo'
import { contentStems, stemSet } from './words'

/** Numbers of the steps that say a stem, in order, by stem. */
export type StemIndex = ReadonlyMap<string, readonly number[]>

/** Past this many changed entries an index is built anew. */
const FEW = 24

/** The stretch in which two lists differ: [from, to) of the old, [from, till) of the new. Entries compare by `same`. */
const changed = <T>(old: readonly T[], now: readonly T[], same: (a: T, b: T) => boolean): [number, number, number] => {
  const least = Math.min(old.length, now.length)
  let from = 0
  while (from < least && same(old[from] as T, now[from] as T)) from++
  let end = 0
  while (end < least - from && same(old[old.length - 1 - end] as T, now[now.length - 1 - end] as T)) end++
  return [from, old.length - end, now.length - end]
}

let lastSteps: readonly SheetStep[] = []
let lastIndex = new Map<string, readonly number[]>()

const isSameText = (a: SheetStep, b: SheetStep): boolean => a.mark === b.mark || a.mark.text === b.mark.text

const setStep = (index: Map<string, readonly number[]>, { mark, number }: SheetStep, isIn: boolean): void => {
  for (const stem of stemSet(mark.text)) {
    const known = index.get(stem) ?? []
    const others = known.filter(other => other !== number)
    if (isIn)
      index.set(
        stem,
        [...others, number].sort((a, b) => a - b),
      )
    else if (others.length === 0) index.delete(stem)
    else index.set(stem, others)
  }
}

const builtAnew = (steps: readonly SheetStep[]): Map<string, readonly number[]> => {
  const index = new Map<string, number[]>()
  for (const { mark, number } of steps)
    for (const stem of stemSet(mark.text)) {
      const known = index.get(stem)
      if (known === undefined) index.set(stem, [number])
      else known.push(number)
    }
  return index
}

/**
 * @returns the index of a sheet's steps. Kept from the last sheet asked for, and mended where few texts changed: use it before
 *   another sheet is asked for.
 */
export const stemIndex = (steps: readonly SheetStep[]): StemIndex => {
  if (steps === lastSteps) return lastIndex
  const [from, to, till] = changed(lastSteps, steps, isSameText)
  if (to === till && to - from <= FEW) {
    for (const step of lastSteps.slice(from, to)) setStep(lastIndex, step, false)
    for (const step of steps.slice(from, till)) setStep(lastIndex, step, true)
  } else lastIndex = builtAnew(steps)
  lastSteps = steps
  return lastIndex
}

let lastMarks: readonly Mark[] = []
let lastCounts = new Map<string, number>()

/** Stems of what a mark says, once each; lists of tools and materials say nothing of use. */
const stemsOf = onceFor((mark: Mark): readonly string[] =>
  mark.kind === 'tool' || mark.kind === 'material'
    ? []
    : [...new Set([...contentStems(mark.text), ...(mark.reference === undefined ? [] : contentStems(mark.reference))])],
)

const count = (mark: Mark, by: 1 | -1): void => {
  for (const stem of stemsOf(mark)) {
    const now = (lastCounts.get(stem) ?? 0) + by
    if (now === 0) lastCounts.delete(stem)
    else lastCounts.set(stem, now)
  }
}

/** @returns how many marks, lists left out, say each stem. Kept and mended like the index of steps. */
export const lineStems = (marks: readonly Mark[]): ReadonlyMap<string, number> => {
  if (marks === lastMarks) return lastCounts
  const [from, to, till] = changed(lastMarks, marks, (a, b) => a === b)
  if (to - from + till - from > marks.length) {
    lastCounts = new Map()
    for (const mark of marks) count(mark, 1)
  } else {
    for (const mark of lastMarks.slice(from, to)) count(mark, -1)
    for (const mark of marks.slice(from, till)) count(mark, 1)
  }
  lastMarks = marks
  return lastCounts
}
