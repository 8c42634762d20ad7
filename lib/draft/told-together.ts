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

/** A range and its target as one limit, from the first of the two on; undefined where they are no such pair. */
const withTarget = (a: Limit, b: Limit, text: string, range: Limit, target: Limit): Limit | undefined => {
  const { low, high, nominal, unit } = range.quantity
  const aim = target.quantity.nominal
  if (low === undefined || high === undefined || nominal !== undefined || aim === undefined) return undefined
  if (target.quantity.low !== undefined || target.quantity.high !== undefined) return undefined
  if (!isSame(unit, target.quantity.unit)) return undefined
  const known = unit ?? target.quantity.unit
  const { doubt: _, ...rest } = a.quantity.unit === undefined ? b : a
  return {
    ...rest,
    quantity: { low, high, nominal: aim, ...(known === undefined ? {} : { unit: known }) },
    text: text.slice(a.at, b.to),
    at: a.at,
    to: b.to,
  }
}

/** `between eight and twelve, call it ten`: the range with its target, inside it. */
const rangeCalled = (a: Limit, b: Limit, text: string): Limit | undefined => {
  const [{ low = 0, high = 0 }, { nominal = 0 }] = [a.quantity, b.quantity]
  const between = text.slice(a.to, b.at)
  if (nominal <= low || nominal >= high || between.length > REACH) return undefined
  if (!CALLED.test(between) || (!IS_CALLED.test(b.text) && !/\w/.test(between))) return undefined
  return withTarget(a, b, text, a, b)
}

/** `thirty millibar, twenty-eight to thirty-two`: a target and its range, around or beside it. */
const targetThenRange = (a: Limit, b: Limit, text: string): Limit | undefined => {
  const [{ nominal = 0 }, { low = 0, high = 0 }] = [a.quantity, b.quantity]
  if (nominal < low || nominal > high || !LONE_COMMA.test(text.slice(a.to, b.at))) return undefined
  return withTarget(a, b, text, b, a)
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
