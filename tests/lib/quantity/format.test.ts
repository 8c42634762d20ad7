import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formatQuantity, parseQuantity, toSystem } from '@/lib/quantity/format'
import type { Quantity } from '@/lib/quantity/quantity'
import { toUnit } from '@/lib/quantity/systems'
import { UNITS } from '@/lib/quantity/unit-table'
import { convert, isComparable } from '@/lib/quantity/units'

const figure = fc.oneof(
  fc.integer({ min: -2000, max: 20_000 }),
  fc.integer({ min: 0, max: 20_000 }).map(n => n / 1000),
  fc.integer({ min: 0, max: 640 }).map(n => n / 64),
  fc.integer({ min: 0, max: 48 }).map(n => n / 12),
)
const unit = fc.option(fc.constantFrom(...UNITS.map(({ code }) => code)), { nil: undefined })
const quantity: fc.Arbitrary<Quantity> = fc
  .record({
    values: fc.tuple(figure, figure, figure),
    unit,
    shape: fc.constantFrom('aim', 'span', 'most', 'least', 'even', 'three', 'aimMost', 'aimLeast'),
  })
  .map(({ values, unit: code, shape }) => {
    const [a = 0, b = 0, c = 0] = [...values].sort((x, y) => x - y)
    const own = code === undefined ? {} : { unit: code }
    switch (shape) {
      case 'span':
        return { low: a, high: c === a ? a + 1 : c, ...own }
      case 'most':
        return { high: a, ...own }
      case 'least':
        return { low: a, ...own }
      case 'even':
        return { low: Number((b - 0.25).toPrecision(12)), high: Number((b + 0.25).toPrecision(12)), nominal: b, ...own }
      case 'three':
        return { low: a, nominal: b, high: c, ...own }
      case 'aimMost':
        return { nominal: a, high: b, ...own }
      case 'aimLeast':
        return { nominal: b, low: a, ...own }
      default:
        return { nominal: a, ...own }
    }
  })

test.each([
  [1 / 3, '1/3 turn'],
  [1 + 2 / 3, '1 2/3 turns'],
  [0.25, '1/4 turn'],
  [0.333, '0.333 turn'],
])('%d of a turn is said in fractions where it is one', (nominal, said) => {
  expect(formatQuantity({ nominal, unit: '{turn}' })).toBe(said)
})

describe('formatting', () => {
  test.for<[Quantity, string]>([
    [{ low: 17, high: 23, unit: 'N.m' }, '17 to 23 N·m'],
    [{ high: 6, unit: '[mil_i]' }, 'at most 6 thou'],
    [{ low: 3.5, unit: 'mm' }, 'at least 3.5 mm'],
    [{ low: 41, high: 47, nominal: 44, unit: 'N.m' }, '44 ± 3 N·m'],
    [{ low: 21, high: 23, nominal: 21, unit: 'N.m' }, '21 +2/−0 N·m'],
    [{ low: 0.5, high: 0.75, unit: '{turn}' }, '1/2 to 3/4 turn'],
    [{ nominal: 1.5, unit: 'circ' }, '1 1/2 turns'],
    [{ nominal: 90, unit: 'deg' }, '90°'],
    [{ nominal: 0.0625, unit: '[in_i]' }, '1/16 in'],
    [{ nominal: 0.031, unit: '[in_i]' }, '0.031 in'],
    [{ nominal: -4, unit: 'Cel' }, '−4 °C'],
    [{ nominal: 0.8, high: 0.9, unit: 'mm' }, '0.8, at most 0.9 mm'],
    [{ nominal: 6, unit: 'mo' }, '6 months'],
    [{ nominal: 14 }, '14'],
    [{}, ''],
  ])('[Q5] %o is shown as %s', ([value, shown]) => {
    expect(formatQuantity(value)).toBe(shown)
  })

  test('[Q5] reading what was shown gives the quantity again', () => {
    fc.assert(
      fc.property(quantity, value => {
        expect(parseQuantity(formatQuantity(value))).toEqual(value)
      }),
      { numRuns: 1000 },
    )
  })

  test('[Q5] any other text is no quantity, and none of it throws', () => {
    for (const text of ['', 'snug', 'about', '12 to', '5 furlong things', '± 3 mm'])
      expect(parseQuantity(text)).toBeUndefined()
    fc.assert(fc.property(fc.string(), text => void parseQuantity(text)))
  })

  test('[Q5] the other system can stand in brackets or alone', () => {
    expect(formatQuantity({ low: 20, high: 26, unit: 'N.m' }, { system: 'both' })).toBe(
      '20 to 26 N·m (14.8 to 19.1 lbf·ft)',
    )
    expect(formatQuantity({ nominal: 35, unit: '[psi]' }, { system: 'metric' })).toBe('2.41 bar')
    expect(formatQuantity({ nominal: 3, unit: 'h' }, { system: 'both' })).toBe('3 h')
    expect(formatQuantity({ nominal: 5, unit: 'mm' }, { isApproximate: true })).toBe('about 5 mm')
  })
})

describe('converting without widening', () => {
  test('[Q6] converted limits never lie outside the original ones', () => {
    const pairs = UNITS.flatMap(a =>
      UNITS.filter(b => a.code !== b.code && isComparable(a.code, b.code)).map(b => [a.code, b.code] as const),
    )
    fc.assert(
      fc.property(
        fc.constantFrom(...pairs),
        figure,
        fc.double({ min: 0.001, max: 500, noNaN: true }),
        ([from, to], low, width) => {
          const original = { low, high: low + width, unit: from }
          const shown = toUnit(original, to)
          const back = (value: number): number => {
            const converted = convert(value, to, from)
            return converted.ok ? converted.value : Number.NaN
          }
          const dust = 1e-9 * Math.max(1, Math.abs(low), Math.abs(low + width))
          expect(shown?.low).toBeDefined()
          expect(back(shown?.low ?? 0)).toBeGreaterThanOrEqual(original.low - dust)
          expect(back(shown?.high ?? 0)).toBeLessThanOrEqual(original.high + dust)
          expect(shown?.low ?? 0).toBeLessThanOrEqual(shown?.high ?? 0)
          // Rounding takes no more than a fifth of the tolerance.
          expect(back(shown?.high ?? 0) - back(shown?.low ?? 0)).toBeGreaterThan(0.79 * width)
        },
      ),
      { numRuns: 1000 },
    )
  })

  test.for<[Quantity, 'metric' | 'us', Quantity | undefined]>([
    [{ low: 15, high: 20, unit: '[ft_i].[lbf_av]' }, 'metric', { low: 20.4, high: 27.1, unit: 'N.m' }],
    [{ high: 5, unit: '[mil_i]' }, 'metric', { high: 0.127, unit: 'mm' }],
    [{ low: 2, unit: 'mm' }, 'us', { low: 0.0788, unit: '[in_i]' }],
    [{ low: 6, high: 8, unit: 'N.m' }, 'us', { low: 54, high: 70, unit: '[in_i].[lbf_av]' }],
    // NIST SP 811 B.7: an untoleranced value keeps the digits it carries.
    [{ nominal: 36, unit: '[ft_i]' }, 'metric', { nominal: 11, unit: 'm' }],
    [{ nominal: 13, unit: '[ft_i].[lbf_av]' }, 'metric', { nominal: 18, unit: 'N.m' }],
    [{ nominal: 195, unit: '[degF]' }, 'metric', { nominal: 91, unit: 'Cel' }],
    [{ nominal: 2, unit: 'L' }, 'us', { nominal: 2, unit: '[qt_us]' }],
    [{ nominal: 12, unit: 'V' }, 'us', undefined],
    [{ nominal: 1.5, unit: 'circ' }, 'metric', undefined],
    [{ nominal: 14 }, 'metric', undefined],
    [{ nominal: 14, unit: 'mm' }, 'metric', undefined],
  ])('[Q6] %o in %s units', ([value, system, shown]) => {
    expect(toSystem(value, system)).toEqual(shown)
  })
})
