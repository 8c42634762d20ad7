import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { toDimension } from './dimension'

/** Characters around a number in which words of a limit are looked for. */
const REACH = 64

/** What stands after a number up to the next figure or the sentence's end. */
const afterOf = (text: string, to: number): string => /^[^.;?!\d]*/.exec(text.slice(to, to + REACH))?.[0] ?? ''
/** What stands before it from the last end of a sentence. */
const beforeOf = (text: string, at: number): string =>
  /[^.;?!]*$/.exec(text.slice(Math.max(0, at - REACH), at))?.[0] ?? ''

/** Said after a figure, it is the most. @source common practice, no source */
const MOST_AFTER =
  /^[^,]{0,30}(?:,|\band|\bbut) ?(?:and |but |that's |it's )?(?:no|not|never)(?: no| one| any| an?(?: \w+){1,2})? (?:more|further|farther|higher|longer|over|wider|deeper|bigger|beyond)\b(?! often| than(?! that\b))|^[^,]{0,30},? (?:and )?(?:tops\b|at (?:the )?(?:very |absolute )?(?:most|outside|max(?:imum)?)\b(?! (?:an?|half|one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty)\b))|^[^,]{0,20},? (?:and |which |but )?(?:that ?)?(?:is|'s|are) (?:about )?(?:my|the|your|our|his) (?:absolute |very |own )?(?:limit|max(?:imum)?|ceiling|most)\b|^'s (?:my|the) limit\b|^[^,]{0,24}\b(?:is|are|'s),? (?:[a-z ,]{0,16})?(?:no crime|allowed|permitted|permissible|tolerable|tolerated|acceptable)\b|^[^,]{0,40}\b(?:is|'s) as (?:much|far|wide|hot) as (?:i|you|we)\b|^ (?:out )?and i(?:'ll| will|'d| would) (?:let it|live with)|^[^,]{0,20}\bi (?:allow|tolerate|accept)\b/i
/** Said after a figure, it is the least. */
const LEAST_AFTER =
  /^[^,]{0,30},? (?:and )?(?:at (?:the )?(?:very |bare )?(?:least|minimum)\b(?! (?:an?|half|one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty)\b)|(?:bare |absolute )?minimum\b)|^[^,]{0,36}(?:,|\band\b|\bbut\b) (?:and |but )?(?:no|not|never|nothing|any)(?: an?(?: \w+){1,2})? (?:less|sooner|shorter|lower|smaller|under|nearer|closer)\b|^[^,]{0,36}, or (?:more|over|better|higher|longer)\b/i
/** People kept this far off: the least. */
const AWAY = /\b(?:keep|stand|stay|step|back)\b[^.;\d]{0,30}$/i
const AWAY_AFTER = /^ (?:off|away|back|clear|from)\b/i
/** Said before a figure, it is the most. */
const MOST_BEFORE =
  /\b(?:allow(?:s|ed|ing)?(?: you| us| me)?|tolerates?|tolerance|permits?|permitted|(?:can|may) be out by|(?:live|put up) with|inside of|before [a-z ]{2,24} reach(?:es)?|(?:should(?:n't| not)|must(?:n't| not)|may not|cannot|can't) (?:pass|exceed|reach)|older than)[^,.;\d]{0,24}$/i
const LIMIT_BEFORE = /\b(?:limit(?:'s| is| was| of|)|discard (?:at|limit))[^,.;\d]{0,22}$/i
/** `four mil of lift and they're due`. */
const DUE_AFTER =
  /^[^,.;]{0,24},? and (?:it|they|he|she|that)(?:'s|'re| is| are) (?:due|done|out|scrap|finished|worn|for the (?:bin|scrap|skip))\b/i
const CHANGED_AT =
  /\b(?:change|renew|replace|scrap|bin|swap|retire|discard)(?:s|d|ed|ned)?(?: it| them| the \w+)?(?: out)? at (?:about |around )?$/i

/** What gets thinner, shorter or lower in use: its limit is a least value. */
const WEARS =
  /\b(?:wear(?:s|ing)?|worn|new|brush(?:es)?|lining|linings|pads?|discs?|disks?|rotors?|tread|shoes?|thickness|thick|rollers?|pins?|facing|friction|teeth|depth left)\b/i
/** What gets wider, longer or looser in use. */
const GROWS =
  /\b(?:play|gap|slack|stretch\w*|runout|run-out|clearance|bend|bent|out|wobble|backlash|error|difference|apart|elongation|sag|bow|drop|leak\w*|creep|lift)\b/i

const toHigh = ({ nominal, unit }: Quantity): Quantity => ({
  ...(nominal === undefined ? {} : { high: nominal }),
  ...(unit === undefined ? {} : { unit }),
})
const toLow = ({ nominal, unit }: Quantity): Quantity => ({
  ...(nominal === undefined ? {} : { low: nominal }),
  ...(unit === undefined ? {} : { unit }),
})

const isLessBetter = ({ low = 0, unit }: Quantity): boolean => {
  const dimension = toDimension(unit)
  return dimension === 'time' || unit === '[mil_i]' || (dimension === 'length' && low < 0.5)
}

/** Whether a larger value of the same unit was said a moment ago: what is new, beside what is worn out. */
const hasLarger = ({ nominal = 0, unit }: Quantity, near: readonly Quantity[]): boolean =>
  near.some(
    other =>
      other.unit === unit && other.nominal !== undefined && other.nominal > nominal && other.nominal < nominal * 4,
  )

/**
 * A figure that the reader took for a plain value and whose sentence makes a limit of it, at a distance:
 * `four turns at first, no more`, `the limit is two`, `and that's the most`.
 *
 * @param before what was said just before the sentence
 * @param near quantities said just before, in the same sentence or the ones before
 */
export const boundAtDistance = (
  quantity: Quantity,
  limit: Limit,
  text: string,
  before: string,
  near: readonly Quantity[],
): Quantity => {
  // Of an error or a time, what is better is less.
  if (
    quantity.low !== undefined &&
    quantity.high === undefined &&
    /\bor better$/i.test(limit.text) &&
    isLessBetter(quantity)
  )
    return { high: quantity.low, ...(quantity.unit === undefined ? {} : { unit: quantity.unit }) }
  if (
    !hasNumber(quantity) ||
    quantity.nominal === undefined ||
    quantity.low !== undefined ||
    quantity.high !== undefined
  )
    return quantity
  const [ahead, after] = [beforeOf(text, limit.at), afterOf(text, limit.to)]
  if (
    LEAST_AFTER.test(after) ||
    (AWAY.test(ahead) && AWAY_AFTER.test(after) && toDimension(quantity.unit) === 'length')
  )
    return toLow(quantity)
  const isLimit = LIMIT_BEFORE.test(ahead)
  const isDue = DUE_AFTER.test(after)
  if (isLimit || isDue || CHANGED_AT.test(ahead)) {
    const isWorn = hasLarger(quantity, near) || (WEARS.test(`${before} ${text}`) && !GROWS.test(text))
    if (isWorn) return toLow(quantity)
    if (isLimit || (isDue && GROWS.test(text))) return toHigh(quantity)
  }
  return MOST_AFTER.test(after) || MOST_BEFORE.test(ahead) ? toHigh(quantity) : quantity
}
