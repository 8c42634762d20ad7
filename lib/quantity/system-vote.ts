import type { UnitSystem } from './unit-row'

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '))

/** Words by which talk shows whether it counts in US or in metric units. @source common practice, no source */
const US = words(
  'psi inch inches foot feet quart quarts gallon gallons pint pints fahrenheit ounces pounds pound tire tires color aluminum center gasoline gas wrench truck hood yard liters meters liter meter fiber gray mom sidewalk faucet mercury mile miles lug trunk fender vise tubing thermos',
)
const METRIC = words(
  'millimetre millimetres metre metres litre litres bar kpa tyre tyres aluminium colour centre spanner petrol bonnet celsius centigrade quid kilometres kilometre centimetres centimeters millimeters millimeter kilos kilo mains colour grey fibre boot wee whilst lorry tap torch paraffin kettle mould mil pavement',
)

/** Names of units tell more than spellings and words. */
const UNIT_WEIGHT = 3
const UNIT_NAMES = words(
  'psi inch inches foot feet quart quarts gallon gallons pint pints fahrenheit ounces pounds pound mile miles millimetre millimetres metre metres litre litres bar kpa celsius centigrade kilometres kilometre centimetres centimeters millimeters millimeter kilos kilo mil',
)

/**
 * Which system a text counts in, by the words in it.
 *
 * @param texts nearest first; the first with a clear majority decides
 * @returns undefined where nothing tells
 */
export const voteSystem = (...texts: readonly string[]): Extract<UnitSystem, 'us' | 'metric'> | undefined => {
  for (const text of texts) {
    let us = 0
    let metric = 0
    for (const [word] of text.toLowerCase().matchAll(/[a-z]+/g)) {
      if (US.has(word)) us += UNIT_NAMES.has(word) ? UNIT_WEIGHT : 1
      if (METRIC.has(word)) metric += UNIT_NAMES.has(word) ? UNIT_WEIGHT : 1
    }
    us += (text.match(/°F|\bft\b|\blbs?\b/g) ?? []).length
    metric += (text.match(/°C|\bmm\b|N·?m\b/g) ?? []).length
    if (us !== metric) return us > metric ? 'us' : 'metric'
  }
  return undefined
}
