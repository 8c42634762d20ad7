import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'
import { isComparable } from './units'

/** `no` is a correction only where it does not belong to what follows: not `no load`, not `no more than`. */
const NOT_AFTER_NO = new Set(
  'more less fewer lower higher load drag play over under need problem way idea matter tighter looser longer shorter further good gap leaks leak later earlier bigger smaller deeper thicker limit tolerance torque real sense harm reason doubt big worse better power air fluid oil water slack wobble lube load. washer washers thread'.split(
    ' ',
  ),
)

const isCorrection = (lexemes: readonly Lexeme[], i: number): boolean => {
  const lexeme = lexemes[i]
  if (lexeme?.is !== 'role') return false
  if (lexeme.role === 'correction') return true
  if (lexeme.role !== 'negation' || lexeme.text !== 'no') return false
  const next = lexemes[i + 1]
  return (
    next === undefined ||
    !(NOT_AFTER_NO.has(next.text) || (next.is === 'role' && ['more', 'less', 'max', 'min'].includes(next.role)))
  )
}

/** How many lexemes a correction may stand after the withdrawn value, and the new value after it. */
const GAP = 5
const REACH = 18

const GAP_WORDS = new Set([
  ',',
  '.',
  '—',
  '…',
  'is',
  'it',
  'ah',
  'eh',
  'uh',
  'um',
  'er',
  'well',
  'so',
  '?',
  'on',
  'those',
  'that',
  'then',
  '-',
  'or',
  'and',
  'all',
  'there',
  'here',
  'oh',
])

/** Said before what takes back. */
const SIGHS = new Set(['oh', 'ah', 'uh', 'um', 'er', 'no'])

/** The correction that follows a draft, if one does: the index after its marker. */
const findCorrection = (lexemes: readonly Lexeme[], draft: Draft): number | undefined => {
  let plain = 0
  // `one kilopascal a minute, no, half`: how often is no gap.
  const isRate = /^(?:a|an|per)$/.test(lexemes[draft.to]?.text ?? '') && lexemes[draft.to + 1]?.is === 'unit'
  for (let i = draft.to + (isRate ? 2 : 0); i < lexemes.length && i <= draft.to + GAP + 2; i++) {
    const lexeme = lexemes[i]
    if (lexeme === undefined) return undefined
    if (isCorrection(lexemes, i)) {
      // A bare "wait" or "hold on" is an order unless talk breaks off before it.
      const isOrder = ['wait', 'hold on', 'hang on', 'hold up', 'one second', 'back up', 'make it', 'rather'].includes(
        lexeme.text,
      )
      // "To sixty, and wait a minute" is the next thing to do.
      if (isOrder && ['and', 'then'].includes(lexemes[i - 1]?.text ?? '') && lexemes[i + 1]?.is !== 'stop')
        return undefined
      if (
        isOrder &&
        (i === draft.to || plain > 0) &&
        lexemes[i + 1]?.is !== 'stop' &&
        !isCorrection(lexemes, i + 1) &&
        lexeme.text !== 'make it'
      )
        return undefined
      return i + 1
    }
    if (lexeme.is === 'role' && lexeme.role === 'weak-correction' && lexemes[i - 1]?.is === 'stop') return i + 1
    if (!GAP_WORDS.has(lexeme.text)) {
      // "I correct myself" may open the next sentence.
      if (['i', 'let', 'my'].includes(lexeme.text)) continue
      // A few words of what it is, before talk breaks off: `eight hundred psi of suction, no, millibar`.
      plain++
      const breaksOff = lexemes
        .slice(i + 1, draft.to + GAP + 3)
        .some(
          (after, k, rest) =>
            after.text === ',' &&
            (isCorrection(rest, k + 1) || (SIGHS.has(rest[k + 1]?.text ?? '') && isCorrection(rest, k + 2))),
        )
      if (lexeme.is !== 'word' || plain > GAP || !breaksOff) return undefined
    }
  }
  return undefined
}

const sentenceStops = (lexemes: readonly Lexeme[], from: number, to: number): number => {
  let count = 0
  for (let i = from; i < to; i++) if (['.', '?', '!'].includes(lexemes[i]?.text ?? '')) count++
  return count
}

const areAlike = (a: Draft, b: Draft): boolean => {
  if (a.unit === undefined || b.unit === undefined) return true
  if (a.unit.ambiguous !== undefined || b.unit.ambiguous !== undefined) return true
  return isComparable(a.unit.code ?? '', b.unit.code ?? '')
}

/** A unit named again after a marker, without a number: `eighty pounds, foot pounds I mean`. */
const renameUnit = (lexemes: readonly Lexeme[], draft: Draft, from: number): boolean => {
  let at = from
  while (
    at < from + 5 &&
    (lexemes[at]?.is === 'stop' ||
      ['a', 'the', "it's", 'goodness', 'sorry', 'no', 'i', 'mean', 'talking', 'not'].includes(
        lexemes[at]?.text ?? '',
      ) ||
      isCorrection(lexemes, at))
  ) {
    if (lexemes[at]?.text === 'not') return false
    at++
  }
  const lexeme = lexemes[at]
  if (lexeme?.is !== 'unit' || lexeme.unit.isSymbol === true || lexeme.unit.code === undefined) return false
  const was = draft.unit
  draft.unit = lexeme.unit
  draft.to = at + 1
  draft.notes.push(
    was?.ambiguous === undefined && was !== undefined
      ? { kind: 'withdrawn', text: `the unit was corrected to ${lexeme.text}` }
      : { kind: 'settled', text: `the unit was made clear: ${lexeme.text}` },
  )
  return true
}

const isClarification = (lexeme: Lexeme | undefined): boolean =>
  lexeme?.is === 'role' && lexeme.role === 'clarification'

/** `not fifteen, fifty`, `eleven, not twelve`. */
const isDenied = (lexemes: readonly Lexeme[], draft: Draft): boolean => {
  const before = lexemes[draft.from - 1]
  return (
    before?.is === 'role' &&
    before.role === 'negation' &&
    before.text === 'not' &&
    draft.bound === undefined &&
    draft.low === undefined &&
    draft.high === undefined
  )
}

/** A value taken back and the one that stands in its place. */
export type Replacement = { readonly gone: Draft; readonly by: Draft }

/** Lexemes after what takes back in which the same figure again is told of another thing. */
const AT_ONCE = 4
const OF_OTHER = new Set(['is', "'s", 'was', 'for', 'goes', 'belongs', "that's"])

/**
 * What takes a withdrawn value's place, and the same figure said again of the thing it belongs to:
 * `twelve, no, twelve is the fan, the pot gets eight`.
 */
const whatStands = (
  lexemes: readonly Lexeme[],
  draft: Draft,
  after: readonly Draft[],
  marker: number,
): { readonly again: readonly Draft[]; readonly next: Draft | undefined } => {
  const again: Draft[] = []
  const live = after.filter(other => other.dropped === undefined)
  for (const other of live) {
    const isSame = other.nominal !== undefined && other.nominal === (draft.nominal ?? draft.high ?? draft.low)
    const isForgot = ['forget', 'not'].includes(lexemes[other.from - 1]?.text ?? '')
    const isAtOnce = other.from - marker <= AT_ONCE && other.unit === undefined
    if (isSame && (isForgot || isAtOnce || OF_OTHER.has(lexemes[other.to]?.text ?? ''))) again.push(other)
    else if (areAlike(draft, other)) return { again, next: live.indexOf(other) - again.length < 3 ? other : undefined }
  }
  // "Forty-five, sorry, forty-five flat."
  const [first] = again
  return first === undefined || OF_OTHER.has(lexemes[first.to]?.text ?? '')
    ? { again, next: undefined }
    : { again: [], next: first }
}

/** Withdrawn values leave; the value that takes their place says so. */
export const applyCorrections = ({ text, lexemes, drafts }: Drafted): readonly Replacement[] => {
  const replaced: Replacement[] = []
  for (let n = 0; n < drafts.length; n++) {
    const draft = drafts[n]
    if (draft === undefined || draft.dropped !== undefined) continue
    if (isDenied(lexemes, draft)) {
      draft.dropped = 'said not to be'
      continue
    }
    clarify(lexemes, draft)
    const marker = findCorrection(lexemes, draft)
    if (marker === undefined) continue
    const { again, next } = whatStands(lexemes, draft, drafts.slice(n + 1, n + 6), marker)
    const from = again.at(-1)?.to ?? marker
    const isNear = next !== undefined && next.from - from <= REACH && sentenceStops(lexemes, from, next.from) <= 1
    if (!isNear || next === undefined) {
      renameUnit(lexemes, draft, marker)
      continue
    }
    const gone = sliceOf(text, lexemes, draft)
    draft.dropped = 'withdrawn by the speaker'
    for (const other of again) other.dropped = 'said of what it belongs to'
    // What the corrected value leaves out, it takes from the one it replaces.
    if (next.unit === undefined && draft.unit !== undefined) {
      next.unit = draft.unit
      next.isInherited = true
    }
    if (
      next.bound === undefined &&
      draft.bound !== undefined &&
      next.nominal !== undefined &&
      next.low === undefined &&
      next.high === undefined
    ) {
      next.bound = draft.bound
      if (draft.bound === 'high') next.high = next.nominal
      else next.low = next.nominal
      delete next.nominal
    }
    next.notes.push(
      { kind: 'withdrawn', text: `“${gone}” was said first and taken back` },
      ...draft.notes.filter(note => note.kind === 'withdrawn').slice(0, 2),
    )
    next.isCorrection = true
    replaced.push({ gone: draft, by: next })
  }
  return replaced
}

const clarify = (lexemes: readonly Lexeme[], draft: Draft): void => {
  let at = draft.to
  if (lexemes[at]?.text === ',' || lexemes[at]?.text === '—') at++
  if (isClarification(lexemes[at])) renameUnit(lexemes, draft, at + 1)
  else if (draft.unit === undefined && lexemes[at]?.text === 'in' && lexemes[at + 1]?.is === 'unit')
    renameUnit(lexemes, draft, at + 1)
}

/** @returns the words of a draft as they stand in the text */
export const sliceOf = (text: string, lexemes: readonly Lexeme[], draft: { from: number; to: number }): string =>
  text.slice(lexemes[draft.from]?.at ?? 0, lexemes[draft.to - 1]?.to ?? 0)
