import type { Hazard } from './hazard'

const PRACTICE = 'common practice, no source'

/** What hurts by moving, falling or flying, and by its edges. See hazards.ts. */
export const MOTION: readonly Hazard[] = [
  {
    id: 'crush',
    alias: [
      'lifting',
      'falling',
      'fall',
      'suspended-load',
      'heavy',
      'falling-load',
      'pinch',
      'tip-over',
      'manual-handling',
      'strain',
      'gravity',
      'collapse',
      'drop',
    ],
    hints: /\b(?:lean|tip|tilt)\w*\b[^.;]*\b(?:machine|washer|fridge|freezer|cabinet|cooker|dryer)\b/i,
    signals:
      /\b(?:jack(?:ed|ing)?\b(?: up)?[^.;]*\b(?:car|vehicle|van|frame|machine|tractor|mower|trailer|axle|wheel|corner|front|rear|side|chair|sill)|axle stands?|jack stands?|hoist|crane|chain block|chain hoist|engine lift|forklift|(?:raise|lift)\w* the (?:car|vehicle|van|front|rear|bike|motorcycle|deck|header|bucket|boom|load|engine|gearbox|transmission|motor|machine|tailgate|mower|implement)|under the (?:raised|lifted))\b/i,
    not: /\b(?:lower|remove the (?:axle |jack )?stands?|jacking screw|(?:front|rear|side) (?:panel|cover|door|grille|guard|shroud|plate|lid|shelf|cowl|screen|housing|bezel))\b/i,
    known:
      /\b(?:crush\w*|fall\w*|drop\w*|jack|stands?|lift\w*|heavy|pinch\w*|slip\w*|trap\w*|collapse\w*|tip\w*|support\w*|two people|raised|under)\b/i,
    level: 'danger',
    caution:
      'A raised load that drops will kill: set it on stands made for the weight on firm, level ground, try its stability, and never put any part of you under what only a jack or hoist holds.',
    source: PRACTICE,
  },
  {
    id: 'height',
    alias: ['fall', 'falling', 'fall-from-height', 'ladder'],
    signals: /\b(?:ladder|step ?ladder|scaffold\w*|roof|gutter|rooftop|cherry picker|mast)\b/i,
    not: /\b(?:roof (?:lining|light)|paper)\b/i,
    known: /\b(?:fall\w*|ladder|height|roof|harness|slip\w*)\b/i,
    level: 'warning',
    caution:
      'A fall from height can kill: use a ladder or platform that is rated and footed, keep three points of contact, and follow local rules for work at height.',
    source: PRACTICE,
  },
  {
    id: 'rotating-parts',
    alias: [
      'entanglement',
      'laceration',
      'amputation',
      'moving-parts',
      'rotation',
      'kickback',
      'rotating',
      'entrapment',
      'nip',
      'caught',
      'drawn-in',
      'draw-in',
      'runaway',
    ],
    hints: /\b(?:belts?|pulleys?|blades?|fan|chuck|spindle|chain|cutters?)\b/i,
    hintsIn:
      /^(?!.*\b(?:laptop|computer|console|projector|camera)\b).*\b(?:lathe|mill|fan|mower|saw|compressor|conveyor|mixer|drill|grinder|planer|auger|belt-driven|chain drive)\b/i,
    signals:
      /\b(?:(?:run|start|switch on|spin|turn on|power up|engage|restart)\w*\b[^.;]*\b(?:belt|pulley|fan|blades?|spindle|chuck|auger|rotor|flywheel|coupling|conveyor|blower|cutter|lathe|mill|drill|grinder|mower|mixer|chain|shaft|rollers?|impeller|cutting deck|agitator|sander|planer|router|table saw|band ?saw|shredder|chipper)|(?:take off|remove|lift off|open|unbolt)\w*\b[^.;]*\b(?:belt guard|chain guard|fan guard|blade guard|belt cover|coupling guard))\b/i,
    not: /\b(?:by hand|hand-?turn|off\b(?!.*guard)|stop|impeller cover|unplug\w*)\b/i,
    known:
      /\b(?:rotat\w*|spin\w*|turning|moving|entangl\w*|caught|catch\w*|fingers?|hair|sleeves?|nip|drawn? in|belt|blades?|pulley|fan|kickback|starts? (?:by itself|automatically|unexpectedly)|unexpected\w*|lacerat\w*|amputat\w*|guard|windmill\w*)\b/i,
    level: 'warning',
    caution:
      'Turning parts catch sleeves, hair and fingers and can maim: stop and isolate before you reach in, run it only with its guards on, and keep clear while it turns.',
    source: PRACTICE,
  },
  {
    id: 'flying-particles',
    alias: [
      'eye-injury',
      'eye',
      'eyes',

      'flying-debris',
      'splinters',

      'kickback-debris',
      'noise',
      'hearing',
      'chips',
    ],
    signals:
      /\b(?:hammers?|hammering|chisel (?:off|out|away|the)|cold chisel|(?:centre|center|pin|drift) punch|angle grinder|grinding|grinder|grind (?!paste)|drill(?:ing)? (?:out|through|a|the)|wire wheel|(?:take|make|turn) a (?:test |light |facing |trial )?cut|turn (?:two|a) collars?|turn (?:the|a) (?:diameter|shoulder|bar)|(?<!\b(?:the|an?|each|hour|arc) )strike\b(?! (?:plate|train|an? arc|one|two|three|four|twelve|the (?:hour|quarter)))|abrasive (?:wheel|disc)|needle gun|(?:start|run)\w*\b[^.;]*\b(?:chain ?saw|saw|brush ?cutter|strimmer|shredder|chipper|trimmer))\b/i,
    not: /\b(?:(?:rubber|plastic|nylon|wooden|hide|copper|lead|dead-?blow) (?:mallet|hammer)|(?:bell|door|clock|striking|hour) hammer|hammer (?:of|from) the (?:bell|clock)|soft[- ]faced|water hammer|by hand|slide hammer|grinding noise|grinding paste|without grinding|for grinding)\b/i,
    known: /\b(?:eyes?|glasses|goggles|face shield|visor|flying|particles?|chips?|splinters?|sparks?|debris)\b/i,
    protection: /\b(?:glasses|goggles|eye protection|face shield|visor|eye and ear|helmet)\b/i,
    level: 'caution',
    caution:
      'Chips and splinters fly and can blind: wear eye protection, and hearing protection where it is loud, and keep others clear.',
    source: PRACTICE,
  },
  {
    id: 'engine-saw',
    alias: ['eye-injury', 'noise', 'eye', 'hearing'],
    signals: /\b(?:start|run)\w*\b[^.;]*\b(?:saw|engine|machine|throttle)\b/i,
    equipment: /\b(?:chain ?saw|brush ?cutter|disc cutter|cut-off saw|strimmer|leaf blower|wood chipper)\b/i,
    known: /\b(?:eyes?|ears?|glasses|goggles|visor|hearing|muffs?|helmet|face shield|flying)\b/i,
    protection:
      /\b(?:glasses|goggles|eye protection|face shield|visor|ear (?:muffs?|defenders|plugs)|earplugs|hearing protection|helmet)\b/i,
    level: 'warning',
    caution:
      'The saw throws chips and is loud enough to harm hearing: wear eye and ear protection and what else the maker’s manual asks for.',
    source: PRACTICE,
  },
  {
    id: 'sharp',
    alias: ['cut', 'cuts', 'laceration', 'sharp-edge', 'sharp-edges', 'puncture', 'blade'],
    signals:
      /\b(?:razor blade|broken glass|swarf|sharp (?:edge|blade|cutter|tooth|teeth|point)s?|(?:remove|fit|sharpen|handle|change|replace|take off|unbolt|lift|install|hone|undo|file)\w*\b[^.;]*\b(?:mower blades?|cutting blades?|knife|knives|planer (?:blade|knife)s?|saw blades?|blades?))\b/i,
    not: /\b(?:wiper|fan) blades?\b/i,
    known: /\b(?:cuts?|sharp|gloves?|lacerat\w*|edges?|slice\w*|blades?)\b/i,
    protection: /\bgloves?\b/i,
    level: 'caution',
    caution:
      'Sharp edges cut deep: wear cut-resistant gloves, hold the part away from its edge, and keep fingers out of its path.',
    source: PRACTICE,
  },
  {
    id: 'crash',
    alias: ['fall', 'loss-of-control', 'brake-failure', 'runaway', 'slip', 'wheel-loss'],
    signals: /\b(?:test ride|ride it|test drive|drive slowly|bed(?:ding)? (?:the |in )?pads)\b/i,
    hints:
      /\b(?:quick release|brake (?:pads?|cable|hose|lever|caliper)|steering|handlebars?|stem|axle nut|wheel nuts?|tyres?)\b/i,
    hintsIn: /\b(?:bicycle|bike|motorcycle|scooter|wheelchair|e-bike)\b/i,
    known: /\b(?:crash\w*|falls?|ride\w*|riding|traffic|brak\w*|drops? out|loss of|lose control|skid\w*|road)\b/i,
    level: 'warning',
    caution:
      'A wheel, brake or bar that lets go throws the rider and can kill: check every fastener against the maker’s manual and try the brakes standing still before riding.',
    source: PRACTICE,
  },
  {
    id: 'airbag',
    alias: ['explosion', 'deployment', 'projectile', 'pyrotechnic'],
    signals: /\b(?:air ?bags?|srs|squib|clock ?spring|pretensioner)\b/i,
    known: /\b(?:air ?bags?|deploy\w*|srs|go(?:es)? off)\b/i,
    level: 'danger',
    caution:
      'An airbag that goes off can kill: leave it to those trained for it; the maker’s manual says how to disable it and how long to wait.',
    source: PRACTICE,
  },
]
