import { COMPOUND_DENOMINATORS, DENOMINATORS, NOUGHTS, NUMBER_STARTS, ONES, SCALES, TEENS, TENS } from './number-words'
import type { Token } from './tokens'

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

type Whole = {
  readonly value: number
  readonly to: number
  readonly isPaired?: boolean
  readonly scale?: number
  readonly hasFigures?: boolean
}

type Options = {
  /** Whether `and` may join parts of a whole number (`a hundred and ten`). */
  readonly joinsAnd?: boolean
}

const wordAt = (tokens: readonly Token[], i: number): string => {
  const token = tokens[i]
  return token?.is === 'word' ? token.text : ''
}

/** Passes over a hyphen inside a spoken number (`twenty-five`). */
const passHyphen = (tokens: readonly Token[], i: number): number =>
  tokens[i]?.text === '-' &&
  tokens[i]?.isGlued === true &&
  tokens[i + 1]?.isGlued === true &&
  tokens[i + 1]?.is === 'word'
    ? i + 1
    : i

const isDenominator = (tokens: readonly Token[], i: number): boolean =>
  DENOMINATORS.has(wordAt(tokens, i)) || compoundDenominator(tokens, i) !== undefined

const compoundDenominator = (tokens: readonly Token[], i: number): { value: number; to: number } | undefined => {
  const word = wordAt(tokens, i)
  const hyphen = passHyphen(tokens, i + 1)
  const next = wordAt(tokens, hyphen)
  const value = COMPOUND_DENOMINATORS.get(word)?.get(next)
  if (value !== undefined) {
    // "thirty seconds" is a time unless it is hyphened or of something.
    const isTime = next === 'seconds' && hyphen === i + 1 && !['of', 'inch', 'in'].includes(wordAt(tokens, hyphen + 1))
    return isTime ? undefined : { value, to: hyphen + 1 }
  }
  if ((word === 'ten' || word === 'hundred') && DENOMINATORS.get(next) === 1000)
    return { value: word === 'ten' ? 10_000 : 100_000, to: hyphen + 1 }
  return undefined
}

/** 1 to 99 in words, a single figure after a ten allowed (`twenty 5`). */
const readSmall = (tokens: readonly Token[], i: number): Whole | undefined => {
  const word = wordAt(tokens, i)
  const ten = TENS.get(word)
  if (ten !== undefined) {
    const at = passHyphen(tokens, i + 1)
    const one = ONES.get(wordAt(tokens, at))
    if (one !== undefined && one > 0) return { value: ten + one, to: at + 1 }
    const figure = tokens[i + 1]
    if (figure?.is === 'figure' && /^[1-9]$/.test(figure.raw) && tokens[i + 2]?.text !== '/')
      return { value: ten + Number(figure.raw), to: i + 2, hasFigures: true }
    return { value: ten, to: i + 1 }
  }
  const small = TEENS.get(word) ?? ONES.get(word)
  return small === undefined ? undefined : { value: small, to: i + 1 }
}

const readDigitRun = (tokens: readonly Token[], i: number): Whole | undefined => {
  let digits = ''
  let j = i
  for (; j < tokens.length && digits.length < 12; j++) {
    const word = wordAt(tokens, j)
    const one = ONES.get(word) ?? (digits !== '' && (word === 'oh' || word === 'o') ? 0 : undefined)
    if (one === undefined) break
    digits += String(one)
  }
  return digits.length >= 3 &&
    !isDenominator(tokens, j) &&
    !SCALES.has(wordAt(tokens, j)) &&
    wordAt(tokens, j) !== 'hundred'
    ? { value: Number(digits), to: j }
    : undefined
}

/** A tail after hundred or thousand: `[and] ten`, never one that begins a new number (`and a half` is a fraction). */
const readTail = (
  tokens: readonly Token[],
  i: number,
  below: number,
  { joinsAnd = true }: Options,
): Whole | undefined => {
  let at = passHyphen(tokens, i)
  if (wordAt(tokens, at) === 'and') {
    if (!joinsAnd) return undefined
    at++
  } else if (tokens[at]?.text === ',' && below === 1000 && ['hundred'].includes(wordAt(tokens, at + 2))) at++
  if (wordAt(tokens, at) === 'oh') at++
  const small =
    readSmall(tokens, at) ?? (at > i || wordAt(tokens, at + 1) === 'hundred' ? readFigureTail(tokens, at) : undefined)
  if (small === undefined || isDenominator(tokens, small.to) || compoundDenominator(tokens, at) !== undefined)
    return undefined
  if (small.value === 0) return undefined
  if (below === 1000 && wordAt(tokens, small.to) === 'hundred' && small.value < 10) {
    const rest = readTail(tokens, small.to + 1, 100, { joinsAnd })
    return { value: small.value * 100 + (rest?.value ?? 0), to: rest?.to ?? small.to + 1 }
  }
  return small.value < below ? small : undefined
}

/** `3 hundred and 21` */
const readFigureTail = (tokens: readonly Token[], i: number): Whole | undefined => {
  const token = tokens[i]
  if (token?.is !== 'figure' || !/^\d{1,2}$/.test(token.raw) || tokens[i + 1]?.text === '/') return undefined
  return { value: Number(token.raw), to: i + 1, hasFigures: true }
}

const readHundreds = (tokens: readonly Token[], i: number, options: Options): Whole | undefined => {
  const isArticle =
    ['a', 'an'].includes(wordAt(tokens, i)) && ['hundred', 'thousand', 'million'].includes(wordAt(tokens, i + 1))
  const figure = tokens[i]
  const head: Whole | undefined = isArticle
    ? { value: 1, to: i + 1 }
    : ['hundred', 'thousand'].includes(wordAt(tokens, i)) && !['the', 'several', 'few'].includes(wordAt(tokens, i - 1))
      ? { value: 1, to: i }
      : figure?.is === 'figure' && figure.value !== undefined
        ? { value: figure.value, to: i + 1, hasFigures: true }
        : (readDigitRun(tokens, i) ?? readSmall(tokens, i))
  if (head === undefined) return undefined
  const at = passHyphen(tokens, head.to)
  const word = wordAt(tokens, at)
  if (word === 'hundred') {
    const tail = readTail(tokens, at + 1, 100, options)
    const isRound = tail === undefined
    return {
      value: head.value * 100 + (tail?.value ?? 0),
      to: tail?.to ?? at + 1,
      ...(isRound ? { scale: 100 } : {}),
      ...flag(head),
    }
  }
  if (head.hasFigures === true || head.value === 0) return head
  // "one oh five"
  if (word === 'oh' || word === 'o') {
    const one = ONES.get(wordAt(tokens, at + 1))
    if (one !== undefined && one > 0 && head.value < 100 && head.to - i <= 3)
      return { value: head.value * 100 + one, to: at + 2, isPaired: true }
  }
  // "one eighty", "fourteen fifty"
  const second = head.to - i <= 3 ? readSmall(tokens, head.to) : undefined
  if (
    second !== undefined &&
    second.value >= 10 &&
    !isDenominator(tokens, second.to) &&
    compoundDenominator(tokens, head.to) === undefined &&
    (head.value < 20 || head.value % 10 === 0 || second.value % 10 === 0) &&
    head.value < 100
  )
    return { value: head.value * 100 + second.value, to: second.to, isPaired: true, ...flag(second) }
  return head
}

const flag = (whole: Whole): { hasFigures?: true } => (whole.hasFigures === true ? { hasFigures: true } : {})

const readWhole = (tokens: readonly Token[], i: number, options: Options): Whole | undefined => {
  const hundreds = readHundreds(tokens, i, options)
  if (hundreds === undefined) return undefined
  let value = 0
  let part = hundreds
  let isScaled = false
  for (let round = 0; round < 4; round++) {
    const at = passHyphen(tokens, part.to)
    const scale = SCALES.get(wordAt(tokens, at))
    if (scale === undefined) break
    isScaled = true
    value += part.value * scale
    const tail = readTail(tokens, at + 1, 1000, options)
    if (tail === undefined) return { value, to: at + 1, scale, ...flag(hundreds) }
    part = tail
  }
  return isScaled ? { value: value + part.value, to: part.to, ...flag(hundreds) } : hundreds
}

/** Digits after a spoken point: `oh three five`, `25`, `twenty-five`. */
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

/** A fraction: `three sixteenths`, `a quarter`, `half`, `3/4`, `two thirds`. */
const readFraction = (tokens: readonly Token[], i: number): Numeral | undefined => {
  const top = tokens[i]
  const bottom = tokens[i + 2]
  if (
    top?.is === 'figure' &&
    tokens[i + 1]?.text === '/' &&
    bottom?.is === 'figure' &&
    bottom.value !== undefined &&
    top.value !== undefined
  ) {
    const isWhole = Number.isInteger(top.value) && Number.isInteger(bottom.value)
    const isGlued = tokens[i + 1]?.isGlued === true
    if (!isWhole || !isGlued || bottom.value < 2 || bottom.value > 10_000 || top.value > 999) return undefined
    return {
      value: top.value / bottom.value,
      to: i + 3,
      numerator: top.value,
      denominator: bottom.value,
      hasFigures: true,
    }
  }
  if (top?.is === 'figure' && top.value !== undefined && !/\d/.test(top.raw))
    return { value: top.value, to: i + 1, hasFigures: true }
  const word = wordAt(tokens, i)
  if (
    word === 'half' ||
    (word === 'quarter' && wordAt(tokens, i - 1) !== 'the') ||
    (word === 'quarters' && wordAt(tokens, i - 1) === 'three')
  )
    return { value: word === 'half' ? 0.5 : 0.25, to: i + 1, numerator: 1, denominator: word === 'half' ? 2 : 4 }
  const isArticle = word === 'a' || word === 'an'
  const above: Whole | undefined = isArticle ? { value: 1, to: i + 1 } : readNumerator(tokens, i)
  if (above === undefined) return undefined
  const at = passHyphen(tokens, above.to)
  const compound = compoundDenominator(tokens, at)
  const denominator = compound?.value ?? DENOMINATORS.get(wordAt(tokens, at))
  if (denominator === undefined) return undefined
  return {
    value: above.value / denominator,
    to: compound?.to ?? at + 1,
    numerator: above.value,
    denominator,
    ...flag(above),
  }
}

const readNumerator = (tokens: readonly Token[], i: number): Whole | undefined => {
  // "five ten-thousandths": the ten belongs below.
  const small = readSmall(tokens, i)
  if (small !== undefined) {
    const at = passHyphen(tokens, small.to)
    if (compoundDenominator(tokens, at) !== undefined) return small
  }
  const whole = readHundreds(tokens, i, {})
  if (whole === undefined || !isDenominator(tokens, passHyphen(tokens, whole.to))) return undefined
  return whole
}

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
  if (isPoint(next)) {
    const decimals = readDecimals(tokens, whole.to + 1)
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
