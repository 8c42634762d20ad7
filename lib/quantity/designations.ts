import { NUMBER_STARTS } from './number-words'
import { type Numeral, readNumeral } from './numeral'
import { type Designation, grade, metricThread, text, unifiedThread } from './thread-names'
import type { Token } from './tokens'

/** Reads one sort of designation at a token, given the number that starts there. */
type Reader = (tokens: readonly Token[], i: number, number: Numeral | undefined) => Designation | undefined

const CURRENCY = new Set(['$', '£', '€', '¥'])

/** `10W-30`, `twenty W fifty`, `0w20`, `75W90`, `sae 30`. */
const oil: Reader = (tokens, i, own) => {
  if (['sae', 'iso', 'vg', 'api', 'dot', 'nlgi'].includes(text(tokens, i))) {
    const at = text(tokens, i + 1) === 'vg' || text(tokens, i + 1) === '-' ? i + 2 : i + 1
    const number = readNumeral(tokens, at)
    if (number === undefined) return undefined
    return { is: 'oil', to: ['weight', 'w'].includes(text(tokens, number.to)) ? number.to + 1 : number.to }
  }
  const first = tokens[i]?.is === 'figure' ? { value: tokens[i]?.value ?? 0, to: i + 1 } : own
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

export const price = (tokens: readonly Token[], i: number): Designation | undefined => {
  if (!CURRENCY.has(text(tokens, i))) return undefined
  const number = readNumeral(tokens, i + 1)
  return number === undefined ? undefined : { is: 'price', to: number.to }
}

const MONEY = new Set('dollar dollars buck bucks quid cent cents euro euros pence grand pound-sterling'.split(' '))

const spokenPrice: Reader = (tokens, _, number) => {
  if (number === undefined || !MONEY.has(text(tokens, number.to))) return undefined
  const to = number.to + 1
  const cents = readNumeral(tokens, text(tokens, to) === 'and' ? to + 1 : to)
  const isCents = cents !== undefined && ['cents', 'pence'].includes(text(tokens, cents.to))
  return { is: 'price', to: isCents ? cents.to + 1 : to }
}

/** `6:30`, `6 o'clock`, `half past six`, `ten to six pm`. */
const clock: Reader = (tokens, i, number) => {
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

/** `12 in3`: the power of a unit. */
const POWERS = new Set('in2 in3 ft2 ft3 mm2 mm3 cm2 cm3 dm3 m2 m3'.split(' '))

/** Letters with figures touching them name a part or size: `PH2`, `R134a`, `T-25`, `B12`. */
export const part = (tokens: readonly Token[], i: number): Designation | undefined => {
  const word = tokens[i]
  if (word?.is !== 'word' || word.text === 'x') return undefined
  const isHyphened = text(tokens, i + 1) === '-' && tokens[i + 1]?.isGlued === true
  const at = isHyphened ? i + 2 : i + 1
  const figure = tokens[at]
  if (figure?.is !== 'figure' || !figure.isGlued || !/^\d/.test(figure.raw)) return undefined
  if (isHyphened && !/^\p{Lu}/u.test(word.raw)) return undefined
  if (tokens[i - 1]?.is === 'figure' && !isHyphened && POWERS.has(`${word.text}${figure.raw}`)) return undefined
  let to = at + 1
  while (to < tokens.length && tokens[to]?.isGlued && tokens[to]?.is !== 'sign') to++
  return { is: 'part', to }
}

const STARTS = new Set(['m', 'grade', 'class', 'sae', 'iso', 'vg', 'api', 'dot', 'nlgi'])

/** A number, a currency sign, a word that opens a designation, or letters with a figure or hyphen touching them. */
const mayStart = (tokens: readonly Token[], i: number): boolean => {
  const token = tokens[i]
  if (token === undefined) return false
  if (token.is === 'figure') return true
  if (token.is === 'sign') return CURRENCY.has(token.text)
  const next = tokens[i + 1]
  const isTouched = next?.isGlued === true && (next.is === 'figure' || next.text === '-')
  return isTouched || NUMBER_STARTS.has(token.text) || STARTS.has(token.text)
}

const READERS: readonly Reader[] = [metricThread, price, spokenPrice, oil, clock, grade, unifiedThread, part]

/**
 * The designation that starts at token `i`: thread, grade, oil, price, time of day, part number.
 *
 * @returns undefined where none starts there; never throws
 */
export const readDesignation = (tokens: readonly Token[], i: number): Designation | undefined => {
  if (!mayStart(tokens, i)) return undefined
  const before = tokens[i - 1]
  if (before?.is === 'figure' && tokens[i]?.isGlued === true) return undefined
  const number = readNumeral(tokens, i)
  for (const reader of READERS) {
    const found = reader(tokens, i, number)
    if (found !== undefined) return found
  }
  return undefined
}
