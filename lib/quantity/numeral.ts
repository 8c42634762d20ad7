import { isDenominator, passHyphen, wordAt } from './denominator'
import { readFraction } from './fraction'
import { DENOMINATORS, NOUGHTS, NUMBER_STARTS, ONES, SCALES } from './number-words'
import type { Token } from './tokens'
import { flag, type Options, readSmall, readWhole, type Whole } from './whole-number'

/** A number read from words or figures. */
export type Numeral = {
  readonly value: number
  /** Index after its last token. */
  readonly to: number
  /** Of a fraction such as `seven tenths`: the denominator, and the part above it. */
  readonly denominator?: number
  readonly numerator?: number
  /** Said with a point. */
  readonly hasPoint?: boolean
  /** Two two-figure numbers one after the other, as years and large figures are said: `nineteen eighty`. */
  readonly isPaired?: boolean
  /** `a couple of`, `and a bit`: not exact. */
  readonly isVague?: boolean
  /** Its last word is a scale (hundred, thousand) of this size. */
  readonly scale?: number
  readonly hasFigures?: boolean
  /** A slip that was mended while reading. */
  readonly slip?: string
}

/** Digits after a spoken point: `oh one nine`, `25`, `twenty-five`. */
const readDecimals = (tokens: readonly Token[], i: number): { digits: string; to: number } | undefined => {
  let digits = ''
  let j = i
  for (; digits.length < 12; j++) {
    const token = tokens[j]
    if (token === undefined) break
    if (token.is === 'figure') {
      if (!/^\d+$/.test(token.raw) || tokens[j + 1]?.text === '/') break
      digits += token.raw
      continue
    }
    if (isDenominator(tokens, j + 1) && digits !== '' && DENOMINATORS.get(wordAt(tokens, j + 1)) !== 10) break
    const one =
      ONES.get(token.text) ??
      (NOUGHTS.has(token.text) && token.text !== 'nothing' && token.text !== 'none' ? 0 : undefined)
    if (one !== undefined) {
      digits += String(one)
      continue
    }
    const small = /^0*$/.test(digits) ? readSmall(tokens, j) : undefined
    if (small === undefined) break
    digits += String(small.value)
    return { digits, to: small.to }
  }
  return digits === '' ? undefined : { digits, to: j }
}

const isPoint = (word: string): boolean => word === 'point' || word === 'dot'

/**
 * The number that starts at token `i`, as long as it goes: figures, words, both mixed, decimals, fractions, `and a half`.
 *
 * @returns undefined where no number starts there. Never throws.
 */
export const readNumeral = (tokens: readonly Token[], i: number, options: Options = {}): Numeral | undefined => {
  const first = tokens[i]
  if (first === undefined || (first.is === 'word' ? !NUMBER_STARTS.has(first.text) : first.is === 'sign'))
    return undefined
  const vague = readVague(tokens, i)
  if (vague !== undefined) return vague
  const word = wordAt(tokens, i)
  if (isPoint(word) || (NOUGHTS.has(word) && isPoint(wordAt(tokens, i + 1)))) {
    const start = isPoint(word) ? i : i + 1
    const decimals = readDecimals(tokens, start + 1)
    if (decimals === undefined) return undefined
    return { value: Number(`0.${decimals.digits}`), to: decimals.to, hasPoint: true }
  }
  const fraction = readFraction(tokens, i)
  if (fraction !== undefined) return fraction
  if (word === 'dozen' || (word === 'a' && wordAt(tokens, i + 1) === 'dozen'))
    return { value: 12, to: word === 'a' ? i + 2 : i + 1 }
  const whole = readWhole(tokens, i, options)
  if (whole === undefined) return undefined
  return extend(tokens, whole, options)
}

const readVague = (tokens: readonly Token[], i: number): Numeral | undefined => {
  const start = wordAt(tokens, i) === 'a' ? i + 1 : i
  if (wordAt(tokens, start) !== 'couple') return undefined
  const at = wordAt(tokens, start + 1) === 'of' ? start + 2 : start + 1
  const scale = wordAt(tokens, at) === 'hundred' ? 100 : SCALES.get(wordAt(tokens, at))
  return { value: 2 * (scale ?? 1), to: scale === undefined ? at : at + 1, isVague: true }
}

/** What may follow a whole number and belong to it: a spoken point, a fraction, a `k`, `and a bit`. */
const extend = (tokens: readonly Token[], whole: Whole, options: Options): Numeral => {
  const base: Numeral = {
    value: whole.value,
    to: whole.to,
    ...(whole.isPaired === true ? { isPaired: true } : {}),
    ...(whole.scale === undefined ? {} : { scale: whole.scale }),
    ...flag(whole),
  }
  const next = wordAt(tokens, whole.to)
  const point = passHyphen(tokens, whole.to)
  if (isPoint(wordAt(tokens, point))) {
    const decimals = readDecimals(tokens, passHyphen(tokens, point + 1))
    if (decimals !== undefined && Number.isInteger(whole.value)) {
      const value = Number(`${whole.value}.${decimals.digits}`)
      const scale = SCALES.get(wordAt(tokens, decimals.to))
      return {
        ...base,
        value: value * (scale ?? 1),
        to: scale === undefined ? decimals.to : decimals.to + 1,
        hasPoint: true,
      }
    }
  }
  const figure = tokens[whole.to]
  if (next === 'k' && figure?.isGlued === true && !["'"].includes(tokens[whole.to + 1]?.text ?? ''))
    return { ...base, value: whole.value * 1000, to: whole.to + 1 }
  if (whole.hasFigures === true) {
    const mixed = readFiguresFraction(tokens, whole)
    if (mixed !== undefined) return { ...base, ...mixed }
  }
  const at = passHyphen(tokens, whole.to)
  if (['and', 'n'].includes(wordAt(tokens, at)) && options.joinsAnd !== false) {
    const after = passHyphen(tokens, at + 1)
    if (wordAt(tokens, after) === 'a' && ['bit', 'smidge', 'touch', 'hair'].includes(wordAt(tokens, after + 1)))
      return { ...base, to: after + 2, isVague: true }
    const hyphened = wordAt(tokens, after) === 'a' && tokens[after + 1]?.text === '-' ? after + 2 : after
    const fraction = readFraction(tokens, hyphened) ?? readFraction(tokens, after)
    if (fraction !== undefined && fraction.value < 1 && Number.isInteger(whole.value)) {
      const scale =
        fraction.to < tokens.length
          ? wordAt(tokens, fraction.to) === 'hundred'
            ? 100
            : SCALES.get(wordAt(tokens, fraction.to))
          : undefined
      return {
        ...base,
        value: (whole.value + fraction.value) * (scale ?? 1),
        ...(scale === undefined ? {} : { scale }),
        to: scale === undefined ? fraction.to : fraction.to + 1,
      }
    }
  }
  const fraction = fractionAfterWhole(tokens, whole)
  return fraction ?? base
}

/** `one three-quarter` is not said, but `two three quarters` and `1 half` are slips of `and`; only `N half` is taken. */
const fractionAfterWhole = (tokens: readonly Token[], whole: Whole): Numeral | undefined => {
  if (wordAt(tokens, whole.to) !== 'and' || wordAt(tokens, whole.to + 1) !== 'half') return undefined
  return { value: whole.value + 0.5, to: whole.to + 2, slip: 'and half' }
}

/** `1 1/2`, `1-1/2`, `2½`. */
const readFiguresFraction = (tokens: readonly Token[], whole: Whole): { value: number; to: number } | undefined => {
  const at = tokens[whole.to]?.text === '-' && tokens[whole.to]?.isGlued === true ? whole.to + 1 : whole.to
  const token = tokens[at]
  if (token?.is !== 'figure' || !Number.isInteger(whole.value)) return undefined
  const fraction = readFraction(tokens, at)
  if (fraction === undefined || fraction.value >= 1) return undefined
  return { value: whole.value + fraction.value, to: fraction.to }
}
