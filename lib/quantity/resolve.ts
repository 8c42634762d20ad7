import { CUES, distance, nearest, type Surroundings } from './cues'
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

const settled = (code: string, note: string): Settled => ({ code, note })

const open = (note: string): Settled => ({ note, isOpen: true })

export const pounds = (around: Surroundings): Settled => {
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
  if (!isFilm && around.value >= 50 && distance('liquid', around) <= 6)
    return settled('mL', '“mil” read as millilitres, by the liquid beside it')
  const film = distance('film', around)
  // Where millimetres are counted, only a coat right beside makes it a thousandth.
  if (around.system === 'metric' && word !== 'mils' && distance('coat', around) > 3)
    return settled('mm', '“mil” read as millimetres, as the talk counts in metric units')
  if (film < 8 || word === 'mils') {
    if (film < 8 || around.system !== 'metric')
      return settled('[mil_i]', '“mil” read as a thousandth of an inch, as films and coatings are measured')
  }
  return settled('mm', '“mil” read as millimetres; a thousandth of an inch is “thou” here')
}

const degrees = (around: Surroundings, word: string): Settled => {
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
  if (word === '°') return settled('deg', '“°” without a letter read as an angle')
  return open('“degrees”: an angle, °C or °F?')
}

const ounces = (around: Surroundings): Settled => {
  const found = nearest(['solid', 'liquid'], around)
  if (found?.cue === 'liquid') return settled('[foz_us]', '“ounces” of a liquid read as US fluid ounces')
  if (found?.cue === 'solid') return settled('[oz_av]', '“ounces” read as weight, by what is measured')
  return open('“ounces”: fluid or weight?')
}

const VOLUMES: Readonly<Record<string, readonly [us: string, imperial: string, name: string]>> = Object.setPrototypeOf(
  {
    pint: ['[pt_us]', '[pt_br]', 'pints'],
    quart: ['[qt_us]', '[qt_br]', 'quarts'],
    gallon: ['[gal_us]', '[gal_br]', 'gallons'],
    'fluid ounce': ['[foz_us]', '[foz_br]', 'fluid ounces'],
  },
  null,
)

/** @returns whether a name is of a volume that US and imperial measure differ in */
export const isVolume = (ambiguous: Ambiguous | undefined): boolean =>
  ambiguous !== undefined && VOLUMES[ambiguous] !== undefined

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

/** `five kilos, that's about eleven pounds`: the one that equals the value beside it. */
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
