import Papa from 'papaparse'
import type { Problem } from '@/lib/procedure/problem'
import type { Cue } from '@/lib/procedure/recording'
import { atLine, doubtTimes, guessScale, quote, type Reading, toSpeakingTime } from './reading'
import { type Columns, columnsFromHeading, columnsFromRow, parseMoment } from './table-columns'

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

/** Turns whole numbers without unit into seconds. */
const scaleOf = (rows: readonly Row[], { start, end, text, scale }: Columns): number => {
  if (scale !== 1 || end === undefined) return scale
  let [length, words] = [0, 0]
  for (const { cells } of rows) {
    if (!/^\d+$/.test(cells[start]?.trim() ?? '') || !/^\d+$/.test(cells[end]?.trim() ?? '')) continue
    length += Math.max(0, Number(cells[end]) - Number(cells[start]))
    words += cells[text]?.match(/\S+/g)?.length ?? 0
  }
  return guessScale(words, length)
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
    problems.push(
      atLine(
        rows[0]?.line ?? 1,
        'assumed-scale',
        `a unit of time here was read as ${scale} s; else people would speak far too slowly.`,
      ),
    )
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
