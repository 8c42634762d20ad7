import { matchesOf } from '@/lib/quantity/matches'
import type { Quantity } from '@/lib/quantity/quantity'
import { type Reading as Limit, type ReadOptions, readQuantities } from '@/lib/quantity/read'

/** What goes into a gap to tell how wide it is. */
const FEELERS = /[ -](?:feelers?(?: gauges?| blades?)?|shims?|leaf|leaves)\b/gi
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

/** What a feeler that goes in, or does not, says of the gap. */
const boundOf = (text: string, { nominal, unit }: Quantity): Quantity => {
  const rest = unit === undefined ? {} : { unit }
  if (nominal === undefined || !GOES_IN.test(text)) return { ...(nominal === undefined ? {} : { nominal }), ...rest }
  if (MAY_NOT.test(text)) return { high: nominal, ...rest }
  if (!(CONDITION.test(text) && REFUSED.test(text))) return { nominal, ...rest }
  return CANNOT.test(text) ? { low: nominal, ...rest } : { high: nominal, ...rest }
}

/** `If a four-thou feeler goes in, it is warped`: the gap a feeler tells. */
const feelerLimits = (text: string, options: ReadOptions): readonly Limit[] =>
  matchesOf(text, FEELERS).flatMap((match): readonly Limit[] => {
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
  })

const HALVES = /\b(?:half and half|half-and-half|fifty[- ]fifty|50[ /-]50)\b/gi
const MIXED = /\b(?:water|mix\w*|coolant|antifreeze|glycol|solution|dilut\w*|concentrate|of each|thinners?|spirits?)\b/i

/** `half and half with water`: a share of a half. */
const halfLimits = (text: string): readonly Limit[] =>
  MIXED.test(text)
    ? matchesOf(text, HALVES).map(match => ({
        quantity: { nominal: 50, unit: '%' },
        text: match[0],
        at: match.index,
        to: match.index + match[0].length,
        notes: [],
      }))
    : []

const ABOUT = /^,? ?(?:either (?:way|side)|each (?:way|side)|up or down|one way or the other)(?: of| from| on)?,? $/i

/** `ten degrees either way of two hundred`: a tolerance said before its target. */
const aboutLater = (text: string, limits: readonly Limit[]): readonly Limit[] => {
  const kept: Limit[] = []
  for (const limit of limits) {
    const before = kept.at(-1)
    const [by, target] = [before?.quantity.nominal, limit.quantity.nominal]
    const isAbout =
      before !== undefined &&
      by !== undefined &&
      target !== undefined &&
      by > 0 &&
      target > 3 * by &&
      ABOUT.test(text.slice(before.to, limit.at))
    if (!isAbout) {
      kept.push(limit)
      continue
    }
    const unit = limit.quantity.unit ?? before.quantity.unit
    const round = (value: number): number => Number(value.toPrecision(12))
    const { doubt: _, ...rest } = limit
    kept[kept.length - 1] = {
      ...rest,
      quantity: {
        low: round(target - by),
        high: round(target + by),
        nominal: target,
        ...(unit === undefined ? {} : { unit }),
      },
      text: text.slice(before.at, limit.to),
      at: before.at,
    }
  }
  return kept
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

/**
 * The limits of a sentence as far as drafting weighs them: what the reader finds, and what is told by a feeler, by halves
 * or by a tolerance before its target.
 *
 * @returns in the order of the text, stated equivalents left out
 */
export const readTold = (text: string, options: ReadOptions): readonly Limit[] => {
  const read = readQuantities(text, { ...options, keepsDoubtful: true }).filter(
    limit => limit.equivalentOf === undefined,
  )
  const told = [...feelerLimits(text, options), ...halfLimits(text)]
  const rest = read.filter(limit => !told.some(other => limit.at < other.to && limit.to > other.at))
  return saidAgain(
    aboutLater(
      text,
      [...rest, ...told].sort((a, b) => a.at - b.at),
    ),
  )
}
