import { Document, Scalar } from 'yaml'
import type { Sheet } from '@/lib/procedure/sheet'
import { formatTime, toMilliseconds } from '@/lib/procedure/time'
import type { PublishOptions } from './publication'
import { toLine, toParagraphs } from './text'

/** A double-quoted scalar: the only form that has escapes. */
const quoted = (value: string): Scalar => {
  const scalar = new Scalar(value)
  scalar.type = Scalar.QUOTE_DOUBLE
  return scalar
}

/**
 * What is written by its number: what a renderer that knows no front matter would take for HTML, links or pictures, and
 * characters that no document should show (see `toLine`).
 */
const ESCAPED = /[<[\p{Cc}\u202A-\u202E\u2066-\u2069\uFEFF\uFFFE\uFFFF]/u

/** Exact text of a heading field. White space at its ends would not be read again if it stood bare. */
const scalar = (value: string): string | Scalar =>
  ESCAPED.test(value) || value.trim() !== value ? quoted(value) : value

const byNumber = (char: string): string =>
  char === '\n' ? char : `\\u${char.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`

/** Whatever is escaped stands in a double-quoted scalar (see `scalar`); line feeds left are those between fields. */
const inert = (yaml: string): string => yaml.replace(new RegExp(ESCAPED, 'gu'), byNumber)

/** The scope as the body shows it: paragraphs of lines. */
export const shownScope = (scope: string): string =>
  toParagraphs(scope)
    .map(lines => lines.join('\n'))
    .join('\n\n')

/** @returns the front matter of a sheet: YAML 1.2 without its fences. */
export const toFrontMatter = (sheet: Sheet, options: PublishOptions): string => {
  const { title, equipment, scope, interval, revision, author, references } = sheet.heading
  const isPlainReferences = references.every(
    ({ title: t, part }) => t !== '' && toLine(t) === t && toLine(part) === part,
  )
  const fields: Record<string, unknown> = {
    title: scalar(title),
    ...(equipment === '' ? {} : { equipment: scalar(equipment) }),
    ...(interval === undefined
      ? {}
      : {
          interval: {
            ...(interval.hours === undefined ? {} : { hours: interval.hours }),
            ...(interval.months === undefined ? {} : { months: interval.months }),
          },
        }),
    ...(revision === '' ? {} : { revision: scalar(revision) }),
    ...(author === '' ? {} : { author: scalar(author) }),
    ...(sheet.footage === null
      ? {}
      : {
          footage: {
            name: scalar(sheet.footage.name),
            length: quoted(formatTime(sheet.footage.seconds)),
            seconds: toMilliseconds(sheet.footage.seconds),
          },
        }),
    ...(options.units === undefined || options.units === 'as-said' ? {} : { units: options.units }),
    ...(options.pencilled === 'leave-out' ? { pencilled: 'left out' } : {}),
    ...(shownScope(scope) === scope ? {} : { scope: scalar(scope) }),
    ...(isPlainReferences
      ? {}
      : { references: references.map(({ title: t, part }) => ({ title: scalar(t), part: scalar(part) })) }),
  }
  const yaml = new Document(fields).toString({
    lineWidth: 0,
    blockQuote: false,
    singleQuote: false,
    doubleQuotedMinMultiLineLength: Number.MAX_SAFE_INTEGER,
  })
  return inert(yaml.trimEnd())
}
