import { countWords, MOST_WORDS, sayTokens } from './clause-text'
import type { Reading } from './feature'
import { withArticle, yours } from './wording-place'
import { deniesTorque } from './wording-torque'

/** A figure in a unit of torque. */
const TORQUE =
  /\b(?:newton[ -]?(?:met(?:re|er)s?|centimet(?:re|er)s?)|foot[ -]?pounds?|inch[ -]?pounds?|pound[ -]?feet|n\.?m)\b/i
/** @returns whether a text has a figure in a unit of torque */
export const tellsTorque = (text: string): boolean => TORQUE.test(text)

/** What is torqued. */
const TORQUED =
  /\b(?:bolts?|screws?|set ?screws?|cap ?screws?|grub screws?|nuts?|lock ?nuts?|studs?|lugs?|plugs?|caps?|clamps?|terminals?|fittings?|unions?|couplings?|glands?)$/i
const IS_TOLD = /\b(?:torque|tighten|re-?torque|nip|snug|undo|loosen|slacken|unscrew|crack)\b/i
/** How fasteners are taken round. */
const WAY =
  /\b(?:crosswise|crossways|cross fashion|in an? (?:cross|star)(?: pattern| shape)?|corner to corner|in (?:opposite )?pairs|evenly|in (?:two|three|four|five|\d) (?:passes|stages|steps)|(?:from the )?middle outwards?|a little at a time)\b/i
/** What says nothing but that they are on. */
const PUTS = 'put|fit|refit|raise|set(?! ?screw)|do|run|plug|cap|finish|bring|take|pull|wind|crank|cinch'
const NO_ACTION = /^do this:/i
const ASKS =
  /\b(?:if|should|would|used to|was|were|came|comes after|next time|(?:not|never) tight|leave (?:it|them|those) loose|without torque|later(?=[,.]|$))\b/i
/** What is refused is torqued by no means. */
const REFUSES = /^(?:do not|don['’]t|never)\b/i
/** Where an order's verb stands: a cap, a plug and a set are things too. */
const OPENS = '(?<=^|, |\\band |\\bthen )'
/** Goes no further than what is handled: in "put the wrench on the nut" that is the wrench. */
const OWN = "(?!(?:on|onto|over|under|in|into|of|off|from|with|to|for|by|at|and|out)\\b)[\\w'’-]+ "

/** The fastener a torque is told of: the last named before the figure, else right behind it ("on those bolts"). */
const torquedIn = ({ text, tokens, phrases }: Reading): string | undefined => {
  const figure = TORQUE.exec(text)
  if (figure === null) return undefined
  const end = figure.index + figure[0].length
  const named = phrases.flatMap(({ from, to }) => {
    const [at, until] = [tokens[from]?.at ?? 0, tokens[to - 1]?.to ?? 0]
    const name = sayTokens(text, tokens, from, to)
    return TORQUED.test(name) ? [{ name, at, until }] : []
  })
  const ahead = named.findLast(({ until }) => until <= figure.index)
  const behind = named.find(
    ({ at }) => at >= end && /^ (?:on|for)(?: (?:the|those|these|all|both|each|your))* $/i.test(text.slice(end, at)),
  )
  return (ahead ?? behind)?.name
}

/** Whether an order takes off what is named so, and puts nothing on: its torque is of another time. */
const comesOff = (order: string, last: string): boolean =>
  !/\b(?:re)?fit\b|\bput\b/.test(order) &&
  new RegExp(
    `\\b(?:remove (?:${OWN}){0,4}${last}\\b|(?:take|pull|lift|get) (?:(?:off|out) (?:${OWN}){0,4}${last}\\b|(?:${OWN}){0,4}${last} (?:off|out)\\b)|pull (?:${OWN}){0,4}${last}$)`,
    'i',
  ).test(order)

/**
 * A sentence that tells a torque tells of tightening to it: "cover on, four screws, five newton metres" refits the cover
 * and torques the screws.
 *
 * @param order what else the sentence was found to order, or `do this: …`
 * @source common practice, no source
 */
export const withTorque = (order: string, reading: Reading): string => {
  const { text, isQuestion } = reading
  if (isQuestion || !TORQUE.test(text) || IS_TOLD.test(order) || ASKS.test(text)) return order
  const name = torquedIn(reading)
  const isNamed = TORQUE.test(order)
  if (isNamed && REFUSES.test(order)) return order
  const pulled = new RegExp(`${OPENS}(?:${PUTS})(?= (?:it|them)\\b[^,]*${TORQUE.source})`, 'i')
  if (isNamed && pulled.test(order)) return order.replace(pulled, 'torque')
  if (name === undefined || deniesTorque(text)) return order
  const last = name.split(' ').at(-1) ?? ''
  const way = WAY.exec(text)?.[0] ?? ''
  const how = way === '' || order.includes(way) ? '' : ` ${way}`
  const torqued = `torque ${withArticle(yours(name))}${how}`
  if (NO_ACTION.test(order)) return torqued
  if (!isNamed && (comesOff(order, last) || (REFUSES.test(order) && order.includes(last)))) return order
  // "Put the lugs in a star", "fit 4 screws": they are what is torqued.
  const put = new RegExp(`${OPENS}(?:${PUTS})(?= (?!(?:the |an? )?new\\b)(?:${OWN}){0,4}${last}\\b(?! with\\b))`, 'i')
  if (put.test(order)) {
    const alone = new RegExp(`(torque (?:[\\w'’-]+ ){0,5}${last}) (?:back|up|down|on|in|home)(?= and |,|$)`, 'i')
    return order
      .replace(put, verb => (/^(?:re)?fit$/.test(verb) && order.startsWith(verb) ? `${verb} and torque` : 'torque'))
      .replace(alone, '$1')
  }
  const isSaid = new RegExp(`\\b${last}\\b`, 'i').test(order)
  const object = isSaid ? (/s$/.test(last) ? 'them' : 'it') : withArticle(yours(name))
  // "Nuts to sixty newton metres, and I go round with chalk": told first, done first.
  const isFirst =
    !isSaid &&
    !text
      .slice(0, TORQUE.exec(text)?.index)
      .toLowerCase()
      .includes(order.split(' ').at(-1) ?? '')
  const whole = isFirst
    ? `${torqued} and ${order}`
    : `${order}${/ and /.test(order) ? ',' : ''} and torque ${object}${how}`
  return countWords(whole) <= MOST_WORDS ? whole : order
}
