/** What a kind of machine is known for, whatever the steps say: a foreman asks for that caution when he reads the title. */
export type MachineHazards = {
  /** What title or equipment says. */
  readonly machine: RegExp
  readonly not?: RegExp
  /** What at least one step, check, tool or material has to say as well; without it, the machine is enough. */
  readonly and?: RegExp
  /** Ids of hazards. */
  readonly hazards: readonly string[]
}

/**
 * General knowledge of many machines, no source; kinds of hazard after ISO 12100:2010 annex B (from memory). To teach a machine,
 * add a row.
 */
export const MACHINE_HAZARDS: readonly MachineHazards[] = [
  {
    machine: /\b(?:welders?|welding (?:set|machine|torch|plant)|mig|tig|arc welding|plasma cutter)\b/i,
    and: /\b(?:weld|bead|arc|cut a|tack|trial|scrap)\b/i,
    hazards: ['radiation'],
  },
  {
    machine: /\b(?:argon|nitrogen|carbon dioxide|co2|dry ice|shielding gas|inert gas|helium)\b/i,
    hazards: ['asphyxiant'],
  },
  {
    machine:
      /\b(?:sewage|sewer|septic|ejector (?:pump|basin|pit)|cess ?pit|foul (?:drain|water)|soil (?:pipe|stack)|waste ?water|grease trap|slurry)\b/i,
    hazards: ['sewage'],
  },
  {
    machine: /\b(?:sewage|sewer|septic|ejector (?:pump|basin|pit)|cess ?pit|manhole|slurry|wet well|digester)\b/i,
    and: /\b(?:lid|cover|open|enter|basin|pit|tank)\b/i,
    hazards: ['sewer-gas'],
  },
  {
    machine: /\b(?:laboratory|lab|clinical|dental|surgical|blood|mortuary|veterinary|hospital)\b/i,
    not: /\b(?:bed|chair|wheelchair|office)\b/i,
    and: /\b(?:rotor|(?:test|blood|sample|broken|centrifuge) tubes?|suction|aspirators?|samples?|bedpans?|specimens?)\b/i,
    hazards: ['biological'],
  },
  {
    machine:
      /\b(?:centrifuges?|mixers?|kneaders?|meat (?:slicer|mincer)s?|mincers?|shredders?|chippers?|balers?|conveyors?|augers?|treadmills?|lathes?|milling machines?|drill presses|pillar drills?|roller mills?|sheeters?|extruders?|winders?|looms?|rotary tillers?|snow ?blowers?|wood ?chippers?)\b/i,
    hazards: ['rotating-parts'],
  },
  {
    machine:
      /\b(?:microwave ovens?|treadmills?|inverters?|frequency drives?|vfd|photo ?flash|strobes?|defibrillators?|cathode|crt|valve amplifiers?|tube amplifiers?|uninterruptible|ups|switch-mode power supply|motor controllers?)\b/i,
    and: /\b(?:hood|panel|cover|board|lid|case|housing|bay)\b/i,
    hazards: ['capacitor'],
  },
  {
    machine:
      /\b(?:resin (?:3d )?printers?|sla printers?|fibreglass|fiberglass|gelcoat|epoxy|polyurethane|two-part|paint sprayers?|spray booth)\b/i,
    hazards: ['chemical'],
  },
  {
    machine:
      /\b(?:laser (?:cutter|engraver|welder|marker)s?|uv (?:lamp|light|steriliser|sterilizer|curing)|germicidal)\b/i,
    hazards: ['radiation'],
  },
  {
    machine:
      /\b(?:fryers?|griddles?|pizza ovens?|espresso|steam (?:boilers?|ovens?|irons?|presses?)|autoclaves?|kilns?|forges?|wood stoves?|pellet stoves?|log burners?|wax pots?|tar boilers?|laundry presses?)\b/i,
    hazards: ['hot-surface'],
  },
  {
    machine: /\b(?:cooling system|coolant|radiator|engine thermostat|water pump)\b/i,
    not: /\b(?:heating radiator|central heating|towel|room|laptop|computer|coolant pump of)\b/i,
    and: /\b(?:engine|cap|drain|coolant)\b/i,
    hazards: ['hot-surface', 'chemical'],
  },
  {
    machine:
      /\b(?:cooling system|coolant|radiator|thermostat|alternator|fan belt|drive belt|serpentine|timing belt)\b/i,
    and: /\b(?:start|run|fire|crank|idle)\w*\b[^.;]*\b(?:engine|motor|her|it)\b/i,
    hazards: ['rotating-parts'],
  },
  {
    machine: /\b(?:mow(?:er|ing)s?|mowing deck|brush ?cutters?|strimmers?|string trimmers?|flail|topper|slashers?)\b/i,
    and: /\b(?:start|run)\w*\b/i,
    hazards: ['thrown-objects'],
  },
  {
    machine:
      /\b(?:mowers?|mowing deck|slicers?|planers?|jointers?|table saws?|band ?saws?|paper cutters?|guillotines?|hedge trimmers?|mandolines?)\b/i,
    and: /\b(?:blades?|knife|knives|cutters?)\b/i,
    hazards: ['sharp'],
  },
  {
    machine:
      /\b(?:table saws?|mitre saws?|circular saws?|planers?|thicknessers?|spindle moulders?|bench grinders?|angle grinders?|routers?|wood lathes?)\b/i,
    and: /\b(?:run|start|switch|cut|turn on)\b/i,
    hazards: ['flying-particles'],
  },
  {
    machine: /\b(?:garage|sectional|overhead|roller) doors?\b|\broller shutters?\b/i,
    not: /\bsensor|remote\b/i,
    hazards: ['crush'],
  },
  {
    machine:
      /\b(?:excavators?|loaders?|skid[- ]?steers?|backhoes?|log splitters?|hydraulic (?:press|lift|ram|cylinder|hose|pump)|tail ?lifts?|power packs?)\b/i,
    and: /\b(?:hose|line|fitting|cylinder|union|port|pump|valve)s?\b/i,
    hazards: ['hydraulic-injection'],
  },
  {
    machine: /\b(?:pressure washers?|jet wash(?:er)?s?|airless (?:sprayers?|paint)|water jets?)\b/i,
    hazards: ['hydraulic-injection'],
  },
  {
    machine: /\b(?:starter|lead-acid|traction|vehicle|car|tractor|marine|forklift) batter(?:y|ies)\b/i,
    hazards: ['battery'],
  },
  {
    machine: /\b(?:e-?bikes?|electric (?:bike|scooter|car|vehicle)s?|lithium|power bank|drone|cordless)\b/i,
    and: /\b(?:battery|pack|cells?)\b/i,
    hazards: ['lithium'],
  },
  {
    machine:
      /\b(?:gas|lpg|propane|butane) (?:boilers?|heaters?|stoves?|ovens?|cookers?|hobs?|furnaces?|fires?|grills?|barbecues?|fridges?|burners?|appliances?)\b/i,
    hazards: ['gas'],
  },
  {
    machine:
      /\b(?:wood|pellet|coal|log|multi-?fuel|oil) (?:stoves?|burners?|boilers?|furnaces?)\b|\bchimneys?\b|\bfireplaces?\b/i,
    and: /\b(?:light|fire|burn|relight|flue)\b/i,
    hazards: ['carbon-monoxide'],
  },
  {
    machine:
      /\b(?:pellet stoves?|wood stoves?|log burners?|fireplaces?|chimneys?|flues?|blast cabinets?|sand ?blast\w*|dust (?:collectors?|extractors?)|air ducts?|ductwork|air handl(?:ers?|ing)|fan coils?|hvac|evaporator coils?|concrete saws?|floor sanders?|sanders?)\b/i,
    hazards: ['dust'],
  },
  {
    machine:
      /\b(?:sand ?blast\w*|blast cabinets?|pneumatic (?:tools?|nailers?|drills?|wrenches?)|nail guns?|air (?:tools?|hammers?|compressors?))\b/i,
    hazards: ['compressed-air'],
  },
  {
    machine: /\b(?:nail guns?|nailers?|staplers?|rivet(?:er| gun)s?|cartridge tools?)\b/i,
    hazards: ['flying-particles'],
  },
  {
    machine:
      /\b(?:ceiling|roof|chimney|gutter|high[- ]bay|street ?light|mast|antenna|billboard|chandelier|overhead (?:crane|conveyor|line))\b/i,
    not: /\broof (?:bars?|rack|box|lining)\b/i,
    and: /\b(?:ladder|stepladder|platform|climb|up|scaffold|steps)\b/i,
    hazards: ['height'],
  },
  {
    machine: /\b(?:carburett?ors?|fuel (?:pumps?|filters?|tanks?|lines?|injectors?)|petrol tanks?)\b/i,
    hazards: ['fuel'],
  },
  { machine: /\bbrake fluid\b|\bbleed\w*\b[^.]*\bbrakes?\b|\bbrakes?\b[^.]*\bbleed/i, hazards: ['chemical'] },
  { machine: /\b(?:air ?bags?|pretensioners?|srs)\b/i, hazards: ['airbag'] },
  {
    machine:
      /\b(?:pools?|spas?|hot tubs?|descal\w*|sanitiz\w*|sanitis\w*|disinfect\w*|deliming|drain cleaning|oven cleaning)\b/i,
    and: /\b(?:pour|mix|spray|add|dose|drain|open|clean)\w*\b/i,
    hazards: ['chemical'],
  },
  {
    machine:
      /\b(?:chain (?:hoists?|blocks?)|overhead cranes?|engine hoists?|vehicle lifts?|car lifts?|two-post|scissor lifts?)\b/i,
    hazards: ['crush'],
  },
  {
    machine:
      /\b(?:water heaters?|calorifiers?|hot water cylinders?|boilers?|dishwashers?|steam cleaners?|urns?|kettles?)\b/i,
    and: /\b(?:drain|flush|empty|open)\w*\b[^.;]*\b(?:valve|water|tank|tap|heater|boiler|system)\b/i,
    hazards: ['hot-surface'],
  },
  {
    machine:
      /\b(?:torsion springs?|coil springs?|struts?|recoil (?:starters?|springs?)|garage door springs?|clutch springs?|valve springs?|trampolines?)\b/i,
    hazards: ['stored-energy'],
  },
  { machine: /\b(?:pto|power take-?off|cardan|propeller) shafts?\b/i, hazards: ['rotating-parts'] },
  {
    machine: /\b(?:windows?|windscreens?|glazing|glass (?:doors?|panels?|tops?)|mirrors?|aquariums?)\b/i,
    not: /\bwindow (?:fan|air|regulator|blind|motor)\b/i,
    and: /\b(?:panes?|glass|windscreen|mirror)\b/i,
    hazards: ['sharp'],
  },
  {
    machine: /\b(?:truck|lorry|bus|tractor|loader|grader|split[- ]rim|agricultural) (?:tyres?|tires?|wheels?|rims?)\b/i,
    and: /\binflat\w*|\bbead\b/i,
    hazards: ['tyre-burst'],
  },
  {
    machine: /\b(?:beer|soda|keg|draught|draft|carbonat\w*|aquarium co2|dry ice)\b/i,
    and: /\b(?:gas|co2|regulator|bottle|cylinder)\b/i,
    hazards: ['asphyxiant'],
  },
  {
    machine:
      /\b(?:hospital beds?|patient (?:lifts?|hoists?)|stair ?lifts?|recliner|lift chairs?|platform lifts?|powered gates?|car park barriers?|robots?|palleti[sz]ers?)\b/i,
    and: /\b(?:raise|lower|run|cycle|drive|move)\w*\b/i,
    hazards: ['moving-machine'],
  },
  {
    machine: /\b(?:folding|collapsible) (?:\w+ )?(?:wheelchairs?|beds?|chairs?|tables?|ladders?|prams?)\b/i,
    hazards: ['pinch'],
  },
  {
    machine:
      /\b(?:clean-in-place|cip|dairy|brewery|milk|commercial dishwashers?|glass ?washers?|car wash|laundry|swimming)\b/i,
    not: /\b(?:dryers?|driers?|irons?|folders?|press(?:es)?)\b/i,
    hazards: ['chemical'],
  },
  {
    machine: /\b(?:lobe|rotary|transfer|gear|progressive cavity|screw|macerat\w+) pumps?\b/i,
    and: /\b(?:rotors?|lobes?|gears?|impeller|cover)\b/i,
    hazards: ['rotating-parts'],
  },
  {
    machine:
      /\b(?:nailers?|nail guns?|chain ?saws?|brush ?cutters?|leaf blowers?|blast\w*|generators?|table saws?|planers?|thicknessers?|angle grinders?|jack ?hammers?|breakers? hammer|impact wrench(?:es)?|concrete saws?|wood ?chippers?|hammer mills?)\b/i,
    not: /\bsteam\b/i,
    and: /\b(?:start|run|fire|shoot|cut|blast|trigger|switch)\w*\b/i,
    hazards: ['noise'],
  },
  {
    machine:
      /\b(?:refrigerat\w+|fridges?|freezers?|chillers?|cold rooms?|walk-in coolers?|heat pumps?|air condition\w+|ice machines?|r-?(?:290|600a|32|134a|404a|410a))\b/i,
    and: /\b(?:condensers?|evaporators?|cooling deck|compressors?|refrigerant|sealed (?:system|circuit)|coils?)\b/i,
    hazards: ['refrigerant'],
  },
  {
    machine: /\b(?:condensers?|evaporators?|coils?|cooling decks?|heat exchangers?|radiators?)\b/i,
    and: /\bfins?\b/i,
    hazards: ['sharp'],
  },
  {
    machine: /\b(?:towers?|wind ?(?:pumps?|mills?|turbines?)|silos?|masts?|pylons?|flagpoles?)\b/i,
    and: /\bclimb\w*\b/i,
    hazards: ['height'],
  },
]
