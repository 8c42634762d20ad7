import type { Quantity } from '@/lib/quantity/quantity'
import { sizeOf } from './said-before'

type End = 'low' | 'high' | 'nominal'

/** The one figure of a quantity as another end of it. */
export const figureAs = (end: End, quantity: Quantity): Quantity => {
  const { unit } = quantity
  const alone: Partial<Record<End, number>> = { [end]: sizeOf(quantity) }
  return unit === undefined ? alone : { ...alone, unit }
}
