import type { Cue, Sentence, SpokenWord, Transcript, Word } from '@/lib/procedure/recording'
import { findSentenceEnds } from './breaks'
import { countRepeated, repeatedAfterCorrection } from './rolling'
import { timeTokens } from './timing'
import { isListNumber, type Token, toTokens } from './token'

type Placed = { readonly cue: Cue; readonly index: number }

const inOrder = (cues: readonly Cue[]): readonly Placed[] => {
  const placed = cues.map((cue, index) => ({ cue, index }))
  const isOrdered = cues.every((cue, i) => i === 0 || (cues[i - 1]?.start ?? 0) <= cue.start)
  return isOrdered ? placed : placed.sort((a, b) => a.cue.start - b.cue.start)
}

const isTalkOver = (a: Cue, b: Cue): boolean =>
  a.speaker !== undefined && b.speaker !== undefined && a.speaker !== b.speaker

/** Hands out the words heard from one moment to another; each word goes to one cue. */
const wordsInTurn = (words: readonly Word[]) => {
  const sorted = words.every((word, i) => i === 0 || (words[i - 1]?.start ?? 0) <= word.start)
    ? words
    : [...words].sort((a, b) => a.start - b.start)
  let at = 0
  return (until: number): readonly Word[] => {
    const from = at
    while (at < sorted.length && ((sorted[at]?.start ?? 0) + (sorted[at]?.end ?? 0)) / 2 < until) at++
    return sorted.slice(from, at)
  }
}

/** A line of plain text shorter than this many letters was ended on purpose, not wrapped. */
const WRAPPED = 60

const isNewLine = (before: Cue | undefined, opening: Token): boolean =>
  before !== undefined && before.text.length < WRAPPED && /^["'“‘(]*[\p{Lu}\p{N}•*]/u.test(opening.text)

/** All tokens of a transcript in the order they were said, repetitions of rolling captions left out, each timed. */
export const toTimedTokens = (transcript: Transcript): readonly Token[] => {
  const order = inOrder(transcript.cues)
  const isTimed = transcript.form !== 'untimed'
  const repeated = isTimed ? countRepeated(order.map(({ cue }) => cue)) : []
  const takeWords = wordsInTurn(transcript.words ?? [])
  const tokens: Token[] = []
  for (let i = 0; i < order.length; ) {
    const first = order[i]?.cue
    if (first === undefined) break
    const group: Token[] = []
    let start = first.start
    let end = first.end
    let n = i
    for (; n < order.length; n++) {
      const placed = order[n]
      if (placed === undefined || placed.cue.start !== first.start || (n > i && isTalkOver(first, placed.cue))) break
      const skip = repeatedAfterCorrection(placed.cue, repeated[n] ?? 0)
      const said = toTokens(placed.cue, placed.index)
      const own = skip === 0 ? said : said.slice(skip)
      const [opening] = own
      if (opening !== undefined) {
        opening.isFirst = true
        opening.opens ||= !isTimed && isNewLine(order[n - 1]?.cue, opening)
      }
      if (skip > 0) start = Math.max(start, Math.min(tokens.at(-1)?.end ?? start, placed.cue.end))
      end = Math.max(end, placed.cue.end)
      for (const token of own) group.push(token)
    }
    const next = order[n]?.cue
    const latest = next === undefined || next.start <= first.start ? Number.POSITIVE_INFINITY : next.start
    if (next !== undefined && !isTalkOver(first, next)) end = Math.min(end, Math.max(latest, first.start))
    const words = takeWords(next === undefined ? Number.POSITIVE_INFINITY : Math.max(end, next.start))
    timeTokens(group, start, isTimed ? end : start, words, isTimed ? latest : start)
    for (const token of group) tokens.push(token)
    i = n
  }
  return tokens
}

const isWord = (text: string): boolean => /^[a-z0-9]/i.test(text) || /[\p{L}\p{N}]/u.test(text)

const toSentence = (tokens: readonly Token[]): Sentence | undefined => {
  if (tokens.every(isListNumber)) return undefined
  const words: SpokenWord[] = []
  const parts: string[] = []
  let speaker: string | undefined
  let at = 0
  let last = 0
  let latest = 0
  for (const token of tokens) {
    const start = Math.max(last, token.start)
    const end = Math.max(start, token.end)
    last = start
    speaker ??= token.speaker
    if (isWord(token.text)) {
      words.push({ at, to: at + token.text.length, start, end, cue: token.cue })
      latest = Math.max(latest, end)
    }
    parts.push(token.text)
    at += token.text.length + 1
  }
  const [first] = words
  if (first === undefined) return undefined
  return {
    start: first.start,
    end: latest,
    text: parts.join(' '),
    ...(speaker === undefined ? {} : { speaker }),
    words,
  }
}

/**
 * The sentences of a transcript, reflowed across its cues in the order they were said, from the text as the user
 * corrected it. Tails that rolling captions repeat are left out, a change of speaker ends a sentence. Works without
 * punctuation and capitals. A word's time is its own where the transcript has words, else interpolated over its cue by
 * letters; in untimed text all times are 0. Linear in the number of words.
 *
 * @returns sentences by start; words within one in order, their starts never falling
 */
export const toSentences = (transcript: Transcript): readonly Sentence[] => {
  const tokens = toTimedTokens(transcript)
  const sentences: Sentence[] = []
  let from = 0
  for (const end of findSentenceEnds(tokens)) {
    const sentence = toSentence(tokens.slice(from, end + 1))
    if (sentence !== undefined) sentences.push(sentence)
    from = end + 1
  }
  const isOrdered = sentences.every((one, i) => i === 0 || (sentences[i - 1]?.start ?? 0) <= one.start)
  return isOrdered ? sentences : sentences.sort((a, b) => a.start - b.start)
}
