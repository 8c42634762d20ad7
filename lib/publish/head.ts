import type { PhrasingContent } from 'mdast'
import { countOf } from '@/lib/procedure/count'
import type { Sheet } from '@/lib/procedure/sheet'
import { formatTime } from '@/lib/procedure/time'
import { findingLine, findingLines } from './findings'
import { type Block, bullets, emphasis, heading, item, link, paragraph, quote, strong, table, text } from './nodes'
import type { PublishOptions } from './publication'
import { SECTIONS } from './sections'
import { marksOf } from './selection'
import { toLine, toParagraphs } from './text'
import { CLOSING_HEADING, CLOSING_NOTE, formatInterval } from './words'

/** What the head must say before anything else, as a bold opening, a sentence and a list. */
export type Notice = { readonly opening: string; readonly text: string; readonly items: readonly string[] }

/** Most stop findings listed at a head; the list at the end has them all. */
const MOST_AT_HEAD = 10

const shortened = (lines: readonly string[]): readonly string[] =>
  lines.length <= MOST_AT_HEAD
    ? lines
    : [...lines.slice(0, MOST_AT_HEAD), `and ${lines.length - MOST_AT_HEAD} more, in the review`]

/** How many marks a sheet holds, how many of them are pencilled, and how many cautions among those. */
const counts = (sheet: Sheet) => {
  const marks = marksOf(sheet)
  const pencilled = marks.filter(mark => mark.pencilled !== undefined)
  const cautions = pencilled.filter(mark => mark.kind === 'caution')
  return { all: marks.length, pencilled: pencilled.length, cautions: cautions.length }
}

/**
 * What every publication says at its head.
 *
 * @param sheet with everything in it, also what `options.pencilled` leaves out
 */
export const toNotices = (sheet: Sheet, options: PublishOptions): readonly Notice[] => {
  const stops = (options.findings ?? []).filter(({ level, waived }) => level === 'stop' && waived === undefined)
  const { all, pencilled, cautions } = counts(sheet)
  const among = cautions === 0 ? '' : `, ${countOf(cautions, 'caution')} among them`
  const notices: Notice[] = []
  if (stops.length > 0)
    notices.push({
      opening: `Not fit for release: ${countOf(stops.length, 'stop finding')}.`,
      text: 'Settle this before the job is done from here.',
      items: shortened(stops.map(findingLine)),
    })
  if (pencilled > 0)
    notices.push(
      options.pencilled === 'leave-out'
        ? {
            opening: `Left out: ${countOf(pencilled, 'pencilled mark')} of ${all}${among}.`,
            text: `Nobody has checked ${pencilled === 1 ? 'it' : 'them'} yet, so this may be incomplete.`,
            items: [],
          }
        : {
            opening: `Unchecked: ${countOf(pencilled, 'mark')} of ${all}${among}.`,
            text:
              pencilled === 1
                ? 'It was drafted by program and nobody has kept it yet. It is flagged “pencilled”.'
                : 'They were drafted by program and nobody has kept them yet. Each is flagged “pencilled”.',
            items: [],
          },
    )
  return notices
}

const noticeBlock = ({ opening, text: words, items }: Notice): Block =>
  quote(
    paragraph(strong(opening), text(` ${words}`)),
    ...(items.length === 0 ? [] : [bullets(items.map(line => item(paragraph(text(line)))))]),
  )

/** Lines under the title: label and what it says. */
export const headLines = (sheet: Sheet): readonly (readonly [string, string])[] => {
  const { equipment, revision, author, interval } = sheet.heading
  const rows: [string, string | undefined][] = [
    ['Equipment', equipment],
    ['Due', formatInterval(interval)],
    ['Revision', revision],
    ['Author', author],
  ]
  return rows.flatMap(([label, value]) => {
    const line = toLine(value ?? '')
    return line === '' ? [] : [[label, line] as const]
  })
}

export const headBlocks = (sheet: Sheet, notices: readonly Notice[], address: string): readonly Block[] => {
  const lines: PhrasingContent[][] = headLines(sheet).map(([label, value]) => [strong(`${label}:`), text(` ${value}`)])
  const { footage } = sheet
  const name = toLine(footage?.name ?? '')
  if (footage !== null && name !== '')
    lines.push([strong('Footage:'), text(' '), link(name, address), text(`, ${formatTime(footage.seconds)}`)])
  return [
    heading(1, toLine(sheet.heading.title) || 'Untitled procedure'),
    ...(lines.length === 0 ? [] : [bullets(lines.map(line => item(paragraph(...line))))]),
    ...notices.map(noticeBlock),
  ]
}

export const scopeSection = (scope: string): readonly Block[] => {
  const paragraphs = toParagraphs(scope).map(lines =>
    paragraph(
      ...lines.flatMap((line, i): PhrasingContent[] => (i === 0 ? [text(line)] : [{ type: 'break' }, text(line)])),
    ),
  )
  return paragraphs.length === 0 ? [] : [heading(2, SECTIONS.scope), ...paragraphs]
}

export const referencesSection = (sheet: Sheet): readonly Block[] => {
  const items = sheet.heading.references.flatMap(({ title, part }) => {
    const [name, rest] = [toLine(title), toLine(part)]
    if (name === '' && rest === '') return []
    return [
      item(paragraph(...(name === '' ? [] : [emphasis(text(name))]), ...(rest === '' ? [] : [text(`, ${rest}`)]))),
    ]
  })
  return items.length === 0 ? [] : [heading(2, SECTIONS.references), bullets(items)]
}

const titled = (title: string, items: readonly PhrasingContent[][]): readonly Block[] =>
  items.length === 0 ? [] : [heading(2, title), bullets(items.map(nodes => item(paragraph(...nodes))))]

/** All findings and what was let stand, where they were asked for. */
export const findingsSections = (sheet: Sheet, options: PublishOptions): readonly Block[] => {
  const { findings, waived } = findingLines(sheet, options)
  const plain = (lines: readonly string[]) => lines.map(line => [text(line)])
  return [...titled(SECTIONS.findings, plain(findings)), ...titled(SECTIONS.waivers, plain(waived))]
}

/** Rows of the sign-off table, to be filled in by hand. */
export const SIGN_OFF_ROWS = ['Written', 'Checked', 'Released'] as const
export const SIGN_OFF_COLUMNS = ['Sign-off', 'Name', 'Date', 'Signature'] as const

export const closingBlocks = (sheet: Sheet): readonly Block[] => {
  const revision = toLine(sheet.heading.revision)
  const author = toLine(sheet.heading.author)
  const rows = SIGN_OFF_ROWS.map((row, i) => [[text(row)], i === 0 && author !== '' ? [text(author)] : [], [], []])
  return [
    heading(2, SECTIONS.signOff),
    paragraph(text(revision === '' ? 'Revision: none stated' : `Revision: ${revision}`)),
    table([SIGN_OFF_COLUMNS.map(word => [text(word)]), ...rows]),
    heading(2, CLOSING_HEADING),
    paragraph(text(CLOSING_NOTE)),
  ]
}
