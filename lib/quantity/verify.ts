import { formatQuantity } from './format'
import type { Quantity } from './quantity'
import { clean } from './rounding'
import { convert, dimensionOf, unitSymbol } from './units'

/** A measuring tool: the range it is good for and its permissible deviation in per cent of the reading. */
export type Tool = {
  readonly range: Quantity
  /** Per cent of the reading. Torque tools without one are taken to be as ISO 6789-1 asks. */
  readonly deviation?: number
}

/** What a tool can say about a spec. */
export type ToolCheck = {
  /** Whether every value of the spec lies in the tool's range. */
  readonly isCovered: boolean
  /** Half the tolerance over the tool's error at the value; absent where the spec has no tolerance on both sides. */
  readonly ratio?: number
  /** Whether the ratio reaches the threshold; absent without ratio. */
  readonly isEnough?: boolean
  /** The tool's error at the value, in the spec's unit. */
  readonly error?: number
  /** The figures, for people: one sentence or more. */
  readonly text: string
}

export type VerifyOptions = {
  /** @source ANSI/NCSL Z540.3-2006 5.3(b): 4:1 as the usual fallback (from memory) */
  readonly threshold?: number
}

const SMALL_TOOL = 10

/**
 * Permissible deviation of a hand torque tool, per cent of the reading: 6 where its largest torque is 10 N·m or less, else 4.
 *
 * @param largest N·m
 * @source ISO 6789-1:2017 for indicating tools and adjustable setting tools, as a tool maker's manual restates it for
 *   type II class A; other classes (tools without a scale) are allowed 6 %
 */
export const torqueToolDeviation = (largest: number): number => (largest <= SMALL_TOOL ? 6 : 4)

const figure = (value: number): string => String(Number(value.toPrecision(3)))

const inUnit = (value: number, from: string, to: string): number | undefined => {
  const converted = convert(value, from, to)
  return converted.ok ? clean(converted.value) : undefined
}

const deviationOf = (tool: Tool): number | undefined => {
  if (tool.deviation !== undefined) return tool.deviation
  const { unit, high } = tool.range
  if (unit === undefined || high === undefined || dimensionOf(unit) !== 'torque') return undefined
  const largest = inUnit(high, unit, 'N.m')
  return largest === undefined ? undefined : torqueToolDeviation(largest)
}

/**
 * Whether a tool can verify a spec: does its range cover it, and is its error small enough against the tolerance.
 *
 * @param spec the values to be verified
 * @param tool its range must have a unit of the same kind
 * @returns undefined where spec or range carry no unit, or the units do not compare; never throws
 */
export const checkTool = (spec: Quantity, tool: Tool, { threshold = 4 }: VerifyOptions = {}): ToolCheck | undefined => {
  const { unit } = spec
  const from = tool.range.unit
  if (unit === undefined || from === undefined || inUnit(1, from, unit) === undefined) return undefined
  const values = [spec.low, spec.nominal, spec.high].filter(value => value !== undefined)
  const lowest = tool.range.low === undefined ? undefined : inUnit(tool.range.low, from, unit)
  const highest = tool.range.high === undefined ? undefined : inUnit(tool.range.high, from, unit)
  if (values.length === 0 || (lowest === undefined && highest === undefined)) return undefined
  const [least, most] = [Math.min(...values), Math.max(...values)]
  const isCovered = (lowest === undefined || least >= lowest) && (highest === undefined || most <= highest)
  const range = `The tool covers ${formatQuantity(tool.range)}; the spec asks for ${formatQuantity(spec)}${isCovered ? '.' : ', which lies outside.'}`
  const deviation = deviationOf(tool)
  if (deviation === undefined) return { isCovered, text: `${range} Its deviation is not known.` }
  const assumed = tool.deviation === undefined ? ', as ISO 6789-1 allows,' : ''
  const error = clean((most * deviation) / 100)
  const off = `Its deviation of ±${deviation} %${assumed} is ±${figure(error)} ${unitSymbol(unit)} at ${figure(most)}`
  if (spec.low === undefined || spec.high === undefined || spec.high <= spec.low)
    return { isCovered, error, text: `${range} ${off}; the spec has no tolerance on both sides to set against it.` }
  const half = clean((spec.high - spec.low) / 2)
  const ratio = error === 0 ? Number.POSITIVE_INFINITY : clean(half / error)
  const isEnough = ratio >= threshold
  const verdict = isEnough ? 'enough' : `less than ${threshold}:1, too coarse to show that the spec is met`
  return {
    isCovered,
    error,
    ratio,
    isEnough,
    text: `${range} ${off}; the tolerance is ±${figure(half)}: ${figure(ratio)}:1, ${verdict}.`,
  }
}
