import { type Draft, toDrafts } from './draft'
import { unitOf } from './units'

/** How much of what was said before is looked at, in characters from its end. */
const REACH = 700

/** Units whose values do not stand in for a bare number. */
const PASSING = new Set(['time', 'ratio', 'distance', 'angle'])

/**
 * The last value with a certain unit that was said before.
 *
 * @param fits which UCUM codes may stand in
 * @returns undefined where none was said within reach
 */
export const recallValue = (context: string, fits: (code: string) => boolean): Draft | undefined => {
  if (context === '') return undefined
  const { drafts } = toDrafts(context.slice(-REACH))
  return drafts.findLast(({ unit }) => {
    const known = unitOf(unit?.code ?? '')
    return known !== undefined && !PASSING.has(known.kind) && fits(known.code)
  })
}
