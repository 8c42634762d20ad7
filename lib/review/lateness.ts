import type { Mark } from '@/lib/procedure/mark'
import type { SheetStep } from '@/lib/procedure/sheet'
import type { Presence } from './danger'
import { onceForText } from './memo'
import type { StemIndex } from './stem-index'
import { stemSet } from './words'

const COMMON = new Set(
  'touch keep make clear work let never wear burn cut hurt kill damage serious injury cause remove fit use open turn run put hold check step hot hand face clean set start move pull push take'.split(
    ' ',
  ),
)

/** @returns the stems of a caution that say what it is about. */
export const ownStems = onceForText((text: string): readonly string[] =>
  [...stemSet(text)].filter(stem => !COMMON.has(stem)),
)

/** @returns whether a caution has nothing in common with the step it stands before, nor with a later one. */
export const isApart = (caution: Mark, number: number, index: StemIndex): boolean =>
  !ownStems(caution.text).some(stem => (index.get(stem)?.at(-1) ?? 0) >= number)

/** Whether a caution names something that a step names. */
const isOf = (caution: Mark, { mark }: SheetStep): boolean => {
  const stems = stemSet(mark.text)
  return ownStems(caution.text).some(stem => stems.has(stem))
}

/**
 * How a hazard plainly there stands to the cautions against it.
 *
 * @returns `late` where the first of them comes after its step and belongs there, `missing` where it comes later and is at home
 *   where it stands, so that the step lacks one of its own; undefined where all is well, where none speaks of it, or where the
 *   first is of something else and the hazard is not the gravest
 */
export const lateness = (
  { hazard, step, isPlain, last, steps, cautions, protectedFrom }: Presence,
  index: StemIndex,
): 'late' | 'missing' | undefined => {
  const by = isPlain ? step.number : last.number
  const [first] = cautions
  const isWorn = protectedFrom !== undefined && protectedFrom > 0 && protectedFrom <= step.number
  const isInTime = isWorn || cautions.some(({ number }) => number <= by)
  if (first === undefined || isInTime) return undefined
  const isAway = isApart(first.mark, first.number, index)
  if (isAway) return 'late'
  if (!isPlain) return undefined
  if (isOf(first.mark, step)) return 'late'
  // About something of its own, at home where it stands: the earlier step lacks one, if it brings the same.
  if (steps.has(first.number)) return 'missing'
  return hazard.level === 'danger' ? 'late' : undefined
}
