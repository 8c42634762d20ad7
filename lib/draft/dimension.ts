/** What a unit of the shop measures. Codes are UCUM. @source UCUM */
const DIMENSIONS: Readonly<Record<string, readonly string[]>> = Object.setPrototypeOf(
  {
    torque: [
      'N.m',
      '[ft_i].[lbf_av]',
      '[lbf_av].[ft_i]',
      '[in_i].[lbf_av]',
      '[lbf_av].[in_i]',
      'kgf.m',
      'N.cm',
      'kgf.cm',
    ],
    pressure: ['[psi]', 'bar', 'kPa', 'MPa', 'Pa', 'mbar', "[in_i'Hg]", 'mm[Hg]'],
    length: ['mm', 'cm', 'm', 'um', 'km', '[in_i]', '[mil_i]', '[ft_i]', '[mi_i]', '[yd_i]'],
    volume: ['mL', 'ml', 'L', 'l', 'cm3', '[qt_us]', '[pt_us]', '[gal_us]', '[foz_us]', '[cup_us]'],
    temperature: ['Cel', '[degF]', 'K'],
    angle: ['deg', 'rad'],
    turn: ['circ', '{turn}'],
    speed: ['{rev}/min', '{rpm}', '/min', 'circ/min', 'km/h', '[mi_i]/h'],
    voltage: ['V', 'mV', 'kV'],
    current: ['A', 'mA', 'uA'],
    resistance: ['Ohm', 'kOhm', 'MOhm'],
    power: ['W', 'kW', '[HP]'],
    force: ['N', 'kN', '[lbf_av]', 'kgf'],
    mass: ['g', 'kg', '[lb_av]', '[oz_av]', 't'],
    time: ['ms', 's', 'min', 'h'],
    interval: ['d', 'wk', 'mo', 'a'],
    share: ['%'],
  },
  null,
)
const BY_UNIT = new Map(Object.entries(DIMENSIONS).flatMap(([name, units]) => units.map(unit => [unit, name] as const)))

/** @returns what a UCUM code measures, as far as drafting tells units apart; undefined for others. */
export const toDimension = (unit: string | undefined): string | undefined =>
  unit === undefined ? undefined : BY_UNIT.get(unit)
