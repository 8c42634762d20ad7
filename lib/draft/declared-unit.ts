import { matchesOf } from '@/lib/quantity/matches'
import type { Reading as Limit } from '@/lib/quantity/read'

/** Names of units that are told for figures said without them. Codes are UCUM. */
const NAMES: readonly (readonly [name: RegExp, unit: string])[] = [
  [/^newton/, 'N.m'],
  [/^foot/, '[ft_i].[lbf_av]'],
  [/^inch[- ]/, '[in_i].[lbf_av]'],
  [/^millim/, 'mm'],
  [/^inches/, '[in_i]'],
  [/^thou/, '[mil_i]'],
  [/^bar/, 'bar'],
  [/^psi/, '[psi]'],
  [/^kilopascal/, 'kPa'],
  [/^celsius|^centigrade/, 'Cel'],
  [/^fahrenheit/, '[degF]'],
  [/^volts/, 'V'],
  [/^amps/, 'A'],
  [/^ohms/, 'Ohm'],
  [/^microns/, 'um'],
  [/^hertz/, 'Hz'],
]
const NAME =
  'newton[- ]?met(?:re|er)s?|foot[- ]pounds?|inch[- ]pounds?|millimet(?:re|er)s?|inches|thou(?:sandths)?|psi|kilopascals?|celsius|centigrade|fahrenheit|volts|amps|ohms|microns|hertz'
/** `all in bar`, `these are newton metres`, `in millimetres I mean`: a unit without a figure. */
const DECLARED = new RegExp(
  `(?:\\bin (?:the )?|, (?=[a-z-]+[.]?$)|\\b(?:everything|all of it)(?: here| \\w+)?(?:'s| is)(?: in)? |\\bhere's |\\b(?:all|always|are|is|it's|that's|they're|i mean)(?: all| always| in)?,? |(?<=,) (?=[a-z -]{3,24}(?: (?:that is|that's|mind|i mean|i said|of course|all)\\b|, (?:so|and|but)\\b|[.]?$)))(${NAME}|(?<=\\b(?:in|all) |, )bar(?=[.]?$|\\b(?<=(?:in|all) bar)))\\b(?= ?(?:[,.;]|$|i mean\\b|here\\b|from (?:here|now)\\b|on (?:this|all|the)\\b|for (?:this|all|the)\\b|not\\b|always\\b|throughout\\b|that is\\b|mind\\b|i said\\b|of course\\b|all\\b))`,
  'gi',
)
/** A sentence without any of these declares nothing. */
const MAY =
  /(?:\b(?:in|all|always|are|is|it's|that's|here's|\w+'s|they're|mean)|,) (?:\w+ )?(?:newton|foot|inch|millim|thou|psi|kilop|celsius|centi|fahren|volts|amps|ohms|microns|hertz|bar)/i

/**
 * @param limits what was read in the text: a unit that belongs to a figure declares nothing
 * @returns units told without a figure, UCUM, in the order of the text
 */
export const declaredUnits = (text: string, limits: readonly Limit[]): readonly string[] =>
  MAY.test(text)
    ? matchesOf(text, DECLARED).flatMap(match => {
        const [at, name] = [match.index + match[0].length, (match[1] ?? '').toLowerCase()]
        if (limits.some(limit => limit.at < at && limit.to >= at)) return []
        return NAMES.find(([pattern]) => pattern.test(name))?.[1] ?? []
      })
    : []

/** Figures so plain that they are said of many things. */
const isPlain = (size: number): boolean => Number.isInteger(size) && size < LEAST_TELLING
/** The least whole figure that tells its unit when it is said twice. Common practice, no source. */
const LEAST_TELLING = 21

/** @returns by figure, the unit that it has wherever it is said with one; figures with several units left out */
export const unitsOf = (limits: readonly Limit[]): ReadonlyMap<number, string> => {
  const units = new Map<number, string | undefined>()
  for (const { quantity } of limits) {
    const { unit, low, high, nominal } = quantity
    if (unit === undefined) continue
    for (const figure of [low, high, nominal]) {
      if (figure === undefined || isPlain(figure)) continue
      units.set(figure, units.has(figure) && units.get(figure) !== unit ? undefined : unit)
    }
  }
  return new Map([...units].flatMap(([figure, unit]) => (unit === undefined ? [] : [[figure, unit] as const])))
}
