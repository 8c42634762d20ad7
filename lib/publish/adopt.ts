import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import { toSheet } from '@/lib/procedure/sheet'
import { formatSpan } from './address'
import { UNIT_CHOICES } from './publication'
import type { ReadBack } from './read-back'
import { toShown } from './shown'
import { detailsOf } from './standing'
import { toLine } from './text'

/** The step each mark stands under, by the mark's id. */
const stepsAbove = (project: Project): ReadonlyMap<string, string> =>
  new Map(
    toSheet(project).steps.flatMap(step =>
      [...step.cautions, ...detailsOf(step)].map(mark => [mark.id, step.mark.id] as const),
    ),
  )

const looksAlike = (old: Mark, mark: Mark): boolean => {
  const line = JSON.stringify(toShown(mark, 'as-said'))
  return UNIT_CHOICES.some(units => JSON.stringify(toShown(old, units)) === line)
}

/** The mark that a line without its time link speaks of, with all that such a line can't say. */
const recognised = (old: Mark, mark: Mark, isUntimed: boolean, under: string | undefined): Mark => {
  const { pencilled: _, step, place, ...whole } = old
  const { id: __, pencilled, step: named, start, end, ...shown } = mark
  const stands = named === under ? step : named
  return {
    ...(looksAlike(old, mark) ? whole : { ...shown, id: old.id, ...(old.still && { still: old.still }) }),
    said: '',
    // A time that a hand wrote is to the second; where it says the same, the exact one stays.
    ...(isUntimed || formatSpan(mark) === formatSpan(old) ? { start: old.start, end: old.end } : { start, end }),
    ...(mark.place === undefined ? (place === undefined ? {} : { place }) : { place: mark.place }),
    ...(pencilled === undefined ? {} : { pencilled: old.pencilled ?? pencilled }),
    ...(stands === undefined ? {} : { step: stands }),
  }
}

/**
 * A line whose time link was taken out or broken says no more which mark it is of: it is known by its kind and text, or by its
 * kind and the time written, where the recording has such a mark that no other line speaks of.
 *
 * @returns the sheet with such marks under their own ids
 */
export const adopt = (project: Project, read: ReadBack): ReadBack => {
  const taken = new Set(read.marks.map(mark => mark.id))
  const fresh = new Set(read.fresh)
  const untimed = new Set(read.untimed)
  const names = new Map<string, Mark>()
  const nameBy = (isOf: (old: Mark, mark: Mark) => boolean) => {
    for (const mark of read.marks) {
      if (!fresh.has(mark.id) || names.has(mark.id)) continue
      const old = project.marks.find(each => !taken.has(each.id) && each.kind === mark.kind && isOf(each, mark))
      if (old === undefined) continue
      taken.add(old.id)
      names.set(mark.id, old)
    }
  }
  const isSameText = (old: Mark, mark: Mark) => toLine(old.text) === toLine(mark.text)
  const isSameTime = (old: Mark, mark: Mark) => !untimed.has(mark.id) && formatSpan(old) === formatSpan(mark)
  nameBy((old, mark) => isSameText(old, mark) && isSameTime(old, mark))
  nameBy(isSameText)
  nameBy(isSameTime)
  if (names.size === 0) return read
  const above = stepsAbove(project)
  const idOf = (id: string): string => names.get(id)?.id ?? id
  const marks = read.marks.map((mark): Mark => {
    const now = mark.step === undefined ? mark : { ...mark, step: idOf(mark.step) }
    const old = names.get(mark.id)
    if (old !== undefined) return recognised(old, now, untimed.has(mark.id), above.get(old.id))
    // What stood under the step by its time alone still does.
    const before = project.marks.find(({ id }) => id === mark.id)
    if (before === undefined || before.step !== undefined || now.step === undefined) return now
    if (mark.step === now.step || above.get(mark.id) !== now.step) return now
    const { step: _, ...loose } = now
    return loose
  })
  const lines = new Map([...read.lines].map(([id, line]) => [idOf(id), line]))
  const echoes = read.echoes.map(echo => ({ ...echo, ids: echo.ids.map(idOf) }))
  return { ...read, marks, lines, echoes, fresh: read.fresh.filter(id => !names.has(id)) }
}
