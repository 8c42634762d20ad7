import type { Level } from '@/lib/procedure/kinds'
import { AGENTS, BODY, DEADLY, INJURIES } from '@/lib/trade/english'
import { HAZARDS } from '@/lib/trade/hazards'
import { asSentence, sayTokens, tidy } from './clause-text'
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
    /\b(?:volts?|voltage|mains|electrocut\w*|electric shock|live (?:wire|part|terminal)s?|capacitor|stay(?:s|ed)? live)\b/i,
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
    /\b(?:wrap\w*|drag\w*|sleeves?|hair|spinning|rotating|caught|chain|belt|turns?|in(?:to)? the (?:gears?|rollers?))\b/i,
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
  if (isPersonal && (SLIGHT.test(text) || isAgent)) return { level: 'caution', hazard: named ?? 'injury' }
  return { level: 'notice', hazard: named === 'contamination' ? 'contamination' : 'damage' }
}

/** The avoidance as an order, then what happens otherwise; both from the words said. */
export const wordCaution = (reading: Reading): string => {
  const { text, tokens, clauses } = reading
  const order = clauses.find(clause => clause.marker === undefined && clause.frame === 'order')
  if (order === undefined) return asSentence(`take care: ${lower(sayTokens(text, tokens, 0, tokens.length))}`)
  const verb = order.verb ?? order.start
  const said = tidy(sayTokens(text, tokens, order.isNegated ? verb : order.start, order.to))
  const rest = clauses
    .filter(clause => clause !== order)
    .map(clause => sayTokens(text, tokens, clause.from, clause.to))
    .filter(part => part.split(' ').length > 1)
  const first = order.isNegated ? `do not ${said.replace(/^(?:don't|never|do not|not)\s+/i, '')}` : said
  return asSentence(rest.length === 0 ? first : `${first}; ${lower(rest.join(', '))}`)
}

const lower = (said: string): string => (/^I\b/.test(said) ? said : `${said.charAt(0).toLowerCase()}${said.slice(1)}`)
