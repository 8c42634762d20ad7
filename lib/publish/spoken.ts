import type { Mark } from '@/lib/procedure/mark'
import { cueText, type Sentence, type Transcript } from '@/lib/procedure/recording'
import type { Quantity } from '@/lib/quantity/quantity'
import { readQuantities } from '@/lib/quantity/read'
import { toLine } from './text'
import { formatValue } from './value'

/** A word as it is shown, with the time it is spoken, in seconds. */
export type SpokenText = {
  readonly text: string
  readonly start: number
  readonly end: number
  readonly speaker: string
}

/** Words of a text spread over a span by their length. */
const spread = (text: string, start: number, end: number, speaker: string): readonly SpokenText[] => {
  const words = toLine(text).split(' ').filter(Boolean)
  const total = words.reduce((sum, word) => sum + word.length + 1, 0)
  let at = 0
  return words.map(word => {
    const from = start + ((end - start) * at) / total
    at += word.length + 1
    return { text: word, start: from, end: start + ((end - start) * at) / total, speaker }
  })
}

const ofSentence = ({ text, words, speaker = '' }: Sentence): readonly SpokenText[] =>
  words.flatMap((word, i) => {
    const until = words[i + 1]?.at ?? text.length
    const shown = toLine(text.slice(i === 0 ? 0 : word.at, until))
    return shown === '' ? [] : spread(shown, word.start, word.end, speaker)
  })

/**
 * What was said, word by word, as corrected.
 *
 * @param sentences reflowed by lib/transcript, whose words have the best times and no repeated tails; without them the cues are read as they stand
 */
export const toSpoken = (transcript: Transcript, sentences?: readonly Sentence[]): readonly SpokenText[] => {
  if (sentences !== undefined) return sentences.flatMap(ofSentence)
  return [...transcript.cues]
    .sort((a, b) => a.start - b.start || a.end - b.end)
    .filter(cue => cue.end > cue.start)
    .flatMap(cue => spread(cueText(cue), cue.start, cue.end, cue.speaker ?? ''))
}

const isSameValue = (mark: Mark, low?: number, high?: number, nominal?: number): boolean =>
  mark.quantity !== undefined &&
  mark.quantity.low === low &&
  mark.quantity.high === high &&
  mark.quantity.nominal === nominal

/** Index of the word that holds a character of the joined text. */
const wordAt = (starts: readonly number[], at: number): number => {
  const i = starts.findLastIndex(start => start <= at)
  return Math.max(0, i)
}

/** Words `from` up to `to` give way to the value in figures. */
type Swap = { readonly from: number; readonly to: number; readonly figures: readonly SpokenText[] }

const figuresOf = ({ low, nominal, high, unit }: Quantity): string =>
  JSON.stringify([[...new Set([low, nominal, high].filter(n => n !== undefined))].sort((x, y) => x - y), unit])

/**
 * The fewest words among these that say the same figures and unit: `two millimetres` of `within two millimetres`, so that the words
 * of a bound stay as they were spoken.
 */
const figuresIn = (
  words: readonly SpokenText[],
  from: number,
  to: number,
): { readonly a: number; readonly b: number; readonly quantity: Quantity } | undefined => {
  const read = (a: number, b: number): Quantity | undefined => {
    const text = words
      .slice(a, b + 1)
      .map(word => word.text)
      .join(' ')
      .replace(/[.,;:?!]+$/, '')
    const [one, ...more] = readQuantities(text)
    return one !== undefined && more.length === 0 && one.at === 0 && one.to === text.length ? one.quantity : undefined
  }
  const whole = read(from, to)
  if (whole === undefined) return undefined
  for (let length = 1; length <= to - from; length++)
    for (let a = from; a + length - 1 <= to; a++) {
      const quantity = read(a, a + length - 1)
      if (quantity !== undefined && figuresOf(quantity) === figuresOf(whole)) return { a, b: a + length - 1, quantity }
    }
  return { a: from, b: to, quantity: whole }
}

/** The value of one spec mark in figures, where it was spoken in words. */
const toSwap = (words: readonly SpokenText[], mark: Mark): Swap | undefined => {
  if (mark.quantity === undefined) return undefined
  const from = words.findIndex(word => word.end > mark.start)
  if (from < 0) return undefined
  const until = words.findIndex((word, i) => i >= from && word.start >= mark.end)
  const part = words.slice(from, until < 0 ? undefined : until)
  const starts: number[] = []
  let text = ''
  for (const word of part) {
    starts.push(text.length)
    text += `${word.text} `
  }
  const reading = readQuantities(text).find(
    ({ quantity: q, text: said }) => !/\d/.test(said) && isSameValue(mark, q.low, q.high, q.nominal),
  )
  if (reading === undefined) return undefined
  const [from1, to1] = [wordAt(starts, reading.at), wordAt(starts, reading.to - 1)]
  const { a, b, quantity } = figuresIn(part, from1, to1) ?? { a: from1, b: to1, quantity: mark.quantity }
  const [first, last] = [part[a], part[b]]
  if (first === undefined || last === undefined) return undefined
  const tail = /[.,;:?!]*$/.exec(last.text)?.[0] ?? ''
  // No-break spaces: a value is never parted from its unit.
  const value = formatValue(quantity, undefined, 'as-said').replace(/ /g, '\u00A0')
  return { from: from + a, to: from + b + 1, figures: spread(`${value}${tail}`, first.start, last.end, first.speaker) }
}

/** @returns the words with the values of spec marks in figures, where they were spoken in words and read as the same value. */
export const withFigures = (words: readonly SpokenText[], marks: readonly Mark[]): readonly SpokenText[] => {
  const swaps = marks
    .filter(mark => mark.kind === 'spec')
    .flatMap(mark => toSwap(words, mark) ?? [])
    .sort((a, b) => a.from - b.from || a.to - b.to)
  const out: SpokenText[] = []
  let at = 0
  for (const { from, to, figures } of swaps) {
    if (from < at) continue
    out.push(...words.slice(at, from), ...figures)
    at = to
  }
  return [...out, ...words.slice(at)]
}
