import type { Hazard } from './hazard'

const PRACTICE = 'common practice, no source'

/** What hurts by what it is made of: fuel, gas, chemicals, dust. See hazards.ts. */
export const SUBSTANCES: readonly Hazard[] = [
  {
    id: 'fuel',
    alias: ['fire', 'explosion', 'fuel-vapour', 'fuel-vapor', 'flammable', 'vapour', 'fumes'],
    hints: /\b(?:petrol|gasoline|fuel (?:tap|valve|cock)|carburett?or)\b/i,
    signals:
      /\b(?:(?:drain|fill|refuel|empty|pour|siphon|syphon|disconnect|remove|loosen|undo|detach|crack|pull|take off|open|clean|uncouple|replace|unscrew|bleed|slacken)\w*\b[^.;]*\b(?:fuel|petrol|gasoline|diesel|carburett?or|kerosene)|fuel (?:filter|line|hose|pump|rail|tank|bowl)|carburett?or bowl|float bowl)\b/i,
    not: /\b(?:fuel (?:valve|tap|cock)\b(?!.*\b(?:drain|remove|disconnect))|piece of fuel (?:line|hose))/i,
    known:
      /\b(?:fuel|petrol|gasoline|diesel|vapou?rs?|flammable|ignit\w*|sparks?|naked flames?|flames?|smok\w*|fire|explo\w*)\b/i,
    level: 'danger',
    caution:
      'Fuel and its vapour ignite easily and can burn or kill: keep flames, sparks and hot parts away, work in the open air, and follow the maker’s manual.',
    source: PRACTICE,
  },
  {
    id: 'carbon-monoxide',
    alias: ['exhaust', 'asphyxiation', 'toxic-gas', 'fumes'],
    signals: /\b(?:start|run|warm|idle|rev|crank|fire up)\b[^.;]*\b(?:engine|generator)\b/i,
    not: /\b(?:stop|off|electric|before (?:you )?(?:start|run))/i,
    known: /\b(?:carbon monoxide|exhaust|outdoors|outside|ventilat\w*|fumes|indoors|open air|extraction)\b/i,
    protection:
      /\b(?:outdoors|outside|open air|ventilat\w*|extraction|exhaust hose|open (?:the )?(?:garage )?doors?)\b/i,
    level: 'danger',
    caution:
      'Exhaust gas carries carbon monoxide, which kills without warning: run the engine outdoors or with the exhaust led outside, as the maker’s manual says.',
    source: PRACTICE,
  },
  {
    id: 'chemical',
    alias: [
      'chemical-burn',
      'toxic',
      'toxic-gas',
      'poison',
      'corrosive',
      'fumes',
      'solvent',
      'caustic',
      'acid',
      'irritant',
      'vapour',
      'chemicals',
      'inhalation',
      'skin',
      'skin-contact',
      'eye',
      'eye-injury',
      'flammable',
      'splash',
    ],
    signals:
      /\b(?:acid|caustic|bleach|solvents?|descaler|degreaser|brake cleaner|carb(?:urett?or)? cleaner|parts cleaner|thinners?|acetone|chlorine|ammonia|drain cleaner|paint stripper|oven cleaner|group cleaner|alkaline cleaner|epoxy|isocyanate|lye|sodium hydroxide|battery acid|biocide|toluene|xylene|methylene|rust remover|brake fluid|antifreeze|coolant|pesticide)\b/i,
    not: /\b(?:citric|acid-free|coolant (?:hose|level|cap|pump|line|pipe)|antifreeze tester|non-toxic|rv antifreeze|solvent-free|neutralis\w*|neutraliz\w*|dispos\w*|collection|take the|(?:used|old|waste|drained) (?:coolant|solvent|brake fluid|antifreeze))\b/i,
    known:
      /\b(?:acids?|acidic|caustic|chemicals?|solvents?|fumes?|vapou?rs?|poison\w*|toxic|corrosive|corrod\w*|splash\w*|cleaner|descaler|bleach|chlorine|ammonia|coolant|antifreeze|brake fluid|degreaser|epoxy|paint|thinners?|data sheet|ventilat\w*|goggles|gloves?|flammable|irritat\w*)\b/i,
    protection: /\b(?:gloves?|goggles|face shield|respirator|ventilat\w*|eye protection|safety glasses)\b/i,
    level: 'warning',
    caution:
      'This chemical can harm skin, eyes and lungs: wear gloves and goggles, air the place, never mix it with others, and follow its safety data sheet.',
    source: PRACTICE,
  },
  {
    id: 'dust',
    alias: ['asbestos', 'inhalation', 'carbon-dust', 'silica', 'breathing', 'lung'],
    hints: /\b(?:pads?|shoes|drum)\b/i,
    hintsIn: /\b(?:car|van|truck|lorry|vehicle|tractor|trailer)\b/i,
    signals:
      /\b(?:brake dust|carbon dust|asbestos|silica|(?:sand|grind|saw|cut)(?:ing)? (?:the )?(?:concrete|brick|stone|tile|plaster|drywall|fibreglass|fiberglass|insulation|lead paint|filler|body filler)|sanding dust|soot|glass fibre|toner|(?:dry[- ]?)sand(?:ing)?)\b/i,
    known: /\b(?:dust|masks?|breath\w*|respirators?|inhal\w*|lungs?|fibres?|fibers?)\b/i,
    protection: /\b(?:dust mask|respirator|face mask|extraction|vacuum\w*|wet)\b/i,
    level: 'caution',
    caution:
      'This dust harms the lungs: don’t blow it about, draw it off or wet it, wear a mask of the class the maker or local rules ask for.',
    source: PRACTICE,
  },
  {
    id: 'refrigerant',
    alias: ['frostbite', 'asphyxiation', 'frost', 'cold-burn', 'pressure'],
    signals:
      /\b(?:refrigerant|r-?(?:22|32|134a|290|404a|407c|410a|600a|1234yf)|(?:charging|gauge) manifold|manifold gauges?|recovery (?:machine|unit|cylinder))\b/i,
    known: /\b(?:refrigerant|frost\w*|asphyx\w*|licen[sc]ed?|certified|qualified|cold)\b/i,
    level: 'danger',
    caution:
      'Refrigerant freezes skin, pushes out the air you breathe and some kinds burn: only people certified for it may handle it, by local law; never vent it.',
    source:
      'common practice, no source; licensing by local law, such as EPA section 608 in the United States (from memory)',
  },
  {
    id: 'gas',
    alias: ['explosion', 'fire', 'gas-leak', 'asphyxiation', 'toxic-gas'],
    signals:
      /\b(?:natural gas|propane|lpg|butane|gas (?:line|pipe|hose|valve|cock|supply|burner|regulator|bottle|cylinder|meter|train|jet|manifold|union|connection)|burner (?:jet|tube|manifold))\b/i,
    not: /\bgas (?:strut|spring|shock)\b/i,
    known: /\b(?:gas|leaks?|explo\w*|ignit\w*|flames?|sparks?|fire)\b/i,
    level: 'danger',
    caution:
      'Escaping gas explodes and suffocates: shut it off first, keep flames and sparks away, and leave gas work to those local law licenses for it.',
    source: PRACTICE,
  },
  {
    id: 'confined-space',
    alias: ['asphyxiation', 'oxygen'],
    signals:
      /\b(?:confined space|manhole|(?:enter|climb into|get into|go into) the (?:tank|pit|silo|sump|vessel|duct|crawl ?space|chamber))\b/i,
    known: /\b(?:confined|oxygen|asphyx\w*|air|gas|permit|attendant)\b/i,
    level: 'danger',
    caution:
      'Air in a closed space can kill within breaths: nobody enters without the permit, the gas test and the attendant that local law asks for.',
    source: PRACTICE,
  },
  {
    id: 'sewage',
    alias: ['infection', 'biological', 'hygiene', 'biohazard'],
    signals: /\b(?:sewage|soil pipe|septic|waste ?water|foul (?:drain|water)|macerator)\b/i,
    known: /\b(?:infect\w*|hygiene|wash|gloves?|sewage|germs|bacteria)\b/i,
    protection: /\bgloves?\b/i,
    level: 'caution',
    caution:
      'Waste water carries infection: wear gloves and eye protection, cover cuts, and wash before you eat or smoke.',
    source: PRACTICE,
  },
]
