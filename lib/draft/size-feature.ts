import type { Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { qualityCues } from './spec-cue'

const LEAST_OF = [0.05, 0.5, 2, 4, 12, 36, 150, 1000]

/** Features of the number itself: whether its unit was said, how large it is in it, whether it is in figures. */
export const sizeFeatures = (
  limit: Limit,
  quantity: Quantity,
  dimension: string,
  shape: string,
  text: string,
): readonly string[] => {
  const size = quantity.nominal ?? quantity.high ?? quantity.low
  if (size === undefined)
    return [
      ...(limit.text.toLowerCase().match(/[a-z]+/g) ?? []).map(word => `quality:${word}`),
      ...qualityCues(limit.text, text, limit.at),
    ]
  const bucket = LEAST_OF.filter(least => size >= least).length
  const from = limit.quantity.unit === undefined ? (quantity.unit === undefined ? 'none' : 'taken') : 'said'
  return [
    `code:${quantity.unit ?? 'none'}`,
    `unit:${from}`,
    `unit:${from}-of:${dimension}`,
    `size:${dimension}:${bucket}`,
    ...saidWords(limit, dimension, shape),
  ]
}

const SAID_WORD = /[a-z]+(?:'[a-z]+)?|\d+(?:\.\d+)?|[,.;]/g

/** Features of the words a limit is said in, figures as one: alone, of its dimension and of its shape. */
const saidWords = ({ text }: Limit, dimension: string, shape: string): readonly string[] =>
  (text.toLowerCase().match(SAID_WORD) ?? []).flatMap(found => {
    const word = /^\d/.test(found) ? '#' : found
    return [`said:${word}`, `said:${shape} ${word}`, `said:${dimension} ${word}`]
  })

const FASTENER_AHEAD =
  /\b(?:bolts?|nuts?|locknuts?|screws?|studs?|plugs?|terminals?|nipples?|fittings?|unions?|clamps?)\b[^.;?!\d]{0,36}$/i
const SIZE_ALONE = /^(?:[5-9]|[1-3]\d|4[01]|[a-z]+(?:-[a-z]+)?)(?:[ -]?(?:mm|mils?|mill|millimet(?:er|re)s?))?,?$/i

/** "three bolts, thirteen mil": a whole size right after a fastener is of what turns it. */
export const isTurnerSize = (text: string, at: number, to: number): boolean =>
  FASTENER_AHEAD.test(text.slice(0, at)) &&
  SIZE_ALONE.test(text.slice(at, to)) &&
  /^(?:[,.;]|$| and\b)/.test(text.slice(to))
