import { countOf } from '@/lib/procedure/count'
import { applyEdit } from '@/lib/procedure/edit'
import type { Mark } from '@/lib/procedure/mark'
import { stepsInOrder } from '@/lib/procedure/place'
import type { Project } from '@/lib/procedure/project'
import { isEarlierRevision } from '@/lib/procedure/revision'
import { type Sheet, toSheet } from '@/lib/procedure/sheet'
import { formatSpan } from './address'
import { adopt } from './adopt'
import { type Change, clip } from './change'
import { compareHeading } from './compare-heading'
import { compareMark, fieldChange, isSame, type Names, NO_VALUE, nameOf } from './compare-mark'
import { moves } from './moves'
import { formatNote } from './note'
import type { Echo, ReadBack, Unread } from './read-back'
import type { ShownField } from './shown'
import { detailsOf } from './standing'
import { toLine } from './text'

/** What a hand changed in a sheet, against a project. */
export type Comparison = {
  /** In the order they are to be applied; each may be kept or left. */
  readonly changes: readonly Change[]
  /** What was not understood, for the user to see. */
  readonly unread: readonly Unread[]
}

const echoUnread = (echo: Echo, why: string): Unread => ({
  line: echo.line,
  text: Object.values({ ...echo.fields, ...echo.heading })
    .map(v => (typeof v === 'string' ? v : JSON.stringify(v)))
    .join(', '),
  why,
})

/** A repetition a hand changed is a change of the mark itself, unless the mark was changed too, otherwise. */
const compareEcho = (echo: Echo, project: Project, read: ReadBack): { changes: Change[]; unread: Unread[] } => {
  const changes: Change[] = []
  const unread: Unread[] = []
  for (const id of echo.ids) {
    const before = project.marks.find(mark => mark.id === id)
    const after = read.marks.find(mark => mark.id === id)
    if (before === undefined || after === undefined) continue
    for (const [field, value] of Object.entries(echo.fields) as [ShownField, unknown][]) {
      if (isSame(before[field], value) || isSame(after[field], value)) continue
      if (isSame(before[field], after[field])) {
        const change = fieldChange(before, { ...before, [field]: value } as Mark, field, echo.line)
        changes.push(echo.isValueUnread === true && field === 'reference' ? { ...change, doubt: NO_VALUE } : change)
      } else unread.push(echoUnread(echo, `“${echo.section}” says otherwise than the step; the step is taken`))
    }
  }
  return { changes, unread }
}

/** A step added between others stands just after the one before it; whole numbers are given out afterwards. */
const placedAmong = (mark: Mark, read: ReadBack, state: Project): Mark => {
  if (mark.kind !== 'step') return mark
  const steps = read.marks.filter(each => each.kind === 'step')
  const before = steps.slice(0, steps.indexOf(mark))
  const placeOf = (id: string) => state.marks.find(each => each.id === id && each.kind === 'step')?.place
  const last = before.findLastIndex(each => placeOf(each.id) !== undefined)
  const after = placeOf(before[last]?.id ?? '') ?? 0
  return { ...mark, place: after + 1 - 1 / (before.length - last + 1) }
}

const added = (read: ReadBack, state: Project): readonly Change[] => {
  const there = new Set(state.marks.map(mark => mark.id))
  return read.marks
    .filter(mark => !there.has(mark.id))
    .map(mark => ({
      about: `Add the ${nameOf(mark)} at ${formatSpan(mark)}`,
      line: read.lines.get(mark.id) ?? 1,
      mark: mark.id,
      edit: { do: 'add-marks', marks: [placedAmong(mark, read, state)] },
    }))
}

/** Every mark in the order its line is written: see markdown.ts. */
const marksInOrder = (sheet: Sheet): readonly Mark[] => [
  ...sheet.steps.flatMap(step => [...step.cautions, step.mark, ...detailsOf(step)]),
  ...sheet.loose,
]

/** For each mark of the project, in the order of its sheet, the line of the last one up to it that is still there. */
const linesBefore = (project: Project, read: ReadBack): ReadonlyMap<string, number> => {
  const lines = new Map<string, number>()
  let line = 1
  for (const { id } of marksInOrder(toSheet(project))) {
    line = read.lines.get(id) ?? line
    lines.set(id, line)
  }
  return lines
}

/** So many marks gone, and they more than half of all, are rather another recording's sheet, or half a file. */
const MANY = 4

const dropped = (project: Project, read: ReadBack): readonly Change[] => {
  const there = new Set([...read.marks.map(mark => mark.id), ...read.unread.flatMap(({ id }) => id ?? [])])
  // What stands in a part that was not understood is not gone.
  const isQuoted = ({ id }: Mark): boolean => {
    const note = `"${formatNote({ id, items: new Map() })}`
    return read.unread.some(({ text }) => text.includes(`${note}"`) || text.includes(`${note};`))
  }
  const lines = linesBefore(project, read)
  const gone = project.marks.filter(
    mark => !there.has(mark.id) && !isQuoted(mark) && !(read.isKeptOnly && mark.pencilled !== undefined),
  )
  const isMost = gone.length >= MANY && gone.length * 2 > project.marks.length
  const doubt = isMost
    ? {
        doubt: `${gone.length} of ${countOf(project.marks.length, 'mark')} are not in this file: see that it is a sheet of this recording.`,
      }
    : {}
  return gone.map(mark => ({
    ...doubt,
    about: `Drop the ${nameOf(mark)}: it is not in the sheet any more`,
    line: lines.get(mark.id) ?? 1,
    mark: mark.id,
    edit: { do: 'drop-marks', ids: [mark.id] },
  }))
}

const moved = (project: Project, read: ReadBack): readonly Change[] => {
  const now = stepsInOrder(project.marks).map(mark => mark.id)
  const wanted = read.marks.filter(mark => mark.kind === 'step').map(mark => mark.id)
  return moves(now, wanted).flatMap(({ id, place }): Change[] => {
    const mark = project.marks.find(each => each.id === id)
    if (mark === undefined) return []
    const about = `Move the ${nameOf(mark)} to place ${place}`
    return [{ about, line: read.lines.get(id) ?? 1, mark: id, edit: { do: 'move-step', id, place } }]
  })
}

/** @returns why a sheet may be another recording's: ids of marks alone don't tell, for drafts number them alike. */
export const otherFootage = (project: Project, { footage }: ReadBack): string | undefined => {
  const own = project.recording.footage?.name ?? ''
  const named = footage?.name ?? ''
  return own === '' || named === '' || toLine(own) === toLine(named)
    ? undefined
    : `This sheet is of “${clip(named)}”, but this recording is “${clip(own)}”: see that it is the right one.`
}

/** Why a sheet may be of the past: read back, it would undo what was done since. */
const olderRevision = ({ procedure }: Project, { heading, front }: ReadBack): string | undefined => {
  if (front === undefined || !isEarlierRevision(heading.revision, procedure.revision)) return undefined
  return `This sheet is revision ${clip(heading.revision)}, and this recording is at ${clip(procedure.revision)}: taken over, it would undo what was changed since.`
}

const applied = (project: Project, changes: readonly Change[]): Project =>
  changes.reduce((state, { edit }) => applyEdit(state, edit), project)

/**
 * Compares a sheet read back with the project it is of, mark by mark.
 *
 * @returns changes as edits to keep one by one; applied all, the project says what the sheet says. What was not understood
 *   comes back too. Never throws.
 */
export const compareSheet = (project: Project, given: ReadBack): Comparison => {
  const read = adopt(project, given)
  const names: Names = new Map([...project.marks, ...read.marks].map(({ id, text }) => [id, text]))
  const before = new Map(project.marks.map(mark => [mark.id, mark]))
  const echoes = read.echoes.map(echo => compareEcho(echo, project, read))
  const heading = compareHeading(project.procedure, read)
  const changes: Change[] = [
    ...heading.changes,
    ...read.marks.flatMap(mark => {
      const old = before.get(mark.id)
      return old === undefined ? [] : compareMark(old, mark, read.lines.get(mark.id) ?? 1, names)
    }),
    ...echoes.flatMap(each => each.changes),
    ...dropped(project, read),
  ]
  changes.push(...added(read, applied(project, changes)))
  changes.push(...moved(applied(project, changes), read))
  const doubt = otherFootage(project, read) ?? olderRevision(project, read)
  const unread = [...read.unread, ...heading.unread, ...echoes.flatMap(each => each.unread)]
  return {
    changes: doubt === undefined ? changes : changes.map(change => ({ ...change, doubt })),
    unread: unread.sort((a, b) => a.line - b.line),
  }
}
