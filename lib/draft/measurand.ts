/** Words by which talk names what is measured. @source common practice, no source */
const WORDS: Readonly<Record<string, string>> = {
  torque: 'torque torqued nut nuts bolt bolts screw screws stud studs tighten tightened retighten newton-metres wrench',
  pressure:
    'pressure pressures inflate inflated tyre tyres tire tires boost regulator gauge manometer vacuum compressor pump pumped psi bar boiler relief',
  temperature:
    'temperature temp temps heat heated heating hot warm warmed cool cooled cooling cold oven iron kiln thermostat thermometer degrees boil boiling temper preheat setpoint glue bath melt bake rinse fryer oil acid coolant steam fridge freezer cabinet firing celsius centigrade fahrenheit solder',
  length:
    'gap gaps clearance thickness thick thin width wide deep depth height high tall long length diameter stroke play runout backlash lash slack sag deflection wear worn distance apart feeler calliper calipers caliper projection protrusion overlap offset toe-in travel lift dip rise overhang spacing tread lining brush ruler tape micrometer feelers flat straightedge endfloat stickout wider thinner deeper shorter longer higher lower inner outer plane edge measured size',
  voltage:
    'voltage volts volt tension cell cells battery meter dc ac potential grid anode mains fence energiser supply',
  current: 'current amps amp amperage fuse draw draws draining',
  resistance: 'resistance ohms ohm winding windings coil coils element continuity',
  speed: 'rpm revs speed speeds idle idles throttle revolutions tacho spindle pto',
  share: 'percent humidity',
  time: 'seconds minutes hours minute hour count wait waits soak cure curing',
  angle: 'angle bevel tilt tilted slope',
  mass: 'weigh weighs weight grams kilos',
}

const DIMENSION_OF: ReadonlyMap<string, string> = new Map(
  Object.entries(WORDS).flatMap(([dimension, words]) => words.split(' ').map(word => [word, dimension] as const)),
)

/** Characters beyond which a word tells nothing of a number. */
const REACH = 90

/** @returns what the number at [at, to) of a text measures, by the nearest word that names it; undefined where none does. */
export const toMeasurand = (text: string, at: number, to: number): string | undefined => {
  let best: string | undefined
  let near = REACH
  for (const match of text.toLowerCase().matchAll(/[a-z]+(?:-[a-z]+)*/g)) {
    const dimension = DIMENSION_OF.get(match[0])
    if (dimension === undefined) continue
    const end = match.index + match[0].length
    const far = end <= at ? at - end : match.index >= to ? 1.5 * (match.index - to) : near
    if (far < near) [best, near] = [dimension, far]
  }
  return best
}

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
