import type { Level } from '@/lib/procedure/kinds'
import { AGENTS, BODY, DEADLY, INJURIES } from '@/lib/trade/english'
import { HAZARDS } from '@/lib/trade/hazards'
import { isWarning } from '@/lib/trade/warned'
import type { Reading } from './feature'

const SURE = new Set(['will', "'ll", 'kills', 'always', 'does', 'killed'])
const GRAVE =
  /\b(?:hospital|blind\w*|lose|lost|sever\w*|amputat\w*|crush\w*|maim\w*|explo\w*|bomb|fire|electrocut\w*|poison\w*|toxic|serious\w*|badly|worse|fingers? (?:off|clean)|take (?:your|them|it) .*off|eyes? out|shock|volts?|voltage|mains|chlorine|fumes|kickback|crash|fall\w*|arm off|hand off|skull|neck|heart|spine)\b/i
const SLIGHT =
  /\b(?:burn\w*|scald\w*|cut\w*|slice\w*|pinch\w*|blister\w*|bruis\w*|scratch your|nip\w*|sting\w*|splinter\w*|eyes?|skin|dust|sharp|hot|plaster|cough\w*|needles?|graze\w*)\b/i

/** Names of hazards by what is said, first match counts; before the shared list, which looks at steps more than at warnings. */
const SPOKEN: readonly (readonly [string, RegExp])[] = [
  ['carbon-monoxide', /\bcarbon monoxide\b|\bmonoxide\b/i],
  [
    'electric-shock',
    /\b(?:volts?|voltage|mains|electrocut\w*|electric shock|live (?:wire|part|terminal)s?|(?:it|that|they|this|those|these)(?:['’]s|['’]re| is| are) (?:still |always )?live|capacitor|stay(?:s|ed)? live)\b/i,
  ],
  ['toxic-gas', /\b(?:chlorine|toxic|poison\w*|ammonia|cyanide)\b.*|\bgas\b.*\b(?:breath\w*|lungs?|hospital)\b/i],
  ['fumes', /\b(?:fumes?|vapou?rs?|solvent|breath\w*|inhal\w*|lungs?|ventilat\w*)\b/i],
  ['explosion', /\b(?:explo\w*|bomb|grenade|bursts?)\b/i],
  ['fire', /\b(?:fire|flames?|ignit\w*|flammable|sparks?|burn(?:s|ed)? (?:the|your) (?:house|shop|garage|place))\b/i],
  ['stored-energy', /\b(?:spring|tension|stored|wound up|compressed)\b/i],
  ['pressure', /\b(?:pressure|pressuri[sz]ed|psi|inject\w*|hose.*whip\w*|spray\w* .*(?:eyes?|face))\b/i],
  [
    'crush',
    /\b(?:crush\w*|fall\w* on|comes? down|drops? on|jack|hoist|heavy|topple\w*|tip\w* over|under (?:it|there))\b/i,
  ],
  ['burn', /\b(?:burn\w*|scald\w*|hot|blister\w*|steam|degrees|boiling|fingerprints?)\b/i],
  [
    'entanglement',
    /\b(?:wrap\w*|drag\w*|sleeves?|hair|spinning|rotating|turning|runs? on after|coasts?|caught|chain|belt|turns?|in(?:to)? the (?:gears?|rollers?))\b/i,
  ],
  ['cut', /\b(?:cut\w*|sharp|razor\w*|slice\w*|blade|edges?|glass|needle|stab\w*|splinters?)\b/i],
  ['pinch', /\b(?:pinch\w*|nip\w*|trap\w*)\b/i],
  ['chemical', /\b(?:acid|caustic|alkali\w*|corrosive|lye|bleach|battery acid)\b/i],
  ['projectile', /\b(?:fly|flies|flying|shoots?|thrown?|fling\w*|eyes?)\b/i],
  ['dust', /\b(?:dust|silica|asbestos)\b/i],
  ['slip', /\b(?:slip\w*|slid\w*)\b/i],
  ['contamination', /\b(?:grease|oil|dirt|grit|contaminat\w*|fingerprints)\b/i],
]

/** @returns the level by the consequence said, and the hazard by what is named. @source ANSI Z535.6 (from memory): danger will, warning could kill or seriously injure; caution minor or moderate; notice not about injury */
export const gradeCaution = ({ text, tokens }: Reading): { readonly level: Level; readonly hazard: string } => {
  const isDeadly =
    tokens.some(token => DEADLY.has(token.word)) ||
    /\b(?:stop your heart|dead\b(?! (?:still|on|level|slow|straight|centre|center|end|flat)))/i.test(text)
  const isPersonal = tokens.some(token => BODY.has(token.word) || INJURIES.has(token.word)) || isDeadly
  const isSure = tokens.some(token => SURE.has(token.word)) && !/\b(?:could|can|may|might)\b/i.test(text)
  const named =
    SPOKEN.find(([, pattern]) => pattern.test(text))?.[0] ?? HAZARDS.find(hazard => hazard.signals.test(text))?.id
  const isAgent = tokens.some(token => AGENTS.has(token.word))
  if (isDeadly) return { level: isSure ? 'danger' : 'warning', hazard: named ?? 'injury' }
  if (isPersonal && GRAVE.test(text)) return { level: 'warning', hazard: named ?? 'injury' }
  if (named === 'electric-shock' || named === 'toxic-gas' || named === 'carbon-monoxide' || named === 'explosion')
    return { level: 'warning', hazard: named }
  if (isWarning(text) || (isPersonal && (SLIGHT.test(text) || isAgent)))
    return { level: 'caution', hazard: named ?? 'injury' }
  return { level: 'notice', hazard: named === 'contamination' ? 'contamination' : 'damage' }
}
