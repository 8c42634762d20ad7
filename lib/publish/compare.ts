import { applyEdit, type ClearableField, type Edit } from '@/lib/procedure/edit'
import type { Mark } from '@/lib/procedure/mark'
import { stepsInOrder } from '@/lib/procedure/place'
import type { Project } from '@/lib/procedure/project'
import { type Sheet, toSheet } from '@/lib/procedure/sheet'
import { formatQuantity } from '@/lib/quantity/format'
import { formatSpan } from './address'
import { type Change, clip } from './change'
import { compareHeading } from './compare-heading'
import { moves } from './moves'
import type { Echo, ReadBack, Unread } from './read-back'
import { SHOWN_FIELDS, type ShownField } from './shown'
import { detailsOf } from './standing'

/** What a hand changed in a sheet, against a project. */
export type Comparison = {
  /** In the order they are to be applied; each may be kept or left. */
  readonly changes: readonly Change[]
  /** What was not understood, for the user to see. */
  readonly unread: readonly Unread[]
}

const isSame = (a: unknown, b: unknown): boolean => sorted(a) === sorted(b)

const sorted = (value: unknown): string =>
  JSON.stringify(value, (_, v: unknown) =>
    typeof v === 'object' && v !== null && !Array.isArray(v)
      ? Object.fromEntries(Object.entries(v).sort(([a], [b]) => (a < b ? -1 : 1)))
      : v,
  ) ?? ''

/** Fields a sheet speaks of, beside those a line shows. */
const FIELDS = ['kind', ...SHOWN_FIELDS, 'pencilled', 'step', 'still', 'capability'] as const
type Field = (typeof FIELDS)[number]

const FIELD_WORDS: Readonly<Record<Field, string>> = {
  kind: 'kind',
  text: 'text',
  level: 'signal word',
  hazard: 'hazard',
  quantity: 'value',
  equivalent: 'equal value',
  reference: 'condition',
  basis: 'basis',
  citation: 'citation',
  price: 'price',
  pencilled: 'pencil flag',
  step: 'step it belongs to',
  still: 'picture',
  capability: 'range',
}

const nameOf = (mark: Mark): string => `${mark.kind} “${clip(mark.text)}”`

/** A field's value in words; undefined where the mark has none, or none that words could tell. */
const wordsOf = (mark: Mark, field: Field): string | undefined => {
  const value = mark[field]
  switch (field) {
    case 'quantity':
    case 'equivalent':
      return mark[field] === undefined ? undefined : formatQuantity(mark[field])
    case 'capability':
      return mark.capability === undefined ? undefined : formatQuantity(mark.capability.range)
    case 'still':
      return mark.still === undefined ? undefined : `“${clip(mark.still.alt)}”`
    case 'pencilled':
      return mark.pencilled === undefined ? undefined : `${Math.round(mark.pencilled.confidence * 100)} %`
    default:
      return typeof value === 'string' ? `“${clip(value)}”` : undefined
  }
}

/** What keeping a changed field would do: from what, to what. */
const aboutField = (name: string, field: Field, from: string | undefined, to: string | undefined): string => {
  const what = `the ${FIELD_WORDS[field]} of the ${name}`
  if (to === undefined || to === '') return `Take away ${what}${from === undefined ? '' : `, ${from}`}`
  if (from === undefined || from === '') return `Set ${what} to ${to}`
  // Where both read alike, what differs is too fine for words.
  return from === to ? `Change ${what}, ${to}, as written` : `Change ${what} from ${from} to ${to}`
}

/** One change for each field that differs, so that each may be kept alone. */
const fieldChange = (before: Mark, after: Mark, field: Field, line: number): Change => {
  const value = after[field]
  const name = nameOf(before)
  if (field === 'pencilled' && value === undefined)
    return {
      about: `Keep the ${name}: its pencil flag was taken away`,
      line,
      mark: before.id,
      edit: { do: 'keep-marks', ids: [before.id] },
    }
  const about = aboutField(name, field, wordsOf(before, field), wordsOf(after, field))
  const edit: Edit =
    value === undefined
      ? { do: 'change-mark', id: before.id, clear: [field as ClearableField] }
      : { do: 'change-mark', id: before.id, to: { [field]: value } }
  return { about, line, mark: before.id, edit }
}

const compareMark = (before: Mark, after: Mark, line: number): readonly Change[] => {
  const changes = FIELDS.filter(field => !isSame(before[field], after[field])).map(field =>
    fieldChange(before, after, field, line),
  )
  if (before.start === after.start && before.end === after.end) return changes
  const { start, end } = after
  const about = `Change the time of the ${nameOf(before)} from ${formatSpan(before)} to ${formatSpan(after)}`
  return [...changes, { about, line, mark: before.id, edit: { do: 'change-mark', id: before.id, to: { start, end } } }]
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
      if (isSame(before[field], after[field]))
        changes.push(fieldChange(before, { ...before, [field]: value } as Mark, field, echo.line))
      else unread.push(echoUnread(echo, `“${echo.section}” says otherwise than the step; the step is taken`))
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

const dropped = (project: Project, read: ReadBack): readonly Change[] => {
  const there = new Set([...read.marks.map(mark => mark.id), ...read.unread.flatMap(({ id }) => id ?? [])])
  const lines = linesBefore(project, read)
  return project.marks
    .filter(mark => !there.has(mark.id) && !(read.isKeptOnly && mark.pencilled !== undefined))
    .map(mark => ({
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

const applied = (project: Project, changes: readonly Change[]): Project =>
  changes.reduce((state, { edit }) => applyEdit(state, edit), project)

/**
 * Compares a sheet read back with the project it is of, mark by mark.
 *
 * @returns changes as edits to keep one by one; applied all, the project says what the sheet says. What was not understood
 *   comes back too. Never throws.
 */
export const compareSheet = (project: Project, read: ReadBack): Comparison => {
  const before = new Map(project.marks.map(mark => [mark.id, mark]))
  const echoes = read.echoes.map(echo => compareEcho(echo, project, read))
  const heading = compareHeading(project.procedure, read)
  const changes: Change[] = [
    ...heading.changes,
    ...read.marks.flatMap(mark => {
      const old = before.get(mark.id)
      return old === undefined ? [] : compareMark(old, mark, read.lines.get(mark.id) ?? 1)
    }),
    ...echoes.flatMap(each => each.changes),
    ...dropped(project, read),
  ]
  changes.push(...added(read, applied(project, changes)))
  changes.push(...moved(applied(project, changes), read))
  return { changes, unread: [...read.unread, ...heading.unread, ...echoes.flatMap(each => each.unread)] }
}
