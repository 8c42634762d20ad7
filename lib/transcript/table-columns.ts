import { parseClock } from './clock'

/** Which column holds what; `scale` turns its numbers into seconds. */
export type Columns = {
  readonly start: number
  readonly end?: number
  readonly length?: number
  readonly text: number
  readonly speaker?: number
  readonly scale: number
}

const HEADINGS = {
  start: /^(?:start|begin|from|in|time|t|timestamp|offset|onset)\b/,
  end: /^(?:end|stop|to|out|until|offset end)\b/,
  length: /^(?:duration|dur|length)\b/,
  text: /^(?:text|transcript|transcription|content|caption|subtitle|words?|utterance|sentence|line|said|speech)\b/,
  speaker: /^(?:speaker|who|name|voice|person)\b/,
} as const

const normal = (cell: string): string => cell.trim().toLowerCase().replace(/[_-]+/g, ' ')

/** Columns a heading row names, or undefined where it is no heading. */
export const columnsFromHeading = (row: readonly string[]): Columns | undefined => {
  const cells = row.map(normal)
  const find = (pattern: RegExp) => {
    const at = cells.findIndex(cell => pattern.test(cell))
    return at < 0 ? undefined : at
  }
  const [start, end, length, text, speaker] = [
    find(HEADINGS.start),
    find(HEADINGS.end),
    find(HEADINGS.length),
    find(HEADINGS.text),
    find(HEADINGS.speaker),
  ]
  if (start === undefined || text === undefined || start === text) return undefined
  const scale = /\b(?:ms|millis\w*)\b/.test(cells[start] ?? '') ? 0.001 : 1
  return {
    start,
    text,
    scale,
    ...(end === undefined || end === text ? {} : { end }),
    ...(length === undefined ? {} : { length }),
    ...(speaker === undefined ? {} : { speaker }),
  }
}

/** Seconds, or a number in the table's own unit; undefined where a cell is no time. */
export const parseMoment = (cell: string | undefined): number | undefined => {
  const text = cell?.trim() ?? ''
  if (/^\d{1,15}(?:[.,]\d{1,9})?\s?s?$/.test(text)) return Number(text.replace(',', '.').replace(/\s*s$/, ''))
  return parseClock(text.replace(/^\[(.*)\]$/, '$1'))
}

/** Columns a first row without heading shows: a time, perhaps a second one, perhaps a speaker, text last. */
export const columnsFromRow = (row: readonly string[]): Columns | undefined => {
  if (row.length < 2 || parseMoment(row[0]) === undefined) return undefined
  const text = row.length - 1
  const hasEnd = row.length > 2 && parseMoment(row[1]) !== undefined
  if (parseMoment(row[text]) !== undefined) return undefined
  const speaker = row.length === (hasEnd ? 4 : 3) ? text - 1 : undefined
  return { start: 0, text, scale: 1, ...(hasEnd ? { end: 1 } : {}), ...(speaker === undefined ? {} : { speaker }) }
}
