import { NUMBER_STARTS } from './number-words'
import { readNumeral } from './numeral'
import type { Token } from './tokens'

/** Figures that name a thing and are not a limit. */
export type Designation = {
  readonly is: 'metric thread' | 'unified thread' | 'grade' | 'oil' | 'price' | 'clock' | 'part' | 'size'
  /** Index after its last token. */
  readonly to: number
  /** Threads: nominal diameter (mm or inch) and pitch (mm) or threads an inch, as far as said. */
  readonly diameter?: number
  readonly pitch?: number
  /** Property class or grade as written, such as `8.8` or `5`. */
  readonly grade?: string
}

const CURRENCY = new Set(['$', '£', '€', '¥'])
const PITCHES = new Set([
  0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6,
])
/** Threads an inch in the unified coarse, fine and extra-fine series. @source ASME B1.1, from memory */
const THREADS = new Set([4, 4.5, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 24, 27, 28, 32, 36, 40, 44, 48])
const INCH_DIAMETERS = new Set([1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 9 / 16, 5 / 8, 3 / 4, 7 / 8, 1])
const NUMBER_SIZES = new Set([2, 4, 5, 6, 8, 10, 12])

const text = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? ''

const metricThread = (tokens: readonly Token[], i: number): Designation | undefined => {
  if (text(tokens, i) !== 'm') return undefined
  const token = tokens[i + 1]
  const isWritten = token?.is === 'figure' && token.isGlued
  if (!isWritten && tokens[i - 1]?.is === 'figure') return undefined
  const spoken = isWritten ? undefined : readNumeral(tokens, i + 1, { joinsAnd: false })
  const diameter = isWritten ? token?.value : spoken?.value
  const after = isWritten ? i + 2 : (spoken?.to ?? 0)
  if (diameter === undefined || diameter < 1 || diameter > 100) return undefined
  const by = text(tokens, after)
  if (by === 'x' || by === '×' || by === 'by' || by === '*') {
    const pitch = readNumeral(tokens, after + 1)
    if (pitch !== undefined) {
      const isPitch = PITCHES.has(pitch.value)
      // A length may stand there too: M8 x 40.
      const second = text(tokens, pitch.to)
      const length = isPitch && ['x', '×', 'by'].includes(second) ? readNumeral(tokens, pitch.to + 1) : undefined
      return {
        is: 'metric thread',
        to: skipMillimetres(tokens, length?.to ?? pitch.to),
        diameter,
        ...(isPitch ? { pitch: pitch.value } : {}),
      }
    }
  }
  return { is: 'metric thread', to: after, diameter }
}

const skipMillimetres = (tokens: readonly Token[], i: number): number =>
  ['mm', 'millimeter', 'millimetre', 'millimeters', 'millimetres', 'mil'].includes(text(tokens, i)) ? i + 1 : i

/** `3/8-16`, `1/4-20`, `10-32`, `three eighths sixteen`, `quarter twenty`. */
const unifiedThread = (tokens: readonly Token[], i: number): Designation | undefined => {
  const size = readNumeral(tokens, i, { joinsAnd: false })
  if (size === undefined) return undefined
  let at = size.to
  const isHyphened = text(tokens, at) === '-' && tokens[at]?.isGlued === true
  if (isHyphened) at++
  else if (text(tokens, at) === 'by' || text(tokens, at) === 'inch') at++
  const isFraction = size.denominator !== undefined && INCH_DIAMETERS.has(size.value)
  const isNumber = isHyphened && NUMBER_SIZES.has(size.value) && size.hasFigures === true
  if (!isFraction && !isNumber) return undefined
  const pitch = readNumeral(tokens, at, { joinsAnd: false })
  if (pitch === undefined || !THREADS.has(pitch.value) || pitch.denominator !== undefined || pitch.value < 8)
    return undefined
  const next = text(tokens, pitch.to)
  if (isNumber) {
    const isNamed = [
      'screw',
      'screws',
      'bolt',
      'bolts',
      'tap',
      'thread',
      'threads',
      'unf',
      'unc',
      'machine',
      'nut',
      'nuts',
      'stud',
    ].includes(next)
    if (!isNamed || pitch.value < 24) return undefined
  } else if (
    [
      'percent',
      '%',
      'mm',
      'psi',
      'foot',
      'inch',
      'of',
      'degrees',
      'to',
      '/',
      'pounds',
      'thou',
      'turns',
      'newton',
      'ounces',
      'volts',
      'minutes',
      'hours',
    ].includes(next)
  )
    return undefined
  return {
    is: 'unified thread',
    to: ['unc', 'unf', 'unef'].includes(next) ? pitch.to + 1 : pitch.to,
    diameter: isNumber ? 0.06 + 0.013 * size.value : size.value,
    pitch: pitch.value,
  }
}

/** Property classes and grades: `8.8`, `class 10.9`, `grade 5`, `grade eight`. */
const grade = (tokens: readonly Token[], i: number): Designation | undefined => {
  const word = text(tokens, i)
  if (word === 'grade' || word === 'class') {
    const number = readNumeral(tokens, i + 1)
    if (number === undefined) return undefined
    return { is: 'grade', to: number.to, grade: String(number.value) }
  }
  const number =
    tokens[i]?.is === 'figure' || word === 'eight' || word === 'ten' || word === 'twelve'
      ? readNumeral(tokens, i)
      : undefined
  if (number === undefined || ![8.8, 10.9, 12.9].includes(number.value)) return undefined
  const next = text(tokens, number.to)
  const isNamed = [
    'bolt',
    'bolts',
    'screw',
    'screws',
    'stud',
    'studs',
    'cap',
    'fastener',
    'fasteners',
    'class',
    'hardware',
    'grade',
  ].includes(next)
  return isNamed ? { is: 'grade', to: number.to, grade: String(number.value) } : undefined
}

/** `10W-30`, `ten W forty`, `0w20`, `75W90`, `sae 30`. */
const oil = (tokens: readonly Token[], i: number): Designation | undefined => {
  if (['sae', 'iso', 'vg', 'api', 'dot', 'nlgi'].includes(text(tokens, i))) {
    const at = text(tokens, i + 1) === 'vg' || text(tokens, i + 1) === '-' ? i + 2 : i + 1
    const number = readNumeral(tokens, at)
    if (number === undefined) return undefined
    return { is: 'oil', to: ['weight', 'w'].includes(text(tokens, number.to)) ? number.to + 1 : number.to }
  }
  const first = tokens[i]?.is === 'figure' ? { value: tokens[i]?.value ?? 0, to: i + 1 } : readNumeral(tokens, i)
  if (first === undefined || first.value > 85) return undefined
  const word = text(tokens, first.to)
  if (word === 'w' || word === 'dub' || (word === 'double' && text(tokens, first.to + 1) === 'u')) {
    const at = text(tokens, first.to + 1) === '-' ? first.to + 2 : word === 'double' ? first.to + 2 : first.to + 1
    const second = readNumeral(tokens, at)
    return second === undefined ? undefined : { is: 'oil', to: second.to }
  }
  if (
    [
      'weight',
      'wt',
      'way',
      'grit',
      'gauge',
      'awg',
      'ply',
      'tooth',
      'teeth',
      'point',
      'speed',
      'grain',
      'pin',
      'cylinder',
    ].includes(word) &&
    tokens[first.to + 1]?.is !== 'figure'
  )
    return word === 'point' && readNumeral(tokens, first.to) !== undefined
      ? undefined
      : word === 'point'
        ? pointSocket(tokens, first.to)
        : { is: 'size', to: first.to + 1 }
  return undefined
}

const pointSocket = (tokens: readonly Token[], i: number): Designation | undefined =>
  ['socket', 'spanner', 'wrench', 'star', 'ring', 'bit', 'drive'].includes(text(tokens, i + 1))
    ? { is: 'size', to: i + 1 }
    : undefined

const price = (tokens: readonly Token[], i: number): Designation | undefined => {
  if (!CURRENCY.has(text(tokens, i))) return undefined
  const number = readNumeral(tokens, i + 1)
  return number === undefined ? undefined : { is: 'price', to: number.to }
}

const MONEY = new Set('dollar dollars buck bucks quid cent cents euro euros pence grand pound-sterling'.split(' '))

const spokenPrice = (tokens: readonly Token[], i: number): Designation | undefined => {
  const number = readNumeral(tokens, i)
  if (number === undefined || !MONEY.has(text(tokens, number.to))) return undefined
  const to = number.to + 1
  const cents = readNumeral(tokens, text(tokens, to) === 'and' ? to + 1 : to)
  const isCents = cents !== undefined && ['cents', 'pence'].includes(text(tokens, cents.to))
  return { is: 'price', to: isCents ? cents.to + 1 : to }
}

/** `6:30`, `6 o'clock`, `half past six`, `ten to six pm`. */
const clock = (tokens: readonly Token[], i: number): Designation | undefined => {
  const hour = tokens[i]
  const minute = tokens[i + 2]
  if (
    hour?.is === 'figure' &&
    text(tokens, i + 1) === ':' &&
    minute?.is === 'figure' &&
    tokens[i + 1]?.isGlued &&
    minute.isGlued &&
    /^\d\d$/.test(minute.raw)
  )
    return { is: 'clock', to: ['am', 'pm'].includes(text(tokens, i + 3)) ? i + 4 : i + 3 }
  const number = readNumeral(tokens, i)
  if (number === undefined) return undefined
  const next = text(tokens, number.to)
  if (next === "o'clock" || next === 'oclock' || next === 'am' || next === 'pm')
    return { is: 'clock', to: number.to + 1 }
  if (
    (next === 'past' || next === 'to') &&
    ['half', 'quarter', 'a', 'ten', 'twenty', 'five'].includes(text(tokens, i))
  ) {
    const at = readNumeral(tokens, number.to + 1)
    if (
      at !== undefined &&
      ["o'clock", 'am', 'pm', 'in'].includes(text(tokens, at.to)) &&
      (text(tokens, at.to) !== 'in' || ['morning', 'afternoon', 'evening'].includes(text(tokens, at.to + 2)))
    )
      return { is: 'clock', to: at.to + 1 }
  }
  return undefined
}

/** Letters with figures touching them name a part or size: `PH2`, `R134a`, `T-25`, `B12`. */
const part = (tokens: readonly Token[], i: number): Designation | undefined => {
  const word = tokens[i]
  if (word?.is !== 'word' || word.text === 'x') return undefined
  const isHyphened = text(tokens, i + 1) === '-' && tokens[i + 1]?.isGlued === true
  const at = isHyphened ? i + 2 : i + 1
  const figure = tokens[at]
  if (figure?.is !== 'figure' || !figure.isGlued || !/^\d/.test(figure.raw)) return undefined
  if (isHyphened && !/^\p{Lu}/u.test(word.raw)) return undefined
  let to = at + 1
  while (to < tokens.length && tokens[to]?.isGlued && tokens[to]?.is !== 'sign') to++
  return { is: 'part', to }
}

const STARTS = new Set(['m', 'grade', 'class', 'sae', 'iso', 'vg', 'api', 'dot', 'nlgi'])

/** A number, a currency sign, a word that opens a designation, or letters with a figure touching them. */
const mayStart = (tokens: readonly Token[], i: number): boolean => {
  const token = tokens[i]
  if (token === undefined) return false
  if (token.is === 'figure') return true
  if (token.is === 'sign') return CURRENCY.has(token.text)
  return NUMBER_STARTS.has(token.text) || STARTS.has(token.text) || tokens[i + 1]?.isGlued === true
}

const READERS = [metricThread, price, spokenPrice, oil, clock, grade, unifiedThread, part]

/**
 * The designation that starts at token `i`: thread, grade, oil, price, time of day, part number.
 *
 * @returns undefined where none starts there; never throws
 */
export const readDesignation = (tokens: readonly Token[], i: number): Designation | undefined => {
  if (!mayStart(tokens, i)) return undefined
  const before = tokens[i - 1]
  if (before?.is === 'figure' && tokens[i]?.isGlued === true) return undefined
  for (const reader of READERS) {
    const found = reader(tokens, i)
    if (found !== undefined) return found
  }
  return undefined
}
