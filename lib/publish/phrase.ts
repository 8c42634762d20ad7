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

const bare = (word: string): string => word.toLowerCase().replace(/[^\p{L}\p{N}']/gu, '')

/**
 * What it costs the reader to break a line or caption between two words: 0 at the end of a sentence, more inside a phrase.
 *
 * @param after the word before the break; @param before the word after it, if any
 */
export const breakCost = (after: string, before: string | undefined): number => {
  if (before === undefined || /[.?!…]["”’)]*$/.test(after)) return 0
  if (/[,;:–—]["”’)]*$/.test(after)) return 8
  if (/^\d/.test(after) && /^[^\d]/.test(before) && !OPENERS.has(bare(before))) return 60
  if (/^\d/.test(before) && /^(?:to|at|about|than|least|most|plus|minus|±)$/.test(bare(after))) return 60
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

const length = (text: string): number => [...text].length

/**
 * Breaks words into lines: as few as they need, broken where the phrase allows, even in length, the lower not shorter.
 *
 * @param words each at most `columns` characters
 * @returns undefined where they do not fit in `lines` lines
 */
export const toLines = (words: readonly string[], columns: number, lines: number): readonly string[] | undefined => {
  const whole = words.join(' ')
  if (length(whole) <= columns) return [whole]
  if (lines < 2) return undefined
  let best: { cost: number; lines: readonly string[] } | undefined
  for (let at = words.length - 1; at > 0; at--) {
    const head = words.slice(0, at).join(' ')
    if (length(head) > columns) continue
    const rest = toLines(words.slice(at), columns, lines - 1)
    if (rest === undefined) break
    const uneven = Math.abs(length(head) - length(rest[0] ?? ''))
    const cost = breakCost(words[at - 1] ?? '', words[at]) + uneven
    if (best === undefined || cost < best.cost) best = { cost, lines: [head, ...rest] }
  }
  return best?.lines
}
