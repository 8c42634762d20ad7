import { compoundDenominator, isDenominator, passHyphen, wordAt } from './denominator'
import { DENOMINATORS } from './number-words'
import type { Numeral } from './numeral'
import type { Token } from './tokens'
import { flag, readHundreds, readSmall, type Whole } from './whole-number'

/** A fraction: `three sixteenths`, `a quarter`, `half`, `3/4`, `two thirds`. */
export const readFraction = (tokens: readonly Token[], i: number): Numeral | undefined => {
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
    if (
      !isWhole ||
      !isGlued ||
      bottom.value < 2 ||
      top.value >= bottom.value ||
      bottom.value > 10_000 ||
      top.value > 999
    )
      return undefined
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
  const bare = BARE.get(word ?? '')
  if (bare !== undefined && wordAt(tokens, i - 1) !== 'the' && isOfLength(tokens, i + 1))
    return { value: 1 / bare, to: i + 1, numerator: 1, denominator: bare }
  const isArticle = word === 'a' || word === 'an' || word === 'another'
  const above: Whole | undefined = isArticle ? { value: 1, to: i + 1 } : readNumerator(tokens, i)
  if (above === undefined) return undefined
  const at = passHyphen(tokens, above.to)
  const compound = compoundDenominator(tokens, at)
  const denominator = compound?.value ?? DENOMINATORS.get(wordAt(tokens, at))
  // "Fourteen half an hour" is two figures.
  if (denominator === undefined || (wordAt(tokens, at) === 'half' && above.value > 1)) return undefined
  return {
    value: above.value / denominator,
    to: compound?.to ?? at + 1,
    numerator: above.value,
    denominator,
    ...flag(above),
  }
}

/** `Eighth of an inch`: the article is left out. */
const BARE: ReadonlyMap<string, number> = new Map([
  ['eighth', 8],
  ['sixteenth', 16],
])

const isOfLength = (tokens: readonly Token[], i: number): boolean => {
  let at = i
  if (wordAt(tokens, at) === 'of') at++
  if (['a', 'an'].includes(wordAt(tokens, at) ?? '')) at++
  const word = wordAt(tokens, at)
  return at === i ? word === 'inch' : word === 'inch' || word === 'turn'
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
