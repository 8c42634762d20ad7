import { type Fastener, gradesOf, proofStress, stressArea } from './fastener'
import { formatQuantity } from './format'
import type { Quantity } from './quantity'
import { convert, dimensionOf } from './units'

export type TorqueOptions = {
  /** Nut factor K; 0.2 dry and 0.15 oiled are usual. @source a handbook figure, from memory; not in ISO 898-1 */
  readonly nutFactor?: number
  /** Share of the proof load the fastener is tightened to. @source common practice, no source: 75 % for one taken apart again */
  readonly share?: number
}

/** A torque set against the fastener it is meant for. */
export type TorqueCheck = {
  /** `high` and `low` are far outside; `plausible` says no more than that. */
  readonly verdict: 'plausible' | 'high' | 'low'
  /** What T = K·F·d gives, N·m; two ends where the class was not said. */
  readonly expected: Quantity
  /** How it was computed, with every assumption, in one paragraph for people. */
  readonly working: string
}

/** Far outside: so many times what the strongest class would take, or what the weakest would. */
const TOO_HIGH = 1.6
const TOO_LOW = 0.12

const newtonMetres = (quantity: Quantity): { least: number; most: number } | undefined => {
  const { unit } = quantity
  if (unit === undefined || dimensionOf(unit) !== 'torque') return undefined
  const values = [quantity.low, quantity.nominal, quantity.high].flatMap(value => {
    const converted = value === undefined ? undefined : convert(value, unit, 'N.m')
    return converted?.ok === true ? [converted.value] : []
  })
  return values.length === 0 ? undefined : { least: Math.min(...values), most: Math.max(...values) }
}

const figure = (value: number): string => String(Number(value.toPrecision(3)))

type Load = { readonly grade: string; readonly proof: number; readonly force: number; readonly torque: number }

const loadOf = (fastener: Fastener, grade: string, share: number, nutFactor: number): Load | undefined => {
  const proof = proofStress(fastener, grade)
  if (proof === undefined) return undefined
  const force = share * proof * stressArea(fastener)
  return { grade, proof, force, torque: (nutFactor * force * fastener.diameter) / 1000 }
}

const name = (fastener: Fastener, grade: string): string =>
  `${fastener.series === 'metric' ? 'class' : 'grade'} ${grade}`

const sum = (fastener: Fastener, { grade, proof, force, torque }: Load, share: number, nutFactor: number): string =>
  `${name(fastener, grade)}: proof stress ${figure(proof)} MPa × stress area ${figure(stressArea(fastener))} mm² × ${figure(share * 100)} % = ${figure(force / 1000)} kN; ` +
  `T = K·F·d = ${nutFactor} × ${figure(force / 1000)} kN × ${figure(fastener.diameter)} mm = ${figure(torque)} N·m`

/**
 * Whether a torque can be meant for a fastener: T = K·F·d with F a share of the proof load. A sanity check, not a torque to
 * use: the maker's manual decides.
 *
 * @param quantity a torque; other quantities give undefined
 * @returns undefined where quantity or class are not known to the tables. Where no class was said, the weakest and the
 *   strongest are both tried, and the working says so.
 * @source T = K·F·d: handbook formula; proof loads of ISO 898-1 and SAE J429, see fastener.ts
 */
export const checkTorque = (
  quantity: Quantity,
  fastener: Fastener,
  { nutFactor = 0.2, share = 0.75 }: TorqueOptions = {},
): TorqueCheck | undefined => {
  const said = newtonMetres(quantity)
  const grades = fastener.grade === undefined ? gradesOf(fastener.series) : [fastener.grade]
  const loads = grades.flatMap(grade => loadOf(fastener, grade, share, nutFactor) ?? [])
  const [weakest, strongest] = [loads[0], loads.at(-1)]
  if (said === undefined || weakest === undefined || strongest === undefined) return undefined
  const verdict =
    said.most > strongest.torque * TOO_HIGH ? 'high' : said.least < weakest.torque * TOO_LOW ? 'low' : 'plausible'
  const expected: Quantity =
    weakest === strongest
      ? { nominal: weakest.torque, unit: 'N.m' }
      : { low: weakest.torque, high: strongest.torque, unit: 'N.m' }
  const against = verdict === 'high' ? strongest : weakest
  const value = verdict === 'high' ? said.most : said.least
  const pitch = fastener.isPitchSaid ? '' : ` (coarse pitch ${fastener.pitch} mm taken)`
  const unsaid =
    fastener.grade === undefined
      ? `No class was said, so ${name(fastener, weakest.grade)} to ${strongest.grade} were tried. `
      : ''
  const sums = (weakest === strongest ? [weakest] : [weakest, strongest])
    .map(load => sum(fastener, load, share, nutFactor))
    .join('. For ')
  const working =
    `${fastener.size}${pitch}. ${unsaid}For ${sums}. K = ${nutFactor} is an assumption (dry; about 0.15 oiled), and so is ${figure(share * 100)} % of the proof load. ` +
    `Said: ${formatQuantity(quantity)}, ${figure(value / against.torque)} times that.`
  return { verdict, expected, working }
}
