import { verbOf } from '@/lib/trade/morphology'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { BY_HAND } from './wording-kinds'
import { orderOfPlace } from './wording-place'
import {
  CHAIN,
  isPlural,
  isTelling,
  NAMES,
  ON_TELLING,
  objectOf,
  placed,
  type Stretch,
  subjectAt,
} from './wording-stretch'

const STAYS_PUT = /^(?:on|off|open|shut|closed|down|up|out)$/

/** "the tape stays on until it sits". */
export const fromStaying = (reading: Reading, { from, to }: Stretch): string | undefined => {
  const { tokens, text } = reading
  const at = tokens.findIndex(({ word }, i) => i > from && i < to - 1 && /^(?:stays?|remains?)$/.test(word))
  if (at < 0 || !STAYS_PUT.test(tokens[at + 1]?.word ?? '') || isTelling(tokens, from, at)) return undefined
  const thing = objectOf(sayTokens(text, tokens, from, at))
  return thing === undefined || thing === 'it' ? undefined : `keep ${thing} ${sayTokens(text, tokens, at + 1, to)}`
}

/** Those, and what parts do with another thing: "the loop drops over the post". */
const MADE = new RegExp(
  `^(?:${BY_HAND}|unbolt|unwind|unlatch|unthread|roll|drop|push|press|snap|draw|pry|screw|clip|hook|tap|thread|wind|bolt|slot|turn|spin|rotate|fold|tuck|lower|stand|rest)$`,
)

const LIKE_THINGS = /^(?:clips|hooks|screws|taps|drops|threads|turns|presses|bolts|slots|folds|stands|rests)$/

const WAYS =
  /^(?:straight|right|clean|easily|freely|upwards?|downwards?|outwards?|sideways|backwards?|forwards?|clear|home)$/

const GOES = /^(?:come|go|comes|goes|coming|going|went)$/

const IN_BODY =
  /\b(?:skin|eyes?|fingers?|lungs?|nose|face|toes?|foot|feet|knuckles|head|lap)\b|\bin (?:your|my) hands?\b/i

/** "the hold-down has to come off", "it pulls straight out", "the loop drops over the post". */
export const fromMoving = (reading: Reading, { from, to }: Stretch, ahead: string): string | undefined => {
  const { tokens, text } = reading
  for (let at = from; at < to; at++) {
    const [token, next, then] = [tokens[at], at + 1 < to ? tokens[at + 1] : undefined, tokens[at + 2]]
    if (token === undefined) return undefined
    const verb = verbOf(token.word)
    let chain = at
    while (chain > from && CHAIN.test(tokens[chain - 1]?.word ?? '')) chain--
    const hasTo = chain < at && /^(?:to|must|should)$/.test(tokens[at - 1]?.word ?? '')
    if (tokens.slice(chain, at).some(({ word }) => /^(?:will|'ll|can|could|may|would|do|does)$/.test(word))) continue
    const isGoing =
      GOES.test(token.word) &&
      (hasTo ||
        (/g$/.test(token.word)
          ? chain < at
          : /s$|^went$/.test(token.word) || !/^(?:you|we|i)$/.test(tokens[chain - 1]?.word ?? '')))
    const isMany =
      verb?.form === 'base' &&
      chain === at &&
      at > from &&
      NAMES.test(tokens[at - 1]?.tag ?? '') &&
      isPlural(tokens[at - 1]?.word ?? '')
    const isMade = MADE.test(verb?.base ?? '') && (verb?.form === 'third' || (hasTo && verb?.form === 'base') || isMany)
    if (!isGoing && !isMade) continue
    const start = subjectAt(tokens, from, chain)
    if (start === undefined) return undefined
    const before = tokens[at - 1]
    const isPlaced =
      next !== undefined &&
      !next.isAfterPause &&
      (next.tag === 'particle' ||
        next.tag === 'preposition' ||
        (isGoing && next.tag === 'to') ||
        WAYS.test(next.word)) &&
      next.word !== 'of' &&
      !/^(?:for|about|without|like)$/.test(next.word)
    // "The water's going down through the pipe": it does so by itself.
    if (
      isGoing &&
      (!isPlaced || (/g$/.test(token.word) && !/^(?:on|in|back|off|out|into|onto)$/.test(next?.word ?? '')))
    )
      continue
    if (isMade && chain === at) {
      if (
        tokens.slice(start, at).some(({ tag }) => tag === 'number') ||
        before?.tag === 'determiner' ||
        before?.tag === 'question' ||
        /^(?:that|which|who)$/.test(before?.word ?? '')
      )
        continue
      const isClear =
        WAYS.test(next?.word ?? '') ||
        (isPlaced &&
          /^(?:preposition|particle)$/.test(next?.tag ?? '') &&
          (then?.tag === 'determiner' || then?.tag === 'pronoun'))
      const isAlone = /^un/.test(verb?.base ?? '') && (next === undefined || next.isAfterPause)
      if (LIKE_THINGS.test(token.word) ? !isClear || at === from : !isPlaced && !isAlone) continue
    } else if (isMade && !isPlaced) continue
    if (isTelling(tokens, start, chain)) return undefined
    const own = sayTokens(text, tokens, start, chain)
    const said = start === chain || (/^(?:it|they)$/i.test(own) && ahead !== '') ? ahead : own
    const thing = objectOf(said)
    if (thing === undefined) return undefined
    if (tokens.slice(from, at).some(({ tag }) => tag === 'negation')) return undefined
    const front = start === from ? '' : sayTokens(text, tokens, from, start)
    const where = sayTokens(text, tokens, at + 1, to).replace(ON_TELLING, '')
    if (IN_BODY.test(where)) return undefined
    if (isGoing) {
      const way = where.replace(/^(?:straight|right|clean) (?=(?:off|out|up|down|in|back)\b)/, '')
      // "go with me to the tip": taken there.
      const away =
        /^(?:back )?((?:with (?:me|us|you) )?)(to (?!(?:the |a )?(?:stop|rest|full|halt|boil|complete)\b).*)$/i.exec(
          way,
        )
      if (away !== null) {
        const goal = tokens[tokens.findIndex(({ tag }, k) => k > at && tag === 'to') + 1]?.tag ?? ''
        const isTaken =
          token.word !== 'going' && (away[1] !== '' || /^go/.test(token.word)) && !/^(?:verb|number)$/.test(goal)
        return isTaken ? placed(`take ${thing} ${away[2]}`, front) : undefined
      }
      const [particle = '', ...more] = way.split(' ')
      const behind = tokens.find(({ word }, i) => i > at && i < to && word === more[0]?.replace(/,$/, '').toLowerCase())
      if (
        /^(?:off|out|away)$/.test(particle) &&
        behind !== undefined &&
        !/^(?:determiner|pronoun|preposition|to|condition|and)$/.test(behind.tag)
      ) {
        const order = orderOfPlace(thing, particle)
        return placed(behind.tag === 'verb' ? order : `${order}, ${more.join(' ')}`, front)
      }
      if (way === 'through' || (token.word === 'went' && (/^through\b/.test(way) || /^an? /i.test(said))))
        return undefined
      return /^(?:off|out|on|in|back|up|down|away|into|onto|over|under|round|around|between|behind|inside|through|to|against)\b/.test(
        way,
      ) && !/^(?:to|through)(?: (?:a|the))? (?:\d|one|two|three|stop|rest)/.test(way)
        ? placed(orderOfPlace(said === 'it' ? 'it' : thing, way), front)
        : undefined
    }
    return placed(
      `${verb?.base} ${said === '' || /^your /i.test(said) ? thing : thing.replace(/^your /, 'the ')} ${where}`.trim(),
      front,
    )
  }
  return undefined
}
