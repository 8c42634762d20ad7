/** What signals a hazard only on such a machine: "undo the hose nut" on a loader is hydraulic, on a garden tap it is not. */
export type HazardContext = {
  /** Id of the hazard. */
  readonly hazard: string
  /** What title or equipment of the procedure says. */
  readonly machine: RegExp
  readonly notMachine?: RegExp
  /** What a step says. */
  readonly signals: RegExp
  readonly not?: RegExp
  /** Whether it only hints at the hazard. */
  readonly isHint?: boolean
}

const OPENS =
  '(?:open|crack|loosen|slacken|undo|unscrew|remove|release|take off|take out|take down|lift off|lift out|pull|pull off|pull out|disconnect|uncouple|detach|unbolt|withdraw|drop|draw|break|swing|lower|free|unclip|unhook|separate|strip|unplug)\\w*'
const HANDLES =
  '(?:open|lift|remove|take|pull|slide|draw|hold|grip|turn|raise|lower|set|put|fit|mount|clean|wipe|brush|scrape|touch|measure|unscrew|undo|unbolt|press|push|reach|carry|swap|replace|change|insert|install|drain|empty|scrub|rinse|disconnect|withdraw|unclip|sharpen|file|hone|dismount|refit|free|reach in)\\w*'

const GRIPS = HANDLES.replace('turn|raise|lower|', '')

const on = (verbs: string, things: string): RegExp => new RegExp(`\\b${verbs}\\b[^.;]*\\b(?:${things})\\b`, 'i')

/** General knowledge of many machines, no source. To teach a machine, extend the row of its hazard or add one. */
export const HAZARD_CONTEXTS: readonly HazardContext[] = [
  {
    hazard: 'hydraulic-injection',
    machine:
      /\b(?:hydraulics?\b(?! disc)|skid[- ]?steer|excavator|digger|backhoe|loader|forklift|fork lift|log splitter|press brake|power pack|tipper|tail ?lift|dozer|telehandler|baler|aerial platform|scissor lift|car lift|combine|front loader)\b/i,
    notMachine: /\b(?:brakes?|bicycle|clutch|door closer)\b/i,
    signals: on(
      OPENS,
      'hoses?|hose nuts?|lines?|pipes?|fittings?|unions?|couplings?|couplers?|ports?|cylinders?|rams?|valve block|swivel|adaptors?|adapters?|test point|gauge port|banjo|steel tube',
    ),
    // Run in or out, a ram is not opened.
    not: /\brams?\b[^.;]*\b(?:home|all the way|in|out|back|up|down)$/i,
  },
  {
    hazard: 'battery',
    machine: /\bbatter(?:y|ies)\b/i,
    notMachine: /\b(?:lithium|li-ion|laptop|phone|smoke|remote|watch|coin|button)\b/i,
    signals:
      /\b(?:disconnect|remove|undo|take off|loosen|lift|reconnect|connect|fit|pull|slacken|unbolt|unclamp)\w*\b[^.;]*\b(?:negative|positive|earth|ground|terminals?|cables?|leads?|clamps?|posts?)\b/i,
  },
  {
    hazard: 'electric-shock',
    machine:
      /\b(?:(?:1[012]\d|20[08]|2[1-4]0|277|380|400|415|440|460|480|600)[ -]?v(?:olts?)?\b|mains|three[- ]phase|hard-?wired|fixed wiring|house wiring|household|washing machine|dishwasher|tumble dryer|dryer|cooker|oven|fridge|freezer|refrigerator|microwave|amplifier|television|switchgear|water heater|ceiling fan|light fitting|control panel)/i,
    notMachine: /\bplug-in\b/i,
    signals: on(
      OPENS,
      '(?:access |rear |back |base |control |element |terminal |wiring |electrical |fan |front |side |top )(?:panel|cover|lid|box|plate|cabinet)|panel|enclosure|canopy|terminals?|wires?|wiring|live|neutral|conductors?|element|thermostat|junction box|contactor|circuit board|control board|rotary switch',
    ),
    not: /\b(?:fuel|battery|12[ -]?v|24[ -]?v)\b/i,
    isHint: true,
  },
  {
    hazard: 'hot-surface',
    machine:
      /\b(?:stoves?|ovens?|grills?|griddle|fryers?|kilns?|forge|fireplace|smoker|pizza|espresso|coffee machine|steam(?:er)?|steam boilers?|autoclaves?|steri[lz]i[sz]ers?|water heaters?|calorifier|hot ?end|extruder|laminator|iron|waffle|toaster|exhaust|muffler|turbo(?:charger)?|glue pot|wax|vulcani[sz]er|heat press|shrink tunnel)\b/i,
    notMachine: /\b(?:cast iron pan|steam cleaner hose|cold)\b/i,
    signals: on(
      HANDLES,
      'door|pot|grate|burners?|elements?|head|group|screen|plate|chamber|basket|tray|racks?|heat exchanger|nozzle|manifold|pipe|lid|drain|valve|tank|anode|firebox|baffles?|gasket|seal|shower|bricks?|blower|flue|cover|tap|wand|heater block|oil|water|jacket|rollers?|portafilter',
    ),
    not: /\b(?:cold|cool\w*|meter|water supply|gas cock|refit|put back|new (?:gasket|seal))\b/i,
    isHint: true,
  },
  {
    hazard: 'hot-surface',
    machine: /\b(?:furnaces?|boilers?|engines?|generators?|compressors?|motorcycles?)\b/i,
    signals: on(
      HANDLES,
      'heat exchangers?|flue|firebox|burner (?:tubes?|bars?|door)|exhaust|muffler|silencer|manifold|turbo(?:charger)?|cylinder head|radiator cap|spark arrest\\w*|glow plugs?',
    ),
    not: /\b(?:cold|cool\w*|refit|gas cock)\b/i,
    isHint: true,
  },
  {
    hazard: 'hot-surface',
    machine:
      /\b(?:autoclaves?|steri[lz]i[sz]ers?|pressure cookers?|steamers?|steam (?:ovens?|boilers?|presses?|irons?|kettles?)|retorts?)\b/i,
    signals: on('(?:open|release|unlock|undo|lift|swing|vent|crack)\\w*', 'doors?|lids?|taps?|valves?|hatch|vent'),
    not: /\b(?:cold|water valve|supply|test)\b/i,
  },
  {
    hazard: 'sharp',
    machine:
      /\b(?:saws?|slicers?|planers?|thicknesser|jointer|mowers?|shredders?|chippers?|mincers?|cutters?|guillotine|trimmers?|paper knife|food processor|blade|knife|knives|router|hedge ?trimmer|chainsaw|strimmer|brush ?cutter)\b/i,
    notMachine: /\b(?:wiper|fan blades?)\b/i,
    signals: on(
      GRIPS,
      '(?<!fan )blades?|knife|knives|cutters?|teeth|tooth|saw chain|cutting edges?|cutter block|cutter head',
    ),
    not: /\b(?:riving|guard|cover|by its hub|screwdriver|side cutters?|wire cutters?|pipe cutter)\b/i,
  },
  {
    hazard: 'sharp',
    machine:
      /\b(?:coils?|condensers?|evaporators?|radiators?|fins?|ducts?|sheet[- ]metal|heat exchangers?|air handlers?|air condition\w*|galvani[sz]ed|broken glass|window|glazing|windscreen|tiles?|drum|chassis)\b/i,
    signals: on(
      '(?:brush|comb|clean|hoover|straighten|vacuum|handle|touch|wipe|reach|cut|lift out|remove)\\w*',
      'fins?|glass|panes?|sheet metal|duct|edges?|shards?',
    ),
  },
  {
    hazard: 'dust',
    machine:
      /\b(?:stoves?|fireplaces?|chimneys?|flues?|furnaces?|kilns?|saws?|sanders?|planers?|routers?|blast\w*|ducts?|air handlers?|coils?|evaporators?|condensers?|flour|grain|cement|concrete|plaster|drywall|brakes?|clutch|insulation|foundry|lathe|vacuum cleaner|dust collector|(?:dust|fume|chip) extractor|boilers?|loft|bakery|toner|carbon brushes)\b/i,
    notMachine: /\b(?:hydraulic|bicycle|brake fluid|fluid change|espresso|water boiler|coffee)\b/i,
    signals:
      /\b(?:vacuum|hoover|sweep|blow (?:out|off|down|through)|shake out|knock out|dry brush)\w*\b|\b(?:brush|scrape|empty|scoop|dig|scrub)\w*\b[^.;]*\b(?:dust|ash\w*|soot|firebox|flue|pot|passage|chamber|cabinet|fins|coil|filter|bag|hopper|sump|drum|burner|tubes?|grit|media|sawdust|chimney|ducts?|lint)\b/i,
    not: /\b(?:wet|damp|with water|hose|rinse|fluid|toilet)\b/i,
  },
  {
    hazard: 'chemical',
    machine:
      /\b(?:brakes?|clutch)\b[^.]*\bfluid|\bfluid\b[^.]*\b(?:brakes?|clutch)|\bbleed\w*\b[^.]*\bbrakes?\b|\bbrakes?\b[^.]*\bbleed/i,
    signals:
      /\b(?:fill|top|pour|draw|bleed|suck|siphon|syringe|open|drain|squeeze|pump|empty|slacken|crack)\w*\b[^.;]*\b(?:fluid|reservoir|nipple|bleed screw|master cylinder|bleeder)\b/i,
  },
  {
    hazard: 'chemical',
    machine: /\b(?:pool|spa|hot tub|jacuzzi|whirlpool)\b/i,
    signals:
      /\b(?:open|drain|catch|empty|take off|remove|unscrew|let|backwash|pour|dose|add)\w*\b[^.;]*\b(?:lid|drain|water|basket|strainer|filter|chlorin\w*|acid|tablets?|shock)\b/i,
    not: /\b(?:bleed|onto the gravel|dispos\w*)\b/i,
    isHint: true,
  },
  {
    hazard: 'pressure',
    machine:
      /\b(?:pressur\w*|compress(?:or|ed)|pneumatic|air brakes?|blast\w*|boilers?|water heaters?|calorifier|autoclaves?|steri[lz]i[sz]ers?|espresso|steam|pool (?:pump|filter)|sand filter|sprinkler|extinguishers?|keg|soda|carbonat\w*|accumulator|expansion (?:tank|vessel)|well pump|booster|paint sprayer|airless|jet wash|nitrogen|air receiver|air tank)\b/i,
    notMachine: /\b(?:tyre|tire|blood pressure)\b/i,
    signals: on(
      '(?:open|crack|loosen|slacken|undo|unscrew|remove|release|bleed|vent|let out|take off|lift off|disconnect|uncouple|unbolt|swing open|drain)\\w*',
      'steam (?:tap|valve)|relief valve|safety valve|bleed (?:screw|valve)|drain (?:valve|cock|tap)|unions?|couplings?|hoses?|pot|vessel|nozzle|receiver|steam trap|pressure|air|filter|handhole|blowdown|regulator',
    ),
    not: /\b(?:outlet|cabinet door|access door|fan|panel|cold|empty|gas|fuel)\b/i,
  },
  {
    hazard: 'pressure',
    machine:
      /\b(?:pressure (?:pot|vessel|canner)|blast (?:pot|cabinet|machine)|sand ?blast\w*|sand filter|pool (?:pump|filter)|extinguishers?|keg|paint pot|retort)\b/i,
    signals: on(
      '(?:open|loosen|undo|unscrew|remove|release|take off|lift off|unbolt|swing open)\\w*',
      'lid|door|cover|cap|head|top',
    ),
    not: /\b(?:cold|empty|panel)\b/i,
  },
  {
    hazard: 'fuel',
    machine:
      /\b(?:carburett?ors?|petrol|gasoline|fuel|generators?|lawn ?mowers?|chainsaws?|outboards?|tillers?|motorcycles?|go-?kart|brush ?cutters?|leaf blowers?|snow ?blowers?|diesel)\b/i,
    notMachine:
      /\b(?:electric|battery-powered|cordless|cooling|coolant|thermostat|radiator|brakes?|wheel bearing|chain and sprocket|fork)\b/i,
    signals: on(
      '(?:remove|open|undo|unscrew|drain|clean|disconnect|take off|take out|drop|pull|slide|loosen|empty|unbolt|crack|shake|blow|rinse)\\w*',
      'bowl|jets?|float|carb(?:urett?or)?|fuel|tank|needle valve|primer|fuel petcock|strainer|injectors?',
    ),
    not: /\b(?:fuel (?:tap|valve|cock) (?:off|to off)|turn off|(?:open|turn on) the fuel (?:tap|valve|cock))\b/i,
  },
  {
    hazard: 'crush',
    machine: /\b(?:garage door|overhead door|roller shutter|roller door|sliding gate|tail ?lift)\b/i,
    signals:
      /\b(?:lift|raise|lower|release|disconnect|undo|remove|run|close|open)\w*\b[^.;]*\b(?:door|shutter|gate|trolley|platform|cable|spring|bottom bracket|rollers?)\b/i,
    isHint: true,
  },
  {
    hazard: 'crush',
    machine: /\b(?:chain (?:hoist|block)|hoists?|cranes?|winch(?:es)?|lift(?:ing)? (?:gear|table|platform))\b/i,
    signals:
      /\b(?:lift|raise|lower|hang|hoist|load|run|test)\w*\b[^.;]*\b(?:loads?|weights?|hook|hoist|chain|kg|kilos?|rated|test)\b/i,
    not: /\b(?:hook (?:opening|gap|mouth)|measure|chain (?:wear|pitch))\b/i,
  },
  {
    hazard: 'heavy-part',
    machine:
      /\b(?:ceiling fan|gearbox|transmission|engines?|motors?|compressors?|boilers?|water heaters?|washing machine|dryer|fridge|freezer|cooker|stove|safe|piano|tractor|truck|lorry|axle|pumps?|garage door|window|windscreen|sofa|bathtub|toilet|chain hoist|generator|forklift|pallet)\b/i,
    notMachine: /\b(?:wiper|treadmill|quadcopter|drone|model|toy|watch|camera|laptop|phone|printer|slot car|rc)\b/i,
    signals:
      /\b(?:lift|carry|heave|haul|hang|hoist|manhandle|raise|take down)\w*\b[^.;]*\b(?:fan|motor|gearbox|transmission|engine|compressor|boiler|heater|machine|dryer|fridge|freezer|cooker|stove|safe|batter(?:y|ies)|axle|pump|door section|panel section|window|windscreen|generator|counterweight)\b(?! (?:heads?|hoods?|cover|lid|cap|lead|cable|connector|bracket|mount|plug|belt|guard|latch|handle|terminal|switch))/i,
    not: /\b(?:hoist it|with (?:a|the) (?:hoist|crane|jack|lift)|jack|by hand|slowly three times|lift off the (?:cover|lid)|float|blade)\b/i,
    isHint: true,
  },
  {
    hazard: 'compressed-air',
    machine:
      /\b(?:shop air|compressed air|pneumatic|air[- ](?:tool|line|gun|powered|driven)|blast\w*|air compressors?|spray ?gun|air brakes?)\b/i,
    signals:
      /\b(?:open|connect|reconnect|disconnect|uncouple|release|press|squeeze|blow|blast|spray|turn on|fire)\w*\b[^.;]*\b(?:air|hose|couplers?|pedal|trigger|gun|nozzle|scrap piece|valve)\b/i,
    not: /\b(?:close|fuse|slowly|air valve)\b/i,
  },
  {
    hazard: 'airbag',
    machine: /\b(?:air ?bags?|srs|steering wheel|clock ?spring|squib|pretensioners?|restraint)\b/i,
    notMachine: /\b(?:boat|tractor|suspension)\b/i,
    signals:
      /\b(?:disconnect|remove|unbolt|lift|take|pull|unplug|undo|release|carry|unscrew|pry|prise)\w*\b[^.;]*\b(?:module|horn pad|connectors?|steering wheel|inflator|air ?bag|pad|cushion)\b/i,
  },
  {
    hazard: 'rotating-parts',
    machine:
      /\b(?:mixers?|augers?|blenders?|mincers?|conveyors?|lathes?|drills?|fans?|blowers?|mowers?|chippers?|shredders?|extractors?|spindle|belt[- ]driven|pulleys?|ice machines?|pellet|slicers?|sheeter|kneader|generators?|compressors?|saws?|grinders?|sanders?)\b/i,
    signals:
      /\b(?:run|start|restart|switch on|turn on|power up|jog|test[- ]run|spin up|let)\w*\b[^.;]*\b(?:mixer|machine|hook|bowl|auger|motor|fans?|belt|drive|speed|unit|blower|saw|blade|lathe|grinder|agitator|beater|compressor|conveyor)\b|\bswitch\b[^.;]*\bon\b|\b(?:reach|clear|clean|free|unblock|unjam)\w*\b[^.;]*\b(?:auger|hook|agitator|beaters?|rollers?|belt|fan|chute|impeller)\b/i,
    not: /\b(?:by hand|unplug\w*|off\b|lamp|light|water|gas|thermometer|meter|alarm)\b/i,
    isHint: true,
  },
  {
    hazard: 'height',
    machine:
      /\b(?:ceiling|roof|chimney|gutter|overhead|high[- ]bay|loft|attic|mast|chandelier|solar panels?|antenna|satellite|street ?light|awning)\b/i,
    signals:
      /\b(?:climb|go up|get up|step up|stand on|reach up|set up|work from)\w*\b|\b(?:take down|lower|lift|hang|mount|hook)\w*\b[^.;]*\b(?:fan|light|unit|panel|bracket|canopy)\b/i,
    not: /\b(?:stand clear|step back)\b/i,
    isHint: true,
  },
  {
    hazard: 'stored-energy',
    machine:
      /\b(?:torsion springs?|counterbalance|recoil|garage door|sectional door|gas springs?|suspension|struts?|recliner|hospital bed|brake chamber|spring[- ]loaded|trampoline|coil spring)\b/i,
    signals: on(
      '(?:wind|unwind|loosen|undo|unscrew|remove|release|set|adjust|crank|turn|unbolt|unhook|disconnect|tension|take off|pull)\\w*',
      'springs?|winding (?:cone|bar)s?|set ?screws?|cables?|bottom brackets?|recoil|starter|drum|brake chamber|top nut|gas (?:spring|strut)',
    ),
    not: /\b(?:spring washer|spring clip|retaining spring|lugs?|terminals?|battery)\b/i,
  },
]
