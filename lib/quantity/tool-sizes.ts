import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '))
const text = (lexeme: Lexeme | undefined): string => lexeme?.text ?? ''

/** `the twenty-four mil`: spanners go by millimetres and inches. */
export const isToolUnit = ({ unit }: Draft): boolean =>
  unit?.ambiguous === 'mil' || unit?.code === 'mm' || unit?.code === '[in_i]'

const SAID_BEFORE = set("of is to at be about than was around exactly it's just another every")

/** `a pair of 12s`, `the 13s`: spanners and sockets in the plural; seconds are waited for. */
const PLURAL_AFTER = set('of the two three four both these those them my your with')
const isToolPlural = (lexemes: readonly Lexeme[], { unit, to, from, nominal = 0 }: Draft): boolean =>
  unit?.code === 's' &&
  text(lexemes[to - 1]) === 's' &&
  lexemes[to - 1]?.isGlued === true &&
  nominal >= 4 &&
  nominal <= 36 &&
  PLURAL_AFTER.has(text(lexemes[from - 1]))

/** `19 millimeter, and then`: sockets are said in the singular, measures are not. */
export const toolDoubt = ({ lexemes }: Drafted, draft: Draft): string | undefined => {
  if (isToolPlural(lexemes, draft)) return 'the size of a tool'
  const value = draft.nominal
  const isSingular = draft.unit?.code === 'mm' && draft.unit.count === 'one'
  if (
    !isSingular ||
    value === undefined ||
    draft.phrase.hasTolerance ||
    draft.bound !== undefined ||
    !Number.isInteger(value) ||
    value < 4 ||
    value > 36
  )
    return undefined
  const next = lexemes[draft.to]
  return (next === undefined || next.is === 'stop') && !SAID_BEFORE.has(text(lexemes[draft.from - 1]))
    ? 'a size as tools have it'
    : undefined
}
