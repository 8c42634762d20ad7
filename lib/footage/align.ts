import { firstIndex } from '@/lib/procedure/search'
import type { Span } from '@/lib/procedure/time'
import { joinSpeech, type Line, piecesOf, type Stretch, splitStretches } from './align-pieces'
import type { Sequence } from './grid'
import { voiceLevels } from './levels'
import { type Bounds, matchPhones } from './match'
import { onsetIn } from './onset'
import type { Path } from './path'
import { PHONES, type Recogniser } from './recogniser'
import { sayWord } from './spell'

/** A line of the text with its time. */
export type AlignedLine = Span & {
  /** Index of the line in the text. */
  readonly line: number
  /** Whether it was found in the sound; if not, its time is where it would have been said. */
  readonly isHeard: boolean
}

/** A word of the text, as written, with its time. */
export type AlignedWord = Span & { readonly line: number; readonly text: string }

export type Alignment = {
  /** One a line, in order; starts never go back. */
  readonly lines: readonly AlignedLine[]
  /** Every word of the lines that were heard. */
  readonly words: readonly AlignedWord[]
  /** Speech that no line of the text says. */
  readonly unwritten: readonly Span[]
}

/** Gives the sound between two moments (seconds): 16 kHz mono. Called in order of time, twice over the recording. */
export type Hear = (from: number, to: number) => Promise<Float32Array> | Float32Array

export type AlignOptions = {
  /** Roughly when each line is said, where that is known; see hints.ts. */
  readonly hints?: readonly (Span | undefined)[] | undefined
  readonly signal?: AbortSignal
  /** @param share 0 to 1 */
  readonly onProgress?: (share: number) => void
}

/** Share of the work that hearing phones is; the rest is timing words. */
const FIRST_PASS = 0.55

/** How far off a hint may be, seconds. */
const SLACK = 15

/** Least share of the lines that must be found where the hints say; else the hints are no good. */
const HINTED = 0.6

/** Silence left around what the recogniser hears, seconds. */
const AROUND = 0.15

/** Unwritten speech shorter than this is not worth a word, seconds. */
const NOTABLE = 0.6

const index = (phone: string): number => Math.max(0, PHONES.indexOf(phone))

type Heard = {
  readonly sequence: Sequence
  readonly times: readonly number[]
  readonly stretches: readonly Stretch[]
  readonly levels: ReturnType<typeof voiceLevels>
}

const hearAll = async (
  hear: Hear,
  speech: readonly Span[],
  recogniser: Recogniser,
  { signal, onProgress }: AlignOptions,
): Promise<Heard> => {
  const phones: number[] = []
  const times: number[] = []
  const begins = [0]
  const stretches: Stretch[] = []
  const levels = voiceLevels()
  const total = speech.at(-1)?.end ?? 1
  for (const span of joinSpeech(speech)) {
    signal?.throwIfAborted()
    const from = Math.max(0, span.start - AROUND)
    const sound = await hear(from, span.end + AROUND)
    levels.push(from, sound)
    const heard = recogniser.hearPhones(sound)
    const first = phones.length
    for (const { phone, start } of heard) {
      phones.push(index(phone))
      times.push(from + start)
    }
    if (phones.length > first) {
      begins.push(phones.length)
      stretches.push({ ...span, first, last: phones.length })
    }
    onProgress?.((FIRST_PASS * span.end) / total)
    // Lets messages through (stop) between two calls that block.
    await new Promise(resolve => setTimeout(resolve))
  }
  return { sequence: { phones: Uint8Array.from(phones), begins }, times, stretches, levels }
}

/** @returns index of the first time at or after a moment */
const firstAt = (times: readonly number[], at: number): number => firstIndex(times.length, i => (times[i] ?? 0) >= at)

/** Matches text and talk, near the hints where there are some that hold. */
const matchLines = (written: Sequence, { sequence, times }: Heard, hints: AlignOptions['hints']): Path => {
  if (hints?.some(hint => hint !== undefined)) {
    const bounds = written.begins.slice(1).map((_, line): Bounds => {
      const { start = 0, end = Number.POSITIVE_INFINITY } = hints[line] ?? {}
      return { from: firstAt(times, start - SLACK), to: firstAt(times, end + SLACK) }
    })
    const path = matchPhones(written, sequence, bounds)
    const isFound = (begin: number, line: number) =>
      path.matches.subarray(begin, written.begins[line + 1]).some(match => match >= 0)
    const lines = written.begins.slice(0, -1).filter((begin, line) => begin < (written.begins[line + 1] ?? 0))
    const found = written.begins.slice(0, -1).filter(isFound)
    if (found.length >= HINTED * lines.length) return path
  }
  return matchPhones(written, sequence)
}

/**
 * Times a text against the sound by forced alignment. First the phones that are heard are matched with those of the
 * text, leaving out whole sentences where talk and text part; then each piece is timed word by word.
 *
 * @param texts lines (sentences) in the order they are said
 * @param speech spans of speech, in order; see speech.ts
 * @returns times in seconds of all lines and words, with what was not heard and what was said beyond the text
 * @throws the signal's reason when cancelled
 */
export const align = async (
  texts: readonly string[],
  speech: readonly Span[],
  hear: Hear,
  recogniser: Recogniser,
  options: AlignOptions = {},
): Promise<Alignment> => {
  const { signal, onProgress } = options
  const lines: Line[] = texts.map((text, line) => ({
    line,
    words: text
      .split(/\s+/)
      .filter(word => word !== '')
      .map(word => ({ text: word, said: sayWord(word) })),
  }))
  const phones: number[] = []
  const begins = [0]
  for (const { words } of lines) {
    for (const { said } of words)
      for (const word of said) for (const phone of recogniser.pronounce(word)) phones.push(index(phone))
    begins.push(phones.length)
  }
  const heard = await hearAll(hear, speech, recogniser, options)
  const { matches, asides } = matchLines({ phones: Uint8Array.from(phones), begins }, heard, options.hints)
  const pieces = piecesOf(lines, begins, matches, splitStretches(heard, asides))

  const words: AlignedWord[] = []
  for (const [done, piece] of pieces.entries()) {
    signal?.throwIfAborted()
    const said = piece.lines.flatMap(line => line.words.flatMap(word => word.said))
    const sound = await hear(piece.start, piece.end)
    const timed = recogniser.timeWords(sound, said)
    const onset = onsetIn(sound)
    let at = 0
    const share = (piece.end - piece.start) / Math.max(1, said.length)
    for (const { line, words: own } of piece.lines)
      for (const { text, said: parts } of own) {
        if (parts.length === 0) continue
        const [first, last] = [timed?.[at], timed?.[at + parts.length - 1]]
        const start = piece.start + (first === undefined ? share * at : onset(first.start, first.end))
        words.push({ line, text, start, end: piece.start + (last?.end ?? share * (at + parts.length)) })
        at += parts.length
      }
    onProgress?.(FIRST_PASS + ((1 - FIRST_PASS) * (done + 1)) / pieces.length)
    await new Promise(resolve => setTimeout(resolve))
  }
  return {
    lines: timeLines(lines, words),
    words,
    unwritten: findUnwritten(speech, words).filter(heard.levels.judge(words)),
  }
}

const timeLines = (lines: readonly Line[], words: readonly AlignedWord[]): AlignedLine[] => {
  const spans = new Map<number, { start: number; end: number }>()
  for (const { line, start, end } of words) {
    const span = spans.get(line)
    if (span === undefined) spans.set(line, { start, end })
    else span.end = end
  }
  let last = 0
  return lines.map(({ line }) => {
    const span = spans.get(line)
    if (span !== undefined) last = span.end
    return span === undefined ? { line, start: last, end: last, isHeard: false } : { line, ...span, isHeard: true }
  })
}

const findUnwritten = (speech: readonly Span[], words: readonly Span[]): Span[] => {
  const spans: { start: number; end: number }[] = []
  let next = 0
  for (const { start, end } of speech) {
    let at = start
    const gap = (to: number) => {
      const last = spans.at(-1)
      if (to - at < NOTABLE) return
      if (last !== undefined && at - last.end < NOTABLE) last.end = to
      else spans.push({ start: at, end: to })
    }
    while (next > 0 && (words[next - 1]?.end ?? 0) > start) next--
    for (; next < words.length; next++) {
      const word = words[next]
      if (word === undefined || word.start >= end) break
      if (word.end <= start) continue
      gap(word.start)
      at = Math.max(at, word.end)
    }
    gap(end)
  }
  return spans
}
