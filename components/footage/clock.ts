import { formatTime } from '@/lib/procedure/time'

/** How far the footage goes back or on by one press, seconds. */
export const JUMP = 5

/** A moment to the tenth of a second, such as `2:05.4`; never rounds up to a moment not reached yet. */
export const formatMoment = (seconds: number): string => {
  const tenths = Math.floor(Math.max(0, seconds) * 10 + 1e-6)
  return `${formatTime(Math.floor(tenths / 10))}.${tenths % 10}`
}
