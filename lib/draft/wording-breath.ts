import { CAUSES } from '@/lib/trade/english'
import type { Token } from '@/lib/trade/tagger'
import type { Reading } from './feature'
import { KEEPS } from './wording-condition'
import type { Stretch } from './wording-stretch'

export const OPENERS =
  /^(?:and|then|so|but|now|next|right|yes|yeah|also|first|okay|ok|oh|well|finally|lastly|just|only|again|second|third|please|good|alright|um|uh|er|copy|roger)$/

const POINTS = /^(?:that|it|here)$/

const SUBJECT = /^(?:i|we|you|he|she|they|it|there)$/

const BREAKS = /^(?:then|but|so)$/

const isNounish = (token: Token | undefined): boolean =>
  token !== undefined && /^(?:noun|part|tool|material|unit|ing)$/.test(token.tag)

/** Skips lead-ins and "that's", "there's"; never "no". */
export const skipOpeners = (tokens: readonly Token[], { from, to }: Stretch): Stretch => {
  let at = from
  while (at < to - 1) {
    const [word = '', next] = [tokens[at]?.word, tokens[at + 1]]
    const isAgain = word === 'again' && /^(?:with|at|on|in|from|until)$/.test(next?.word ?? '')
    const isCounted = /^(?:second|third|first)$/.test(word) && (isNounish(next) || next?.tag === 'word')
    if (isAgain || isCounted) break
    if (OPENERS.test(word)) at++
    else if (POINTS.test(word) && /^(?:'s|is)$/.test(next?.word ?? '') && at + 2 < to) at += 2
    else break
  }
  return { from: at, to }
}

/** Where running captions, which have no pauses, begin another thing. */
const isSeam = (tokens: readonly Token[], i: number, from: number): boolean => {
  const [token, last, next] = [tokens[i], tokens[i - 1], tokens[i + 1]]
  if (token === undefined || last === undefined || i - from < 2) return false
  const isSwitched =
    last.word === 'on' &&
    /^(?:power|isolator|breaker|ignition|padlock|lock|tag|pump|water|gas|handbrake|brake)$/.test(
      tokens[i - 2]?.word ?? '',
    )
  if (last.tag === 'particle' && (isSwitched || !/^(?:over|through|in|on|home)$/.test(last.word)))
    return (token.tag === 'number' && isNounish(next)) || (isNounish(token) && tokens[i - 2]?.tag !== 'verb')
  if (!isNounish(last)) return false
  if (token.word === 'no' || token.word === 'not' || token.word === 'never') return false
  return (token.tag === 'number' || token.tag === 'determiner') && (isNounish(next) || next?.tag === 'unit')
}

/** "before the wire", "once it is dry"; not "as before", "once more", "the night before". */
export const isCondition = (tokens: readonly Token[], i: number): boolean => {
  const [token, last, next] = [tokens[i], tokens[i - 1], tokens[i + 1]]
  if (token === undefined || next === undefined || next.isAfterPause || last?.word === 'as' || last?.word === 'than')
    return false
  if (token.word === 'where' || token.word === 'as' || token.word === 'after')
    return next.tag === 'pronoun' || (token.word !== 'after' && next.tag === 'determiner')
  return token.word !== 'once' || next.word !== 'more'
}

/** Splits at pauses, causes, "then" and subjects; at seams too where the sentence has no pause. */
export const toStretches = (reading: Reading, hasSeams: boolean): readonly Stretch[] => {
  const { tokens } = reading
  const out: Stretch[] = []
  let from = 0
  for (let i = 1; i <= tokens.length; i++) {
    const token = tokens[i]
    const isEnd =
      token === undefined ||
      token.isAfterPause ||
      CAUSES.has(token.word) ||
      token.tag === 'cause' ||
      BREAKS.test(token.word) ||
      (KEEPS.has(token.word) && isCondition(tokens, i)) ||
      (hasSeams &&
        SUBJECT.test(token.word) &&
        /^(?:noun|part|tool|material|unit|ing|number|adverb|adjective|word|particle)$/.test(
          tokens[i - 1]?.tag ?? '',
        )) ||
      (token.tag === 'and' && SUBJECT.test(tokens[i + 1]?.word ?? '')) ||
      (/^(?:that|it|there|here|this)$/.test(token.word) &&
        /^(?:'s|is)$/.test(tokens[i + 1]?.word ?? '') &&
        tokens[i - 1]?.tag !== 'and' &&
        tokens[i - 1]?.tag !== 'condition') ||
      (hasSeams && isSeam(tokens, i, from))
    if (!isEnd) continue
    if (i > from) out.push({ from, to: i })
    from = i
  }
  return out
}
