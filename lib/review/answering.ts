import type { Mark } from '@/lib/procedure/mark'
import type { Hazard } from '@/lib/trade/hazard'
import { cautionParts, harmsPeople } from './caution-parts'
import { HAZARDS, knownIn } from './hazard-signs'
import { onceFor, onceForText } from './memo'

/** A caution's `hazard` field in kebab case. */
const fieldOf = onceFor(({ hazard }: Mark): string | undefined =>
  hazard
    ?.trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-'),
)

/** Hazards that a caution's field names in so many words. */
const fieldHazards = onceForText(
  (field: string): ReadonlySet<string> =>
    new Set(
      HAZARDS.filter(({ id, alias }) => field === id || field.includes(id) || alias.includes(field)).map(
        ({ id }) => id,
      ),
    ),
)

/** Words that go with many hazards: where the field names another one, they don't make a caution speak of this. */
const COMMON =
  /\b(?:sparks?|sparking|burn\w*|fire|flames?|gloves?|goggles|glasses|eyes?|fingers?|hands?|skin|clear|moves?|moving|support\w*|slip\w*|release[sd]?|air|face|isolat\w*|unexpected\w*|catch\w*|breath\w*|heat|cool\w*|irritat\w*|spray\w*|thrown?|throws?|fl(?:y|ies|ying)|ventilat\w*|outside|outdoors|indoors|doors)\b/gi

/** Harm to things only: "brake fluid strips paint" warns nobody of what it does to eyes. */
const isOfThings = onceFor(
  ({ text, level }: Mark): boolean =>
    !harmsPeople(text) && cautionParts(text).consequence === 'damage' && (level === 'notice' || level === undefined),
)

/** Hazards that share a name such as eye injury with many others: the words have to tell. */
const OWN_WORDS = new Set([
  'compressed-air',
  'flying-particles',

  'radiation',
  'asphyxiant',
  'sewer-gas',
  'biological',
  'capacitor',
  'thrown-objects',
  'engine-saw',
  'flammable-liquid',
])

/** @returns whether a caution speaks of a hazard, by its field or its words. */
export const isAgainst = (caution: Mark, { id }: Hazard): boolean => {
  const field = fieldOf(caution)
  if (isOfThings(caution) && field !== id) return false
  if (field === undefined) return knownIn(caution.text).has(id)
  const named = fieldHazards(field)
  const known = knownIn(named.size === 0 ? caution.text : caution.text.replaceAll(COMMON, ' '))
  if (field === id || field.includes(id) || known.has(id)) return true
  if (!OWN_WORDS.has(id) && knownIn(field.replaceAll('-', ' ')).has(id)) return true
  // By another name that goes with several hazards: it stands for this one unless the words speak of others.
  if (named.has(id) && named.size === 1) return true
  return named.has(id) && !OWN_WORDS.has(id) && ![...known].some(other => named.has(other))
}
