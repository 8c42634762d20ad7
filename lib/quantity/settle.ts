import { keepBare, settleBare, settleParts } from './bare-numbers'
import type { Surroundings } from './cues'
import type { Draft, Drafted } from './draft'
import { isVolume, settleUnit } from './resolve'
import { voteSystem } from './system-vote'
import type { UnitWord } from './unit-words'

/** How much of what was said before is kept in mind, in characters from its end. */
const MEMORY = 6000
/** Words either side of a number that are looked at. */
const WINDOW = 24
/** Drafts either side of one that count as near it. */
const NEAR = 6

const wordsOf = ({ lexemes }: Drafted, from: number, to: number): readonly string[] =>
  lexemes
    .slice(Math.max(0, from), to)
    .flatMap(lexeme => (lexeme.is === 'stop' ? [] : lexeme.text.replace(/'s$/, '').split(' ')))

/** The values next to a draft whose units are certain. */
const besideOf = (near: readonly Draft[], draft: Draft): Surroundings['beside'] => {
  const i = near.indexOf(draft)
  return [near[i - 1], near[i + 1]].flatMap(other => {
    const value = other?.nominal ?? other?.high ?? other?.low
    const code = other?.code ?? other?.unit?.code
    return value === undefined || code === undefined ? [] : [{ value, code }]
  })
}

type Said = Pick<Surroundings, 'context' | 'system' | 'isImperial'>

const surroundings = (drafted: Drafted, draft: Draft, n: number, said: Said): Surroundings => {
  const near = drafted.drafts.slice(Math.max(0, n - NEAR), n + NEAR + 1).filter(other => other.dropped === undefined)
  return {
    ...said,
    before: wordsOf(drafted, draft.from - WINDOW, Math.max(draft.from, draft.phrase.term.from)),
    after: wordsOf(drafted, draft.to, draft.to + WINDOW),
    beside: besideOf(near, draft),
    value: draft.nominal ?? draft.high ?? draft.low ?? 0,
    codes: near.flatMap(other => (other !== draft && other.unit?.code !== undefined ? [other.unit.code] : [])),
  }
}

const unitWordOf = ({ lexemes }: Drafted, draft: Draft): string => {
  for (let i = draft.to - 1; i >= draft.from; i--) {
    const lexeme = lexemes[i]
    if (lexeme?.is === 'unit') return lexeme.text
  }
  return ''
}

const settleNamed = (drafted: Drafted, draft: Draft, unit: UnitWord, n: number, said: Said): void => {
  const { code, note, isOpen } =
    unit.ambiguous === undefined
      ? { code: unit.code, note: undefined, isOpen: undefined }
      : settleUnit(unit, unitWordOf(drafted, draft), surroundings(drafted, draft, n, said))
  if (code !== undefined) draft.code = code
  if (note !== undefined) draft.notes.push({ kind: isOpen === true ? 'question' : 'settled', text: note })
  if (draft.isInherited === true && code !== undefined)
    draft.notes.push({ kind: 'settled', text: 'unit taken from the value beside it' })
}

/** Whether bare numbers are kept for the caller to settle, and the system the whole talk counts in, if it is known. */
type SettleOptions = { readonly keepsDoubtful?: boolean; readonly system?: Surroundings['system'] }

/** Settles the unit of every draft that is still a reading, or drops it where nothing makes its number a value. */
export const settleUnits = (
  drafted: Drafted,
  before: string,
  { keepsDoubtful = false, system }: SettleOptions,
): void => {
  const context = before.slice(-MEMORY)
  const live = drafted.drafts.some(
    ({ dropped, unit }) =>
      dropped === undefined && (unit === undefined ? !keepsDoubtful : unit.ambiguous !== undefined),
  )
  const hasVolume = drafted.drafts.some(({ dropped, unit }) => dropped === undefined && isVolume(unit?.ambiguous))
  const said: Said = {
    context,
    system: live ? (system ?? voteSystem(drafted.text, context)) : undefined,
    isImperial: hasVolume && (/\b(?:imperial|british|uk)\b/i.test(drafted.text) || /\bimperial\b/i.test(context)),
  }
  drafted.drafts.forEach((draft, n) => {
    if (draft.dropped !== undefined) return
    if (draft.unit === undefined) {
      if (settleParts(drafted, draft)) return
      if (keepsDoubtful) keepBare(drafted, draft)
      else settleBare(drafted, draft, context)
    } else settleNamed(drafted, draft, draft.unit, n, said)
  })
}
