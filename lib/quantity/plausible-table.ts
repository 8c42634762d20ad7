import type { QuantityKind } from './unit-row'

/** What is usual for a kind of quantity, said of a thing. */
export type PlausibleRow = {
  readonly about: string
  readonly kind: QuantityKind
  /** Words one of which must be near; empty for the last resort of a kind. */
  readonly words: readonly string[]
  readonly low: number
  readonly high: number
  /** UCUM code of `low` and `high`. */
  readonly unit: string
}

type Row = readonly [about: string, kind: QuantityKind, words: string, low: number, high: number, unit: string]

/**
 * The particular before the general; the first row that fits decides. Wide on purpose: they catch a slipped decimal point or
 * a wrong unit, nothing finer.
 *
 * @source common practice, no source
 */
const ROWS: readonly Row[] = [
  ['a bicycle tyre', 'pressure', 'bicycle bike tubular', 1, 12, 'bar'],
  ['a tyre', 'pressure', 'tyre tyres tire tires', 0.3, 10, 'bar'],
  ['a hydraulic system', 'pressure', 'hydraulic hydraulics ram', 5, 700, 'bar'],
  ['fuel injection', 'pressure', 'injector injectors rail injection', 1, 3000, 'bar'],
  ['compressed air', 'pressure', 'air compressor regulator airline', 0.1, 40, 'bar'],
  ['a pressure', 'pressure', '', 1e-6, 4000, 'bar'],
  ['an electrode gap', 'length', 'spark plug electrode', 0.2, 2, 'mm'],
  ['a valve clearance', 'length', 'valve tappet lash', 0.02, 2, 'mm'],
  ['runout', 'length', 'runout', 0.001, 5, 'mm'],
  ['a brake pad or lining', 'length', 'pad pads lining', 0.5, 30, 'mm'],
  ['a brake disc', 'length', 'rotor disc', 0.02, 500, 'mm'],
  ['a length on a machine', 'length', '', 1e-4, 100_000, 'mm'],
  ['a drain plug', 'torque', 'drain sump', 2, 150, 'N.m'],
  ['a spark plug', 'torque', 'spark', 5, 50, 'N.m'],
  ['a wheel fastener', 'torque', 'lug lugs wheel', 3, 900, 'N.m'],
  ['a torque by hand tool', 'torque', '', 0.005, 5000, 'N.m'],
  ['a fastener turned by angle', 'angle', 'tighten torque bolt bolts further another', 1, 1080, 'deg'],
  ['engine idle', 'rotation', 'idle idling', 200, 5000, '{rev}/min'],
  ['a speed of rotation', 'rotation', '', 0.1, 500_000, '{rev}/min'],
  ['cooling water', 'temperature', 'coolant radiator', -40, 150, 'Cel'],
  ['a thermostat', 'temperature', 'thermostat', -40, 350, 'Cel'],
  ['drinking or washing water', 'temperature', 'water rinse wash tap', 0, 110, 'Cel'],
  ['a temperature in a shop', 'temperature', '', -100, 1800, 'Cel'],
  ['a small battery', 'voltage', 'battery batteries cell', 0.5, 900, 'V'],
  ['a voltage', 'voltage', '', 1e-6, 40_000, 'V'],
  ['a current', 'current', '', 1e-9, 3000, 'A'],
  ['oil in a machine', 'volume', 'oil', 0.002, 300, 'L'],
  ['a volume', 'volume', '', 1e-6, 100_000, 'L'],
  ['a run or motor capacitor', 'capacitance', '', 1e-12, 0.1, 'F'],
  ['a time', 'time', '', 1e-3, 3.2e9, 's'],
]

export const PLAUSIBLE: readonly PlausibleRow[] = ROWS.map(([about, kind, words, low, high, unit]) => ({
  about,
  kind,
  words: words === '' ? [] : words.split(' '),
  low,
  high,
  unit,
}))

/** @returns whether a row is about the thing that the words name */
export const isAbout = ({ words }: PlausibleRow, about: string): boolean => {
  if (words.length === 0) return true
  const said = new Set(about.toLowerCase().match(/[a-z]+/g) ?? [])
  return words.some(word => said.has(word))
}
