import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import * as given from './wording-given'
import * as kind from './wording-kinds'
import { withArticle } from './wording-place'
import * as placing from './wording-placing'
import { type Named, type Rule, type Scene, sure, toScene } from './wording-scene'
import { type Stretch, TAKEN_BACK } from './wording-stretch'
import { torqueTold } from './wording-torque'

/** Behind this rule the first word names a thing. */
const opensPlace = ({ reading, first }: Scene): boolean =>
  /^(?:preposition|particle|to|condition)$/.test(reading.tokens[first.from]?.tag ?? '')

const BEFORE_THINGS: readonly Rule[] = [
  given.fromStaying,
  given.fromLimit,
  given.fromStrokes,
  given.fromWorn,
  given.fromOpening,
]

const OF_THINGS: readonly Rule[] = [
  placing.fromParticles,
  placing.fromFar,
  placing.fromState,
  given.fromStuff,
  given.fromMeans,
  given.fromByHand,
  given.fromTool,
  given.fromFresh,
  given.fromFasteners,
  placing.fromPlaced,
]

const firstOf = (rules: readonly Rule[], scene: Scene): Named | undefined => {
  for (const rule of rules) {
    const named = rule(scene)
    if (named !== undefined) return named
  }
  return undefined
}

/**
 * The order of a sentence that names no action but what it takes: stuff and its place, a tool and its way, a limit, a time,
 * what is worn, how often. Undefined where names don't tell.
 *
 * @param stretches verbless, one after the other
 * @param around sentences before and after, nearest first, for which way fasteners go
 */
export const namedOrder = (
  reading: Reading,
  stretches: readonly Stretch[],
  around: readonly (string | undefined)[],
): Named | undefined => {
  const scene = toScene(reading, stretches, around)
  if (scene === undefined) return undefined
  const named = firstOf(BEFORE_THINGS, scene)
  if (named !== undefined || opensPlace(scene)) return named
  // Running captions past three breaths are not told apart well enough, but for "lock on, tag off, …".
  return firstOf(scene.hasPauses || stretches.length < 4 ? OF_THINGS : [placing.fromParticles], scene)
}

const isMeasured = (head: string): boolean => kind.MEASURED.test(head) || (kind.PIECES.test(head) && kind.isStuff(head))

/** Like `namedOrder`, of stuff, limits and what is worn alone: what other things are named for shows only at the start. */
export const givenOrder = (
  reading: Reading,
  stretches: readonly Stretch[],
  around: readonly (string | undefined)[],
): Named | undefined => {
  const scene = toScene(reading, stretches, around)
  return scene === undefined || opensPlace(scene) || !isMeasured(scene.head) ? undefined : given.fromStuff(scene)
}

/** "the final torque is six newton metres": the limit told, the tightening meant. */
export const fromTorqueTold = ({ text, tokens }: Reading): Named | undefined => {
  if (TAKEN_BACK.test(text) || tokens.length > 40) return undefined
  const torque = torqueTold(sayTokens(text, tokens, 0, tokens.length), text)
  return torque === undefined ? undefined : sure(torque)
}

const ON_BODY = /\b(?:have|has|had|got)\b(?: [\w'-]+){0,4}? on\b/i

/** "I'll have my goggles on", "so it's gloves before the lid is off". */
export const fromWornTold = (reading: Reading): Named | undefined => {
  const { text, tokens } = reading
  const at = tokens.findIndex(({ word }) => kind.WORN.test(word))
  if (at < 0 || reading.isQuestion || tokens.some(({ tag, word }) => tag === 'negation' && word !== 'not'))
    return undefined
  let from = at
  while (
    from > 0 &&
    /^(?:adjective|word|noun|material|tool|number|part)$/.test(tokens[from - 1]?.tag ?? '') &&
    !tokens[from]?.isAfterPause
  )
    from--
  const before = tokens.slice(Math.max(0, from - 2), from).map(({ word }) => word)
  const isSaid = before.some(word => /^(?:'s|is|first|so|then)$/.test(word)) || ON_BODY.test(text)
  if (/^(?:its|his|her|their)$/.test(tokens[from - 1]?.word ?? '')) return undefined
  const isOff = /^(?:off|out|are|were|is|away)$/.test(tokens[at + 1]?.word ?? '')
  return isSaid && !isOff ? sure(`put on ${withArticle(sayTokens(text, tokens, from, at + 1))}`) : undefined
}
