/** Work that law or common sense leaves to the licensed. */
export type LicensedWork = {
  readonly id: string
  readonly signals: RegExp
  readonly not?: RegExp
  /**
   * What signals it only on such a machine, as title or equipment name it: what is done, or the things that are not to be
   * handled by anybody else, whatever is done to them but looking, cleaning and oiling.
   */
  readonly inContext?: {
    readonly machine: RegExp
    readonly notMachine?: RegExp
    readonly signals: RegExp
    readonly things?: RegExp
  }
  /** Completes "… is work for". */
  readonly who: string
  /** What a line that defers says, for the sheet. */
  readonly caution: string
  readonly source: string
}

/** A line that leaves the work to them or sends the reader to the rules. */
export const DEFERS =
  /\b(?:licen[sc]ed?|licen[sc]ing|certified|certificated|qualified|registered|authori[sz]ed|competent|accredited|approved (?:technician|engineer|workshop|person)|trained (?:technician|person|specialist|engineer)|specialist|professional|electrician|gas (?:engineer|fitter)|local (?:codes?|rules?|law|laws|regulations?)|electrical code|wiring (?:rules|regulations)|by law|permit|inspector)\b/i

/** Kinds of licensed work. Who may do what differs from place to place; local law decides. To teach a kind, add a row. */
export const LICENSED: readonly LicensedWork[] = [
  {
    id: 'refrigerant',
    signals:
      /\b(?:(?:recover|charge|recharge|evacuate|vent|top up|top off|topping|add|release|purge|braze|leak[- ]test|weigh in|bleed|fill|refill|replenish|discharge|drain|cut|open|flare|reclaim|gas up|regas|pump down)\w*\b[^.;]*\b(?:refrigerant|r-?(?:22|32|134a|290|404a|407c|410a|448a|449a|454b|600a|744|1234yf)|line ?set|sealed (?:system|circuit)|suction line|liquid line|refrigeration circuit)|(?:manifold gauges?|gauge manifold|charging (?:hose|manifold|scale)|schrader (?:core|valve)s? of the (?:system|circuit))\b)/i,
    inContext: {
      machine:
        /\b(?:refrigerat\w*|fridge|freezer|walk-in|cooler|ice (?:machine|maker)|chiller|air[- ]condition\w*|heat pump|split (?:unit|system)|condensing unit|evaporator|cold room)\b/i,
      signals:
        /\b(?:(?:charge|recharge|evacuate|recover|top (?:up|off)|bleed|vent|release|braze|cut|add|weigh)\w*\b[^.;]*\b(?:gas|charge|circuit|system|suction|discharge line|capillary|filter[- ]drier|drier|compressor)|(?:replace|swap|change|remove|cut out)\w*\b[^.;]*\b(?:compressor|filter[- ]drier|drier|expansion valve|evaporator coil|condenser coil|capillary)|pull a vacuum|hook up the manifold)\b/i,
      things:
        /\b(?:refrigerant (?:pipes?|lines?|circuit|tubes?)|sealed (?:system|circuit)|capillary|service valves?|schrader)\b/i,
    },
    who: 'people certified for refrigerants',
    caution:
      'Refrigerant freezes, suffocates and harms the climate: only people certified for it under local law may open the circuit.',
    source: 'local law, such as EPA section 608 in the United States (from memory)',
  },
  {
    id: 'gas',
    signals:
      /\b(?:(?:disconnect|connect|open|loosen|undo|remove|replace|fit|adjust|swap|change|unscrew|install|crack|cut|extend|reconnect|reroute|run|set|break|remake|convert|renew|take off|service|strip)\w*\b[^.;]*\b(?:(?:natural |mains )?gas (?:line|pipe|valve|supply|meter|train|union|cock|regulator|connection|connector|jet|manifold|hose|control|fitting|nut|tap|pressure|burner)|burner (?:jet|manifold|pressure)|propane (?:line|regulator|hose|tank valve)|lpg (?:line|regulator|hose)))\b/i,
    not: /\b(?:turn off|shut off|close)\b[^.;]*$|\bgas (?:strut|spring|bottle only)\b/i,
    inContext: {
      machine: /\b(?:gas|lpg|propane|butane)\b(?! (?:strut|spring))/i,
      signals:
        /\b(?:(?:disconnect|undo|remove|unscrew|take off|withdraw|replace|break|crack|adjust|set|clean|pull|drop)\w*\b[^.;]*\b(?:burner assembly|burner tray|main burners?|pilot (?:tube|assembly|line|burner)|gas|manifold|orifices?|flex(?:ible)? connector|injectors?))\b/i,
      things:
        /\b(?:gas (?:valve|control|train|jets?|orifices?|manifold|regulator|pressure)|burner pressure|pilot jet)\b/i,
    },
    who: 'a gas fitter licensed under local law',
    caution:
      'Gas explodes and suffocates: this is work for someone licensed under local law, who tests it for tightness afterwards.',
    source: 'local law and codes, no single source',
  },
  {
    id: 'mains-wiring',
    signals:
      /\b(?:consumer unit|fuse ?board|distribution board|breaker panel|load cent(?:er|re)|service panel|meter tails?|fixed wiring|house wiring|(?:new|add|extend|run|wire|replace|install|rewire|disconnect|connect|swap|change)\w*\b[^.;]*\b(?:branch circuit|ring main|wall (?:outlet|socket|receptacle)|socket outlet|light switch|receptacle|ceiling rose|light fitting|mains (?:cable|circuit|wiring)|240[ -]volt circuit|three-phase (?:supply|cable|feed)|supply cables?|circuit breaker in the panel|hard-?wired))\b/i,
    not: /\b(?:plug into|unplug)\b/i,
    inContext: {
      machine:
        /\b(?:hard-?wired|three-phase|branch circuit|ceiling|light fitting|luminaire|water heater|immersion heater|cooker|range|oven|hob|boiler|pool|spa|hot tub|pump|wall|house|socket|switch|fan|charger|generator|air condition\w*|air handler|furnace|doorbell|shower|domestic|230|240|208|220|120|110|400|415)\b/i,
      notMachine: /\bbatter(?:y|ies)\b|\b(?:12|24|36|48)[ -]?v(?:olts?)?\b/i,
      signals:
        /\b(?:(?:open|disconnect|reconnect|connect|undo|remove|wire|rewire|splice|join|land|twist|cap|strip|extend|run|make|take|pull|put|terminate)\w*\b[^.;]*\b(?:junction box|(?:house|supply|circuit|mains|ceiling|fixed|branch|feed) (?:wir\w+|cables?|conductors?|leads?|box)|(?:active|live|hot|line|phase|black)(?:,| and|\/)[^.;]*\b(?:neutral|white|earth|ground)|neutral (?:wires?|conductors?)|live (?:wires?|conductors?)|(?:element|thermostat) wires|transfer switch|inlet box|back-?feed|outlet box|ceiling box|mounting box))\b/i,
      things:
        /\b(?:(?:old|new|supply|house|circuit|fixture|ceiling|bare|green|white|black|red|blue|brown|hot|live|neutral|ground|earth) (?:wires?|leads?|conductors?|cables?)|junction box|(?:white|black|green|red) to (?:white|black|green|red|brass|silver)|bare wire|ground(?:ing)? wire|branch circuit|spade (?:connectors?|terminals?)|contactor|supply terminals?)\b/i,
    },
    who: 'an electrician licensed under local codes',
    caution:
      'Mains wiring kills and burns houses down: local codes leave it to a licensed electrician, who tests it afterwards.',
    source: 'local electrical codes, no single source',
  },
  {
    id: 'airbag',
    signals:
      /\b(?:(?:remove|disconnect|unplug|unbolt|take off|fit|refit|replace|install|reconnect|lift off|detach)\w*\b[^.;]*\b(?:air ?bags?|srs|squib|clock ?spring|pretensioners?|driver module))\b/i,
    inContext: {
      machine: /\b(?:air ?bags?|srs|steering wheel|clock ?spring|restraint)\b/i,
      signals:
        /\b(?:remove|disconnect|unplug|unbolt|take|fit|refit|replace|install|reconnect|lift|detach|pull|release|unclip|undo|probe|measure|test)\w*\b[^.;]*\b(?:module|horn pad|inflator|igniter|squib|yellow (?:connectors?|plugs?)|steering wheel)\b/i,
      things: /\b(?:air ?bags?|airbag module|inflator|squib|pretensioners?)\b/i,
    },
    who: 'people trained on restraint systems',
    caution:
      'An airbag can go off and kill: this is work for someone trained and authorised for it, by the maker’s manual.',
    source: 'common practice, no source; local rules on pyrotechnic parts',
  },
  {
    id: 'lifting-gear',
    signals:
      /\b(?:(?:inspect|repair|certify|load[- ]test|splice|re-?rope|replace|adjust|modify|overhaul|test|change|fit)\w*\b[^.;]*\b(?:hoist (?:rope|brake|chain|hook|limit)|crane|wire rope|lifting (?:gear|eye|beam|chain|sling)s?|chain block|load (?:chain|hook|brake)|lift (?:car|rope|brake)s?|elevator|vehicle lift|passenger lift))\b/i,
    not: /\b(?:crane to|with (?:a|the) (?:crane|hoist|sling))\b/i,
    inContext: {
      machine:
        /\b(?:chain (?:hoist|block)|lever hoist|hoists?|cranes?|winch|lifting|passenger lift|stair ?lift|elevator|car lift|vehicle lift|sling)\b/i,
      signals:
        /\b(?:(?:remove|replace|renew|change|fit|adjust|dismantle|strip|overhaul|repair|weld|shorten|swap)\w*\b[^.;]*\b(?:load chain|chain guide|brake|pawls?|ratchet|hook|limit switch|rope|load sheave|gear ?case|latch|test load|rated load|load test|friction disc|discs?|linings?))\b/i,
      things:
        /\b(?:load chain|lifting chain|wire rope|load sheave|(?:load|bottom|top) hook|brake (?:disc|lining|pawl)s?|friction discs?|limit switch)\b/i,
    },
    who: 'a competent person under local lifting rules',
    caution:
      'Lifting gear that fails kills: inspection and repair are for a competent person under local rules, with a record.',
    source: 'local lifting regulations, no single source',
  },
  {
    id: 'pressure-vessel',
    signals:
      /\b(?:(?:weld|repair|drill|modify|set|adjust|re-?set|hydro(?:static(?:ally)?)?[- ]?test|pressure[- ]test|recertify|replace|braze|plug|cut)\w*\b[^.;]*\b(?:safety valve|pressure relief valve|relief valve|pressure vessel|boiler shell|air receiver|steam boiler|pressure tank|lpg (?:tank|cylinder)|gas cylinder|scuba (?:tank|cylinder)))\b/i,
    not: /\b(?:pull the ring|lever|test button|blow[- ]?down)\b/i,
    inContext: {
      machine:
        /\b(?:autoclaves?|steri[lz]i[sz]ers?|steam boilers?|pressure (?:vessel|cooker|pot|tank)|air receivers?|compressors?|gas cylinder|accumulator|blast pot|extinguishers?)\b/i,
      signals:
        /\b(?:(?:replace|adjust|set|remove|plug|weld|grind|drill|modify|change|repair|cap|bypass|defeat|screw)\w*\b[^.;]*\b(?:safety valve|relief valve|rupture disc|burst(?:ing)? disc|vessel|door (?:interlock|lock)|interlock|shell|receiver wall))\b/i,
      things: /\b(?:safety valve|relief valve|burst(?:ing)? disc|rupture disc|pressure vessel|boiler shell)\b/i,
    },
    who: 'people authorised under local pressure-equipment rules',
    caution:
      'A pressure vessel that bursts kills: work on it and on its safety valve is for people authorised under local rules.',
    source: 'local pressure-equipment law, no single source',
  },
  {
    id: 'oil-burner',
    signals: /\b(?:oil|pressure-jet) burner\b[^.;]*\b(?:nozzle|electrodes?|pump pressure)\b/i,
    inContext: {
      machine:
        /\b(?:oil[- ](?:fired|burning|fuelled)|pressure[- ]jet|(?:heating )?oil (?:boiler|furnace|heater|burner|stove)|kerosene (?:boiler|burner))\b/i,
      signals:
        /\b(?:(?:screw|unscrew|change|replace|fit|set|adjust|fire|light|bleed|renew)\w*\b[^.;]*\b(?:nozzle|burner|electrodes?|oil (?:line|pump|filter)))\b/i,
    },
    who: 'an oil heating engineer registered under local law',
    caution:
      'A burner set wrongly kills by carbon monoxide: this is work for someone registered under local law, who measures the flue gas afterwards.',
    source: 'local building and heating law, no single source',
  },
  {
    id: 'photovoltaic',
    signals: /\b(?:photovoltaic|pv) (?:string|connector|isolator)s?\b/i,
    inContext: {
      machine:
        /\b(?:solar (?:arrays?|panels?|modules?|inverters?|farm|park|plant)|photovoltaic|pv (?:arrays?|systems?|modules?)|string inverter)\b/i,
      signals:
        /\b(?:unlatch|part|disconnect|unplug|open|connect|separate|join|megger|test)\w*\b[^.;]*\b(?:strings?|dc|mc4|module (?:leads?|connectors?)|combiner)\b/i,
    },
    who: 'an electrician licensed for photovoltaic work under local codes',
    caution:
      'Modules stay live in daylight and their arc kills: strings are parted and tested only by a licensed electrician under local codes.',
    source: 'local electrical codes, no single source',
  },
]
