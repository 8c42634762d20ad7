/** What kind of thing a unit measures, as far as a reviewer weighs a missing tolerance. */
export type Dimension =
  | 'torque'
  | 'pressure'
  | 'length'
  | 'time'
  | 'calendar'
  | 'volume'
  | 'mass'
  | 'temperature'
  | 'angle'
  | 'turn'
  | 'electric'
  | 'speed'
  | 'force'
  | 'distance'
  | 'other'

/** UCUM codes by dimension. N·m is torque here: energy doesn't occur as a limit in a service job. @source UCUM */
const UNITS: Readonly<Record<Exclude<Dimension, 'other'>, readonly string[]>> = {
  torque: [
    'N.m',
    'cN.m',
    'dN.m',
    'kN.m',
    'N.cm',
    '[ft_i].[lbf_av]',
    '[in_i].[lbf_av]',
    '[lbf_av].[ft_i]',
    '[lbf_av].[in_i]',
    '[in_i].[ozf_av]',
    'kgf.m',
    'kgf.cm',
  ],
  pressure: [
    'Pa',
    'hPa',
    'kPa',
    'MPa',
    'bar',
    'mbar',
    '[psi]',
    'm[H2O]',
    'cm[H2O]',
    "[in_i'H2O]",
    "[in_i'Hg]",
    'mm[Hg]',
    'kgf/cm2',
    'atm',
    'um[Hg]',
  ],
  length: ['mm', 'cm', 'm', 'um', '[in_i]', '[mil_i]', '[ft_i]', '[yd_i]'],
  time: ['s', 'ms', 'min', 'h', 'd'],
  calendar: ['wk', 'mo', 'a'],
  volume: [
    'L',
    'mL',
    'cL',
    'dL',
    'l',
    'ml',
    'cm3',
    'm3',
    '[qt_us]',
    '[pt_us]',
    '[gal_us]',
    '[foz_us]',
    '[cup_us]',
    '[tbs_us]',
    '[tsp_us]',
    '[pt_br]',
    '[gal_br]',
  ],
  mass: ['g', 'kg', 'mg', '[lb_av]', '[oz_av]'],
  temperature: ['Cel', '[degF]', 'K'],
  angle: ['deg', 'rad', "'"],
  turn: ['circ', '{turn}'],
  electric: ['V', 'mV', 'kV', 'A', 'mA', 'Ohm', 'kOhm', 'MOhm', 'uF', 'nF', 'F', 'W', 'kW', 'Hz', 'A.h'],
  speed: ['{rev}/min', '{rpm}', 'm/s', 'km/h', '[mi_i]/h', '/min'],
  force: ['N', 'kN', '[lbf_av]', 'kgf', 'gf'],
  distance: ['km', '[mi_i]'],
}

const BY_UNIT = new Map(
  Object.entries(UNITS).flatMap(([dimension, units]) => units.map(unit => [unit, dimension as Dimension] as const)),
)

/** @returns what the unit measures; `other` for codes not listed. */
export const dimensionOf = (unit: string): Dimension => BY_UNIT.get(unit) ?? 'other'
