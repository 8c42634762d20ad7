import type { Hazard } from './hazard'
import { on, PRACTICE } from './hazards-deed-words'

/** What burns, fumes, poisons and infects. See hazards-deeds.ts. */
export const DEEDS_OF_STUFF: readonly Hazard[] = [
  {
    id: 'cell-acid',
    alias: ['acid', 'electrolyte', 'chemical', 'burn', 'corrosive'],
    signals: on('(?:top|fill|water|refill)', 'cells?|batter(?:y|ies)'),
    equipment: /\blead[- ]acid\b|\b(?:forklift|traction|golf|scrubber|starter|standby)\b/i,
    not: /\b(?:lithium|gel|sealed)\b/i,
    known: /\b(?:acid|electrolyte|splash\w*|blind\w*|caustic)\b/i,
    level: 'warning',
    caution:
      'Battery acid burns skin and blinds: wear goggles, acid-proof gloves and an apron, and have water for the eyes at hand.',
    source: PRACTICE,
  },
  {
    id: 'first-heat-fumes',
    alias: ['fumes', 'smoke', 'vapour', 'inhalation'],
    signals:
      /\b(?:fire|heat|burn|cure|bake|warm)\w*\b[^.;]*\b(?:empty (?:kiln|oven|furnace)|new (?:element|elements|lining|coating|paint)|first (?:firing|time|fire)|fresh (?:paint|enamel))\b/i,
    known: /\b(?:fumes?|smok\w*|vapou?rs?|ventilat\w*|windows?|breath\w*|lungs?|stay out)\b/i,
    level: 'caution',
    caution:
      'What is heated for the first time gives off fumes that irritate eyes and lungs: open the windows and stay out of the room.',
    source: PRACTICE,
  },
  {
    id: 'acid-skin',
    alias: ['acid', 'chemical', 'corrosive', 'burn', 'chemical-burn', 'caustic'],
    signals: on(
      '(?:pour|add|mix|dilute|measure|dose|tip|fill|draw|decant)',
      'acid|caustic|lye|descaler|drain cleaner|hypochlorite|bleach',
    ),
    not: /\b(?:waste|spent|collection|dispos\w*|rinse|neutrali\w*|empty|drum for)\b/i,
    known: /\b(?:skin|eyes?|blind\w*|burns?|splash\w*|goggles|gloves|face)\b/i,
    level: 'warning',
    caution:
      'It burns skin and can blind: wear goggles, long gloves and an apron, and have water for the eyes at hand.',
    source: 'GHS hazard statement H314 (from memory)',
  },
  {
    id: 'acid-fumes',
    alias: ['fumes', 'toxic-gas', 'gas', 'vapour', 'inhalation', 'chemical-fumes'],
    signals: on(
      '(?:pour|add|mix|dilute|measure|dose|tip|decant)',
      '(?:muriatic|hydrochloric|nitric|strong|concentrated|mixed)?\\s*acid|bleach|hypochlorite|ammonia|descaler',
    ),
    not: /\b(?:down the (?:sink|drain|toilet|gully)|waste|spent|collection|dispos\w*|rinse|citric|vinegar|neutrali\w*|empty|drum for)\b/i,
    known:
      /\b(?:fumes?|vapou?rs?|gas(?:es)?|breath\w*|lungs?|ventilat\w*|windows?|air the|airing|upwind|inhal\w*|chok\w*|mask)\b/i,
    level: 'warning',
    caution: 'Its fumes burn the lungs: air the place, stand upwind, and keep your face away from the opening.',
    source: PRACTICE,
  },
  {
    id: 'acid-mixing',
    alias: ['mixing', 'reaction', 'chemical-reaction', 'toxic-gas', 'splash'],
    signals: on(
      '(?:pour|add|mix|dilute|measure|dose|tip)',
      '(?:muriatic|hydrochloric|sulphuric|sulfuric|nitric|phosphoric|strong|concentrated|mixed)?\\s*acid|hypochlorite|bleach',
    ),
    not: /\b(?:waste|spent|collection|dispos\w*|rinse|citric|vinegar|empty|drum for)\b/i,
    known:
      /\b(?:mix\w*|acid (?:in)?to (?:the )?water|water (?:in)?to (?:the )?acid|water first|never pour water|together|both|meets?|contact with|chlorine|with (?:vinegar|bleach|acid|ammonia)|boils? up|spits?)\b/i,
    level: 'warning',
    caution:
      'Mixed the wrong way it spits or gives off poison gas: acid goes into water, never water into acid, and never acid with chlorine.',
    source: PRACTICE,
  },
  {
    id: 'solder-smoke',
    alias: ['fumes', 'smoke', 'inhalation', 'flux'],
    signals: /\bsolder(?:s|ing)?\b(?! (?:wick|pump|sucker|iron (?:stand|off)|joint))/i,
    not: /\b(?:inspect|check|look|remove|clean)\b/i,
    known: /\b(?:smok\w*|fumes?|breath\w*|ventilat\w*|extract\w*|lungs?|window|fan)\b/i,
    level: 'caution',
    caution: 'Flux smoke irritates the lungs: draw it off or air the place, and keep your head out of it.',
    source: PRACTICE,
  },
  {
    id: 'solder-burn',
    alias: ['burn', 'burns', 'hot-surface', 'heat'],
    signals: /\b(?:de)?solder(?:s|ing)?\b(?! (?:wick|pump|sucker|joint))/i,
    not: /\b(?:inspect|check|look|clean)\b/i,
    known: /\b(?:burn\w*|hot|iron|degrees|°)\b/i,
    level: 'caution',
    caution: 'The iron is over 300 °C and burns at a touch: keep it in its stand and let joints cool.',
    source: PRACTICE,
  },
  {
    id: 'ash-embers',
    alias: ['embers', 'fire', 'hot-ash', 'burn'],
    signals: /\b(?:scoop|shovel|vacuum|empty|rake|tip|carry|sweep|brush)\w*\b[^.;]*\b(?:ash(?:es)?|cinders|clinker)\b/i,
    not: /\b(?:cold|wash|garden|flower|household waste|bag)\b/i,
    known: /\b(?:embers?|glow\w*|fire|hot|smou?lder\w*|ignit\w*|burns?)\b/i,
    level: 'warning',
    caution: 'Embers glow in ash for days: let it go cold, use a metal bucket with a lid, and keep it outdoors.',
    source: PRACTICE,
  },
  {
    id: 'lamp-glass',
    alias: ['mercury', 'broken-glass', 'glass', 'cut', 'mercury-glass'],
    signals: on(
      '(?:slip|draw|pull|unscrew|twist|take|slide|ease|lift|remove)',
      '(?:old |spent |uv |fluorescent |mercury |discharge )*(?:lamps?|tubes?)',
    ),
    equipment: /\b(?:uv|ultraviolet|fluorescent|mercury|sunbed|steriliser|sterilizer|clarifier|curing)\b/i,
    not: /\b(?:inner|holder|socket|seal|torch)\b/i,
    known: /\b(?:mercury|glass|break\w*|broken|shatter\w*|shards?|splinters?)\b/i,
    level: 'caution',
    caution:
      'A lamp that breaks cuts and lets out mercury: hold it in a thick cloth, never force it, and air the room if it breaks.',
    source: PRACTICE,
  },
  {
    id: 'mercury',
    alias: ['poison', 'toxic', 'vapour'],
    signals: on('(?:twist|take|lift|open|remove|unscrew|change|swap|empty)', 'canister|sludge|amalgam'),
    equipment: /\bamalgam\b/i,
    known: /\b(?:mercury|vapou?r|poison\w*|toxic)\b/i,
    level: 'warning',
    caution: 'Amalgam sludge gives off mercury: keep it upright and closed, wear gloves and a mask, air the room.',
    source: PRACTICE,
  },
  {
    id: 'germs',
    alias: ['infection', 'biological', 'biohazard', 'hygiene', 'body-fluids'],
    signals: on(
      '(?:wipe|clean|unclip|open|take|twist|unscrew|strip|raise|pull|lift|press|sort)',
      'touch surfaces?|frame|panel|canister|mattress|castors?|suction \\w+|filter|trap|bowl|cushion|seat|handles?|brakes?|disinfectant wipes?',
    ),
    equipment:
      /^(?!.*\b(?:autoclave|steri[lz]i[sz]er)).*\b(?:care beds?|hospital|patient|dental|amalgam|bedpan|commode|toilet|mortuary|ambulance|nursing|endoscop\w*)\b/i,
    known: /\b(?:infect\w*|germs?|bacteria|virus\w*|disease|ill|illness|blood|saliva|body fluids?|soiled|hygien\w*)\b/i,
    level: 'caution',
    caution: 'What people have used carries germs: wear gloves, wipe it down first, wash your hands after.',
    source: PRACTICE,
  },
  {
    id: 'self-heating',
    alias: ['fire', 'spontaneous-combustion', 'ignition'],
    signals:
      /\b(?:overspray|paint(?:ed)?|lacquer|linseed|oily|oil-soaked|solvent)\b[^.;]*\b(?:filters?|rags?|cloths?|waste|dust)\b|\b(?:roll|stuff|heap|bag|stack|bundle)\w*\b[^.;]*\bfilters?\b/i,
    equipment: /\b(?:spray booth|paint|lacquer|varnish|linseed|oil finish|powder coat\w*)\b/i,
    known:
      /\b(?:self-heat\w*|heats? (?:up|by)|in a heap|ignit\w* by|by (?:itself|themselves)|spontaneous\w*|smou?lder\w*)\b/i,
    level: 'warning',
    caution:
      'Overspray and oily rags heap up heat and catch fire by themselves: wet them and lid them in metal at once.',
    source: PRACTICE,
  },
  {
    id: 'stone-dust',
    alias: ['dust', 'silica', 'inhalation', 'lungs'],
    signals:
      /\b(?:dress|grind|sand|chase|drill|saw|cut)\w*\b[^.;]*\b(?:grinding wheel|wheel|stone|concrete|brick|mortar|plaster|tiles?|render)\b/i,
    not: /\b(?:wet|water|wheel (?:nut|stud|bolt|arch)|address)\b/i,
    known: /\b(?:dust|masks?|respirators?|breath\w*|lungs?|inhal\w*|silica)\b/i,
    protection: /\b(?:dust mask|respirator|P[23]\b|FFP\d)\b/i,
    level: 'caution',
    caution: 'Stone dust stays in the lungs for good: wear a dust mask and draw it off or wet it.',
    source: PRACTICE,
  },
  {
    id: 'sparks-fire',
    alias: ['fire', 'hot-work', 'ignition', 'burn'],
    signals:
      /\b(?:weld|braze|tack|gouge|flame-cut|preheat)\w*\b(?=[^.;]*\b(?:joints?|brackets?|guide|cracks?|places|compressor|drier|upright|silencer|pipe|box|plate|ends|torch|runs?|all round)\b)|\b(?:heat|warm|shrink)\w*\b[^.;]*\b(?:torch|blowlamp|flame)\b|\bgrind\w*\b[^.;]*\b(?:off|out|back|away)\b|\b(?:slice|cut|saw)\w*\b[^.;]*\b(?:disc cutter|angle grinder|cut-off saw|cutting disc|cutting torch)\b/i,
    not: /\b(?:check|inspect|look|wet|water on)\b/i,
    known:
      /\b(?:fire|ignit\w*|flam\w*|extinguisher|sparks?|combustible|smou?lder\w*|fuel|petrol|burns? down|catches|alight|set light)\b/i,
    level: 'warning',
    caution:
      'Sparks and flame set light to what is near: clear away what burns, keep an extinguisher by, look again half an hour later.',
    source: PRACTICE,
  },
]
