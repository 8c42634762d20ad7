import { isAdverb, NOUNS_TOO, PREPOSITIONS } from './grammar'
import { LEXICON } from './hazard-signs'
import { onceForText } from './memo'
import { isVerb, tokensOf } from './words'

/** Consequences by how grave they are. @source ANSI Z535.6 (from memory): what each signal word stands for */
const DEATH =
  /\b(?:kill\w*|death|(?:can|could|may|might|will|would|you|people|they|and|or|to|must|who|someone|somebody|workers?|riders?) die\b|died\b|(?<!\b(?:the|both|two|dies?|thread|cutting|of) )dies\b|(?<!proved? )(?<!prove it )(?<!\b(?:prove[sd]?|test(?:ed)?|check(?:ed)?) (?:[a-z]+ ){1,3})(?<!\b(?:looks?|seems?|appears?|stays?|goes|went|gone) )dead(?:ly)?(?! test| leg| band)|fatal\w*|lethal|electrocut\w*|suffocat\w*|asphyx\w*|drown\w*)\b/i
const INJURY =
  /\b(?:injur\w*|burn(?:s|ed|t)?\b(?! (?:out|into|onto|up|away)\b)|cuts?\b|cut off|crush\w*|shock\w*|blind\w*|poison\w*|scald\w*|maim\w*|amputat\w*|sever(?:s|ed)?|lacerat\w*|pinch\w*|trap(?:s|ped)?|pierc\w*|punctur\w*|bruis\w*|break(?:s)? (?:bones|fingers|legs|arms|ribs|necks|wrists|ankles|toes|backs|a)|deaf\w*|frostbite|sting\w*|infect\w*|irritat\w*|hurt\w*|harm\w*|bites?|explo\w*|fire|ignite\w*|toxic|crash\w*|(?:you|people|person|somebody|someone|anybody|operator|technician|rider)s?(?: (?:can|may|could|will|might))? fall\w*|a fall|falls? (?:from|off|down)|caught|drawn in|hit (?:you|your|the face)|strain\w*|inhal\w*|breath\w*|sick|cancer|slip\w*|entangl\w*|kickback|fly out|flies out|thrown|fingers? off|(?:through|into|in|off|burns?|cuts?|your|take off|lose|catch(?:es)?|crush(?:es)?|trap(?:s)?|meet|reach(?:es)?|on) (?:bare |your |a |the |an? |their )?(?:fingers?|skin|eyes?|hands?|toes?|feet|foot|face|limbs?|lungs?|hearing)|(?:damag|harm|injur|hurt|ruin|break|catch|crack|smash|strain|tear|take|pull|rip|tak)\w*\b[^.;,]{0,14}\b(?:hearing|eyes?|eyesight|sight|skin|lungs?|hands?|fingers?|toes?|feet|foot|face|back|ribs?|bones?|clothing|clothes|sleeves?|hair|teeth|limbs?)|hospital|(?:very |badly |seriously )?(?:ill|unwell)\b|stab\w*|gash\w*|swallow\w*|choke|(?:run|throw|knock|pull|drag|fling|push|sweep)s? (?:you|people|someone|somebody|anyone|riders?|a person|a man|a child) (?:over|down|off|in)|(?:throw|knock|pitch|fling|trap|hit)s? (?:the |a )?(?:riders?|users?|drivers?|passengers?|operators?|patients?|climbers?)|runs? (?:you|people) over|asthma|silicosis|dermatitis|allerg\w*|disease|illness\w*|pneumonia|legionn\w*|hernia|concuss\w*|unconscious|faint\w*|dizz\w*|nausea|headaches?|rash(?:es)?|blister\w*|vomit\w*|knock(?:s)? (?:you|a person|someone|people))\b/i
/** Parts of the body, and what is done to them; those that machines have too only as somebody's. English, no source. */
const BODY =
  "skin|eyes?|eyesight|hands?|fingers?|thumbs?|fingernails?|knuckles?|wrists?|feet|toes?|ankles?|knees?|spine|scalp|hair|hearing|lungs?|limbs?|bones?|flesh|sleeves?|clothing|you|people|person|anyone|somebody|someone|users?|riders?|operators?|helpers?|bystanders?|child(?:ren)?|(?:your|an?|his|her|the (?:user's|rider's)) (?:arm|leg|foot|face|back|head|neck|hip|skull|rib|jaw|nose|ear|elbow|shoulder|chest|heart|life|sight|eye|body|nail|palm)s?"
const HARMS =
  'harm|hurt|injur|damag|cut|slic|stab|pierc|prick|punctur|burn|scald|sting|irritat|crush|squash|pinch|nip|trap|catch|tear|rip|break|crack|fractur|bruis|graz|scrap|scar|strik|hit|knock|cost|lose|blind|deafen|maim|crippl|paraly[sz]|poison|chok|suffocat|freez|blister|shock|electrocut|jab|mangl|sprain|twist|strain|wreck|ruin|dislocat|smash|punch|pok|shoot|inject|fall on|drop on|land on|roll over|run over|whip|kick|snag|draw in|pull in|sever|amputat|stun|dazzl|sensiti[sz]|redden|numb|gash|impal|drag|shear'
/** A burner harms nobody by its name. */
const HARMED = new RegExp(`\\b(?!burners?\\b)(?:${HARMS})\\w*\\b[^.;:]{0,30}?\\b(?:${BODY})\\b`, 'i')
/** What an order forbids or asks for is no consequence. */
const ORDERED =
  /(?:^|[;:,.]\s*)(?:do not|don't|never|keep|wear|use|let|have|stay|stand|put|take|leave|hold|lift|cut|mind|watch|nip|grip|clamp|tighten|turn|push|pull|press|squeeze|work)\b[^.;:,]*/gi
/** What comes at somebody, and what pulls somebody in. */
const STRUCK = new RegExp(
  `\\b(?:throw|fling|hurl|spit|shoot|blow|bring|send|drop|fall|come|swing|spring|fly|flies|whip|lash|jump|run|go)\\w*\\b[^.;:]{0,40}?\\b(?:at|into|in|onto|on|through|over|toward|towards|under) (?:${BODY})\\b|\\b(?:pull|drag|draw|wind|suck|snatch|grab|tear|rip|sweep)\\w* (?:${BODY}|arms?|legs?) (?:in|into|off|under|round|between|down|along|out)\\b`,
  'i',
)
/** What takes hold of limbs and what people wear, and how people are told to come to grief. */
const LIMBS =
  'arms?|legs?|hands?|fingers?|fingertips?|thumbs?|toes?|feet|foot|hair|sleeves?|cuffs?|gloves?|clothes|clothing|ties?|scar(?:f|ves)|laces|skin|knuckles?|wrists?|necks?|backs?|scalps?|a person|a man|a woman|a child|somebody|someone|anyone|people|you'
const SEIZED = new RegExp(
  `\\b(?:grab|snatch|seiz|wrap|wind|swallow|chew|mash|mangl|eat|yank|whip|bite|takes?|took|take off|peel|strip|flay|skin|clout|floor|roast|cook|sear|put)(?:s|es|ed|bed|ing)?\\b(?! (?:two|three|a second|off the|about|care|turns))[^.;:,]{0,24}?\\b(?:${LIMBS})\\b|\\b(?:${LIMBS})\\b[^.;:,]{0,12}?\\b(?:gets?|got|is|are|be|being) (?:nipp|pinch|crush|trapp|caught|drawn|pull|cut|burn|scald|hit|squash|sever|jamm|wound)\\w*`,
  'i',
)
/** Something done to a part of the body, whatever the verb: "opens a hand to the bone", "can have an eye out", "comes down on heads". */
const OF_BODY =
  "hands?|fingers?|fingertips?|thumbs?|toes?|eyes?|eyesight|feet|heads|skin|lungs?|bones?|ribs?|spines?|necks|backs|wrists?|knuckles?|palms|knees|shins|skulls?|scalps?|flesh|limbs?|nerves|liver|sleeves?|throats?|(?:an?|your|somebody's|someone's|people's) (?:arm|leg|foot|head|neck|back|jaw|tooth|chest|face|palm|knee|skull|throat|nose|ear|elbow|shoulder|hip|life)|(?:your|people's|somebody's) teeth"
const DONE_TO = new RegExp(
  `\\b(?!(?:is|has|was|needs|keeps|holds|lets|means|takes|uses|wants|this|its|always|hands|eyes|goes|gets|stays|reaches|touches|meets|fits|guards|protects|covers|shields|suits)\\b)(?:(?:can|could|may|might|will|would|'ll) (?!(?:be|reach|touch|get|keep|go|use|put|hold)\\b)[a-z]+|[a-z]{2,}[a-rt-z]e?s)(?: (?!(?:near|from|beside|behind|of|without|by|and)\\b)[a-z'-]+){0,3}? (?:${OF_BODY})\\b`,
  'i',
)
const ILLS =
  /\b(?:(?:farmer'?s|welder'?s|miner'?s) lung|lung (?:disease|damage|fever)|metal fume fever|fever|tetanus|lockjaw|eczema|wheez\w*|cough\w*|frost ?bit\w*|heat ?stroke|sunburn|arc eye|tinnitus|hypothermia|septic\w*|sepsis|salmonella|listeria|e\.? ?coli|goes? (?:up|off)\b(?= (?:at|in|with|like|as)\b)|goes? bang|like an? (?:bomb|rocket|bullet|missile|shot|shell|grenade|cannon)|up in flames|flash(?:es)? over|flash burns?)\b/i
/** How talk and vivid sheets put it without a verb of harm: what falls on whom, how far, how slippery, how hot. English, no source. */
const FIGURES =
  /\b(?:nods? off|never wakes?|drops (?:you|people|a man|a person)|stops? (?:a|your|the|his) heart|(?:met(?:re|er)s?|feet|foot|storeys?)(?: of)? (?:drop|down|fall|to the (?:boards|ground|floor|deck|concrete|stage|bottom))|(?:is|are|gets?|turns?|goes?) (?:like|as slick as|as slippery as) (?:soap|ice|glass|grease)|hot as|as hot as|red[- ]hot|sears? (?:at|on|what|whatever|instantly)|(?:eats?|takes?|hits?|catches) (?:whatever|whoever|anything|what)|comes? down on (?:whatever|whoever|anyone|what)|tendons?|dead weight|has no mercy|at (?:\w+ )+degrees)\b/i
const isHarmed = (text: string): boolean => {
  const told = text.replaceAll(ORDERED, ' ')
  return (
    FIGURES.test(told) ||
    HARMED.test(told) ||
    STRUCK.test(told) ||
    SEIZED.test(told) ||
    ILLS.test(told) ||
    DONE_TO.test(told)
  )
}

const DAMAGE =
  /\b(?:damag\w*|dent\w*|gouge\w*|nick(?:s|ed)?|kink\w*|chaf\w*|burst\w*|flood\w*|shatter\w*|melt\w*|stretch\w*|flatten\w*|cross-?thread\w*|blunt\w*|discolou?r\w*|ruin\w*|wreck\w*|destroy\w*|strip(?:s|ped)?|crack(?:s|ed)?|leak\w*|warp\w*|seiz\w*|fail\w*|scrap|break(?:s|age)?|broken|(?<!(?:^|[.;:,–-]\s?|\b(?:and|then|always|to|must|you|or)\s))wear\w*|contaminat\w*|corro\w*|jam\w*|distort\w*|bend(?:s)?|bent|snap\w*|score[sd]?|scratch\w*|chip(?:s|ped)?|clog\w*|foul\w*|overheat\w*|burns? out|come apart|comes? loose|locks? the|void\w*|lose\w*|lost|short(?:s|ed)? (?:out|circuit)|swell\w*|dries|harden\w*|stain\w*|trip(?:s|ped)?|blow(?:s)? the (?:fuse|seal)|spoil\w*|soak\w*|carries over|grit|pop(?:s)? out|come out|shear\w*|deform\w*|rust\w*|tear(?:s)?|torn|misalign\w*|shorten\w*|reduc\w*|weaken\w*|starv\w*|drives? grit|drain(?:s|ed)? the|wrong reading|(?:to|into) (?:pieces|bits|scrap)|won't|doesn't|will not|cannot)\b/i

/** Words that tell to avoid or protect, besides plain instructions. */
const AVOIDS =
  /\b(?:do not|don't|never|not to|avoid|upwind|keep|wear|must|only|before|until|away|clear of|make sure|ensure|let\b|allow|isolate|disconnect|unplug|ventilat\w*|outdoors|protect\w*|no (?:smoking|flames?|loose|gloves|bare|sparks?|water|heat)|stay|watch|always|look (?:twice|again|first)|check (?:twice|first|that)|beware|mind|take care|be careful|follow|gloves on|goggles|with (?:two people|gloves)|stand (?:to|aside|clear|back|off|away|beside|behind|out|on|well)|step (?:back|aside)|lean away|reach (?:around|over)|have (?:a|someone|somebody|two|another)|second person|two people|two of you|(?:both|bend your|bent) knees|knees bent|gauntlets to|barriers? up|(?:plug|key|fuse|mains|power|current|rcd|isolator|breaker|supply|engine|motor|machine|valve) (?:off|out|locked|shut|cold|dead|down)|(?:licen[cs]ed|qualified|certified|trained|competent) (?:\w+ )?(?:electricians?|technicians?|fitters?|engineers?|persons?|people|plumbers?|staff))\b/i
const NAMES_HAZARD = new RegExp(LEXICON.map(({ signals }) => signals.source).join('|'), 'i')
const HAZARD_WORDS =
  /\b(?:hot|heat|steam|pressur\w*|spring\w*|live|volt\w*|electric\w*|current|charg\w*|fuel|petrol|gasoline|vapou?r\w*|fumes?|gas(?:es)?|acid\w*|caustic|chemical\w*|solvent\w*|dust|sharp|blade\w*|edge\w*|glass|swarf|rotat\w*|spin\w*|turning|moving|belt\w*|pulley\w*|fan\w*|chain\w*|gear\w*|heavy|load\w*|raised|suspended|jack\w*|fall\w*|roll\w*|oil|fluid\w*|water|batter\w*|capacitor\w*|terminal\w*|airbag\w*|refrigerant|exhaust|carbon monoxide|noise|loud|laser|uv|flame\w*|spark\w*|fire|explosive|hydraulic|jet|hose|air\b|sling\w*|ladder|edge|cord|cable|tool|key|start\w*|unexpected\w*|ride|drive|engine|machine|saw|cutters?|needles?|jaws?|rollers?|wheels?|shafts?|kni(?:fe|ves)|tines?|gaps?|vices?|platform|ramp|boom|mast|forks?|bucket|drum|hooks?|ropes?|straps?|holes?|pits?|smoke|soot|ash|mou?ld|compressor|piston\w*|brak\w*|slippery|wet|ice|cold|particles?|chips?|debris|lead|asbestos|sewage|germs|magnet\w*|tension\w*|torque|overtighten\w*|overfill\w*|dry|contaminat\w*|dirt|grease|lever\w*|mix\w*|bleach|antifreeze|coolant|adhesive|paint|parts?|seal\w*|thread\w*|surface\w*|lint|pipe\w*|wire\w*|element|panel|door|lid|cover|guard)\b/i

/** Told without a verb: "ear muffs on", "safety boots, and nobody in front of it". */
const GEAR =
  /(?:^|[;:,.–—-]\s*|\band )(?:(?:your|the|a|full|both|long|cut[- ]resistant|heat[- ]?proof|rubber|nitrile|leather|safety|ear|eye|dust|face|hard|steel[- ]toe\w*|welding|thick) )*(?:gloves?|gauntlets?|goggles|glasses|specs|visor|shield|mask|respirator|muffs?|ear ?plugs|boots|hat|helmet|harness|apron|overalls|vest|sleeves|coat|hands|fingers|feet|sleeves|cuffs|hair|lid|guard)(?: (?:on|down|up|off|out|back|clear|away|shut|clipped|tied|rolled|first|at all times|throughout))?(?=$|[.;,:]| and | for | while )|\b(?:nobody|no one|no-one|nothing|no people|no bystanders?|no children|no vehicles?|off limits|out of bounds|hands off|one (?:person|product|at a time)|at arm'?s length|from (?:the side|behind|upwind|a distance)|by (?:its|the) (?:handle|flats?|back|rim|hub|edges?))\b/i

/** Words that begin a clause as adjectives although they are verbs too. */
const ADJECTIVES = new Set('warm live open dry clean clear free cool loose slow level spare separate hot'.split(' '))

/** Verbs of the hands that a preposition may follow: "lift with a helper"; "oil under pressure" orders nothing. */
const MANUAL = new Set(
  'lift work hold stand push pull turn press roll step lean reach cut drive slide use clamp stop start look listen test check rest sit kneel wait leave stay'.split(
    ' ',
  ),
)

const isOrdering = (part: string): boolean => {
  const [first = '', next = ''] = tokensOf(part)
  if (!isVerb(first)) return false
  return ADJECTIVES.has(first) || NOUNS_TOO.has(first)
    ? /^(?:the|a|an|it|your|any|all|both|no|them|out|up|off|on|clear|away|back|aside|only|one|two|each|both|it|their|its|with)$/.test(
        next,
      ) ||
        isAdverb(next) ||
        (MANUAL.has(first) && PREPOSITIONS.has(next) && next !== 'of')
    : true
}

/** "Air can shut the jaws and crush a hand" orders nothing: what follows "can" is what happens. */
const HAPPENS = /\b(?:can|could|may|might|will|would)\b/i

/** Whether a clause, or what an "and" joins to one that orders, is an order. */
const hasOrder = (clause: string): boolean => {
  const [first = '', ...rest] = clause.split(/\band\b|\bor\b/)
  return isOrdering(first) || (!HAPPENS.test(clause) && rest.some(isOrdering))
}

/** What dies besides people: bacteria, plants, an engine. */
const OTHER_DEATHS =
  /\bkill(?:s|ed|ing)?\b (?:off )?(?:the |all |any |your |every )?(?:[\w-]+ )?(?:bacteria|germs?|microbes|fish|plants?|weeds?|grass|lawn|crops?|trees?|yeast|cultures?|bees?|brood|algae|insects?|engine|motor|board|chip|sensor|battery|cells?|pump|seal|lamp|power|signal)\b|\b(?:fish|plants?|bees?|yeast|bacteria|battery|motor|engine|pump|grass) (?:can |could |will |may )?dies?\b/gi
const ofPeople = (text: string): string => text.replaceAll(OTHER_DEATHS, 'spoils')

/** What a caution says and how grave its consequence is. */
export type CautionParts = {
  readonly hasHazard: boolean
  readonly consequence: 'death' | 'injury' | 'damage' | undefined
  readonly hasAvoidance: boolean
}

/** @returns the three parts a safety message is made of. @source ANSI Z535.6 (from memory): hazard, consequence, avoidance */
export const cautionParts = onceForText((whole: string): CautionParts => {
  const text = ofPeople(whole)
  const consequence = DEATH.test(text)
    ? 'death'
    : INJURY.test(text) || isHarmed(text)
      ? 'injury'
      : DAMAGE.test(text)
        ? 'damage'
        : undefined
  return {
    hasHazard: HAZARD_WORDS.test(text) || NAMES_HAZARD.test(text),
    consequence,
    hasAvoidance: AVOIDS.test(text) || text.split(/[.;:,]/).some(hasOrder),
  }
})

/** @returns whether a text names what to wear or who keeps away, without a verb. */
export const tellsGear = (text: string): boolean => GEAR.test(text)

/** Who or what is spoken of without being named. */
const UNNAMED =
  /^(?:[a-z]+ly,? )?(?:it|this|that|these|those|they|you|your|here|there|one|somebody|someone|people|anyone|everyone|nobody|never|always|be|do|don't|not|if|when|while|after|before|with|without|mind|beware|careful|watch|fingers?|hands?|eyes?|limbs?|breathing|touching|danger|warning|caution|injur\w*|serious|risk)\b/i

/** @returns whether a caution that says what happens begins with what does it: "Silica stays in the lungs". */
export const namesCause = (text: string): boolean =>
  cautionParts(text).consequence !== undefined && !UNNAMED.test(text.trim()) && !isOrdering(text)

/**
 * @returns whether a caution tells what to do without a verb: what to wear, who keeps away, or, after a semicolon, how it is
 *   to be: "pairs of the same weight", "two ropes on two anchors"
 */
export const tellsHow = (text: string): boolean =>
  tellsGear(text) ||
  text
    .split(/[;:–—]/)
    .slice(1)
    .some(part => isHow(part.trim()))
const isHow = (part: string): boolean =>
  part !== '' &&
  !/^(?:it|this|that|they|which|and it|so it|the|you)\b/i.test(part) &&
  cautionParts(part).consequence === undefined

const SERIOUS =
  /\b(?:serious\w*|sever(?:e|ely)|maim\w*|amputat\w*|blind\w*|cut off|take (?:off )?(?:your |a )?fingers?|fingers? off|limb|permanent\w* (?:injur|blind|deaf|harm|disab|scar|damage to)\w*|(?:blind|deaf|injur|harm|hurt|scar|cripple|hearing|sight|eyes?|lungs?|nerves?|skin|hand)\w*\b[^.;]* permanent\w*|lose (?:a|an|your)|(?:tear|rip|pull|take|cut|chop|bite|slice|wrench)s? off (?:a |an |your |the )?(?:arms?|legs?|hands?|feet|foot|limbs?|fingers?)|(?:arms?|legs?|hands?|feet|foot|limbs?|fingers?) off|for life|crippl\w*|paraly[sz]\w*|break\w* (?:a |an |your |the )?(?:back|neck|hip|skull|spine|leg|arm|jaw)|inject\w*|cost\w* (?:you )?(?:a |an |your |the )?(?:arm|leg|hand|limb|sight|eye|hearing|life)|explo\w*|fracture\w*)\b/i

/** "Keep fingers off the rails" takes none off. */
const HANDS_OFF = /\b(?:keep|hold)s? (?:your |all |both |bare )?(?:fingers?|hands?) (?:off|out|away|clear|from)\b/gi
/** @returns whether the text speaks of grave harm to people. */
export const isSerious = (text: string): boolean =>
  DEATH.test(ofPeople(text)) || SERIOUS.test(text.replaceAll(HANDS_OFF, 'keep off'))

const PEOPLE =
  /\b(?:you|your|fingers?|hands?|skin|eyes?|people|person|someone|anybody|burns? (?:skin|you|badly)|injur\w*|lungs?|hearing|shock|cuts?|scald\w*|crush\w*|poison\w*|face|feet|foot|toes?|bones?|ribs?|back|limbs?|arms?|legs?|hearing|clothing|hair|child\w*)\b/i

/** @returns whether the harm spoken of is to people, not only to things. */
export const harmsPeople = (text: string): boolean =>
  isSerious(text) || (INJURY.test(text) && PEOPLE.test(text)) || isHarmed(text)
