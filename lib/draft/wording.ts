import { verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import type { Clause } from './clause'
import {
  asSentence,
  countWords,
  cutToWords,
  isLooseEnded,
  joinOrders,
  MOST_WORDS,
  sayTokens,
  withoutLooseEnd,
} from './clause-text'
import type { Reading } from './feature'
import { nameThings } from './pointing'
import { conditionOf, KEEPS, TORN } from './wording-condition'
import { impliedOrder, orderOf } from './wording-phrase'
import { tellsWay } from './wording-place'
import { secondLook } from './wording-second'
import { actionFrom, isIdleVerb } from './wording-verb'

/** What the sheet says of a step, and what only the user can answer. */
export type Worded = { readonly text: string; readonly question?: string }

const OPENS_BADLY =
  /^(?:\S+ )(?:is|are|was|were|has|had|will|would|can|could|should|must|didn't|don't|doesn't|isn't|of)\b|^(?!let|give|show|help)\S+ (?:i|we|you|she|he|they)\b|^\S+ (?:it|them) (?:is|are|should|will|must|can|was|has)\b/i

/** "sign every six months we come back": another's doing runs on into the order. */
const RUNS_ON =
  /(?<!\b(?:until|before|after|when|where|while|as|if|once|that|which|what|unless|how|than|because|so)(?: just)?) (?:i|we|you) (?:[a-z]+)\b.*$/i

/** Whether a phrase can stand as an order on the sheet. */
const isSound = (phrase: string): boolean =>
  phrase.includes(' ') &&
  !TORN.test(phrase) &&
  !isLooseEnded(phrase) &&
  !OPENS_BADLY.test(phrase) &&
  !/^(?:strike|scratch) that\b/.test(phrase) &&
  !/^(?:come|go) (?:off|out|away|apart|up|down|loose|free|in|on|back|and|to)?$/.test(phrase)

/** "never a nail", "not too tight", "flat side down": how an action is meant, said right behind it. */
const refusalOf = ({ text, tokens }: Reading, { from, to, frame }: Clause): string => {
  if (frame !== 'fragment' && frame !== 'nominal') return ''
  const said = sayTokens(text, tokens, from, to)
  if (tellsWay(said) && countWords(said) < 8) return said
  return /^(?:but )?(?:not|never|no|without)\b/i.test(said) &&
    countWords(said) > 1 &&
    countWords(said) < 7 &&
    !isLooseEnded(said)
    ? said
    : ''
}

/** "of | which bolt was which": the question belongs to the word before. */
const widened = (reading: Reading, clauses: readonly Clause[], i: number): Clause | undefined => {
  const [clause, next] = [clauses[i], clauses[i + 1]]
  if (clause === undefined || next === undefined) return clause
  const { tokens } = reading
  const first = tokens[next.from]
  const last = tokens[clause.to - 1]
  const isOpen = last?.tag === 'preposition' || last?.tag === 'verb' || last?.tag === 'to'
  return isOpen && first !== undefined && !first.isAfterPause && /^(?:which|where|what|how|when)$/.test(first.word)
    ? { ...clause, to: next.to }
    : clause
}

/** "they lift up | and come away": goes on telling what things do. */
const goesOnTelling = (reading: Reading, clause: Clause, before: Clause | undefined): boolean => {
  const { tokens } = reading
  if (before === undefined || before.frame !== 'statement' || clause.frame !== 'order') return false
  if (tokens[clause.from]?.tag !== 'and') return false
  const telling = tokens.slice(before.start, before.to)
  const subject = telling[0]?.word ?? ''
  return telling.some(({ tag }) => tag === 'modal') || /^(?:they|these|those)$/.test(subject)
}

const isAgent = (token: Token | undefined): boolean => /^(?:i|we|you)$/.test(token?.word ?? '')

/** "if it's tight | I add a shim" in one breath. */
const parted = (reading: Reading, clause: Clause): readonly Clause[] => {
  const { tokens } = reading
  if (clause.marker === undefined || !KEEPS.has(clause.marker)) return [clause]
  for (let i = clause.start + 2; i < clause.to; i++) {
    if (
      !isAgent(tokens[i]) ||
      !tokens.slice(clause.start, i).some(({ tag }) => /^(?:verb|third|past|auxiliary|modal)$/.test(tag))
    )
      continue
    if (/^(?:verb|preposition|condition|question|negation|and|to)$/.test(tokens[i - 1]?.tag ?? '')) continue
    const verb = actionFrom(tokens, i + 1, clause.to)
    if (verb === undefined || isIdleVerb(tokens[verb])) continue
    const isNegated = tokens.slice(i, verb).some(({ tag }) => tag === 'negation')
    return [
      { ...clause, to: i },
      { from: i, to: clause.to, start: i, frame: 'we', verb, marker: undefined, isNegated },
    ]
  }
  return [clause]
}

/** The reader does what the speaker does. */
const asReader = (said: string): string =>
  said
    .replace(/\b(?:i|we) (?=(?:say|tell|shout|call|nod)\b)/gi, 'told to ')
    .replace(/\btold to (?:say|tell|shout|call|nod)\b/g, 'told')
    .replace(/\bi (?:was|am)\b|\bi['’]m\b/gi, all => (/was/i.test(all) ? 'you were' : 'you are'))
    .replace(/\b(?:i|we)(?=['’ ,]|$)/gi, 'you')
    .replace(/\b(?:my|our)\b/gi, 'your')

const SPOKEN_TO = new Set(['order', 'you', 'i', 'we', 'past'])

/** Whether "not" stands before the action; behind it ("in the drum, not the drain") it is part of what is said. */
const isForbidden = ({ tokens }: Reading, { from, verb, frame }: Clause): boolean =>
  SPOKEN_TO.has(frame) &&
  verb !== undefined &&
  tokens
    .slice(from, verb)
    .some(({ tag, word }) => tag === 'negation' && !/^(?:no|without|nothing|none|hardly)$/.test(word))

type Part = { readonly text: string; readonly until: number }

const partsOf = (reading: Reading): readonly Part[] => {
  const parts: Part[] = []
  let pending = ''
  let done = 0
  const clauses = reading.clauses.flatMap(clause => parted(reading, clause))
  clauses.forEach(({ from }, i) => {
    if (from < done) return
    const clause = widened(reading, clauses, i)
    const last = parts.at(-1)
    if (clause === undefined) return
    done = clause.to
    const addTo = (more: string) => void parts.splice(-1, 1, { text: `${last?.text} ${more}`, until: i })
    if (clause.marker !== undefined && !/^(?:therefore|hence|thus)$/.test(clause.marker)) {
      const condition = conditionOf(reading, clause)
      if (condition === '') return
      if (last !== undefined && last.until === i - 1) addTo(condition)
      else pending = condition
      return
    }
    const refusal = refusalOf(reading, clause)
    if (refusal !== '' && last !== undefined && last.until === i - 1) {
      parts.splice(-1, 1, { text: `${last.text}, ${refusal}`, until: i })
      return
    }
    if (goesOnTelling(reading, clause, clauses[i - 1])) return
    // "Or you will have moved it": what happens otherwise.
    const [opener, subject] = reading.tokens.slice(clause.from, clause.to)
    if (opener?.word === 'or' && /^(?:you|it|we|i|she|he|they)$/.test(subject?.word ?? '')) return
    const order = orderOf(reading, clause)
      ?.replace(/^go ahead(?: and|,)? ?/, '')
      .replace(RUNS_ON, '')
    if (order === undefined || !isSound(order)) return
    const text = isForbidden(reading, clause) ? `do not ${order.replace(/^(?:do )?(?:not|never) /, '')}` : order
    parts.push({ text: pending === '' || text.includes(pending) ? text : `${text} ${pending}`, until: i })
    pending = ''
  })
  return parts
}

const plain = (said: string): string =>
  said
    .replace(/\s+/g, ' ')
    .replace(
      /^(do not )?(?:have|take|get) a (?:good |quick |close )?(?:look|peek) (at|in|into|for|under|behind)\b/,
      '$1look $2',
    )
    .replace(/^(do not )?(?:have|get) a (?:feel|listen) (?:of|for|to)\b/, '$1feel')
    .replace(
      /(?<!\b(?:to|of|by|from|at|in|on|up|off|over|under|and|or|not|but)),? (?:there|here|too|again|though)$/,
      '',
    )

/**
 * Says a spoken step as a procedure writer would: base-form verb first, lead-ins and fillers gone, conditions kept behind
 * their action, at most 20 words.
 *
 * @param before the sentence before, for what "it" and "this guy" point at
 * @param after the sentence after; with the one before it tells which way fasteners named alone go
 */
export const wordStep = (reading: Reading, before?: Reading, after?: Reading): Worded => {
  const kept: string[] = []
  for (const { text } of partsOf(reading))
    if (kept.length === 0 || countWords([...kept, text].join(' and ')) <= MOST_WORDS) kept.push(text)
  if (kept.length > 0) return worded(joinOrders(kept), reading, before)
  const said = saidWithoutReason(reading)
  const told = impliedIn(reading) ?? (isOrderAsSaid(reading, said) ? said : undefined)
  if (told !== undefined) return asked(told)
  const second = secondLook(reading, before, after, isSound)
  if (second === undefined) return asked(`do this: ${said}`)
  const found = worded(second.text, reading, before)
  return second.isGuess && found.question === undefined ? { ...found, question: GUESSED } : found
}

const worded = (said: string, reading: Reading, before: Reading | undefined): Worded => {
  const named = nameThings(asReader(plain(said)), reading, before)
  return { ...named, text: asSentence(cutToWords(named.text)) }
}

const GUESSED = 'Is this what is done? The talk names no action; the sentences around it suggest this one.'
const QUESTION = 'What is done here? The talk names no action.'

/** A step whose action nobody names. */
const asked = (text: string): Worded => ({ text: asSentence(cutToWords(text)), question: QUESTION })

/** The order that the name alone of what a sentence opens with tells. */
const impliedIn = ({ text, tokens, clauses: [first] }: Reading): string | undefined =>
  first?.frame === 'fragment' ? impliedOrder(sayTokens(text, tokens, first.start, first.to)) : undefined

/** Where what is said begins, behind the lead-in. */
const startOf = ({ clauses: [first] }: Reading): number =>
  (first?.marker === undefined ? first?.start : first.from) ?? 0

/** What is said, without the reason behind it. */
const saidWithoutReason = (reading: Reading): string => {
  const { text, tokens, clauses } = reading
  const from = startOf(reading)
  const why = clauses.find(({ marker }, i) => i > 0 && marker !== undefined && !KEEPS.has(marker))
  const short = withoutLooseEnd(sayTokens(text, tokens, from, why?.from ?? tokens.length))
  return short.includes(' ') ? short : withoutLooseEnd(sayTokens(text, tokens, from, tokens.length))
}

/** Whether what is said opens with the verb of an order. */
const isOrderAsSaid = (reading: Reading, said: string): boolean => {
  const opener = reading.tokens[startOf(reading)]
  return (
    verbOf(said.split(' ')[0] ?? '')?.form === 'base' && opener?.tag === 'verb' && !isIdleVerb(opener) && isSound(said)
  )
}
