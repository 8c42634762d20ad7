import type { HazardContext } from './hazards-context'

/** Verbs that set a machine going, at the head of a step or after "then". */
const RUNS =
  '(?:start|restart|run|idle|warm|fire|crank|rev|pull over|let|bring|try|test|cut|mow|chip|print|grind|plane|spin)'
/** Verbs that move what carries a load. */
const MOVES =
  '(?:raise|lower|lift|let down|ease down|ease|bring down|bring|drop|inch|jog|run|drive|cycle|tip|fold|swing|close|shut|open|travel|park|extend|retract|wind)'
/** Verbs that turn something by hand or slowly. */
const TURNS = '(?:turn|crank|wind|inch|jog|roll|rotate|bar|feed|walk|thread|spin|cycle)'
/** Verbs that open a way to what stands inside. */
const OPENS =
  '(?:lift|hoist|pull|draw|undo|unhook|disconnect|flush|prime|bleed|unscrew|take|open|swap|change|connect|hook|empty|drain|pop|ease|tease|peel|rinse|loosen|slacken|tip)'
const BATTERY_CYCLES =
  /\b(?:e-?bikes?|pedelecs?|electric (?:[\w-]+ )?(?:bikes?|bicycles?|trikes?|scooters?|skateboards?|unicycles?)|lithium|li-ion|cordless|battery-powered (?:drill|mower|saw|trimmer|tool)s?|drones?|robot(?:ic)? (?:mowers?|lawn ?mowers?|vacuums?))\b/i

const on = (verbs: string, things: string): RegExp => new RegExp(`\\b${verbs}\\w*\\b[^.;]*\\b(?:${things})\\b`, 'i')

/**
 * Hazards by class of machine and deed, wider than the rows of hazards-context.ts: each only hints. General knowledge, no source;
 * kinds of hazard after ISO 12100:2010 annex B (from memory). To teach a class, extend its row.
 */
export const HAZARD_CLASSES: readonly HazardContext[] = [
  {
    hazard: 'carbon-monoxide',
    machine:
      /\b(?:petrol|gasoline|diesel|two-?stroke|four-?stroke|combustion engine|(?:car|truck|van|outboard) engine|chain ?saws?|motorcycles?|motorbikes?|mopeds?|vans?|trucks?|lorr(?:y|ies)|cars?|hatchbacks?|pickups?|quads?|generators?)\b/i,
    notMachine: /\b(?:electric|e-?bikes?|battery-powered|cordless|230 v|tyres?|tires?|trailer|towed|kart track)\b/i,
    signals: on(RUNS, 'engines?|motor|saw|generator|mower|machine|van|truck|car|motorcycle|pump set|set|idle|throttle'),
    not: /\b(?:stop|off|outdoors|outside|test drive|by hand|round the yard)\b/i,
    isHint: true,
  },
  {
    hazard: 'lithium',
    machine: BATTERY_CYCLES,
    signals: on(
      '(?:slide|take|lift|pull|remove|unclip|unlock|detach|unplug|release|drop|charge|snap|slip)',
      'battery|batteries|pack|cells?',
    ),
    isHint: true,
  },
  {
    hazard: 'battery',
    machine:
      /\b(?:lead[- ]acid|traction batter(?:y|ies)|uninterruptible power|ups|batter(?:y|ies) (?:strings?|banks?|rooms?)|golf (?:cart|buggy)|floor scrubbers?|scrubber[- ]driers?)\b/i,
    signals: on(
      '(?:charge|unbolt|unplug|disconnect|undo|remove|slide|lift|water|top up|take)',
      'batter(?:y|ies)|cells?|links?|bridges?|vent (?:caps?|plugs?)',
    ),
    isHint: true,
  },
  {
    hazard: 'crush',
    machine:
      /\b(?:lifts?|lifting (?:table|platform)s?|hoists?|elevators?|tail ?lifts?|dock levell?ers?|scissor|tippers?|tipping|platforms?|forklifts?|fork ?lift trucks?|reach trucks?|stackers?|pallet trucks?|loaders?|masts?|presses|press|cranes?|compactors?|balers?|hospital beds?|recliners?|(?:dental|treatment) (?:chairs?|couch(?:es)?)|shutters?|gates?|barriers?|ramps?)\b/i,
    notMachine: /\b(?:printing|offset|press fit|filter press|french press|gate valve|chair ?lift)\b/i,
    signals: on(
      MOVES,
      'carriages?|platform|ramp|lip|table|forks?|mast|boom|bucket|ram|beam|loads?|vehicle|van|truck|deck|backrest|seat|gate|shutter|flap|hook|cage|lift|plate|bale|couch|trolley|platen',
    ),
    not: /\b(?:by hand and|lock|stow|label)\b/i,
    isHint: true,
  },
  {
    hazard: 'pinch',
    machine:
      /\b(?:print\w*|offset|press(?:es)?|laminators?|rollers?|mangles?|calenders?|sheeters?|winders?|rewinders?|conveyors?|escalators?|mills?|folders?|labell?ers?|wrappers?|looms?|knitting|balers?|collators?|ironers?|treadmills?|belt[- ]driven|chain[- ]driven)\b/i,
    notMachine: /\b(?:3d|ink ?jet|laser printer|office|milling|window|paint roller)\b/i,
    signals: on(
      TURNS,
      'cylinders?|rollers?|drums?|belts?|chains?|gears?|sheets?|web|blanket|press|machine|flywheel|handwheel|paper|fabric|film',
    ),
    not: /\b(?:unplugged|screw|nut|knob|dial|adjusters?|tensioners?)\b/i,
    isHint: true,
  },
  {
    hazard: 'chemical',
    machine: /./,
    signals:
      /\b(?:(?:fryer|oven|grill|drain|wheel|coil|brick|tile|toilet|concrete|engine|carburett?or|rust|moss|deck|tar|pipe|boiler|line|beer line|milk|pipeline|resin|acid|caustic|alkali\w*|hull|graffiti) cleaner|(?:blanket|plate|roller|screen|resin|acid|caustic|alkali\w*|parts) wash|lye|caustic|alkali|pickling (?:gel|paste|acid)|etch(?:ant|ing (?:gel|acid|solution))|photo developer|fixer bath|biocides?|(?:corrosion|scale) inhibitor|wood preservative|paint (?:stripper|remover)|gasket (?:stripper|remover)|rust (?:remover|converter)|weed ?killer|pesticides?|battery acid|electrolyte|(?:sulph?uric|hydrochloric|phosphoric|nitric|peracetic|formic) acid|slaked lime|expanding foam|isocyanates?)\b/i,
    not: /\b(?:drum for|labelled|dispos\w*|waste|collection|empty (?:can|bottle|drum)|level)\b/i,
    isHint: true,
  },
  {
    hazard: 'chemical',
    machine:
      /\b(?:dosing|chemicals?|acid|alkali|caustic|bleach|hypochlorite|chlorin\w*|detergent pumps?|brine electroly\w*|developer|plating|descal\w*|water softener resin|fertigation|sprayers?|crop sprayer)\b/i,
    notMachine: /\b(?:paint|airless|lead[- ]acid)\b/i,
    signals: on(
      OPENS,
      'lances?|dosing|squeeze tubes?|injectors?|injection (?:valve|point)|pick-?ups?|canisters?|carboys?|drums?|pump heads?|diaphragms?|nozzles?|foot valves?|suction (?:line|tube|hose)s?',
    ),
    not: /\b(?:clean water line|air)\b/i,
    isHint: true,
  },
  {
    hazard: 'flammable-liquid',
    machine: /./,
    signals:
      /\b(?:(?:blanket|plate|roller|screen) wash|cellulose thinners?|thinners?|brake cleaner|carb(?:urett?or)? cleaner|rubber (?:solution|cement)|parts[- ]washer solvent|solvent(?! trap)|nitro(?:cellulose)? lacquer|spirit varnish|shellac|petroleum ether)\b/i,
    not: /\b(?:dispos\w*|collection|contractor|waste|drum for|solvent-free|resistant|can with a lid|lidded)\b/i,
    isHint: true,
  },
  {
    hazard: 'dust',
    machine: /\b(?:brakes?|clutch(?:es)?)\b/i,
    notMachine: /\b(?:fluid|bleed\w*|cable|lever)\b/i,
    signals:
      /\b(?:push|take|pull|slide|lift|drive|knock|brush|prise|pry|work|tap|slip)\w*\b[^.;]*\b(?:(?:old|worn|spent)\b[^.;]*\b(?:pads?|shoes?|linings?)|(?:pads?|shoes?|linings?) out\b|brake drum|drum off)\b/i,
    isHint: true,
  },
  {
    hazard: 'height',
    machine:
      /\b(?:pump(?:ing)? stations?|wells?|pits?|manholes?|(?:lift |mine )?shafts?|sumps?|inspection chambers?|vaults?|cellar flaps?|loading docks?|silos?|lagoons?|cisterns?|escalators?)\b/i,
    notMachine:
      /\b(?:(?:drive|pump|pto|cardan|propeller|motor|cam|crank) shafts?|shaft (?:seal|bearing)s?|engine sump)\b/i,
    signals: on(
      '(?:open|lift|heave|remove|slide|swing|raise|pull|take|prise|lever)',
      '(?:access |well |pit |manhole |hatch )?(?:cover|hatch|grating|grate|manhole lid|trapdoor|floor plate|railing|guard ?rail|landing door)',
    ),
    not: /\b(?:pump cover|motor cover|terminal cover|end cover|fan cover|belt|box)\b/i,
    isHint: true,
  },
  {
    hazard: 'biological',
    machine:
      /\b(?:cooling towers?|humidifiers?|bedpans?|sluice|macerators?|dental (?:chair|unit|suction)|aspirators?|ambulances?|mortuary|grease traps?|refuse|garbage|poultry|kennels?|milking)\b/i,
    signals: on(
      '(?:clean|scrub|wipe|empty|brush|scrape|wash|rinse|strip|vacuum|hose)',
      'slime|trays?|pans?|traps?|basin|mist|muck|litter|strainers?|sumps?|drift eliminators?|canisters?|bowls?|filters?|hopper|liners?',
    ),
    isHint: true,
  },
  {
    hazard: 'stored-energy',
    machine: /\bband ?saws?\b|\bbow saws?\b|\bscroll saws?\b/i,
    signals: on('(?:uncoil|coil|fold|unfold|release|slacken|take|lift|slip)', 'blades?|bands?'),
    not: /\b(?:guides?|guard|tracking)\b/i,
    isHint: true,
  },
  {
    hazard: 'thrown-objects',
    machine:
      /\b(?:grinding wheels?|bench grinders?|angle grinders?|cut-off (?:saws?|wheels?)|centrifuges?|wheel balancers?|disc mowers?|flail|lawn ?mowers?|ride-?on mowers?|chippers?|shredders?|hammer mills?)\b/i,
    signals: on(
      '(?:start|restart|run|spin|switch|turn on|engage)',
      'grinder|wheel|centrifuge|rotor|mower|deck|blades?|chipper|shredder|machine|mill',
    ),
    not: /\b(?:by hand|off\b|unplug\w*|engine at idle)/i,
    isHint: true,
  },
]
