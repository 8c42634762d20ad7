import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import type { voteSystem } from '@/lib/quantity/system-vote'
import { toDimension } from './dimension'

/** Which system of units the whole talk counts in. */
export type System = ReturnType<typeof voteSystem>

const sizeOf = ({ low, high, nominal }: Quantity): number => nominal ?? high ?? low ?? 0

/** Units that a bare number can take over from one said before. */
const INHERITED = new Set(['torque', 'length', 'pressure', 'temperature', 'voltage', 'current', 'resistance'])

const inherit = (quantity: Quantity, recent: readonly Quantity[]): Quantity => {
  if (quantity.unit !== undefined || !hasNumber(quantity)) return quantity
  const size = sizeOf(quantity)
  const like = recent.findLast(other => {
    const ratio = size / sizeOf(other)
    return INHERITED.has(toDimension(other.unit) ?? '') && ratio < 3 && ratio > 1 / 3
  })
  return like?.unit === undefined ? quantity : { ...quantity, unit: like.unit }
}

const HEAT =
  /\b(?:heat\w*|hot\w*|warm\w*|cool\w*|cold\w*|temp\w*|boil\w*|bak\w*|cook\w*|cur(?:e|es|ing)\b|melt\w*|oven|iron|thermo\w*|firing|rinse|tank|water|oil|grease|cycle|celsius|fahrenheit|freez\w*|chill\w*|flame|burn\w*|steam)\b/i
const ANGLE =
  /\b(?:angle\w*|bevel\w*|tilt\w*|handle|turn\w*|rotat\w*|square|slope|camber|caster|toe|mitre|miter|edge|past contact|swing|clockwise)\b/i

/** "82 degrees" of a rinse is no angle: what the sentence speaks of tells, and the talk's system tells which scale. */
const heatNotAngle = (quantity: Quantity, text: string, system: System): Quantity =>
  quantity.unit === 'deg' && system !== undefined && HEAT.test(text) && !ANGLE.test(text)
    ? { ...quantity, unit: system === 'us' ? '[degF]' : 'Cel' }
    : quantity

const REFUSED =
  /\b(?:not (?:acceptable|permitted|allowed|tolerated|permissible)|cannot be tolerated|can't have|unacceptable|is too (?:much|big|wide|far|loose|slack|high)|bursts?|is scrap|scrap it|bin it|throw it|replace (?:it|them)|new one|change (?:it|them)|worn out|is worn|is done|no good|wants? (?:replacing|changing)|means?)\b/i
const OVER =
  /\b(?:more than|over|above|beyond|past|greater than|exceed\w*|higher than|deeper than|wider than|longer than)\b/i
const UNDER = /\b(?:less than|under|below|thinner than|shorter than|lower than|smaller than|short of)\b/i

/** "More than 0.2 is not permitted" is a greatest value, however it is put; "less than 14 and I change it" a least one. */
const limitNotFault = (quantity: Quantity, limit: Limit, text: string): Quantity => {
  const { low, high, nominal, unit } = quantity
  if (nominal !== undefined || !REFUSED.test(text)) return quantity
  const rest = unit === undefined ? {} : { unit }
  if (low !== undefined && high === undefined && OVER.test(limit.text)) return { high: low, ...rest }
  if (high !== undefined && low === undefined && UNDER.test(limit.text)) return { low: high, ...rest }
  return quantity
}

/** Settles what the reader leaves open and the talk around tells: a missing unit, heat or angle, limit or fault. */
export const settleQuantity = (limit: Limit, text: string, recent: readonly Quantity[], system: System): Quantity =>
  limitNotFault(heatNotAngle(inherit(limit.quantity, recent), text, system), limit, text)
