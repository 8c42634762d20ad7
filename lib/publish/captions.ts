import { formatTime } from '@/lib/procedure/time'
import { cutWord, measure, toLines } from './phrase'
import type { CaptionLimits } from './publication'
import type { SpokenText } from './spoken'

/** One caption: span in seconds, lines, who speaks (empty where nobody is named). */
export type Caption = {
  readonly start: number
  readonly end: number
  readonly lines: readonly string[]
  readonly speaker: string
}

/**
 * Limits of captions. 42 characters and 2 lines, 1 to 7 seconds: common practice, no source.
 *
 * @source speed: Ofcom, Code on Television Access Services (from memory): 160 to 180 words a minute; 180 words of 5.7
 *   characters, blank included, are 17 characters a second
 */
export const CAPTION_LIMITS: Required<CaptionLimits> = { columns: 42, lines: 2, speed: 17, least: 1, longest: 7 }

/** Silence after which a new caption starts, seconds. Common practice, no source. */
const SILENCE = 1.5

/** Stretches spoken by one person without a long silence. */
const stretches = (words: readonly SpokenText[]): readonly SpokenText[][] => {
  const out: SpokenText[][] = []
  for (const word of words) {
    const last = out.at(-1)?.at(-1)
    const isNew = last === undefined || last.speaker !== word.speaker || word.start - last.end > SILENCE
    if (isNew) out.push([word])
    else out.at(-1)?.push(word)
  }
  return out
}

const cut = (words: readonly SpokenText[], columns: number): readonly SpokenText[] =>
  words.flatMap(word => {
    const pieces = cutWord(word.text, columns)
    const share = (word.end - word.start) / pieces.length
    return pieces.map((text, i) => ({
      ...word,
      text,
      start: word.start + share * i,
      end: word.start + share * (i + 1),
    }))
  })

/** Cheapest division of a stretch into captions, found backwards. */
const divide = (words: readonly SpokenText[], limits: Required<CaptionLimits>): readonly Caption[] => {
  const measured = measure(words.map(word => word.text))
  const { starts, costs } = measured
  const best: number[] = new Array(words.length + 1).fill(Number.POSITIVE_INFINITY)
  const next: { to: number; lines: readonly number[] }[] = []
  best[words.length] = 0
  for (let from = words.length - 1; from >= 0; from--)
    for (let to = from + 1; to <= words.length; to++) {
      const [first, last] = [words[from], words[to - 1]]
      const lines = toLines(measured, from, to, limits.columns, limits.lines)
      if (first === undefined || last === undefined || lines === undefined) break
      const seconds = last.end - first.start
      const tooLong = Math.max(0, seconds - limits.longest) * 40
      const tooShort = Math.max(0, limits.least - seconds) * 60
      const filled = ((starts[to] ?? 0) - (starts[from] ?? 0)) / (limits.columns * limits.lines)
      const total = (costs[to - 1] ?? 0) + tooLong + tooShort + 12 * (1 - filled) + 6 + (best[to] ?? 0)
      if (total < (best[from] ?? Number.POSITIVE_INFINITY)) {
        best[from] = total
        next[from] = { to, lines }
      }
    }
  const captions: Caption[] = []
  for (let at = 0; at < words.length; ) {
    const { to, lines } = next[at] ?? { to: at + 1, lines: [at] }
    const [first, last] = [words[at], words[to - 1]]
    if (first === undefined || last === undefined) break
    const text = (from: number, end: number) =>
      words
        .slice(from, end)
        .map(word => word.text)
        .join(' ')
    const shown = lines.map((from, i) => text(from, lines[i + 1] ?? to))
    captions.push({ start: first.start, end: last.end, lines: shown, speaker: first.speaker })
    at = to
  }
  return captions
}

const characters = ({ lines }: Caption): number => [...lines.join(' ')].length

/** Lets a caption stand longer where it would be too short to read and nothing follows at once. */
const stretched = (
  captions: readonly Caption[],
  { least, speed, longest }: Required<CaptionLimits>,
): readonly Caption[] =>
  captions.map((caption, i) => {
    const wanted = Math.min(longest, Math.max(least, characters(caption) / speed))
    const limit = captions[i + 1]?.start ?? Number.POSITIVE_INFINITY
    const end = Math.max(caption.end, Math.min(limit, caption.start + wanted))
    return { ...caption, end: Math.min(end, Math.max(limit, caption.start)) }
  })

/**
 * Captions from what was said: broken at phrases, inside the limits of columns and lines always, inside those of time
 * where the talk allows.
 *
 * @returns in order, none overlapping another, none empty
 */
export const toCaptions = (spoken: readonly SpokenText[], limits: CaptionLimits = {}): readonly Caption[] => {
  const all = { ...CAPTION_LIMITS, ...limits }
  const words = cut(spoken, all.columns)
  const captions = stretches(words).flatMap(stretch => divide(stretch, all))
  return stretched(captions, all).filter(({ start, end }) => Math.round(start * 1000) < Math.round(end * 1000))
}

/** @returns what breaks a limit, a sentence each, with the time it is about. */
export const captionNotices = (captions: readonly Caption[], limits: CaptionLimits = {}): readonly string[] => {
  const { speed, least, longest } = { ...CAPTION_LIMITS, ...limits }
  return captions.flatMap(caption => {
    const seconds = caption.end - caption.start
    const rate = characters(caption) / seconds
    const at = `caption at ${formatTime(caption.start)}`
    const found: string[] = []
    if (rate > speed * 1.005)
      found.push(
        `${at}: ${rate.toFixed(0)} characters a second, more than ${speed} can be read; correct the talk there to fewer words, or leave it`,
      )
    if (seconds < least - 0.001)
      found.push(
        `${at}: stands ${seconds.toFixed(2)} s, less than ${least} s; see whether the times of the talk are right`,
      )
    // Told in tenths: what those do not show is no fault.
    if (Math.round(seconds * 10) > Math.round(longest * 10))
      found.push(
        `${at}: stands ${seconds.toFixed(1)} s, more than ${longest} s; see whether the times of the talk are right`,
      )
    return found
  })
}
