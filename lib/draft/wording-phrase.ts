import { singular, verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import type { Clause } from './clause'
import { isNotOnly, sayTokens } from './clause-text'
import type { Reading } from './feature'
import { fromAgent, fromCleft, fromRequest } from './wording-agent'
import { fromInverted, orderOfPlace, withArticle, yours } from './wording-place'
import { takenForOrder } from './wording-taken'
import { fromLatePassive, fromPassive, fromPast } from './wording-told'
import { AS_VERB, COMPOUND, DIRECT, hasNoun, isIdleVerb, OPENS_PLACE, orderFrom, TELLS } from './wording-verb'

/** From the main verb on. */
const fromVerb = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens } = reading
  const { verb } = clause
  if (verb === undefined) return undefined
  const [token, next, then] = [tokens[verb], tokens[verb + 1], tokens[verb + 2]]
  if (
    token !== undefined &&
    next !== undefined &&
    verb === clause.start &&
    COMPOUND.test(`${token.word} ${next.word}`)
  ) {
    if (next.isAfterPause || clause.frame !== 'order') return undefined
    return verb + 2 < clause.to && then !== undefined && (then.tag === 'particle' || then.tag === 'preposition')
      ? fromPlace(reading, clause)
      : undefined
  }
  return orderFrom(reading, verb, clause.to)
}

const ENDS = /^(?:off|out|on|in|up|down|shut|open|away|apart)$/

/** How far, never what: "an eighth of an inch off the housing". */
const A_MEASURE = /\b(?:inch|inches|mm|mils?|thou|hair|millimet(?:re|er)s?|centimet(?:re|er)s?|cm|foot|feet)$/i

/** "Isolator on | tag off": captions without pauses run several together. */
const isRunTogether = (tokens: readonly Token[], at: number, to: number): boolean => {
  const next = tokens[at + 1]
  if (!ENDS.test(tokens[at]?.word ?? '') || next === undefined || next.isAfterPause || at + 2 >= to) return false
  if (!/^(?:part|tool|noun|material|word|third)$/.test(next.tag)) return false
  return tokens
    .slice(at + 2, Math.min(to, at + 4))
    .some(
      ({ tag, word, isAfterPause }, i) =>
        tokens[at + 1 + i]?.tag !== 'ing' &&
        tag === 'particle' &&
        /^(?:off|out|on|in|shut|open|up|down|away|back)$/.test(word) &&
        !isAfterPause,
    )
}

/** "wheel off", "cap back on", "bike in the stand"; but "hose that down" has a verb in front. */
const fromPlace = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens, text } = reading
  const [first, second] = [tokens[clause.start], tokens[clause.start + 1]]
  if (first === undefined) return undefined
  const at = tokens.findIndex(
    ({ tag, word }, i) =>
      i > clause.start &&
      i < clause.to &&
      (tag === 'particle' || (tag === 'preposition' && word !== 'of') || tag === 'to'),
  )
  if (at < 0) return undefined
  for (let i = clause.from; i < at; i++) if (isNotOnly(tokens, i)) return undefined
  const thing = sayTokens(text, tokens, clause.start, at).replace(/,? (?:goes|go|comes|gets|is|are)$/, '')
  if (
    thing === '' ||
    A_MEASURE.test(thing) ||
    TELLS.test(thing) ||
    OPENS_PLACE.test(thing) ||
    !hasNoun(tokens, clause.start, at)
  )
    return undefined
  if (at - clause.start < 5 && isRunTogether(tokens, at, clause.to)) {
    const more = fromPlace(reading, { ...clause, from: at + 1, start: at + 1 })
    const order = orderOfPlace(thing, tokens[at]?.word ?? '')
    return more === undefined ? order : `${order}${/ and /.test(more) ? ',' : ' and'} ${more}`
  }
  const where = sayTokens(text, tokens, at, clause.to)
  if (thing === 'switch' && /^(?:off|on)\b/.test(where)) return `switch ${where}`
  // "No grease on the faces": the lead-in skipped "no", which must never get lost.
  const lead = tokens[clause.start - 1]
  const isRefused = lead !== undefined && /^(?:no|not|never)$/.test(lead.word) && !first.isAfterPause
  const refused = /^(?:no|not|never)\s+(.+)$/i.exec(thing)?.[1] ?? (isRefused ? thing : undefined)
  if (refused !== undefined) return `do not use ${refused} ${where}`
  if (second === undefined || (/^(?:on|in|at) each$/.test(where) && first.tag === 'number')) return undefined
  const grip = /^(.*\S)\s+(hand|finger|fingers)$/i.exec(thing)
  if (where === 'tight' && grip !== null) return `tighten ${withArticle(yours(grip[1] ?? ''))} ${grip[2]} tight`
  return orderOfPlace(thing, where)
}

/** "Spray dry graphite on the cups", "brush dust off the motor". */
const isSpread = (tokens: readonly Token[], { start, to }: Clause): boolean => {
  if (!/^(?:spray|brush|rub|wipe|sponge|smear|dab|pour)$/.test(tokens[start]?.word ?? '')) return false
  const at = tokens.findIndex(
    ({ word }, i) => i > start && i < to && /^(?:on|off|onto|into|over|round|along)$/.test(word),
  )
  return at > start + 1 && at < start + 5 && tokens[at + 1]?.tag === 'determiner' && hasNoun(tokens, start + 1, at)
}

/** A noun by its tag that the words behind it show to be the verb: "hose that down", "line up your mark", "brush with a wire brush". */
const fromHiddenVerb = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens } = reading
  const [first, second, third] = tokens.slice(clause.start, clause.to)
  if (first === undefined || second === undefined || second.isAfterPause) return undefined
  const isBase = verbOf(first.word)?.form === 'base' || AS_VERB.test(first.word)
  if (!isBase || (isIdleVerb(first) && first.word !== 'do')) return undefined
  const isDirect = DIRECT.test(second.word)
  const isPhrasal =
    (/^(?:up|down)$/.test(second.word) || (first.word === 'slack' && second.word === 'off')) &&
    third !== undefined &&
    DIRECT.test(third.word)
  const isManner =
    clause.frame === 'fragment' && singular(first.word) === first.word && /^(?:with|into|from)$/.test(second.word)
  const isRound =
    /^(?:tap|work|feel|run|wipe|brush|cut|file|sand)$/.test(first.word) &&
    /^(?:round|around|along|across)$/.test(second.word) &&
    DIRECT.test(third?.word ?? '')
  return isDirect || isPhrasal || isManner || isRound || isSpread(tokens, clause)
    ? orderFrom(reading, clause.start, clause.to)
    : undefined
}

/** "Drop of threadlock on the nut": an amount, never an order. */
const isAmount = (reading: Reading, { start, to }: Clause): boolean =>
  start + 1 < to && reading.tokens[start + 1]?.word === 'of'

/** "Have a good look at": the noun is the action. */
const fromHaving = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens } = reading
  const at = tokens.findIndex(
    ({ word }, i) => i > clause.start + 1 && i < clause.start + 5 && /^(?:look|feel|listen|peek)$/.test(word),
  )
  return at < 0 ||
    at >= clause.to ||
    /^(?:at|in|into|for|under|behind|to|of)$/.test(tokens[at + 1]?.word ?? '') === false
    ? undefined
    : orderFrom(reading, at, clause.to)
}

const isPronoun = (word: string): boolean => /^(?:i|we|you|what|let|all)$/.test(word)

const fromOrder = (reading: Reading, clause: Clause): string | undefined => {
  const [first, second, third] = reading.tokens.slice(clause.start, clause.to)
  // "Key to off": no key is pressed.
  if (
    clause.frame === 'order' &&
    second?.tag === 'to' &&
    /^(?:off|on|up|down|zero|full|half|neutral)$/.test(third?.word ?? '')
  )
    return fromPlace(reading, clause)
  if (clause.frame === 'order' || isPronoun(first?.word ?? '')) return fromVerb(reading, clause)
  return fromCleft(reading, clause) ?? fromAgent(reading, clause) ?? fromVerb(reading, clause)
}

/** "Tell the desk" is an order; "tell me" and "I tell you" are talk. */
const fromTelling = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens } = reading
  const { verb, frame } = clause
  if (verb === undefined || frame !== 'order' || !/^(?:tell|call)$/.test(tokens[verb]?.word ?? '')) return undefined
  return /^(?:the|everyone|everybody)$/.test(tokens[verb + 1]?.word ?? '')
    ? orderFrom(reading, verb, clause.to)
    : undefined
}

const FRESH = /^(?:a |the )?(?:new|fresh|brand-new)\b/i

/** "First gallon": which one, never when. */
const withOrdinal = (tokens: readonly Token[], clause: Clause): Clause =>
  tokens[clause.start]?.tag === 'unit' &&
  clause.start > clause.from &&
  /^(?:first|second|third|last)$/.test(tokens[clause.start - 1]?.word ?? '')
    ? { ...clause, start: clause.start - 1 }
    : clause

/** The order one clause gives, without its "not"; undefined where it gives none. */
export const orderOf = (reading: Reading, said: Clause): string | undefined => {
  const { tokens, text } = reading
  const clause = withOrdinal(tokens, said)
  const verb = clause.verb === undefined ? undefined : tokens[clause.verb]
  // "Back the nut off": a particle by its tag.
  const [opener, object, then] = tokens.slice(clause.start, clause.to)
  const isTold = /^(?:past|third|verb|auxiliary)$/.test(then?.tag ?? 'verb')
  if (opener?.word === 'back' && DIRECT.test(object?.word ?? '') && !isTold)
    return orderFrom(reading, clause.start, clause.to)
  if (tokens[clause.start]?.word === 'have' && tokens[clause.start + 1]?.word === 'a')
    return fromHaving(reading, clause)
  const taken = clause.frame === 'order' ? takenForOrder(reading, clause) : undefined
  if (taken !== undefined)
    return taken.isPlace === true ? fromPlace(reading, { ...clause, start: clause.start + 1 }) : taken.order
  if (clause.frame === 'order' || clause.frame === 'you' || clause.frame === 'i' || clause.frame === 'we')
    return isAmount(reading, clause)
      ? fromPlace(reading, clause)
      : isIdleVerb(verb)
        ? (fromCleft(reading, clause) ?? fromTelling(reading, clause))
        : fromOrder(reading, clause)
  if (clause.frame === 'question') return fromRequest(reading, clause)
  if (clause.frame === 'past')
    return isIdleVerb(verb) && verb?.tag !== 'auxiliary'
      ? undefined
      : (fromPast(reading, clause) ?? (clause.verb === clause.start ? fromPlace(reading, clause) : undefined))
  const opens = /^(?:off|out|in|on|up|down|back|away|over)$/.test(tokens[clause.start]?.word ?? '')
  const inverted = !opens ? undefined : fromInverted(sayTokens(text, tokens, clause.start, clause.to))
  if (inverted !== undefined) return inverted
  if (clause.frame === 'passive') return fromPassive(reading, clause) ?? fromAgent(reading, clause)
  if (clause.frame === 'nominal') return fromHiddenVerb(reading, clause) ?? fromPlace(reading, clause)
  if (clause.frame === 'fragment') return fromHiddenVerb(reading, clause)
  return clause.frame === 'statement'
    ? (fromCleft(reading, clause) ??
        fromAgent(reading, clause) ??
        fromLatePassive(reading, clause) ??
        fromHiddenVerb(reading, clause))
    : undefined
}

const WORN =
  /\b(?:glasses|goggles|gloves|mask|respirator|visor|face shield|muffs|ear plugs|defenders|apron|boots|helmet|harness|spectacles)\b/i

/** What a lone name says where nobody names an action: what is worn is put on, what is new is fitted, a photo is taken. */
export const impliedOrder = (head: string): string | undefined => {
  if (/^(?:a |one )?(?:photo|photograph|picture)s?\b/i.test(head))
    return `take ${/^(?:a|one) /i.test(head) || /s\b/.test(head.split(' ')[0] ?? '') ? '' : 'a '}${head}`
  if (WORN.test(head) && head.split(' ').length < 6 && !/\b(?:off|out|with|for)\b/i.test(head)) return `put on ${head}`
  if (!isFresh(head)) return undefined
  return `fit ${/^(?:a|the) /i.test(head) || /s$/.test(head) ? '' : 'the '}${head}`
}

/** "New idler": what is new goes in; the talk does not say so. */
const isFresh = (said: string): boolean => FRESH.test(said) && said.split(' ').length > 1
