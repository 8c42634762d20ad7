import type { Mark } from '@/lib/procedure/mark'
import type { Hazard } from '@/lib/trade/hazard'
import { spokenAgainst, toField } from './answering-words'
import { cautionParts, harmsPeople } from './caution-parts'
import { cautionOdds } from './hazard-odds'
import { HAZARDS } from './hazard-signs'
import { onceFor } from './memo'

/** Log odds from which on the fitted model takes a caution for an answer, and below which not even the lexicon's words are believed. */
const ANSWERS = Math.log(0.25 / 0.75)
const NEVER = Math.log(0.001 / 0.999)

/** Harm to things only: "brake fluid strips paint" warns nobody of what it does to eyes. */
const isOfThings = onceFor(
  ({ text, level }: Mark): boolean =>
    !harmsPeople(text) && cautionParts(text).consequence === 'damage' && (level === 'notice' || level === undefined),
)

const INDEX = new Map(HAZARDS.map((hazard, i) => [hazard, i]))

/** @returns whether a caution speaks of a hazard, by its field or its words. */
export const isAgainst = (caution: Mark, hazard: Hazard): boolean => {
  if (isOfThings(caution) && toField(caution.hazard) !== hazard.id) return false
  const odds = cautionOdds(caution)[INDEX.get(hazard) ?? -1] ?? NEVER
  return odds >= ANSWERS || (odds >= NEVER && spokenAgainst(caution.text, caution.hazard).includes(hazard.id))
}
