import type { Draft } from './draft'
import type { Lexeme } from './lexemes'
import { unitOf } from './units'

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '))
const text = (lexeme: Lexeme | undefined): string => lexeme?.text ?? ''

const AGO = set('ago old later straight flat now back earlier')
const LONG_AGO = set('last past previous next')
const SPENT = set('took been spent wasted since lasted clock meter drove worked waited ran showing')
const TRADES = set('trade business game industry')
/** Words that make days, weeks, months and years an interval or a wait. */
const DUE = set(
  'life shelf every once or replace replaced change changed interval after least whichever within lasts good service due until before rebuild inspect inspected check checked expires expire wait cure cures curing dry dries leave let sit stand soak for up recheck again store stored wear in at than under over more less most about hold rest charge each',
)
/** Words before `a minute` and `an hour` that make them a wait. */
const WAITS = set(
  'for wait give it least takes after within half let sit needs about hold leave in run once every of another around under than to over count most until be exactly only just take',
)
const LONG = new Set(['a', 'mo', 'wk', 'd'])
const METERS = set('clock meter engine motor machine unit odometer')
const DONE = set('that experience it this doing work labor labour them practice my your')

/** Why a time is no limit: an age, how long ago, time already spent, an idiom. */
export const timeDoubt = (lexemes: readonly Lexeme[], draft: Draft): string | undefined => {
  const code = draft.unit?.code ?? ''
  if (unitOf(code)?.kind !== 'time') return undefined
  const [next, after] = [text(lexemes[draft.to]), text(lexemes[draft.to + 1])]
  const previous = text(lexemes[draft.from - 1])
  if (AGO.has(next) || (next === '-' && after === 'old')) return 'an age or how long ago'
  if (next === 'in' && (TRADES.has(after) || TRADES.has(text(lexemes[draft.to + 2])))) return 'an age'
  if (['of', 'on'].includes(next) && (DONE.has(after) || METERS.has(text(lexemes[draft.to + 2]))))
    return 'time already spent'
  if (previous === 'me' || (previous === 'in' && text(lexemes[draft.from - 2]) === 'back')) return 'an idiom'
  if (LONG_AGO.has(previous) && !draft.phrase.hasTolerance) return 'how long ago'
  const words = lexemes
    .slice(Math.max(0, draft.from - 6), draft.from)
    .flatMap(lexeme => lexeme.text.replace(/'s$/, '').split(' '))
  if (words.some(word => SPENT.has(word))) return 'time already spent'
  const isMarked = draft.bound !== undefined || draft.phrase.hasTolerance
  const isInterval = lexemes[draft.from]?.is === 'role' && draft.phrase.term.number === undefined
  if (LONG.has(code) && !isMarked && !isInterval && !words.some(word => DUE.has(word)))
    return 'a time without a reason to be a limit'
  const isOne = draft.phrase.term.value === 1 && !draft.phrase.isRange && !isMarked && !isInterval
  const isAfterIn = draft.phrase.term.isImplied === true && previous === 'in'
  if (isOne && (isAfterIn || (code === 's' && !['for', 'every'].includes(previous)))) return 'an idiom'
  const isIdiom =
    draft.phrase.term.isImplied === true && draft.phrase.term.value === 1 && !draft.phrase.isRange && !isMarked
  return isIdiom && !words.slice(-2).some(word => WAITS.has(word)) ? 'an idiom' : undefined
}
