import type { Chapter } from './chapters'
import { formatCueTime, toCueText } from './cue'

const milliseconds = (seconds: number): number => Math.round(seconds * 1000)

/** Chapters that still have a length once times are whole milliseconds. */
const proper = (chapters: readonly Chapter[]): readonly Chapter[] =>
  chapters.filter(({ start, end }) => milliseconds(start) < milliseconds(end))

/** @returns chapters as WebVTT. @source W3C WebVTT, chapter cues: one line of text a cue */
export const toChaptersVtt = (chapters: readonly Chapter[]): string =>
  [
    'WEBVTT',
    '',
    ...proper(chapters).flatMap(({ start, end, title }, i) => [
      String(i + 1),
      `${formatCueTime(start, '.')} --> ${formatCueTime(end, '.')}`,
      toCueText(title),
      '',
    ]),
  ].join('\n')

/** @returns JSON chapters. @source podcast namespace, JSON chapters format 1.2.0 (from memory): version, chapters with startTime, endTime, title */
export const toChaptersJson = (chapters: readonly Chapter[], title: string): string =>
  `${JSON.stringify(
    {
      version: '1.2.0',
      ...(title === '' ? {} : { title }),
      chapters: proper(chapters).map(chapter => ({
        startTime: milliseconds(chapter.start) / 1000,
        endTime: milliseconds(chapter.end) / 1000,
        title: chapter.title,
      })),
    },
    null,
    2,
  )}\n`

/** FFmpeg takes the line feed after any backslash for part of the value, even where the backslash is escaped: none may end a value. */
const escapeMetadata = (text: string): string => text.replace(/[\\\s]+$/, '').replace(/[\\=;#\n]/g, char => `\\${char}`)

/** @returns chapters as ffmetadata. @source FFmpeg formats documentation, "Metadata" (from memory): `=`, `;`, `#`, `\` and line feeds escaped by a backslash */
export const toFfmetadata = (chapters: readonly Chapter[], title: string): string =>
  [
    ';FFMETADATA1',
    ...(title === '' ? [] : [`title=${escapeMetadata(title)}`]),
    ...proper(chapters).flatMap(chapter => [
      '[CHAPTER]',
      'TIMEBASE=1/1000',
      `START=${milliseconds(chapter.start)}`,
      `END=${milliseconds(chapter.end)}`,
      `title=${escapeMetadata(chapter.title)}`,
    ]),
    '',
  ].join('\n')
