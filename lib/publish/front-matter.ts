import { Document, Scalar } from 'yaml'
import type { Sheet } from '@/lib/procedure/sheet'
import { formatTime } from '@/lib/procedure/time'
import type { PublishOptions } from './publication'
import { toLine, toParagraphs } from './text'

/** Exact text of a heading field; a quoted scalar where plain could be read as something else. */
const quoted = (value: string): Scalar => {
  const scalar = new Scalar(value)
  scalar.type = Scalar.QUOTE_DOUBLE
  return scalar
}

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
    title,
    ...(equipment === '' ? {} : { equipment }),
    ...(interval === undefined
      ? {}
      : {
          interval: {
            ...(interval.hours === undefined ? {} : { hours: interval.hours }),
            ...(interval.months === undefined ? {} : { months: interval.months }),
          },
        }),
    ...(revision === '' ? {} : { revision }),
    ...(author === '' ? {} : { author }),
    ...(sheet.footage === null
      ? {}
      : {
          footage: {
            name: sheet.footage.name,
            length: quoted(formatTime(sheet.footage.seconds)),
            seconds: sheet.footage.seconds,
          },
        }),
    ...(options.units === undefined || options.units === 'as-said' ? {} : { units: options.units }),
    ...(options.pencilled === 'leave-out' ? { pencilled: 'left out' } : {}),
    ...(shownScope(scope) === scope ? {} : { scope }),
    ...(isPlainReferences ? {} : { references: references.map(({ title: t, part }) => ({ title: t, part })) }),
  }
  return new Document(fields)
    .toString({
      lineWidth: 0,
      blockQuote: false,
      singleQuote: false,
      doubleQuotedMinMultiLineLength: Number.MAX_SAFE_INTEGER,
    })
    .trimEnd()
}
