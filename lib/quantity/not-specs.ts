import { isAside } from './asides'
import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'
import { ADJECTIVES, MEASURED, PARTS, SMALL, TOOLS } from './thing-words'
import { timeDoubt } from './time-doubts'
import { isToolUnit, toolDoubt } from './tool-sizes'
import { unitOf } from './units'

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '))
const text = (lexeme: Lexeme | undefined): string => lexeme?.text ?? ''
const before = (lexemes: readonly Lexeme[], draft: Draft, count: number): readonly string[] =>
  lexemes.slice(Math.max(0, draft.from - count), draft.from).map(lexeme => lexeme.text)

type Doubt = (drafted: Drafted, draft: Draft) => string | undefined

/** The thing a size or rating stands before: the first word after adjectives, hyphens and further ratings. */
const headAfter = (lexemes: readonly Lexeme[], to: number): string => {
  let at = to
  for (let n = 0; n < 6; n++) {
    const lexeme = lexemes[at]
    if (lexeme === undefined || lexeme.is === 'stop') return ''
    const word = lexeme.text.replace(/'s$/, '')
    if (TOOLS.has(word) || PARTS.has(word)) return word
    const isPassed =
      word === '-' ||
      (word === 'torque' && TOOLS.has(text(lexemes[at + 1]))) ||
      lexeme.is === 'name' ||
      ADJECTIVES.has(word) ||
      (n > 0 && lexeme.is === 'unit') ||
      (lexeme.is === 'number' && isRating(lexemes, at))
    if (!isPassed) return lexeme.is === 'number' ? '' : word
    at++
  }
  return ''
}

/** `24-volt 50-watt one`: a further number with a singular unit. */
const isRating = (lexemes: readonly Lexeme[], i: number): boolean => {
  const unit = lexemes[i + 2]
  return text(lexemes[i + 1]) === '-' && unit?.is === 'unit' && unit.unit.count !== 'many'
}

const isPlain = (draft: Draft): boolean => !draft.phrase.hasTolerance && draft.bound === undefined

/** What is measured of a part: `point six millimetre plug gap`. */
const GAUGED = set(
  'gap clearance play lash slack deflection thickness depth height width pressure torque drop reading tolerance travel wear',
)
const QUARTER_TURNED = set(
  'valve valves fastener fasteners latch latches stopcock screw screws catch catches clip clips fixing fixings fitting fittings stud studs',
)

/** Ratings of fuses and lamps, which may be told as limits. */
const RATED = set('A mA V W')

const sizeDoubt: Doubt = ({ lexemes }, draft) => {
  const head = headAfter(lexemes, draft.to)
  // Part of a turn is a movement, but for what is made to lock in one.
  if (draft.unit?.code === 'circ' && !QUARTER_TURNED.has(head)) return undefined
  if (TOOLS.has(head)) return 'the size of a tool'
  if (!isPlain(draft) || draft.unit?.count === 'many' || draft.phrase.term.number === undefined) return undefined
  if (PARTS.has(head) && !GAUGED.has(text(lexemes[draft.to + 1])))
    return RATED.has(draft.unit?.code ?? '') ? 'an electrical rating' : 'the size or rating of a part'
  const size = Math.abs(draft.nominal ?? draft.high ?? 0)
  if (size <= 1 || draft.phrase.isRange) return undefined
  const next = lexemes[draft.to]
  const isMeasured = MEASURED.has(head) || MEASURED.has(text(lexemes[draft.to + 1]))
  if (draft.unit?.count === 'one' && next?.is === 'word' && !isMeasured && isThing(head))
    return 'a rating before a noun'
  const article = text(lexemes[draft.from - 1])
  const isNamed = ['a', 'an'].includes(article) || (['the', 'your', 'my'].includes(article) && isToolUnit(draft))
  return isNamed && !isMeasured && (next === undefined || next.is === 'stop')
    ? 'a size or rating by its article'
    : undefined
}

const isThing = (word: string): boolean =>
  /^[a-z]{3,}$/.test(word) && !SMALL.has(word) && !word.endsWith('ly') && !word.endsWith('ing')

const BY = new Set(['by', 'x', '×'])
const dimensionDoubt: Doubt = ({ lexemes }, draft) => {
  const [next, previous] = [text(lexemes[draft.to]), text(lexemes[draft.from - 1])]
  const isFirst = BY.has(next) && lexemes[draft.to + 1]?.is === 'number'
  const isSecond = BY.has(previous) && ['number', 'unit'].includes(lexemes[draft.from - 2]?.is ?? '')
  return isFirst || isSecond ? 'a size' : undefined
}

const PRICES = set(
  'cost costs paid pay pays price priced worth bill saved save spent spend charge charged charges cheap expensive sells selling sold quid apiece',
)
const PAYERS = set('i they we me you he she')

const priceDoubt: Doubt = ({ lexemes }, draft) => {
  if (draft.unit?.ambiguous !== 'pound') return undefined
  const words = before(lexemes, draft, 6)
  const word = words.findLast(word => PRICES.has(word))
  if (word === undefined) return undefined
  // Air conditioners are charged too.
  return word.startsWith('charge') && !words.some(who => PAYERS.has(who)) ? undefined : 'a price'
}

const SURE = set('sure certain of agree positive right , . the on confident worth not that happy correct done')
const MANY = set('time people guys folks failures them customers ones us')

const percentDoubt: Doubt = ({ lexemes }, draft) => {
  if (draft.unit?.code !== '%' || !isPlain(draft) || draft.phrase.isRange) return undefined
  const next = text(lexemes[draft.to])
  const after = [text(lexemes[draft.to + 1]), text(lexemes[draft.to + 2])]
  const isWhole = [99, 100, 110].includes(draft.nominal ?? 0)
  if (isWhole && (lexemes[draft.to] === undefined || SURE.has(next)) && !after.includes('humidity')) return 'an idiom'
  if (next === 'off') return 'a price'
  return next === 'of' && after.some(word => MANY.has(word)) ? 'an idiom' : undefined
}

const ROAD_CUES = set(
  'every at after first within recheck for another next until or once past over under least most interval due exceed last',
)
const ALREADY = set('it this that those them the her him these my')

const distanceDoubt: Doubt = ({ lexemes }, draft) => {
  if (unitOf(draft.unit?.code ?? '')?.kind !== 'distance') return undefined
  const next = text(lexemes[draft.to])
  if (['on', 'in'].includes(next) && ALREADY.has(text(lexemes[draft.to + 1]))) return 'a distance already run'
  if (['away', 'later', 'old', 'ago', 'down', 'from'].includes(next)) return 'a distance already run'
  const isPaired = ['or', '/'].includes(next) && lexemes[draft.to + 1]?.is === 'number'
  const isDue = isPaired || draft.bound !== undefined || before(lexemes, draft, 8).some(word => ROAD_CUES.has(word))
  return isDue ? undefined : 'a distance without a reason to be a limit'
}

const MEASURES = new Set([
  'quart',
  'pint',
  'gallon',
  'cup',
  'pound',
  'ounce',
  'L',
  'g',
  'kg',
  '[tsp_us]',
  '[tbs_us]',
  'mL',
])
const LENGTHS = new Set(['[in_i]', 'mm', '[mil_i]', 'cm', 'um'])

/** `a quart of` is a measure, `a turn`, `a bar`, `a foot` mostly are not. */
const impliedDoubt: Doubt = ({ lexemes }, draft) => {
  const { term } = draft.phrase
  if (term.isImplied !== true) return undefined
  const previous = lexemes[draft.from - 1]
  const isBare = draft.from === term.from
  if (isBare && (previous?.is === 'name' || previous?.is === 'number' || previous?.is === 'unit')) return 'a rate'
  const next = text(lexemes[draft.to])
  if (next === 'of' && ['tea', 'coffee', 'joe'].includes(text(lexemes[draft.to + 1]))) return 'an idiom'
  if (term.value !== 1 || draft.bound !== undefined || draft.phrase.hasTolerance || draft.phrase.isRange)
    return undefined
  if (text(previous) === 'of') return 'part of what was said before'
  if (draft.isApproximate) return undefined
  const code = draft.unit?.code ?? draft.unit?.ambiguous ?? ''
  if (MEASURES.has(code))
    return next === '' || next === 'of' || next === 'and' || lexemes[draft.to]?.is === 'stop'
      ? undefined
      : 'an article, not a measure'
  if (code === 'circ' && lexemes[draft.phrase.term.from]?.is === 'role') return undefined
  if (code === 'circ') return ['past', 'more', 'out', 'in', 'beyond', 'after'].includes(next) ? undefined : 'an idiom'
  return LENGTHS.has(code) || code === 'h' || code === 'min' ? undefined : 'an article, not a measure'
}

const idiomDoubt: Doubt = ({ lexemes }, draft) => {
  const words = [0, 1, 2].map(n => text(lexemes[draft.to + n])).join(' ')
  if (/^(?:of nothing|for you|of separation|than you (?:thought|think|need|'d))/.test(words)) return 'an idiom'
  return /^\S+er than (?:you|it|we|i|they)\b/.test([words, text(lexemes[draft.to + 3])].join(' ')) && isPlain(draft)
    ? 'a comparison with what was thought'
    : undefined
}

const USED_TO =
  /^[^.;?!]{0,24}, (?:that's|which is|that is|that was) (?:what|how|the way) (?:it|they|we|you|i) (?:used to|was\b|had\b)/i

/** `it used to be forty but now`, `forty, that's what it used to be`, `the old spec was twenty`, `don't go to fifty`. */
const oldDoubt: Doubt = ({ text: whole, lexemes }, draft) => {
  if (!isPlain(draft)) return undefined
  if (USED_TO.test(whole.slice(lexemes[draft.to]?.at ?? whole.length))) return 'what used to be'
  const words = before(lexemes, draft, 6)
  const said = words.slice(words.findLastIndex(word => [',', '.', ';', 'but', 'now'].includes(word)) + 1)
  if (said.includes('used') && said.at(-1) === 'be') return 'what used to be'
  if (said.includes('old') && said.at(-1) === 'was') return 'what used to be'
  const no = said.findLastIndex(word => ["don't", 'dont', 'never'].includes(word))
  const isOrder =
    no >= 0 && said.length - no <= 4 && ['go', 'do', 'use', 'set', 'run', 'try', 'crank'].includes(said[no + 1] ?? '')
  return isOrder ? 'said not to be done' : undefined
}

/** The sentence a draft stands in, at most so many lexemes either way. */
const SENTENCE = 40
const isEnd = (lexeme: Lexeme | undefined): boolean =>
  lexeme === undefined || ['.', '?', '!', ';'].includes(lexeme.text)

const sentenceOf = ({ text: whole, lexemes }: Drafted, draft: Draft): string => {
  let from = draft.from
  while (!isEnd(lexemes[from - 1]) && draft.from - from < SENTENCE) from--
  let to = draft.to
  while (!isEnd(lexemes[to]) && to - draft.to < SENTENCE) to++
  return whole.slice(lexemes[from]?.at ?? 0, lexemes[to - 1]?.to ?? 0)
}

const asideDoubt: Doubt = (drafted, draft) => {
  if (draft.phrase.hasTolerance) return undefined
  const previous = drafted.lexemes[draft.from - 1]
  const first = drafted.lexemes[draft.from]
  const isInterval = [previous, first].some(
    lexeme => lexeme?.is === 'role' && ['every', 'once-a'].includes(lexeme.role),
  )
  return !isInterval && isAside(sentenceOf(drafted, draft)) ? 'about another time, machine or person' : undefined
}

const DOUBTS: readonly Doubt[] = [
  sizeDoubt,
  toolDoubt,
  dimensionDoubt,
  priceDoubt,
  percentDoubt,
  ({ lexemes }, draft) => timeDoubt(lexemes, draft),
  distanceDoubt,
  impliedDoubt,
  idiomDoubt,
  oldDoubt,
  asideDoubt,
]

/**
 * Why a phrase with a unit is no limit after all.
 *
 * @returns undefined where it may be one
 */
export const whyNoSpec = (drafted: Drafted, draft: Draft): string | undefined => {
  for (const doubt of DOUBTS) {
    const reason = doubt(drafted, draft)
    if (reason !== undefined) return reason
  }
  return undefined
}
