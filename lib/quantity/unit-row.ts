/** What a quantity is about. Two units convert only within one kind: N·m of torque and joules share a UCUM dimension. */
export type QuantityKind =
  | 'torque'
  | 'pressure'
  | 'length'
  | 'distance'
  | 'angle'
  | 'rotation'
  | 'frequency'
  | 'temperature'
  | 'temperature difference'
  | 'volume'
  | 'mass'
  | 'force'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'power'
  | 'energy'
  | 'charge'
  | 'capacitance'
  | 'time'
  | 'ratio'
  | 'flow'
  | 'velocity'
  | 'area'
  | 'density'
  | 'stress'
  | 'spring rate'
  | 'acidity'
  | 'sound'

export type UnitSystem = 'metric' | 'us' | 'imperial' | 'any'

/** One unit of the table. */
export type Unit = {
  /** UCUM code, case sensitive. */
  readonly code: string
  readonly kind: QuantityKind
  /** How many base units of its kind one is (N·m, Pa, m, deg, rpm, Hz, kelvin, m³, kg, N, V, A, Ω, W, J, C, F, s, 1, m³/s). */
  readonly factor: number
  /** Base units at zero of this unit; only for temperatures. */
  readonly offset?: number
  /** For people. */
  readonly symbol: string
  readonly system: UnitSystem
  /** Spoken names: `singular` or `singular/plural`, lower case. */
  readonly names: readonly string[]
  /** Written forms, matched with their case. */
  readonly written: readonly string[]
}

/** One row of the table: names separated by commas, written forms by bars. */
export type Row = readonly [
  code: string,
  kind: QuantityKind,
  factor: number,
  symbol: string,
  system: UnitSystem,
  names: string,
  written: string,
  offset?: number,
]

export const INCH = 0.0254
export const FOOT = 0.3048
export const POUND = 0.45359237
export const GRAVITY = 9.80665
export const POUND_FORCE = POUND * GRAVITY
export const GALLON = 231 * INCH ** 3
export const IMPERIAL_GALLON = 4.54609e-3
/** UCUM defines m[Hg] as 133.3220 kPa and m[H2O] as 9.80665 kPa. */
export const MERCURY = 133322
export const WATER = 9806.65
