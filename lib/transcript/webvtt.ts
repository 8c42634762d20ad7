import type { Problem } from '@/lib/procedure/problem'
import type { Cue, Word } from '@/lib/procedure/recording'
import { type CueText, parseCueText } from './cue-text'
import { atLine, doubtTimes, quote, type Reading, toLines } from './reading'

/** Spaces of the WebVTT syntax: no vertical tab. @source WHATWG Infra, ASCII whitespace */
const TIMING =
  /^[ \t\f]*(\d+):(\d\d)(?::(\d\d))?\.(\d{3})(?!\d)[ \t\f]*-->[ \t\f]*(\d+):(\d\d)(?::(\d\d))?\.(\d{3})(?!\d)/

const toSeconds = (parts: readonly (string | undefined)[]): number | undefined => {
  const [first = '', second = '', third, thousandths = ''] = parts
  const short = third === undefined
  if (short && first.length !== 2) return undefined
  const [hours, minutes, seconds] = short ? [0, Number(first), Number(second)] : [first, second, third].map(Number)
  if (hours === undefined || minutes === undefined || seconds === undefined) return undefined
  if (minutes > 59 || seconds > 59 || !Number.isSafeInteger(hours)) return undefined
  return (1000 * (hours * 3600 + minutes * 60 + seconds) + Number(thousandths)) / 1000
}

const parseTiming = (line: string): { start: number; end: number } | undefined => {
  const match = TIMING.exec(line)
  if (match === null) return undefined
  const start = toSeconds(match.slice(1, 5))
  const end = toSeconds(match.slice(5, 9))
  return start === undefined || end === undefined ? undefined : { start, end }
}

/** Whether a text opens as WebVTT does. */
export const isWebVtt = (text: string): boolean => /^\uFEFF?WEBVTT(?:[ \t\n\r]|$)/.test(text)

type Block = {
  /** Line of the timing or first line, counted from 1. */
  readonly line: number
  readonly timing?: string
  readonly lines: readonly string[]
  /** Where the next block begins, counted from 0. */
  readonly next: number
}

/** One block, as the parser of the standard collects it. */
const collectBlock = (lines: readonly string[], from: number, inHeader: boolean): Block => {
  const text: string[] = []
  let timing: string | undefined
  let timingLine = from
  let at = from
  for (; at < lines.length; at++) {
    const line = lines[at] ?? ''
    const count = at - from + 1
    if (line.includes('-->')) {
      if (inHeader || !(count === 1 || (count === 2 && timing === undefined))) break
      timing = line
      timingLine = at
      text.length = 0
    } else if (line === '') {
      at++
      break
    } else text.push(line)
  }
  return { line: timingLine + 1, lines: text, next: at, ...(timing === undefined ? {} : { timing }) }
}

const isSilent = (block: Block): boolean => /^(?:NOTE(?:\s|$)|(?:STYLE|REGION)\s*$)/.test(block.lines[0] ?? '')

const doubtText = (cue: CueText, line: number): readonly Problem[] => [
  ...cue.strange.map(tag =>
    atLine(
      line,
      'unknown-tag',
      `${quote(tag)} stands where WebVTT has its tags, so it is not shown. If it is text, write &lt; for the sign <.`,
    ),
  ),
  ...(cue.voices.length > 1
    ? [
        atLine(
          line,
          'several-voices',
          `several people speak in this cue (${cue.voices.join(', ')}); it is kept whole under the first. Text: ${quote(cue.text)}`,
        ),
      ]
    : []),
]

/** Words of the lines that carry inner timestamps; a line without any repeats an earlier one. */
const toWords = ({ text, stamps }: CueText, start: number, end: number): readonly Word[] => {
  const words: Word[] = []
  if (stamps.length === 0) return words
  let from = 0
  for (const line of text.split('\n')) {
    const to = from + line.length
    const own = stamps.filter(stamp => stamp.at >= from && stamp.at <= to)
    const edges = own.length === 0 ? [] : [{ at: from, time: start }, ...own]
    edges.forEach((edge, i) => {
      const next = edges[i + 1]
      const piece = text.slice(edge.at, next?.at ?? to).trim()
      if (piece !== '') words.push({ start: edge.time, end: Math.max(edge.time, next?.time ?? end), text: piece })
    })
    from = to + 1
  }
  return words
}

/**
 * Reads WebVTT. Cues are exactly those of the standard's parser, with the text it shows.
 *
 * @param text content of the file, which {@link isWebVtt}
 * @returns cues in file order, words where cues carry timestamps inside, and a problem for every block left out
 * @source W3C WebVTT, "WebVTT parser algorithm" and "cue text parsing rules"
 */
export const parseWebVtt = (text: string): Reading => {
  const lines = toLines(text.replaceAll('\0', '\uFFFD'))
  const cues: Cue[] = []
  const words: Word[] = []
  const problems: Problem[] = []
  let at = 1
  if (at < lines.length && lines[at] !== '') {
    const header = collectBlock(lines, at, true)
    header.lines.forEach((line, i) => {
      if (!/^\s*$|^[\w-]+\s*[:=]/.test(line))
        problems.push(
          atLine(at + i + 1, 'unread-header', `this line of the head says nothing WebVTT knows: ${quote(line)}`),
        )
    })
    at = header.next
  }
  while (at < lines.length) {
    if (lines[at] === '') {
      at++
      continue
    }
    const block = collectBlock(lines, at, false)
    const timing = block.timing === undefined ? undefined : parseTiming(block.timing)
    if (timing !== undefined) {
      const content = parseCueText(block.lines.join('\n'))
      const { speaker } = content
      const cue: Cue = { ...timing, text: content.text, ...(speaker === undefined ? {} : { speaker }) }
      cues.push(cue)
      for (const word of toWords(content, cue.start, cue.end)) words.push(word)
      problems.push(...doubtTimes(cue, block.line), ...doubtText(content, block.line))
    } else if (block.timing !== undefined) {
      const held = block.lines.length === 0 ? '' : `; its text ${quote(block.lines.join('\n'))} is left out`
      const message = `${quote(block.timing)} is no time line; expected such as 00:01:02.500 --> 00:01:04.000${held}.`
      problems.push(atLine(block.line, 'bad-time-line', message))
    } else if (!isSilent(block)) {
      const message = `these lines have no time line before them and are left out: ${quote(block.lines.join('\n'))}`
      problems.push(atLine(block.line, 'untimed-block', message))
    }
    at = block.next
  }
  return { cues, problems, ...(words.length > 0 ? { words } : {}) }
}
