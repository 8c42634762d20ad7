import Papa from 'papaparse'
import type { Problem } from '@/lib/procedure/problem'
import type { Cue } from '@/lib/procedure/recording'
import { parseClock } from './clock'
import { atLine, doubtTimes, quote, type Reading, toSpeakingTime } from './reading'

/** Which column holds what; `scale` turns its numbers into seconds. */
type Columns = {
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

const columnsFromHeading = (row: readonly string[]): Columns | undefined => {
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

const parseMoment = (cell: string | undefined): number | undefined => {
  const text = cell?.trim() ?? ''
  if (/^\d+(?:[.,]\d+)?\s*s?$/.test(text)) return Number(text.replace(',', '.').replace(/\s*s$/, ''))
  return parseClock(text.replace(/^\[(.*)\]$/, '$1'))
}

const columnsFromRow = (row: readonly string[]): Columns | undefined => {
  if (row.length < 2 || parseMoment(row[0]) === undefined) return undefined
  const text = row.length - 1
  const hasEnd = row.length > 2 && parseMoment(row[1]) !== undefined
  if (parseMoment(row[text]) !== undefined) return undefined
  const speaker = row.length === (hasEnd ? 4 : 3) ? text - 1 : undefined
  return { start: 0, text, scale: 1, ...(hasEnd ? { end: 1 } : {}), ...(speaker === undefined ? {} : { speaker }) }
}

type Row = { readonly line: number; readonly cells: readonly string[] }

const toRows = (text: string, delimiter: string): { readonly rows: readonly Row[]; readonly isQuoted: boolean } => {
  const quoted = Papa.parse<string[]>(text, { delimiter })
  const isQuoted = !quoted.errors.some(error => error.type === 'Quotes')
  const data = isQuoted ? quoted.data : text.split(/\r\n|\n|\r/).map(line => line.split(delimiter))
  let line = 1
  const rows = data.map(cells => {
    const row = { line, cells }
    line += 1 + cells.reduce((sum, cell) => sum + (cell.match(/\r\n|\n|\r/g)?.length ?? 0), 0)
    return row
  })
  return { rows, isQuoted }
}

/** The delimiter and columns of a table, or undefined where a text is none. */
const findTable = (sample: string): { delimiter: string; columns: Columns; hasHeading: boolean } | undefined => {
  for (const delimiter of ['\t', ';', ',']) {
    const rows = toRows(sample, delimiter).rows.filter(row => row.cells.some(cell => cell.trim() !== ''))
    const first = rows[0]?.cells ?? []
    if (first.length < 2) continue
    const heading = columnsFromHeading(first)
    if (heading !== undefined) return { delimiter, columns: heading, hasHeading: true }
    const columns = columnsFromRow(first)
    if (columns === undefined) continue
    const fitting = rows.filter(row => parseMoment(row.cells[0]) !== undefined && row.cells.length > columns.text)
    if (fitting.length >= 0.7 * rows.length) return { delimiter, columns, hasHeading: false }
  }
  return undefined
}

const SAMPLE = 20_000

/** Whether a text is a table with a column of times and one of text. */
export const isTable = (text: string): boolean => {
  const sample = text.slice(0, SAMPLE)
  return findTable(text.length > SAMPLE ? sample.slice(0, sample.lastIndexOf('\n') + 1) : sample) !== undefined
}

/** Numbers without unit are milliseconds where seconds would make people speak slower than a word in ten seconds. */
const scaleOf = (rows: readonly Row[], { start, end, text, scale }: Columns): number => {
  if (scale !== 1 || end === undefined) return scale
  let [seconds, words] = [0, 0]
  for (const { cells } of rows) {
    if (!/^\d+$/.test(cells[start]?.trim() ?? '') || !/^\d+$/.test(cells[end]?.trim() ?? '')) continue
    seconds += Math.max(0, Number(cells[end]) - Number(cells[start]))
    words += cells[text]?.match(/\S+/g)?.length ?? 0
  }
  return words > 0 && words / seconds < 0.1 ? 0.001 : 1
}

/**
 * Reads a table separated by tabs, commas or semicolons, with or without a heading row: a column of starts, one of text, and
 * where there are any ends or lengths and speakers. Times are seconds or clock times; whole numbers that would be far too
 * slow as seconds are milliseconds.
 *
 * @returns cues in file order; a problem for every row without a time or text
 * @source RFC 4180 for quoting
 */
export const parseTable = (text: string): Reading => {
  const sample = text.slice(0, SAMPLE)
  const table = findTable(text.length > SAMPLE ? sample.slice(0, sample.lastIndexOf('\n') + 1) : sample)
  if (table === undefined) return { cues: [], problems: [] }
  const { rows: all, isQuoted } = toRows(text, table.delimiter)
  const { columns } = table
  const problems: Problem[] = []
  if (!isQuoted)
    problems.push(atLine(1, 'stray-quote', 'a quotation mark is never closed; they are all taken as text.'))
  const filled = all.filter(row => row.cells.some(cell => cell.trim() !== ''))
  const rows = table.hasHeading ? filled.slice(1) : filled
  const scale = scaleOf(rows, columns)
  if (scale !== columns.scale)
    problems.push(atLine(rows[0]?.line ?? 1, 'assumed-milliseconds', 'the times were read as milliseconds.'))
  const at = (row: Row | undefined, column: number | undefined): number | undefined => {
    const cell = column === undefined ? undefined : row?.cells[column]
    const moment = parseMoment(cell)
    return moment === undefined ? undefined : cell?.includes(':') ? moment : Math.round(moment * scale * 1e6) / 1e6
  }
  const cues: Cue[] = []
  rows.forEach((row, i) => {
    const start = at(row, columns.start)
    const held = row.cells[columns.text]?.trim() ?? ''
    if (start === undefined || held === '') {
      const missing = start === undefined ? 'time' : 'text'
      const message = `this row has no ${missing} in its column and is left out: ${quote(row.cells.join(' | '))}`
      problems.push(atLine(row.line, 'unread-row', message))
      return
    }
    const length = at(row, columns.length)
    const next = at(rows[i + 1], columns.start)
    const guess = next !== undefined && next > start ? next : start + toSpeakingTime(held)
    const end = at(row, columns.end) ?? (length === undefined ? guess : start + length)
    const speaker = columns.speaker === undefined ? '' : (row.cells[columns.speaker]?.trim() ?? '')
    const cue: Cue = { start, end, text: held, ...(speaker === '' ? {} : { speaker }) }
    cues.push(cue)
    problems.push(...doubtTimes(cue, row.line))
  })
  return { cues, problems }
}
