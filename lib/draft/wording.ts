import { verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import {
  asSentence,
  countWords,
  cutToWords,
  decapitalize,
  joinOrders,
  MOST_WORDS,
  sayTokens,
  withoutLooseEnd,
} from './clause-text'
import { namesNoAction } from './deed-feature'
import type { Reading } from './feature'
import { nameThings } from './pointing'
import { KEEPS } from './wording-condition'
import { FASTENERS } from './wording-kinds'
import { isSound, type Part, partsOf } from './wording-parts'
import { impliedOrder } from './wording-phrase'
import { secondLook } from './wording-second'
import { tellsTorque, withTorque } from './wording-torqued'
import { isIdleVerb } from './wording-verb'
import { withAllWorn } from './wording-worn'

/**
 * What the sheet says of a step, and what only the user can answer. `more` is what else the sentence orders, from an offset
 * into it on: what does not fit into one step.
 */
export type Worded = {
  readonly text: string
  readonly question?: string
  readonly more?: { readonly at: number; readonly text: string; readonly question?: string }
}

/** The reader does what the speaker does. */
const asReader = (said: string): string =>
  said
    .replace(/\b(?:i|we) (?=(?:say|tell|shout|call|nod)\b)/gi, 'told to ')
    .replace(/\btold to (?:say|tell|shout|call|nod)\b/g, 'told')
    .replace(/\bi (?:was|am)\b|\bi['’]m\b/gi, all => (/was/i.test(all) ? 'you were' : 'you are'))
    .replace(/\b(?:i|we)(?=['’ ,]|$)/gi, 'you')
    .replace(/\b(?:my|our)\b/gi, 'your')

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

const PURPOSE = /(?<=\w \w.*),? (?:to (?:see|check|make sure|be sure|verify|confirm|find out)|so that)\b.*$/i

/** A torque told is torqued to, where nothing else said so. */
const torqued = (found: Worded, reading: Reading): Worded => {
  if (found.more !== undefined || !tellsTorque(reading.text)) return found
  const order = withTorque(decapitalize(found.text.replace(/\.$/, '')), reading)
  const text = asSentence(cutToWords(order))
  if (text === found.text) return found
  return { ...found, text, ...(namesNoAction(found.text) ? { question: GUESSED } : {}) }
}

/**
 * Says a spoken step as a procedure writer would: base-form verb first, lead-ins and fillers gone, conditions kept behind
 * their action, at most 20 words.
 *
 * @param before the sentence before, for what "it" and "this guy" point at
 * @param after the sentence after; with the one before it tells which way fasteners named alone go
 */
export const wordStep = (reading: Reading, before?: Reading, after?: Reading): Worded =>
  torqued(wordOrders(reading, before, after), reading)

const wordOrders = (reading: Reading, before?: Reading, after?: Reading): Worded => {
  const said = saidWithoutReason(reading)
  const parts = partsOf(reading, [before?.text, after?.text])
  if (parts === undefined) return asked(`do this: ${said}`)
  const kept = fitting(parts)
  if (kept.some(({ isWeak }) => isWeak !== true)) {
    const found = sayParts(kept, reading, before, after)
    const left = fitting(parts.slice(kept.length))
    const at = kept.at(-1)?.to
    if (at === undefined || !left.some(({ isWeak }) => isWeak !== true)) return found
    return { ...found, more: { at, ...sayParts(left, reading, before, after) } }
  }
  const told = impliedIn(reading) ?? (isOrderAsSaid(reading, said) ? said : undefined)
  if (told !== undefined) return asked(withAllWorn(told, reading))
  const second = secondLook(reading, before, after, isSound)
  const opening = kept.map(({ text }) => text).filter(text => /^(?:undo|slacken)\b/.test(text))
  if (opening.length > 0 && (second === undefined || second.isGuess))
    return worded(joinOrders(opening), reading, before, after)
  if (opening.length > 0 && second !== undefined && !FASTENERS.test(second.text))
    return worded(joinOrders([...opening, second.text]), reading, before, after)
  if (second === undefined) return asked(`do this: ${said}`)
  const found = worded(second.text, reading, before, after)
  return second.isGuess ? guessed(found) : found
}

/** As many of some orders, from the first on, as go into a step; an action is kept before what it is done for. */
const fitting = (parts: readonly Part[]): readonly Part[] => {
  const kept: Part[] = []
  for (const part of parts) {
    const short = { ...part, text: part.text.replace(PURPOSE, '') }
    const one = [part, short].find(
      it => kept.length === 0 || countWords(joinOrders([...kept, it].map(({ text }) => text))) <= MOST_WORDS,
    )
    if (one === undefined) return kept
    kept.push(one)
  }
  return kept
}

const sayParts = (parts: readonly Part[], reading: Reading, before?: Reading, after?: Reading): Worded => {
  const found = worded(joinOrders(parts.map(({ text }) => text)), reading, before, after)
  return parts.some(({ isGuess }) => isGuess) ? guessed(found) : found
}

const guessed = (found: Worded): Worded => (found.question === undefined ? { ...found, question: GUESSED } : found)

const worded = (said: string, reading: Reading, before?: Reading, after?: Reading): Worded => {
  const named = nameThings(withAllWorn(asReader(plain(said)), reading), reading, before, after)
  return { ...named, text: asSentence(cutToWords(named.text)) }
}

export const GUESSED =
  'Is this what is done? The talk names no action; what is said here and around it suggests this one.'
const QUESTION = 'What is done here? The talk names no action.'

/** A step whose action nobody names. */
const asked = (text: string): Worded => ({ text: asSentence(cutToWords(text)), question: QUESTION })

/** The order that the name alone of what a sentence opens with tells. */
const impliedIn = ({ text, tokens, clauses: [first, ...more] }: Reading): string | undefined => {
  if (first?.frame !== 'fragment') return undefined
  const order = impliedOrder(sayTokens(text, tokens, first.start, first.to))
  if (order?.startsWith('fit ') !== true || more.length < 2) return order
  // "New gasket, spring, cap": all of them go in.
  const areNames = more.every(
    ({ frame, marker, from, to }) =>
      frame === 'fragment' && marker === undefined && to - from < 3 && tokens.slice(from, to).every(isName),
  )
  return areNames ? joinOrders([order, ...more.map(({ from, to }) => sayTokens(text, tokens, from, to))]) : order
}

const isName = ({ tag }: Token): boolean => /^(?:part|material|noun|tool|and|determiner)$/.test(tag)

/** Where what is said begins, behind the lead-in. */
const startOf = ({ clauses: [first], tokens }: Reading): number => {
  const start = (first?.marker === undefined ? first?.start : first.from) ?? 0
  return start > 0 && /^['’]/.test(tokens[start]?.word ?? '') ? start - 1 : start
}

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
