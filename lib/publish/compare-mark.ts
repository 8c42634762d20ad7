import type { ClearableField, Edit } from '@/lib/procedure/edit'
import type { Mark } from '@/lib/procedure/mark'
import { formatQuantity } from '@/lib/quantity/format'
import { formatSpan } from './address'
import { type Change, clip } from './change'
import { SHOWN_FIELDS } from './shown'
import { toLine } from './text'

/** @returns whether two values are the same, whatever the order of their fields. */
export const isSame = (a: unknown, b: unknown): boolean => sorted(a) === sorted(b)

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

/** The text of each step, by its id. */
export type Names = ReadonlyMap<string, string>

/** @returns a mark by kind and text, for messages. */
export const nameOf = (mark: Mark): string => `${mark.kind} “${clip(mark.text)}”`

/** A field's value in words; undefined where the mark has none, or none that words could tell. */
const wordsOf = (mark: Mark, field: Field, names: Names): string | undefined => {
  const value = mark[field]
  switch (field) {
    case 'quantity':
    case 'equivalent':
      return mark[field] === undefined ? undefined : formatQuantity(mark[field])
    case 'capability':
      return mark.capability === undefined ? undefined : formatQuantity(mark.capability.range)
    case 'still':
      return mark.still === undefined ? undefined : `“${clip(mark.still.alt)}”`
    case 'step':
      return mark.step === undefined ? undefined : `“${clip(names.get(mark.step) ?? mark.step)}”`
    case 'pencilled':
      return mark.pencilled === undefined ? undefined : `${Math.round(mark.pencilled.confidence * 100)} %`
    default:
      return typeof value === 'string' ? `“${clip(value)}”` : undefined
  }
}

/** What a value is written like, where none could be read. */
export const NO_VALUE =
  'No value can be read here: write figures and a known unit, the lower first, such as 18 to 22 N·m.'

/** Whether a hand wrote figures where a value stood, and they are none: what is no value is not taken for words. */
const isLostValue = (before: Mark, quantity: Mark['quantity'], reference: string | undefined): boolean =>
  before.quantity !== undefined &&
  quantity === undefined &&
  reference !== before.reference &&
  /\d/.test(reference ?? '')

/** Words told before the first that differs. Judged by hand. */
const LEAD = 3

/** Two texts from where they differ: what was changed is told however far behind it stands. */
const fromDifference = (from: string, to: string): readonly [string, string] => {
  const [a, b] = [from, to].map(each => toLine(each).split(' ')) as [string[], string[]]
  const first = a.findIndex((word, i) => word !== b[i])
  const start = Math.max(0, (first < 0 ? a.length : first) - LEAD)
  const rest = (words: readonly string[]) => `“${clip(`… ${words.slice(start).join(' ')}`)}”`
  return [rest(a), rest(b)]
}

/** What changing a text would do; its name tells already what it said. */
const aboutText = (before: Mark, text: string): string => {
  const what = `Change the text of the ${nameOf(before)}`
  if (clip(before.text) !== clip(text)) return `${what} to “${clip(text)}”`
  const [from, to] = fromDifference(before.text, text)
  return from === to ? `${what}, as written` : `${what} from ${from} to ${to}`
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
export const fieldChange = (
  before: Mark,
  after: Mark,
  field: Field,
  line: number,
  names: Names = new Map(),
): Change => {
  const value = after[field]
  const name = nameOf(before)
  if (field === 'pencilled' && value === undefined)
    return {
      about: `Keep the ${name}: its pencil flag was taken away`,
      line,
      mark: before.id,
      edit: { do: 'keep-marks', ids: [before.id] },
    }
  const about =
    field === 'text' && before.text !== '' && after.text !== ''
      ? aboutText(before, after.text)
      : aboutField(name, field, wordsOf(before, field, names), wordsOf(after, field, names))
  const edit: Edit =
    value === undefined
      ? { do: 'change-mark', id: before.id, clear: [field as ClearableField] }
      : { do: 'change-mark', id: before.id, to: { [field]: value } }
  return { about, line, mark: before.id, edit }
}

const VALUE_FIELDS: readonly Field[] = ['quantity', 'equivalent', 'reference']

/** @returns what differs between a mark and its line, a change for each field. */
export const compareMark = (before: Mark, after: Mark, line: number, names: Names): readonly Change[] => {
  const isLost = isLostValue(before, after.quantity, after.reference)
  const changes = FIELDS.filter(field => !isSame(before[field], after[field])).map(field => {
    const change = fieldChange(before, after, field, line, names)
    return isLost && VALUE_FIELDS.includes(field) ? { ...change, doubt: NO_VALUE } : change
  })
  if (before.start === after.start && before.end === after.end) return changes
  const { start, end } = after
  const about = `Change the time of the ${nameOf(before)} from ${formatSpan(before)} to ${formatSpan(after)}`
  return [...changes, { about, line, mark: before.id, edit: { do: 'change-mark', id: before.id, to: { start, end } } }]
}
