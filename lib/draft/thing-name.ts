import { FULL_MATERIAL_NAMES } from '@/lib/trade/materials'
import { singular } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { FULL_TOOL_NAMES } from '@/lib/trade/tools'
import type { NounPhrase } from './noun-phrase'

/** Adjectives that say nothing about which thing it is. */
export const IDLE_ADJECTIVES: ReadonlySet<string> = new Set(
  'new old little big small good nice proper cheap decent tiny wee own same other right whole first second next last normal ordinary regular standard simple plain favourite favorite trusty handy cute nasty dirty actual certain particular different another such fancy real brand-new horrible lovely separate couple several few spare left'.split(
    ' ',
  ),
)

/** What state a thing is in, which is no part of its name: "the worn seal", "a fresh gasket". */
export const STATES: ReadonlySet<string> = new Set(
  'fresh worn broken blocked tired shiny cooked empty foamy wrong slipping torn cracked slick dull greasy leaky stuck burnt burned blown seized rusted rusty perished dead faulty bad damaged used oily shredded snapped squeaky bent melted noisy healthy spent expired split chipped stripped crushed clogged blunt bloody furry wearing dropped lit warped frayed weeping dripping leaking dried baked sticky grubby filthy crusty swollen knackered rotten pitted scored scratched stretched loosened smelly gummy gummed gritty rattling'.split(
    ' ',
  ),
)

const ONES: Readonly<Record<string, number>> = Object.setPrototypeOf(
  {
    zero: 0,
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    thirteen: 13,
    fourteen: 14,
    fifteen: 15,
    sixteen: 16,
    seventeen: 17,
    eighteen: 18,
    nineteen: 19,
  },
  null,
)
const TENS: Readonly<Record<string, number>> = Object.setPrototypeOf(
  {
    twenty: 20,
    thirty: 30,
    forty: 40,
    fifty: 50,
    sixty: 60,
    seventy: 70,
    eighty: 80,
    ninety: 90,
  },
  null,
)
const FRACTIONS: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    'nine-sixteenths': '9/16-inch',
    'seven-sixteenths': '7/16-inch',
    'eleven-sixteenths': '11/16-inch',
    'thirteen-sixteenths': '13/16-inch',
    'fifteen-sixteenths': '15/16-inch',
    'five-sixteenths': '5/16-inch',
    'three-sixteenths': '3/16-inch',
    'three-eighths': '3/8-inch',
    'five-eighths': '5/8-inch',
    'seven-eighths': '7/8-inch',
    'three-quarter': '3/4-inch',
    'three-quarters': '3/4-inch',
    half: '1/2',
    quarter: '1/4',
    eighth: '1/8',
    sixteenth: '1/16',
    'half-inch': '1/2-inch',
    'quarter-inch': '1/4-inch',
  },
  null,
)

/** "five-thirty-second", "inch-and-an-eighth": sizes in inches that are one word. */
const inchesOf = (word: string): string | undefined => {
  const [, over = ''] = /^(\w+)-thirty-seconds?$/.exec(word) ?? []
  if (over in ONES) return `${ONES[over]}/32-inch`
  const [, part = ''] = /^inch-and-an?-(\w+)$/.exec(word) ?? []
  return part in FRACTIONS ? `1-${FRACTIONS[part]}-inch` : undefined
}

const UNIT_WORDS = /^(?:mm|mil|mill|milli(?:metre|meter)s?|in|inch)$/

/** "twenty-two" gives "22", "four point eight" gives "4.8"; words that are no number stay. */
export const inDigits = (words: readonly string[]): readonly string[] => {
  const out: string[] = []
  let value: number | undefined
  let decimals = ''
  let isDecimal = false
  const flush = () => {
    if (value !== undefined) out.push(decimals === '' ? String(value) : `${value}.${decimals}`)
    value = undefined
    decimals = ''
    isDecimal = false
  }
  words.forEach((word, i) => {
    const parts = word.split('-')
    if (parts.every(part => part in ONES || part in TENS)) {
      const n = parts.reduce((sum, part) => sum + (ONES[part] ?? TENS[part] ?? 0), 0)
      if (isDecimal) decimals += String(n)
      else if (value !== undefined && value % 10 === 0 && value >= 20 && n < 10) value += n
      else {
        flush()
        value = n
      }
    } else if (word === 'point' && value !== undefined && words[i + 1] !== undefined) isDecimal = true
    else if (UNIT_WORDS.test(parts.at(-1) ?? '') && parts.length > 1) {
      // "nineteen-millimetre"
      flush()
      const [size = ''] = inDigits(parts.slice(0, -1))
      out.push(/^\d/.test(size) && parts.length < 4 ? `${size}-${parts.at(-1)}` : (FRACTIONS[word] ?? word))
    } else {
      flush()
      const isHalf = word === 'half' && words[i + 1] === 'mask'
      out.push(isHalf ? word : (inchesOf(word) ?? FRACTIONS[word] ?? word))
    }
  })
  flush()
  return out
}

const UNITS: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    mil: 'mm',
    mils: 'mm',
    mill: 'mm',
    millimetre: 'mm',
    millimeter: 'mm',
    millimetres: 'mm',
    millimeters: 'mm',
  },
  null,
)
const TURNED_BY_SIZE = /(?:spanner|wrench|socket|key|allen key|allen|hex|driver)$/

/** Sizes as a list writes them: "17 mil" as "17 mm", "half-inch" as "1/2-inch", a bare whole size on a spanner in millimetres. */
export const withSizes = (words: readonly string[]): string => {
  const sized = words.map(word =>
    word
      .replace(/^(\d[\d.]*)-?(?:mil|mill|mm|milli(?:metre|meter)s?)$/, '$1 mm')
      .replace(/^(\d[\d./]*)-?in(?:ch)?$/, '$1-inch'),
  )
  // A bare size on a spanner or socket, whole or and a half, is in millimetres: common practice, no source.
  const [first, ...rest] = sized
  const isBare =
    first !== undefined &&
    /^(?:[4-9]|[1-5]\d|[1-9]\.5)$/.test(first) &&
    rest.length > 0 &&
    TURNED_BY_SIZE.test(rest.join(' ')) &&
    !/^(?:mm|inch|volt|watt|point|piece)/.test(rest[0] ?? '')
  const isInch = first !== undefined && /^\d{1,2}\/\d{1,2}$/.test(first) && TURNED_BY_SIZE.test(rest.join(' '))
  const name = isBare ? [first, 'mm', ...rest] : isInch ? [`${first}-inch`, ...rest] : sized
  // Who says "13 key" for a nut means a spanner; hex keys of that size are called so.
  return name
    .join(' ')
    .trim()
    .replace(/^((?:[89]|[1-3]\d) mm) (?:ring )?key$/, '$1 spanner')
}

/** "2 spring compressors", "1 spanner": how many there are is not part of the name; "2 Phillips screwdriver" keeps its size. */
const withoutCount = (words: readonly string[]): readonly string[] => {
  const [first = '', ...rest] = words
  const last = rest.at(-1)
  if (last === undefined || !/^\d{1,2}$/.test(first)) return words
  const isPlural =
    singular(last) !== last && !/^(?:mm|pliers|tweezers|scissors|snips|cutters|forceps|shears)$/.test(last)
  return first === '1' || (isPlural && !/^(?:mm|-|point|grit|pin)/.test(rest[0] ?? '')) ? rest : words
}

/** "T25", "M8": a letter and a number in one word, which the tagger takes apart. */
export const designationAt = (tokens: readonly Token[], i: number): string | undefined => {
  const [letter, number] = [tokens[i - 1], tokens[i]]
  return letter !== undefined && number?.tag === 'number' && letter.to === number.at && letter.at < number.at
    ? `${letter.word.toUpperCase()}${number.word}`
    : undefined
}

/** Stuff that is poured or smeared is told apart by its kind, not by how it looks just now: "the clean oil", "the black grease". */
const FLUID = /^(?:oil|grease|coolant)$/
const LOOKS = new Set('clean black golden brown milky hot warm cold thin thick dark clear'.split(' '))
/** Units that measure out stuff and are no size of it. */
const AMOUNT =
  /^(?:ml|millilit(?:re|er)s?|lit(?:re|er)s?|grams?|kilos?|ounces?|quarts?|pints?|gallons?|met(?:re|er)s?|foot|feet|drops?)$/

/** "25 millilitres of oil" without its "of": how much there is of it. */
const withoutAmount = (kept: readonly Token[]): readonly Token[] =>
  kept.length > 2 && kept[0]?.tag === 'number' && AMOUNT.test(kept[1]?.word ?? '') ? kept.slice(2) : kept

/** "Two and a half hex key": the number in front of "and a half". */
const wholeBeforeHalf = (tokens: readonly Token[], from: number): string | undefined => {
  const [number, and, a, half] = tokens.slice(Math.max(0, from - 3), from + 1)
  if (half?.word !== 'half' || a?.word !== 'a' || and?.word !== 'and' || number?.tag !== 'number') return undefined
  const [digits = ''] = inDigits([number.word])
  return /^\d+$/.test(digits) ? `${digits}.5` : undefined
}

/** Whose lock is hung on a switch: a padlock. */
const OWN = new Set(['my', 'your', 'his', 'her', 'our'])

/**
 * A thing's name for a list: article and idle adjectives dropped, sizes in digits, "17 mil" as "17 mm", "of" phrases kept.
 * Stuff ("grease") keeps no measure; a piece of something does ("piece of wire").
 */
export const nameOfThing = (tokens: readonly Token[], phrase: NounPhrase): string => {
  const inside = tokens.slice(phrase.from, phrase.to)
  const isFluid = phrase.isMaterial && FLUID.test(inside.at(-1)?.word ?? '')
  const counted = inside.filter(
    (token, i) =>
      phrase.from + i >= phrase.head ||
      !(
        (isFluid && LOOKS.has(token.word)) ||
        IDLE_ADJECTIVES.has(token.word) ||
        STATES.has(token.word) ||
        /^(?:just|about|like|some|any)$|.{3}est$/.test(token.word)
      ),
  )
  const kept = phrase.isMaterial ? withoutAmount(counted) : counted
  const head = kept.slice(-(phrase.to - phrase.head)).map(token => token.word)
  const names = phrase.isTool ? FULL_TOOL_NAMES : FULL_MATERIAL_NAMES
  const whole = head.join(' ')
  const last = names.get(singular(head.at(-1) ?? ''))
  const full =
    names.get(whole) ??
    names.get(singular(whole)) ??
    (last === undefined ? undefined : [...head.slice(0, -1), last].join(' '))
  const lead = tokens[phrase.from - 1]?.word ?? ''
  if (whole === 'lock' && (OWN.has(lead) || inside.some(({ word }) => word === 'own' || word === 'personal')))
    return 'padlock'
  const isPlain =
    full !== undefined &&
    (phrase.isTool || phrase.isMaterial) &&
    !(head.at(-1) === 'meter' && kept.length > 1 && !/^\d/.test(kept[0]?.word ?? ''))
  const said = isPlain
    ? [...kept.slice(0, kept.length - head.length).map(token => token.word), ...full.split(' ')]
    : kept.map(token => token.word)
  const size = designationAt(tokens, phrase.from) ?? wholeBeforeHalf(tokens, phrase.from)
  const words = inDigits(size === undefined ? said : [size, ...said.slice(1)]).map((word, i, all) =>
    /^\d/.test(all[i - 1] ?? '') ? (UNITS[word] ?? word) : word,
  )
  const name = withSizes(withoutCount(words))
  // "Brushes", "wrenches": a tool is listed once, however many there are.
  return phrase.isTool ? name.replace(/(?<=(?:ch|sh|x))es$/, '') : name
}

/** The name as it is compared: singular, "safety goggles" and "goggles" apart, spelling folded. */
export const keyOfThing = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll('-', ' ')
    .replace(/\bvise\b/g, 'vice')
    .replace(/\btire\b/g, 'tyre')
    .replace(/\bgage\b/g, 'gauge')
    .replace(/\bspanner\b/g, 'wrench')
    .replace(/\ballen key\b/g, 'hex key')
    .replace(/\bflashlight\b/g, 'torch')
    .split(' ')
    .map(singular)
    .join(' ')
