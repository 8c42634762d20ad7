import type { Word } from '@/lib/procedure/recording'
import { SPEAKING_RATE } from './reading'
import { type Token, toKey } from './token'

/** Share of a span a word takes: its letters, digits counting threefold (they are read out), and one for the gap. */
const weightOf = (text: string): number => {
  let weight = 1
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i)
    weight += code >= 48 && code <= 57 ? 3 : 1
  }
  return weight
}

/** Spreads tokens [from, to) over a span by their weights. */
const spread = (tokens: readonly Token[], from: number, to: number, start: number, end: number): void => {
  let total = 0
  for (let i = from; i < to; i++) total += weightOf(tokens[i]?.text ?? '')
  let sum = 0
  for (let i = from; i < to; i++) {
    const token = tokens[i]
    if (token === undefined) continue
    token.start = start + ((end - start) * sum) / total
    sum += weightOf(token.text)
    token.end = i === to - 1 ? end : start + ((end - start) * sum) / total
  }
}

/** How far ahead a word is looked for before it is taken as not heard. */
const LOOKAHEAD = 12
/** Most words a recogniser makes of what the text writes as one ("pre load" for "preload"). */
const PIECES = 4

/** Index after the words from `at` on that together make up a key; -1 where they don't. */
const matchFrom = (words: readonly Word[], at: number, key: string): number => {
  let joined = ''
  for (let j = at; j < Math.min(words.length, at + PIECES); j++) {
    joined += toKey(words[j]?.text ?? '')
    if (joined === key) return j + 1
    if (!key.startsWith(joined)) return -1
  }
  return -1
}

/** Gives tokens the times of the words that match them, in order; returns which tokens got one. */
const anchor = (tokens: readonly Token[], words: readonly Word[]): readonly number[] => {
  const anchored: number[] = []
  let at = 0
  tokens.forEach((token, i) => {
    const key = toKey(token.text)
    const following = toKey(tokens[i + 1]?.text ?? '')
    for (let j = at; j < Math.min(words.length, at + LOOKAHEAD); j++) {
      const to = matchFrom(words, j, key)
      const [first, last] = [words[j], words[to - 1]]
      if (to < 0 || first === undefined || last === undefined) continue
      const isFar = j > at + 2 && key.length < 5
      if (isFar && matchFrom(words, to, following) < 0) continue
      token.start = first.start
      token.end = Math.max(first.start, last.end)
      anchored.push(i)
      at = to
      break
    }
  })
  return anchored
}

/**
 * Times the tokens of one cue (or of cues that stand at the same time).
 *
 * @param tokens in order; their times are set
 * @param start of the cue in seconds
 * @param end of the cue; at or before start means unknown
 * @param words heard within the cue, in order; empty where none have times of their own
 * @param latest where the cue must have ended, when its end is unknown
 */
export const timeTokens = (
  tokens: readonly Token[],
  start: number,
  end: number,
  words: readonly Word[],
  latest: number,
): void => {
  const until = end > start ? end : Math.max(start, Math.min(latest, start + tokens.length / SPEAKING_RATE))
  const anchored = words.length === 0 ? [] : anchor(tokens, words)
  let from = 0
  let since = start
  for (const at of anchored) {
    const token = tokens[at]
    if (token === undefined) continue
    if (at > from) spread(tokens, from, at, Math.min(since, token.start), token.start)
    from = at + 1
    since = token.end
  }
  if (from < tokens.length) spread(tokens, from, tokens.length, since, Math.max(since, until))
}
