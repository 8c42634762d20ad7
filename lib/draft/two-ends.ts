import type { Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { NUMBERS } from './bound-words'

/** Characters between two figures that may be the ends of one range. */
const REACH = 52

const oneEnd = ({ low, high, nominal }: Quantity): 'low' | 'high' | undefined =>
  nominal !== undefined || (low === undefined) === (high === undefined) ? undefined : low === undefined ? 'high' : 'low'

const isAlone = ({ low, high, nominal }: Quantity): boolean =>
  nominal !== undefined && low === undefined && high === undefined

/** Joins two bounds of one thing: no new sentence, no other thing named as the subject in between. */
const JOINED = /^[^.;?!]{0,28}\b(?:and|but|or)\b[^.;?!]*$/i
const OTHER =
  /\b(?:then|while|if|when|once|after|before|because|so|the other|another|second|next|per|every|each|at|one's|for|it|they|that|he|she|there)\b/i

/** `go under 30 or over 45`, where what was denied of the first is denied of the second. */
const OR_OVER = /^ ?,? ?or (?:go )?$/i
const OVER = /^(?:over|above|past|beyond|more than|higher than)\b/i

/** `5 or 6`, `every 200 hours, maybe 250`, `a minute, a minute and a half`. */
const ALTERNATIVE = /^ ?(?:,? ?(?:or|or maybe|or even|or perhaps|maybe|perhaps|possibly|or possibly|or say)|,) ?$/i
const LONE_COMMA = /^ ?, ?$/
const TOO_MUCH = /^(?:'s| is| would be|'d be) (?:far |way )?(?:too|already)\b/i
/** `one, two, three inches` counts. */
const COUNTED = new RegExp(`\\b(?:\\d+|${NUMBERS}), ?$`, 'i')
/** How much more the second of two alternatives may be. */
const ALTERNATIVES = 1.6

const sameUnit = (a: Quantity, b: Quantity): boolean =>
  a.unit === undefined || b.unit === undefined || a.unit === b.unit

const rangeOf = (a: Limit, b: Limit, low: number, high: number, text: string): Limit => {
  const { doubt: _, ...rest } = a.quantity.unit === undefined ? b : a
  const unit = a.quantity.unit ?? b.quantity.unit
  return {
    ...rest,
    quantity: { low, high, ...(unit === undefined ? {} : { unit }) },
    text: text.slice(a.at, b.to),
    at: a.at,
    to: b.to,
    notes: [...a.notes, ...b.notes],
    ...(unit === undefined && a.doubt !== undefined ? { doubt: a.doubt } : {}),
  }
}

/** `more than twenty psi and less than eighty`: a least and a greatest value of one thing. */
const boundsOf = (a: Limit, b: Limit, text: string): Limit | undefined => {
  const between = text.slice(a.to, b.at)
  const [first, second] = [oneEnd(a.quantity), oneEnd(b.quantity)]
  if (first === undefined || second === undefined || !sameUnit(a.quantity, b.quantity)) return undefined
  const isDenied = first === 'low' && second === 'low' && OR_OVER.test(between) && OVER.test(b.text)
  if (first === second && !isDenied) return undefined
  if (!(isDenied || (JOINED.test(between) && !OTHER.test(`${between}${b.text}`)))) return undefined
  const [x, y] = [a.quantity[first] ?? 0, b.quantity[second] ?? 0]
  const [low, high] = first === 'low' ? [x, y] : [y, x]
  return low < high ? rangeOf(a, b, low, high, text) : undefined
}

const alternativesOf = (a: Limit, b: Limit, text: string, isListed: boolean): Limit | undefined => {
  const between = text.slice(a.to, b.at)
  const [low, high] = [a.quantity.nominal, b.quantity.nominal]
  if (!(isAlone(a.quantity) && isAlone(b.quantity)) || low === undefined || high === undefined) return undefined
  if (!sameUnit(a.quantity, b.quantity) || low <= 0 || high <= low || high > ALTERNATIVES * low) return undefined
  const said = /^(?:maybe|perhaps|or) /i.test(b.text) ? `${between}${b.text.split(' ')[0]} ` : between
  if (!ALTERNATIVE.test(said)) return undefined
  if (b.quantity.unit === 'circ' && a.quantity.unit === undefined) return undefined
  // `Point seven, a millimetre's too wide`.
  if (TOO_MUCH.test(text.slice(b.to))) return undefined
  // "Seven, eight, nine" counts; a comma alone needs a unit at the end.
  if (LONE_COMMA.test(said) && (isListed || b.quantity.unit === undefined || COUNTED.test(text.slice(0, a.at))))
    return undefined
  return rangeOf(a, b, low, high, text)
}

/**
 * Two figures of a sentence that are the ends of one range: a least and a greatest value, or two alternatives close together.
 *
 * @param limits in the order of the text
 */
export const joinEnds = (text: string, limits: readonly Limit[]): readonly Limit[] => {
  const kept: Limit[] = []
  for (const [i, limit] of limits.entries()) {
    const before = kept.at(-1)
    if (before === undefined || limit.at - before.to > REACH || limit.at < before.to) {
      kept.push(limit)
      continue
    }
    const isListed = i > 1 || i + 1 < limits.length
    const range = boundsOf(before, limit, text) ?? alternativesOf(before, limit, text, isListed)
    if (range === undefined) kept.push(limit)
    else kept[kept.length - 1] = range
  }
  return kept
}
