import type { Quantity } from '@/lib/quantity/quantity'
import type { Said } from './settle'

/** @returns the figure that tells how large a quantity is; 0 without one */
export const sizeOf = ({ low, high, nominal }: Quantity): number => nominal ?? high ?? low ?? 0

/** @returns whether two sizes are the same or less than `most` times apart */
export const isAlike = (a: number, b: number, most: number): boolean => a === b || (a / b < most && b / a < most)

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
