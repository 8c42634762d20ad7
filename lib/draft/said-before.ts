import type { Quantity } from '@/lib/quantity/quantity'
import type { Said } from './settle'

/** @returns the figure that tells how large a quantity is; 0 without one */
export const sizeOf = ({ low, high, nominal }: Quantity): number => nominal ?? high ?? low ?? 0

/** @returns whether two sizes are the same or less than `most` times apart */
export const isAlike = (a: number, b: number, most: number): boolean => a === b || (a / b < most && b / a < most)

/** Words that name no thing in particular. */
const NO_THING =
  /^(?:water|oil|grease|air|gas|fuel|hand|finger|machine|tape|tube|paper|one|thing|side|end|way|time|turn|bit|lot|top|bottom|front|back|rear|left|right|middle|minute|hour|second|day|week|month|year|book|sheet|card|label|chart|manual|guide|number|figure|mark|mil|bar|millimetre|inch|degree|pound|newton|metre|meter|foot|volt|amp|ohm|litre|liter)$/

/** @returns whether two sentences speak of one thing */
export const sharesThing = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean => {
  for (const thing of a) if (b.has(thing) && !NO_THING.test(thing)) return true
  return false
}

/** The last of what was said from a sentence on that passes; what was said before is not looked at. */
export const lastSaid = (
  recent: readonly Said[],
  sentence: number,
  passes: (said: Said) => boolean = () => true,
): Said | undefined => {
  for (let i = recent.length - 1; i >= 0; i--) {
    const said = recent[i]
    if (said === undefined || said.sentence < sentence) return undefined
    if (passes(said)) return said
  }
  return undefined
}
