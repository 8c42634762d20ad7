/** What can hurt someone in service work, how a text betrays it, and the usual care. */
export type Hazard = {
  /** Kebab case; what a caution's `hazard` field may say. */
  readonly id: string
  /** Other names of it, as a caution's `hazard` field may have them. */
  readonly alias: readonly string[]
  /** What in a step, tool or material signals it. */
  readonly signals: RegExp
  /** Weaker signs: enough to miss a caution, not to say where it belongs. With `hintsIn`, only for such equipment. */
  readonly hints?: RegExp
  readonly hintsIn?: RegExp
  /** What in the same text shows that it is something else. */
  readonly not?: RegExp
  /** Equipment that has to match as well, where the words alone don't tell. */
  readonly equipment?: RegExp
  /** What a caution against it says. */
  readonly known: RegExp
  /** Protection that answers it, worn or set up in a step or listed as a tool. */
  readonly protection?: RegExp
  /** Signal word of the usual caution. */
  readonly level: 'danger' | 'warning' | 'caution' | 'notice'
  /** The usual caution: hazard, consequence, avoidance; always defers to the maker and to local rules. */
  readonly caution: string
  /** Where that comes from. */
  readonly source: string
}

const PRACTICE = 'common practice, no source'

/**
 * Hazards by what signals them. The cautions are the usual ones; they never promise that a job is safe, and the maker's manual,
 * local codes and licensed practice come first. To teach a wording, extend `signals` or `known`.
 */
export const HAZARDS: readonly Hazard[] = [
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
    id: 'battery',
    alias: ['acid', 'burn', 'electrical', 'short-circuit', 'electric-shock', 'explosion', 'spark', 'arc'],
    signals:
      /\b(?:(?:disconnect|reconnect|remove|connect|unplug|lift out|refit|fit|install|jump|top up|take out|clean)\w*\b[^.;]*\b(?:batter(?:y|ies)|battery (?:lead|terminal|cable|clamp|post)s?)|battery acid|electrolyte)\b/i,
    not: /\b(?:coin cell|button cell|AAA?|remote|battery (?:cover|door|compartment)|voltage|torch|meter)\b/i,
    known: /\b(?:batter\w*|acid|hydrogen|sparks?|short\w*|bridg\w*|terminals?|jewell?ery|rings?)\b/i,
    level: 'warning',
    caution:
      'Batteries give off explosive gas, hold acid and drive a huge current through metal: keep sparks away, wear eye protection, don’t let tools bridge the terminals, and follow the maker’s order of disconnecting.',
    source: PRACTICE,
  },
  {
    id: 'lithium',
    alias: ['fire', 'burn', 'battery', 'explosion'],
    signals: /\b(?:lithium|li-ion|lipo|li-po)\b/i,
    not: /\blithium grease\b/i,
    known: /\b(?:lithium|fire|swollen|punctur\w*|burn\w*|cells?|batter\w*)\b/i,
    level: 'warning',
    caution:
      'A damaged lithium cell can burn fiercely and give off poisonous smoke: don’t pierce, crush or heat it, and follow the maker’s instructions.',
    source: PRACTICE,
  },
  {
    id: 'electric-shock',
    alias: ['electrical', 'electricity', 'mains', 'shock', 'electrocution', 'live', 'arc-flash', 'arc', 'voltage'],
    hints:
      /\b(?:isolator|breaker(?! bar)|mains|consumer unit|unplug(?! (?:the |both |all )?(?:[\w-]+ )*(?:charger|connector|cable|sensor|lead|wire|plug|fan|battery|hose|connectors|cables|sensors|leads|wires))|(?:power|wall) plug|plug (?:out of|from) (?:the )?(?:wall|socket|outlet|mains)|power supply|wall socket|switch off (?:the )?(?:power|supply)|live|switch and lock|lock(?:ed)? out)\b/i,
    signals:
      /\b(?:(?:terminal|junction|connection) box|consumer unit|fuse ?board|distribution board|contactor|live (?:wires?|parts?|conductors?|terminals?)|line[- ]voltage|mains (?:lead|cable|wir\w+|terminals?|supply|voltage)|(?:heating |tank |immersion )?element (?:leads?|terminals?|wires?)|motor (?:leads?|wiring|terminals?)|power supply (?:cover|lid)|supply (?:leads?|cables?|wires?|terminals?)|(?:electrical|control) (?:panel|cabinet|box|enclosure)|(?:1[012]0|2[0-4]0|400|415|480)[ -]?v(?:olts?)?\b|light switch|wall socket|socket outlet|receptacle|ceiling rose|light fitting|magnetron|three-phase (?:leads?|supply|terminals?|wir\w+))\b/i,
    not: /\b(?:(?:12|24|48)[ -]?v(?:olts?)?|unplug\w*|plug (?:out|in|into|back)|plug\b[^.;]*\b(?:into|out of|from|in)\b)\b|\bprove\w*\b[^.;]*\bdead\b/i,
    known:
      /\b(?:shock|electr\w*|live|isolat\w*|prove[ds]? (?:it )?dead|dead|lock(?:ed)? ?out|volt\w*|mains|discharg\w*|unplug\w*|breaker)\b/i,
    level: 'danger',
    caution:
      'Live parts kill: isolate the supply, lock it off, prove it dead with a tester that was itself proved, and leave work that local codes reserve to a licensed electrician.',
    source: 'IEC/IEEE 82079-1:2019 on warnings (from memory); common practice, no source',
  },
  {
    id: 'capacitor',
    alias: ['electric-shock', 'stored-energy', 'stored-charge', 'electrical'],
    signals: /\b(?:capacitors?|magnetron)\b/i,
    not: /\b(?:old|photograph|take the|rating|measured)\b/i,
    known: /\b(?:capacitor|discharg\w*|holds? a charge|stored charge|shock|electrocut\w*)\b/i,
    protection: /\b(?:discharge|bleed resistor)\b/i,
    level: 'warning',
    caution:
      'A capacitor holds its charge with the power off and the shock can kill: discharge it through a resistor and measure it before you touch it, as the maker says.',
    source: PRACTICE,
  },
  {
    id: 'test-voltage',
    alias: [],
    signals: /\b(?:insulation (?:test\w*|resistance)|megger|hi-?pot|flash test)\b/i,
    known:
      /\b(?:(?:insulation )?test(?:er|ing)?\b[^.;]*\b(?:shock|touch|hands|clear|volt\w*)|(?:hands|clear|touch)\b[^.;]*\btest)/i,
    level: 'warning',
    caution:
      'The insulation tester puts hundreds of volts on the part and the shock can injure: keep hands off the part and the leads while it tests, and discharge the part afterwards.',
    source: PRACTICE,
  },
  {
    id: 'pressure',
    alias: ['stored-energy', 'projectile', 'explosion', 'burst', 'compressed-air', 'scald', 'steam', 'spray'],
    hints: /\b(?:release|relieve|let out|bleed)\w*\b[^.;]*\b(?:pressure|air)\b|\bgauge (?:reads|shows) zero\b/i,
    signals:
      /\b(?:(?:relief|safety) valve|accumulator|pressure (?:tank|vessel|cooker|hose|line|washer|system)|blow(?:ing)?[- ]?(?:the \w+ )?down|(?:open|crack|loosen|undo|disconnect|uncouple|remove|unscrew|release|bleed)\w*\b[^.;]*\b(?:pressuri[sz]ed|under pressure|receiver|air tank|air line|air hose|gas strut|steam line|radiator cap|expansion tank cap|tank drain)|air regulator)\b/i,
    not: /\b(?:tyre|tire|pressure switch)\b/i,
    known:
      /\b(?:pressur\w*|blow\w*|eject\w*|burst\w*|whip\w*|spray\w*|stored|release[sd]?|jet|flying|steam|scald\w*)\b/i,
    level: 'warning',
    caution:
      'Stored pressure throws parts and fluid and can blind or kill: release it and see the gauge at zero before you open anything, keep your face clear, and follow the maker’s manual.',
    source: PRACTICE,
  },
  {
    id: 'hydraulic-injection',
    alias: ['injection', 'hydraulic', 'pressure', 'high-pressure', 'fluid-injection'],
    hints: /\bhydraulic\b/i,
    hintsIn: /\b(?:hydraulic (?!disc)|splitter|excavator|loader|press|tractor)\b/i,
    signals:
      /\bhydraulic (?:hoses?|lines?|fittings?|cylinders?|rams?|pump|leaks?|union|system|pipe|circuit|coupling)\b|\b(?:common rail|injector (?:line|pipe)s?|high-pressure (?:fuel )?(?:line|pipe|hose))\b/i,
    not: /\b(?:brake|bicycle|clutch)\b/i,
    known: /\b(?:inject\w*|hydraulic|pressur\w*|jet|penetrat\w*|skin)\b/i,
    level: 'danger',
    caution:
      'A fine jet of hydraulic fluid goes through skin and can cost a limb: lower the load, release the pressure, look for leaks with card and never with a hand, and see a doctor at once if hit.',
    source: PRACTICE,
  },
  {
    id: 'stored-energy',
    alias: ['spring', 'springs', 'tension', 'crush', 'projectile', 'impact', 'ejection'],
    signals:
      /\b(?:spring compressors?|(?:compress|release|unhook|remove|fit|wind|unwind|tension)\w*\b[^.;]*\b(?:coil|torsion|recoil|valve|clutch|return|extension|door|main|garage|suspension|brake|counterbalance) springs?|torsion springs?|recoil (?:spring|starter)|winding bars?|gas struts?|fork (?:caps?|springs?)|spring preload|strut (?:top|cent(?:er|re)) nut)\b/i,
    known: /\b(?:springs?|stored|fl(?:y|ies|ying)|eject\w*|tension|thrown?|recoil|whip\w*|wind\w*)\b/i,
    level: 'danger',
    caution:
      'A loaded spring lets go with enough force to maim or kill: take the load off with the tool made for it, stand out of its line, and follow the maker’s manual.',
    source: PRACTICE,
  },
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
    not: /\b(?:lower|remove the (?:axle |jack )?stands?|jacking screw)\b/i,
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
      'cut',
      'kickback',
      'rotating',
      'entrapment',
      'nip',
      'pinch',
      'caught',
      'drawn-in',
      'draw-in',
      'runaway',
    ],
    hints: /\b(?:belts?|pulleys?|blades?|fan|chuck|spindle|chain|cutters?)\b/i,
    hintsIn:
      /^(?!.*\b(?:laptop|computer|console|projector|camera)\b).*\b(?:lathe|mill|fan|mower|saw|compressor|conveyor|mixer|drill|grinder|planer|auger|belt-driven|chain drive)\b/i,
    signals:
      /\b(?:(?:run|start|switch on|spin|turn on|power up|engage|jog|restart)\w*\b[^.;]*\b(?:belt|pulley|fan|blades?|spindle|chuck|auger|rotor|flywheel|coupling|conveyor|blower|cutter|lathe|mill|drill|grinder|mower|mixer|chain|shaft|rollers?|impeller|cutting deck|agitator|sander|planer|router|table saw|band ?saw|shredder|chipper)|(?:take off|remove|lift off|open|unbolt)\w*\b[^.;]*\b(?:belt guard|chain guard|fan guard|blade guard|belt cover|coupling guard))\b/i,
    not: /\b(?:by hand|hand-?turn|off\b(?!.*guard)|stop|impeller cover|unplug\w*)\b/i,
    known:
      /\b(?:rotat\w*|spin\w*|turning|moving|entangl\w*|caught|catch\w*|fingers?|hair|sleeves?|cut\w*|nip|drawn? in|belt|blades?|pulley|fan|kickback|starts? (?:by itself|automatically|unexpectedly)|unexpected\w*|lacerat\w*|amputat\w*|clear of|hands?|guard|thrown)\b/i,
    level: 'warning',
    caution:
      'Turning parts catch sleeves, hair and fingers and can maim: stop and isolate before you reach in, run it only with its guards on, and keep clear while it turns.',
    source: PRACTICE,
  },
  {
    id: 'hot-surface',
    alias: ['burn', 'burns', 'heat', 'scald', 'hot', 'hot-oil', 'hot-liquid', 'steam', 'thermal', 'scalding', 'fire'],
    hints:
      /\b(?:warm (?:up )?the (?:oil|engine|gearbox|fluid)|hot (?:oil|water|engine|coolant)|drain\w*\b[^.;]*\bengine oil|run the engine|(?:drain|empty)\w*\b[^.;]*\b(?:boiler|water heater)|let\b[^.;]*\bcool)\b|\bremaining water\b/i,
    signals:
      /\b(?:hot(?!-swap)(?:end)? (?!glue)\w+|exhaust (?:manifold|pipe)|muffler|silencer|steam|boiling|soldering iron|heat gun|blow ?torch|welding|weld (?:the|a|on)|braz(?:e|ing)|while (?:it is )?(?:still )?(?:warm|hot)|(?:drain|change)\w*\b[^.;]*\bwarm\b|glow plug|oven)\b/i,
    not: /\b(?:cool\w*|cold|hot (?:glue|shoe|water (?:tap|supply|valve|pipe))|gloves?|before)\b/i,
    known: /\b(?:burn\w*|hot|scald\w*|cool\w*|heat|steam|fire)\b/i,
    protection: /\bheat[- ]resistant gloves\b|\blet\b[^.;]*\bcool\b/i,
    level: 'caution',
    caution:
      'Hot parts and fluids burn skin: let them cool or wear gloves made for the heat, and follow the maker’s cooling time.',
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
      'burn',
      'irritant',
      'vapour',
      'chemicals',
      'inhalation',
      'skin',
      'skin-contact',
      'eye',
      'eye-injury',
      'flammable',
      'fire',
      'splash',
    ],
    signals:
      /\b(?:acid|caustic|bleach|solvents?|descaler|degreaser|brake cleaner|carb(?:urett?or)? cleaner|parts cleaner|thinners?|acetone|chlorine|ammonia|drain cleaner|paint stripper|oven cleaner|group cleaner|alkaline cleaner|epoxy|isocyanate|lye|sodium hydroxide|battery acid|biocide|toluene|xylene|methylene|rust remover|brake fluid|antifreeze|coolant|pesticide)\b/i,
    not: /\b(?:citric|acid-free|coolant (?:hose|level|cap|pump|line|pipe)|antifreeze tester|non-toxic|rv antifreeze|solvent-free|neutralis\w*|neutraliz\w*|dispos\w*|collection|take the|(?:used|old|waste|drained) (?:coolant|solvent|brake fluid|antifreeze))\b/i,
    known:
      /\b(?:eyes?|skin|fumes?|vapou?rs?|gas|ventilat\w*|gloves?|goggles|poison\w*|toxic|flammable|acid|splash\w*|caustic|breath\w*|chemical|burn\w*|solvent|coolant|antifreeze|data sheet|brake fluid|paint)\b/i,
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
    id: 'compressed-air',
    alias: ['eye-injury', 'projectile', 'eye', 'pressure', 'flying-particles', 'flying-debris', 'eyes', 'debris'],
    signals:
      /\b(?:compressed air|air[- ]?(?:gun|line)|blow ?gun|air nozzle|blow(?:ing)? (?:the |any |all )?(?:\w+ ){0,3}(?:out|off|clean|clear|through|dry)|shop air)\b/i,
    not: /\b(?:fuse|hair ?dryer|by mouth|canned air|bulb|bellows|puffer)\b/i,
    known: /\b(?:eyes?|glasses|goggles|compressed air|flying|particles?|blind\w*|ejected|face|debris)\b/i,
    protection: /\b(?:glasses|goggles|eye protection|face shield|visor)\b/i,
    level: 'caution',
    caution:
      'Compressed air throws grit into eyes and must never meet skin: wear eye protection, keep others clear, and keep to the pressure the maker allows.',
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
      /\b(?:hammers?|hammering|chisel (?:off|out|away|the)|cold chisel|(?:centre|center|pin|drift) punch|angle grinder|grinding|grinder|grind (?!paste)|drill(?:ing)? (?:out|through|a|the)|wire wheel|(?:take|make|turn) a (?:test |light |facing |trial )?cut|turn (?:two|the|a) (?:collars?|diameter|shoulder|bar)|strike|abrasive (?:wheel|disc)|needle gun|(?:start|run)\w*\b[^.;]*\b(?:chain ?saw|saw|brush ?cutter|strimmer|shredder|chipper|trimmer))\b/i,
    not: /\b(?:rubber (?:mallet|hammer)|soft[- ]faced|water hammer|by hand|slide hammer|grinding noise|grinding paste|without grinding|for grinding)\b/i,
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
    id: 'airbag',
    alias: ['explosion', 'deployment', 'projectile', 'pyrotechnic'],
    signals: /\b(?:air ?bags?|srs|squib|clock ?spring|pretensioner)\b/i,
    known: /\b(?:air ?bags?|deploy\w*|srs|go(?:es)? off)\b/i,
    level: 'danger',
    caution:
      'An airbag that goes off can kill: leave it to those trained for it; the maker’s manual says how to disable it and how long to wait.',
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
    id: 'radiation',
    alias: ['laser', 'uv', 'arc-eye', 'eye-injury'],
    signals: /\b(?:laser (?:tube|head|beam|cutter|module)|uv lamp|ultraviolet|welding arc)\b/i,
    known: /\b(?:laser|uv|ultraviolet|eyes?|beam|arc)\b/i,
    level: 'warning',
    caution:
      'The beam or arc blinds before you blink: keep interlocks closed and wear the eyewear the maker names for it.',
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
