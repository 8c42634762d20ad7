import type { Mark } from '@/lib/procedure/mark'
import { parseSpanAddress, spanAddress } from './address'
import { formatExactQuantity, type Note, parseExactQuantity } from './note'
import { fieldsToNote, type Shown, type ShownField, type ShownFields } from './shown'

/** Where a mark stands on the sheet: steps have their number, others the step they stand under and whether their time alone puts them there. */
export type Standing = { readonly number: number } | { readonly under: string; readonly isByTime: boolean } | 'loose'

/** What a note says, read. */
export type ReadNote = {
  readonly id: string
  readonly fields: ReadonlyMap<ShownField, ShownFields[ShownField]>
  readonly span?: { readonly start: number; readonly end: number }
  readonly place?: { readonly shown: number; readonly place: number | undefined }
  /** `tied`: the mark names the step it stands under, though its time alone would put it there. */
  readonly step?: 'tied' | { readonly id: string }
  readonly more: Partial<Pick<Mark, 'pencilled' | 'still' | 'capability'>>
}

const isQuantityField = (field: ShownField): field is 'quantity' | 'equivalent' =>
  field === 'quantity' || field === 'equivalent'

const isExactSpan = (mark: Mark): boolean => {
  const read = parseSpanAddress(spanAddress('', mark))
  return read?.start === mark.start && read.end === mark.end
}

const placeItem = (mark: Mark, standing: Standing): readonly [string, string][] => {
  if (standing !== 'loose' && 'number' in standing) {
    const named: [string, string][] = mark.step === undefined ? [] : [['step', mark.step]]
    if (mark.place === standing.number) return named
    return [['place', `${standing.number} for ${mark.place ?? 'none'}`], ...named]
  }
  const place: [string, string][] = mark.place === undefined ? [] : [['place', `0 for ${mark.place}`]]
  if (mark.step === undefined) return place
  if (standing === 'loose' || mark.step !== standing.under) return [...place, ['step', mark.step]]
  return standing.isByTime ? [...place, ['tied', '']] : place
}

const fieldItem = (mark: Mark, field: ShownField): [string, string] => {
  const value = mark[field]
  if (value === undefined) return [`no ${field}`, '']
  return [field, typeof value === 'string' ? value : formatExactQuantity(value)]
}

/** @returns the note of a mark: its id and what its line, time link and standing do not say exactly. */
export const toNote = (mark: Mark, shown: Shown, standing: Standing): Note => {
  const { pencilled, still, capability } = mark
  const items: (readonly [string, string])[] = [
    ...(isExactSpan(mark) ? [] : [['at', `${mark.start} to ${mark.end}`] as const]),
    ...placeItem(mark, standing),
    ...fieldsToNote(mark, shown).map(field => fieldItem(mark, field)),
  ]
  if (pencilled !== undefined) {
    items.push(['pencilled', String(pencilled.confidence)], ['because', pencilled.reason])
    if (pencilled.question !== undefined) items.push(['ask', pencilled.question])
  }
  if (still !== undefined) {
    items.push(['still', String(still.time)], ['alt', still.alt])
    if (still.file !== undefined) items.push(['file', still.file])
  }
  if (capability !== undefined) {
    items.push(['reads', formatExactQuantity(capability.range)])
    if (capability.deviation !== undefined) items.push(['deviation', String(capability.deviation)])
  }
  return { id: mark.id, items: new Map(items) }
}

const FIELDS: readonly ShownField[] = [
  'text',
  'level',
  'hazard',
  'quantity',
  'equivalent',
  'reference',
  'basis',
  'citation',
  'price',
]

const readField = (field: ShownField, value: string): ShownFields[ShownField] =>
  isQuantityField(field) ? parseExactQuantity(value) : (value as ShownFields[ShownField])

/** @returns what the note says. Items it does not know are left aside. */
export const fromNote = ({ id, items }: Note): ReadNote => {
  const fields = new Map<ShownField, ShownFields[ShownField]>()
  for (const field of FIELDS) {
    const value = items.get(field)
    if (items.has(`no ${field}`)) fields.set(field, undefined)
    else if (value !== undefined) fields.set(field, readField(field, value))
  }
  const at = /^(\S+) to (\S+)$/.exec(items.get('at') ?? '')
  const place = /^(\d+) for (\S+)$/.exec(items.get('place') ?? '')
  const step = items.get('step')
  return {
    id,
    fields,
    ...(at === null ? {} : { span: { start: Number(at[1]), end: Number(at[2]) } }),
    ...(place === null
      ? {}
      : { place: { shown: Number(place[1]), place: place[2] === 'none' ? undefined : Number(place[2]) } }),
    ...(items.has('tied') ? { step: 'tied' } : step === undefined ? {} : { step: { id: step } }),
    more: readMore(items),
  }
}

const readMore = (items: ReadonlyMap<string, string>): ReadNote['more'] => {
  const [pencilled, ask, still, file] = ['pencilled', 'ask', 'still', 'file'].map(key => items.get(key))
  const reads = items.get('reads')
  const range = reads === undefined ? undefined : parseExactQuantity(reads)
  const deviation = items.get('deviation')
  return {
    ...(pencilled === undefined
      ? {}
      : {
          pencilled: {
            confidence: Number(pencilled),
            reason: items.get('because') ?? '',
            ...(ask === undefined ? {} : { question: ask }),
          },
        }),
    ...(still === undefined
      ? {}
      : { still: { time: Number(still), alt: items.get('alt') ?? '', ...(file === undefined ? {} : { file }) } }),
    ...(range === undefined
      ? {}
      : { capability: { range, ...(deviation === undefined ? {} : { deviation: Number(deviation) }) } }),
  }
}
