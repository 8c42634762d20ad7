import type { PhrasingContent, Root } from 'mdast'
import { countOf } from '@/lib/procedure/count'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'
import { formatTime } from '@/lib/procedure/time'
import { footageAddress, spanAddress } from './address'
import { LEAST_CHAPTER, toChapters } from './chapters'
import { toNotices } from './head'
import { type Block, bullets, heading, item, link, paragraph, strong, text } from './nodes'
import { markdown } from './processor'
import type { PublishOptions } from './publication'
import { selected } from './selection'
import { toShown } from './shown'
import { listOf, toLine } from './text'
import { type Thing, toThings } from './things'
import { CLOSING_NOTE, formatInterval } from './words'

/** Longest show notes where the user sets no limit, characters. Common practice, no source. */
export const MOST_CHARACTERS = 5000

/** A line of the notes: words, perhaps with a time that links into the footage. */
type Line = {
  readonly time?: { readonly label: string; readonly address: string }
  readonly bold?: string
  readonly text: string
}
type NotesPart = { readonly title: string; readonly lines: readonly Line[] }
type Notes = {
  readonly title: string
  readonly summary: string
  readonly warnings: readonly string[]
  readonly parts: readonly NotesPart[]
  readonly closing: string
}

const flag = (mark: Mark): string => (mark.pencilled === undefined ? '' : ' (pencilled)')

const thingLine = ({ name, price, mark }: Thing): Line => ({
  text: `${name}${price === undefined ? '' : ` (${price})`}${flag(mark)}`,
})

/** One paragraph from the marks: what is done on what, how many steps from which to which, what it needs, when it is due. */
const summaryOf = (sheet: Sheet): string => {
  const { title, equipment, interval } = sheet.heading
  const steps = sheet.steps.map(step => toLine(step.mark.text).replace(/\.$/, '')).filter(Boolean)
  const due = formatInterval(interval)
  const what = [toLine(title), toLine(equipment)].filter(Boolean).join('. ')
  const ends =
    steps.length > 1 ? `, from “${steps[0]}” to “${steps.at(-1)}”` : steps.length === 1 ? `: “${steps[0]}”` : ''
  const counts = [
    sheet.specs.length === 0 ? '' : countOf(sheet.specs.length, 'spec'),
    sheet.safety.length === 0 ? '' : countOf(sheet.safety.length, 'caution'),
  ].filter(Boolean)
  return [
    what === '' ? '' : `${what}.`,
    steps.length === 0 ? '' : `${countOf(steps.length, 'step')}${ends}.`,
    counts.length === 0 ? '' : `With ${listOf(counts)}.`,
    due === undefined ? '' : `Due ${due}.`,
  ]
    .filter(Boolean)
    .join(' ')
}

const toNotes = (whole: Sheet, options: PublishOptions): Notes => {
  const sheet = selected(whole, options)
  const units = options.units ?? 'as-said'
  const address = footageAddress(sheet.footage?.name, options.footageAddress)
  const chapters = toChapters(sheet, options.notes?.leastChapter ?? LEAST_CHAPTER)
  const time = (start: number, end: number) => ({
    label: formatTime(start),
    address: spanAddress(address, { start, end }),
  })
  const specs = sheet.specs.map((mark): Line => {
    const { text: name, value, tail, aside } = toShown(mark, units)
    const rest = [value, tail].filter(Boolean).join(', ')
    return {
      text: `${name}: ${rest}${aside === undefined ? '' : ` (${aside})`}${flag(mark)}`,
      time: time(mark.start, mark.end),
    }
  })
  const safety = sheet.safety.map(
    (mark): Line => ({
      bold: `${toShown(mark, units).label}:`,
      text: `${toLine(mark.text)}${flag(mark)}`,
      time: time(mark.start, mark.end),
    }),
  )
  const parts: NotesPart[] = [
    { title: 'Chapters', lines: chapters.map(({ start, end, title }) => ({ time: time(start, end), text: title })) },
    { title: 'Safety', lines: safety },
    { title: 'Tools', lines: toThings(sheet, 'tool').map(thingLine) },
    { title: 'Materials', lines: toThings(sheet, 'material').map(thingLine) },
    { title: 'Values', lines: specs },
    {
      title: 'References',
      lines: sheet.heading.references.map(({ title, part }) => ({
        text: [toLine(title), toLine(part)].filter(Boolean).join(', '),
      })),
    },
  ]
  return {
    title: toLine(sheet.heading.title) || 'Untitled procedure',
    summary: summaryOf(sheet),
    warnings: toNotices(whole, options).map(({ opening, text: words }) => `${opening} ${words}`),
    parts: parts.filter(part => part.lines.length > 0),
    closing: CLOSING_NOTE,
  }
}

/** A reference that is an address becomes a link; anything else stays words. */
const words = (value: string): PhrasingContent =>
  /^https?:\/\/[^\s<>"]+$/.test(value) ? link(value, value) : text(value)

const toBlocks = ({ title, summary, warnings, parts, closing }: Notes): Root => {
  const line = ({ time, bold, text: value }: Line) =>
    item(
      paragraph(
        ...(time === undefined ? [] : [link(time.label, time.address), text(' ')]),
        ...(bold === undefined ? [] : [strong(bold), text(' ')]),
        words(value),
      ),
    )
  const children: Block[] = [
    heading(1, title),
    ...(summary === '' ? [] : [paragraph(text(summary))]),
    ...warnings.map(warning => paragraph(strong(warning))),
    ...parts.flatMap(part => [heading(2, part.title), bullets(part.lines.map(line))]),
    paragraph(text(closing)),
  ]
  return { type: 'root', children }
}

const toPlainText = ({ title, summary, warnings, parts, closing }: Notes): string => {
  const line = ({ time, bold, text: value }: Line) =>
    [time?.label, bold, value].filter(each => each !== undefined).join(' ')
  const blocks = [
    [title],
    ...(summary === '' ? [] : [[summary]]),
    ...warnings.map(warning => [warning]),
    ...parts.map(part => [part.title, ...part.lines.map(line)]),
    [closing],
  ]
  return `${blocks.map(block => block.join('\n')).join('\n\n')}\n`
}

/** Show notes as Markdown and as plain text, with what exceeds the limits said in words. */
export type WrittenNotes = { readonly markdown: string; readonly text: string; readonly notices: readonly string[] }

/**
 * Show notes for the channel: a summary from the marks, chapters from 0:00, the safety lines, tools and materials with
 * prices as said, values, references, and whose word holds.
 */
export const writeNotes = (sheet: Sheet, options: PublishOptions = {}): WrittenNotes => {
  const notes = toNotes(sheet, options)
  const plain = toPlainText(notes)
  const most = options.notes?.most ?? MOST_CHARACTERS
  const length = [...plain].length
  const over = `the plain text is ${countOf(length, 'character')}, ${length - most} over the limit of ${most}; join chapters (a longer least chapter) or leave values out`
  return { markdown: markdown.stringify(toBlocks(notes)), text: plain, notices: length > most ? [over] : [] }
}
