import type { Hazard } from './hazard'

const PRACTICE = 'common practice, no source'

const HANDS =
  '(?:take|lift|pull|slide|draw|ease|pop|unscrew|unclip|remove|unbolt|undo|unhook|back|wind|work|slip|twist|prise|pry|lever|tap|drift|knock|drive|push|press|hoist|tease|swing|drop|haul|fit|set|lay|put|seat|hang|get|reach|tip|turn|roll|spring|snap|wiggle|walk)'
const on = (verbs: string, things: string): RegExp => new RegExp(`\\b${verbs}\\w*\\b[^.;]*\\b(?:${things})\\b`, 'i')

/**
 * What a deed on a kind of part brings, however the machine is called, each with the words that answer just that: a caution on
 * splashed acid says nothing of its fumes. To teach a deed, add a row. General knowledge, no source; kinds of hazard after
 * ISO 12100:2010 annex B (from memory).
 */
export const DEED_HAZARDS: readonly Hazard[] = [
  {
    id: 'dropping-part',
    alias: ['falling-load', 'falling-part', 'suspended-load', 'gravity', 'runaway'],
    signals:
      /\b(?:(?:push|put|drop|slide|shove|swing|tap|slip|set|stand|fit|drive)\w*\b[^.;]*\b(?:drop pin|safety pin|mast pin|locking pin|steel pin|lock pins?|props?|strut|safety bar|safety stay|mast block|locking bar|sprag|(?:axle |jack |the |two |four )stands?)\b[^.;]*\b(?:through|into|in|under|below|beneath|between|up|beneath)\b|(?:crank|heave|winch|jack|hoist)\w*\b[^.;]*\b(?:head|weight|counterweight|beam|table|boom|frame|deck|tower|platform|ram|carriage|body|bed|seat|bin|hopper|tank|axle|front|rear|side|corner|back end)\b|prop\b[^.;]*\b(?:seat|lid|bed|body|flap|hatch|head|frame|arms?|deck|tailgate)\b|(?:hang|lift|raise)\w*\b[^.;]*\b(?:test weights?|test load|counterweight|take-up weight|lift arms|boom|bucket|hopper|tipper|header|implement)\b|(?:raise|lift|jack)\w*\b[^.;]*\bon (?:the |its |two |four )?(?:axle |jack )?stands?\b)/i,
    not: /\b(?:hair|bike|bicycle|motorcycle|tyre|tire|hood|bonnet|lower|take|out|away|remove)\b/i,
    known:
      /\b(?:fall(?:s|ing)?|drops?|dropping|come(?:s)? down|crash(?:es)? down|sinks?|collaps\w*|slams?|run(?:s)? down|topples?|tips?|slips? off|under (?:it|the|a)|beneath|below|crush\w*)\b/i,
    level: 'warning',
    caution:
      'What is raised or propped can drop and crush whoever is under it: hold it with the stop the maker names, and keep everyone from below.',
    source: PRACTICE,
  },
  {
    id: 'sprung-clip',
    alias: ['eye-injury', 'flying-part', 'flying-parts', 'projectile', 'ejection'],
    signals: new RegExp(
      `\\b${HANDS}\\w*\\b[^.;]*\\b(?:circlips?|snap rings?|retaining rings?|e-clips?|spring clips?|spring clamps?|split pins?|roll pins?)\\b[^.;]*\\b(?:off|out|free|from)\\b|\\b(?:spring|prise|pop|ease|take|pick)\\w*\\b[^.;]*\\b(?:off|out)\\b[^.;]*\\bcirclips?\\b|\\b(?:spread|squeeze|open)\\w*\\b[^.;]*\\bcirclips?\\b|\\b(?:snap|break|chip|shear|crack)\\w*\\b[^.;]*\\b(?:bolt tails?|bolt heads?|tails|studs?|rivets?|welds?|slag|tiles?|concrete)\\b|\\b(?:lever|prise|pry)\\w*\\b[^.;]*\\bbead\\b|\\bdress\\w*\\b[^.;]*\\b(?:wheel|stone|weld)\\b|\\bgrind\\w*\\b[^.;]*\\b(?:off|out|back|away|bolts?|cracks?|welds?)\\b|\\b(?:drive|drift|punch|chisel)\\w*\\b[^.;]*\\brivets?\\b|\\bwire-?brush\\w*\\b[^.;]*\\b(?:rims?|rust|scale)\\b`,
      'i',
    ),
    known: /\b(?:eyes?|eyesight|blind\w*|face|goggles|glasses|visor|shield|fl(?:y|ies|ying)|shoots?)\b/i,
    protection: /\b(?:glasses|goggles|eye protection|face shield|visor)\b/i,
    level: 'caution',
    caution: 'What springs or snaps off flies into eyes: wear safety glasses and hold it covered while it comes free.',
    source: PRACTICE,
  },
  {
    id: 'sheet-edge',
    alias: ['sharp-edge', 'sharp-edges', 'cut', 'cuts', 'sharp', 'laceration'],
    signals: on(
      HANDS,
      '(?:back|rear|side|front|base|kick|bottom|outer|lower|top|drum|service) (?:panel|plate|sheet|casing|skin|shell)|sheet[- ]metal|raw edges?',
    ),
    equipment:
      /\b(?:washing machine|tumble dryer|dryer|dishwasher|ice machine|oven|fridge|freezer|vending|air handler|kiln|furnace|cooker)\b/i,
    not: /\b(?:back on|refit|plastic)\b/i,
    known: /\b(?:edges?|sharp|cuts?|slic\w*|gash\w*|burrs?|fins?|cut-proof|work gloves)\b/i,
    protection: /\b(?:cut[- ](?:proof|resistant)|work gloves|leather gloves)\b/i,
    level: 'caution',
    caution: 'Bare sheet metal has edges like knives: wear cut-resistant gloves and reach in with sleeves down.',
    source: PRACTICE,
  },
  {
    id: 'keen-edge',
    alias: ['sharp', 'cut', 'cuts', 'blade', 'laceration'],
    signals: on(
      '(?:hone|sharpen|whet|strop|file|grind|touch up)',
      'knife|knives|blades?|edges?|cutters?|tines?|shears',
    ),
    not: /\b(?:burr|rust)\b/i,
    known: /\b(?:cuts?|sharp|slic\w*|gash\w*|sever\w*|blade|knife|edge|gloves|razor)\b/i,
    level: 'caution',
    caution: 'A honed edge cuts to the bone: wear cut-resistant gloves and work away from yourself.',
    source: PRACTICE,
  },
  {
    id: 'traffic',
    alias: ['vehicle', 'vehicles', 'struck-by', 'run-over', 'road'],
    signals:
      /\b(?:(?:traffic )?cones?\b(?!\s*(?:of|spanner|nut|wrench|inward|outward))(?=[^.;]*\b(?:out|around|square|side|road|in|up|back)\b)|hi(?:gh)?-vis\w*|(?:road|lane|kerb|carriageway|lay-by|forecourt)\b)/i,
    equipment:
      /\b(?:car park|pay station|street|road|gate|kerb|highway|lamp post|pole|bollard|barrier|traffic|charging (?:point|post|station)|forecourt|fuel pump|drop cable|manhole|cabinet|weighbridge|bus stop|petrol pump)\b/i,
    not: /\b(?:bring|gather|take|clear)\w*\b/i,
    known:
      /\b(?:traffic|vehicles?|cars?|lorr(?:y|ies)|trucks?|drivers?|motorists?|passing|run (?:you|someone) (?:over|down))\b/i,
    level: 'warning',
    caution:
      'Passing vehicles can run you down: close the place off with cones, wear high-visibility clothing, face the traffic.',
    source: PRACTICE,
  },
  {
    id: 'live-test',
    alias: ['electric-shock', 'electrical', 'shock', 'electrocution', 'voltage'],
    signals:
      /\bprove[sd]?\b[^.;]*\bdead\b|\b(?:test|probe|check|measure|try|meter|prove)\w*\b[^.;]*\b(?:terminals?|terminal strip|clamps?|bus ?bars?|bus|poles|each pole|outlet|socket|phases?|each phase|conductors?|every wire|each wire)\b[^.;]*(?:\b(?:voltage|two-pole|tester|voltmeter|multimeter|dead|zero|earth|nothing|no volts)\b|\.?$)/i,
    equipment:
      /\b(?:1[012]\d|2[0-4]\d|277|3[2-9]0|4[0-9]\d|480|[5-9]\d\d|1[05]00)[ -]?v(?:olts?)?\b|\bmains\b|\bthree[- ]phase\b|\bkw\b/i,
    not: /\b(?:resistance|continuity|ohms?|charger|12 v|24 v|battery)\b/i,
    known:
      /\b(?:mains|live\b|isolat\w*|prove[sd]?\b[^.;]*\bdead|hidden feed|back-?feed)|^(?!.*\b(?:capacitors?|discharg\w*|stored|holds? (?:its|a|their) charge|insulation|bank keeps|pushes|shoves)\b).*\b(?:shock\w*|electr(?!ician)\w*|volts?|voltage|\d+ ?v|current|heart)\b/is,
    level: 'danger',
    caution:
      'Until it is proved dead it can kill: keep fingers off, use a tester proved before and after, and leave what local codes reserve to a licensed electrician.',
    source: PRACTICE,
  },
  {
    id: 'tyre-filling',
    alias: ['burst', 'explosion', 'tyre-burst', 'pressure', 'projectile'],
    signals:
      /\b(?:inflate|pump|air|blow|bring|fill)\w*\b[^.;]*\b(?:tyres?|tires?|inner tubes?|beads?)\b|\b(?:pump|inflate|bring)\w* (?:it|them)\b[^.;]*\b\d[\d.]* ?(?:bar|psi|kpa)\b/i,
    equipment: /^(?!.*\b(?:bicycles?|bikes?|tricycles?|wheelchairs?|prams?|buggy)\b)/i,
    not: /\b(?:down|out of|air (?:gun|line|hose)|deflat\w*|check|compressed|bicycle|receiver|tank)\b/i,
    known: /\b(?:burst\w*|explo\w*|blow(?:s|n)?\b|pressure|cage|pops?|sidewall)\b/i,
    level: 'warning',
    caution:
      'A tyre that bursts throws pieces: stand beside the tread, use a long hose with a gauge, keep to the pressure on the wall.',
    source: PRACTICE,
  },
  {
    id: 'climbing',
    alias: ['height', 'fall', 'falling', 'fall-from-height', 'working-at-height'],
    signals:
      /\b(?:podium(?: steps)?|step ?ladders?|ladders?|scaffold\w*|folding platform|hop-up|trestle board|climb\w*)\b(?! (?:rack|frame|truck))/i,
    not: /\b(?:away|down from|rope ladder|put the ladder|cable ladder|fold the|carry)\b/i,
    known:
      /\b(?:falls?\b(?! (?:out|in)\b)|falling|fell|slips?|ladders?|height|climb\w*|harness|rungs?|podium|steps|brakes)\b/i,
    level: 'warning',
    caution:
      'A fall even from a few rungs can kill: stand the ladder firm, keep three points of contact, don’t lean out.',
    source: PRACTICE,
  },
  {
    id: 'open-pit',
    alias: ['fall', 'pit', 'trip', 'opening', 'falling'],
    signals: on(
      '(?:hoist|lift|take|hook|open|slide|draw|pull|remove|prise)',
      'floor plates?|manhole covers?|floor hatch|floor grates?|pit covers?|drain covers?|trapdoor|inspection pit|floor panels?',
    ),
    not: /\b(?:back|into (?:its|their) frames?|shut|close)\b/i,
    known: /\b(?:fall\w*|pit|hole|opening|barrier|trip\w*|step(?:s|ping)? (?:in|into|back))\b/i,
    level: 'caution',
    caution: 'Someone can fall into the open hole: put a barrier round it before it is opened and stay by it.',
    source: PRACTICE,
  },
  {
    id: 'back-strain',
    alias: ['manual-handling', 'strain', 'lifting', 'heavy', 'heavy-part', 'back', 'heavy-load'],
    signals:
      /\b(?:hang|lift|carry|heave|haul|hoist|lay|stand|tip|set|load|manhandle|wrestle)\w*\b[^.;]*\b(?:(?:[2-9]\d|\d{3}) ?(?:kg|kilos?)|(?:[5-9]\d|\d{3}) ?(?:lbs?|pounds))\b|\b(?:lift|carry|heave|haul|hoist|drag|slide|walk|roll|wheel|lower|draw|swing|pull|bring|take|set|ease|hook)\w*\b[^.;]*\b(?:floor plates?|manhole covers?|manhole door|anvil|flywheel|gearbox(?! (?:oil|plug|cover|lid))|gas (?:bottle|cylinder)|(?:old|new|full|empty) (?:bottle|cylinder)|traction (?:pack|battery)|starter battery|old battery|windscreen|window pane|counterweight|hopper off|hermetic compressor|old compressor|new compressor|(?:bags?|sacks?) (?:of|out)|cast lids?|mudhole doors?|bucket teeth)\b|\b(?:roll|walk|turn|slide|lay|tip|pull)\w* (?:the |it |her )?(?:range|cooker|fridge|freezer|mixer|dishwasher|washing machine|dryer|dresser|machine|oven|cabinet|still|safe)\b[^.;]*\b(?:out|over|round|back|from|on its|forward)\b/i,
    equipment: /^(?!.*\b(?:bench-?top|table-?top|desk-?top|model|toy)\b)/i,
    not: /\b(?:chain block|crane|forklift|hoist it|engine hoist|pallet truck|two people|a second|between two|with (?:a|two|your|the) (?:helper|mate|people|trolley|hoist)|grease|lead|cable|clamp|terminal)\b/i,
    known: /\b(?:backs?|strain\w*|heav\w*|two people|second person|helper|weigh\w*|rupture|hernia)\b/i,
    level: 'caution',
    caution: 'It is heavy enough to hurt a back: lift it with a second person or a lifting aid, close to the body.',
    source: 'ISO 11228-1 on lifting by hand (from memory)',
  },
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
    id: 'stored-charge',
    alias: ['capacitor', 'electric-shock', 'stored-energy', 'charge'],
    signals: on(
      '(?:take|remove|lift|unscrew|unbolt|open|pull|pop|slide)',
      '(?:motor|drive|inverter|operator|control|power|rear|back|machine|compressor) (?:cover|lid|hood|housing|cap|panel)',
    ),
    equipment:
      /\b(?:(?:sliding|swing|yard|drive|powered|motor-driven) gates?|gates?\b[^.]*\bdrive|microwave|inverter|frequency drive|uninterruptible|welder|welding (?:set|machine|inverter)|treadmill|defibrillator|flash(?:gun)?|air condition\w+ (?:unit|condenser)|condensing unit)\b/i,
    known: /\b(?:capacitors?|charged?|discharg\w*|stored)\b/i,
    level: 'warning',
    caution:
      'A capacitor inside can shock you after the power is off: wait as the maker says, then measure before you reach in.',
    source: PRACTICE,
  },
  {
    id: 'wet-underfoot',
    alias: ['slip', 'slipping', 'fall', 'wet-floor'],
    signals: on(
      '(?:flush|hose|wash|rinse|bleed|open|haul|lift)',
      'lines?|lances?|filter|drums?|knob|pump|basin|pond|pool|drain|floor|hoses?|lid|foams?',
    ),
    equipment: /\b(?:ponds?|pools?|car wash|dosing|slaughter\w*)\b/i,
    known: /\b(?:slip\w*|slid\w*|wet|floor|skid\w*|falls?\b|boots)\b/i,
    level: 'caution',
    caution: 'Wet or slimy ground takes your feet away: wear boots with grip, and wipe up or rinse down at once.',
    source: PRACTICE,
  },
  {
    id: 'kickback',
    alias: ['kick-back', 'saw', 'moving-chain'],
    signals: /\b(?:start|restart|run|rev|cut|fire)s?\b(?! (?:the engine|off)\b)/i,
    equipment: /\bchain ?saws?\b/i,
    not: /\b(?:by hand|tap|file|filing|off)\b/i,
    known: /\b(?:kick\w*|(?:moving|running) chain|chain (?:can|could|will|may)|bar nose|nose of the bar)\b/i,
    level: 'warning',
    caution:
      'A saw kicks back when the nose of the bar touches anything: brake on to start, both hands on it, nose clear.',
    source: PRACTICE,
  },
  {
    id: 'belt-nip',
    alias: ['pinch', 'nip', 'nip-point', 'trap', 'entrapment', 'crush'],
    signals:
      /\b(?:roll|walk|work|lever|run|slip|ease|stretch|force|turn)\w*\b[^.;]*\b(?:belts?|chain)\b[^.;]*\b(?:over|onto|on|off|round|around)\b[^.;]*\b(?:pulleys?|sheaves?|sprockets?|wheels?|drum)\b|\b(?:roll|walk|lever|stretch)\w*\b[^.;]*\bbelts?\b[^.;]*\b(?:over|onto|on|off)\b/i,
    known: /\b(?:pinch\w*|fingers?|trap\w*|nip\w*|catch\w*|draw\w*|pull\w* (?:in|your)|hands?)\b/i,
    level: 'caution',
    caution:
      'Fingers between belt and pulley are crushed: slacken the drive first and turn it with the palm on the belt’s back.',
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
    not: /\b(?:waste|spent|collection|dispos\w*|rinse|citric|vinegar|neutrali\w*|empty|drum for)\b/i,
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
    id: 'drive-shaft',
    alias: ['entanglement', 'rotating-parts', 'rotating-shaft', 'pto'],
    signals: /\b(?:pto|power take-off|drive shaft|cardan(?: shaft)?|prop(?:eller)? shaft)\b/i,
    equipment:
      /\b(?:tractor|trailed|pto|power take-off|implement|baler|sprayer|mower|spreader|tiller|auger|combine|540 rpm|mounted)\b/i,
    not: /\b(?:off|out of gear|disengage|stop)\b/i,
    known:
      /\b(?:catch\w*|caught|wrap\w*|wind\w*|entangl\w*|clothes|clothing|sleeves?|shaft|drawn|turns?|turning|spinning)\b/i,
    level: 'danger',
    caution:
      'A turning drive shaft winds clothes up and kills: tractor engine off and key out, shield whole, nobody near while it turns.',
    source: PRACTICE,
  },
  {
    id: 'running-down',
    alias: ['coasting', 'rotating-parts', 'entanglement', 'moving-parts'],
    signals:
      /\b(?:wait|let|leave)\w*\b[^.;]*\b(?:stands? still|stop(?:s|ped)?|run(?:s)? down|come(?:s)? to rest|spin(?:s)? down|coast\w*|stood still)\b/i,
    equipment: /\b(?:fans?|blowers?|centrifuges?|rotors?|turbines?|flywheels?|extractors?|booth)\b/i,
    not: /\b(?:drip\w*|bubbl\w*|hiss\w*|drain\w*|flow\w*)\b/i,
    known: /\b(?:coast\w*|still|run(?:s|ning)? (?:on|down)|spin\w*|turn\w*|rotor|wheel|blades?|fingers?)\b/i,
    level: 'warning',
    caution: 'It turns on long after the switch is off and takes fingers: open nothing until it stands still.',
    source: PRACTICE,
  },
  {
    id: 'lid-pressure',
    alias: ['pressure', 'stored-pressure', 'projectile', 'burst', 'ejection'],
    signals: on(
      '(?:ease|undo|crack|open|unscrew|free|loosen|slacken|unclamp|back|twist|take|lift)',
      '(?:filter|strainer|vessel|canister|injector|housing|pump) (?:lid|cap|cover|clamp|bowl|band)|clamp band|bleed knob',
    ),
    equipment:
      /\b(?:pressure|pressuri[sz]ed|irrigation|drip|pool|pond|softener|sand filter|water filter|booster|well|boiler|compressor|sprayer)\b/i,
    not: /\b(?:fuel|air filter|oil filter|dust)\b/i,
    known: /\b(?:pressur\w*|fl(?:y|ies)|shoots?|eject\w*|burst\w*|blows?|bleed|jet|spray\w*)\b/i,
    level: 'warning',
    caution: 'Pressure left inside throws the lid: shut off and bleed it to zero, keep your face aside.',
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
    id: 'breaks-in-run',
    alias: ['flying-parts', 'projectile', 'burst', 'thrown-objects', 'ejection'],
    signals: /\b(?:start|run|spin|switch)\w*\b[^.;]*\b(?:band|wheel|grinder|saw|engine|disc|blade)\b/i,
    equipment: /\b(?:sawmill|band ?saw|bench grinder|angle grinder|grinding wheel|cut-off saw|disc cutter)\b/i,
    not: /\b(?:by hand|off|sander|engine oil)\b/i,
    known:
      /\b(?:burst\w*|break(?:s|ing)?|thrown?|fl(?:y|ies|ying)|fragments?|pieces|out of (?:the )?line|stand (?:at|to|aside|beside|clear))\b/i,
    level: 'warning',
    caution:
      'A band or wheel that breaks is thrown out: guards shut, stand out of its line, and let it run alone for the first minute.',
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
    id: 'toppling',
    alias: ['tipping', 'tip-over', 'crush', 'falling'],
    signals:
      /\b(?:raise|lift|jack|prop|strap|stand|hoist)\w*\b[^.;]*\b(?:front|rear|bike|motorcycle|frame|wheel|bicycle|scooter)\b[^.;]*\b(?:stand|headstock|paddock|workstand|post|block|jack)\b/i,
    equipment: /\b(?:motorcycles?|motorbikes?|mopeds?|scooters?|cargo (?:bikes?|bicycles?|trikes?|tricycles?))\b/i,
    not: /\b(?:let|down|off)\b/i,
    known: /\b(?:toppl\w*|tips?\b|tipping|falls?|falling|fell|drops?|rolls? off|crush\w*)\b/i,
    level: 'caution',
    caution: 'On its stand it can topple onto you: strap it, and try that it stands before you pull at anything.',
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
    id: 'caught-in-run',
    alias: ['entanglement', 'rotating-parts', 'drawn-in', 'catch'],
    signals:
      /\b(?:start|run|switch|spin|jog|inch|power)\w*\b[^.;]*\b(?:on|up|grinder|lathe|drill|polisher|buffer|wheel|spindle|chuck|machine|auger|conveyor|belt|rollers?|mill|mixer|slicer|press)\b/i,
    equipment:
      /\b(?:bench grinder|pedestal grinder|lathe|pillar drill|drill press|polish(?:er|ing)|buff(?:er|ing)|spindle moulder|auger|conveyor|roller mill|malt mill|winder|calender|ironer|offset press|printing press|bread slicer|dough mixer|spiral mixer|stump grinder)\b/i,
    not: /\b(?:by hand|off|lock|tag|light|lamp)\b/i,
    known:
      /\b(?:sleeves?|hair|gloves?|cloth(?:es|ing)?|catch\w*|wraps?|draws?|drawn|entangl\w*|jewell?ery|fingers?)\b/i,
    level: 'warning',
    caution:
      'It catches sleeves, hair and gloves and pulls the hand in: nothing loose on you, no gloves, hands clear until it stands still.',
    source: PRACTICE,
  },
  {
    id: 'spill-underfoot',
    alias: ['slip', 'slipping', 'fall', 'wet-floor'],
    signals:
      /\b(?:mop|squeegee)\w*\b(?![^.;]* with )|\b(?:hose|wash|swill)\w*\b[^.;]*\b(?:yard|floor|slab|bay)\b|\b(?:scatter|spread|throw)\w*\b[^.;]*\b(?:granules|absorbent|sand)\b(?! (?:mats?|pads?|sheets?))|\b(?:wipe|soak|suck)\w* up\b[^.;]*\b(?:oil|spill|pool|water|coolant)\b/i,
    not: /\b(?:bench|tray|panel|seat|table|pad)\b/i,
    known: /\b(?:slip\w*|slid\w*|wet|floor|skid\w*|falls?\b|boots|mop\w*|underfoot|greasy|oily)\b/i,
    level: 'caution',
    caution: 'What is spilt throws people off their feet: lay absorbent at once and keep others away until it is dry.',
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
  {
    id: 'loud-run',
    alias: ['noise', 'hearing', 'hearing-loss'],
    signals:
      /\b(?:start|run|fire|pull)\w*\b[^.;]*\b(?:saw|engine|standby set|compressor|blower|chipper|grinder|it|up|over)\b|\b(?:strim|chase|break out|cut)\w*\b[^.;]*\b(?:slot|lines?|weeds|concrete|test log|logs?)\b/i,
    equipment:
      /\b(?:chain ?saw|stump grinder|wood ?chipper|brush ?cutter|strimmer|cut-off saw|wall chaser|concrete saw|roots blower|lobe blower|screw compressor|petrol pressure washer|sawmill|hammer mill|leaf blower)\b/i,
    not: /\b(?:by hand|off|cut the engine|stop)\b/i,
    known: /\b(?:hearing|ears?|deaf\w*|muffs?|defenders|plugs|noise|loud)\b/i,
    protection: /\b(?:ear (?:muffs?|defenders|plugs?)|earplugs|muffs|hearing protection)\b/i,
    level: 'caution',
    caution: 'It is loud enough to harm hearing for good: wear ear muffs or plugs.',
    source: PRACTICE,
  },
  {
    id: 'fin-cuts',
    alias: ['sharp', 'cut', 'cuts', 'sharp-edge'],
    signals: on(
      '(?:comb|brush|straighten|wash|vacuum|clean)',
      '(?:condenser|evaporator|cooler|coil|radiator|bent)? ?fins?|evaporator plate',
    ),
    known: /\b(?:cuts?|sharp|slic\w*|fins?|gloves|edges?|razor)\b/i,
    protection: /\b(?:cut[- ](?:proof|resistant)|work gloves|leather gloves)\b/i,
    level: 'caution',
    caution: 'Fins and sheet edges slice fingers: wear cut-resistant gloves.',
    source: PRACTICE,
  },
  {
    id: 'cracked-glass',
    alias: ['sharp', 'cut', 'cuts', 'glass', 'broken-glass'],
    signals: on(
      '(?:lift|take|chip|knock|pick|pull|cut|ease|draw)',
      '(?:cracked|broken|shattered|smashed) (?:\\w+ )?(?:panel|tiles?|glass|panes?|mirror|screen|lamp|window|bulb)',
    ),
    known: /\b(?:cuts?|sharp|slic\w*|glass|gloves|edges?|shards?|splinters?)\b/i,
    level: 'caution',
    caution:
      'Broken pieces cut to the bone: wear cut-resistant gloves and glasses, and pick nothing up with bare fingers.',
    source: PRACTICE,
  },
  {
    id: 'fold-pinch',
    alias: ['pinch', 'trap', 'nip', 'crush'],
    signals: on(
      '(?:fold|unfold|collapse)',
      'scooter|wheelchair|chair|bed|leaf|platform|ramp|frame|stroller|pram|wings|ladder|table',
    ),
    known: /\b(?:pinch\w*|fingers?|trap\w*|nip\w*|crush\w*|hands?|shear\w*)\b/i,
    level: 'caution',
    caution: 'What folds pinches: hold it by the place the maker shows and keep fingers out of the joints.',
    source: PRACTICE,
  },
  {
    id: 'motion-by-power',
    alias: ['crush', 'moving-machine', 'moving-parts', 'trap', 'pinch', 'shear'],
    signals:
      /\b(?:run|raise|lower|jog|inch|drive|cycle|ride|fold|curl)\w*\b[^.;]*\b(?:ram|dock|mast|boom|bucket|hopper|chair|backrest|wings|clamp|axis|robot|gate|tailgate|tail lift|lift|knife|carriage|forks|press)\b[^.;]*\b(?:up|down|in|out|over|once|twice|times|height|stroke|travel|top|bottom|closed|open|clear|gently|seat)\b/i,
    equipment:
      /\b(?:hydraulic|electric|powered|pneumatic|robot\w*|dock levell?er|tail ?lift|compactor|baler|press|excavator|loader|forklift|tipper|sweeper|dental chair|bed|stair ?lift|platform lift|gate|guillotine|\d+ v|\d+ kw|tonne)\b/i,
    not: /\b(?:by hand|manually|drill press|off)\b/i,
    known:
      /\b(?:crush\w*|trap\w*|pinch\w*|moving|moves?|clear|everyone|nobody|no one|keep out|shear\w*|caught|catch\w*|under (?:it|the|a)|reach|hit\w*|fingers?|hands?)\b/i,
    level: 'warning',
    caution: 'Moved by power it traps and crushes: keep everyone clear of its way and a hand on the stop.',
    source: PRACTICE,
  },
]
