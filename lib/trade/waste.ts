/** What is left over and must not go into the drain or the ordinary bin. */
export type Waste = {
  readonly id: string
  /** What a step says when this waste comes about. */
  readonly arises: RegExp
  readonly not?: RegExp
  /** What a statement about getting rid of it names; statements that name no waste at all stand for every kind. */
  readonly named: RegExp
  /** Whether law commonly counts it as hazardous. */
  readonly isHazardous: boolean
  /** What the sheet may say. */
  readonly advice: string
}

/** Words of getting rid of something. */
export const DISPOSAL =
  /\b(?:dispos\w*|recycl\w*|collection (?:point|site|centre|center)|hazardous[- ]waste|waste (?:drum|oil|bin|container|tank|can|station|site|collection|contractor)|scrap(?:yard| ?bin| metal| heap| box| pile| dealer| it| them| the)\b|take\b[^.;]*\bto\b[^.;]*\b(?:recycl\w*|depot|tip|dealer|shop|garage|collection|council|point|facility|centre|center|bin)|hand (?:it |them )?in|return(?:ed|s)?\b[^.;]*\b(?:supplier|dealer|store|retailer|core|point)|in(?:to)? the [^.;]*\b(?:drum|bin|trash|waste|skip)\b|not (?:down|in) the drain|bin(?:ned)? the|throw(?:n)? away|neutrali[sz]\w*|discard(?:ed)?|oily[- ](?:rag|water|waste)|sharps (?:tub|box|bin|tin|container))/i

/** How stuff comes out of a machine. English, no source. */
const OUT =
  '(?:drain|empty|pump|suck|siphon|syphon|syringe|draw|extract|change|replace|renew|flush|bleed|purge|let|run|pour|tip|drop|dump|squeeze|scoop|catch|collect|evacuate|swap|bail|soak up|mop up|remove|skim|release|decant)\\w*'
const out = (things: string): RegExp => new RegExp(`\\b${OUT}\\b[^.;]*\\b(?:${things})\\b`, 'i')
const either = (...patterns: readonly RegExp[]): RegExp =>
  new RegExp(patterns.map(({ source }) => source).join('|'), 'i')

/** Kinds of waste. General knowledge, no source; local rules decide. To teach a kind, add a row. */
export const WASTES: readonly Waste[] = [
  {
    id: 'oil',
    arises: either(
      /\b(?:(?:drain|change|empty|pump out|suck out|siphon|extract|replace|flush)\w*\b[^.;]*\b(?:oil|gearbox|crankcase|sump|transmission|gearcase)|(?:loosen|remove|unscrew|open|undo|crack)\w*\b[^.;]*\b(?:drain (?:plug|bolt|screw)|oil filter)|oil drain|oil run out)\b|\b(?:undo|disconnect|renew|replace|remove|crack)\w*\b[^.;]*\b(?:hydraulic (?:hoses?|lines?)|hose unions?)\b|\b(?:tip|pour|let|catch|pump)\w*\b[^.;]*\b(?:old|used|waste) (?:\w+ )?oil\b/i,
      out('(?:old|used|dirty|waste|spent|engine|gear|hydraulic|motor) oil'),
    ),
    not: /\b(?:condensate|water tank|(?:remove|open|clean)[^.;]*\bwater drain|pump drain|heater drain|washing machine|water heater|coolant|radiator|drain plug(?:s)? from the pump|bowl|float|carb\w*|fuel|petrol|boiler|tank drain|cylinder drain|receiver|cistern|sink|bath|trap|autoclave|reservoir of the)\b/i,
    named: /\boils?\b|\bfluids?\b|\bfilters?\b/i,
    isHazardous: true,
    advice: 'Take the used oil and what is soaked with it to a collection point, by local rules',
  },
  {
    id: 'coolant',
    arises: either(
      /\b(?:drain|flush|empty|replace|change|siphon)\w*\b[^.;]*\b(?:coolant|antifreeze|radiator|glycol|cooling system)\b/i,
      out('(?:old|used) (?:coolant|antifreeze)'),
    ),
    named: /\b(?:coolant|antifreeze|glycol|fluids?)\b/i,
    isHazardous: true,
    advice: 'Catch the coolant and take it to a collection point; it poisons animals and water',
  },
  {
    id: 'brake-fluid',
    arises: either(
      /\b(?:bleed|drain|flush|change|replace|siphon|suck)\w*\b[^.;]*\b(?:brake fluid|brakes?\b(?! (?:pads?|shoes?|discs?|lever|light|hose))|hydraulic (?:fluid|oil)|clutch fluid|power steering fluid|fluid)\b/i,
      out('(?:old|used|dirty|brake|clutch|hydraulic|power steering|transmission) fluid'),
    ),
    not: /\b(?:condensate|bleed (?:the )?air|washing|water|release)\b/i,
    named: /\b(?:brake fluid|hydraulic|fluids?|oils?)\b/i,
    isHazardous: true,
    advice: 'Take the old fluid to a collection point in its own container, by local rules',
  },
  {
    id: 'fuel',
    arises: either(
      /\b(?:drain|empty|siphon|syphon|pour out|flush)\w*\b[^.;]*\b(?:fuel|petrol|gasoline|diesel|carburett?or|kerosene)\b/i,
      /\b(?:open|undo|unscrew|loosen|crack|remove)\w*\b[^.;]*\b(?:bowl|carb\w*|float chamber|fuel) drain\b/i,
      /\b(?:petrol|gasoline|fuel|diesel|kerosene)\b[^.;]*\b(?:run(?:s|ning)? out|drained|dripping out|stopped running)\b/i,
      out('(?:old|stale) (?:fuel|petrol|gasoline|gas|diesel)|petrol|gasoline|fuel tank|float bowl|carburett?or bowl'),
    ),
    named: /\b(?:fuel|petrol|gasoline|diesel|fluids?)\b/i,
    isHazardous: true,
    advice: 'Take drained fuel to a collection point in an approved can, by local rules',
  },
  {
    id: 'battery',
    arises:
      /\b(?:old|replace|change|new|renew|swap|spent|worn|dead)\b[^.;]*\bbatter(?:y|ies)\b|\b(?:remove|lift out)\b[^.;]*\bbatter(?:y|ies)\b[^.;]*\b(?:scrap|replac)/i,
    not: /\b(?:reconnect|disconnect|voltage|charge|terminal|cover|plug|lead)/i,
    named: /\bbatter(?:y|ies)\b|\bcells?\b/i,
    isHazardous: true,
    advice: 'Return the old battery to a dealer or a collection point, terminals covered',
  },
  {
    id: 'filter',
    arises:
      /\b(?:(?:old|used|dirty|replace|change|renew|new|discard|clogged)\b[^.;]*\b(?:filter(?!\s*(?:cap|can|housing|bowl|cover|wrench|head|lid|body|base|mount|thread))s?|(?:filter|oil|ink|toner|water) (?:element|cartridge)s?)|fit (?:a|the) new [^.;]*\bfilter)\b/i,
    not: /\b(?:heating|heater|tank|immersion|flange|kw)\b/i,
    named: /\b(?:filters?|elements?|cartridges?|oils?)\b/i,
    isHazardous: false,
    advice: 'Dispose of the old filter by local rules; oily ones are hazardous waste',
  },
  {
    id: 'solvent',
    arises:
      /\b(?:solvents?|paraffin|kerosene|degreaser|white spirit|mineral spirits|thinners?|acetone|turpentine|parts cleaner|brake cleaner|carb(?:urett?or)? cleaner|contact cleaner|engine cleaner|throttle body cleaner|gun cleaner)\b/i,
    named: /\b(?:solvents?|paraffin|kerosene|degreaser|spirits?|thinners?|acetone|rags?|liquids?|cleaner)\b/i,
    isHazardous: true,
    advice:
      'Keep used solvent and rags in a closed metal container and take them to a collection point; such rags can catch fire by themselves',
  },
  {
    id: 'descaler',
    arises: /\b(?:descal\w*|acid(?! -?free)|caustic|drain cleaner|lye|etch\w*|ferric chloride)\b/i,
    not: /\b(?:battery acid|acid-free|citric|caution)\b/i,
    named: /\b(?:descaler|acid|caustic|solution|liquids?|chemicals?)\b/i,
    isHazardous: true,
    advice: 'Neutralise or dispose of the used chemical as its data sheet and local rules say',
  },
  {
    id: 'refrigerant',
    arises: /\b(?:recover|evacuate|charge|vent)\w*\b[^.;]*\b(?:refrigerant|r-?\d{2,3}a?)\b/i,
    named: /\b(?:refrigerant|recover\w*|cylinder)\b/i,
    isHazardous: true,
    advice: 'Have the refrigerant recovered by someone certified for it; it must not be vented',
  },
  {
    id: 'gas-strut',
    arises:
      /\b(?:(?:new|old|replace)\b[^.;]*\b(?:struts?|shock absorbers?|dampers?|gas (?:strut|spring)s?|air ?bags?))\b/i,
    not: /\b(?:chalk|door damper)\b/i,
    named: /\b(?:struts?|shocks?|dampers?|parts?)\b/i,
    isHazardous: true,
    advice: 'Hand the old gas-filled part in where it is made harmless; it is under pressure',
  },
  {
    id: 'lamp',
    arises: /\b(?:fluorescent|mercury|cfl|discharge lamp|sodium lamp)\b/i,
    named: /\b(?:lamps?|tubes?|bulbs?|mercury)\b/i,
    isHazardous: true,
    advice: 'Take old lamps to a collection point unbroken',
  },
  {
    id: 'cutting-fluid',
    arises:
      /\b(?:drain|empty|pump out|suck out|change|clean out)\w*\b[^.;]*\b(?:cutting fluid|emulsion|soluble oil|coolant (?:tank|sump))\b/i,
    named: /\b(?:cutting fluid|emulsion|coolant|fluids?)\b/i,
    isHazardous: true,
    advice: 'Hand spent cutting fluid to a waste contractor; it must not go down the drain',
  },
  {
    id: 'resin',
    arises:
      /\b(?:pour|wipe|peel|clean|drain|filter|scrape|tip|mix)\w*\b[^.;]*\b(?:resin|epoxy|gelcoat|hardener|isocyanate|polyurethane)\b/i,
    named: /\b(?:resin|epoxy|film|towels?|hardener|mixture|pots?)\b/i,
    isHazardous: true,
    advice:
      'Let leftover resin and what is soaked with it cure hard before it goes in the bin; liquid resin is hazardous waste',
  },
  {
    id: 'cooking-oil',
    arises: out('(?:old|used|cooking|frying|fryer) (?:oil|fat)|fryer|grease trap'),
    named: /\b(?:oils?|fat|grease)\b/i,
    isHazardous: false,
    advice: 'Hand old cooking oil and grease to a collector; they block drains',
  },
  {
    id: 'blast-media',
    arises: out(
      '(?:old|used|spent|dirty) (?:media|grit|abrasive|beads|sand)|media|blast (?:dust|grit)|dust (?:bag|drawer|drum|bin)',
    ),
    not: /\b(?:social|new media)\b/i,
    named: /\b(?:media|grit|abrasive|beads|dust|sand)\b/i,
    isHazardous: false,
    advice: 'Bag spent media and dust closed; with lead paint or heavy metals in it, it is hazardous waste',
  },
  {
    id: 'sharps',
    arises: /\b(?:old|used|blunt|worn|spent|broken)\b[^.;]*\b(?:blades?|knives|needles?|razors?|scalpels?|glass)\b/i,
    not: /\b(?:sharpen|saw blade|clean|inspect|wiper)\b/i,
    named: /\b(?:blades?|knives|needles?|sharps|glass|razors?)\b/i,
    isHazardous: false,
    advice: 'Put old blades and needles in a closed sharps container, where nobody reaches in',
  },
  {
    id: 'pyrotechnic',
    arises:
      /\b(?:old|replace|new|renew|swap|deployed)\b[^.;]*\b(?:air ?bags?|air ?bag modules?|driver modules?|pretensioners?|inflators?)\b/i,
    named: /\b(?:air ?bags?|modules?|pretensioners?|inflators?|parts?)\b/i,
    isHazardous: true,
    advice: 'Hand the old module in to the maker or a licensed depot; unfired ones are explosive waste',
  },
  {
    id: 'rags',
    arises: /\b(?:oily|greasy|soaked|dirty|solvent) (?:rags?|cloths?|wipes?)\b/i,
    named: /\b(?:rags?|cloths?|wipes?)\b/i,
    isHazardous: true,
    advice: 'Keep oily rags in a closed metal container; they can catch fire by themselves',
  },
  {
    id: 'ash',
    arises: /\b(?:shovel|sweep|vacuum|brush|empty|scoop)\w*\b[^.;]*\b(?:ash(?:es)?|soot)\b/i,
    named: /\b(?:ash(?:es)?|soot)\b/i,
    isHazardous: false,
    advice: 'Say where cold ash and soot go, in a closed metal container, by local rules',
  },
  {
    id: 'treated-water',
    arises: /\bbackwash\b|\b(?:drain|flush|empty)\w*\b[^.;]*\b(?:pool|boiler water|heating system|chlorinated)\b/i,
    named: /\b(?:water|backwash)\b/i,
    isHazardous: false,
    advice: 'Say where the treated water may go; local rules often keep it out of drains and streams',
  },
  {
    id: 'worn-part',
    arises:
      /\b(?:(?:new|replace|change|renew|old|worn|swap)\b[^.;]*\b(?:pads?|(?:motor |carbon )?brushes|brake shoes|nozzle|capacitors?|tyres?|tires?|toner|ink cartridges?|circuit board|electronics|compressor unit))\b/i,
    not: /\b(?:plug the nozzle|note|foam pads?)\b/i,
    named: /\b(?:pads?|brushes|shoes|nozzle|capacitors?|tyres?|tires?|toner|cartridges?|boards?|parts?|dust|sock)\b/i,
    isHazardous: false,
    advice: 'Say where the old part goes: recycling, the supplier or the bin',
  },
]
