import { decodeHTML } from 'entities/decode'
import type { Problem } from '@/lib/procedure/problem'
import type { Cue } from '@/lib/procedure/recording'
import { CLOCK, parseClock } from './clock'
import { parseCueText } from './cue-text'
import { atLine, doubtTimes, quote, type Reading, toLines } from './reading'

const TIMING = new RegExp(String.raw`^\s*(${CLOCK})\s*-->\s*(${CLOCK})(?=\s|$)`)
const COUNTER = /^\s*\d+\s*$/

/** Mark-up met in SubRip files; any other `<` is text. Common practice, no source: SubRip has no standard. */
const MARKUP = /<\/?(?:i|b|u|s|c|v|font)(?:[.\s][^<>]*)?>|\{\\[^{}]*\}|\{\/?[ibus]\}/gi

/** A line of SubRip text without tags, character references decoded. */
export const toPlain = (raw: string): string => {
  const bare = raw.includes('<') || raw.includes('{') ? raw.replace(MARKUP, '') : raw
  return bare.includes('&') ? decodeHTML(bare) : bare
}

/** How many time lines with an arrow stand in the first lines of a text. */
export const countArrows = (lines: readonly string[]): number => lines.filter(line => TIMING.test(line)).length

type Open = { readonly line: number; readonly timing: string; readonly text: string[] }

/**
 * Reads SubRip: a counter, a time line, text, an empty line. Counters may be missing or wrong, empty lines may be missing
 * or stand inside a text, times may have a point for the comma or lack their hours.
 *
 * @returns cues in file order; a problem for every line that belongs to no cue and every time that can't be read
 */
export const parseSubRip = (text: string): Reading => {
  const lines = toLines(text)
  const cues: Cue[] = []
  const problems: Problem[] = []
  const isTimeLine = (at: number) => lines[at]?.includes('-->') ?? false
  const close = ({ line, timing, text: held }: Open) => {
    while (held.at(-1)?.trim() === '') held.pop()
    const [, from = '', to = ''] = TIMING.exec(timing) ?? []
    const [start, end] = [parseClock(from), parseClock(to)]
    if (start === undefined || end === undefined) {
      const lost = held.length === 0 ? '' : `; its text ${quote(held.join('\n'))} is left out`
      const message = `${quote(timing)} is no time line; expected such as 00:01:02,500 --> 00:01:04,000${lost}.`
      problems.push(atLine(line, 'bad-time-line', message))
      return
    }
    const raw = held.join('\n')
    const voice = /<v[.\s]/.test(raw) ? parseCueText(raw) : undefined
    const cue: Cue = {
      start,
      end,
      text: voice?.text ?? toPlain(raw),
      ...(voice?.speaker === undefined ? {} : { speaker: voice.speaker }),
    }
    cues.push(cue)
    problems.push(...doubtTimes(cue, line))
  }
  let open: Open | undefined
  lines.forEach((line, at) => {
    if (isTimeLine(at)) {
      if (open !== undefined) close(open)
      open = { line: at + 1, timing: line, text: [] }
      return
    }
    if (isTimeLine(at + 1) && COUNTER.test(line)) return
    if (open !== undefined) {
      if (line.trim() !== '' || open.text.length > 0) open.text.push(line)
    } else if (line.trim() !== '') {
      problems.push(
        atLine(at + 1, 'untimed-block', `this line has no time line before it and is left out: ${quote(line)}`),
      )
    }
  })
  if (open !== undefined) close(open)
  return { cues, problems }
}
