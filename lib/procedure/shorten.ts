/**
 * A text in little room: as many of its whole words as fit, closed by an ellipsis where some are left out.
 *
 * @param most characters, the ellipsis among them; at least 2
 * @returns at most `most` characters; the text itself where it fits
 */
export const shorten = (text: string, most: number): string => {
  const all = [...text]
  if (all.length <= most) return text
  const space = all.lastIndexOf(' ', most - 1)
  const words = all.slice(0, space > 0 ? space : most - 1).join('')
  return `${words.replace(/[\s,;:.–-]+$/, '')}…`
}

/** @returns a text in quotation marks inside a sentence: shortened, without the full stop of its own. */
export const quoted = (text: string, most = 60): string => `“${shorten(text.trim().replace(/\.$/, ''), most)}”`

/** @returns what was said, in quotation marks and shortened, as the end of a sentence: with a full stop where it has no end of its own. */
export const sayingThat = (text: string, most = 80): string => {
  const short = shorten(text.trim(), most)
  return `"${short}"${/[.!?…]$/.test(short) ? '' : '.'}`
}
