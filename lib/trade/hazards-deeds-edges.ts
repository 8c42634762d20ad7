import type { Hazard } from './hazard'
import { HANDS, on, PRACTICE } from './hazards-deed-words'

/** What cuts, catches, springs and flies. See hazards-deeds.ts. */
export const DEEDS_OF_PARTS: readonly Hazard[] = [
  {
    id: 'sprung-clip',
    alias: ['eye-injury', 'flying-part', 'flying-parts', 'projectile', 'ejection'],
    signals: new RegExp(
      `\\b${HANDS}\\w*\\b[^.;]*\\b(?:circlips?|snap rings?|retaining rings?|e-clips?|spring clips?|spring clamps?|split pins?|roll pins?)\\b[^.;]*\\b(?:off|out|free|from)\\b|\\b(?:spring|prise|pop|ease|take|pick)\\w*\\b[^.;]*\\b(?:off|out)\\b[^.;]*\\bcirclips?\\b|\\b(?:spread|squeeze|open)\\w*\\b[^.;]*\\bcirclips?\\b|\\b(?:snap|break|chip|shear|crack)\\w*\\b[^.;]*\\b(?:bolt tails?|bolt heads?|tails|studs?|rivets?|welds?|slag|tiles?|concrete)\\b|\\b(?:lever|prise|pry)\\w*\\b[^.;]*\\bbead\\b|\\bdress\\w*\\b[^.;]*\\b(?:wheel|stone|weld)\\b|\\bgrind\\w*\\b[^.;]*\\b(?:off|out|back|away|bolts?|cracks?|welds?)\\b|\\b(?:drive|drift|punch|chisel)\\w*\\b[^.;]*\\brivets?\\b|\\bwire-?brush\\w*\\b[^.;]*\\b(?:rims?|rust|scale)\\b`,
      'i',
    ),
    known: /\b(?:eyes?|eyesight|blind\w*|face|goggles|glasses|visor|shield|fl(?:y|ies|ying)|shoots?)\b/i,
    protection: /\b(?:glasses|goggles|eye protection|face shield|visor)\b/i,
    level: 'caution',
    caution: 'What springs or snaps off flies into eyes: wear safety glasses and hold it covered while it comes free.',
    source: PRACTICE,
  },
  {
    id: 'sheet-edge',
    alias: ['sharp-edge', 'sharp-edges', 'cut', 'cuts', 'sharp', 'laceration'],
    signals: on(
      HANDS,
      '(?:back|rear|side|front|base|kick|bottom|outer|lower|top|drum|service) (?:panel|plate|sheet|casing|skin|shell)|sheet[- ]metal|raw edges?',
    ),
    equipment:
      /\b(?:washing machine|tumble dryer|dryer|dishwasher|ice machine|oven|fridge|freezer|vending|air handler|kiln|furnace|cooker)\b/i,
    not: /\b(?:back on|refit|plastic)\b/i,
    known: /\b(?:edges?|sharp|cuts?|slic\w*|gash\w*|burrs?|fins?|cut-proof|work gloves)\b/i,
    protection: /\b(?:cut[- ](?:proof|resistant)|work gloves|leather gloves)\b/i,
    level: 'caution',
    caution: 'Bare sheet metal has edges like knives: wear cut-resistant gloves and reach in with sleeves down.',
    source: PRACTICE,
  },
  {
    id: 'keen-edge',
    alias: ['sharp', 'cut', 'cuts', 'blade', 'laceration'],
    signals: on(
      '(?:hone|sharpen|whet|strop|file|grind|touch up)',
      'knife|knives|blades?|edges?|cutters?|tines?|shears',
    ),
    not: /\b(?:burr|rust)\b/i,
    known: /\b(?:cuts?|sharp|slic\w*|gash\w*|sever\w*|blade|knife|edge|gloves|razor)\b/i,
    level: 'caution',
    caution: 'A honed edge cuts to the bone: wear cut-resistant gloves and work away from yourself.',
    source: PRACTICE,
  },
  {
    id: 'kickback',
    alias: ['kick-back', 'saw', 'moving-chain'],
    signals: /\b(?:start|restart|run|rev|cut|fire)s?\b(?! (?:the engine|off)\b)/i,
    equipment: /\bchain ?saws?\b/i,
    not: /\b(?:by hand|tap|file|filing|off)\b/i,
    known: /\b(?:kick\w*|(?:moving|running) chain|chain (?:can|could|will|may)|bar nose|nose of the bar)\b/i,
    level: 'warning',
    caution:
      'A saw kicks back when the nose of the bar touches anything: brake on to start, both hands on it, nose clear.',
    source: PRACTICE,
  },
  {
    id: 'belt-nip',
    alias: ['pinch', 'nip', 'nip-point', 'trap', 'entrapment', 'crush'],
    signals:
      /\b(?:roll|walk|work|lever|run|slip|ease|stretch|force|turn)\w*\b[^.;]*\b(?:belts?|chain)\b[^.;]*\b(?:over|onto|on|off|round|around)\b[^.;]*\b(?:pulleys?|sheaves?|sprockets?|wheels?|drum)\b|\b(?:roll|walk|lever|stretch)\w*\b[^.;]*\bbelts?\b[^.;]*\b(?:over|onto|on|off)\b/i,
    known: /\b(?:pinch\w*|fingers?|trap\w*|nip\w*|catch\w*|draw\w*|pull\w* (?:in|your)|hands?)\b/i,
    level: 'caution',
    caution:
      'Fingers between belt and pulley are crushed: slacken the drive first and turn it with the palm on the belt’s back.',
    source: PRACTICE,
  },
  {
    id: 'drive-shaft',
    alias: ['entanglement', 'rotating-parts', 'rotating-shaft', 'pto'],
    signals: /\b(?:pto|power take-off|drive shaft|cardan(?: shaft)?|prop(?:eller)? shaft)\b/i,
    equipment:
      /\b(?:tractor|trailed|pto|power take-off|implement|baler|sprayer|mower|spreader|tiller|auger|combine|540 rpm|mounted)\b/i,
    not: /\b(?:off|out of gear|disengage|stop)\b/i,
    known:
      /\b(?:catch\w*|caught|wrap\w*|wind\w*|entangl\w*|clothes|clothing|sleeves?|shaft|drawn|turns?|turning|spinning)\b/i,
    level: 'danger',
    caution:
      'A turning drive shaft winds clothes up and kills: tractor engine off and key out, shield whole, nobody near while it turns.',
    source: PRACTICE,
  },
  {
    id: 'running-down',
    alias: ['coasting', 'rotating-parts', 'entanglement', 'moving-parts'],
    signals:
      /\b(?:wait|let|leave)\w*\b[^.;]*\b(?:stands? still|stop(?:s|ped)?|run(?:s)? down|come(?:s)? to rest|spin(?:s)? down|coast\w*|stood still)\b/i,
    equipment: /\b(?:fans?|blowers?|centrifuges?|rotors?|turbines?|flywheels?|extractors?|booth)\b/i,
    not: /\b(?:drip\w*|bubbl\w*|hiss\w*|drain\w*|flow\w*)\b/i,
    known: /\b(?:coast\w*|still|run(?:s|ning)? (?:on|down)|spin\w*|turn\w*|rotor|wheel|blades?|fingers?)\b/i,
    level: 'warning',
    caution: 'It turns on long after the switch is off and takes fingers: open nothing until it stands still.',
    source: PRACTICE,
  },
  {
    id: 'breaks-in-run',
    alias: ['flying-parts', 'projectile', 'burst', 'thrown-objects', 'ejection'],
    signals: /\b(?:start|run|spin|switch)\w*\b[^.;]*\b(?:band|wheel|grinder|saw|engine|disc|blade)\b/i,
    equipment: /\b(?:sawmill|band ?saw|bench grinder|angle grinder|grinding wheel|cut-off saw|disc cutter)\b/i,
    not: /\b(?:by hand|off|sander|engine oil)\b/i,
    known:
      /\b(?:burst\w*|break(?:s|ing)?|thrown?|fl(?:y|ies|ying)|fragments?|pieces|out of (?:the )?line|stand (?:at|to|aside|beside|clear))\b/i,
    level: 'warning',
    caution:
      'A band or wheel that breaks is thrown out: guards shut, stand out of its line, and let it run alone for the first minute.',
    source: PRACTICE,
  },
  {
    id: 'caught-in-run',
    alias: ['entanglement', 'rotating-parts', 'drawn-in', 'catch'],
    signals:
      /\b(?:start|run|switch|spin|jog|inch|power)\w*\b[^.;]*\b(?:on|up|grinder|lathe|drill|polisher|buffer|wheel|spindle|chuck|machine|auger|conveyor|belt|rollers?|mill|mixer|slicer|press)\b/i,
    equipment:
      /\b(?:bench grinder|pedestal grinder|lathe|pillar drill|drill press|polish(?:er|ing)|buff(?:er|ing)|spindle moulder|auger|conveyor|roller mill|malt mill|winder|calender|ironer|offset press|printing press|bread slicer|dough mixer|spiral mixer|stump grinder)\b/i,
    not: /\b(?:by hand|off|lock|tag|light|lamp)\b/i,
    known:
      /\b(?:sleeves?|hair|gloves?|cloth(?:es|ing)?|catch\w*|wraps?|draws?|drawn|entangl\w*|jewell?ery|fingers?)\b/i,
    level: 'warning',
    caution:
      'It catches sleeves, hair and gloves and pulls the hand in: nothing loose on you, no gloves, hands clear until it stands still.',
    source: PRACTICE,
  },
  {
    id: 'fin-cuts',
    alias: ['sharp', 'cut', 'cuts', 'sharp-edge'],
    signals: on(
      '(?:comb|brush|straighten|wash|vacuum|clean)',
      '(?:condenser|evaporator|cooler|coil|radiator|bent)? ?fins?|evaporator plate',
    ),
    known: /\b(?:cuts?|sharp|slic\w*|fins?|gloves|edges?|razor)\b/i,
    protection: /\b(?:cut[- ](?:proof|resistant)|work gloves|leather gloves)\b/i,
    level: 'caution',
    caution: 'Fins and sheet edges slice fingers: wear cut-resistant gloves.',
    source: PRACTICE,
  },
  {
    id: 'cracked-glass',
    alias: ['sharp', 'cut', 'cuts', 'glass', 'broken-glass'],
    signals: on(
      '(?:lift|take|chip|knock|pick|pull|cut|ease|draw)',
      '(?:cracked|broken|shattered|smashed) (?:\\w+ )?(?:panel|tiles?|glass|panes?|mirror|screen|lamp|window|bulb)',
    ),
    known: /\b(?:cuts?|sharp|slic\w*|glass|gloves|edges?|shards?|splinters?)\b/i,
    level: 'caution',
    caution:
      'Broken pieces cut to the bone: wear cut-resistant gloves and glasses, and pick nothing up with bare fingers.',
    source: PRACTICE,
  },
]
