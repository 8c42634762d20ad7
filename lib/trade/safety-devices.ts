/** Devices that protect, by the machine that has them: tried before the machine goes back to work. General knowledge, no source. */
export type SafetyDevice = {
  readonly id: string
  readonly machine: RegExp
  readonly proves: RegExp
  readonly name: string
}

/** To teach a device, add a row. */
export const SAFETY_DEVICES: readonly SafetyDevice[] = [
  {
    id: 'chain-brake',
    machine: /\bchain ?saws?\b/i,
    proves:
      /\bchain brake\b[^.;]*\b(?:stops?|works?|test\w*|locks?|holds?|trips?)|\b(?:test|try|check|trip)\w*\b[^.;]*\bchain brake\b/i,
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
    machine: /\bgarage door opener\b/i,
    proves: /\b(?:auto[- ]?reverse|reverses|photo ?eye|safety sensor)\b/i,
    name: 'automatic reverse',
  },
  {
    id: 'flame-failure',
    machine: /\b(?:gas (?:boiler|furnace|oven|cooker|heater)|burner control)\b/i,
    proves:
      /\b(?:flame (?:failure|rollout|sensor)|cuts? off|lockout test|thermocouple drops|goes out|ignition lockout|gas valve closes)\b/i,
    name: 'flame failure device',
  },
]
