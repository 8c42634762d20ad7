import type { Mark } from '@/lib/procedure/mark'
import { spokenAgainst, toField } from './answering-words'
import cautionModel from './caution-model.json'
import { cautionFeatures, listFeatures, machineFeatures, placeFeatures, stepFeatures } from './hazard-feature'
import { type HazardModel, toWeigher } from './hazard-model'
import hazardModel from './hazard-model.json'
import { LEXICON } from './hazard-signs'
import { onceFor, onceForText } from './memo'

const IDS = LEXICON.map(({ id }) => id)
const weighStep = toWeigher(hazardModel satisfies HazardModel, IDS)
const weighCaution = toWeigher(cautionModel satisfies HazardModel, IDS)

const ofWords = onceForText((text: string) => weighStep(stepFeatures(text)))
const ofMachine = onceForText((machine: string) => weighStep(machineFeatures(machine)))
const ofLists = onceForText((names: string) => weighStep(listFeatures(names)))

/** Log odds of each hazard, by its index in LEXICON. */
export type Odds = Float64Array

const sum = (a: Odds, b: Odds): Odds => a.map((value, i) => value + (b[i] ?? 0))

/**
 * @param machine title and equipment
 * @param names of all tools and materials, one a line
 * @returns what is known before any step is read
 */
export const sheetOdds = (machine: string, names: string): Odds => sum(ofMachine(machine), ofLists(names))

/** What steps add to `sheetOdds` on a machine, by whether the power is off when they are done. */
type StepOdds = { readonly on: (text: string) => Odds; readonly off: (text: string) => Odds }

/** @param machine title and equipment */
export const stepOdds = onceForText((machine: string): StepOdds => {
  const withPower = (isOff: boolean) =>
    onceForText((text: string): Odds => sum(ofWords(text), weighStep(placeFeatures(text, machine, isOff))))
  return { on: withPower(false), off: withPower(true) }
})

/** @returns for each hazard the log odds that a caution answers it. */
export const cautionOdds = onceFor(({ text, hazard }: Mark): Odds => {
  return weighCaution(cautionFeatures(text, toField(hazard), spokenAgainst(text, hazard)))
})
