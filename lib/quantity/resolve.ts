import type { Ambiguous, UnitWord } from './unit-words'
import { convert, unitSymbol } from './units'

/** A unit settled from its name and the words around it. */
export type Settled = {
  /** UCUM code; absent where it stays open. */
  readonly code?: string
  /** How it was settled, or what is open: for people. */
  readonly note?: string
  readonly isOpen?: boolean
}

/** What the words around a number say. */
export type Surroundings = {
  /** The clause before the number, nearest last, and after it, nearest first; lower case words. */
  readonly before: readonly string[]
  readonly after: readonly string[]
  /** What was said before the text, if given. */
  readonly context: string
  /** Which system the text and what was said before count in, where they tell. */
  readonly system: 'us' | 'metric' | undefined
  /** Whether imperial measures are named. */
  readonly isImperial: boolean
  readonly value: number
  /** Values with a certain unit just before and after. */
  readonly beside: readonly { readonly value: number; readonly code: string }[]
  /** UCUM codes of certain units elsewhere in the text. */
  readonly codes: readonly string[]
}

const set = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/))

const CUES = {
  tighten: set(
    'torque torqued torquing tighten tightened tightening tightens nip nipped snug snugged bolt bolts nut nuts lug lugs screw screws stud studs capscrew wrench clicks click clicker cinch crank wheel head plug plugs axle caliper flange pattern star fastener fasteners cap manifold pinch retighten flywheel spindle banjo',
  ),
  inflate: set(
    'lose loses losing leak leaks leakdown bleed tire tires tyre tyres inflate inflated inflates inflating pressure air gauge pump pumped boost compressor line regulator tank rail cutout cut-out manometer psi blow manifold pressures vacuum pressurise pressurize pressurized rim hose relief fuel rail airbag bladder accumulator tube spare',
  ),
  weigh: set(
    'weigh weighs weight weighing charge refrigerant freon scale scales heavy lift load lifting recharge ballast counterweight mass grease flour salt sugar ammonia',
  ),
  pull: set(
    'pull pulls pulling force tension spring scale push pushing pushed drag preload hook squeeze belt press effort finger load compress thumb',
  ),
  liquid: set(
    'oil water coolant fluid fuel petrol gas gasoline diesel solution acid antifreeze cleaner vinegar bleach milk liquid solvent thinner oil. lube paint primer resin hardener alcohol glycol electrolyte soap detergent juice syrup additive stabilizer stabiliser dye conditioner premix fill pour drain drained drains holds capacity sump reservoir top pints bottle jug syringe atf beer wort broth descaler kerosene paraffin chlorine shampoo',
  ),
  solid: set(
    'grease refrigerant freon powder weight weigh weighs flour salt sand solder r134a charge shot dry recoil wax lead silver gold',
  ),
  film: set(
    'film paint coating coat coats powder plastic sheeting poly thickness dry wet primer epoxy galvanizing anodize anodizing plating vapor vinyl liner tarp membrane dft zinc',
  ),
  angle: set(
    'cut dead swing arm sweep pull angle angles position rotation protractor inclinometer turn turned turning turns rotate rotated tighten tightened torque torqued another further past angle bolt bolts nut stretch yield clockwise anticlockwise counterclockwise handle lever btdc advance timing crank dwell tilt tilted bevel camber caster toe file filing sharpen sharpening grind bend bent elbow protractor rake pitch slope incline miter mitre quarter chamfer countersink newton foot-pounds steering retard tdc atdc swivel',
  ),
  heat: set(
    'heat heated heating heats hot warm warmed warms cool cools cooled cooling cold temperature temp temps oven thermometer thermostat boil boiling water coolant outside freezing freeze frost preheat cure cures bake baked melt melts solder iron nozzle bed burn oil room night ambient rinse tank boiler flow return supply air reach reaches kiln furnace chamber fever weather grill meat fridge freezer simmer brew mash steam hotter cooler colder warmer bearing stove hotend radiator setpoint superheat subcooling glue exhaust celsius fahrenheit',
  ),
  vacuum: set('vacuum evacuate evacuated evacuating pump pull pulled pulling down manifold deep hold decay'),
} as const

type Cue = keyof typeof CUES

/** How near the nearest cue word stands, in words; after the number counts a little less. Infinity where there is none. */
const distance = (cue: Cue, { before, after }: Surroundings): number => {
  const words = CUES[cue]
  let near = Number.POSITIVE_INFINITY
  for (let i = before.length - 1; i >= 0; i--)
    if (words.has(before[i] ?? '')) {
      near = before.length - i
      break
    }
  for (let i = 0; i < after.length; i++)
    if (words.has(after[i] ?? '')) {
      near = Math.min(near, i + 1.5)
      break
    }
  return near
}

const inContext = (cue: Cue, context: string): number => {
  let count = 0
  for (const [word] of context
    .toLowerCase()
    .slice(-400)
    .matchAll(/[a-z]+/g))
    if (CUES[cue].has(word)) count++
  return count
}

/** The cue that stands nearest, in the text or else in what was said before it. */
const nearest = <C extends Cue>(
  cues: readonly C[],
  around: Surroundings,
): { cue: C; isFromContext: boolean } | undefined => {
  let best: C | undefined
  let near = Number.POSITIVE_INFINITY
  for (const cue of cues) {
    const d = distance(cue, around)
    if (d < near) [best, near] = [cue, d]
  }
  if (best !== undefined) return { cue: best, isFromContext: false }
  let most = 0
  for (const cue of cues) {
    const count = inContext(cue, around.context)
    if (count > most) [best, most] = [cue, count]
  }
  return best === undefined ? undefined : { cue: best, isFromContext: true }
}

const settled = (code: string, note: string): Settled => ({ code, note })
const open = (note: string): Settled => ({ note, isOpen: true })

const pounds = (around: Surroundings): Settled => {
  const next = around.after[0]
  const codes = new Set(around.codes)
  if (next === 'of' && CUES.solid.has(around.after[1] ?? ''))
    return settled('[lb_av]', '“pounds” of a substance read as pounds of mass')
  const found = nearest(['tighten', 'inflate', 'weigh', 'pull'], around)
  if (found === undefined) {
    if (codes.has('[ft_i].[lbf_av]'))
      return settled('[ft_i].[lbf_av]', '“pounds” read as foot-pounds, like the others here')
    if (codes.has('[psi]')) return settled('[psi]', '“pounds” read as psi, like the others here')
    if (/foot[- ]pounds|ft[- ·.]?lb/i.test(around.context))
      return settled('[ft_i].[lbf_av]', '“pounds” read as foot-pounds, as said before')
    if (/\bpsi\b/i.test(around.context)) return settled('[psi]', '“pounds” read as psi, as said before')
    return open('“pounds” of what: foot-pounds, psi, or weight?')
  }
  const why = found.isFromContext ? 'by what was said before' : 'by what it is about'
  switch (found.cue) {
    case 'tighten':
      return settled('[ft_i].[lbf_av]', `“pounds” of something tightened read as foot-pounds, ${why}`)
    case 'inflate':
      return settled('[psi]', `“pounds” of pressure read as psi, ${why}`)
    case 'pull':
      return settled('[lbf_av]', `“pounds” of pull read as pounds of force, ${why}`)
    default:
      return settled('[lb_av]', `“pounds” of something weighed read as pounds of mass, ${why}`)
  }
}

const mil = (around: Surroundings, word: string): Settled => {
  const isFilm = distance('film', around) < 8 && around.value < 60
  if (!isFilm && around.after[0] === 'of' && CUES.liquid.has(around.after[1] ?? ''))
    return settled('mL', '“mil” of a liquid read as millilitres')
  if (around.after[0] === 'of' && CUES.liquid.has(around.after[2] ?? '') && !CUES.film.has(around.after[1] ?? ''))
    return settled('mL', '“mil” of a liquid read as millilitres')
  const film = distance('film', around)
  if (film < 8 || word === 'mils') {
    if (film < 8 || around.system !== 'metric')
      return settled('[mil_i]', '“mil” read as a thousandth of an inch, as films and coatings are measured')
  }
  return settled('mm', '“mil” read as millimetres; a thousandth of an inch is “thou” here')
}

const degrees = (around: Surroundings): Settled => {
  if (
    ['more', 'further', 'farther', 'past', 'clockwise', 'anticlockwise', 'counterclockwise'].includes(
      around.after[0] ?? '',
    )
  )
    return settled('deg', '“degrees” read as an angle, by what is turned')
  const { system } = around
  if (around.codes.includes('Cel')) return settled('Cel', '“degrees” read as °C, like the others here')
  if (around.codes.includes('[degF]')) return settled('[degF]', '“degrees” read as °F, like the others here')
  const found = nearest(['angle', 'heat'], around)
  if (found?.cue === 'heat') {
    if (/celsius|centigrade|°C/i.test(around.context)) return settled('Cel', '“degrees” read as °C, as said before')
    if (/fahrenheit|°F/i.test(around.context)) return settled('[degF]', '“degrees” read as °F, as said before')
    if (system === 'metric') return settled('Cel', '“degrees” read as °C, by the metric units around it')
    if (system === 'us') return settled('[degF]', '“degrees” read as °F, by the US units around it')
    return open('“degrees” of temperature: °C or °F?')
  }
  if (found?.cue === 'angle') return settled('deg', '“degrees” read as an angle, by what is turned')
  return open('“degrees”: an angle, °C or °F?')
}

const ounces = (around: Surroundings): Settled => {
  const found = nearest(['solid', 'liquid'], around)
  if (found?.cue === 'liquid') return settled('[foz_us]', '“ounces” of a liquid read as US fluid ounces')
  if (found?.cue === 'solid') return settled('[oz_av]', '“ounces” read as weight, by what is measured')
  return open('“ounces”: fluid or weight?')
}

const VOLUMES: Readonly<Record<string, readonly [us: string, imperial: string, name: string]>> = {
  pint: ['[pt_us]', '[pt_br]', 'pints'],
  quart: ['[qt_us]', '[qt_br]', 'quarts'],
  gallon: ['[gal_us]', '[gal_br]', 'gallons'],
  'fluid ounce': ['[foz_us]', '[foz_br]', 'fluid ounces'],
}

const volume = (ambiguous: Ambiguous, around: Surroundings): Settled => {
  const [us, imperial, name] = VOLUMES[ambiguous] ?? ['[cup_us]', '[cup_us]', 'cups']
  if (around.isImperial) return settled(imperial, `“${name}” read as imperial, as said`)
  if (around.system === 'metric')
    return settled(us, `“${name}” read as US ${name}, though metric or British words stand around it: check`)
  return settled(us, `“${name}” read as US ${name}`)
}

/** So many revs are a speed, not a number of turns. */
const REVVED = 250

const SETTLERS: Readonly<Record<Ambiguous, (around: Surroundings, word: string, ambiguous: Ambiguous) => Settled>> = {
  pound: pounds,
  mil,
  degree: degrees,
  ounce: ounces,
  pint: (around, _, a) => volume(a, around),
  quart: (around, _, a) => volume(a, around),
  gallon: (around, _, a) => volume(a, around),
  'fluid ounce': (around, _, a) => volume(a, around),
  cup: around =>
    settled(
      '[cup_us]',
      around.system === 'metric'
        ? '“cup” read as a US cup (237 mL); a metric cup is 250 mL: check'
        : '“cup” read as a US cup',
    ),
  micron: around =>
    distance('vacuum', around) < 20
      ? settled('um[Hg]', '“microns” of vacuum read as micrometres of mercury')
      : settled('um', '“microns” read as micrometres'),
  kilo: around => {
    const found = nearest(['tighten', 'inflate', 'weigh', 'pull'], around)
    if (found?.cue === 'tighten') return settled('kgf.m', '“kilos” of something tightened read as kgf·m')
    if (found?.cue === 'inflate') return settled('kgf/cm2', '“kilos” of pressure read as kgf/cm²')
    if (found?.cue === 'pull') return settled('kgf', '“kilos” of pull read as kgf')
    return settled('kg', '“kilos” read as kilograms')
  },
  rev: around =>
    around.value >= REVVED
      ? settled('{rev}/min', '“revs” read as revolutions a minute')
      : settled('circ', '“revs” read as turns'),
  'inch of vacuum': () => settled("[in_i'Hg]", 'inches of vacuum read as inches of mercury'),
}

/** What each name may stand for, to be tried against a value stated beside it. */
const CANDIDATES: Partial<Record<Ambiguous, readonly string[]>> = {
  pound: ['[ft_i].[lbf_av]', '[psi]', '[lb_av]', '[lbf_av]'],
  ounce: ['[foz_us]', '[oz_av]'],
  mil: ['mm', '[mil_i]', 'mL'],
  kilo: ['kg', 'kgf.m', 'kgf/cm2', 'kgf'],
  degree: ['Cel', '[degF]'],
  pint: ['[pt_us]', '[pt_br]'],
  quart: ['[qt_us]', '[qt_br]'],
  gallon: ['[gal_us]', '[gal_br]'],
}
/** How far apart two stated equivalents may lie and still show what is meant. */
const NEAR = 0.06

/** `eight kilos, that's about seventeen and a half pounds`: the one that equals the value beside it. */
const equalTo = (ambiguous: Ambiguous, { value, beside }: Surroundings): Settled | undefined => {
  for (const other of beside)
    for (const code of CANDIDATES[ambiguous] ?? []) {
      const same = convert(other.value, other.code, code)
      if (code !== other.code && same.ok && value !== 0 && Math.abs(same.value - value) <= NEAR * Math.abs(value))
        return settled(code, `read as ${unitSymbol(code)}, which equals the ${unitSymbol(other.code)} beside it`)
    }
  return undefined
}

/**
 * Settles which unit a name stands for here.
 *
 * @param word the name as said
 * @returns a code, with a note wherever the name alone did not decide; `isOpen` where nothing decides
 */
export const settleUnit = (unit: UnitWord, word: string, around: Surroundings): Settled => {
  if (unit.ambiguous === undefined) return unit.code === undefined ? {} : { code: unit.code }
  const equal = equalTo(unit.ambiguous, around)
  if (equal !== undefined) return equal
  return SETTLERS[unit.ambiguous](around, word, unit.ambiguous)
}
