import type { Token } from '@/lib/trade/tagger'
import type { Clause } from './clause'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { withArticle, yours } from './wording-place'
import { actionFrom, baseOf, DIRECT, hasNoun, isHandWork, isIdleVerb, orderFrom } from './wording-verb'

/** "the technician": the words before are its own. */
const isSubject = ({ tag, word }: Token): boolean =>
  tag !== 'pronoun' && tag !== 'number' && word !== 'one' && !/^(?:i|we|you|he|she|they)$/.test(word)

/** "what you do is lift it", "the first thing I did was write it down". */
export const fromCleft = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens, text } = reading
  if (!/^(?:what|all|the|first|next)$/.test(tokens[clause.start]?.word ?? '')) return undefined
  if (
    !/^(?:what|all|the (?:first |next |last |only )?thing|first thing|next thing)\b/i.test(
      sayTokens(text, tokens, clause.start, clause.to),
    )
  )
    return undefined
  const is = tokens.findIndex(({ word }, i) => i > clause.start && i < clause.to && /^(?:is|was|'s)$/.test(word))
  const verb = is < 0 ? undefined : actionFrom(tokens, is + 1, clause.to)
  return verb === undefined || isIdleVerb(tokens[verb]) ? undefined : orderFrom(reading, verb, clause.to)
}

const FRONT = /^(?:with|from|at|in|on|into|through|over|under|between|using|by|for|after|without|to)\b/i

/** "with a soft brush we coax it out", "tweezers will tease it free", "the last one you are not removing". */
export const fromAgent = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens, text } = reading
  for (let i = clause.start; i < clause.to; i++) {
    const token = tokens[i]
    if (token === undefined) return undefined
    const isOther =
      /^(?:he|she|they|technician|operator|mechanic|engineer|helper)$/.test(token.word) ||
      (token.word === 'one' && tokens[i + 1]?.tag === 'third')
    const isPerson = isOther || /^(?:i|we|you)$/.test(token.word)
    const isTool =
      token.tag === 'tool' && tokens[i + 1]?.tag !== 'tool' && !FRONT.test(tokens[clause.start]?.word ?? '')
    if (!isPerson && !isTool) continue
    const verb = actionFrom(tokens, i + 1, clause.to)
    const action = verb === undefined ? undefined : tokens[verb]
    if (verb === undefined || action === undefined || isIdleVerb(action)) continue
    const takes = verb + 1 < clause.to && DIRECT.test(tokens[verb + 1]?.word ?? '')
    if (isOther && token.word !== 'one' && !(takes && isHandWork(baseOf(action)))) continue
    if (tokens.slice(verb + 1, clause.to).some(({ tag }) => tag === 'third' || tag === 'modal')) continue
    const order = orderFrom(reading, verb, clause.to)
    if (order === undefined) continue
    const no = tokens.slice(i, verb).some(({ tag }) => tag === 'negation') ? 'do not ' : ''
    const said = `${no}${order}`
    if (isTool) {
      if (takes) return `${said} with ${withArticle(sayTokens(text, tokens, clause.start, i + 1))}`
      continue
    }
    const front = i > clause.start && !isSubject(token) ? sayTokens(text, tokens, clause.start, i) : ''
    if (front === '') return said
    if (/^(?:in|at|on) (?:my|our|your)\b/.test(front)) return said
    if (FRONT.test(front)) return takes || verb + 2 < clause.to ? `${said} ${front}` : undefined
    const isObject = !takes && hasNoun(tokens, clause.start, i) && action.word !== 'going'
    return isObject && (verb + 1 >= clause.to || tokens[verb + 1]?.tag !== 'noun')
      ? `${no}${baseOf(action)} ${withArticle(yours(front))} ${sayTokens(text, tokens, verb + 1, clause.to)}`.trim()
      : undefined
  }
  return undefined
}

/** "Would you take the screws out". */
export const fromRequest = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens } = reading
  const [first, second] = tokens.slice(clause.start, clause.to)
  if (!/^(?:would|could|can|will)$/.test(first?.word ?? '') || second?.word !== 'you') return undefined
  const verb = actionFrom(tokens, clause.start + 2, clause.to)
  return verb === undefined || isIdleVerb(tokens[verb]) ? undefined : orderFrom(reading, verb, clause.to)
}
