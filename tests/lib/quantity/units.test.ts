import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { loadUcum } from '@/lib/quantity/ucum'
import { UNITS } from '@/lib/quantity/unit-table'
import { completeUnit, convert, dimensionOf, findUnit, isComparable, unitSymbol } from '@/lib/quantity/units'

const ucum = await loadUcum()

/** The base unit of each kind, as unit-table.ts states it. */
const BASES: Readonly<Record<string, string>> = {
  torque: 'N.m',
  pressure: 'Pa',
  length: 'm',
  distance: 'm',
  angle: 'deg',
  frequency: 'Hz',
  volume: 'm3',
  mass: 'kg',
  force: 'N',
  voltage: 'V',
  current: 'A',
  resistance: 'Ohm',
  power: 'W',
  energy: 'J',
  charge: 'C',
  capacitance: 'F',
  time: 's',
  flow: 'm3/s',
  velocity: 'm/s',
  area: 'm2',
  density: 'g/L',
  'spring rate': 'N/m',
}

describe('units', () => {
  test.for(UNITS.map(unit => [unit.code]))('[Q3] %s is a valid UCUM code', ([code = '']) => {
    expect(ucum.isValid(code)).toBe(true)
  })

  test.for(
    UNITS.filter(unit => BASES[unit.kind] !== undefined).map(unit => [unit.code, unit.kind, unit.factor] as const),
  )('[Q3] the factor of %s agrees with @lhncbc/ucum-lhc', ([code, kind, factor]) => {
    const converted = ucum.convert(1, code, BASES[kind] ?? '')
    expect(converted.ok && converted.value / factor).toBeCloseTo(1, 9)
  })

  // NIST SP 811 (2008) appendix B.8, as given in the project's notes on standards; seven figures, the last rounded.
  test.for([
    [1, '[ft_i].[lbf_av]', 'N.m', 1.355818],
    [1, '[in_i].[lbf_av]', 'N.m', 0.1129848],
    [1, 'kgf.m', 'N.m', 9.80665],
    [1, '[psi]', 'kPa', 6.894757],
    [1, '[in_i]', 'mm', 25.4],
    [1, '[mil_i]', 'mm', 0.0254],
    [1, '[qt_us]', 'L', 0.9463529],
    [1, '[gal_us]', 'L', 3.785412],
    [1, '[pt_us]', 'L', 0.4731765],
    [1, '[foz_us]', 'mL', 29.57353],
    [1, '[gal_br]', 'L', 4.54609],
    [1, '[lb_av]', 'kg', 0.4535924],
    [1, '[oz_av]', 'g', 28.34952],
    [1, '[lbf_av]', 'N', 4.448222],
    [1, '[mi_i]', 'km', 1.609344],
    [1, "[in_i'Hg]", 'kPa', 3.386389],
    [1, 'mm[Hg]', 'kPa', 0.1333224],
    [1, '[HP]', 'W', 745.6999],
    [212, '[degF]', 'Cel', 100],
  ] as const)('[Q3] %s %s in %s is %s (NIST SP 811 B.8)', ([value, from, to, expected]) => {
    const converted = convert(value, from, to)
    // Mercury in UCUM differs from the conventional by 3e-6.
    expect(converted.ok && Math.abs(converted.value / expected - 1)).toBeLessThan(from.includes('Hg') ? 5e-6 : 5e-7)
  })

  test('[Q3] converting there and back gives the value again, to the last few bits', () => {
    const pairs = UNITS.flatMap(a =>
      UNITS.filter(b => isComparable(a.code, b.code)).map(b => [a.code, b.code] as const),
    )
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.double({ min: -1e6, max: 1e6, noNaN: true }), ([a, b], value) => {
        const there = convert(value, a, b)
        const back = there.ok ? convert(there.value, b, a) : there
        return back.ok && Math.abs(back.value - value) <= 1e-9 * Math.max(1, Math.abs(value))
      }),
    )
  })

  test('[Q3] torque is no energy, and a rise in temperature is no temperature', () => {
    expect(convert(1, 'N.m', 'J')).toEqual({
      ok: false,
      problems: [{ code: 'not-comparable', message: 'N·m (torque) cannot be converted to J (energy).' }],
    })
    expect(convert(10, 'Cel', '[degF]')).toEqual({ ok: true, value: expect.closeTo(50, 9) })
    expect(convert(10, 'Cel', '[degF]', { isDifference: true })).toEqual({ ok: true, value: expect.closeTo(18, 9) })
    expect(convert(1, 'furlong', 'mm').ok).toBe(false)
  })

  test.for([
    ['N·m', 'N.m'],
    ['newton metres', 'N.m'],
    ['newton meters', 'N.m'],
    ['Nm', 'N.m'],
    ['ft-lb', '[ft_i].[lbf_av]'],
    ['lbf·ft', '[ft_i].[lbf_av]'],
    ['ft lbs', '[ft_i].[lbf_av]'],
    ['foot-pounds', '[ft_i].[lbf_av]'],
    ['in-lb', '[in_i].[lbf_av]'],
    ['PSI', '[psi]'],
    ['thou', '[mil_i]'],
    ['°C', 'Cel'],
    ['rpm', '{rev}/min'],
    ['{rpm}', '{rev}/min'],
    ['{turn}', 'circ'],
    ['turns', 'circ'],
    ['cc', 'mL'],
    ['litres', 'L'],
    ['quart', '[qt_us]'],
    ['kΩ', 'kOhm'],
    ['µF', 'uF'],
    ['hours', 'h'],
    ['months', 'mo'],
    ['%', '%'],
  ])('[Q3] %s is found as %s', ([name = '', code]) => {
    expect(findUnit(name)?.code).toBe(code)
  })

  test('[Q3] every unit is found by what people see', () => {
    const lost = UNITS.filter(unit => findUnit(unitSymbol(unit.code))?.code !== unit.code).map(unit => unit.code)
    expect(lost).toEqual([])
  })

  test('[Q3] a half-typed unit is completed, the likeliest first', () => {
    expect(completeUnit('newt')[0]?.code).toBe('N.m')
    expect(completeUnit('ft')[0]?.code).toBe('[ft_i]')
    expect(completeUnit('ft-l')[0]?.code).toBe('[ft_i].[lbf_av]')
    expect(completeUnit('ps').map(unit => unit.symbol)).toEqual(['psi'])
    expect(completeUnit('').length).toBe(8)
    expect(completeUnit('zzz')).toEqual([])
  })

  test('[Q3] kinds tell torque from energy', () => {
    expect([dimensionOf('N.m'), dimensionOf('J'), dimensionOf('{turn}'), dimensionOf('nonsense')]).toEqual([
      'torque',
      'energy',
      'angle',
      undefined,
    ])
  })
})
