import { type Lexeme, toLexemes } from './lexemes'
import { type Phrase, readPhrase } from './phrase'
import { INTERVALS } from './roles'
import type { UnitWord } from './unit-words'

/** A phrase on its way to a reading; each pass settles more of it. */
export type Draft = {
  low?: number
  high?: number
  nominal?: number
  unit?: UnitWord
  /** UCUM code once settled. */
  code?: string
  from: number
  to: number
  readonly phrase: Phrase
  isApproximate: boolean
  /** Why it is no reading; absent while it may be one. */
  dropped?: string
  /** Why it is probably no limit, where doubtful ones are kept. */
  doubt?: string
  notes: { kind: NoteKind; text: string }[]
  /** Where the unit came from, if not said with it. */
  isInherited?: boolean
  bound?: 'low' | 'high'
  /** It took the place of a withdrawn value, which makes it a value in its own right. */
  isCorrection?: boolean
  part?: number
  equivalentOf?: Draft
  reference?: string
}

export type NoteKind = 'mended' | 'settled' | 'withdrawn' | 'question'

const STARTS = new Set([
  'about',
  'filler',
  'nearly',
  'between',
  'from',
  'within',
  'plus-minus',
  'up-to',
  'max',
  'at-most',
  'min',
  'at-least',
  'more',
  'less',
  'minus',
  'plus',
  'negation',
])

const canStart = (lexeme: Lexeme, next: Lexeme | undefined): boolean => {
  if (lexeme.is === 'number') return true
  if (lexeme.is === 'unit') return next?.text === 'and'
  return lexeme.is === 'role'
    ? STARTS.has(lexeme.role)
    : lexeme.text === 'a' || lexeme.text === 'an' || lexeme.text === '-'
}

const toDraft = (phrase: Phrase): Draft => ({
  ...(phrase.low === undefined ? {} : { low: phrase.low }),
  ...(phrase.high === undefined ? {} : { high: phrase.high }),
  ...(phrase.nominal === undefined ? {} : { nominal: phrase.nominal }),
  ...(phrase.unit === undefined ? {} : { unit: phrase.unit }),
  ...(phrase.bound === undefined ? {} : { bound: phrase.bound }),
  from: phrase.from,
  to: phrase.to,
  phrase,
  isApproximate: phrase.isApproximate,
  notes: phrase.notes.map(text => ({ kind: 'mended', text })),
})

const TIMES = new Set(['h', 'd', 'wk', 'mo', 'a', 'min', 's'])

/** `every month`, `once a year`, `yearly`, `twice a year`: intervals without a number of their own. */
const readInterval = (lexemes: readonly Lexeme[], i: number): Phrase | undefined => {
  const lexeme = lexemes[i]
  if (lexeme?.is !== 'role') return undefined
  const make = (value: number, code: string, to: number): Phrase => ({
    nominal: value,
    unit: { code, count: 'any' },
    from: i,
    to,
    term: { value, from: i, to, slips: [] },
    isApproximate: false,
    hasTolerance: false,
    isRange: false,
    notes: [],
  })
  if (lexeme.role === 'interval') {
    const interval = INTERVALS[lexeme.text]
    return interval === undefined ? undefined : make(interval[0], interval[1], i + 1)
  }
  const share = lexeme.role === 'every' || lexeme.role === 'once-a' ? 1 : lexeme.role === 'twice-a' ? 2 : undefined
  if (share === undefined) return undefined
  const at = lexemes[i + 1]?.text === 'single' ? i + 2 : i + 1
  const unit = lexemes[at]
  if (unit?.is !== 'unit' || unit.unit.count !== 'one' || !TIMES.has(unit.unit.code ?? '')) return undefined
  if (share === 2 && unit.unit.code === 'a') return make(6, 'mo', at + 1)
  const half = lexemes[at + 2]
  if (share === 1 && lexemes[at + 1]?.text === 'and' && half?.is === 'number' && half.numeral.value === 0.5)
    return make(1.5, unit.unit.code ?? '', at + 3)
  return make(1 / share, unit.unit.code ?? '', at + 1)
}

/** A text and every phrase of a limit in it, in order. */
export type Drafted = { readonly text: string; readonly lexemes: readonly Lexeme[]; readonly drafts: Draft[] }

/** @returns every phrase that may be a limit, in order, none thrown out yet */
export const toDrafts = (text: string): Drafted => {
  const lexemes = toLexemes(text)
  const drafts: Draft[] = []
  for (let i = 0; i < lexemes.length; ) {
    const lexeme = lexemes[i]
    const phrase =
      lexeme === undefined
        ? undefined
        : (readInterval(lexemes, i) ?? (canStart(lexeme, lexemes[i + 1]) ? readPhrase(lexemes, i) : undefined))
    if (phrase === undefined || phrase.to <= i) {
      i++
      continue
    }
    drafts.push(toDraft(phrase))
    i = phrase.to
  }
  return { text, lexemes, drafts }
}
