/** A time as transcripts write it: `0:23`, `1:02:03`, `00:00:20,500`, `125:07.5`. Source of a pattern without groups. */
export const CLOCK = String.raw`(?:\d{1,4}:)?\d{1,4}:\d{2}(?:[.,]\d{1,6})?`

/**
 * Seconds of a time as {@link CLOCK} matches it.
 *
 * @returns undefined where minutes or seconds are past 59 (minutes may be, without hours)
 */
export const parseClock = (text: string): number | undefined => {
  const parts = text.trim().replace(',', '.').split(':', 4).map(Number)
  if (parts.length < 2 || parts.length > 3 || parts.some(part => !Number.isFinite(part))) return undefined
  const [seconds = 0, minutes = 0, hours] = parts.reverse()
  if (seconds >= 60 || (hours !== undefined && minutes >= 60)) return undefined
  return Math.round(((hours ?? 0) * 3600 + minutes * 60 + seconds) * 1e6) / 1e6
}
