import { compoundDenominator, isDenominator, passHyphen, wordAt } from './denominator'
import { ONES, SCALES, TEENS, TENS } from './number-words'
import type { Token } from './tokens'

export type Whole = {
  readonly value: number
  readonly to: number
  readonly isPaired?: boolean
  readonly scale?: number
  readonly hasFigures?: boolean
}

export type Options = {
  /** Whether `and` may join parts of a whole number (`a hundred and six`). */
  readonly joinsAnd?: boolean
}

/** 1 to 99 in words, a single figure after a ten allowed (`twenty 5`). */
export const readSmall = (tokens: readonly Token[], i: number): Whole | undefined => {
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
  const isSpelled = digits.length >= 3 || /^[1-9]0$/.test(digits)
  return isSpelled && !isDenominator(tokens, j) && !SCALES.has(wordAt(tokens, j)) && wordAt(tokens, j) !== 'hundred'
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

/** `five-forty`: a single figure, a hyphen and a ten in words are one number. `Five-ten minutes` are two. */
/** Ends of a range differ less than this: `two-ten` is 210, `eight-ten` a range. Common practice, no source. */
const APART = 3

const isJoined = (tokens: readonly Token[], i: number, head: Whole): boolean =>
  head.to === i + 1 &&
  ONES.has(wordAt(tokens, i)) &&
  tokens[head.to]?.text === '-' &&
  tokens[head.to]?.isGlued === true &&
  tokens[head.to + 1]?.isGlued === true &&
  (TENS.has(wordAt(tokens, head.to + 1)) || (TEENS.get(wordAt(tokens, head.to + 1)) ?? 0) > APART * head.value)

export const readHundreds = (tokens: readonly Token[], i: number, options: Options): Whole | undefined => {
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
  const next = isJoined(tokens, i, head) ? head.to + 1 : head.to
  const second = head.to - i <= 3 ? readSmall(tokens, next) : undefined
  if (
    second !== undefined &&
    second.value >= 10 &&
    !isDenominator(tokens, second.to) &&
    compoundDenominator(tokens, next) === undefined &&
    (head.value < 20 || head.value % 10 === 0 || second.value % 10 === 0) &&
    head.value < 100
  )
    return { value: head.value * 100 + second.value, to: second.to, isPaired: true, ...flag(second) }
  return head
}

export const flag = (whole: Whole): { hasFigures?: true } => (whole.hasFigures === true ? { hasFigures: true } : {})

export const readWhole = (tokens: readonly Token[], i: number, options: Options): Whole | undefined => {
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
