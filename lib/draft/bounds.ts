import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { sizeOf } from './bare-unit'
import { LEAST_AFTER, MOST_AFTER } from './bound-words'
import { isBroughtTo } from './brought'
import { isCondemned } from './condemned'
import { toDimension } from './dimension'

/** Characters around a number in which words of a limit are looked for. */
const REACH = 64

/** What stands after a number up to the next figure or the sentence's end. */
export const afterOf = (text: string, to: number): string =>
  (/^[^.;?!\d]*/.exec(text.slice(to, to + REACH))?.[0] ?? '')
    .replace(/^['’]s\b/, ' is')
    .replace(/^['’]d\b/, ' would')
    .replace(/^['’]ll\b/, ' will')
    .replace(/^['’]re\b/, ' are')
/** What stands before it from the last end of a sentence. */
export const beforeOf = (text: string, at: number): string =>
  /[^.;?!]*$/.exec(text.slice(Math.max(0, at - REACH), at))?.[0] ?? ''

const NO_MORE = /^,? (?:and |but )?(?:no|not) (?:\w+ )?more\b/i
/** `25, up to 28`: from the one to the other. */
const UP_TO = /\b(?:up to|at the (?:very )?outside)\b/i

/** `the minimum thickness is stamped on it, 22`. */
const END_NAMED =
  /\b(minimum|maximum)(?: (?!is|are|of|at|stamped|printed|cast)[a-z]+)?(?: (?:is|'s|are|of|at|stamped|printed|marked|cast)\b[^.;\d]{0,30})? ?$/i
/** `I'd stop at forty`. */
const STOPS_BEFORE =
  /\b(?:i|we|you|they)(?:'d| would) (?:stop|quit|draw the line|call it a day) at(?: about| around)? $/i
/** `anything from one megohm up`. */
const FROM = /\bfrom\b/i
const UPWARDS = /^,? (?:up|upwards?|onwards?|on up)\b(?! (?:to|the|it|and)\b)/i
/** People kept this far off: the least. */
const AWAY = /\b(?:keep|stand|stay|step|back)\b[^.;\d]{0,30}$/i
const AWAY_AFTER = /^ (?:off|away|back|clear|from)\b/i
/** Said before a figure, it is the most. */
const MOST_BEFORE =
  /\b(?:allow(?:s|ed|ing)?(?: you| us| me)?|let(?:s|ting)? (?:you|us|me) (?:have|get away with)(?: up to)?|get(?:s|ting)? away with|tolerates?|tolerance|permits?|permitted|(?:can|may|might|could) (?:be (?:out|off)|differ|vary|deviate|drift|stray|wander)(?: [a-z ]{0,30}?)?(?: by)?|(?:live|put up) with|inside of|before [a-z ]{2,24} reach(?:es)?|(?:should(?:n't| not)|must(?:n't| not)|may not|cannot|can't) (?:pass|exceed|reach)|older than)[^,.;\d]{0,24}$/i
/** `the longest you may hold it is five seconds`. */
const MOST_IS =
  /\bthe (?:very |absolute )?(?:most|highest|hottest|longest|widest|deepest|farthest|furthest|loosest|fastest|biggest|largest|thickest|greatest) (?:[a-z]+ ){0,2}?(?:you|i|we|it|they|that|one|this|these|he|she)\b[^,.;\d]{0,30}(?:is|'s|are|be)(?: about| around| just)? $/i
const LEAST_IS =
  /\bthe (?:very |absolute )?(?:least|lowest|thinnest|smallest|shortest|tightest|narrowest|coldest|slowest|fewest) (?:[a-z]+ ){0,2}?(?:you|i|we|it|they|that|one|this|these|he|she)\b[^,.;\d]{0,30}(?:is|'s|are|be)(?: about| around| just)? $/i
/** `a bend no tighter than`: the radius is the least. */
const TIGHTER = /\b(?:tighter|sharper) (?:[a-z]+ ){0,2}?than(?: about| around)?(?: an?)? ?$/i
const BENDS =
  /\b(?:bends?|bent|bending|radius|radii|curves?|curved|loops?|coil\w*|corner|turns?|kinks?|elbows?|sweep)\b/i
/** `it should hold for a good minute`: what something must last, it may last longer. */
const LASTS =
  /\b(?:should|must|has to|have to|ought to|wants? to|needs? to)\b[^,.;]{0,24}\b(?:hold|last|stay|spin|coast|keep|burn|ring|swing|stand|float|go on|run on|carry on)\w*(?: on| up| still| dry| lit| spinning| going| turning| burning)?(?: for)? ?$/i
/** `good down to four`. */
const STILL_GOOD =
  /\b(?:good|fine|okay|ok|usable|serviceable|safe|works?|runs?|lives?|lasts?|legal)\b[^.;\d]{0,24}\b(?:down to|as low as)(?: about| around)? $/i
const AS_LOW =
  /\b(?:go|get|run|drop|take it|bring it) (?:down )?as (?:low|thin|short|little|small) as(?: about| around)? $/i
/** `don't touch it before an hour is up`. */
const NOT_BEFORE =
  /\b(?:not|never|nothing|nobody|don't|do not|can't|mustn't|won't)\b[^.;\d]{0,40}\bbefore(?: the| a| an)? ?$/i
const IS_OVER = /^ (?:is|are|has|have|were|was)? ?(?:over|up|gone|passed|out|done|been)\b/i
/** `six is where I stop`. */
const STOPS_AT =
  /^[^,.;]{0,16} is (?:about )?where (?:i|we|you|they|it) (?:stop|stops|quit|draw|give up|call|bin|change|replace|scrap|retire)/i
/** `once it passes 25`. */
const PASSES_BEFORE =
  /\b(?:pass(?:es|ed)?|exceed(?:s|ed)?|reach(?:es|ed)?|hits?|gets? to|is up to)(?: about| around)? $/i
const LIMIT_BEFORE = /\b(?:limit(?:'s| is| was| of|)|discard (?:at|limit))[^,.;\d]{0,22}$/i
/** `four mil of lift and they're due`. */
const DUE_AFTER =
  /^[^,.;]{0,24},? and (?:it|they|he|she|that)(?:'s|'re| is| are) (?:due|done|out|scrap|finished|worn|for the (?:bin|scrap|skip))\b/i
const CHANGED_AT =
  /\b(?:change|renew|replace|scrap|bin|swap|retire|discard)(?:s|d|ed|ned)?(?: it| them| the \w+)?(?: out)? at (?:about |around )?$/i
/** `once they're down to three`, `when it has stretched to twelve`: where a thing is renewed. */
const DOWN_TO =
  /\b(?:down to|worn to|wears? to|drops? to|drop(?:s|ped)? to|falls? to|thinned to|thins? to)(?: about| around| just| only)? ?$/i
const GROWN_TO =
  /\b(?:stretche[sd] to|opens? (?:up )?to|grows? to|gets? out to|climbs? to|rises? to|wears? out to)(?: about| around| just)? ?$/i
const RENEWED =
  /\b(?:change|renew|replace|scrap|bin|swap|retire|discard|new (?:one|set|pair|\w+s)|fit new|they're done|it's done|had (?:it|enough)|finished|time for|chuck|throw)\b/i

/** What gets thinner, shorter or lower in use: its limit is a least value. */
const WEARS =
  /\b(?:wear(?:s|ing)?|worn|new|brush(?:es)?|lining|linings|pads?|discs?|disks?|rotors?|tread|shoes?|thickness|thick|rollers?|pins?|facing|friction|teeth|depth left|blocks?|plates?|soles?|liners?|knife|knives|blades?)\b/i
/** What gets wider, longer or looser in use. */
const GROWS =
  /\b(?:play|gap|slack|stretch\w*|runout|run-out|clearance|bend|bent|out|wobble|wobbles|swing\w*|sway|shake|float|backlash|error|difference|apart|elongation|sag|bow|drop|leak\w*|drips?|loss|creep|lift|drift\w*|vibration|noise|twist|warp\w*)\b/i

type End = 'low' | 'high' | 'nominal'

/** The one figure of a quantity as another end of it. */
export const figureAs = (end: End, quantity: Quantity): Quantity => {
  const { unit } = quantity
  const alone: Partial<Record<End, number>> = { [end]: sizeOf(quantity) }
  return unit === undefined ? alone : { ...alone, unit }
}
const toHigh = (quantity: Quantity): Quantity => figureAs('high', quantity)
const toLow = (quantity: Quantity): Quantity => figureAs('low', quantity)

/** What is waited for: `thirty seconds or better`, which of a response would be the most. */
const WAITED =
  /\b(?:wait\w*|hold\w*|leave|let|give|run|runs|running|dry|drying|soak\w*|stand|sit|sits|cool\w*|warm\w*|charge|charging|cure|cures|for)\b/i

/** Of an error or of how long something takes, what is better is less. */
const isLessBetter = ({ low = 0, unit }: Quantity, text: string): boolean =>
  toDimension(unit) === 'time'
    ? unit === 's' && !WAITED.test(text)
    : unit === '[mil_i]' || (toDimension(unit) === 'length' && low < 0.5)

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
  return TIGHTER.test(`${ahead}${limit.text.replace(/[\d.].*$/, '')}`) && BENDS.test(text)
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
  const [ahead, after] = [beforeOf(text, limit.at), afterOf(text, limit.to)]
  if (isBend(limit, text, ahead, quantity)) return toLow(quantity)
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
    toDimension(quantity.unit) === 'length' &&
    isWorn()
  )
    return toLow(quantity)
  if (
    quantity.high !== undefined &&
    quantity.low === undefined &&
    quantity.nominal === undefined &&
    (isBroughtTo(limit, ahead) || (toDimension(quantity.unit) === 'turn' && /\bno more$/i.test(limit.text)))
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
    !hasNumber(quantity) ||
    quantity.nominal === undefined ||
    quantity.low !== undefined ||
    quantity.high !== undefined
  )
    return quantity
  // "Half a turn and no more" is how far to turn.
  if (toDimension(quantity.unit) === 'turn' && NO_MORE.test(after)) return quantity
  if (
    LEAST_AFTER.test(after) ||
    (FROM.test(limit.text) && UPWARDS.test(after)) ||
    LEAST_IS.test(ahead) ||
    STILL_GOOD.test(ahead) ||
    AS_LOW.test(ahead) ||
    (NOT_BEFORE.test(ahead) && IS_OVER.test(after)) ||
    (/^(?:an? |the )?(?:good|full|solid|whole|clear)\b/i.test(limit.text) && LASTS.test(ahead)) ||
    (AWAY.test(ahead) && AWAY_AFTER.test(after) && toDimension(quantity.unit) === 'length')
  )
    return toLow(quantity)
  const named = END_NAMED.exec(ahead)?.[1]?.toLowerCase()
  if (
    named !== undefined &&
    !/\b(?:find|found|got|have|measured?|mine|ours|we're|i'm)\b/i.test(
      ahead.slice(ahead.toLowerCase().lastIndexOf(named)),
    )
  )
    return named === 'minimum' ? toLow(quantity) : toHigh(quantity)
  if (STOPS_BEFORE.test(ahead)) return toHigh(quantity)
  if (DOWN_TO.test(ahead) && RENEWED.test(text)) return toLow(quantity)
  if (GROWN_TO.test(ahead) && RENEWED.test(text)) return toHigh(quantity)
  const isLimit = LIMIT_BEFORE.test(ahead)
  if (STOPS_AT.test(after)) return isWorn() ? toLow(quantity) : GROWS.test(text) ? toHigh(quantity) : quantity
  const isDue = DUE_AFTER.test(after)
  if (isLimit || isDue || CHANGED_AT.test(ahead)) {
    if (isWorn()) return toLow(quantity)
    if (isLimit || (isDue && GROWS.test(text))) return toHigh(quantity)
  }
  if (PASSES_BEFORE.test(ahead) && isCondemned(`${ahead}${limit.text}${after}`)) return toHigh(quantity)
  return MOST_AFTER.test(after) || MOST_BEFORE.test(ahead) || MOST_IS.test(ahead) ? toHigh(quantity) : quantity
}
