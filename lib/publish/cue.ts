/** @returns `00:01:02.003`; WebVTT parts the milliseconds with a point, SubRip with a comma. */
export const formatCueTime = (seconds: number, mark: '.' | ','): string => {
  const all = Math.round(seconds * 1000)
  const two = (n: number) => String(n).padStart(2, '0')
  const [h, m, s] = [Math.floor(all / 3_600_000), Math.floor(all / 60_000) % 60, Math.floor(all / 1000) % 60]
  return `${two(h)}:${two(m)}:${two(s)}${mark}${String(all % 1000).padStart(3, '0')}`
}

/** @returns a line as WebVTT cue text. @source W3C WebVTT: `&`, `<` and `>` by reference, so no tag and no `-->` can stand in it */
export const toCueText = (line: string): string =>
  line.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')

/** @returns a line for SubRip, which has no escapes: what a player would take for a tag or a time line is written with other brackets. */
export const toSubripText = (line: string): string => line.replace(/-->/g, '→').replace(/</g, '‹').replace(/>/g, '›')
