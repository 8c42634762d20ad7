import { knownIn, LEXICON } from './hazard-signs'
import { onceForText } from './memo'

/** @returns a caution's `hazard` field in kebab case. */
export const toField = (hazard: string | undefined): string | undefined =>
  hazard
    ?.trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-')

/** Hazards that a caution's field names in so many words. */
const fieldHazards = onceForText(
  (field: string): ReadonlySet<string> =>
    new Set(
      LEXICON.filter(({ id, alias }) => field === id || field.includes(id) || alias.includes(field)).map(
        ({ id }) => id,
      ),
    ),
)

/** Words that go with many hazards: where the field names another one, they don't make a caution speak of this. */
const COMMON =
  /\b(?:sparks?|sparking|burn\w*|fire|flames?|gloves?|goggles|glasses|eyes?|fingers?|hands?|skin|clear|moves?|moving|support\w*|slip\w*|release[sd]?|air|face|isolat\w*|unexpected\w*|catch\w*|breath\w*|heat|cool\w*|irritat\w*|spray\w*|thrown?|throws?|fl(?:y|ies|ying)|ventilat\w*|outside|outdoors|indoors|doors)\b/gi

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

const speaksOf = (text: string, field: string | undefined, id: string): boolean => {
  if (field === undefined) return knownIn(text).has(id)
  const named = fieldHazards(field)
  const known = knownIn(named.size === 0 ? text : text.replaceAll(COMMON, ' '))
  if (field === id || field.includes(id) || known.has(id)) return true
  if (!OWN_WORDS.has(id) && knownIn(field.replaceAll('-', ' ')).has(id)) return true
  // By another name that goes with several hazards: it stands for this one unless the words speak of others.
  if (named.has(id) && named.size === 1) return true
  return named.has(id) && !OWN_WORDS.has(id) && ![...known].some(other => named.has(other))
}

/** @returns ids of the hazards that a caution is against by its words and its field, as the lexicon has them. */
export const spokenAgainst = (text: string, hazard: string | undefined): readonly string[] => {
  const field = toField(hazard)
  return LEXICON.filter(({ id }) => speaksOf(text, field, id)).map(({ id }) => id)
}
