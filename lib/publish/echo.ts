import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { UNIT_CHOICES } from './publication'
import type { Echo } from './read-back'
import { fromShown, type Shown, type ShownFields, toShown } from './shown'

/** A line that repeats marks: in the safety summary, a list or the table of specs. */
export type SeenEcho = {
  readonly ids: readonly string[]
  readonly kind: Kind
  readonly shown: Shown
  readonly section: string
  readonly line: number
}

const FIELDS: Readonly<Record<keyof Shown, readonly (keyof ShownFields)[]>> = {
  label: ['level', 'hazard'],
  text: ['text'],
  value: ['quantity', 'equivalent', 'reference'],
  tail: ['reference'],
  aside: ['basis', 'citation', 'price'],
}

/** Parts a list does not show: names alone have no label. */
const partsSeen = (kind: Kind): readonly (keyof Shown)[] =>
  kind === 'caution' ? ['label', 'text'] : kind === 'spec' ? ['text', 'value', 'tail', 'aside'] : ['text', 'aside']

const isShown = (mark: Mark, key: keyof Shown, shown: Shown): boolean =>
  UNIT_CHOICES.some(units => toShown(mark, units)[key] === shown[key])

/** @returns the repetitions that say something else than the marks they repeat, with what they say. */
export const echoesOf = (marks: readonly Mark[], seen: readonly SeenEcho[]): readonly Echo[] =>
  seen.flatMap(({ ids, kind, shown, section, line }): readonly Echo[] => {
    const own = marks.filter(mark => ids.includes(mark.id))
    const differing = partsSeen(kind).filter(key => own.length > 0 && !own.some(mark => isShown(mark, key, shown)))
    if (differing.length === 0) return []
    const said = fromShown(kind, shown)
    const fields = Object.fromEntries(
      differing.flatMap(key => FIELDS[key]).flatMap(field => (said[field] === undefined ? [] : [[field, said[field]]])),
    )
    const isLost =
      differing.includes('value') &&
      said.quantity === undefined &&
      /\d/.test(shown.value ?? '') &&
      own.some(mark => mark.quantity !== undefined)
    return [{ line, section, ids, fields, heading: {}, ...(isLost ? { isValueUnread: true } : {}) }]
  })
