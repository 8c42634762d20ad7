import { BASES, type Kind, LEVELS } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { UNIT_CHOICES, type UnitChoice } from './publication'
import { toLine } from './text'
import { formatValue, parseValue } from './value'
import { BASIS_WORDS, hazardWords, KIND_LABELS, SIGNAL_WORDS } from './words'

/** What one published line says of a mark, in its parts. Each part is a line (see `toLine`); empty parts are absent. */
export type Shown = {
  /** Bold at the start, before a colon: the kind, or a caution's signal word and hazard. Steps have none. */
  readonly label?: string
  readonly text: string
  /** A spec's value, or its limit in words where it has no value. */
  readonly value?: string
  /** A spec's condition, where there is a value. */
  readonly tail?: string
  /** In brackets: a spec's basis and citation, a price. */
  readonly aside?: string
}

/** Fields of a mark that a line may show. */
export const SHOWN_FIELDS = [
  'text',
  'level',
  'hazard',
  'quantity',
  'equivalent',
  'reference',
  'basis',
  'citation',
  'price',
] as const
export type ShownField = (typeof SHOWN_FIELDS)[number]
export type ShownFields = Partial<Pick<Mark, ShownField>>

/** Which fields each part speaks of. */
const PARTS: readonly (readonly [keyof Shown, readonly ShownField[]])[] = [
  ['label', ['level', 'hazard']],
  ['text', ['text']],
  ['value', ['quantity', 'equivalent', 'reference']],
  ['tail', ['reference']],
  ['aside', ['basis', 'citation', 'price']],
]

const part = <K extends keyof Shown>(key: K, value: string | undefined): Partial<Record<K, string>> => {
  const line = value === undefined ? '' : toLine(value)
  return line === '' ? {} : ({ [key]: line } as Partial<Record<K, string>>)
}

/** @returns a spec's basis and citation as `manual: page 12`; undefined where there is neither. */
export const formatBasis = ({ basis, citation }: Pick<Mark, 'basis' | 'citation'>): string | undefined => {
  const word = basis === undefined ? undefined : BASIS_WORDS[basis]
  return word === undefined || citation === undefined ? (word ?? citation) : `${word}: ${citation}`
}

/** @returns the parts of the line about a mark. */
export const toShown = (mark: Omit<Mark, 'id' | 'start' | 'end' | 'said'>, units: UnitChoice): Shown => {
  const text = toLine(mark.text)
  if (mark.kind === 'step') return { text }
  if (mark.kind === 'caution') {
    const hazard = hazardWords(mark)
    const word = SIGNAL_WORDS[mark.level ?? 'caution']
    return { label: hazard === '' ? word : `${word} (${hazard})`, text }
  }
  const label = KIND_LABELS[mark.kind]
  if (mark.kind === 'tool' || mark.kind === 'material') return { label, text, ...part('aside', mark.price) }
  if (mark.kind !== 'spec') return { label, text }
  const value = mark.quantity === undefined ? '' : formatValue(mark.quantity, mark.equivalent, units)
  const words = value === '' ? part('value', mark.reference) : { value, ...part('tail', mark.reference) }
  return { label, text, ...words, ...part('aside', formatBasis(mark)) }
}

const KINDS_BY_LABEL: ReadonlyMap<string, Kind> = new Map(
  Object.entries(KIND_LABELS).map(([kind, label]) => [label.toLowerCase(), kind as Kind]),
)

/** @returns the kind a label stands for; undefined where it is no label of ours. */
export const kindOfLabel = (label: string): Kind | undefined =>
  levelOfLabel(label) === undefined ? KINDS_BY_LABEL.get(label.toLowerCase()) : 'caution'

const levelOfLabel = (label: string) => {
  const word = /^\p{L}+/u.exec(label)?.[0].toLowerCase()
  return LEVELS.find(level => level === word)
}

const fromBasis = (aside: string): ShownFields => {
  // A hand may part them by a comma.
  const at = aside.search(/[:,]/)
  const word = (at < 0 ? aside : aside.slice(0, at)).trim().toLowerCase()
  const basis = BASES.find(each => BASIS_WORDS[each] === word || BASIS_WORDS[each].split(' or ').includes(word))
  if (basis === undefined) return { citation: aside }
  return at < 0 ? { basis } : { basis, citation: aside.slice(at + 1).trim() }
}

/** @returns the fields that a line, as it stands, says; what it leaves out is absent. */
export const fromShown = (kind: Kind, shown: Shown): ShownFields => {
  const { label = '', text, value, tail, aside } = shown
  if (kind === 'caution') {
    const level = levelOfLabel(label)
    const hazard = /\((.*)\)$/.exec(label)?.[1]
    return { text, ...(level === undefined ? {} : { level }), ...(hazard === undefined ? {} : { hazard }) }
  }
  if (kind === 'tool' || kind === 'material') return { text, ...(aside === undefined ? {} : { price: aside }) }
  if (kind !== 'spec') return { text }
  const read = value === undefined ? undefined : parseValue(value)
  const words = read === undefined ? [value, tail].filter(each => each !== undefined).join(', ') : tail
  return {
    text,
    ...read,
    ...(words === undefined || words === '' ? {} : { reference: words }),
    ...(aside === undefined ? {} : fromBasis(aside)),
  }
}

/**
 * The fields of a mark from its line and what was noted beside it. Where a part of the line still reads as the noted
 * fields would make it read, in any choice of units, the note holds, because it is exact; where a hand changed that part, the line holds.
 *
 * @param noted fields the line could not show exactly; undefined values say that the field is absent
 */
export const reconcile = (
  kind: Kind,
  shown: Shown,
  noted: ReadonlyMap<ShownField, ShownFields[ShownField]>,
): ShownFields => {
  const plain = fromShown(kind, shown)
  const exact = withNoted(plain, noted)
  const lines = UNIT_CHOICES.map(units => toShown({ kind, ...exact, text: exact.text ?? '' }, units))
  const touched = new Set(
    PARTS.filter(([key]) => lines.every(line => line[key] !== shown[key])).flatMap(([, fields]) => fields),
  )
  // A noted lack of an equivalent says that what stands in brackets was converted, not stated: a changed value leaves it.
  const isConverted = noted.has('equivalent') && noted.get('equivalent') === undefined
  return withNoted(
    plain,
    new Map([...noted].filter(([field]) => !touched.has(field) || (field === 'equivalent' && isConverted))),
  )
}

const withNoted = (plain: ShownFields, noted: ReadonlyMap<ShownField, ShownFields[ShownField]>): ShownFields => {
  const fields: Record<string, unknown> = { ...plain }
  for (const [field, value] of noted) {
    if (value === undefined) delete fields[field]
    else fields[field] = value
  }
  return fields as ShownFields
}

/** @returns the fields that the line of this mark does not show exactly. */
export const fieldsToNote = (mark: Mark, shown: Shown): readonly ShownField[] => {
  const plain = fromShown(mark.kind, shown)
  return SHOWN_FIELDS.filter(field => !isSame(plain[field], mark[field]))
}

const isSame = (a: unknown, b: unknown): boolean =>
  a === b || (typeof a === 'object' && typeof b === 'object' && keyed(a) === keyed(b))

const keyed = (value: unknown): string =>
  JSON.stringify(Object.entries(value ?? {}).sort(([a], [b]) => (a < b ? -1 : 1)))
