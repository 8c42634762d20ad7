/** Half-open span [start, end) in seconds. */
export type Span = { readonly start: number; readonly end: number }

/** @returns seconds to the whole millisecond: no recording is heard or written down more finely. */
export const toMilliseconds = (seconds: number): number => Math.round(seconds * 1000) / 1000

/** @returns the length both spans share, in seconds; 0 when they only touch or lie apart. */
export const sharedTime = (a: Span, b: Span): number => Math.max(0, Math.min(a.end, b.end) - Math.max(a.start, b.start))

/** @returns seconds between two spans; 0 when they touch or overlap. */
export const gapBetween = (a: Span, b: Span): number => Math.max(0, a.start - b.end, b.start - a.end)

/**
 * A moment for people: `0:07`, `12:34`, `1:02:03`.
 *
 * @param seconds finite, at least 0; shown to the whole second below
 */
export const formatTime = (seconds: number): string => {
  const whole = Math.floor(seconds + 1e-6)
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60]
  const two = (n: number) => String(n).padStart(2, '0')
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`
}

/**
 * A time as people write it: `83`, `83.5`, `1:23`, `1:02:03.250`, decimals with point or comma.
 *
 * @returns seconds, or undefined where the text is no time
 */
export const parseTime = (text: string): number | undefined => {
  const match = /^(?:(?:(\d+):)?(\d{1,2}):)?(\d+)(?:[.,](\d+))?$/.exec(text.trim())
  if (match === null) return undefined
  const [, h, m, s, fraction] = match
  if (m !== undefined && (Number(s) > 59 || (h !== undefined && Number(m) > 59))) return undefined
  return Number(h ?? 0) * 3600 + Number(m ?? 0) * 60 + Number(`${s}.${fraction ?? 0}`)
}

/**
 * A span as a W3C Media Fragment in normal play time, such as `t=75,92`.
 *
 * @returns at most three decimals, no trailing zeros
 * @source W3C Media Fragments URI 1.0, temporal dimension
 */
export const formatFragment = ({ start, end }: Span): string => `t=${toDecimals(start)},${toDecimals(end)}`

const toDecimals = (n: number): string => String(Math.round(n * 1000) / 1000)
