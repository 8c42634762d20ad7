/** Line breaks and tabs of every script: they become one blank. */
const BREAKS = /[\t\n\v\f\r\u0085\u2028\u2029 ]+/gu

/**
 * What no document may carry: control characters, half surrogate pairs, byte order marks, noncharacters XML forbids, and
 * the embeddings, overrides and isolates that turn the direction of what follows. LRM and RLM stay: scripts need them.
 */
const UNSHOWABLE = /[\p{Cc}\p{Cs}\u202A-\u202E\u2066-\u2069\uFEFF\uFFFE\uFFFF]/gu

/**
 * A text as one line of a document: white space folded, unshowable characters dropped.
 *
 * @returns a line without blanks at its ends; `toLine(toLine(x)) = toLine(x)`
 */
export const toLine = (text: string): string =>
  text.replace(BREAKS, ' ').replace(UNSHOWABLE, '').replace(/ {2,}/g, ' ').replace(/^ | $/g, '')

/** @returns paragraphs (parted by empty lines) of lines, each line as `toLine`; empty ones left out. */
export const toParagraphs = (text: string): readonly (readonly string[])[] =>
  text
    .split(/\r?\n(?:[ \t]*\r?\n)+/)
    .map(paragraph =>
      paragraph
        .split(/\r\n|\n|\r/)
        .map(toLine)
        .filter(Boolean),
    )
    .filter(lines => lines.length > 0)

/** @returns `a`, `a and b`, `a, b and c`. */
export const listOf = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`

/**
 * A file name from a title, safe on every system: letters, figures and hyphens.
 *
 * @param fallback used where nothing is left of the title
 * @returns at most 60 characters, never empty, never a name that Windows reserves
 */
export const toFileName = (title: string, fallback: string): string => {
  const words = toLine(title)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
  const letters = [...words.replace(/^-+|-+$/g, '')]
  const cut = letters.slice(0, 60).join('')
  // What is too long ends with a whole word, where there is more than one.
  const whole = letters.length > 60 && letters[60] !== '-' ? cut.replace(/-[^-]*$/, '') : cut
  const name = whole.replace(/^-+|-+$/g, '')
  return name === '' || /^(?:con|prn|aux|nul|com\d|lpt\d)$/.test(name) ? fallback : name
}
