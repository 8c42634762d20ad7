import { logit, type Model, toPartsIndex, toScorer } from '@/lib/trade/model'
import type { Token } from '@/lib/trade/tagger'
import { isInsideFigure } from '@/lib/transcript/figure'
import { isBoundToFigure } from '@/lib/transcript/inside-limit'
import { type Reading, readAnew } from './feature'
import { eachPauseFeature, openersOf, seenIn } from './pause-feature'
import pauseModel from './pause-model.json'

const scorer = toScorer<'pause'>(pauseModel as unknown as Model)
const weights = scorer.weights('pause')
const features = toPartsIndex(scorer.names)

const least = logit(scorer.threshold('pause'))

/** Share of sentences with a sign in or after them from which on a talk has punctuation of its own. */
const PUNCTUATED = 0.25
const SIGN = /[.,;:?!](?:\s|$)/

/** A text with commas put where a writer would set them, and the way back to the text as it was. */
export type Paused = {
  readonly text: string
  /** @returns the place in the text as it was */
  readonly back: (place: number) => number
}

/** @returns whether a talk's sentences have no punctuation to speak of */
const isUnpunctuated = (sentences: readonly { readonly text: string }[]): boolean =>
  sentences.filter(({ text }) => SIGN.test(text)).length < PUNCTUATED * sentences.length

/** Words back in which `between` may have opened a range. */
const RANGE = 8

/** Whether a figure goes on after tokens[i], so that no comma stands there, however likely: `two | and a half`, `between four | and six`. */
const isInFigure = (tokens: readonly Token[], i: number): boolean => {
  const at = (offset: number): string => tokens[i + offset]?.word ?? ''
  if (isInsideFigure(at(-1), at(0), at(1), at(2)) || isBoundToFigure(at)) return true
  if (at(1) !== 'and') return false
  if ((at(2) === 'a' || at(2) === 'an') && PART.test(at(3)) && MEASURED.test(at(0))) return true
  return tokens.slice(Math.max(0, i - RANGE), i).some(({ word }) => word === 'between') && isNumber(tokens[i])
}

const isNumber = (token: Token | undefined): boolean => token?.tag === 'number'
const PART = /^(?:half|third|quarter|eighth)$/
const MEASURED =
  /^(?:turns?|hours?|minutes?|inch(?:es)?|degrees?|millimet(?:re|er)s?|mil|miles?|lit(?:re|er)s?|pints?|volts?)$/

/** Indices of the tokens after which a writer would set a comma. */
const findPauses = (tokens: readonly Token[]): readonly number[] => {
  const seen = seenIn(tokens, features.partOf)
  const openers = openersOf(tokens).map(features.partOf)
  let odds = 0
  const weigh = (prefix: string, a?: number, b?: number, c?: number, d?: number): void => {
    const index = features.at(prefix, a, b, c, d)
    if (index >= 0) odds += weights[index] ?? 0
  }
  const found: number[] = []
  for (let i = 0; i < tokens.length - 1; i++) {
    odds = 0
    eachPauseFeature(seen, openers[i] ?? 0, i, weigh)
    if (odds >= least && !isInFigure(tokens, i)) found.push(i)
  }
  return found
}

/**
 * Puts commas into a sentence of captions without punctuation where a writer would: what commas keep apart ("twenty, no
 * more", "forty-five, sixty, then seventy") is told by them alone.
 *
 * @param tokens of the text, in order
 * @returns undefined where no comma is wanted
 */
export const withPauses = (text: string, tokens: readonly Token[]): Paused | undefined => {
  const places = findPauses(tokens).flatMap(i => {
    const to = tokens[i]?.to ?? 0
    return text[to] === ' ' ? [to] : []
  })
  if (places.length === 0) return undefined
  let said = ''
  let from = 0
  for (const to of places) {
    said += `${text.slice(from, to)},`
    from = to
  }
  return {
    text: said + text.slice(from),
    back: place => {
      let n = 0
      while (n < places.length && (places[n] ?? 0) + n < place) n++
      return place - n
    },
  }
}

/** Sentences of a talk with their commas, and for each the way back to the text as it was. */
export type PausedTalk = {
  readonly readings: readonly Reading[]
  readonly backs: readonly (Paused['back'] | undefined)[]
}

const known = new WeakMap<readonly Reading[], PausedTalk | undefined>()

const readPaused = (readings: readonly Reading[]): PausedTalk | undefined => {
  if (!isUnpunctuated(readings)) return undefined
  const paused = readings.map(({ text, tokens }) => withPauses(text, tokens))
  return {
    readings: readings.map((reading, i) => {
      const text = paused[i]?.text
      return text === undefined ? reading : readAnew(text, reading)
    }),
    backs: paused.map(one => one?.back),
  }
}

/**
 * A talk without punctuation read once more with its commas, for what is told by them: limits and things. Kept as long as
 * its readings are.
 *
 * @returns undefined for a talk that has punctuation of its own
 */
export const pausedTalk = (readings: readonly Reading[]): PausedTalk | undefined => {
  if (known.has(readings)) return known.get(readings)
  const paused = readPaused(readings)
  known.set(readings, paused)
  return paused
}
