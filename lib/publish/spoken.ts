import type { Mark } from '@/lib/procedure/mark'
import { cueText, type Sentence, type Transcript } from '@/lib/procedure/recording'
import { sharedTime } from '@/lib/procedure/time'
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

/** Writes the value of one spec mark in figures where it was spoken in words. */
const inFigures = (words: readonly SpokenText[], mark: Mark): readonly SpokenText[] => {
  const from = words.findIndex(word => sharedTime(word, mark) > 0)
  const to = words.findLastIndex(word => sharedTime(word, mark) > 0)
  if (from < 0 || mark.quantity === undefined) return words
  const part = words.slice(from, to + 1)
  const starts: number[] = []
  let text = ''
  for (const word of part) {
    starts.push(text.length)
    text += `${word.text} `
  }
  const reading = readQuantities(text).find(
    ({ quantity: q, text: said }) => !/\d/.test(said) && isSameValue(mark, q.low, q.high, q.nominal),
  )
  if (reading === undefined) return words
  const [a, b] = [wordAt(starts, reading.at), wordAt(starts, reading.to - 1)]
  const [first, last] = [part[a], part[b]]
  if (first === undefined || last === undefined) return words
  const tail = /[.,;:?!]*$/.exec(last.text)?.[0] ?? ''
  // No-break spaces: a value is never parted from its unit.
  const value = formatValue(mark.quantity, undefined, 'as-said').replace(/ /g, '\u00A0')
  const figures = spread(`${value}${tail}`, first.start, last.end, first.speaker)
  return [...words.slice(0, from + a), ...figures, ...words.slice(from + b + 1)]
}

/** @returns the words with the values of spec marks in figures, where they were spoken in words and read as the same value. */
export const withFigures = (words: readonly SpokenText[], marks: readonly Mark[]): readonly SpokenText[] =>
  marks.filter(mark => mark.kind === 'spec').reduce(inFigures, words)
