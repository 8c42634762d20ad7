import type { Reading as Limit } from '@/lib/quantity/read'
import { leadOf } from './tolerated'

/** What is filled, packed or gone a part of the way. */
const FILLED =
  /\b(?:levels?|glass|window|sight|full|fill\w*|pack\w*|hopper|bag|tank|housing|bucket|drum|jar|hole|bowl|pot|sink|reservoir|way|depth|height|oil|water|grease|salt)\b/i
const BEFORE =
  /(?:\b(?:upper|lower|top|bottom|at least|under|over|below|above|than|only|just|by|full|housing|a|the|to|up|in) |^)$/i
const AFTER =
  /^(?: (?:of (?:the|its|a|that)|full|up\b(?!ped)|down\b|the (?:housing|way|depth|height|glass|tank)|a (?:tank|cup|glass)|way)\b|,? (?:no more|at most|tops)\b|[,.;]|$)/i
const NEXT = /^ (?:of (?:the|its|a|that) (?:sight )?[a-z]+|full|up|down|the [a-z]+|a [a-z]+|way)\b/i
/** Parts that are told of what is filled. */
const PARTS = [1 / 2, 1 / 3, 2 / 3, 1 / 4, 3 / 4]
const REACH = 40

const SMALL = /\b(?:tenth|fifth|twentieth)s?\b/i
const OF_WHOLE =
  /^ (?:part )?(?:of (?:the|its|their|your|what|that|it)\b(?! (?:a|an) )|broken\b|gone\b|worn\b)|^[^.;?!]{0,24}\bof (?:the|its) (?:original|old|new|whole)\b/i
const CHANGED =
  /\b(?:risen|grown|gone (?:up|down)|dropped|fallen|lost|shrunk|jump\w*|vary|varies|change\w*|differ\w*|[a-z]+ed by)(?: by)? (?:more than |over |under |about )?(?:an? )?$/i
const PERCENT = 100

/** `risen by a tenth`, `more than a tenth of the cover`: a share of the whole. */
const asShare = (text: string, limit: Limit): Limit => {
  const { low, high, nominal } = limit.quantity
  const after = text.slice(limit.to)
  const ahead = `${text.slice(Math.max(0, limit.at - REACH), limit.at)}${leadOf(limit)}`
  const isWhole =
    SMALL.test(limit.text) && (OF_WHOLE.test(after) || (CHANGED.test(ahead) && !/^ of an?\b/i.test(after)))
  if (!isWhole) return limit
  const times = (figure: number | undefined): number | undefined =>
    figure === undefined ? undefined : Math.round(figure * PERCENT * PERCENT) / PERCENT
  const [least, most, aim] = [times(low), times(high), times(nominal)]
  return {
    ...limit,
    quantity: {
      ...(least === undefined ? {} : { low: least }),
      ...(most === undefined ? {} : { high: most }),
      ...(aim === undefined ? {} : { nominal: aim }),
      unit: '%',
    },
  }
}

const isPart = (figure: number | undefined): boolean =>
  figure === undefined || PARTS.some(part => Math.abs(part - figure) < 1e-3)

/**
 * `the upper half of the glass`, `the housing a third`: a bare part of what is filled is a limit without a number.
 *
 * @returns the limit told by its words, or as it was
 */
export const asPartFull = (text: string, limit: Limit): Limit => {
  const { low, high, nominal, unit } = limit.quantity
  if (unit !== undefined || (low ?? high ?? nominal) === undefined || !/[a-z]/i.test(limit.text)) return limit
  if ((low ?? high ?? nominal ?? 1) >= 1) return limit
  if (!(isPart(low) && isPart(high) && isPart(nominal))) return asShare(text, limit)
  const [ahead, after] = [text.slice(Math.max(0, limit.at - REACH), limit.at), text.slice(limit.to)]
  if (!(FILLED.test(text) && BEFORE.test(`${ahead}${leadOf(limit)}`) && AFTER.test(after))) return limit
  const lead = /\b(?:upper|lower|top|bottom) $/i.exec(ahead)?.[0] ?? ''
  const at = limit.at - lead.length
  const to = limit.to + (NEXT.exec(after)?.[0].length ?? 0)
  const said = text.slice(at, to)
  return { ...limit, quantity: {}, reference: said, qualitative: said, text: said, at, to, doubt: 'a loose condition' }
}
