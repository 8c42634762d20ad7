import type { Mark } from '@/lib/procedure/mark'
import type { Hazard } from '@/lib/trade/hazard'
import { logit } from '@/lib/trade/model'
import { spokenAgainst, toField } from './answering-words'
import { cautionParts, harmsPeople } from './caution-parts'
import { cautionOdds } from './hazard-odds'
import { DEEDS, HAZARDS, LEXICON } from './hazard-signs'
import { onceFor } from './memo'

/** Log odds from which on the fitted model takes a caution for an answer, and below which not even the lexicon's words are believed. */
const ANSWERS = logit(0.25)
const NEVER = logit(0.001)
/** Where the model is sure of another hazard, the lexicon's words need at least this. */
const CLEAR = logit(0.5)
const BESIDE = logit(0.02)

/** Named in so many words, a hazard is spoken of, whatever else weighs more. */
const NAMED: Readonly<Record<string, RegExp>> = {
  crush: /\bcrush/i,
  pinch: /\bpinch/i,
  dust: /\bdust/i,
  noise: /\bnoise/i,
}

/** Harm to things only: "brake fluid strips paint" warns nobody of what it does to eyes. */
const isOfThings = onceFor(
  ({ text, level }: Mark): boolean =>
    !harmsPeople(text) && cautionParts(text).consequence === 'damage' && (level === 'notice' || level === undefined),
)

const saysOf = ({ text, hazard }: Mark, id: string): boolean =>
  toField(hazard) === id || DEEDS.get(id)?.known.test(text) === true

/** The hazards a caution speaks of, asked once a caution. */
const hazardsOf = onceFor((caution: Mark): ReadonlySet<Hazard> => {
  const odds = cautionOdds(caution)
  const spoken = new Set(spokenAgainst(caution.text, caution.hazard))
  const field = toField(caution.hazard)
  const least = odds.some((own, i) => i < LEXICON.length && own >= CLEAR) ? BESIDE : NEVER
  return new Set(
    HAZARDS.filter(({ id }, i) => {
      if (isOfThings(caution) && field !== id) return false
      if (DEEDS.has(id)) return saysOf(caution, id)
      const own = odds[i] ?? NEVER
      return own >= ANSWERS || ((own >= least || NAMED[id]?.test(caution.text) === true) && spoken.has(id))
    }),
  )
})

/** @returns whether a caution speaks of a hazard, by its field or its words. */
export const isAgainst = (caution: Mark, hazard: Hazard): boolean => hazardsOf(caution).has(hazard)
