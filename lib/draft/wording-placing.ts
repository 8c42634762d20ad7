import { joinOrders, sayTokens } from './clause-text'
import type { Reading } from './feature'
import * as kind from './wording-kinds'
import { orderOfPlace, withArticle, yours } from './wording-place'
import { headOf, isNamed, type Rule, sure } from './wording-scene'
import type { Stretch } from './wording-stretch'

/** "hood, four bolts, off", "breaker, number ten, off". */
const fromFarParticle = (reading: Reading, stretches: readonly Stretch[]): string | undefined => {
  const { tokens, text } = reading
  const [first, ...more] = stretches
  if (first === undefined || headOf(reading, first).word === 'off' || !isNamed(reading, first.from, first.to))
    return undefined
  const at = more.findIndex(
    ({ from, to }) =>
      /^(?:off|out|on|in|shut|open|closed|down|up|back|tight|loose)$/.test(tokens[from]?.word ?? '') && to - from < 4,
  )
  const place = more[at]
  if (place === undefined || at > 2 || place.to - place.from > 1) return undefined
  const next = tokens[place.to]
  if (next !== undefined && !next.isAfterPause && /^(?:pronoun|third|verb|auxiliary)$/.test(next.tag)) return undefined
  // "The fan, and then the breaker, off": it is the last one named.
  const named =
    more.slice(0, at).findLast(({ from }) => /^(?:the|my|your|its)$/.test(tokens[from]?.word ?? '')) ?? first
  const { head, at: end } = headOf(reading, named)
  if (head.split(' ').length > 6 || kind.NO.test(head) || /\band\b/.test(head)) return undefined
  const order = orderOfPlace(head, tokens[place.from]?.word ?? '')
  const between = sayTokens(text, tokens, end, place.from)
  return between === '' ? order : `${order}${end === named.to ? ',' : ''} ${between}`
}

const ENDS = /^(?:off|out|on|in|shut|open|closed|up|down|tight|loose|away|apart)$/

/** What is on or off by itself: "padlock on" ends there. */
const SWITCHED =
  /\b(?:power|isolator|breaker|ignition|pump|gas|water|fuel|mains|motor|lights?|air|compressor|switch|fan|padlock|lock|tag|brakes?|handbrake|gloves|goggles|glasses|mask|cover|lid|cap|nut|heater)$/i

/** What a thing alone is named with. */
const THING: ReadonlySet<string> = new Set([
  'determiner',
  'number',
  'adjective',
  'part',
  'tool',
  'material',
  'noun',
  'word',
])

const STATES: Readonly<Record<string, string>> = {
  slack: 'slacken',
  snug: 'snug',
  clean: 'clean',
  dry: 'dry',
  straight: 'straighten',
  level: 'level',
}

/** "motor bolts slack", "both bolts snug" in [from, to); undefined where no such state ends it. */
export const stateOrder = ({ tokens, text }: Reading, { from, to }: Stretch): string | undefined => {
  const verb = STATES[tokens[to - 1]?.word ?? '']
  if (verb === undefined || to - from < 2 || to - from > 6 || !isNamed({ tokens }, from, to - 1)) return undefined
  if (tokens.slice(from, to - 1).some(({ tag }) => !THING.has(tag))) return undefined
  return `${verb} ${withArticle(yours(sayTokens(text, tokens, from, to - 1)))}`
}

/** "motor bolts slack, four of them". */
export const fromState: Rule = ({ reading, first, all, whole }) => {
  const order = stateOrder(reading, first)
  return order === undefined ? undefined : sure(`${order}${all.slice(whole.length)}`)
}

/** "isolator on, tag off": each breath a thing and where it goes. */
export const fromParticles: Rule = ({ reading: { tokens, text }, stretches }) => {
  const orders: string[] = []
  for (const { from, to } of stretches) {
    const last = tokens[to - 1]
    const isPlaced = last !== undefined && to - from > 1 && to - from < 6 && ENDS.test(last.word)
    const thing = sayTokens(text, tokens, from, to - 1)
    if (!isPlaced || kind.NO.test(thing) || !isNamed({ tokens }, from, to - 1) || / (?:and|or) /.test(thing)) break
    if (tokens.slice(from, to - 1).some(({ tag }) => /^(?:preposition|particle|to|past)$/.test(tag))) break
    if (
      /^(?:on|in)$/.test(last.word) &&
      to < tokens.length &&
      tokens[to]?.isAfterPause === false &&
      !SWITCHED.test(thing)
    )
      break
    orders.push(orderOfPlace(yours(thing), last.word))
  }
  return orders.length === 0 ? undefined : sure(joinOrders(orders.slice(0, 4)))
}

export const fromFar: Rule = ({ reading, stretches }) => {
  const far = fromFarParticle(reading, stretches)
  return far === undefined ? undefined : sure(far)
}

/** "plank under the shaft", "left end first, into the slot". */
export const fromPlaced: Rule = ({
  reading,
  stretches,
  first,
  head,
  noun,
  whole,
  all,
  at,
  word,
  hasPauses,
  holders,
}) => {
  const { tokens, text } = reading
  if (holders.length > 0 || kind.FASTENERS.test(noun) || !isNamed(reading, first.from, at)) return undefined
  const next = tokens[at + 1]?.tag ?? ''
  const second = tokens[stretches[1]?.from ?? -1]
  if (at === first.to)
    return kind.PUTS.test(second?.word ?? '') &&
      whole.split(' ').length < 7 &&
      !/\b(?:last|time|thing|step|job|side)\b/i.test(head)
      ? sure(`put ${withArticle(yours(whole))} ${all.slice(whole.length).replace(/^, /, '')}`)
      : undefined
  if (
    /^(?:off|out)$/.test(word) &&
    next === 'determiner' &&
    head.split(' ').length < 4 &&
    !/^(?:one|two|three|four|\d)/i.test(head)
  )
    return sure(`${orderOfPlace(yours(head), sayTokens(text, tokens, at, first.to))}${all.slice(whole.length)}`)
  if (!kind.PUTS.test(word) || kind.BEARS.test(word) || /^(?:one|two|three|four|\d)/i.test(head)) return undefined
  if (!hasPauses && /^(?:on|in)$/.test(word) && !/^(?:determiner|pronoun|number)$/.test(next) && at + 2 < first.to)
    return undefined
  if (kind.ONLY_THERE.test(word) && /^(?:the|its|this|that)\b/i.test(head) && !kind.hasTool(noun)) return undefined
  const where = sayTokens(text, tokens, at, first.to)
  const more = all.slice(whole.length)
  if (word !== 'to') return sure(`${orderOfPlace(yours(head), where)}${more}`)
  return /^(?:the|your|my|old)\b/i.test(head) ? sure(`put ${withArticle(yours(head))} ${where}${more}`) : undefined
}
