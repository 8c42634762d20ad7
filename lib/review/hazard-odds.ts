import type { Mark } from '@/lib/procedure/mark'
import { spokenAgainst, toField } from './answering-words'
import cautionModel from './caution-model.json'
import { cautionFeatures, listFeatures, machineFeatures, placeFeatures, stepFeatures } from './hazard-feature'
import { type HazardModel, toWeigher } from './hazard-model'
import hazardModel from './hazard-model.json'
import { HAZARDS } from './hazard-signs'
import { onceFor, onceForText } from './memo'

const IDS = HAZARDS.map(({ id }) => id)
const weighStep = toWeigher(hazardModel satisfies HazardModel, IDS)
const weighCaution = toWeigher(cautionModel satisfies HazardModel, IDS)

const ofWords = onceForText((text: string) => weighStep(stepFeatures(text)))
const ofMachine = onceForText((machine: string) => weighStep(machineFeatures(machine)))
const ofLists = onceForText((names: string) => weighStep(listFeatures(names)))

/** Log odds of each hazard, by its index in HAZARDS. */
export type Odds = Float64Array

const sum = (a: Odds, b: Odds): Odds => a.map((value, i) => value + (b[i] ?? 0))

/**
 * @param machine title and equipment
 * @param names of all tools and materials, one a line
 * @returns what is known before any step is read
 */
export const sheetOdds = (machine: string, names: string): Odds => sum(ofMachine(machine), ofLists(names))

/** Steps by what decides about them; the key is the state of the power, the machine and the text. */
const ofStep = onceForText((key: string): Odds => {
  const [state, machine = '', text = ''] = key.split('\n')
  return sum(ofWords(text), weighStep(placeFeatures(text, machine, state === 'off')))
})

/**
 * @param isOff whether the power is off when the step is done
 * @returns what the step adds to `sheetOdds`
 */
export const stepOdds = (text: string, machine: string, isOff: boolean): Odds =>
  ofStep(`${isOff ? 'off' : 'on'}\n${machine.replaceAll('\n', ' ')}\n${text.replaceAll('\n', ' ')}`)

/** @returns for each hazard the log odds that a caution answers it. */
export const cautionOdds = onceFor(({ text, hazard }: Mark): Odds => {
  return weighCaution(cautionFeatures(text, toField(hazard), spokenAgainst(text, hazard)))
})
