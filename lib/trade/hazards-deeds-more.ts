import type { Hazard } from './hazard'
import { HANDS, on, PRACTICE } from './hazards-deed-words'

/** Deeds of several kinds that the other files leave out. See hazards-deeds.ts. */
export const MORE_DEEDS: readonly Hazard[] = [
  {
    id: 'dust-explosion',
    alias: ['explosion', 'dust-fire', 'fire', 'deflagration'],
    signals: on(
      '(?:vacuum|empty|blow|sweep|brush|shake|knock|suck)',
      'flour|wood dust|sawdust|sander dust|sanding dust|dust bag|sugar|grain dust|malt dust|cocoa|starch|aluminium dust|magnesium dust',
    ),
    equipment:
      /\b(?:flour|bak\w+|dough|mill|malt|grain|sugar|cocoa|starch|sander|sanding|saw|planer|wood|joinery|dust (?:collector|extractor)|powder)\b/i,
    known: /\b(?:flam\w*|ignit\w*|explo\w*|spark\w*|flash\w*|fire|smok(?:e|ing)|alight)\b/i,
    level: 'warning',
    caution: 'Such dust flashes and burns in a cloud: no flame or spark near it, stir up none, empty it in the open.',
    source: 'ISO/IEC 80079-20-2 on combustible dusts (from memory)',
  },
  {
    id: 'bottle-topples',
    alias: ['tipping', 'tip-over', 'falling', 'gas-cylinder', 'crush', 'projectile', 'pressure'],
    signals:
      /\b(?:wheel|roll|carry|set|stand|lift|swap|change|exchange|bring|walk|move)\w*\b[^.;]*\b(?:(?:gas |full |empty |new |old |co2 |carbon dioxide |nitrogen |oxygen |argon |helium |acetylene )+(?:bottle|cylinder))\b/i,
    not: /\b(?:hydraulic|master|slave|wheel cylinder|brake|spray|water bottle|engine|butane|valve)\b/i,
    known:
      /\b(?:falls?|falling|topples?|toppling|tips?\b|tipping|goes over|knock\w*|chain\w*|strap\w*|secur\w*|upright|snaps?|neck|rocket|crush\w*)\b/i,
    protection: /\b(?:chain|strap|lash|secure)\w*\b[^.;]*\b(?:bottle|cylinder)\b/i,
    level: 'warning',
    caution:
      'A gas bottle that falls crushes feet, and its neck can snap and drive it off: cap on, wheel it on its trolley, chain it before it is let go.',
    source: PRACTICE,
  },
  {
    id: 'open-steam',
    alias: ['steam', 'scald', 'hot-surface', 'burn', 'hot-water', 'pressure'],
    signals: /\b(?:open|raise|lift|crack|swing)\w*\b[^.;]*\b(?:hood|lid|door|hatch)\b/i,
    equipment:
      /\b(?:dishwasher|glass ?washer|steam\w*|steri[lz]i[sz]er|autoclave|pressure cooker|kettle|copper|retort|combi oven|bratt pan|boiling pan|washer[- ]disinfector)\b/i,
    not: /\b(?:cabinet|panel|service|cupboard|room|side|rear|window|outside|front)\b/i,
    known: /\b(?:steam\w*|scald\w*|hot|burn\w*|boil\w*|vapour|degrees|°)\b/i,
    level: 'warning',
    caution: 'Steam from under it scalds face and arms: stand back, open it a crack and let it go first.',
    source: PRACTICE,
  },
  {
    id: 'arc-light',
    alias: ['radiation', 'arc', 'arc-eye', 'uv', 'ultraviolet', 'eye-injury'],
    signals:
      /^(?:then |now )?(?:weld|tack|strike (?:an?|the) arc|run (?:a|one|two|three) (?:test |short )?beads?|lay (?:a|one) bead)\b/i,
    equipment: /\b(?:mig|tig|mag|arc|stick|weld\w*)\b/i,
    not: /\b(?:inspect|plastic|spot|gas welding)\b/i,
    known: /\b(?:arc\b|eyes?|blind\w*|flash|helmet|visor|screen|uv|ultraviolet|radiation|glare)\b/i,
    level: 'warning',
    caution: 'The arc burns eyes and skin: helmet down, gauntlets on, a screen between it and everyone else.',
    source: PRACTICE,
  },
  {
    id: 'broken-strands',
    alias: ['sharp', 'cut', 'cuts', 'puncture', 'wire'],
    signals:
      /\b(?:feel|run|draw|wipe|pull|slide|follow|go)\w*\b[^.;]*\b(?:wire ropes?|steel ropes?|hoist ropes?|haul ropes?|lift(?:ing)? cables?|steel cables?|cable over|cables? (?:for|over|along|between))\b/i,
    not: /\b(?:electric|bowden|brake|heater|power|data|flex|trunking|duct|gland)\b/i,
    known: /\b(?:strands?|cuts?|sharp|prick\w*|pierc\w*|gloves|rip\w*|stab\w*|hook\w*)\b/i,
    level: 'caution',
    caution: 'Broken strands stab and rip hands: leather gloves on, and feel with a rag, never along a moving rope.',
    source: PRACTICE,
  },
  {
    id: 'strip-edge',
    alias: ['sharp', 'sharp-edge', 'cut', 'cuts', 'laceration'],
    signals: on(
      '(?:pry|prise|hook|unhook|pull|lift|draw|ease|peel|bend|click|push|slide)',
      '(?:aluminium|aluminum|steel|zinc|tin|metal|brass|copper) (?:strips?|trims?|profiles?|flashing|bars?|bands?|sheets?|covers?|slats?|foil|cappings?)|(?:worn|burred|bent|damaged) slats?|strapping|banding|blanket bars?',
    ),
    not: /\b(?:plastic|rubber|tape|scrap)\b/i,
    known: /\b(?:edges?|sharp|cuts?|slic\w*|gash\w*|burrs?|cut-(?:proof|resistant)|gloves)\b/i,
    protection: /\b(?:cut[- ](?:proof|resistant)|work gloves|leather gloves)\b/i,
    level: 'caution',
    caution: 'Thin metal has edges like knives: wear cut-resistant gloves and hold it flat.',
    source: PRACTICE,
  },
  {
    id: 'lamp-breaks',
    alias: ['sharp', 'glass', 'cut', 'cuts', 'broken-glass', 'flying-parts', 'burst'],
    signals: on(
      '(?:pull|unscrew|twist|draw|take|wiggle|ease|turn)',
      '(?:dead|burnt[- ]out|burned[- ]out|blown|halogen|xenon|oven|projector|discharge|broken) (?:lamps?|bulbs?|tubes?)',
    ),
    not: /\b(?:led|inner|holder|socket|torch|test)\b/i,
    known: /\b(?:glass|break\w*|broken|shatter\w*|shards?|splinters?|burst\w*|explo\w*|cuts?)\b/i,
    level: 'caution',
    caution: 'A lamp that breaks in the hand cuts it: let it cool, hold it in a thick cloth, wear glasses.',
    source: PRACTICE,
  },
  {
    id: 'melt-fumes',
    alias: ['fumes', 'fume', 'smoke', 'inhalation', 'vapour', 'toxic-fumes'],
    signals:
      /\b(?:melt|weld|burn off|hot-knife|heat|iron)\w*\b[^.;]*\b(?:wax|plastic|pvc|bitumen|tar|lead|pewter|resin|rubber|foam|hot[- ]melt|polyethylene)\b/i,
    not: /\b(?:water bath|shrink|candle)\b/i,
    known: /\b(?:fumes?|smok\w*|vapou?rs?|ventilat\w*|extract\w*|windows?|breath\w*|lungs?|air the|outdoors)\b/i,
    level: 'caution',
    caution:
      'What melts or scorches gives off fumes that harm the lungs: draw them off or air the place, and don’t overheat it.',
    source: PRACTICE,
  },
  {
    id: 'fire-in-room',
    alias: ['carbon-monoxide', 'fumes', 'smoke', 'suffocation', 'poisoning', 'exhaust-gas'],
    signals:
      /\b(?:light|kindle|fire up|relight|burn in|stoke)\b[^.;]*\b(?:it|fire|kindling|stove|oven|burner|heater|pilot|charcoal|coals?|logs?|flame|grill|smoker|boiler)\b/i,
    equipment:
      /\b(?:stove|wood[- ]?(?:fired|burn\w*)|fireplace|charcoal|pellet|paraffin|kerosene|oil[- ]fired|cabinet heater|room heater|gas (?:fire|heater|boiler)|water heater|tandoor|smoker|sauna)\b/i,
    not: /\b(?:outdoors|outside|indicator|lamp|led|torch)\b/i,
    known:
      /\b(?:carbon monoxide|\bco\b|fumes?|smok\w*|poison\w*|alarm|suffocat\w*|flue|window|breath\w*|nod off|never wake|asphyxiat\w*|air (?:up|out|the)|ventilat\w*)\b/i,
    level: 'warning',
    caution:
      'A fire that draws badly fills the room with carbon monoxide, which kills unnoticed: flue clear, damper and a window open, an alarm in the room.',
    source: PRACTICE,
  },
  {
    id: 'shut-in',
    alias: ['cold', 'entrapment', 'freezing', 'suffocation', 'trap'],
    signals: new RegExp(
      `\\b(?:block|wedge|prop|shut|close|go in|step in|enter)\\w*\\b[^.;]*\\b(?:door|room|inside)\\b|\\b${HANDS}\\w*\\b[^.;]*\\binside release\\b`,
      'i',
    ),
    equipment: /\b(?:walk-in|cold ?room|freezer room|cold store|blast (?:chiller|freezer)|strong ?room|vault)\b/i,
    known: /\b(?:shut in|locked in|trapped|inside|freez\w*|release|alone|colleague|wedge|tell someone|cold kills)\b/i,
    protection: /\b(?:block|wedge|prop)\w*\b[^.;]*\bdoor\b/i,
    level: 'danger',
    caution: 'Whoever is shut in can freeze or suffocate: wedge the door, tell somebody, try the inside release first.',
    source: 'EN 378 and local rules on cold rooms (from memory)',
  },
  {
    id: 'flywheel-swing',
    alias: ['stored-energy', 'crush', 'moving-parts', 'rotating-parts', 'unexpected-movement'],
    signals: on(
      '(?:pin|drop|push|pull|roll|turn|bar|block|wedge|lock|unlock|swing)',
      'flywheel|plunger|swing arm|crank ?shaft by hand|balance wheel',
    ),
    equipment: /\b(?:baler|press|shear|punch|forging|stamping|guillotine|compactor|steam engine|splitter)\b/i,
    known: /\b(?:flywheel|swing\w*|plunger|rolls? (?:on|over|back)|pin\b|arm off|crush\w*|stored)\b/i,
    level: 'danger',
    caution: 'A flywheel that swings on drives the tool through: pin or block it before a hand goes in.',
    source: PRACTICE,
  },
  {
    id: 'used-aid',
    alias: ['infection', 'biological', 'germs', 'hygiene'],
    signals: on(
      '(?:wipe|clean|disinfect|wash)',
      'disinfectant wipes?|frame|seat|cushion|push handles|armrests?|headrest|sling|straps?',
    ),
    equipment:
      /\b(?:wheelchairs?|walking frames?|rollators?|crutches|patient (?:hoist|lift)|commode|hearing aids?|cpap)\b/i,
    not: /\b(?:grease|oil|axle|swarf)\b/i,
    known: /\b(?:infect\w*|germs?|bacteria|virus\w*|disease|ill\b|illness|hygien\w*|soiled|disposable)\b/i,
    level: 'caution',
    caution: 'What people have used carries germs: wear disposable gloves, wipe it down first, wash your hands after.',
    source: PRACTICE,
  },
]
