import type { Draft } from './draft'
import type { Lexeme } from './lexemes'
import { dimensionOf, isComparable } from './units'

const SAYS = new Set([
  "that's",
  'that',
  'is',
  'or',
  'about',
  'which',
  "it's",
  'equals',
  'so',
  'call',
  'it',
  'equal',
  'to',
  'in',
  'metric',
  '(',
  '/',
  '=',
  ',',
  '[',
  'works',
  'out',
  'roughly',
  'around',
  'be',
  "that'd",
  'would',
  'i.e',
  'same',
  'as',
  'a',
  'the',
  'other',
  'money',
  'comes',
  'for',
  'you',
  'folks',
  'people',
  'if',
  "you're",
  'imperial',
  'american',
  'europe',
])

/** Marks a value in another unit said straight after one as its stated equivalent: `14 foot-pounds, that's 19 newton metres`. */
export const markEquivalents = (lexemes: readonly Lexeme[], drafts: readonly Draft[]): void => {
  for (let n = 1; n < drafts.length; n++) {
    const [a, b] = [drafts[n - 1], drafts[n]]
    if (
      a?.code === undefined ||
      b?.code === undefined ||
      a.code === b.code ||
      dimensionOf(a.code) === 'time' ||
      !isComparable(a.code, b.code)
    )
      continue
    if (b.from - a.to > 8 || b.from < a.to) continue
    const between = lexemes.slice(a.to, b.from).map(lexeme => lexeme.text)
    const isStated = between.length > 0 && between.every(word => word.split(' ').every(part => SAYS.has(part)))
    const isWritten = ['(', '/', '[', '='].includes(between[0] ?? '')
    if (
      isStated &&
      (isWritten ||
        between.some(word =>
          [
            "that's",
            'that is',
            'or',
            'which is',
            'which',
            'equals',
            'works',
            "it's",
            'call it',
            'about',
            'so',
            'that',
          ].includes(word),
        ))
    )
      b.equivalentOf = a
  }
}
