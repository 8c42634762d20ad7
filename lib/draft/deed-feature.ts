import { wordSet } from '@/lib/trade/list'
import { singular, verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import type { Reading } from './feature'

/** How far a talk has come when it tells a step: its share of the talk, what was taken off before, and the action before. */
export type Course = { readonly share: number; readonly undone: Set<string>; readonly before: string }

export const NO_ACTION = 'Do this:'

/** @returns whether a worded step says what was said and no action */
export const namesNoAction = (text: string): boolean => text.startsWith(NO_ACTION)

/** Verbs that say next to nothing of what is done, spoken or not. */
const WEAK = new Set(['put', 'use'])
/** Taking apart: what they are done to is off when it is spoken of again. */
const UNDOES = wordSet(
  'remove take pull undo unscrew lift unplug disconnect slide unclip drain loosen release slacken unhook unbolt',
)
const ARTICLES = wordSet('the a an your this that these those')
/** Shorter words are in every name. */
const LEAST_LETTERS = 4
const QUARTERS = 4

const wordsIn = (text: string): readonly string[] =>
  (text.toLowerCase().match(/\p{L}[\p{L}'-]*/gu) ?? []).map(word => singular(word))

/** The verb a worded step opens with; empty where it names no action. */
export const deedOf = (text: string): string =>
  namesNoAction(text) ? '' : (/^[\p{L}-]+/u.exec(text)?.[0].toLowerCase() ?? '')

const isSpoken = (deed: string, tokens: readonly Token[]): boolean =>
  tokens.some(
    ({ word, base }) =>
      word === deed ||
      base === deed ||
      verbOf(word)?.base === deed ||
      (word.length > LEAST_LETTERS && deed.startsWith(word)),
  )

/**
 * @param text a worded step
 * @returns whether its verb was not spoken, or says nothing: which it is, is then the writer's choice
 */
export const isOpenDeed = (text: string, { tokens }: Reading): boolean => {
  const deed = deedOf(text)
  return !/^do not\b/i.test(text) && (deed === '' || WEAK.has(deed) || !isSpoken(deed, tokens))
}

const firstOrder = (text: string): string => text.split(/,? and |, /)[0] ?? ''

const namesIn = (text: string): readonly string[] =>
  wordsIn(firstOrder(text))
    .slice(1)
    .filter(word => word.length >= LEAST_LETTERS)

/** The course of a talk behind a step worded so; what it takes off is added to what was taken off before. */
export const furtherCourse = (course: Course, text: string): Course => {
  const before = deedOf(text)
  if (UNDOES.has(before)) for (const name of namesIn(text)) course.undone.add(name)
  return { ...course, before }
}

const singularsOf = (tokens: readonly Token[]): readonly string[] =>
  tokens.filter(({ word }) => /^\p{L}/u.test(word)).map(({ word }) => singular(word))

/** Feature names of what is done in a step worded so, for `deed-model.json`. */
export const deedFeatures = (text: string, { tokens }: Reading, course: Course): readonly string[] => {
  const deed = deedOf(text) || 'none'
  const pause = tokens.findIndex(({ isAfterPause }, i) => i > 0 && isAfterPause)
  const words = singularsOf(tokens)
  const opening = pause < 0 ? words : singularsOf(tokens.slice(0, pause))
  const thing = wordsIn(text).find((word, i) => i > 0 && !ARTICLES.has(word)) ?? ''
  const again = Math.min(2, namesIn(text).filter(word => course.undone.has(word)).length)
  const quarter = Math.min(QUARTERS - 1, Math.floor(course.share * QUARTERS))
  const names = [
    'any',
    `deed:${deed}`,
    ...words.map(word => `said:${word}`),
    ...opening.map(word => `opens:${word}`),
    `first:${opening[0] ?? ''}`,
    `last:${opening.at(-1) ?? ''}`,
    `thing:${thing}`,
    `again:${again}`,
    `again:${again} ${deed}`,
    `quarter:${quarter}`,
    `quarter:${quarter} ${deed}`,
    `before:${course.before}`,
    ...(tokens.some(({ tag }) => tag === 'number') ? ['figure'] : []),
  ]
  return [...new Set(names)]
}
