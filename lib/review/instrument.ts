import type { Mark } from '@/lib/procedure/mark'
import { convert } from '@/lib/quantity/units'
import { INSTRUMENTS, type Instrument } from '@/lib/trade/instruments'
import { onceForText } from './memo'

/** @returns what kind of measuring instrument a listed tool is; undefined for every other tool. */
export const instrumentIn = onceForText((text: string): Instrument | undefined =>
  INSTRUMENTS.find(({ name }) => name.test(text)),
)

/** Half the width of a spec's tolerance, or the limit itself where there is one only. */
const room = ({ quantity }: Mark): number | undefined => {
  const { low, high } = quantity ?? {}
  return low !== undefined && high !== undefined ? (high - low) / 2 : high
}

/** @returns whether the finest division of a tool is wider than what the spec leaves. */
export const isTooCoarse = (spec: Mark, tool: string): boolean => {
  const { division } = instrumentIn(tool) ?? {}
  const unit = spec.quantity?.unit
  const left = room(spec)
  if (division === undefined || unit === undefined || left === undefined || left <= 0) return false
  const own = convert(division.value, division.unit, unit)
  return own.ok && own.value > left
}
