/** A kind of measuring instrument by its name. */
export type Instrument = {
  readonly name: RegExp
  /** Kinds of quantity it measures, as lib/quantity names them; empty where that is not certain. */
  readonly kinds: readonly string[]
  /** Its finest readable step, where every such instrument has about the same; UCUM unit. */
  readonly division?: { readonly value: number; readonly unit: string }
}

/** The particular before the general. Divisions are common practice, no source. To teach an instrument, add a row. */
export const INSTRUMENTS: readonly Instrument[] = [
  {
    name: /\b(?:tape measures?|measuring tapes?|steel tape|folding rule|yardstick|tape)\b/i,
    kinds: ['length', 'distance'],
    division: { value: 0.5, unit: 'mm' },
  },
  {
    name: /\b(?:steel rules?|rules?|rulers?|set square|combination square)\b/i,
    kinds: ['length', 'distance'],
    division: { value: 0.25, unit: 'mm' },
  },
  {
    name: /\b(?:tyre|tire|pressure|hose|vacuum|compression|manifold|air|fuel|oil|water|boiler|test) gauges?\b|\bmanometers?\b|\bgauge manifold\b/i,
    kinds: ['pressure'],
  },
  {
    name: /\b(?:feeler|depth|thickness|bore|dial|plug|ring|height|telescop\w+|wire|gap|thread|radius|go) (?:gauges?|blades?|indicators?)\b|\bmicrometers?\b|\bcal(?:l)?ipers?\b|\bvernier\b|\bindicators?\b|\bfeelers?\b/i,
    kinds: ['length', 'distance'],
  },
  {
    name: /\b(?:thermometers?|thermocouples?|temperature (?:gun|probe|gauge)|pyrometers?|thermal camera|infrared gun)\b/i,
    kinds: ['temperature', 'temperature difference'],
  },
  {
    name: /\b(?:multimeters?|clamp meters?|voltmeters?|ohmmeters?|ammeters?|microammeters?|milliammeters?|insulation testers?|oscilloscopes?|megger)\b/i,
    kinds: ['voltage', 'current', 'resistance', 'capacitance', 'frequency'],
  },
  {
    name: /\b(?:voltage (?:testers?|detectors?)|test lamps?|battery testers?|continuity testers?)\b/i,
    kinds: ['voltage'],
  },
  { name: /\b(?:stop ?watch(?:es)?|timers?|clocks?|watch(?:es)?)\b/i, kinds: ['time'] },
  {
    name: /\b(?:spring balances?|spring scales?|luggage scales?|force gauges?|push-pull gauge|tension (?:gauge|meter)|fish scale)\b/i,
    kinds: ['force', 'mass'],
  },
  { name: /\b(?:scales?|balances?|weigh\w*)\b/i, kinds: ['mass', 'force'] },
  { name: /\b(?:protractors?|angle (?:gauges?|finders?|cubes?)|inclinometers?)\b/i, kinds: ['angle', 'ratio'] },
  {
    name: /\b(?:measuring (?:jugs?|cups?|cylinders?|beakers?)|graduated \w+|syringes?|burettes?|pipettes?|flow ?meters?)\b/i,
    kinds: ['volume'],
  },
  { name: /\b(?:tachometers?|rev counters?|strobes?)\b/i, kinds: ['rotation', 'frequency'] },
  {
    name: /\b(?:gauges?|meters?|testers?|templates?|refractometers?|hydrometers?|levels?|squares?|analysers?|analyzers?|detectors?|probes?|test kits?|strips?)\b/i,
    kinds: [],
  },
]
