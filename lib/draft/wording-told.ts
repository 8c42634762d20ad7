import { guessBase } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import type { Clause } from './clause'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { fromAgent, fromCleft } from './wording-agent'
import { asObject, orderOfPlace, withArticle, yours } from './wording-place'
import {
  actionFrom,
  baseOf,
  DIRECT,
  hasNoun,
  isHandled,
  isHandWork,
  likewise,
  OPENS_PLACE,
  orderFrom,
  TELLS,
} from './wording-verb'

const BE = /^(?:be|is|are|was|were|been|being|'s|'re|get|gets|got|goes|comes|go|come|went|came|has|have|had|to)$/

/** Whether "not" stands before the verb, or "no" before the thing, which the lead-in skipped. */
const isRefused = (tokens: readonly Token[], start: number, from: number, verb: number): boolean =>
  tokens.slice(from, verb).some(({ tag }) => tag === 'negation') ||
  (/^(?:no|not|never|none|neither)$/.test(tokens[start - 1]?.word ?? '') && tokens[start]?.isAfterPause === false)

const OPENS_NAME = /^(?:the|its|a|an|your|my|our|both|all|each|every|these|those)\b/i

/** "its hose, a grey pipe, | is pulled off": the thing named in the breaths right before; empty where none is. */
const aheadOf = ({ tokens, text, clauses }: Reading, { from }: Clause): string => {
  let ahead: Clause | undefined
  for (let i = clauses.findIndex(clause => clause.from === from) - 1; i >= 0; i--) {
    const clause = clauses[i]
    if (clause === undefined || clause.frame !== 'fragment' || clause.marker !== undefined) break
    if (hasNoun(tokens, clause.start, clause.to)) ahead = clause
  }
  const said = ahead === undefined ? '' : sayTokens(text, tokens, ahead.start, ahead.to)
  return OPENS_NAME.test(said) && !TELLS.test(said) && said.split(' ').length < 7 ? said : ''
}

const DAMAGED =
  /^(?:cracked|worn|broken|perished|bent|frayed|stuck|seized|chipped|torn|burnt|burned|rusted|blocked|clogged|split|scored|pitted|swollen|twisted|stretched)$/

const NOBODY = /^(?:nobody|nothing|no-one|noone)$/

/** What people wear. */
const ON_BODY =
  /(?:glove|goggle|glass|spectacle|mask|muff|boot|helmet|protect|apron|respirator|visor|harness|sleeve|defender)/

/** "held by two screws", "held down with a clip". */
const HELD_BY = /^(?:(?:down|on|in|up|together|shut|closed) )?(?:by|from|in|of|at|behind|with)\b/

/** "the cover is lifted off", "wheels blocked"; `at` is the participle. */
const fromParticiple = (reading: Reading, clause: Clause, at: number): string | undefined => {
  const { tokens, text } = reading
  const token = tokens[at]
  if (token === undefined) return undefined
  let be = at
  while (be > clause.start) {
    const other = tokens[be - 1]
    if (other === undefined) break
    if (!(BE.test(other.word) || ['auxiliary', 'modal', 'adverb', 'negation'].includes(other.tag))) break
    be--
  }
  if (tokens.slice(clause.from, at).some(({ word }) => NOBODY.test(word))) return undefined
  const thing =
    sayTokens(text, tokens, clause.start, be).replace(/^\d+(?:\.\d+)+,? |^that (?=[a-z]+s\b)/, '') ||
    aheadOf(reading, clause)
  const rest = likewise(sayTokens(text, tokens, at + 1, clause.to))
  if (['preposition', 'determiner'].includes(tokens[at - 1]?.tag ?? '') || OPENS_PLACE.test(thing)) return undefined
  if (!/^(?:it|they|he|she)$/i.test(thing) && TELLS.test(thing)) return undefined
  if (
    /^(?:i|we|you|he|she|who|what|which|there|this one|somebody|someone)$|^there\b|\b(?:never|somebody|someone|anybody)\b/i.test(
      thing,
    )
  )
    return undefined
  if (/^(?:happen|get|seem|become)$/.test(baseOf(token))) return undefined
  const chain = tokens.slice(be, at)
  const isBidden = chain.some(({ tag, word }) => tag === 'modal' || word === 'to' || word === 'gets')
  // "The belt's cracked", "it's been turned", "there's treated seed": how it is.
  const isFound =
    (DAMAGED.test(token.word) && chain.length > 0 && !(token.word === 'worn' && ON_BODY.test(thing))) ||
    chain.some(({ word }) => word === 'been')
  if ((isFound && !isBidden) || tokens[be - 1]?.word === 'there') return undefined
  if (/^(?:it|they)$/i.test(thing) && tokens[be]?.word === "'s" && be + 1 === at) return undefined
  // "The lid is held by two screws": how it is, not what is done.
  const isState = /^(?:held|driven|located|hidden|called)$/.test(token.word) && HELD_BY.test(rest)
  if (isState && !isBidden) return undefined
  const no = isRefused(tokens, clause.start, be, at) ? 'do not ' : ''
  const object =
    thing === '' || /^(?:he|she)$/i.test(thing)
      ? 'it'
      : /^(?:they|them)$/i.test(thing)
        ? 'them'
        : withArticle(yours(thing))
  const base = baseOf(token)
  return /^(?:off|out|on|in|up|down|away|back)$/.test(rest) &&
    object.split(' ').length < 6 &&
    !/^(?:it|them)$/.test(object)
    ? `${no}${base} ${rest} ${object}`
    : `${no}${base} ${object} ${rest}`.trim()
}

/** What is worn stays on: "they don't come off me". */
const ON_ME = /^off (?:me|you|us)\b ?/
/** "goes round to off". */
const ROUND_TO = /^(?:round|over|across) to (?:off|on|zero|open|closed?|shut|stop|neutral|\d)/
const TO_WASTE = /^with (?:the|your|our) .*\b(?:waste|rubbish|trash|scrap|recycling|metals?|batteries)\b/

/** "the washer goes back on", "the lid comes off". */
export const fromMove = (reading: Reading, clause: Clause, verb: number): string | undefined => {
  const { tokens, text } = reading
  let end = verb
  while (
    end > clause.start &&
    /^(?:not|never|do|does|don't|doesn't|will|'ll|can|should|must|to|just|then|also|now)$/.test(
      tokens[end - 1]?.word ?? '',
    )
  )
    end--
  const thing = sayTokens(text, tokens, clause.start, end)
  const where = sayTokens(text, tokens, verb + 1, clause.to)
  if (OPENS_PLACE.test(thing) || (!/^(?:it|she|he|they)$/i.test(thing) && TELLS.test(thing))) return undefined
  if (thing === '' || /^(?:i|you|we|that|this|there|what|which|who|people)$/i.test(thing)) return undefined
  const no = isRefused(tokens, clause.start, end, verb) ? 'do not ' : ''
  if (no !== '' && ON_ME.test(where)) return `keep ${asObject(thing)} on ${where.replace(ON_ME, '')}`.trim()
  if (ROUND_TO.test(where)) return `${no}turn ${asObject(thing)} ${where.replace(/^(?:round|over|across) /, '')}`
  if (TO_WASTE.test(where)) return `${no}put ${asObject(thing)} ${where}`
  if (/^home\b/.test(where)) return `${no}seat ${withArticle(yours(thing))} ${where.replace(/^home ?/, '')}`.trim()
  return /^(?:off|out|away|on|in|back|up|down|into|onto|over|under|through|inside|behind|between|around|to|at|where)\b/.test(
    where,
  ) && !/^(?:through|to|at)\b/.test(where.replace(/^(?:back|out|in|up|down) /, ''))
    ? `${no}${orderOfPlace(thing, where)}`
    : undefined
}

export const fromPassive = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens } = reading
  const { verb } = clause
  if (verb === undefined) return undefined
  const token = tokens[verb]
  if (token?.base === 'go' || token?.base === 'come') return fromMove(reading, clause, verb)
  if (token !== undefined && token.tag !== 'past' && token.tag !== 'adjective') return undefined
  return fromParticiple(reading, clause, verb)
}

/** Told in the past: "I took the lock off", "the table was lowered", "wheels blocked". */
export const fromPast = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens } = reading
  const { verb, start } = clause
  const token = verb === undefined ? undefined : tokens[verb]
  if (verb === undefined || token === undefined) return undefined
  const isTold = /^(?:i|we|you|what)$/.test(tokens[start]?.word ?? '')
  // "You gotta let it sit".
  const has = token.base === 'get' && tokens[verb + 1]?.tag === 'to' ? actionFrom(tokens, verb + 1, clause.to) : verb
  if (isTold) return fromCleft(reading, clause) ?? (has === undefined ? undefined : orderFrom(reading, has, clause.to))
  if (tokens.slice(start, verb).some(({ word }) => /^(?:i|we|you|one)$/.test(word)))
    return fromCleft(reading, clause) ?? fromAgent(reading, clause)
  if (token.tag === 'auxiliary') {
    const at = tokens.findIndex(({ tag }, i) => i > verb && i < Math.min(clause.to, verb + 4) && tag === 'past')
    return at > 0 && verb > start ? fromParticiple(reading, clause, at) : undefined
  }
  if (token.base === 'go' || token.base === 'come') return fromMove(reading, clause, verb)
  const next = tokens[verb + 1]
  const takes = next !== undefined && verb + 1 < clause.to && DIRECT.test(next.word)
  // "No compressed air": which air it is.
  if (verb === start && (tokens[start - 1]?.word === 'no' || isNamedWith(tokens, verb, clause.to))) return undefined
  if (verb === start) return takes || isHandWork(baseOf(token)) ? orderFrom(reading, verb, clause.to) : undefined
  const isTerse = !/^(?:the|a|an|it|they|this|that|these|those|its|my|your|which|who|one|he|she)$/.test(
    tokens[start]?.word ?? '',
  )
  if (!takes && (isHandWork(baseOf(token)) || (isTerse && isHandled(baseOf(token)))) && hasNoun(tokens, start, verb))
    return fromParticiple(reading, clause, verb)
  return takes && /^(?:he|she|they)$/.test(tokens[verb - 1]?.word ?? '')
    ? orderFrom(reading, verb, clause.to)
    : undefined
}

/** "Fixed end in its hole": which end it is. */
const isNamedWith = (tokens: readonly Token[], at: number, to: number): boolean =>
  /^(?:fixed|closed|threaded|used|worn|split|bent|sealed|pointed|flared|slotted|tapered|notched|rounded|polished|coated|painted|sprung|lined|grooved)$/.test(
    tokens[at]?.word ?? '',
  ) &&
  /^(?:part|noun|word|material|tool)$/.test(tokens[at + 1]?.tag ?? '') &&
  at + 2 < to &&
  /^(?:preposition|particle|to)$/.test(tokens[at + 2]?.tag ?? '')

const SAME = /^(?:closed|put|cut|set|shut|hit|let|split|spread)$/

/** "are put in the bag", "get handed over": passives no frame tells. */
export const fromLatePassive = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens } = reading
  const at = tokens.findIndex(
    ({ tag, word, base }, i) =>
      i > clause.start &&
      i < clause.to &&
      (tag === 'past' || SAME.test(word)) &&
      isHandled(base ?? guessBase(word)) &&
      (word !== 'closed' || tokens[i - 1]?.word === 'be') &&
      (/^(?:is|are|be|being|gets?|getting|'s|'re)$/.test(tokens[i - 1]?.word ?? '') ||
        (tokens[i - 1]?.tag === 'adverb' && /^(?:is|are|be|gets?)$/.test(tokens[i - 2]?.word ?? ''))),
  )
  return at < 0 ? undefined : fromParticiple(reading, clause, at)
}
