/** What has to come before something else, and why. */
export type Preparation = {
  readonly id: string
  /** What a step that prepares says. */
  readonly prepares: RegExp
  /** What a step that needs it says. */
  readonly needs: RegExp
  /** What in a step shows that it is about something else. */
  readonly not?: RegExp
  /** Completes "It belongs before step 4, …". */
  readonly why: string
}

/** Orders that hold in most trades. Common practice, no source. To teach one, add a row. */
export const PREPARATIONS: readonly Preparation[] = [
  {
    id: 'chock',
    prepares: /\b(?:chock\w*|wedge the wheels?)\b/i,
    needs:
      /\b(?:jack\w* (?:up|the|it)|jack\b.*\bup|raise the (?:car|vehicle|front|rear|machine|carriage|forks|mast|deck|boom|body|platform)|lift the (?:car|vehicle|front|rear))\b/i,
    why: 'so that nothing rolls off the jack',
  },
  {
    id: 'stands',
    prepares:
      /\b(?:(?:axle|jack) stands\b(?! (?:out|proud|up|off|above))|(?:axle|jack) stand\b(?! (?:out|proud))|(?:lower|set) [^.;]*\bon(?:to)? (?:a |the |two )?(?:stands?|blocks))\b/i,
    needs: /\b(?:(?:slide|crawl|get|work|reach) under|remove the wheels?|take the wheels? off)\b/i,
    not: /\bremove the (?:axle |jack )?stands?\b/i,
    why: 'so that nobody works under what only a jack holds',
  },
  {
    id: 'barrier',
    prepares: /\b(?:set|put|stand|place|pull|draw|hang)\w*\b[^.;]*\b(?:barriers?|cones|safety rail|warning tape)\b/i,
    needs:
      /\b(?:hoist|lift|hook|take|open|slide|prise)\w*\b[^.;]*\b(?:floor plates?|manhole covers?|floor grates?|pit covers?|floor hatch|trapdoor)\b/i,
    not: /\b(?:away|back into|take the barriers)\b/i,
    why: 'so that nobody falls into the open hole',
  },
  {
    id: 'lock',
    prepares:
      /\b(?:hang|fit|fix|fasten|put|set|clip|snap|attach|apply)\w*\b[^.;]*\b(?:padlocks?|locks?|lock and tag|locks and tags)\b[^.;]*\b(?:on|to|onto|through|in)\b[^.;]*\b(?:isolators?|disconnect|breaker|main switch|switch)\b/i,
    needs:
      /\b(?:hook|take|lift|pull|unbolt|unscrew|unclip|slide|draw|remove|roll|slip|cut)\w*\b[^.;]*\b(?:grates?|guards?|covers?|belts?|filters?|fan|blades?|wires?|terminals?|elements?|coupling|chain|knife|motor)\b/i,
    not: /\b(?:plug|off the isolator|padlock|lock|tag|talk|switch cover|isolator cover)\b(?![^.;]*\b(?:on|to|onto|through|in)\b[^.;]*\b(?:isolators?|disconnect|breaker|switch)\b)/i,
    why: 'so that nobody switches it on while hands are in it',
  },
  {
    id: 'gloves',
    prepares:
      /\b(?:put on|wear|don|pull on)\b[^.;]*\b(?:gloves|gauntlets)\b|\b(?:put|pull|slip|draw)\b[^.;]*\b(?:gloves|gauntlets)\b[^.;]*\bon\b|^(?:gloves|gauntlets) on\b/i,
    needs:
      /\b(?:acid|caustic|descal\w*|solvent|bleach|hot(?!end)\w*|hotend to|heat the|reach in\w*|(?:sharpen|handle|remove|fit|change|lift|take|pull|draw|slide|carry|unscrew)\w*\b[^.;]*\b(?:blades?|cutters?|saw chain|kni(?:fe|ves)|swarf|sheet metal)\b|(?:handle|remove|fit|change|lift out)\w*\b[^.;]*\bglass|live|voltage|chemical\w*|standpipe|(?:open|lift off|remove)\w*\b[^.;]*\b(?:blower door|live panel|terminal cover)|drain\w*\b[^.;]*\boil|battery acid|degreaser|epoxy|fibreglass)\b/i,
    not: /\b(?:don't|do not|never|let\b[^.;]*\bcool|cold|switch off)\b/i,
    why: 'because gloves protect nobody once the harm is done',
  },
  {
    id: 'eyes',
    prepares:
      /\b(?:put on|wear|don|pull on)\b[^.;]*\b(?:glasses|goggles|visor|face shield|eye protection|protection|helmet)\b|\b(?:put|pull|slip)\b[^.;]*\b(?:glasses|goggles|visor|face shield|helmet)\b[^.;]*\bon\b|^(?:safety glasses|goggles) on\b/i,
    needs:
      /\b(?:blow\w*|grind(?:s|ing)?|drill (?:out|a|the|two)|hammer\w*|spray(?:s|ing)?|acid|caustic|descal\w*|bleach|chisel\w*|weld(?:s|ing)?|solder(?:s|ing)?|cut the|standpipe|battery acid|start the (?:saw|grinder|mower|compressor)|strike|drive out|tap\b[^.;]*\bout|punch out|knock\b[^.;]*\bout)\b/i,
    not: /\b(?:don't|do not|never)\b/i,
    why: 'because glasses protect nobody once the harm is done',
  },
  {
    id: 'mask',
    prepares:
      /\b(?:put on|wear|don|pull on)\b[^.;]*\b(?:mask|respirator)\b|\b(?:put|pull|slip)\b[^.;]*\b(?:mask|respirator)\b[^.;]*\bon\b|^mask on\b/i,
    needs:
      /\b(?:sand (?:the|down)|grind\w*|spray (?:the )?(?:paint|primer|lacquer)|carbon dust|brake dust|sweep|blow the dust|soot|insulation)\b/i,
    not: /\b(?:don't|do not|never)\b/i,
    why: 'because a mask protects nobody once the dust is in the air',
  },
  {
    id: 'ears',
    prepares: /\b(?:put on|wear|don|pull on)\b[^.;]*\b(?:ear ?(?:muffs|plugs|defenders)|hearing protection)\b/i,
    needs:
      /\b(?:(?:start|run)\w*\b[^.;]*\b(?:saw|grinder|mower|compressor|engine|generator|blower)|impact gun|blow out)\b/i,
    not: /\b(?:don't|do not|never)\b/i,
    why: 'because it is loud from the start',
  },
  {
    id: 'label',
    prepares:
      /\b(?:label|photograph|take a (?:photo|picture)|mark|tag|sketch|note)\b[^.;]*\b(?:wir\w+|leads?|hoses?|connect\w*|cables?|order|positions?|terminals?|plugs?|orientation|routing)\b/i,
    needs:
      /\b(?:disconnect|unplug|pull (?:both |the |all )?[^.;]*(?:wires?|leads?|connectors?) off|remove the (?:wires|leads|hoses))\b/i,
    why: 'while everything is still where it belongs',
  },
  {
    id: 'catch',
    prepares:
      /\b(?:place|put|set|slide|lay|position|have)\b[^.;]*\b(?:drain pan|pan|tray|bucket|container|bowl|rags?|cloths?|drip tray|absorbent)\b[^.;]*\b(?:under\w*|below|beneath|ready)\b/i,
    needs:
      /\b(?:(?:drain|loosen|unscrew|remove|undo|open)\w*\b[^.;]*\b(?:drain|oil|coolant|plug|filter|hoses?|fuel|valve|fluid)|let [^.;]*drain)\b/i,
    not: /\b(?:release|relief) valve\b|\bpressure\b|\bair\b/i,
    why: 'before anything can drip',
  },
  {
    id: 'open-drain',
    prepares:
      /\b(?:remove|unscrew|open|undo|take out|loosen|pull)\w*\b[^.;]*\bdrain (?:plug|bolt|cock|valve|screw|tap)\b/i,
    needs: /\b(?:let|allow|wait)\b[^.;]*\b(?:run out|drain|drip)\b/i,
    why: 'because nothing runs out of a closed drain',
  },
  {
    id: 'spark',
    prepares:
      /\b(?:pull|disconnect|take|remove)\w*\b[^.;]*\bspark plug (?:lead|cap|boot|wire)\b|\bspark plug (?:lead|cap|boot|wire) off\b|\b(?:pull|take|draw|lift|slip)\w*\b[^.;]*\b(?:boot|cap|lead|wire)\b[^.;]*\boff\b[^.;]*\b(?:spark )?plug\b/i,
    needs:
      /\b(?:tip the mower|(?:touch|remove|undo|sharpen|turn|inspect|take|lift|pull|unbolt|loosen|file|reach)\w*\b[^.;]*\b(?:blades?|chain|cutters?|sprocket|chute|auger|tines?|string head)\b)/i,
    why: 'because the engine can fire when the blade is turned',
  },
  {
    id: 'isolate',
    prepares:
      /\b(?:(?:switch|turn|shut) (?:off )?(?:the )?[^.;]*\b(?:isolator|breaker|mains|power|supply|main switch)\b[^.;]*|(?:switch|turn|shut) off (?:the )?[\w-]+ switch[^.;]*|isolate\b[^.;]*|lock(?:ed)? (?:out|off)\b[^.;]*|unplug (?:the )?(?:machine|unit|appliance|printer|saw|tool|mixer|washer|dryer|dishwasher|oven|amplifier|sewing machine)\b[^.;]*|disconnect the (?:battery|negative)[^.;]*|pull the [^.;]*plug (?:from|out of) [^.;]*(?:wall|socket)[^.;]*|unplug [^.;]*from the (?:mains|wall)[^.;]*)/i,
    needs:
      /\b(?:(?:remove|take off|lift off|unscrew|undo|open)\w*\b[^.;]*\b(?:panel|cover|guard|terminal|lid|back|housing|(?:blower|burner|compartment|service|access) door|casing|enclosure)|(?:disconnect|pull)\w*\b[^.;]*\b(?:wires?|leads?|terminals?)|reach (?:in|into))\b/i,
    not: /\b(?:switch|turn|throw|push)\b[^.;]*\bon\b|\bagain\b|\bremove the (?:lock|padlock)\b|\bcooker\b|\b(?:gas|water|fuel|air)\b|\boutlet\b|\bfan off\b/i,
    why: 'because the machine is live until then',
  },
  {
    id: 'relieve',
    prepares:
      /\b(?:(?:relieve|release|bleed|let out|dump|vent)\b[^.;]*\b(?:pressure|air|tank|system|residual)|depressuri[sz]e|blow (?:the \w+ )?down|drain the (?:air )?(?:tank|receiver)|cycle the (?:lever|valve|control)s?)\b/i,
    needs:
      /\b(?:disconnect|loosen|crack|remove|undo|uncouple|unscrew|open)\w*\b[^.;]*\b(?:hoses?|lines?|fittings?|unions?|couplings?|cap|bonnet|fuel filter|air line)\b/i,
    not: /\b(?:bleed the brakes?|bleed nipple|air from the system|out any air|trapped air)\b/i,
    why: 'because it is under pressure until then',
  },
  {
    id: 'shut-off',
    prepares:
      /\b(?:close|shut|turn off|shut off|knock off)\w*\b[^.;]*\b(?:inlet|outlet|suction|supply|isolation|isolating|discharge|stop|service|delivery|feed|butterfly|gate) (?:[a-z]+ )?(?:valves?|taps?|cocks?)\b/i,
    needs:
      /\b(?:lift|remove|take|break|undo|unscrew|disconnect|open|slide|pull)\w*\b[^.;]*\b(?:pump (?:cover|lid|head)|strainer|filter (?:housing|bowl|lid)|cartridge|valve bonnet|rotors?|seal housing|water hose|supply hose|union)\b/i,
    why: 'because it runs out until then',
  },
  {
    id: 'shield',
    prepares:
      /\b(?:hold|put|place|lay|fit|hang|wrap|cover|mask|shield)\b[^.;]*\b(?:card(?:board)?|sheet|shield|masking|rag|cloth|cover|film)\b[^.;]*\b(?:behind|over|around|to (?:shield|protect|catch)|against)\b/i,
    needs: /\b(?:spray\w*|grind\w*|paint\w*|sand\w*|weld\w*|blow\w*)\b/i,
    why: 'because it shields nothing afterwards',
  },
  {
    id: 'cool',
    prepares: /\b(?:let|allow|leave|wait)\b[^.;]*\b(?:cool\w*|cold)\b/i,
    needs:
      /\b(?:reach in\w*|touch\w*|(?:remove|open|unscrew|take off)\w*\b[^.;]*\b(?:radiator cap|exhaust|manifold|spark plugs?|filler cap|element|burner|nozzle|bulb|lamp))\b/i,
    not: /\bsolder|glue|weld|\b(?:without|do[- ]not|don't|never)[- ]touch\w*|\b(?:wire|lead|cap|boot)\b|\boutdoors\b/i,
    why: 'because it burns until it has cooled',
  },
  {
    id: 'warm',
    prepares:
      /\b(?:(?:run|warm)\b[^.;]*\b(?:warm|to warm|up)\b[^.;]*\b(?:oil|engine|it|fluid)|(?:run|warm)\b[^.;]*\b(?:engine|compressor|machine|gearbox)\b[^.;]*\bwarm)/i,
    needs:
      /\b(?:drain\b|loosen the drain|remove the drain|unscrew the drain|lock(?:ed)? (?:out|off)|fit your own padlock|switch off|turn off the [^.;]*(?:isolator|mains|breaker)|isolate)/i,
    why: 'because warm oil drains and it can’t be run later',
  },
  {
    id: 'prove-dead',
    prepares:
      /\b(?:prove\w*|check|test|measure)\b[^.;]*\b(?:dead|no voltage|for voltage|absence of voltage|zero volts?|zero energy)\b/i,
    needs:
      /\b(?:disconnect|pull|remove|undo|touch)\w*\b[^.;]*\b(?:wires?|leads?|terminals?|conductors?|element|contactor|capacitor)\b/i,
    not: /\bbattery\b/i,
    why: 'because only a tester tells that it is dead',
  },
  {
    id: 'discharge',
    prepares: /\b(?:discharge\b[^.;]*\bcapacitors?|bleed resistor|short the capacitor)/i,
    needs: /\b(?:disconnect|pull|remove|undo|touch|unplug)\w*\b[^.;]*\b(?:capacitors?)\b/i,
    why: 'because it holds its charge with the power off',
  },
  {
    id: 'ventilate',
    prepares:
      /\b(?:open (?:a|the) (?:window|garage door|workshop door|doors?)|ventilat\w*|switch on the extract\w*|turn on the extract\w*)\b/i,
    needs:
      /\b(?:solvent|acetone|thinner|adhesive|paint|varnish|epoxy|bleach|heat the|start the engine|run the engine|degreaser|brake cleaner|spray\w*|plastic|hotend|solder\w*)\b/i,
    why: 'because the fumes are there from the start',
  },
  {
    id: 'compress',
    prepares: /\b(?:fit|compress|tighten)\w*\b[^.;]*\bspring(?: compressors?)?\b/i,
    needs: /\b(?:loosen|remove|undo|unscrew)\w*\b[^.;]*\b(?:cent(?:er|re) nut|top nut of the strut|retaining plate)\b/i,
    why: 'because the spring lets go',
  },
]
