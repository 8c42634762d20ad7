import type { Level } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { logit } from '@/lib/trade/model'
import { cautionParts, harmsPeople, isSerious } from '../caution-parts'
import { cautionOdds } from '../hazard-odds'
import { quote } from '../late'
import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'

const WILL = /\b(?:will (?:kill|die|be killed|cause death|electrocute|maim)|kills\b)/i

/** Words that mean harm to people even where none are named. */
const hurts = (text: string): boolean =>
  /\b(?:burns?\b(?! out)|scald\w*|poison\w*|toxic|ignites?|explo\w*|fire|irritat\w*|injur\w*|shock)\b/i.test(text)

/** Harm that heals by itself, and none worse beside it. */
const MINOR =
  /\b(?:irritat\w*|redden\w*|itch\w*|sting\w*|scratch\w*|bruis\w*|graz\w*|chafe\w*|blister\w*|minor|slight\w*|sore|pinch\w*|nips?\b(?! (?:it|them|up)\b)|nipped|splinters?|chapp\w*|dermatitis)\b/i
const WORSE =
  /\b(?:burn\w*|scald\w*|poison\w*|toxic|cuts?|crush\w*|shock\w*|explo\w*|fire|ignit\w*|blind\w*|break\w*|broken|inject\w*|trap\w*|catch\w*|pierc\w*|amputat\w*|injur\w*|lose|hospital|eyes?)\b/i
/** Harm that may well kill, though the text doesn't say so. */
const GRAVE =
  /\b(?:explo\w*|fire|ignit\w*|flam\w*|shock|volt\w*|live|mains|crush\w*|inject\w*|poison\w*|toxic|suffocat\w*|asphyx\w*|burst\w*|blind\w*|falls?|falling|drops?|topple\w*|eject\w*|fl(?:y|ies|ying)|thrown?|scald\w*|crash\w*|drag\w*|entangl\w*|drawn?|catch\w*|pressur\w*|jet|refrigerant|gas|spring|airbag|limb|through (?:the )?skin|freez\w*|roll\w*|nail)\b/i
/** "It slips and scratches the key" hurts nobody. */
const SURFACES =
  /\b(?:scratch|chafe|graze?|bruise?|pinch|nip)\w* (?:the|a|an|its|any) (?!(?:skin|hand|finger|fingertip|fingernail|thumb|knuckle|palm|wrist|arm|elbow|shoulder|leg|knee|shin|ankle|eye|eyelid|face|nose|ear|scalp|foot|feet|toe|person|people|user|rider|operator|worker|helper|bystander|child|children)s?\b)[a-z]+/gi
/** "The lacquer burns": it may be the lacquer that suffers. Not what is hot or eats skin. */
const BURNS_ITSELF =
  /\b(?:the|its) (?!(?:acid|alkali|lye|caustic|bleach|cleaner|descaler|stripper|chemical|fluid|electrolyte|refrigerant|flux|resin|steam|water|oil|coolant|exhaust|manifold|muffler|silencer|pipe|flame|torch|iron|element|plate|ice|sun)s?\b)[a-z]+ burns?(?: out| up)?(?=\s*(?:$|[.;,]))/i
/** A scratch in a seal seat heals no more than it hurts: only what people suffer is minor. */
const isMinor = (text: string): boolean =>
  MINOR.test(text.replaceAll(SURFACES, ' ')) &&
  !WORSE.test(text) &&
  (cautionParts(text).consequence === 'injury' || harmsPeople(text))

/** Told in words that name no harm to people, but plainly against a hazard to them: "a bottle that goes over flies through walls". */
const isOfPeople = (caution: Mark): boolean =>
  caution.level !== undefined && caution.level !== 'notice' && cautionOdds(caution).some(odds => odds > PLAIN)
const PLAIN = logit(0.6)

/** The signal words that fit, the best first. @source ANSI Z535.6 (from memory) */
const fitting = (caution: Mark): readonly Level[] | undefined => {
  const { text, level } = caution
  const { consequence } = cautionParts(text)
  if (WILL.test(text) && isSerious(text)) return ['danger', 'warning']
  if (isSerious(text)) return ['warning', 'danger']
  if (isMinor(text)) return ['caution', 'warning']
  if (level === 'notice' && BURNS_ITSELF.test(text) && !harmsPeople(text)) return undefined
  if (harmsPeople(text) || (consequence === 'injury' && hurts(text)))
    return GRAVE.test(text) ? ['caution', 'warning', 'danger'] : ['caution', 'warning']
  return consequence === 'damage' && !isOfPeople(caution) ? ['notice'] : undefined
}

/** Danger, warning, caution, notice each say how bad it gets. */
export const signalWord: Rule = {
  id: 'signal-word',
  level: 'fix',
  about: 'The signal word of a caution does not fit the consequence it states, or there is none.',
  why: 'A notice over something that kills is overlooked; a danger over a scratched panel wears the word out.',
  source:
    'ANSI Z535.6 (from memory): danger and warning for death or serious injury, caution for lesser injury, notice for damage',
  trips: sample([
    ['step', 'Test the supply'],
    ['caution', 'Mains voltage can kill; keep the cover on', { level: 'notice' }],
  ]),
  passes: sample([
    ['step', 'Test the supply'],
    ['caution', 'Mains voltage can kill; keep the cover on', { level: 'warning' }],
  ]),
  ...eachMark(['caution'], mark => {
    const levels = fitting(mark)
    const [best] = levels ?? []
    if (mark.level === undefined)
      return [
        {
          place: atMark(mark),
          message: `The caution ${quote(mark)} has no signal word. Choose danger, warning, caution or notice by what can happen.`,
          ...(best === undefined
            ? {}
            : {
                remedy: {
                  label: `Make it a ${best}`,
                  edits: [{ do: 'change-mark', id: mark.id, to: { level: best } }],
                },
              }),
        },
      ]
    if (levels === undefined || best === undefined || levels.includes(mark.level)) return []
    return [
      {
        place: atMark(mark),
        message: `The caution ${quote(mark)} is marked ${mark.level}, but what it states calls for ${best}. Change the word or the text.`,
        remedy: { label: `Make it a ${best}`, edits: [{ do: 'change-mark', id: mark.id, to: { level: best } }] },
      },
    ]
  }),
}
