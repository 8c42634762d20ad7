import { matchesOf } from '@/lib/quantity/matches'

/** Words that name what is measured. @source common practice, no source */
const PROPERTIES: Readonly<Record<string, string>> = {
  torque: 'torque torqued tighten tightened retighten newton-metres',
  pressure: 'pressure pressures inflate inflated boost vacuum pumped psi manometer cut-in cut-out blow-off',
  temperature:
    'temperature temp temps heat heated heating hot hotter warm warmed warmer cool cooled cooling cooler cold colder degrees boil boiling temper preheat setpoint superheat subcooling cook cooks cooked burn burns scald scalds melt melts melted bake simmer celsius centigrade fahrenheit',
  length:
    'gap gaps clearance thickness thick thicker thin thinner width wide wider deep deeper depth height tall taller length diameter play runout backlash lash slack sag deflection wear worn distance apart projection protrusion overlap offset toe-in dip rise overhang spacing endfloat stickout travel lift narrower proud bow bowed wobble wiggle slop daylight run-out pitch stretch setback',
  voltage: 'voltage volts volt',
  current: 'current amps amp amperage draw draws draining',
  resistance: 'resistance ohms ohm continuity',
  speed: 'rpm revs speed speeds idle idles idling revolutions tickover overspeed',
  share: 'percent humidity concentration moisture strength',
  time: 'seconds minutes hours minute hour wait waits soak cure curing',
  angle: 'angle bevel tilt tilted slope rake fleam arc skewed camber caster mitre miter',
  mass: 'weigh weighs weight weights grams kilos',
  volume: 'pour poured pours syringe litres liters millilitres',
}

/** Things of which one property is mostly told, where none is named. @source common practice, no source */
const THINGS: Readonly<Record<string, string>> = {
  torque: 'nut nuts bolt bolts screw screws stud studs wrench capscrew capscrews lug lugs setscrew setscrews',
  pressure: 'tyre tyres tire tires regulator gauge compressor pump boiler relief accumulator',
  temperature:
    'oven iron kiln thermostat thermometer heater heaters nozzle glue bath rinse fryer oil acid coolant steam fridge freezer cabinet firing solder hotplate platen dryer incubator flow flame room jacket probe dew fires',
  length:
    'across mouth poke pokes sticks oval lip long longer short shorter stroke mike miked daylight jaw jaws string feeler calliper calipers caliper tread lining brush ruler tape micrometer feelers flat straightedge inner outer plane edge measured size rule shim',
  voltage:
    'tension cell cells battery batteries rested charger charging float posts transformer meter outlet outlets receptacle dc ac potential grid anode mains fence energiser supply',
  current: 'fuse ammeter',
  resistance: 'winding windings coil coils element',
  speed: 'throttle tacho spindle pto',
  time: 'count',
}

/** What is read off, and what that measures; a sentence that names one tells of its figure from farther. @source common practice, no source */
const INSTRUMENTS: readonly (readonly [string, RegExp])[] = [
  [
    'current',
    /\b(?:clamp[- ](?:on )?meter|amp clamp|current clamp|ammeter|tongs (?:round|around|on)|clamp (?:a|one|each|the) (?:leg|phase|lead)|clamp (?:it )?(?:round|around|on) (?:the|a|one|each) (?:\w+ )?(?:phase|lead|leg|wire|live|cable|feed|positive|negative))\b/i,
  ],
  [
    'resistance',
    /\b(?:ohm-?meter|low-?ohm meter|megger|insulation tester|on ohms|meter (?:on|across|to|over) (?:the |each |both |its )?(?:heater|elements?|coils?|windings?|solenoid|igniter|hot rod|thermistor)|windings? to windings?(?: with (?:the|a|my) meter)?|ohms across (?:it|them|the))\b/i,
  ],
  ['angle', /\b(?:protractor|(?:in)?clinometer|digital level|angle (?:finder|gauge))\b/i],
  ['share', /\b(?:hygrometer|(?:moisture|damp|humidity) meter|refractometer)\b/i],
  [
    'temperature',
    /\b(?:infra-?red|pyrometer|thermocouple|thermometer|temp(?:erature)? (?:gun|probe)|laser gun|(?<!meter's |meter )probe(?= (?:in|into)\b))\b/i,
  ],
  ['speed', /\b(?:tacho(?:meter)?|tach|rev counter|strobe|stroboscope)\b/i],
  [
    'pressure',
    /\b(?:(?:pressure|test|tyre|tire|boost|air|fuel|boiler|tank) gauge|manometer|pressure meter|regulator)\b/i,
  ],
  ['torque', /\b(?:torque (?:wrench|key|spanner)|clicker|beam wrench|click wrench)\b/i],
  [
    'length',
    /\b(?:feelers?|dial (?:gauge|indicator)|callipers?|calipers?|verniers?|micrometer|mikes?(?= (?:it|the|them|each|in|across|every|four|three))|(?:inside|outside|bore) (?:mike|gauge)|tape measure|straight-?edge|go-gauge)\b/i,
  ],
  [
    'voltage',
    /\b(?:voltmeter|multi-?meter|(?:battery|cell|voltage) tester|tester on the (?:battery|batteries|cells?))\b|\b(?:(?:the|a|my|your|volt|test|digital|little|good|cheap) (?<!(?:oxygen|ph|moisture|damp|humidity|tension|flow|light|sound|lux|water) )meter|(?<=^|[,.;] |\bput |\band )meter(?= (?:on|in|across|to|between|over)\b))\b(?! (?:from|away|off|of|long|wide|high|deep|or so)\b)/i,
  ],
]
const IS_READ =
  /\b(?:meter|clamp|tongs|megger|ohms|infra-?red|pyro|thermo|temp|laser|tach|rev counter|strobe|gauge|mano|torque|click|beam wrench|feeler|dial|call?iper|vernier|mikes?|micrometer|tape|straight-?edge|windings?|protractor|digital level|angle|probe|regulator|\w+meter)/i
/** How much farther an instrument counts than what is measured. */
const READ_FARTHER = 1.3

type Named = { readonly dimension: string; readonly isProperty: boolean }

const NAMED: ReadonlyMap<string, Named> = new Map(
  [
    [THINGS, false],
    [PROPERTIES, true],
  ].flatMap(([words, isProperty]) =>
    Object.entries(words as Readonly<Record<string, string>>).flatMap(([dimension, list]) =>
      list.split(' ').map(word => [word, { dimension, isProperty: isProperty === true }] as const),
    ),
  ),
)

const WORD = /[a-z]+(?:-[a-z]+)*/g

/** `the two long ones, those are 25`: a word that only says which of them is meant names no property. */
const WHICH =
  /^ (?:open\b|throttle\b|ones?|bolts?|nuts?|screws?|studs?|pins?|hoses?|pipes?|side|end|sides|ends|leg|arm|handle|bar|pair|set|version|model|type)\b/
const ADJECTIVES =
  /^(?:long|short|longer|shorter|thick|thin|thicker|thinner|wide|wider|narrow|narrower|tall|taller|deep|deeper|inner|outer|flat)$/

/** `a minute`, `the hour`, `ten seconds`: told of something else, no name of what a bare figure is. */
const TOLD_TIME =
  /\b(?:an?|one|per|each|every|the|last|first|half|same|quarter|of|\d+|\w+teen|\w+ty|two|three|four|five|six|eight|ten|twelve)[ -]$/
const TIME_WORD = /^(?:seconds|minutes?|hours?)$/
/** `hot to hot` are poles, `wait a minute` an idiom. */
const IDIOM = /^(?:hot (?:to|leg|wire|side|and neutral)\b|wait an? (?:minute|second|moment)\b)/

/** Characters beyond which a word tells nothing of a number. */
const REACH = 90
/** How much farther a thing counts than what is measured of it. */
const THING_FARTHER = 4

/**
 * @returns what the number at [at, to) of a text measures, by the nearest word that names it, one that names a property
 * before one that names a thing; undefined where none does. With `isNamed` no thing
 * tells but what is tightened.
 */
export const toMeasurand = (
  text: string,
  at: number,
  to: number,
  { isNamed = false }: { readonly isNamed?: boolean } = {},
): string | undefined => {
  let best: string | undefined
  let near = REACH
  const low = text.toLowerCase()
  for (const match of matchesOf(low, WORD)) {
    const named = NAMED.get(match[0])
    if (named === undefined || (isNamed && !named.isProperty && named.dimension !== 'torque')) continue
    const end = match.index + match[0].length
    if (TIME_WORD.test(match[0]) && TOLD_TIME.test(low.slice(Math.max(0, match.index - 12), match.index))) continue
    if (IDIOM.test(low.slice(match.index, end + 12)) || (match[0] === 'hot' && low.endsWith('hot to hot', end)))
      continue
    if (ADJECTIVES.test(match[0]) && WHICH.test(text.slice(end, end + 12))) continue
    const isWithin = match.index >= at && end <= to
    const gap = isWithin ? 1 : end <= at ? at - end : match.index >= to ? 1.5 * (match.index - to) : near
    const far = named.isProperty ? gap : gap * THING_FARTHER
    if (far < near) [best, near] = [named.dimension, far]
  }
  if (!IS_READ.test(text)) return best
  for (const [dimension, pattern] of INSTRUMENTS) {
    const match = pattern.exec(text)
    if (match === null || match.index >= at) continue
    const far = Math.max(1, at - match.index - match[0].length) * READ_FARTHER
    if (far < near) [best, near] = [dimension, far]
  }
  return best
}

/** @returns what is read off in a text that names an instrument; undefined where it names none */
export const toInstrument = (text: string): string | undefined =>
  IS_READ.test(text) && INSTRUMENTS.some(([, pattern]) => pattern.test(text))
    ? toMeasurand(text, text.length, text.length)
    : undefined

/** The unit a dimension is said in where no unit is, by the talk's system; none where habits differ too much to guess. */
const HABITS: Readonly<Record<string, readonly [metric: string | undefined, us: string | undefined]>> = {
  torque: ['N.m', '[ft_i].[lbf_av]'],
  pressure: ['bar', '[psi]'],
  temperature: ['Cel', '[degF]'],
  length: ['mm', undefined],
  voltage: ['V', 'V'],
  current: ['A', 'A'],
  resistance: ['Ohm', 'Ohm'],
  speed: ['{rev}/min', '{rev}/min'],
  share: ['%', '%'],
  angle: ['deg', 'deg'],
}

/** @returns the usual unit of a dimension in a system; undefined where there is none. */
export const habitOf = (dimension: string, system: 'us' | 'metric' | undefined): string | undefined => {
  const [metric, us] = HABITS[dimension] ?? [undefined, undefined]
  return system === undefined ? (metric === us ? metric : undefined) : system === 'us' ? us : metric
}
