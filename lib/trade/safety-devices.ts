/** Devices that protect, by the machine that has them: tried before the machine goes back to work. General knowledge, no source. */
export type SafetyDevice = {
  readonly id: string
  readonly machine: RegExp
  /** What a step has to handle before the device is in question; without it, any work on the machine. */
  readonly touched?: RegExp
  /** What only uses the device while other work is done. */
  readonly used?: RegExp
  readonly proves: RegExp
  readonly name: string
}

/** To teach a device, add a row. */
export const SAFETY_DEVICES: readonly SafetyDevice[] = [
  {
    id: 'chain-brake',
    machine: /\bchain ?saws?\b/i,
    proves:
      /\bchain brake\b[^.;]*\b(?:stops?|works?|test\w*|locks?|holds?|trips?)|\b(?:test|try|check|trip)\w*\b[^.;]*\bchain brake\b|\b(?:push|knock|flick|tip|press)\w*\b[^.;]*\b(?:hand|front) guard\b|\bchain\b[^.;]*\b(?:stops?|stands?|halts?) (?:at once|dead|instantly|immediately)\b/i,
    name: 'chain brake',
  },
  {
    id: 'dead-mans-handle',
    machine: /\b(?:lawn ?mower|walk-behind mower|rotary mower)s?\b/i,
    proves:
      /\b(?:blade brake|dead[- ]man|bail|operator presence|blade stops|stops? within|handle is released|lever is released)\b/i,
    name: 'blade brake',
  },
  {
    id: 'garage-reverse',
    machine:
      /\b(?:garage|sectional|overhead|roller) doors?\b[^.]*\b(?:opener|operator|drive|motor)|\b(?:opener|operator)\b[^.]*\bdoor|\b(?:automatic|powered|sliding|swing) gates?\b/i,
    proves:
      /\b(?:auto[- ]?reverse|revers(?:es|al|ing)|photo ?eyes?|safety (?:sensor|edge|beam)|light beam|two-by-four|2 ?x ?4)\b/i,
    name: 'automatic reverse',
  },
  {
    id: 'flame-failure',
    touched:
      /\b(?:flame (?:sensor|rod|probe)|thermocouple|pilot|electrodes?|ignit(?:er|or)|gas valve|burner control)\b/i,
    machine: /\b(?:gas (?:boiler|furnace|oven|cooker|heater)|burner control)\b/i,
    proves:
      /\b(?:flame (?:failure|rollout|sensor)|cuts? off|lockout test|thermocouple drops|goes out|ignition lockout|gas valve closes)\b/i,
    name: 'flame failure device',
  },
  {
    id: 'door-interlock',
    machine:
      /\b(?:mixers?|slicers?|centrifuges?|bowl cutters?|dough (?:mixer|divider|sheeter)|blast cabinets?|tumble dryers?|microwaves?|shredders?|balers?|autoclaves?|steri[lz]i[sz]ers?)\b/i,
    touched:
      /\b(?:bowl guard|safety (?:guard|grid|switch)|interlock\w*|limit switch|micro ?switch|door (?:switch|lock|interlock)|guard switch)\b/i,
    proves:
      /\b(?:interlock\w*|stops?\b[^.;]*\b(?:guard|door|lid|bowl|opened|lifted)|(?:lift|open|raise|swing|crack)\w*\b[^.;]*\b(?:guard|door|lid|hood|grid|cover)\b[^.;]*\b(?:stops?|stands still|halts?|dies|cuts? out|drops? out)\b|(?:does not|doesn't|will not|won't|cannot) (?:start|run)|guard (?:open|up)|with the (?:guard|door|lid) (?:open|up)|locks?\b[^.;]*\b(?:pressure|door))\b/i,
    name: 'interlock',
  },
  {
    id: 'lift-stops',
    machine:
      /\b(?:platform lifts?|stair ?lifts?|wheelchair lifts?|home lifts?|goods lifts?|passenger lifts?|dumbwaiters?|scissor lifts?|tail ?lifts?|vehicle hoists?|escalators?|moving walks?)\b/i,
    touched:
      /\b(?:(?:sensing|contact) edge|safety (?:edge|nut|gear|switch)|sensitive edge|emergency stop|latch\w*|limit switch|interlock|landing (?:door|gate)|footrest|batter(?:y|ies)|brake|drive (?:nut|screw|chain)|rope|governor|overspeed)\b/i,
    proves:
      /\b(?:(?:safety|sensitive|sensing|pressure|contact) edges?|emergency stop|e-?stop|footrest|obstruction|safety gear|overspeed|slack (?:rope|chain)|final limit|limit switch|latch\w*|locks?)\b[^.;]*\b(?:stops?|halts?|holds?|works?|trips?|test\w*|cuts?|clunk\w*|engage\w*)\b|\b(?:press|push|test|try|check|hit|trip|operate|actuate|hold|lower)\w*\b[^.;]*\b(?:(?:safety|sensitive|sensing|pressure|contact) edges?|emergency stop|e-?stop|footrest|limit switch|latch\w*|safety gear)\b|\bwith the latches\b/i,
    name: 'safety edge and emergency stop',
  },
  {
    id: 'relief-valve',
    machine: /\b(?:water heaters?|calorifier|hot water cylinder|steam boilers?|air (?:compressor|receiver))\b/i,
    touched: /\b(?:relief valve|safety valve|t ?& ?p|temperature and pressure)\b/i,
    proves:
      /\b(?:lift|lever|test|trip|pull|operate|discharge)\w*\b[^.;]*\b(?:relief|safety) valve|\b(?:relief|safety) valve\b[^.;]*\b(?:opens?|discharges?|lifts?|reseats?|flows?|closes?|vents?)\b/i,
    name: 'relief valve',
  },
  {
    id: 'hoist-brake',
    machine: /\b(?:chain (?:hoist|block)s?|lever hoists?|hoists?|(?<!\bwith (?:[a-z]+ )?)winch(?:es)?|cranes?)\b/i,
    touched: /\b(?:brake|pawl|ratchet|load chain|friction disc|limit switch|hook)\b/i,
    proves:
      /\b(?:holds?|test load|load test|rated load|brake (?:holds?|test)|does not (?:slip|creep|drop|sink)|no (?:slip|creep|drift)|proof load|trial lift|limit switch (?:stops|trips))\b/i,
    name: 'load brake',
  },
  {
    id: 'wheelchair-brake',
    machine:
      /\b(?:wheelchairs?|rollators?|mobility scooters?|power chairs?|patient (?:lifts?|hoists?)|hospital beds?|stretchers?|prams?|strollers?)\b/i,
    touched: /\b(?:brakes?|wheel locks?|parking|motors?|wheels?|castors?|casters?|tyres?|tires?)\b/i,
    used: /^(?:press|set|apply|release|lock|unlock|engage|put|push|pull|let|flip|step|kick|tread|free|chock|switch)\b[^.;]*\b(?:brakes?|brake pedals?|wheel locks?|castors?|casters?|wheels?)\b/i,
    proves:
      /\b(?:brakes?|wheel locks?)\b[^.;]*\b(?:holds?|stops?|lock\w*|grips?|work)\b|\b(?:hold|holds|roll|push|stop|stops|test|try|check)\w*\b[^.;]*\b(?:brakes?|wheel locks?)\b|\bdoes not (?:roll|move|creep)\b/i,
    name: 'parking brake',
  },
]
