import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { afterOf, beforeOf, firstAt } from './beside-limit'
import {
  ACTED_ON,
  AFTER_BEFORE,
  AS_LOW,
  AT_BEFORE,
  AWAY,
  AWAY_AFTER,
  BEFORE_AFTER,
  BENDS,
  CANNOT_REACH,
  CHANGED_AT,
  CLEAR,
  CLEAR_AFTER,
  DONE_BY,
  DOWN_TO,
  DUE_AFTER,
  END_NAMED,
  FROM,
  GOES_NOT_IN,
  GOOD_FOR,
  GOOD_UNTIL,
  GROWN_TO,
  GROWS,
  HAS,
  HAVE_BEEN,
  IN_A_WAY,
  IN_AFTER,
  IS_OVER,
  LASTS,
  LEAST_AFTER,
  LEAST_IS,
  LEAVE_FOR,
  LEAVES,
  LEFT_AFTER,
  LIMIT_BEFORE,
  MOST_AFTER,
  MOST_BEFORE,
  MOST_IS,
  MUST_REACH,
  NOT_BEFORE,
  NOT_BEFORE_IT,
  NOT_UNTIL,
  OR_ELSE,
  OR_FAULT,
  OR_SHORT,
  OTHER_FAILS,
  PASSES_BEFORE,
  READ_OFF,
  RENEWED,
  STILL_GOOD,
  STOPS_AT,
  STOPS_BEFORE,
  THERE_MUST,
  TIGHTER,
  TO_DO,
  UNLESS_REACHED,
  UPWARDS,
  WEARS,
} from './bound-words'
import { isBroughtTo } from './brought'
import { isCondemned } from './condemned'
import { toldEnd } from './deadline'
import { toDimension } from './dimension'
import { figureAs } from './figure-as'
import { under100 } from './said-plainly'

/** "Half a turn and no more" is how far to turn; "half a turn, no more" is the most. */
const AND_NO_MORE = /(?:^| )and (?:no|not) more\b(?! than)/i
const PAST_THAT = /^ (?:past|beyond|over|after) (?:that|this|it|there)\b/i
/** `three millimetres, no more and no less`. */
const NEITHER = /\b(?:no|not) (?:more,? (?:and |but |or )?(?:no|not) less|less,? (?:and |but |or )?(?:no|not) more)\b/i
/** `25, up to 28`: from the one to the other. */
const UP_TO = /\bup to\b/i

const NEITHER_REACH = 40

/** What there may be more of than is asked for. Common practice, no source. */
const SHORT_OF = new Set(['length', 'pressure', 'voltage'])

const toHigh = (quantity: Quantity): Quantity => figureAs('high', quantity)
const toLow = (quantity: Quantity): Quantity => figureAs('low', quantity)

/** How long or far something runs until it is due. */
const FAR_UNITS = new Set(['km', '[mi_i]', 'h'])
const OR_SOONER = /^,? or (?:sooner|earlier)\b/i

/** What is waited for: `thirty seconds or better`, which of a response would be the most. */
const WAITED =
  /\b(?:wait\w*|hold\w*|leave|let|give|run|runs|running|dry|drying|soak\w*|stand|sit|sits|cool\w*|warm\w*|charge|charging|cure|cures|for)\b/i

/** Ohms below which what is joined is measured, not what is kept apart. Common practice, no source. */
const BONDED = 5

/** Of an error or of how long something takes, what is better is less. */
const isLessBetter = ({ low = 0, unit }: Quantity, text: string): boolean =>
  toDimension(unit) === 'time'
    ? unit === 's' && !WAITED.test(text)
    : unit === '[mil_i]' || (toDimension(unit) === 'length' && low < 0.5) || (unit === 'Ohm' && low < BONDED)

/** Whether a larger value of the same unit was said a moment ago: what is new, beside what is worn out. */
const hasLarger = ({ nominal = 0, unit }: Quantity, near: readonly Quantity[]): boolean =>
  near.some(
    other =>
      other.unit === unit && other.nominal !== undefined && other.nominal > nominal && other.nominal < nominal * 4,
  )

/** `the bend is to be no tighter than 180 millimetres`: a tighter bend has a smaller radius. */
const isBend = (limit: Limit, text: string, ahead: string, quantity: Quantity): boolean => {
  const { low, high } = quantity
  if ((low !== undefined && high !== undefined) || toDimension(quantity.unit) !== 'length') return false
  return TIGHTER.test(`${ahead}${limit.text}`) && BENDS.test(text)
}

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
  const [ahead, after] = [beforeOf(text, firstAt(limit, text)), afterOf(text, limit.to)]
  const dimension = toDimension(quantity.unit)
  if (isBend(limit, text, ahead, quantity)) return toLow(quantity)
  if (
    (quantity.low === undefined || quantity.high === undefined) &&
    NEITHER.test(text.slice(limit.at, limit.to + NEITHER_REACH))
  )
    return figureAs('nominal', quantity)
  if (
    quantity.low !== undefined &&
    quantity.high === undefined &&
    /\bor better$/i.test(limit.text) &&
    isLessBetter(quantity, text)
  )
    return { high: quantity.low, ...(quantity.unit === undefined ? {} : { unit: quantity.unit }) }
  const isWorn = (): boolean => hasLarger(quantity, near) || (WEARS.test(`${before} ${text}`) && !GROWS.test(text))
  // "Two millimetres is the limit" of what wears.
  if (
    quantity.high !== undefined &&
    quantity.low === undefined &&
    quantity.nominal === undefined &&
    /\blimit$/i.test(limit.text) &&
    dimension === 'length' &&
    isWorn()
  )
    return toLow(quantity)
  if (
    quantity.high !== undefined &&
    quantity.low === undefined &&
    quantity.nominal === undefined &&
    ((isBroughtTo(limit, ahead) && !MOST_AFTER.test(after)) || (dimension === 'turn' && AND_NO_MORE.test(limit.text)))
  )
    return figureAs('nominal', quantity)
  if (
    quantity.nominal !== undefined &&
    quantity.high !== undefined &&
    quantity.low === undefined &&
    UP_TO.test(limit.text)
  )
    return {
      low: quantity.nominal,
      high: quantity.high,
      ...(quantity.unit === undefined ? {} : { unit: quantity.unit }),
    }
  if (
    quantity.high !== undefined &&
    quantity.low === undefined &&
    /^up to\b/i.test(limit.text) &&
    NOT_BEFORE_IT.test(ahead)
  )
    return toLow(quantity)
  if (
    !hasNumber(quantity) ||
    quantity.nominal === undefined ||
    quantity.low !== undefined ||
    quantity.high !== undefined
  )
    return quantity
  if (dimension === 'turn' && AND_NO_MORE.test(after.slice(0, 18))) return quantity
  // "And then a quarter turn past that."
  if ((dimension === 'turn' || dimension === 'angle') && PAST_THAT.test(after)) return quantity
  const told = dimension === 'time' || dimension === 'interval' ? toldEnd(ahead, after) : undefined
  if (told !== undefined) return figureAs(told, quantity)
  if (
    LEAST_AFTER.test(after) ||
    (FROM.test(limit.text) && UPWARDS.test(after)) ||
    LEAST_IS.test(ahead) ||
    STILL_GOOD.test(ahead) ||
    AS_LOW.test(ahead) ||
    (NOT_BEFORE.test(ahead) && IS_OVER.test(after)) ||
    (/^(?:an? |the )?(?:good|full|solid|whole|clear)\b/i.test(limit.text) && LASTS.test(ahead)) ||
    (((AWAY.test(ahead) && AWAY_AFTER.test(after)) || (CLEAR.test(ahead) && CLEAR_AFTER.test(after))) &&
      dimension === 'length')
  )
    return toLow(quantity)
  const named = END_NAMED.exec(ahead)?.[1]?.toLowerCase()
  if (named !== undefined && !READ_OFF.test(ahead.slice(ahead.toLowerCase().lastIndexOf(named))))
    return named === 'minimum' ? toLow(quantity) : toHigh(quantity)
  if (STOPS_BEFORE.test(ahead)) return toHigh(quantity)
  if (dimension === 'time' && HAS.test(ahead) && TO_DO.test(after)) return toHigh(quantity)
  if (dimension === 'time' && DONE_BY.test(ahead)) return toHigh(quantity)
  if (OR_SOONER.test(after) && dimension !== 'interval' && !FAR_UNITS.has(quantity.unit ?? '')) return toHigh(quantity)
  if ((dimension === 'time' || dimension === 'mass') && GOOD_FOR.test(ahead)) return toHigh(quantity)
  if (dimension === 'time' && HAVE_BEEN.test(ahead)) return toLow(quantity)
  if ((dimension === 'time' || dimension === 'interval') && LEAVE_FOR.test(ahead) && !IN_A_WAY.test(after))
    return toLow(quantity)
  if (SHORT_OF.has(dimension ?? '') && LEAVES.test(ahead) && OR_SHORT.test(after)) return toLow(quantity)
  if (NOT_BEFORE_IT.test(ahead) || OR_FAULT.test(after)) return toLow(quantity)
  if (GOOD_UNTIL.test(ahead) && dimension === 'length') return isWorn() ? toLow(quantity) : toHigh(quantity)
  if (UNLESS_REACHED.test(ahead) || NOT_UNTIL.test(ahead)) return toLow(quantity)
  if (THERE_MUST.test(ahead) && OR_ELSE.test(after)) return toLow(quantity)
  if (CANNOT_REACH.test(ahead) || (MUST_REACH.test(ahead) && (OR_ELSE.test(after) || BEFORE_AFTER.test(after))))
    return toLow(quantity)
  const isRefused = (): boolean => isCondemned(`${ahead}${limit.text}${after}`)
  if ((LEFT_AFTER.test(after) || MUST_REACH.test(ahead)) && isRefused()) return toLow(quantity)
  if (dimension === 'length' && AT_BEFORE.test(ahead) && isRefused())
    return GROWS.test(text) ? toHigh(quantity) : toLow(quantity)
  if ((dimension === 'time' || dimension === 'interval') && AFTER_BEFORE.test(ahead) && isRefused())
    return toHigh(quantity)
  if (dimension === 'length' && GOES_NOT_IN.test(ahead) && IN_AFTER.test(after)) return toHigh(quantity)
  if (ACTED_ON.test(after) && GROWS.test(after)) return toHigh(quantity)
  if (DOWN_TO.test(ahead) && RENEWED.test(text)) return toLow(quantity)
  if (GROWN_TO.test(ahead) && RENEWED.test(text)) return toHigh(quantity)
  const isLimit = LIMIT_BEFORE.test(ahead)
  if (STOPS_AT.test(after)) {
    if (isWorn()) return toLow(quantity)
    return GROWS.test(text) || dimension === 'temperature' ? toHigh(quantity) : quantity
  }
  const isDue = DUE_AFTER.test(after) && !FAR_UNITS.has(quantity.unit ?? '')
  if (isLimit || isDue || CHANGED_AT.test(ahead)) {
    if (isWorn()) return toLow(quantity)
    if (isLimit || (isDue && GROWS.test(text))) return toHigh(quantity)
  }
  if (PASSES_BEFORE.test(ahead) && isRefused())
    return /\b(?:reach|hits?|sees?|gets? to)/i.test(ahead) && isWorn() ? toLow(quantity) : toHigh(quantity)
  const other = OTHER_FAILS.exec(after)?.[1]
  if (other !== undefined)
    return (under100(other) ?? quantity.nominal) < quantity.nominal ? toLow(quantity) : toHigh(quantity)
  return MOST_AFTER.test(after) || MOST_BEFORE.test(ahead) || MOST_IS.test(ahead) ? toHigh(quantity) : quantity
}
