import { classesOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { withArticle, yours } from './wording-place'

/** A stretch of a sentence, token indices [from, to), of one breath. */
export type Stretch = { readonly from: number; readonly to: number }

/** Whether a sentence was said with pauses: captions without points show none. */
export const hasPauses = (tokens: readonly Token[]): boolean =>
  tokens.some(({ isAfterPause }, i) => i > 0 && isAfterPause)

export const CHAIN =
  /^(?:be|is|are|was|were|been|'s|'re|gets?|got|has|have|had|needs?|wants?|ought|to|must|should|can|could|may|will|would|'ll|shall|do|does|now|then|also|just|only|first|always|never|not|thereupon|thereafter|finally|next|again|both|all|carefully|slowly|gently|fully|so|too)$/

export const isAct = (base: string): boolean => {
  if (/^(?:be|have|get|go|come|let's)$/.test(base)) return false
  const classes = [...classesOf(base)]
  return classes.length > 0 && classes.some(name => name !== 'mind' && name !== 'behave' && name !== 'use')
}

export const NAMES = /^(?:noun|part|tool|material|word|name|ing|unit|number|adjective|pronoun|past|third|verb|adverb)$/

const FRONTS =
  /^(?:from|at|in|on|with|by|before|after|under|over|behind|between|through|inside|into|onto|for|along|round|around|using|to|without|near)$/

/** Where in [from, to) the subject begins behind a phrase put in front; `from` where nothing stands in front. */
export const subjectAt = (tokens: readonly Token[], from: number, to: number): number | undefined => {
  if (!FRONTS.test(tokens[from]?.word ?? '')) return from
  for (let i = from + 2; i < to; i++) {
    const [token, last] = [tokens[i], tokens[i - 1]]
    if (token === undefined || last === undefined) return undefined
    if (token.isAfterPause) return i
    const opens = token.tag === 'determiner' || /^(?:it|they|she|he|one|both|all)$/.test(token.word)
    const isEnd = NAMES.test(last.tag) && last.tag !== 'adverb' && last.tag !== 'adjective'
    if (opens && (isEnd || /^(?:rear|front|side|top|bottom|left|right|inside|outside|underneath)$/.test(last.word)))
      return i
  }
  return undefined
}

export const isPlural = (word: string): boolean => word === 'feet' || /[^su]s$/.test(word)

const CANNOT_BE =
  /^(?:i|we|you|who|what|which|there|that|this|somebody|someone|nobody|nothing|people|everyone|everybody|mine|yours|ours|theirs)$/i

/** The thing done to, with its article; undefined for what no hand takes. */
export const objectOf = (said: string): string | undefined => {
  const thing = said.replace(/^(?:(?:and|then|but|so|now|next|also|first|thereafter|likewise|all right|okay),? )+/i, '')
  if (
    thing.split(' ').length > 8 ||
    /^(?:that no|no|so|what's) |\bthere\b|. it\b|. or |^(?:upstairs|downstairs|outdoors|outside|inside|all the way|yes)\b/i.test(
      thing,
    )
  )
    return undefined
  // "New pip the soft side": two things, and no telling which.
  if (
    /(?<!\b(?:of|on|in|at|to|from|under|and|or|with|round|between|behind|by|over|into|for|through|near|both|all|inside|half|off|out|along|across|against|around|beside|below|above|beneath)) (?:the|this|that) /i.test(
      thing,
    )
  )
    return undefined
  if (/ and (?:a|an|the) /i.test(thing) && !/^(?:the|an?|both|your|its) /i.test(thing)) return undefined
  if (thing === '' || CANNOT_BE.test(thing)) return undefined
  if (
    /\b(?:i|we|you|he|she|they|which|who|that's|it's|is|are|was|were|isn't|should|must|would|could|can|will)\b/i.test(
      thing.replace(/^(?:it|they|he|she)$/i, ''),
    )
  )
    return undefined
  if (/^(?:[a-z]+ing|his .*)$/i.test(thing)) return undefined
  if (/^(?:it|she|he)$/i.test(thing)) return 'it'
  return /^they$/i.test(thing) ? 'them' : withArticle(yours(thing))
}

/** Whether a subject holds another verb: then the sentence is longer than it was read. */
export const isTelling = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).some(({ tag, word }, i) => {
    if (word === "'s") return false
    // "The thumb rest": a verb by its tag, a part by its place.
    if (tag === 'verb')
      return from + i === from || /^(?:determiner|pronoun|particle|preposition)$/.test(tokens[from + i + 1]?.tag ?? '')
    return /^(?:third|auxiliary|modal|condition|question|cause)$/.test(tag)
  })

export const placed = (order: string, front: string): string => (front === '' ? order : `${order} ${yours(front)}`)

/** "into the jar and gets a shake": what it does next is told, not ordered. */
export const ON_TELLING =
  /,? and (?:gets?|gives?|stays?|goes|go|comes?|is|are|has|have|it|they|she|he|then|(?:the|a) [a-z -]+ (?:is|are|comes|goes))\b.*$/i

/** What was said is corrected in the same breath: which half counts is for the user to say. */
export const TAKEN_BACK =
  /\b(?:sorry,? no|no,? (?:wait|sorry|hang on|hold on|i am|i'm|that's|it's|not)|nah,|wait,? (?:no|is it)|hang on|hold on|tell a lie|mistaken|scratch that|strike that|excuse me|(?:hark at|listen to) me|what am i saying|no,? it (?:is|isn't))/i
