import { matchesOf } from '@/lib/quantity/matches'
import type { Quantity } from '@/lib/quantity/quantity'
import { type Reading as Limit, type ReadOptions, readQuantities } from '@/lib/quantity/read'
import { isCondemned } from './condemned'
import { countLimits } from './counted'
import { figureAs } from './figure-as'
import { asPartFull } from './part-full'
import { sayPlainly } from './said-plainly'
import { relativeLimits, shareLimits } from './shares'
import { joinTold } from './told-together'
import { aboutLater, offAfter, toleranceAfter } from './tolerated'
import { joinEnds } from './two-ends'

/** What goes into a gap to tell how wide it is. */
const FEELERS = /[ -](?:feelers?(?: gauges?| blades?)?|shims?|leaf|leaves)\b/gi
/** What is at hand to try a gap with, where something follows from its going in. */
const TRIED =
  /[ -](?:drill(?: bit)?s?|bits?|wires?|rods?|pins?|plug gauges?|pin gauges?|gauges?|blades?|strips?|dowels?|keys?|balls?|nails?|coins?)\b/gi
/** Characters before it in which its size is said. */
const REACH = 40
const GOES_IN =
  /\b(?:go(?:es)?|going|gets?|fits?|slips?|slides?|pass(?:es)?|push(?:es)?|drops?|enters?|in there|under (?:there|it)|between)\b/i
const CONDITION = /\b(?:if|when|once|where|anywhere)\b/i
const REFUSED =
  /\b(?:warped|bent|bowed|twisted|worn|scrap|skim\w*|new|renew|replac\w*|chang\w*|too (?:wide|big|slack|much|tight|close|small)|reject\w*|bin|done|no good|machin\w*|fac(?:e|ed|ing)|shot|fail\w*|out of (?:true|flat))\b/i
const CANNOT = /\b(?:won't|can't|cannot|doesn't|will not|does not|refuses)\b/i
const MAY_NOT =
  /\b(?:shouldn't|mustn't|oughtn't|should not|must not|ought not|no \w+ should|not (?:even )?(?:a|an|the))\b/i

/** `you must still get a 0.2 feeler in there`. */
const STILL_GOES = /\b(?:must|should|has to|have to|ought to)\b[^.;?!]{0,12}\bstill\b/i

/** What a feeler that goes in, or does not, says of the gap. */
const boundOf = (text: string, { nominal, unit }: Quantity): Quantity => {
  const rest = unit === undefined ? {} : { unit }
  if (nominal === undefined || !GOES_IN.test(text)) return { ...(nominal === undefined ? {} : { nominal }), ...rest }
  if (MAY_NOT.test(text)) return { high: nominal, ...rest }
  if (STILL_GOES.test(text)) return { low: nominal, ...rest }
  if (!(CONDITION.test(text) && (REFUSED.test(text) || isCondemned(text)))) return { nominal, ...rest }
  return CANNOT.test(/^[^,;]*/.exec(text)?.[0] ?? '') ? { low: nominal, ...rest } : { high: nominal, ...rest }
}

/** Whether a sentence tells what follows from something going in. */
const tellsByGoing = (text: string): boolean =>
  GOES_IN.test(text) && (MAY_NOT.test(text) || (CONDITION.test(text) && (REFUSED.test(text) || isCondemned(text))))

/** `If a four-thou feeler goes in, it is warped`: the gap a feeler tells. */
const feelerLimits = (text: string, options: ReadOptions): readonly Limit[] =>
  [...matchesOf(text, FEELERS), ...(tellsByGoing(text) ? matchesOf(text, TRIED) : [])].flatMap(
    (match): readonly Limit[] => {
      const start = Math.max(0, match.index - REACH)
      const said = text.slice(start, match.index)
      const read = readQuantities(said, { ...options, keepsDoubtful: true }).at(-1)
      if (read?.quantity.nominal === undefined || read.quantity.unit === undefined || read.to < said.trimEnd().length)
        return []
      const { doubt: _, ...limit } = read
      return [
        {
          ...limit,
          quantity: boundOf(text, read.quantity),
          at: start + read.at,
          to: start + read.to,
          doubt: 'the size of a feeler',
        },
      ]
    },
  )

const ENDS =
  /\b(?:low|lowest|bottom|minimum|min|least|floor|lower|quickest|soonest|earliest|shortest|tightest|narrowest|smallest|thinnest|fast end|quick end)\b/i
const TOPS =
  /\b(?:high|highest|top|maximum|max|most|ceiling|upper|slowest|latest|longest|outside|widest|loosest|biggest|largest|thickest|at the slow|slow end)\b/i
const OWN =
  /\b(?:my|your|our|its|the (?:low|high|bottom|top|lower|upper) (?:end|limit|one|mark|side)|end's|end is|of (?:it|that|the range)|limit|at (?:the |its )?(?:very )?(?:lowest|highest|least|most|quickest|soonest|earliest|shortest|tightest|narrowest|smallest|thinnest|top end|bottom end|fast end|slow end))\b/i
/** `fifteen low, twenty high`. */
const PLAIN = /\b(?:low|lowest|minimum)\b,? (?:and )?[^,.;]{1,24} (?:high|highest|maximum)\b/i
/** Characters after or before a figure in which it is called the low or the high one. */
const CALLED = 26

/** `ten would be my low, twenty is my high`: two figures called the ends of one range. */
const endsCalled = (text: string, limits: readonly Limit[]): readonly Limit[] => {
  if (!(ENDS.test(text) && TOPS.test(text) && (OWN.test(text) || PLAIN.test(text)))) return limits
  const kept = limits.filter(limit => limit.quantity.nominal !== undefined)
  for (const [n, a] of kept.entries()) {
    const b = kept[n + 1]
    const [low, high] = [a.quantity.nominal, b?.quantity.nominal]
    if (b === undefined || low === undefined || high === undefined || low >= high || high > 4 * low) continue
    const [ua, ub] = [a.quantity.unit, b.quantity.unit]
    if (ua !== undefined && ub !== undefined && ua !== ub) continue
    const [ahead, between, after] = [
      text.slice(Math.max(0, a.at - CALLED), a.at),
      text.slice(a.to, b.at),
      text.slice(b.to, b.to + CALLED),
    ]
    const isAfter = between.length < 48 && ENDS.test(between) && !TOPS.test(between) && TOPS.test(after)
    const isBefore = between.length < 48 && ENDS.test(ahead) && TOPS.test(between) && !ENDS.test(between)
    if (!(isAfter || isBefore)) continue
    const target = kept.find(({ quantity: { nominal = 0 } }) => nominal > low && nominal < high)
    const unit = ua ?? ub ?? target?.quantity.unit
    const { doubt: _, ...rest } = b
    const from = target === undefined ? a.at : Math.min(a.at, target.at)
    const name = isAfter ? TOPS.exec(after) : null
    const to = Math.max(b.to + (name === null ? 0 : name.index + name[0].length), target?.to ?? 0)
    const range: Limit = {
      ...rest,
      quantity: {
        low,
        high,
        ...(target?.quantity.nominal === undefined ? {} : { nominal: target.quantity.nominal }),
        ...(unit === undefined ? {} : { unit }),
      },
      text: text.slice(from, to),
      at: from,
      to,
    }
    return [...limits.filter(limit => limit.to <= from), range, ...limits.filter(limit => limit.at >= to)]
  }
  return limits
}

/** `it's six, only six newton metres`: the same figure again with its unit says it better. */
const saidAgain = (limits: readonly Limit[]): readonly Limit[] =>
  limits.filter(
    (limit, i) =>
      limit.quantity.unit !== undefined ||
      limit.quantity.nominal === undefined ||
      !limits.some(
        (other, j) => j > i && other.quantity.unit !== undefined && other.quantity.nominal === limit.quantity.nominal,
      ),
  )

/** `five newton metres, no more than snug`: what is not more is no figure. */
const withoutThan = (text: string, limit: Limit): Limit =>
  limit.quantity.nominal === undefined &&
  !/^ (?:this|that|it|these|those)\b/i.test(text.slice(limit.to)) &&
  /\b(?:more|less|over|under|tighter|further) than$/i.test(limit.text)
    ? { ...limit, quantity: figureAs('nominal', limit.quantity) }
    : limit

/** How near a share of a target lies to its bound. */
const SHARE = 1e-6

/** `230 plus or minus 2 percent` of what has no unit: the percent is of the tolerance. */
const withoutShare = (limits: readonly Limit[]): readonly Limit[] =>
  limits.map(limit => {
    const { low, high, nominal, unit } = limit.quantity
    if (unit !== '%' || nominal === undefined || low === undefined || high === undefined) return limit
    const by = /(\d+(?:\.\d+)?) ?(?:%|percent|per cent)/i.exec(limit.text)?.[1]
    const isOfTarget = by !== undefined && Math.abs(high / nominal - 1 - Number(by) / 100) < SHARE
    return isOfTarget && Number(by) !== nominal ? { ...limit, quantity: { low, high, nominal } } : limit
  })

/**
 * The limits of a sentence as far as drafting weighs them: what the reader finds, and what is told by a feeler, by halves
 * or by a tolerance before its target.
 *
 * @returns in the order of the text, stated equivalents left out
 */
export const readTold = (text: string, options: ReadOptions): readonly Limit[] => {
  const read = readQuantities(sayPlainly(text), { ...options, keepsDoubtful: true }).filter(
    limit => limit.equivalentOf === undefined,
  )
  const told = [...feelerLimits(text, options), ...shareLimits(text), ...countLimits(text, options)]
  const rest = read.filter(
    limit =>
      !told.some(other => limit.at < other.to && limit.to > other.at) &&
      // The minute of "sixty turns a minute".
      !read.some(other => other !== limit && limit.at > other.at && limit.to <= other.to),
  )
  const named = [...rest, ...told].sort((a, b) => a.at - b.at)
  const all = withoutShare(relativeLimits(text, named))
  const ends = endsCalled(text, toleranceAfter(text, offAfter(text, aboutLater(text, all))))
  return saidAgain(joinTold(text, joinEnds(text, ends)).map(limit => asPartFull(text, withoutThan(text, limit))))
}
