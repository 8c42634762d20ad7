import type { Hazard } from './hazard'
import { on, PRACTICE } from './hazards-deed-words'

/** What falls, moves or lets people fall. See hazards-deeds.ts. */
export const DEEDS_OF_FALLING: readonly Hazard[] = [
  {
    id: 'dropping-part',
    alias: ['falling-load', 'falling-part', 'suspended-load', 'gravity', 'runaway'],
    signals:
      /\b(?:(?:push|put|drop|slide|shove|swing|tap|slip|set|stand|fit|drive)\w*\b[^.;]*\b(?:drop pin|safety pin|mast pin|locking pin|steel pin|lock pins?|props?|strut|safety bar|safety stay|mast block|locking bar|sprag|(?:axle |jack |the |two |four )stands?)\b[^.;]*\b(?:through|into|in|under|below|beneath|between|up|beneath)\b|(?:crank|heave|winch|jack|hoist)\w*\b[^.;]*\b(?:head|weight|counterweight|beam|table|boom|frame|deck|tower|platform|ram|carriage|body|bed|seat|bin|hopper|tank|axle|front|rear|side|corner|back end)\b|prop\b[^.;]*\b(?:seat|lid|bed|body|flap|hatch|head|frame|arms?|deck|tailgate)\b|(?:hang|lift|raise)\w*\b[^.;]*\b(?:test weights?|test load|counterweight|take-up weight|lift arms|boom|bucket|hopper|tipper|header|implement)\b|(?:raise|lift|jack)\w*\b[^.;]*\bon (?:the |its |two |four )?(?:axle |jack )?stands?\b)/i,
    not: /\b(?:drum|rotor|flywheel|spindle|shaft|pulley|wheel|hair|bike|bicycle|motorcycle|tyre|tire|hood|bonnet|lower|take|out|away|remove)\b/i,
    known:
      /\b(?:fall(?:s|ing)?|drops?|dropping|come(?:s)? down|crash(?:es)? down|sinks?|collaps\w*|slams?|run(?:s)? down|topples?|tips?|slips? off|under (?:it|the|a)|beneath|below|crush\w*)\b/i,
    level: 'warning',
    caution:
      'What is raised or propped can drop and crush whoever is under it: hold it with the stop the maker names, and keep everyone from below.',
    source: PRACTICE,
  },
  {
    id: 'climbing',
    alias: ['height', 'fall', 'falling', 'fall-from-height', 'working-at-height'],
    signals:
      /\b(?:podium(?: steps)?|step ?ladders?|ladders?|scaffold\w*|folding platform|hop-up|trestle board|climb\w*)\b(?! (?:rack|frame|truck))/i,
    not: /\b(?:(?<=[a-z] )climb\w* (?:(?:up|over|on|onto|off|out of) )?(?:(?:the|a|its|no|any) )?(?:[a-z]+ )?(?:sprocket|rail|flange|teeth|guide)|away|down from|rope ladder|put the ladder|cable ladder|fold the|carry)\b/i,
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
    not: /\b(?:chain block|crane|forklift|hoist it|engine hoist|pallet truck|two people|a second|between two|test (?:load|weight)|with (?:a|two|your|the) (?:helper|mate|people|trolley|hoist)|grease|lead|cable|clamp|terminal|feeler|gauge|gap|plugs?|seal|gasket)\b/i,
    known: /\b(?:backs?|strain\w*|heav\w*|two people|second person|helper|weigh\w*|rupture|hernia)\b/i,
    level: 'caution',
    caution: 'It is heavy enough to hurt a back: lift it with a second person or a lifting aid, close to the body.',
    source: 'ISO 11228-1 on lifting by hand (from memory)',
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
    id: 'spill-underfoot',
    alias: ['slip', 'slipping', 'fall', 'wet-floor'],
    signals:
      /\b(?:mop|squeegee)\w*\b(?![^.;]* with )(?! (?:up )?(?:the |any |all )?spill)|\b(?:hose|wash(?! ?(?:bay|slab|yard|down bay))|swill)\w*\b[^.;]*\b(?:yard|floor|slab|bay)\b|\b(?:scatter|spread|throw)\w*\b[^.;]*\b(?:granules|absorbent|sand)\b(?! (?:mats?|pads?|sheets?))|\b(?:soak|suck)\w* up\b[^.;]*\b(?:oil|spill|pool|coolant|(?<!rest of the |remaining |last )water)\b/i,
    not: /\b(?:bench|tray|panel|seat|table|pad)\b|^(?:mop|squeegee)s?(?: and bucket)?$/i,
    known: /\b(?:slip\w*|slid\w*|wet|floor|skid\w*|falls?\b|boots|mop\w*|underfoot|greasy|oily)\b/i,
    level: 'caution',
    caution: 'What is spilt throws people off their feet: lay absorbent at once and keep others away until it is dry.',
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
    id: 'motion-by-power',
    alias: ['crush', 'moving-machine', 'moving-parts', 'trap', 'pinch', 'shear'],
    signals:
      /\b(?:run|raise|lower|jog|inch|drive|cycle|ride|fold|curl)\w*\b[^.;]*\b(?:ram|dock|mast|boom|bucket|hopper|chair|couch|bed|backrest|wings|clamp|axis|robot|gate|tailgate|tail lift|lift|knife|carriage|forks|press)\b[^.;]*\b(?:up|down|in|out|over|once|twice|times|height|highest|lowest|stroke|travel|top|bottom|closed|open|clear|gently|seat)\b/i,
    equipment:
      /\b(?:hydraulic|electric|powered|pneumatic|robot\w*|dock levell?er|tail ?lift|compactor|baler|press|excavator|loader|forklift|tipper|sweeper|dental chair|bed|stair ?lift|platform lift|gate|guillotine|\d+ v|\d+ kw|tonne)\b/i,
    not: /\b(?:by hand|manually|drill press|off)\b/i,
    known:
      /\b(?:crush\w*|trap\w*|pinch\w*|moving|moves?|clear|everyone|nobody|no one|keep out|shear\w*|caught|catch\w*|under (?:it|the|a)|reach|hit\w*|fingers?|hands?)\b/i,
    level: 'warning',
    caution: 'Moved by power it traps and crushes: keep everyone clear of its way and a hand on the stop.',
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
]
