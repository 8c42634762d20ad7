import { matchesOf } from '@/lib/quantity/matches'
import type { Reading as Limit } from '@/lib/quantity/read'

const HALVES = /\b(?:half and half|half-and-half|fifty[- ]fifty|50[ /-]50)\b/gi
const MIXED =
  /\b(?:water|mix\w*|coolant|antifreeze|glycol|solution|dilut\w*|concentrate|of each|thinners?|spirits?|petrol|fuel|oil|gas|resin|hardener|cement|sand|lime|bleach|vinegar|grout|plaster|parts?)\b/i
const NUMBER = '(?:\\d+|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|[a-z]+teen|[a-z]+ty|a hundred)'
/** `one part to twenty`, `1 to 50`, `fifty to one`. */
const RATIO = new RegExp(
  `\\b(?:(?:one|1) (?:part )?(?:of [a-z]+ )?(?:to|in) ${NUMBER}(?: parts?)?|${NUMBER} (?:parts? (?:of [a-z]+ )?)?to one)\\b(?! (?:o'clock|hundred|thousand|of (?:them|these|those|us)|and a half|millimet\\w+|minutes?|hours?|bar|inch\\w*|degrees?|turns?|percent|per cent))`,
  'gi',
)
/** `one part bleach to ten of water`, `three parts sand, one part cement`. */
const PARTS = new RegExp(
  `\\b${NUMBER} parts? (?:of )?(?:[a-z]+ ){1,2}?(?:to|in|into) ${NUMBER}(?: (?:parts?|of))?(?: (?:of )?[a-z]+)?|\\b${NUMBER} parts? (?:of )?[a-z]+(?:,| and|, and| to) ${NUMBER} parts?(?: (?:of )?[a-z]+)?`,
  'gi',
)

const alone = (match: RegExpExecArray, rest: Partial<Limit>): Limit => ({
  quantity: {},
  text: match[0],
  at: match.index,
  to: match.index + match[0].length,
  notes: [],
  ...rest,
})

/**
 * `half and half with water`: a share of a half. `One part to twenty`: a ratio, kept as it was said.
 *
 * @returns in the order of the text
 */
export const shareLimits = (text: string): readonly Limit[] =>
  MIXED.test(text)
    ? [
        ...matchesOf(text, HALVES).map(match => alone(match, { quantity: { nominal: 50, unit: '%' } })),
        ...[...matchesOf(text, RATIO), ...(/\bparts?\b/i.test(text) ? matchesOf(text, PARTS) : [])].map(match =>
          alone(match, { reference: match[0], qualitative: match[0], doubt: 'a ratio' }),
        ),
      ]
    : []

const RELATIVE = /\b(half|twice|double) (?:that|of that|as much|the amount)\b(?! (?:way|again))/gi

/** `twelve millimetres here, and half that on the other side`: a figure by the one before it in the sentence. */
export const relativeLimits = (text: string, limits: readonly Limit[]): readonly Limit[] => {
  if (!/\b(?:half|twice|double) (?:that|of that|as much|the amount)\b/i.test(text)) return limits
  const told = matchesOf(text, RELATIVE).flatMap((match): readonly Limit[] => {
    const { index } = match
    const { quantity } = limits.findLast(limit => limit.to <= index) ?? {}
    if (quantity?.nominal === undefined || quantity.low !== undefined || quantity.high !== undefined) return []
    const nominal = quantity.nominal * (match[1]?.toLowerCase() === 'half' ? 0.5 : 2)
    return [alone(match, { quantity: { ...quantity, nominal }, doubt: 'told by another' })]
  })
  const rest = limits.filter(limit => !told.some(other => limit.at < other.to && limit.to > other.at))
  return [...rest, ...told].sort((a, b) => a.at - b.at)
}
