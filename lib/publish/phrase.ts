/** Words before which a line likes to break, and words it must not end on. English; common practice, no source. */
const OPENERS = new Set(
  'and but or so because when while where which who that then if unless until before after once with without from into onto over under between through to for at by in on of as than'.split(
    ' ',
  ),
)
const HANGERS = new Set(
  "a an the this these those my your his her its our their to of in on at by for with from and or but if as no not don't i you we they he she it is are was be will would can could should must about plus minus around".split(
    ' ',
  ),
)

/** Words that hold two figures together: ten *to* twelve, forty *plus or minus* three. */
const LINKS = new Set(['to', 'or', 'at', 'about', 'than', 'least', 'most', 'plus', 'minus', 'and', 'point', 'by'])

const bare = (word: string): string => word.toLowerCase().replace(/[^\p{L}\p{N}']/gu, '')

/**
 * What it costs the reader to break a line or caption between two words: 0 at the end of a sentence, more inside a phrase.
 *
 * @param after the word before the break; @param before the word after it, if any
 */
export const breakCost = (after: string, before: string | undefined): number => {
  if (before === undefined || /[.?!…]["”’)]*$/.test(after)) return 0
  if (/[,;:–—]["”’)]*$/.test(after)) return 8
  if (/^[\d.]/.test(after) && (LINKS.has(bare(before)) || !OPENERS.has(bare(before)))) return 60
  if (/^[\d.]/.test(before) && (LINKS.has(bare(after)) || after === '±')) return 60
  if (HANGERS.has(bare(after))) return 45
  return OPENERS.has(bare(before)) ? 15 : 28
}

/** Words longer than a line are cut, so that no line can be too long. */
export const cutWord = (word: string, columns: number): readonly string[] => {
  const points = [...word]
  if (points.length <= columns) return [word]
  return Array.from({ length: Math.ceil(points.length / columns) }, (_, i) =>
    points.slice(i * columns, (i + 1) * columns).join(''),
  )
}

/** Words of a stretch, measured once: where each starts in the joined text, and what breaking after it costs. */
export type Measured = { readonly starts: readonly number[]; readonly costs: readonly number[] }

/** @returns the measures of words joined by single blanks; lengths in code points. */
export const measure = (words: readonly string[]): Measured => {
  const starts = [0]
  for (const word of words) starts.push((starts.at(-1) ?? 0) + [...word].length + 1)
  return { starts, costs: words.map((word, i) => breakCost(word, words[i + 1])) }
}

const lengthOf = ({ starts }: Measured, from: number, to: number): number => (starts[to] ?? 0) - (starts[from] ?? 0) - 1

/**
 * Breaks words `from` up to `to` into lines: as few as they need, where the phrase allows, even in length.
 *
 * @returns index of the first word of each line; undefined where they do not fit in `lines` lines
 */
export const toLines = (
  words: Measured,
  from: number,
  to: number,
  columns: number,
  lines: number,
): readonly number[] | undefined => {
  if (lengthOf(words, from, to) <= columns) return [from]
  if (lines < 2 || lengthOf(words, from, to) > lines * columns + lines) return undefined
  let best: { cost: number; lines: readonly number[] } | undefined
  for (let at = from + 1; at < to && lengthOf(words, from, at) <= columns; at++) {
    const rest = toLines(words, at, to, columns, lines - 1)
    if (rest === undefined) continue
    const uneven = Math.abs(lengthOf(words, from, at) - lengthOf(words, at, rest[1] ?? to))
    const cost = (words.costs[at - 1] ?? 0) + uneven
    if (best === undefined || cost < best.cost) best = { cost, lines: [from, ...rest] }
  }
  return best?.lines
}
