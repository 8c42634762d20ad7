/** The most that is usual on a class of machine, where its name tells more than the name of the value. */
export type Usual = {
  /** What the value is said of: words of its name. */
  readonly name: RegExp
  /** Class of machine: words of the value's name, of title or equipment. */
  readonly machine: RegExp
  readonly not?: RegExp
  readonly kind: 'pressure' | 'voltage' | 'temperature' | 'current'
  readonly most: number
  /** UCUM code of `most`. */
  readonly unit: string
  /** Completes "more than about 25 bar is not found in …". */
  readonly where: string
}

/** Somewhere on such a machine there is more after all. */
const STORED = /\b(?:cylinder|bottle|accumulator|hydraulic\w*|injection|jet|lance|burst|proof|nitrogen)\b/i
const ANY = /./

/** Wide on purpose: they catch a lost point or a wrong unit, nothing finer. Common practice, no source. To teach a class, add a row. */
export const USUAL: readonly Usual[] = [
  {
    name: ANY,
    machine: /\b(?:drip|irrigation|sprinklers?|drippers?|garden|orchard|greenhouse)\b/i,
    not: STORED,
    kind: 'pressure',
    most: 25,
    unit: 'bar',
    where: 'water lines of a garden or field',
  },
  {
    name: ANY,
    machine: /\b(?:pools?|spas?|hot tubs?|fountains?|aquari\w+|ponds?)\b/i,
    not: STORED,
    kind: 'pressure',
    most: 15,
    unit: 'bar',
    where: 'a pool or pond circuit',
  },
  {
    name: ANY,
    machine:
      /\b(?:taps?|showers?|sinks?|toilets?|cisterns?|water heaters?|calorifiers?|water softeners?|dish ?washers?|washing machines?|washer-extractors?|drinking water|radiators?|heating systems?|underfloor|central heating|expansion vessels?)\b/i,
    not: STORED,
    kind: 'pressure',
    most: 30,
    unit: 'bar',
    where: 'the plumbing of a house',
  },
  {
    name: ANY,
    machine: /\b(?:espresso|coffee|ice machines?|glass ?washers?|beer|kegs?|milk|dairy|brew\w*)\b/i,
    not: STORED,
    kind: 'pressure',
    most: 40,
    unit: 'bar',
    where: 'kitchen and dairy machines',
  },
  {
    name: ANY,
    machine: /\b(?:autoclaves?|steri[lz]i[sz]ers?|steam ovens?|humidifiers?|pressure cookers?|irons?)\b/i,
    not: STORED,
    kind: 'pressure',
    most: 12,
    unit: 'bar',
    where: 'small steam appliances',
  },
  {
    name: /\b(?:gas|burner|nozzle|manifold|inlet|supply|working|standing)\b/i,
    machine: /\b(?:gas (?:boilers?|cookers?|hobs?|ovens?|fires?|heaters?|ranges?|burners?|furnaces?)|furnaces?)\b/i,
    not: STORED,
    kind: 'pressure',
    most: 8,
    unit: 'bar',
    where: 'the gas line of an appliance',
  },
  {
    name: ANY,
    machine: /\b(?:suspension forks?|bicycle|bike|shocks?|wheelchairs?|strollers?|scooters?)\b/i,
    not: /\b(?:nitrogen|hydraulic)\b/i,
    kind: 'pressure',
    most: 35,
    unit: 'bar',
    where: 'forks and tyres of a bicycle',
  },
  {
    name: ANY,
    machine: /\b(?:ventilat\w+|air handlers?|ducts?|fume hoods?|dust (?:collectors?|extractors?)|vacuum cleaners?)\b/i,
    not: /\b(?:refrigerant|coil|compressor|steam|water|nitrogen|cylinder|jet|tyre|tire)\b/i,
    kind: 'pressure',
    most: 12,
    unit: 'bar',
    where: 'air ducts',
  },
  {
    name: ANY,
    machine:
      /\b(?:cars?|vans?|trucks?|motorcycles?|mowers?|tractors?|fork ?lifts?|fork trucks?|scrubbers?|golf carts?)\b/i,
    not: /\b(?:ignition|spark|coil|plug|hybrid|electric car|ev|traction|insulation|xenon|charger|mains|welder)\b/i,
    kind: 'voltage',
    most: 200,
    unit: 'V',
    where: 'the battery circuit of a vehicle',
  },
]

/** High by its nature, whatever the machine is fed with. */
export const HIGH_TENSION =
  /\b(?:ignition|spark|magnetron|anode|cathode|insulation|megger|electrostatic|ioni[sz]\w*|neon|x-?ray|tube|flash|fence|energi[sz]er|breakdown|withstand|hi-?pot|high[- ](?:voltage|tension)|ht|eht|corona|laser|transformer|burner electrode)\b/i
