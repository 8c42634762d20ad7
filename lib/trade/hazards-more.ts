import type { Hazard } from './hazard'

const PRACTICE = 'common practice, no source'
/** Mechanical, electrical, thermal, noise, material and ergonomic hazards, as the standard lists them. */
const KINDS =
  'ISO 12100:2010 annex B lists such hazards (from memory); signs and wordings are common practice, no source'

/** Further hazards the review looks for, besides those of hazards.ts. */
export const MORE_HAZARDS: readonly Hazard[] = [
  {
    id: 'aerosol',
    alias: ['flammable', 'vapour', 'vapor', 'fire', 'explosion', 'inhalation', 'spray'],
    signals:
      /\b(?:spray(?:ing)? (?:the |some |a little |on )?(?:[\w-]+ )?(?:lubricant|lube|grease|oil|adhesive|glue|paint|primer|lacquer|varnish|penetrant|penetrating oil|solvent|cleaner|degreaser|dry film|silicone|undercoat|wax)|aerosols?|spray (?:can|lube|lubricant|grease|adhesive|paint)|penetrating (?:oil|spray)|contact (?:spray|adhesive|cement))\b/i,
    not: /\b(?:water-based|pump spray|trigger spray|soapy)\b/i,
    known:
      /\b(?:aerosols?|spray\w*|flammable|ignit\w*|flames?|fire|vapou?rs?|fumes?|ventilat\w*|breath\w*|chemical\w*|lungs?|cleaner|alkali\w*|acid\w*|caustic|solvents?)\b/i,
    level: 'warning',
    caution:
      'Spray and its vapour ignite and harm eyes and lungs: keep flames, pilots and hot parts away, wear eye protection, air the place, and follow the label.',
    source: 'GHS hazard statement H222, extremely flammable aerosol (from memory)',
  },
  {
    id: 'moving-machine',
    alias: [
      'crush',
      'crushing',
      'moving-parts',
      'pinch',
      'trap',
      'entrapment',
      'impact',
      'shear',
      'falling-load',
      'falling',
    ],
    signals:
      /\b(?:run|cycle|start|jog|operate|close|open|raise|lower)\w*\b[^.;]*\b(?:(?:garage|overhead|roller|powered|automatic|sliding) (?:doors?|shutters?|gates?)|barrier|robot|tail ?lift|platform lift|scissor lift|baler|compactor|press brake|power press)\b|\b(?:run|cycle|let|jog)\w*\b[^.;]*\b(?:doors?|gate|barrier|shutter|robot)\b[^.;]*\b(?:trip|travel|cycle|run|stroke|opens?|closes?|way|times?|move)\b/i,
    not: /\b(?:by hand|manually)\b/i,
    known:
      /\b(?:crush\w*|trap\w*|pinch\w*|fall\w*|moving|moves?|hit\w*|struck|strike\w*|caught|catch\w*|shear\w*|clear of|keep (?:everyone|people|clear|hands)|stand clear|nip\w*)\b/i,
    level: 'warning',
    caution:
      'A machine that moves by power traps and crushes: keep everyone clear of its way, keep a hand on the stop, and follow the maker’s manual.',
    source: KINDS,
  },
  {
    id: 'heavy-part',
    alias: ['lifting', 'strain', 'heavy', 'manual-handling', 'back', 'crush', 'falling', 'drop', 'weight'],
    signals:
      /\b(?:lift|carry|lower|slide|heave|haul|manhandle|hold|support|drag|pull|take|draw|set|stand|put|tip|ease)\w*\b[^.;]*\b(?:heavy|(?:[12]\d|[3-9]\d|\d{3}) ?(?:kg|kilos?|kilograms?)|(?:[4-9]\d|\d{3}) ?(?:lbs?|pounds))\b|\b(?:lift|carry|heave|haul|manhandle|tip|tilt|hoist|lower|slide|roll|turn)\w*\b[^.;]*\b(?:with (?:a|two|another|the|your) (?:helper|second person|colleague|mate|buddy|partner|friend|pal|assistant|workmate|people|person|others?)|between (?:(?:the )?two of you|two people|you)|together with)\b/i,
    not: /\b(?:pounds? (?:foot|feet|inch)|test weight|heavy[- ]duty)\b/i,
    known:
      /\b(?:heav\w*|lift\w*|strain\w*|back\b|weigh\w*|helper|two people|second person|hoist|crush\w*|drop\w*|fall\w*|kg|kilos?)\b/i,
    level: 'caution',
    caution:
      'A heavy part strains the back and crushes toes when it drops: lift it with a second person or a lifting aid, close to the body, with safety shoes on.',
    source: `${KINDS}; ISO 11228-1 on lifting by hand (from memory)`,
  },
  {
    id: 'hot-work',
    alias: ['fire', 'burn', 'burns', 'heat', 'hot-surface', 'flame'],
    signals:
      /\b(?:blow ?torch|(?:propane|gas|brazing|cutting|oxy-?acetylene|soldering) torch|braz(?:e|ing)|weld(?:ing)?\b(?! (?:seam|bead|nut|stud))|(?:heat|warm|shrink)\w*\b[^.;]*\b(?:torch|heat gun|hot[- ]air gun|flame|burner)|flame[- ]?cut\w*|roofing torch)\b/i,
    not: /\b(?:inspect|check|look at|torch light|flashlight)\b/i,
    known: /\b(?:fire|ignit\w*|flames?|burn\w*|extinguisher|combustible|sparks?|hot|heat|fire ?watch|flammable)\b/i,
    level: 'warning',
    caution:
      'Flame and sparks set things on fire and burn skin: clear away what burns, keep an extinguisher at hand, wear gloves and eye protection, and look again half an hour later.',
    source: 'NFPA 51B on fire watch after hot work (from memory)',
  },
  {
    id: 'embers',
    alias: ['fire', 'burn', 'ash', 'hot-ash', 'hot-surface'],
    signals:
      /\b(?:(?:scoop|shovel|vacuum|empty|remove|sweep|rake|tip|carry)\w*\b[^.;]*\b(?:hot |warm )?(?:ash(?:es)?|embers|cinders|clinker))\b/i,
    not: /\b(?:cold ash|wash|ash vacuum)\b/i,
    known:
      /\b(?:fire|embers?|ignit\w*|burn\w*|glow\w*|smou?lder\w*|hot|metal (?:pail|bucket|bin|container)|ash vacuum)\b/i,
    level: 'warning',
    caution:
      'Embers glow in ash for days and can set the house on fire: let it go cold, use only a metal container with a lid, and keep it outdoors.',
    source: PRACTICE,
  },
  {
    id: 'asphyxiant',
    alias: ['asphyxiation', 'suffocation', 'oxygen', 'cold-burn', 'frostbite', 'gas'],
    signals:
      /\b(?:dry ice|liquid nitrogen|nitrogen (?:bottle|cylinder|purge|regulator)|purge\b[^.;]*\bnitrogen|carbon dioxide (?:bottle|cylinder|line|regulator)|co2 (?:bottle|cylinder|line|regulator)|argon|inert gas|halon)\b/i,
    known: /\b(?:suffocat\w*|asphyx\w*|oxygen|argon|nitrogen|carbon dioxide|co2|helium|gas|frost\w*)\b/i,
    level: 'warning',
    caution:
      'This gas pushes out the air you breathe and kills without a sign: air the place, secure the cylinder, and keep to the rules for gases under pressure.',
    source: PRACTICE,
  },
  {
    id: 'tyre-burst',
    alias: ['explosion', 'burst', 'pressure', 'projectile'],
    signals:
      /\b(?:inflate|pump up|seat the bead|mount the tyre|mount the tire|demount|break the bead|deflate)\w*\b[^.;]*\b(?:tyres?|tires?|bead|rim)\b|\bsplit rim\b/i,
    equipment:
      /\b(?:truck|lorry|bus|tractor|trailer|forklift|loader|excavator|grader|split rim|wheelbarrow|aircraft)\b/i,
    known: /\b(?:burst\w*|explo\w*|pressure|cage|stand (?:clear|aside|to)|fl(?:y|ies)|blow\w*)\b/i,
    level: 'warning',
    caution:
      'A tyre or rim that bursts kills: inflate it in a cage or from beside the tread with a clip-on chuck, and never over the maker’s pressure.',
    source: 'OSHA 29 CFR 1910.177 on servicing rim wheels (from memory)',
  },
  {
    id: 'slip',
    alias: ['slipping', 'fall', 'falling', 'trip', 'wet-floor'],
    signals: /\b(?:wet|slippery|greasy|icy) floor\b|\b(?:spill|spilt|spilled)\b[^.;]*\bfloor\b/i,
    not: /\b(?:wipe|mop|dry|clean|absorb|soak)\w*\b/i,
    known: /\b(?:slip\w*|fall\w*|wet|mop\w*|wipe)\b/i,
    level: 'caution',
    caution: 'A wet floor throws people off their feet: wipe up at once and keep others away until it is dry.',
    source: KINDS,
  },
  {
    id: 'biological',
    alias: ['infection', 'hygiene', 'biohazard', 'legionella', 'mould', 'mold', 'contamination', 'bacteria'],
    signals:
      /\b(?:droppings|bird nest|rodent|mouse nest|black mou?ld|slime|blood|body fluids?|used instruments|contaminated (?:instruments|load|linen)|legionella|soiled|waste tank|cassette toilet|faeces|urine)\b/i,
    known:
      /\b(?:infect\w*|germs?|bacteria|legionella|mou?ld|disease|hygiene|gloves?|disinfect\w*|breath\w*|mask|sick\w*|wash)\b/i,
    protection: /\bgloves?\b/i,
    level: 'caution',
    caution:
      'This carries germs: wear gloves and, where it can splash or dust, goggles and a mask; wash before you eat or smoke.',
    source: KINDS,
  },
  {
    id: 'sewer-gas',
    alias: ['toxic-gas', 'asphyxiation', 'suffocation', 'gas', 'explosion'],
    signals:
      /\b(?:sewer gas|hydrogen sulfide|hydrogen sulphide|methane|(?:open|lift|remove|slide)\w*\b[^.;]*\b(?:manhole|septic tank|cess ?pit|wet well))\b/i,
    known: /\b(?:gas(?:es)?|suffocat\w*|asphyx\w*|explo\w*|fumes|breathe|breathing)\b/i,
    level: 'warning',
    caution:
      'Gas in a sewer or a pit can knock out within breaths and explode: air it, keep your face back, allow no flame, and never go in.',
    source: PRACTICE,
  },
  {
    id: 'flammable-liquid',
    alias: ['fire', 'flammable', 'vapour', 'vapor', 'explosion', 'solvent', 'fumes'],
    signals:
      /\b(?:isopropyl|isopropanol|ethanol|denatured alcohol|methylated|meths|(?:rubbing|cleaning) alcohol|white spirit|mineral spirits|turpentine|turps|acetone|(?:paint|lacquer|cellulose) thinners?|toluene|xylene|naphtha|lighter fluid|heptane|hexane|contact (?:adhesive|cement)|pvc cement|solvent cement|lacquer|petroleum spirit|panel wipe)\b/i,
    not: /\b(?:swab|cotton bud|drop of|dab|thermal paste|contacts?|lens|screen|wipes?|paraffin wax|dispos\w*|collection|wiped? the (?:old )?paste)\b/i,
    known: /\b(?:fire|ignit\w*|flam\w*|flash\w*|burn\w*|sparks?|vapou?rs?|smok\w*|explo\w*|heat source)\b/i,
    level: 'warning',
    caution:
      'Its vapour catches fire from a spark: keep flames, sparks and hot parts away, air the place, and close the bottle.',
    source: 'GHS hazard statement H225, highly flammable liquid and vapour (from memory)',
  },
  {
    id: 'thrown-objects',
    alias: ['thrown-object', 'flying-objects', 'flying-parts', 'debris', 'projectile', 'flying-debris', 'eye-injury'],
    signals: /\b(?:throw|throws|thrown) (?:stones?|gravel|debris)\b/i,
    known: /\b(?:throw\w*|thrown|fl(?:y|ies|ying)|stones?|debris|eyes?|glasses|goggles|gravel)\b/i,
    level: 'warning',
    caution:
      'A running blade throws stones and pieces like bullets: keep everybody away, guards down, eye protection on.',
    source: KINDS,
  },
  {
    id: 'noise',
    alias: ['hearing', 'ear', 'hearing-loss', 'deafness', 'eye-and-ear'],
    signals: /\b(?:jack ?hammer|needle gun|impact wrench on|shoot|gunshot)\b/i,
    known: /\b(?:hearing|ears?|deaf\w*|muffs?|defenders|ear ?plugs?|noise|loud)\b/i,
    protection: /\b(?:ear (?:muffs?|defenders|plugs?)|earplugs|muffs|hearing protection|eye and ear|helmet)\b/i,
    level: 'caution',
    caution: 'It is loud enough to harm hearing for good: wear ear muffs or plugs, and so does whoever stands by.',
    source: 'EU directive 2003/10/EC: hearing protection from 85 dB(A) (from memory)',
  },
  {
    id: 'pinch',
    alias: ['pinching', 'crush', 'trap', 'entrapment', 'nip'],
    signals: /\b(?:fold|unfold|collapse)\w*\b[^.;]*\b(?:wheelchair|frame|bed|table|ladder|pram|stroller)\b/i,
    known: /\b(?:pinch\w*|trap\w*|crush\w*|nip\w*|fingers?)\b/i,
    level: 'caution',
    caution:
      'Parts that fold or run together pinch fingers: move them by the place the maker shows and keep hands out of the gap.',
    source: KINDS,
  },
]
