import type { Problem } from '@/lib/procedure/problem'
import type { Cue } from '@/lib/procedure/recording'
import { CLOCK, parseClock } from './clock'
import { atLine, quote, type Reading, toLines, toSpeakingTime } from './reading'

const RANGE = String.raw`(${CLOCK})(?:\s*(?:-->|[-–—]|to)\s*(${CLOCK}))?`
/** How times are set at the head of a line: in brackets, in parentheses, or bare. */
const STYLES = [
  new RegExp(String.raw`^\s*\[\s*${RANGE}\s*\](?:\s*[:–—-](?=\s|$))?\s*([\s\S]*)$`),
  new RegExp(String.raw`^\s*\(\s*${RANGE}\s*\)(?:\s*[:–—-](?=\s|$))?\s*([\s\S]*)$`),
  new RegExp(String.raw`^\s*${RANGE}(?![\d:.,]*\d)(?:\s*[:–—-](?=\s|$))?(?=\s|$)\s*([\s\S]*)$`),
] as const
/** A name with the time after it, alone on their line: `Bea 0:23`, `Bea (0:23):`. */
const NAMED = new RegExp(
  String.raw`^\s*(\p{L}[\p{L}\p{N}.'’ -]{0,38}?)[\s,]*[[(]?(?<=[\s,[(])(${CLOCK})[\])]?\s*:?\s*$`,
  'u',
)

type Head = { readonly start: number; readonly end?: number; readonly rest: string; readonly speaker?: string }

const parseHead = (line: string, style: RegExp): Head | undefined => {
  const match = style.exec(line)
  if (match === null) return undefined
  const start = parseClock(match[1] ?? '')
  const end = match[2] === undefined ? undefined : parseClock(match[2])
  if (start === undefined || (match[2] !== undefined && end === undefined)) return undefined
  return { start, rest: match[3] ?? '', ...(end === undefined ? {} : { end }) }
}

const parseNamed = (line: string): Head | undefined => {
  const match = NAMED.exec(line)
  const start = match === null ? undefined : parseClock(match[2] ?? '')
  if (match === null || start === undefined || (match[1]?.trim().split(/\s+/).length ?? 9) > 3) return undefined
  return { start, rest: '', speaker: match[1]?.trim() ?? '' }
}

type HeadReader = (line: string) => Head | undefined
const READERS: readonly HeadReader[] = [...STYLES.map(style => (line: string) => parseHead(line, style)), parseNamed]

/** The way most lines of a text head their paragraphs with times, and how many do. */
export const findHeadStyle = (lines: readonly string[]): { readonly read: HeadReader; readonly count: number } => {
  const counts = READERS.map(read => ({ read, count: lines.filter(line => read(line) !== undefined).length }))
  return counts.reduce((best, other) => (other.count > best.count ? other : best))
}

type Paragraph = Head & { readonly line: number; readonly text: string[] }

/**
 * Reads paragraphs headed by their times: `[0:23]`, `0:23`, `(1:02:03)`, `00:23 - 00:41`, alone on a line or before the
 * text. A paragraph ends where its head says, else at the next later time; the last by speaking rate.
 *
 * @returns cues in file order, lines of a paragraph kept apart; a problem for text before the first time and for a time
 *   without text
 */
export const parseTimedText = (text: string): Reading => {
  const lines = toLines(text)
  const { read } = findHeadStyle(lines.slice(0, 2000))
  const paragraphs: Paragraph[] = []
  const problems: Problem[] = []
  lines.forEach((line, i) => {
    const head = read(line)
    if (head !== undefined) paragraphs.push({ ...head, line: i + 1, text: head.rest === '' ? [] : [head.rest] })
    else if (line.trim() === '') return
    else if (paragraphs.length > 0) paragraphs.at(-1)?.text.push(line.trim())
    else {
      const message = `this line stands before the first time, so nobody knows when it was said; it is left out: ${quote(line)}`
      problems.push(atLine(i + 1, 'text-before-first-time', message))
    }
  })
  const starts = [...new Set(paragraphs.map(paragraph => paragraph.start))].sort((a, b) => a - b)
  const nextAfter = new Map(starts.map((start, i) => [start, starts[i + 1]]))
  const cues: Cue[] = []
  for (const { start, end, line, speaker, text: held } of paragraphs) {
    if (held.length === 0) {
      problems.push(atLine(line, 'time-without-text', `no text follows the time ${quote(lines[line - 1] ?? '')}.`))
      continue
    }
    const content = held.join('\n')
    cues.push({
      start,
      end: end ?? nextAfter.get(start) ?? start + toSpeakingTime(content),
      text: content,
      ...(speaker === undefined || speaker === '' ? {} : { speaker }),
    })
  }
  return { cues, problems }
}
