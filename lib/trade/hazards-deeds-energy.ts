import type { Hazard } from './hazard'
import { on, PRACTICE } from './hazards-deed-words'

/** Current, pressure and noise. See hazards-deeds.ts. */
export const DEEDS_OF_ENERGY: readonly Hazard[] = [
  {
    id: 'live-test',
    alias: ['electric-shock', 'electrical', 'shock', 'electrocution', 'voltage'],
    signals:
      /\bprove[sd]?\b[^.;]*\bdead\b|\b(?:test|probe|check|measure|try|meter|prove)\w*\b[^.;]*\b(?:terminals?|terminal strip|clamps?|bus ?bars?|bus|poles|each pole|outlet|socket|phases?|each phase|conductors?|every wire|each wire)\b[^.;]*(?:\b(?:voltage|two-pole|tester|voltmeter|multimeter|dead|zero|earth|nothing|no volts)\b|\.?$)/i,
    equipment:
      /\b(?:1[012]\d|2[0-4]\d|277|3[2-9]0|4[0-9]\d|480|[5-9]\d\d|1[05]00)[ -]?v(?:olts?)?\b|\bmains\b|\bthree[- ]phase\b|\bkw\b/i,
    not: /\b(?:resistance|continuity|ohms?|charger|12 v|24 v|battery|(?:start|run|jog) (?:button|key|pedal|lever|switch))\b/i,
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
    id: 'lid-pressure',
    alias: ['pressure', 'stored-pressure', 'projectile', 'burst', 'ejection'],
    signals: on(
      '(?:ease|undo|crack|open|unscrew|free|loosen|slacken|unclamp|back|twist|take|lift)',
      '(?:filter|strainer|vessel|canister|injector|housing|pump) (?:lid|cap|cover|clamp|bowl|band)|clamp band|bleed knob',
    ),
    equipment:
      /\b(?:pressure|pressuri[sz]ed|irrigation|drip|pool|pond|softener|sand filter|water filter|booster|well|boiler|compressor|sprayer)\b/i,
    not: /\b(?:fuel|air filter|oil filter|dust|(?:wash|rinse|drain|circulation) pump)\b/i,
    known: /\b(?:pressur\w*|fl(?:y|ies)|shoots?|eject\w*|burst\w*|blows?|bleed|jet|spray\w*)\b/i,
    level: 'warning',
    caution: 'Pressure left inside throws the lid: shut off and bleed it to zero, keep your face aside.',
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
]
