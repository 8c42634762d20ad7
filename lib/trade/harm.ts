/**
 * Harm to people as talk says it plainly. Machines have arms, heads and teeth too: such words count only as somebody's.
 *
 * @source English, no source
 */
const LIMBS =
  'fingers?|fingertips?|thumbs?|knuckles?|hands?|wrists?|toes?|eyes?|eyesight|eyebrows?|skin|scalp|hair|ponytail|sleeves?|bones?|ribs?|lungs?|flesh|skull'
const OWN =
  "(?:your|my|his|her|their|a (?:man|woman|lad|girl|person|mechanic)'s|somebody's|someone's|people's) (?:\\w+ )?(?:arm|leg|foot|feet|face|head|neck|back|hip|nose|ear|jaw|palm|nail|body|chest|heart|shoulder|elbow|teeth|lip|sight|hearing|life|clothes|coat|tie)s?"
const PEOPLE =
  'you|yourself|people|someone|somebody|anyone|anybody|a (?:man|woman|person|child|lad|girl|mechanic|friend)'
const WOUNDS =
  'burn|scald|cut|slice|crush|pinch|nip|trap|hurt|injure|blind|sever|stab|gash|jab|pierce|prick|puncture|break|fracture|sprain|smash|maim|amputate|shock|electrocute|poison|choke|suffocate|blister|sting|bite|impale|whip|lash|strike|hit|shatter|skin|scar|deafen|knock|floor'
const TAKES =
  'take|takes|took|tear|tears|rip|rips|chop|chops|lop|lops|whip|whips|bite|bites|lose|loses|lost|pull|pulls|snatch|snatches|grab|grabs|catch|catches'
const WILL = "(?:will|'ll|can|could|may|might|would|'d|going to|gonna|be|and|or|it|that|they|which|to)"

const ending = (verbs: string): string => `(?:${verbs})(?:s|es|ed|d|ped|ned|ting|ing)?`

const SIGNS: readonly (readonly [sign: string, pattern: RegExp])[] = [
  [
    'deadly',
    /\b(?:(?:will|'ll|can|could|would|'d|may|might|to|and|it|that|combination) kills?(?: (?:you|people|someone|somebody|anyone|a (?:man|woman|child|person)))?(?=$|[.,;!]| (?:if|when|before|in|with))|kills? (?:you|people|someone|somebody|anyone)|stop(?:s|ped)? (?:your|a man's) heart|fatal|lethal|deadly|electrocut\w+|suffocat\w+|asphyxiat\w+)\b/i,
  ],
  [
    'wounds',
    new RegExp(
      `\\b${ending(WOUNDS)}\\b(?: (?:straight|right|clean|deep))?(?: through| into| open| off| in| on)? (?:(?:the|your|his|her|their|bare|both|a|an|two|any|of) )*(?:${LIMBS}|${OWN}|${PEOPLE})\\b`,
      'i',
    ),
  ],
  [
    'takes',
    new RegExp(
      `\\b(?:${TAKES})\\b(?! my)[^.,;]{0,16}?\\b(?:${LIMBS}|${OWN})\\b[^.,;]{0,12}?\\b(?:off|out|in|away|clean|with it|open)\\b`,
      'i',
    ),
  ],
  [
    'thrown',
    new RegExp(
      `\\b(?:fl(?:y|ies|ew|ying)|shoots?|spits?|sprays?|springs?|jumps?|kicks?|thrown)\\b[^.,;]{0,24}?\\b(?:at|in|into|to|toward|towards|through) (?:${OWN}|(?:the|your|my|her|his) (?:${LIMBS}|face|head|chest)|${PEOPLE})\\b|\\b(?:comes?|goes)\\b[^.,;]{0,24}?\\b(?:at|into|toward|towards|through) (?:the|your) (?:${LIMBS}|face|head|chest)\\b`,
      'i',
    ),
  ],
  [
    'bursts',
    /\b(?:like|is|as|becomes?|into) an? (?:\w+ )?(?:grenade|bomb|bullet|cannon|cannonball|missile|rocket|shell|shotgun|mine|guillotine|flamethrower|knife in)\b|\bshrapnel\b|\bexplodes?\b|\bexplosion\b/i,
  ],
  [
    'inside',
    /\b(?:while|when|with|once) (?:your|my|a|both|the) (?:\w+ )?(?:fingers?|hands?|arms?|face|head)(?:'s|'re| is| are| in| near| under| on| down)\b/i,
  ],
  ['threat', new RegExp(`\\b${WILL} (?:${WOUNDS})s? (?:${PEOPLE})\\b`, 'i')],
]

/** @returns the ways in which a text tells harm to people; none where it tells none. */
export const harmSigns = (text: string): readonly string[] => {
  const said = text.replaceAll('’', "'")
  return SIGNS.filter(([, pattern]) => pattern.test(said)).map(([sign]) => sign)
}
