import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'
import { isValuePlace } from './lists'

const set = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/))

/** Words that make a bare number near them a value. */
const CUES = set(
  'gap gapped clearance torque torqued limit spec specs specification lash pressure temp temperature preload runout endplay end-play backlash deflection slack tolerance setting voltage reading dial dialed dialled regulator thermostat thickness depth height pitch level lift idle advance timing free-play crush squish protrusion interference',
)
/** Verbs whose object a bare number is: `heat it to 220`, `set it at 40`. */
const VERBS = set(
  "set heat heated torque torqued tighten tightened dial dialed bump gap gapped adjust adjusted shim shimmed bring preheat warm charge inflate pump keep hold maintain crank ramp limit should shouldn't calls call says reads read",
)
const LINK = set(
  "of is to at it the be should a its it's them that for on up down around by = : says was about your this in between from and want wants you",
)
const HEAT = set('heat heated hot cool temp temperature preheat nozzle oven bed degrees warm hotend bake melt')

export type BareKind = 'temperature' | 'torque' | 'pressure' | 'other'

/** What a bare number is accepted for, or undefined where nothing makes it a value. */
export const acceptBare = ({ lexemes }: Drafted, draft: Draft): BareKind | undefined => {
  if (draft.phrase.hasTolerance && draft.nominal !== undefined) return kindOf(lexemes, draft)
  if (!isValuePlace(lexemes, draft.to)) return undefined
  const number = draft.phrase.term.number
  const isYear =
    number !== undefined &&
    draft.nominal !== undefined &&
    draft.nominal >= 1900 &&
    draft.nominal <= 2100 &&
    (number.numeral.isPaired === true || number.numeral.hasFigures === true)
  if (isYear) return undefined
  const cue = findCue(lexemes, draft)
  const isFine = draft.phrase.term.value < 1 && isFineDecimal(number)
  if (isFine || cue || draft.isCorrection === true) return kindOf(lexemes, draft)
  return undefined
}

const isFineDecimal = (number: Extract<Lexeme, { is: 'number' }> | undefined): boolean => {
  if (number === undefined || number.numeral.denominator !== undefined) return false
  const digits = String(number.numeral.value).split('.')[1] ?? ''
  return digits.length >= 3
}

const REACH = 7

const findCue = (lexemes: readonly Lexeme[], draft: Draft): boolean => {
  let isLinked = true
  for (let i = draft.from - 1; i >= 0 && i >= draft.from - REACH; i--) {
    const lexeme = lexemes[i]
    if (lexeme === undefined || lexeme.is === 'stop' || lexeme.is === 'number') return false
    if (CUES.has(lexeme.text)) return true
    if (VERBS.has(lexeme.text) && isLinked)
      return hasTo(lexemes, i, draft.from) || draft.phrase.isRange || draft.bound !== undefined
    if (!LINK.has(lexeme.text) && lexeme.is !== 'role') isLinked = false
  }
  const next = lexemes[draft.to]
  return next !== undefined && CUES.has(next.text)
}

const hasTo = (lexemes: readonly Lexeme[], from: number, to: number): boolean => {
  for (let i = from; i < to; i++)
    if (
      ['to', 'at', 'for', 'around', 'be', 'up to', 'under', 'below', 'above', 'over'].includes(lexemes[i]?.text ?? '')
    )
      return true
  return false
}

const kindOf = (lexemes: readonly Lexeme[], draft: Draft): BareKind => {
  for (let i = draft.from - 1; i >= 0 && i >= draft.from - 10; i--) {
    const word = lexemes[i]?.text ?? ''
    if (HEAT.has(word)) return 'temperature'
    if (/^(?:torque|tighten)/.test(word)) return 'torque'
    if (/^(?:pressure|inflate|regulator)/.test(word)) return 'pressure'
  }
  return 'other'
}
