import { COMPOUND_DENOMINATORS, DENOMINATORS } from './number-words'
import type { Token } from './tokens'

export const wordAt = (tokens: readonly Token[], i: number): string => {
  const token = tokens[i]
  return token?.is === 'word' ? token.text : ''
}

/** Passes over a hyphen inside a spoken number (`twenty-five`). */
export const passHyphen = (tokens: readonly Token[], i: number): number =>
  tokens[i]?.text === '-' &&
  tokens[i]?.isGlued === true &&
  tokens[i + 1]?.isGlued === true &&
  tokens[i + 1]?.is === 'word'
    ? i + 1
    : i

export const isDenominator = (tokens: readonly Token[], i: number): boolean =>
  DENOMINATORS.has(wordAt(tokens, i)) || compoundDenominator(tokens, i) !== undefined

export const compoundDenominator = (tokens: readonly Token[], i: number): { value: number; to: number } | undefined => {
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
