import type { Quantity } from '@/lib/quantity/quantity'

/** Unit to what it measures, and factor and offset to a base unit; enough to compare the cases, as their scorer does. */
const UNITS: Readonly<Record<string, readonly [string, number, number?]>> = {
  'N.m': ['torque', 1],
  '[ft_i].[lbf_av]': ['torque', 1.3558179483],
  '[lbf_av].[ft_i]': ['torque', 1.3558179483],
  '[in_i].[lbf_av]': ['torque', 0.112984829],
  '[lbf_av].[in_i]': ['torque', 0.112984829],
  '[psi]': ['pressure', 6894.757293],
  bar: ['pressure', 1e5],
  kPa: ['pressure', 1e3],
  Pa: ['pressure', 1],
  mbar: ['pressure', 100],
  MPa: ['pressure', 1e6],
  mm: ['length', 1e-3],
  cm: ['length', 1e-2],
  m: ['length', 1],
  um: ['length', 1e-6],
  '[in_i]': ['length', 0.0254],
  '[mil_i]': ['length', 2.54e-5],
  '[ft_i]': ['length', 0.3048],
  km: ['length', 1e3],
  '[mi_i]': ['length', 1609.344],
  mL: ['volume', 1e-6],
  L: ['volume', 1e-3],
  '[qt_us]': ['volume', 9.46352946e-4],
  '[pt_us]': ['volume', 4.73176473e-4],
  '[gal_us]': ['volume', 3.785411784e-3],
  '[foz_us]': ['volume', 2.95735295625e-5],
  '[cup_us]': ['volume', 2.365882365e-4],
  Cel: ['temperature', 1],
  '[degF]': ['temperature', 5 / 9, -160 / 9],
  deg: ['angle', 1],
  '{turn}': ['angle', 360],
  circ: ['angle', 360],
  '{rpm}': ['speed', 1],
  '{rev}/min': ['speed', 1],
  '/min': ['speed', 1],
  V: ['voltage', 1],
  mV: ['voltage', 1e-3],
  kV: ['voltage', 1e3],
  A: ['current', 1],
  mA: ['current', 1e-3],
  uA: ['current', 1e-6],
  Ohm: ['resistance', 1],
  mOhm: ['resistance', 1e-3],
  kOhm: ['resistance', 1e3],
  MOhm: ['resistance', 1e6],
  uF: ['capacitance', 1],
  ms: ['time', 1e-3],
  s: ['time', 1],
  min: ['time', 60],
  h: ['time', 3600],
  d: ['time', 86400],
  wk: ['time', 604800],
  mo: ['time', 2629800],
  a: ['time', 31557600],
  '%': ['ratio', 0.01],
  kg: ['mass', 1],
  g: ['mass', 1e-3],
  '[lb_av]': ['mass', 0.45359237],
}
type Loose = {
  readonly low?: number | null
  readonly high?: number | null
  readonly nominal?: number | null
  readonly unit?: string | null
  readonly tol?: number | null
}

const limitsOf = (quantity: Loose) => {
  if ([quantity.low, quantity.high, quantity.nominal].every(value => value === undefined || value === null))
    return undefined
  const [dimension, factor, offset = 0] = UNITS[quantity.unit ?? ''] ?? [quantity.unit ?? '', 1]
  const base = (value: number | null | undefined) =>
    value === undefined || value === null ? undefined : value * factor + offset
  const tol = quantity.tol ?? undefined
  const nominal = quantity.nominal ?? undefined
  const low = base(quantity.low ?? (tol !== undefined && nominal !== undefined ? nominal - tol : undefined))
  const high = base(quantity.high ?? (tol !== undefined && nominal !== undefined ? nominal + tol : undefined))
  return { dimension, low, high, nominal: low === undefined && high === undefined ? base(nominal) : undefined }
}

const isClose = (a: number | undefined, b: number | undefined): boolean =>
  a === undefined || b === undefined ? a === b : Math.abs(a - b) <= 0.005 * Math.max(Math.abs(a), Math.abs(b), 1e-12)

/** Whether two quantities say the same: dimension, limits within 0.5 %, the nominal only where there are no limits. */
export const sameQuantity = (a: Quantity | Loose, b: Quantity | Loose): boolean => {
  const [x, y] = [limitsOf(a), limitsOf(b)]
  if (x === undefined || y === undefined) return x === y
  return (
    x.dimension === y.dimension && isClose(x.low, y.low) && isClose(x.high, y.high) && isClose(x.nominal, y.nominal)
  )
}
