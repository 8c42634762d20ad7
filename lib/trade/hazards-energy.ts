import type { Hazard } from './hazard'

const PRACTICE = 'common practice, no source'

/** What hurts by electricity, pressure, heat and stored force. See hazards.ts. */
export const ENERGY: readonly Hazard[] = [
  {
    id: 'battery',
    alias: ['acid', 'burn', 'electrical', 'short-circuit', 'electric-shock', 'explosion', 'spark', 'arc'],
    signals:
      /\b(?:(?:disconnect|reconnect|remove|connect|unplug|lift out|refit|fit|install|jump|top up|take out|clean)\w*\b[^.;]*\b(?:batter(?:y|ies)|battery (?:lead|terminal|cable|clamp|post)s?)|battery acid|electrolyte)\b/i,
    not: /\b(?:(?:ground|earth|negative|black|minus) (?:battery )?(?:cable|lead|terminal|clamp|strap)\b(?![^.;]*\b(?:lift|take|remove|pull|slide|unbolt)\w*\b[^.;]*\bbattery\b|[^.;]*\b(?:positive|red|plus)\b)|battery (?:ground|earth|negative|minus) (?:cable|lead|terminal|clamp|strap)|(?:black|negative|minus|ground|earth) battery|coin cell|button cell|AAA?|remote|battery (?:cover|door|compartment)|voltage|torch|meter)\b/i,
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
    signals: /\b(?:insulation (?:test\w*|resistance)|insulation (?:tester|meter)|hi-?pot|flash test)\b/i,
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
    id: 'hot-surface',
    alias: ['burn', 'burns', 'heat', 'scald', 'hot', 'hot-oil', 'hot-liquid', 'steam', 'thermal', 'scalding', 'fire'],
    hints:
      /\b(?:warm (?:up )?the (?:oil|engine|gearbox|fluid)|hot (?:oil|water|engine|coolant)|drain\w*\b[^.;]*\bengine oil|run the engine|(?:drain|empty)\w*\b[^.;]*\b(?:boiler|water heater)|let\b[^.;]*\bcool)\b|\bremaining water\b/i,
    signals:
      /\b(?:hot(?!-swap)(?:end)? (?!glue)\w+|exhaust (?:manifold|pipe)|muffler|silencer|steam|boiling|soldering iron|heat gun|blow ?torch|braz(?:e|ing)|while (?:it is )?(?:still )?(?:warm|hot)|(?:drain|change)\w*\b[^.;]*\bwarm\b|glow plug|oven)\b/i,
    not: /\b(?:cool\w*|cold|hot (?:glue|shoe|water (?:tap|supply|valve|pipe))|gloves?|before)\b/i,
    known: /\b(?:burn\w*|hot|scald\w*|cool\w*|heat|steam|fire)\b/i,
    protection: /\bheat[- ]resistant gloves\b|\blet\b[^.;]*\bcool\b/i,
    level: 'caution',
    caution:
      'Hot parts and fluids burn skin: let them cool or wear gloves made for the heat, and follow the maker’s cooling time.',
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
    id: 'radiation',
    alias: ['laser', 'uv', 'arc-eye', 'eye-injury'],
    signals: /\b(?:laser (?:tube|head|beam|cutter|module)|uv lamp|ultraviolet|welding arc)\b/i,
    known: /\b(?:laser|uv|ultraviolet|eyes?|beam|arc)\b/i,
    level: 'warning',
    caution:
      'The beam or arc blinds before you blink: keep interlocks closed and wear the eyewear the maker names for it.',
    source: PRACTICE,
  },
]
