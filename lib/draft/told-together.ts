import type { Reading as Limit } from '@/lib/quantity/read'

const OR = /^ or $/i
const LONE_COMMA = /^ ?, ?$/
/** Characters between a range and the figure it is called. */
const REACH = 24
const CALLED =
  /^,? ?(?:(?:and |so |or |but )?(?:just )?(?:call it|say|make it|let's (?:call it|say)|i(?:'d| would)? (?:call it|aim for|go for|make it)|aim for|i use|i like|i set|i go))?,? ?(?:about )?$/i
const IS_CALLED = /^(?:call it|say|make it)\b/i

const isSame = (a: string | undefined, b: string | undefined): boolean => a === undefined || b === undefined || a === b

/** `every month or two`: one range of how often, not two. */
const everyOrTwo = (a: Limit, b: Limit, text: string): Limit | undefined => {
  const { nominal, unit } = a.quantity
  if (nominal !== 1 || b.quantity.nominal !== 2 || unit === undefined || b.quantity.unit !== undefined) return undefined
  if (!(OR.test(text.slice(a.at + a.text.trimEnd().length, b.at)) || OR.test(text.slice(a.to, b.at)))) return undefined
  return { ...a, quantity: { low: 1, high: 2, unit }, text: text.slice(a.at, b.to), to: b.to }
}

/** `between eight and twelve, call it ten`: the range with its target. */
const rangeCalled = (a: Limit, b: Limit, text: string): Limit | undefined => {
  const { low, high, nominal, unit } = a.quantity
  const target = b.quantity.nominal
  if (low === undefined || high === undefined || nominal !== undefined || target === undefined) return undefined
  if (b.quantity.low !== undefined || b.quantity.high !== undefined || target <= low || target >= high) return undefined
  const between = text.slice(a.to, b.at)
  if (between.length > REACH || !isSame(unit, b.quantity.unit)) return undefined
  if (!CALLED.test(between) || (!IS_CALLED.test(b.text) && !/\w/.test(between))) return undefined
  const known = unit ?? b.quantity.unit
  const { doubt: _, ...rest } = unit === undefined ? b : a
  return {
    ...rest,
    quantity: { low, high, nominal: target, ...(known === undefined ? {} : { unit: known }) },
    text: text.slice(a.at, b.to),
    at: a.at,
    to: b.to,
  }
}

/** `thirty millibar, twenty-eight to thirty-two`: a target and its range. */
const targetThenRange = (a: Limit, b: Limit, text: string): Limit | undefined => {
  const { low, high, nominal, unit } = b.quantity
  const target = a.quantity.nominal
  if (low === undefined || high === undefined || nominal !== undefined || target === undefined) return undefined
  if (a.quantity.low !== undefined || a.quantity.high !== undefined || target < low || target > high) return undefined
  if (!LONE_COMMA.test(text.slice(a.to, b.at)) || !isSame(unit, a.quantity.unit)) return undefined
  const known = unit ?? a.quantity.unit
  const { doubt: _, ...rest } = a.quantity.unit === undefined ? b : a
  return {
    ...rest,
    quantity: { low, high, nominal: target, ...(known === undefined ? {} : { unit: known }) },
    text: text.slice(a.at, b.to),
    at: a.at,
    to: b.to,
  }
}

/**
 * Two limits of a sentence that are told as one: `every month or two`, a range and what it is called.
 *
 * @param limits in the order of the text
 */
export const joinTold = (text: string, limits: readonly Limit[]): readonly Limit[] => {
  const kept: Limit[] = []
  for (const limit of limits) {
    const before = kept.at(-1)
    const one =
      before === undefined || limit.at < before.to
        ? undefined
        : (everyOrTwo(before, limit, text) ?? rangeCalled(before, limit, text) ?? targetThenRange(before, limit, text))
    if (one === undefined) kept.push(limit)
    else kept[kept.length - 1] = one
  }
  return kept
}
