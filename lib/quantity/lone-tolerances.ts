import type { Draft, Drafted } from './draft'
import { recallValue } from './recall'
import { clean } from './rounding'
import { isComparable } from './units'

const isLone = (draft: Draft): boolean =>
  draft.dropped === undefined && draft.phrase.prefix?.style === 'plus-minus' && draft.nominal === undefined

const fits = (tolerance: Draft, base: Draft): boolean => {
  if (base.nominal === undefined || base.low !== undefined || base.high !== undefined || base.unit === undefined)
    return false
  const unit = tolerance.unit
  if (unit === undefined || unit.code === '%') return true
  return unit.code === base.unit.code || isComparable(unit.code ?? '', base.unit.code ?? '')
}

/**
 * A tolerance said by itself belongs to the value said last: `fifty ohms, is that exact? plus or minus ten percent`.
 * Looks in the text first, then in what was said before.
 */
export const placeTolerances = ({ drafts }: Drafted, context: string): void => {
  drafts.forEach((draft, n) => {
    if (!isLone(draft)) return
    const here = drafts.slice(Math.max(0, n - 4), n).findLast(other => other.dropped === undefined)
    const base = here ?? recallValue(context, () => true)
    if (base === undefined || !fits(draft, base) || base.nominal === undefined || base.unit === undefined) return
    const size = Math.abs(draft.phrase.term.value)
    const isSame = draft.unit === undefined || draft.unit.code === base.unit.code
    if (!isSame && draft.unit?.code !== '%') return
    const width = draft.unit?.code === '%' && base.unit.code !== '%' ? (Math.abs(base.nominal) * size) / 100 : size
    draft.low = clean(base.nominal - width)
    draft.high = clean(base.nominal + width)
    draft.nominal = base.nominal
    draft.unit = base.unit
    draft.notes = [
      { kind: 'settled', text: `the tolerance was said by itself: read about the ${base.nominal} said before` },
    ]
    if (here !== undefined) here.dropped = 'joined with the tolerance after it'
  })
}
