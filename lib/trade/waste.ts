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
  /** What the author of the sheet should know. */
  readonly advice: string
  /** What whoever does the job can do about it. */
  readonly step: string
  /** What only the shop can answer before the step is right. */
  readonly question: string
}

/** Words of getting rid of something. */
export const DISPOSAL =
  /\b(?:dispos\w*|recycl\w*|collection (?:point|site|centre|center)|hazardous[- ]waste|waste (?:drum|oil|bin|container|tank|can|station|site|collection|contractor)|scrap(?:yard| ?bin| metal| heap| box| pile| dealer| it| them| the)\b|take\b[^.;]*\bto\b[^.;]*\b(?:recycl\w*|depot|tip|dealer|shop|garage|collection|council|point|facility|centre|center|bin)|hand (?:it |them )?in|return(?:ed|s)?\b[^.;]*\b(?:supplier|dealer|store|retailer|core|point)|in(?:to)? the [^.;]*\b(?:drum|bin|trash|waste|skip)\b|not (?:down|in) the drain|\bbin (?:it|them|the)\b|in(?:to)? the scrap\b|to be (?:ground|sharpened|rebuilt|recycled)\b|(?:up|cut) for scrap|binned\b|throw(?:n)? away|neutrali[sz]\w*|discard(?:ed)?|oily[- ](?:rag|water|waste)|sharps (?:tub|box|bin|tin|container)|dry (?:(?:out|off|the|all|any|your|used|old|oily|soaked|wet|dirty|greasy|solvent) )*(?:rag|cloth|towel)s?\b[^.;]*\b(?:outdoors|outside|flat))/i

/** How stuff comes out of a machine. English, no source. */
const OUT =
  '(?:drain|empty|pump|suck|siphon|syphon|syringe|draw|extract|change|replace|renew|flush|bleed|purge|let|run|pour|tip|drop|dump|squeeze|scoop|catch|collect|evacuate|swap|bail|soak up|mop up|remove|skim|release|decant)\\w*'
const out = (things: string): RegExp => new RegExp(`\\b${OUT}\\b[^.;]*\\b(?:${things})\\b`, 'i')
const either = (...patterns: readonly RegExp[]): RegExp =>
  new RegExp(patterns.map(({ source }) => source).join('|'), 'i')

/** What is poured in anew is no waste. */
const FRESH =
  /\b(?:pour|tip|run|fill|refill|top|add|squirt|pump|draw|feed)\w*\b[^.;]*\b(?:fresh|new|clean|premixed|virgin)\b(?![^.;]*\b(?:old|used|waste)\b)/i

/** Kinds of waste. General knowledge, no source; local rules decide. To teach a kind, add a row. */
export const WASTES: readonly Waste[] = [
  {
    id: 'oil',
    arises: either(
      /\b(?:(?:drain|change|empty|pump out|suck out|siphon|extract|replace|flush)\w*\b[^.;]*\b(?:oil|gearbox|crankcase|sump|transmission|gearcase)|(?:loosen|remove|unscrew|open|undo|crack)\w*\b[^.;]*\b(?:drain (?:plug|bolt|screw)|oil filter)|oil drain|oil run out)\b|\b(?:undo|disconnect|renew|replace|remove|crack)\w*\b[^.;]*\b(?:hydraulic (?:hoses?|lines?)|hose unions?)\b|\b(?:tip|pour|let|catch|pump)\w*\b[^.;]*\b(?:old|used|waste) (?:\w+ )?oil\b/i,
      out('(?:old|used|dirty|waste|spent|engine|gear|hydraulic|motor) oil'),
    ),
    not: /\b(?:flush\w* the new\b[^.;]*|condensate|water tank|(?:remove|open|clean)[^.;]*\bwater drain|pump drain|heater drain|washing machine|water heater|coolant|radiator|drain plug(?:s)? from the pump|bowl|float|carb\w*|fuel|petrol|boiler|tank drain|cylinder drain|receiver|cistern|sink|bath|trap|autoclave|reservoir of the)\b/i,
    named: /\boils?\b|\bfluids?\b|\bfilters?\b/i,
    isHazardous: true,
    advice: 'Take the used oil and what is soaked with it to a collection point, by local rules',
    step: 'Take the used oil and what is soaked with it to the collection point',
    question: 'Where is used oil handed in?',
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
    step: 'Take the old coolant in a closed container to the collection point',
    question: 'Where is old coolant handed in?',
  },
  {
    id: 'brake-fluid',
    arises: either(
      /\b(?:bleed|drain|flush|change|replace|siphon|suck)\w*\b[^.;]*\b(?:brake fluid|brakes?\b(?! (?:pads?|shoes?|discs?|lever|light|hose))|hydraulic (?:fluid|oil)|clutch fluid|power steering fluid|fluid)\b/i,
      out('(?:old|used|dirty|brake|clutch|hydraulic|power steering|transmission) fluid'),
    ),
    not: /\b(?:flush\w* the new\b[^.;]*|condensate|bleed (?:the )?air|washing|water|release)\b/i,
    named: /\b(?:brake fluid|hydraulic|fluids?|oils?)\b/i,
    isHazardous: true,
    advice: 'Take the old fluid to a collection point in its own container, by local rules',
    step: 'Take the old fluid in a container of its own to the collection point',
    question: 'Where is old fluid handed in?',
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
    step: 'Take the drained fuel in an approved can to the collection point',
    question: 'Where is drained fuel handed in?',
  },
  {
    id: 'battery',
    arises:
      /\b(?:old|replace|change|new|renew|swap|spent|worn|dead)\b[^.;]*\bbatter(?:y|ies)\b|\b(?:remove|lift out)\b[^.;]*\bbatter(?:y|ies)\b[^.;]*\b(?:scrap|replac)/i,
    not: /\b(?:reconnect|disconnect|voltage|charge|terminal|cover|plug|lead)/i,
    named: /\bbatter(?:y|ies)\b|\bcells?\b/i,
    isHazardous: true,
    advice: 'Return the old battery to a dealer or a collection point, terminals covered',
    step: 'Cover the terminals of the old battery and return it to the dealer or the collection point',
    question: 'Who takes the old battery?',
  },
  {
    id: 'filter',
    arises:
      /\b(?:(?:old|used|dirty|replace|change|renew|new|discard|clogged)\b[^.;]*\b(?:filter(?!\s*(?:cap|can|housing|bowl|cover|wrench|head|lid|body|base|mount|thread))s?|(?:filter|oil|ink|toner|water) (?:element|cartridge)s?)|fit (?:a|the) new [^.;]*\bfilter)\b/i,
    not: /\b(?:heating|heater|tank|immersion|flange|kw)\b/i,
    named: /\b(?:filters?|elements?|cartridges?|oils?)\b/i,
    isHazardous: false,
    advice: 'Dispose of the old filter by local rules; oily ones are hazardous waste',
    step: 'Put the old filter in the bin for oily waste',
    question: 'Where do old filters go: oily waste, recycling or the bin?',
  },
  {
    id: 'solvent',
    arises:
      /\b(?:solvents?|(?:wash|clean|rinse|soak|wipe|flush|swill|degrease)\w*\b[^.;]*\b(?:paraffin|kerosene)|white spirit|mineral spirits|thinners?|acetone|turpentine|parts cleaner|(?:degreaser|(?:brake|carb(?:urett?or)?|contact|engine|throttle body|gun) cleaner)\b(?=[^.;]*\b(?:rags?|cloths?|towels?|wipes?|bath|tray|tub|tank|soak\w*)\b)|(?:blanket|press|roller|plate|screen|type|brush) wash|naphtha|white gas|panel wipe|paint stripper|resin cleaner|xylene|toluene|mek|flushing agent)\b/i,
    not: /\bdry (?:(?:out|off|the|all|any|your|used|old|oily|soaked|wet|dirty|greasy|solvent) )*(?:rag|cloth|towel)s?\b[^.;]*\b(?:outdoors|outside|flat|open air)\b/i,
    named: /\b(?:solvents?|paraffin|kerosene|degreaser|spirits?|thinners?|acetone|rags?|liquids?|cleaner)\b/i,
    isHazardous: true,
    advice:
      'Keep used solvent and rags in a closed metal container and take them to a collection point; such rags can catch fire by themselves',
    step: 'Put used solvent and rags in a closed metal container and take them to the collection point',
    question: 'Where are used solvent and rags handed in?',
  },
  {
    id: 'descaler',
    arises: /\b(?:descal\w*|acid(?! -?free)|caustic|drain cleaner|lye|etch\w*|ferric chloride)\b/i,
    not: /\b(?:battery acid|acid-free|citric|caution)\b|^(?:measure|weigh)\b/i,
    named: /\b(?:descaler|acid|caustic|solution|liquids?|chemicals?)\b/i,
    isHazardous: true,
    advice: 'Neutralise or dispose of the used chemical as its data sheet and local rules say',
    step: 'Dispose of the used chemical as its data sheet says',
    question: 'What does the data sheet of the chemical say about disposal?',
  },
  {
    id: 'refrigerant',
    arises: /\b(?:recover|evacuate|charge|vent)\w*\b[^.;]*\b(?:refrigerant|r-?\d{2,3}a?)\b/i,
    named: /\b(?:refrigerant|recover\w*|cylinder)\b/i,
    isHazardous: true,
    advice: 'Have the refrigerant recovered by someone certified for it; it must not be vented',
    step: 'Hand the recovered refrigerant in its marked cylinder to a certified company for recycling',
    question: 'Who is certified to recover the refrigerant and takes it?',
  },
  {
    id: 'gas-strut',
    arises:
      /\b(?:(?:new|old|replace)\b[^.;]*\b(?:struts?|shock absorbers?|dampers?|gas (?:strut|spring)s?|air ?bags?))\b/i,
    not: /\b(?:chalk|door damper|damper (?:bolt|rod|screw|nut|seal|pin|spring|lever|shaft))s?\b/i,
    named: /\b(?:struts?|shocks?|dampers?|parts?)\b/i,
    isHazardous: true,
    advice: 'Hand the old gas-filled part in where it is made harmless; it is under pressure',
    step: 'Hand in the old gas-filled part unopened where it is made harmless',
    question: 'Who takes gas-filled parts?',
  },
  {
    id: 'lamp',
    arises: /\b(?:fluorescent|mercury|cfl|discharge lamp|sodium lamp)\b/i,
    named: /\b(?:lamps?|tubes?|bulbs?|mercury)\b/i,
    isHazardous: true,
    advice: 'Take old lamps to a collection point unbroken',
    step: 'Take the old lamps unbroken to the collection point',
    question: 'Where are old lamps handed in?',
  },
  {
    id: 'cutting-fluid',
    arises:
      /\b(?:drain|empty|pump out|suck out|change|clean out)\w*\b[^.;]*\b(?:cutting fluid|emulsion|soluble oil|coolant (?:tank|sump))\b/i,
    named: /\b(?:cutting fluid|emulsion|coolant|fluids?)\b/i,
    isHazardous: true,
    advice: 'Hand spent cutting fluid to a waste contractor; it must not go down the drain',
    step: 'Hand the spent cutting fluid to the waste contractor',
    question: 'Who takes spent cutting fluid?',
  },
  {
    id: 'resin',
    arises:
      /\b(?:pour|wipe|peel|clean|drain|filter|scrape|tip|mix)\w*\b[^.;]*\b(?:resin|epoxy|gelcoat|hardener|isocyanate|polyurethane)\b/i,
    named: /\b(?:resin|epoxy|film|towels?|hardener|mixture|pots?)\b/i,
    isHazardous: true,
    advice:
      'Let leftover resin and what is soaked with it cure hard before it goes in the bin; liquid resin is hazardous waste',
    step: 'Let leftover resin and what is soaked with it cure hard, then put it in the waste bin',
    question: 'Where does cured resin go?',
  },
  {
    id: 'cooking-oil',
    arises: out('(?:old|used|cooking|frying|fryer) (?:oil|fat)|fryer|grease trap'),
    not: FRESH,
    named: /\b(?:oils?|fat|grease)\b/i,
    isHazardous: false,
    advice: 'Hand old cooking oil and grease to a collector; they block drains',
    step: 'Hand the old oil and grease to the waste collector',
    question: 'Who collects old cooking oil and grease?',
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
    step: 'Bag the spent media and dust, seal the bag and put it in the waste bin',
    question: 'Where do spent media and dust go, and is there lead paint or heavy metal in them?',
  },
  {
    id: 'sharps',
    arises: /\b(?:old|used|blunt|worn|spent|broken)\b[^.;]*\b(?:blades?|knives|needles?|razors?|scalpels?|glass)\b/i,
    not: /\b(?:sharpen|saw blade|clean|inspect|wiper)\b/i,
    named: /\b(?:blades?|knives|needles?|sharps|glass|razors?)\b/i,
    isHazardous: false,
    advice: 'Put old blades and needles in a closed sharps container, where nobody reaches in',
    step: 'Put the old blades and needles in a closed sharps container',
    question: 'Where does the sharps container stand?',
  },
  {
    id: 'pyrotechnic',
    arises:
      /\b(?:old|replace|new|renew|swap|deployed)\b[^.;]*\b(?:air ?bags?|air ?bag modules?|driver modules?|pretensioners?|inflators?)\b/i,
    named: /\b(?:air ?bags?|modules?|pretensioners?|inflators?|parts?)\b/i,
    isHazardous: true,
    advice: 'Hand the old module in to the maker or a licensed depot; unfired ones are explosive waste',
    step: 'Hand the old module in to the maker or a licensed depot',
    question: 'Who takes the old module? Unfired ones are explosive waste.',
  },
  {
    id: 'rags',
    arises: /\b(?:oily|greasy|soaked|dirty|solvent) (?:rags?|cloths?|wipes?)\b/i,
    named: /\b(?:rags?|cloths?|wipes?)\b/i,
    isHazardous: true,
    advice: 'Keep oily rags in a closed metal container; they can catch fire by themselves',
    step: 'Put the oily rags in a closed metal container for oily waste',
    question: 'Where does the container for oily rags stand?',
  },
  {
    id: 'ash',
    arises: /\b(?:shovel|sweep|vacuum|brush|empty|scoop)\w*\b[^.;]*\b(?:ash(?:es)?|soot)\b/i,
    named: /\b(?:ash(?:es)?|soot)\b/i,
    isHazardous: false,
    advice: 'Say where cold ash and soot go, in a closed metal container, by local rules',
    step: 'Put the cold ash and soot in a closed metal waste container',
    question: 'Where do cold ash and soot go?',
  },
  {
    id: 'treated-water',
    arises: /\bbackwash\b|\b(?:drain|flush|empty)\w*\b[^.;]*\b(?:pool|boiler water|heating system|chlorinated)\b/i,
    named: /\b(?:water|backwash)\b/i,
    isHazardous: false,
    advice: 'Say where the treated water may go; local rules often keep it out of drains and streams',
    step: 'Dispose of the treated water where local rules allow',
    question: 'Where may the treated water go?',
  },
  {
    id: 'worn-part',
    arises:
      /\b(?:(?:new|replace|change|renew|old|worn|swap)\b[^.;]*\b(?:pads?|(?:motor |carbon )?brushes|brake shoes|nozzle|capacitors?|tyres?|tires?|toner|ink cartridges?|circuit board|electronics|compressor unit))\b/i,
    not: /\b(?:plug the nozzle|note|foam pads?)\b/i,
    named:
      /\b(?:pads?|brushes|shoes|nozzle|tubes?|rubber|heads?|capacitors?|tyres?|tires?|toner|cartridges?|boards?|parts?|dust|sock)\b/i,
    isHazardous: false,
    advice: 'Say where the old part goes: recycling, the supplier or the bin',
    step: 'Put the old parts in the bin for recycling',
    question: 'Where do the old parts go: recycling, the supplier or the bin?',
  },
  {
    id: 'old-part',
    arises:
      /\b(?:take|lift|pull|slide|draw|ease|remove|unscrew|swap|replace|drop|drive|press|prise|push|tap|work|cut|strip|peel|unhook|lower|walk|get|roll)\w*\b[^.;]*\b(?:old|worn|worn-out|blunt|failed|perished|burnt-out|dead|dull)\b(?! (?:oil|grease|water|paint|adhesive|glue|sealant|fluid|coolant))/i,
    not: /\b(?:aside|compare|measure|keep|reuse|pattern|sample|jaws|o-?rings?|gaskets?|washers?|pins?|clips?|screws?|bolts?|nuts?|grommets?|tape|labels?|sealing rings?)\b/i,
    named: /(?!)/,
    isHazardous: false,
    advice: 'Say where the old part goes: recycling, the supplier or the bin',
    step: 'Put the old parts in the bin for recycling',
    question: 'Where do the old parts go: recycling, the supplier or the bin?',
  },
]
