import type { Lexeme } from './lexemes'

export type Bound = 'low' | 'high'

/** What stands before a number and decides what it means. */
export type Prefix = {
  /** Index of the number's lexeme. */
  readonly to: number
  readonly bound?: Bound
  readonly style?: 'between' | 'from' | 'plus-minus' | 'within'
  readonly isApproximate: boolean
  readonly comparison?: 'more' | 'less'
  readonly hasLabel?: boolean
}

/** Words passed over between a bound and its number. */
const PASSED = new Set([
  'the',
  'be',
  'to',
  'of',
  'is',
  'it',
  "it's",
  'its',
  ':',
  '=',
  'at',
  'a',
  'an',
  'than',
  'your',
  'like',
  'that',
  "that's",
  'at about',
  'uh',
  'um',
  'er',
  ',',
  'should',
  'you',
  'want',
  'reading',
  'you know',
])

const NEGATION_REACH = 9
const LABEL_REACH = 6
/** A negation does not reach across these. */
const BARRIERS = new Set([
  'if',
  'until',
  'till',
  'before',
  'because',
  'unless',
  'so',
  'when',
  'once',
  'but',
  ',',
  ';',
  '.',
  ':',
  '?',
  '!',
  "'cause",
  'cause',
  'then',
  'and',
])

/** Whether a negation governs the comparison at `i`: `shouldn't wander more than`, `never past`, `no less than`. */
export const isNegated = (lexemes: readonly Lexeme[], i: number): boolean => {
  for (let j = i - 1; j >= 0 && j >= i - NEGATION_REACH; j--) {
    const lexeme = lexemes[j]
    if (lexeme === undefined || lexeme.is === 'number') return false
    if (lexeme.is === 'role' && lexeme.role === 'negation') return true
    if (
      BARRIERS.has(lexeme.text) ||
      (lexeme.is === 'role' && ['range', 'correction', 'max', 'min'].includes(lexeme.role) && lexeme.text !== 'to')
    )
      return false
  }
  return false
}

/** Words before `up to` that make it a movement and not a limit: `bring it up to`. */
const MOVERS = new Set(
  'it them that this her him drawn draw draws done do nut nuts bolt bolts screw screws bring bringing pump pumped go going come came comes crank bump wind run back pressure temp temperature get goes heat heated heating turn turned torque torqued tighten tightened take taken set step charge inflate fill filled work working ramp ramping build built revs rev throttle idle voltage speed level right speeds top topped snug snugged'.split(
    ' ',
  ),
)

/** Words that may stand between `maximum` and its number: `max pressure is six`. */
const isLabelWord = (lexeme: Lexeme | undefined): boolean =>
  lexeme !== undefined &&
  (lexeme.is === 'word' ||
    (lexeme.is === 'role' && ['about', 'filler', 'within'].includes(lexeme.role)) ||
    (lexeme.is === 'unit' && lexeme.unit.isSymbol !== true)) &&
  lexeme.text !== 'and' &&
  lexeme.text !== 'but'

const labelled = (lexemes: readonly Lexeme[], i: number): number | undefined => {
  for (let j = i; j < i + LABEL_REACH; j++) {
    const lexeme = lexemes[j]
    if (lexeme?.is === 'number') return j
    if ((lexeme?.text === 'a' || lexeme?.text === 'an') && lexemes[j + 1]?.is === 'unit') return j
    if (
      !isLabelWord(lexeme) &&
      !(
        lexeme?.text === ':' ||
        (lexeme?.text === '.' && j === i && lexeme.isGlued) ||
        (lexeme?.text === ',' && j === i)
      )
    )
      return undefined
  }
  return undefined
}

type Draft = { -readonly [K in keyof Prefix]: Prefix[K] }

/** One word or phrase of the prefix. @returns how many lexemes it takes, or undefined where the prefix ends */
const take = (lexemes: readonly Lexeme[], i: number, draft: Draft): number | undefined => {
  const lexeme = lexemes[i]
  if (lexeme?.is !== 'role')
    return i > draft.to || draft.bound !== undefined || draft.style !== undefined || draft.isApproximate
      ? passed(lexemes, i)
      : undefined
  switch (lexeme.role) {
    case 'about':
      draft.isApproximate = true
      return 1
    case 'nearly':
      draft.isApproximate = true
      return 1
    case 'filler':
      if (lexemes[i + 1]?.is === 'unit') return undefined
      return 1
    case 'between':
    case 'from':
      draft.style = lexeme.role
      return 1
    case 'within':
      draft.style = 'within'
      // "don't stand within ten feet"
      draft.bound = isNegated(lexemes, i) ? 'low' : 'high'
      return 1
    case 'plus-minus':
      if (lexeme.text === 'or minus' || lexeme.text === '+ -') return undefined
      draft.style = 'plus-minus'
      return 1
    case 'up-to':
      if (!(lexeme.text.startsWith('up') && MOVERS.has(lexemes[i - 1]?.text ?? '')) && draft.style === undefined)
        draft.bound = 'high'
      return 1
    case 'max':
    case 'at-most':
      return label(lexemes, i, draft, 'high')
    case 'min':
    case 'at-least':
      return label(lexemes, i, draft, 'low')
    case 'max-after':
      return lexeme.text === 'limit' || !lexeme.text.startsWith('no') ? undefined : undefined
    case 'more':
    case 'less': {
      // "the nut under it at eight": a place.
      if (['it', 'them', 'there'].includes(lexemes[i + 1]?.text ?? '')) return undefined
      const isUp = lexeme.role === 'more'
      const isLow = isUp !== isNegated(lexemes, i)
      draft.bound = isLow ? 'low' : 'high'
      if (!isNegated(lexemes, i)) draft.comparison = lexeme.role
      return 1
    }
    case 'negation':
      return negated(lexemes, i)
    default:
      return undefined
  }
}

/** `no more than`: the negation belongs to the phrase. */
const negated = (lexemes: readonly Lexeme[], i: number): number | undefined => {
  const next = lexemes[i + 1]
  return next?.is === 'role' && ['more', 'less'].includes(next.role) ? 1 : undefined
}

const label = (lexemes: readonly Lexeme[], i: number, draft: Draft, bound: Bound): number | undefined => {
  const number = labelled(lexemes, i + 1)
  const next = lexemes[i + 1]
  if (number === undefined && !(next?.is === 'role')) return undefined
  draft.bound = bound
  if (number === undefined) return 1
  if (number > i + 1) draft.hasLabel = true
  const hasInner = lexemes.slice(i + 1, number).some(lexeme => lexeme.is === 'role' && lexeme.role === 'about')
  if (hasInner) draft.isApproximate = true
  return number - i
}

const passed = (lexemes: readonly Lexeme[], i: number): number | undefined => {
  const lexeme = lexemes[i]
  if (lexeme === undefined || !PASSED.has(lexeme.text)) return undefined
  if ((lexeme.text === 'a' || lexeme.text === 'an') && lexemes[i + 1]?.is === 'unit') return undefined
  return 1
}

/**
 * Reads what stands before a number, from lexeme `i` on: bounds, `between`, `about`.
 *
 * @returns `to` is where the number should start; `i` itself where nothing stands before it
 */
export const readPrefix = (lexemes: readonly Lexeme[], i: number): Prefix => {
  const draft: Draft = { to: i, isApproximate: false }
  let at = i
  for (let n = 0; n < 8; n++) {
    const lexeme = lexemes[at]
    if (lexeme === undefined || lexeme.is === 'number') break
    const taken = take(lexemes, at, draft)
    if (taken === undefined) break
    at += taken
  }
  draft.to = at
  return draft
}
