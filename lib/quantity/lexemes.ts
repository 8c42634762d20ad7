import { readDesignation } from './designations'
import { type Numeral, readNumeral } from './numeral'
import { ROLES, type Role } from './roles'
import type { Designation } from './thread-names'
import { type Token, toTokens } from './tokens'
import { longestMatch, type Match } from './trie'
import { UNIT_WORDS, type UnitWord } from './unit-words'

type Common = {
  /** Lower case, single spaces. */
  readonly text: string
  /** Offsets into the text that was read. */
  readonly at: number
  readonly to: number
  /** Token indices. */
  readonly first: number
  readonly after: number
  readonly isGlued: boolean
}

/** What the text is made of once numbers, units and phrases of limits are found in it. */
export type Lexeme = Common &
  (
    | { readonly is: 'number'; readonly numeral: Numeral }
    | { readonly is: 'unit'; readonly unit: UnitWord }
    | { readonly is: 'role'; readonly role: Role }
    | { readonly is: 'name'; readonly designation: Designation }
    | { readonly is: 'word' }
    | { readonly is: 'stop' }
  )

const STOPS = new Set([',', '.', ';', ':', '?', '!', '(', ')', '[', ']', '—', '…', '"'])

/** Words before `point two` that make it a place and not a decimal: `at this point two of them`. */
const PLACES = new Set(
  'this that the some a which lowest highest any every no melting boiling dew flash set freezing bite biting one contact high low pivot mounting starting end test pour balance grease check same jacking lift drain fill'.split(
    ' ',
  ),
)

/** `one` after these is a pronoun: `this one`, `the old one`. */
const POINTERS = new Set(
  'this that the each every another other first last which new old same big little small wrong right left no any good bad front rear back top bottom inner outer second third long short next cheap fat spare lower upper middle centre center my your our their his her'.split(
    ' ',
  ),
)

const textOf = (tokens: readonly Token[], first: number, after: number): string => {
  if (after === first + 1) return tokens[first]?.text ?? ''
  const parts: string[] = []
  for (let i = first; i < after; i++) parts.push(tokens[i]?.text ?? '')
  return parts.join(' ')
}

const isPlace = (tokens: readonly Token[], i: number): boolean =>
  tokens[i]?.text === 'point' && i > 0 && PLACES.has(tokens[i - 1]?.text ?? '')

const isPronoun = (tokens: readonly Token[], i: number): boolean => {
  const word = tokens[i]?.text
  if (word !== 'one') return false
  const next = tokens[i + 1]?.text ?? ''
  if (!POINTERS.has(tokens[i - 1]?.text ?? ''))
    return next === 'of' || next === 'by' || next === 'at' || next === 'another'
  return (
    !['and', 'point', 'hundred', 'full', 'thousandth', '-'].includes(next) &&
    longestMatch(UNIT_WORDS, tokens, i + 1) === undefined
  )
}

/**
 * Reads a text into lexemes, left to right, the longest phrase first.
 *
 * @returns linear in the text's length; never throws
 */
export const toLexemes = (text: string): readonly Lexeme[] => {
  const tokens = toTokens(text)
  const lexemes: Lexeme[] = []
  let before: Lexeme | undefined
  for (let i = 0; i < tokens.length; i = before.after) {
    before = lexemeAt(tokens, i, before)
    lexemes.push(before)
  }
  return lexemes
}

const common = (tokens: readonly Token[], first: number, after: number): Common => {
  const token = tokens[first]
  return {
    text: textOf(tokens, first, after),
    at: token?.at ?? 0,
    to: tokens[after - 1]?.to ?? 0,
    first,
    after,
    isGlued: token?.isGlued ?? false,
  }
}

/** After `between`, an `and` inside a number is kept for the range where the range has no other: `between one hundred and one fifty`. */
const numeralAt = (tokens: readonly Token[], i: number, before: Lexeme | undefined): Numeral | undefined => {
  const whole = readNumeral(tokens, i)
  if (whole === undefined || before?.is !== 'role' || before.role !== 'between') return whole
  const isClosed = (numeral: Numeral): boolean => {
    const at = longestMatch(UNIT_WORDS, tokens, numeral.to)?.to ?? numeral.to
    return ['and', 'to', '-', '&'].includes(tokens[at]?.text ?? '')
  }
  if (isClosed(whole)) return whole
  const part = readNumeral(tokens, i, { joinsAnd: false })
  return part !== undefined && isClosed(part) ? part : whole
}

/** `and below` before a number is a limit of its own, not the end of the one before: `above 10 and below 15`. */
const roleAt = (tokens: readonly Token[], i: number): Match<Role> | undefined => {
  const role = longestMatch(ROLES, tokens, i)
  const isAfter = role?.value === 'max-after' || role?.value === 'min-after'
  const opens = tokens[i]?.text === 'and' || tokens[i]?.text === 'or'
  // "And up to an hour".
  if (isAfter && opens && role?.to === i + 2 && tokens[i + 2]?.text === 'to') return undefined
  return role !== undefined && isAfter && opens && readNumeral(tokens, role.to) !== undefined ? undefined : role
}

/** `in 3` is no `in3`: the power of a unit's sign touches it. */
const unitAt = (tokens: readonly Token[], i: number) => {
  const unit = longestMatch(UNIT_WORDS, tokens, i)
  const last = tokens[i + 1]
  return unit?.to === i + 2 && last?.is === 'figure' && !last.isGlued ? undefined : unit
}

const lexemeAt = (tokens: readonly Token[], i: number, before: Lexeme | undefined): Lexeme => {
  const designation = readDesignation(tokens, i)
  if (designation !== undefined)
    return Object.assign(common(tokens, i, designation.to), { is: 'name' as const, designation })
  const afterNumber = before?.is === 'number'
  const unit = unitAt(tokens, i)
  const role =
    before?.is !== 'number' && tokens[i]?.text === 'min' ? { value: 'min' as const, to: i + 1 } : roleAt(tokens, i)
  const asUnit = (): Lexeme | undefined =>
    unit === undefined
      ? undefined
      : Object.assign(common(tokens, i, unit.to), { is: 'unit' as const, unit: unit.value })
  if (afterNumber && unit !== undefined && unit.to >= (role?.to ?? 0)) return asUnit() ?? plainLexeme(tokens, i)
  const numeral = isPlace(tokens, i) || isPronoun(tokens, i) ? undefined : numeralAt(tokens, i, before)
  if (role !== undefined && role.to > (numeral?.to ?? 0) && role.to >= (unit?.to ?? 0))
    return Object.assign(common(tokens, i, role.to), { is: 'role' as const, role: role.value })
  if (numeral !== undefined) return Object.assign(common(tokens, i, numeral.to), { is: 'number' as const, numeral })
  if (unit !== undefined && (unit.value.isSymbol !== true || afterNumber)) return asUnit() ?? plainLexeme(tokens, i)
  return plainLexeme(tokens, i)
}

const plainLexeme = (tokens: readonly Token[], i: number): Lexeme => {
  const { text = '', at = 0, to = 0, isGlued = false } = tokens[i] ?? {}
  return { is: STOPS.has(text) ? 'stop' : 'word', text, at, to, first: i, after: i + 1, isGlued }
}
