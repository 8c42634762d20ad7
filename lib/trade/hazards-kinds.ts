import type { HazardContext } from './hazards-context'

const on = (verbs: string, things: string): RegExp => new RegExp(`\\b(?:${verbs})\\w*\\b[^.;]*\\b(?:${things})\\b`, 'i')

/** What hands do to a thing they hold or reach. */
const HANDS =
  'take|lift|pull|slide|draw|ease|remove|unscrew|unbolt|undo|change|swap|replace|renew|fit|set|seat|insert|mount|hold|carry|clean|clear|wipe|scrape|reach|turn|hook|stack|work|prise|push|press|load|dig|pick|gather|grip'
const POURS =
  'pour|mix|dose|dilute|spray|wipe|wash|brush|measure|weigh|empty|decant|top up|fill|add|smear|appl|soak|dip|clean|stir|swab|rub|spread|paint|roll|squirt|dab|flush|prime|coat|ladle|tip|scrub|dissolve'
const ANY = /(?:)/

/**
 * Hazards by kind of thing and kind of deed, whatever the machine or on a whole family of machines: each only hints. General
 * knowledge, no source; kinds of hazard after ISO 12100:2010 annex B (from memory). To teach a kind, extend its row.
 */
export const HAZARD_KINDS: readonly HazardContext[] = [
  {
    hazard: 'sharp',
    machine: ANY,
    signals: on(
      HANDS,
      '(?<!(?:wiper|fan|rotor|turbine|mixer|switch|feeler|putty|squeegee|doctor) )(?:blades?|knife|knives|cutters?)|scalpels?|razors?|cutting (?:discs?|rules?)|plane irons?|wire teeth|broken glass|shards|barbed wire|swarf',
    ),
    not: /\b(?:cover|guard|bolt|nut|clearance|gap|by hand|sharpen|depth|height|pitch|knob|lever|cover|grease|lubric)\w*\b/i,
    isHint: true,
  },
  {
    hazard: 'hot-surface',
    machine:
      /\b(?:furnace|kiln|oven|fuser|laser printer|copier|heat press|foil (?:stamp|block)\w*|hot[- ]melt|perfect binder|solder\w*|rework|reflow|glue gun|3d printer|fryer|griddle|urn|calender|shrink|sealer|sauna|grill|smoker|roaster|projector|stage light|spotlight|followspot|sterili[sz]er|autoclave|popcorn|waffle|crepe|candyfloss|dryer|crematori\w*|incinerator)\b/i,
    signals: on(
      HANDS,
      'fuser|die|platen|crucible|tray|board|tip|nozzle|lamp|bulb|chamber|muffle|mould|grate|hot ?end|sealing (?:bar|jaws?)|heater|gel lamp|glue|kettle|drum cover|rack|stones?',
    ),
    not: /\b(?:paper tray|feed tray|new)\b/i,
    isHint: true,
  },
  {
    hazard: 'rotating-parts',
    machine:
      /\b(?:laminator|calender|mangle|winder|loom|carding|shredder|dough|sheeter|mincer|straightener|pulper|rolling mill|ironer)\b/i,
    signals: on(
      'thread|feed|wrap|lead|guide|clear|scrape',
      'rollers?|nips?|spindle|cylinders?|cutters?|drum|web|film|jam',
    ),
    not: /\b(?:off|unplug|locked|by hand|needle)\b/i,
    isHint: true,
  },
  {
    hazard: 'crush',
    machine:
      /\b(?:press|baler|platen|guillotine|die cutter|compactor|barrier|pinsetter|thermoform\w*|vulcani[sz]er|moulding machine|stage lift)\b/i,
    signals: on(
      'close|press|lower|cycle|jog|reach under|reach between|reach into|feed|inch',
      'platen|ram|bale|boom|deck|die|mould|beam|platform|barrier|jaws|sheet|press',
    ),
    not: /\b(?:by hand|off|button|switch)\b/i,
    isHint: true,
  },
  {
    hazard: 'chemical',
    machine: ANY,
    signals: on(
      POURS,
      'developer|fixer|press wash|solvent inks?|waste ink|ferric chloride|etchants?|mordant|flux remover|conformal coating|hardener|primer|varnish|lacquer|wet cement|mortar|lime(?:wash)?|bleach|biocide|algaecide|fungicide|weedkiller|herbicide|pesticide|insecticide|bitumen|creosote|wood preservative|formalin|peroxide|ammonia|caustic soda|soda lye|lye|oven cleaner|drain cleaner|rust remover|perchloroethylene|trichlor\\w*|beryllia|solder paste|disinfectant|sheep dip|pool acid|hypochlorite|muriatic acid|(?:sul(?:ph|f)uric|nitric|hydrochloric|phosphoric|peracetic|formic|acetic) acid|isocyanate\\w*|polyurethane|two-part',
    ),
    not: /\b(?:wipes?|dry|cured|old paint|bottle of water)\b/i,
    isHint: true,
  },
  {
    hazard: 'flammable-liquid',
    machine: ANY,
    signals: on(
      POURS,
      'isopropyl(?: alcohol)?|meths|methylated spirits?|ethanol|acetone|white spirit|turps|turpentine|cellulose thinners?|naphtha|heptane|lighter fluid|(?:press|blanket) wash|contact adhesive|nitro lacquer',
    ),
    not: /\b(?:wipes?|pads?)\b/i,
    isHint: true,
  },
  {
    hazard: 'height',
    machine: ANY,
    signals:
      /\b(?:at|from|to|on|up) the (?:top|head|tip) of the (?:post|pole|mast|column|tower|wall|tree|silo|stack|truss|rig)\b|(?<!\b(?:belt|chain|rope|cord|string|band|wire)s?(?: in the| at| in)? )\bmid[- ]?span\b(?! (?:with|of the (?:belt|chain|band)))|\bup (?:the|to the) (?:mast|post|pole|tower|grid|truss|gantry|ridge|gutter|fly floor|catwalk)\b|\bfrom the (?:cage|bucket|basket|scaffold|roof|genie|cherry picker)\b/i,
    isHint: true,
  },
  {
    hazard: 'flying-particles',
    machine: ANY,
    signals: on(
      'snip|trim|crop|snap|chip|chisel|hammer|strike|grind|chase',
      'wires?|leads|strapping|banding|staples|nails|rivets?|concrete|stone|tiles?|bricks?|slag|welds?|mortar|tails|bolt heads?',
    ),
    not: /\b(?:wire clips?|clip)\b/i,
    isHint: true,
  },
  {
    hazard: 'electric-shock',
    machine:
      /\b(?:9\d|[1-9]\d\d|[1-9]\d{3}|\d+(?:\.\d+)? ?k) ?v\b|\b(?:[3-9]|\d\d)(?:\.\d)? ?kw\b|\bmains\b|\bmicrowave\b|\bcrt\b|\btube amplifier\b|\bneon\b/i,
    signals: on(
      'measure|probe|clip|hang|scrape|touch|stack|reach|pull|connect|disconnect|unscrew|swap|replace|change',
      'terminals?|bus(?: ?bars?)?|contact wire|pick-up|anode(?: cap)?|elements?|magnetron|electrodes?|ballast|capacitors?|transformer|contactor',
    ),
    not: /\b(?:off|dead|isolat\w*|unplug\w*|lock\w*)\b/i,
    isHint: true,
  },
  {
    hazard: 'dust',
    machine: ANY,
    signals: on(
      'pour|tip|sweep|blow|sand|saw|cut|drill|lift|pull|strip|chase|break|mix|shake|grind|brush|rake|shovel|rip|take',
      'dry sand|silica|cement|plaster(?!board screws)|mineral (?:wool|fibre|tiles?)|glass wool|loft insulation|ceiling tiles?|toner|mdf|droppings|pigment|mouldy \\w+|hay|chaff|grain dust|flour',
    ),
    not: /\b(?:wet|damp)\b/i,
    isHint: true,
  },
  {
    hazard: 'radiation',
    machine: /\b(?:laser (?!printer|copier)|exposure unit|transilluminator|sunbed|uv (?:curing|lamp))\b/i,
    signals: /\b(?:expose|view|align|strike|fire|cure)\w*\b/i,
    isHint: true,
  },
  {
    hazard: 'moving-machine',
    machine: /\b(?:wagons?|rail\w*|coach(?:es)?|carriage|trolley|trailer|tram|locomotive|shunting)\b/i,
    signals: on(
      'bleed|release|let off|uncouple|unhook|couple|hook|crank',
      'brakes?|brake cylinder|couplings?|points|draw hook|wagons?',
    ),
    not: /\b(?:air hose|cable)\b/i,
    isHint: true,
  },
  {
    hazard: 'biological',
    machine: ANY,
    signals: on(
      HANDS,
      'bird droppings|mouse droppings|rat droppings|carcass|bedpan|suction (?:jar|bottle)|hepa filter|exhaust filter|soiled \\w+|blood|nappies',
    ),
    not: /\b(?:engine|kitchen|cooker|extractor)\b/i,
    isHint: true,
  },
]
