import { WEAK_MATERIALS } from '@/lib/trade/materials'
import { classesOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { WEAK_TOOLS } from '@/lib/trade/tools'
import type { Reading } from './feature'
import { clauseAt, impliedMentions } from './mention-implied'
import type { NounPhrase } from './noun-phrase'

/** A thing named in a sentence that may be a tool or a material, with what tells whether it is used here. */
export type Mention = {
  /** Tokens [from, to) that name it, or the verb that implies it. */
  readonly from: number
  readonly to: number
  /** Set where a verb or a bare size implies the thing. */
  readonly implied?: string
  readonly phrase?: NounPhrase
  readonly features: readonly string[]
}

const NEW = new Set(['new', 'fresh', 'spare', 'brand-new', 'replacement', 'clean'])
const WITH = new Set([
  'with',
  'using',
  'through',
  'by',
  'on',
  'in',
  'into',
  'of',
  'for',
  'from',
  'under',
  'underneath',
  'between',
  'over',
  'against',
])
const USES = new Set('use grab get take fetch pick need want put have got wear reach find'.split(' '))

/** Verbs whose object is mostly a part that is renewed. */
const RENEWS = new Set('replace renew change swap exchange'.split(' '))

const wordOf = (token: Token | undefined, edge: string): string =>
  token === undefined ? edge : token.tag === 'number' ? '#' : (token.base ?? token.word)

const shapeOf = (token: Token | undefined): string => {
  if (token === undefined) return 'edge'
  if (
    [
      'preposition',
      'determiner',
      'particle',
      'auxiliary',
      'modal',
      'negation',
      'and',
      'to',
      'condition',
      'cause',
      'pronoun',
    ].includes(token.tag)
  )
    return token.word
  return token.tag
}

const featuresOf = (reading: Reading, phrase: NounPhrase): readonly string[] => {
  const { tokens, clauses } = reading
  // The letter of "T25" is a token of its own.
  const from = tokens[phrase.from - 1]?.to === tokens[phrase.from]?.at ? phrase.from - 1 : phrase.from
  const before = tokens[from - 1]
  const before2 = tokens[from - 2]
  const opensClause = before === undefined || tokens[from]?.isAfterPause === true
  const after = tokens[phrase.to]
  const closesClause = after === undefined || after.isAfterPause
  const inside = tokens.slice(phrase.from, phrase.to)
  const clause = clauseAt(clauses, phrase.from)
  const verb = clause?.verb === undefined ? undefined : tokens[clause.verb]
  const lexical =
    phrase.isTool && phrase.isMaterial ? 'either' : phrase.isTool ? 'tool' : phrase.isMaterial ? 'material' : 'other'
  const weak = phrase.isTool ? WEAK_TOOLS : phrase.isMaterial ? WEAK_MATERIALS : undefined
  const said = tokens.slice(phrase.head, phrase.to).map(({ word }) => word)
  const isWeak = weak?.has(phrase.name) === true || weak?.has(said.join(' ')) === true
  const strength = lexical === 'other' ? 'other' : `${isWeak ? 'weak' : 'strong'}-${lexical}`
  const hasNumber = inside.some(token => token.tag === 'number')
  const isNew = inside.some(token => NEW.has(token.word))
  const words = phrase.to - phrase.head
  const features = [
    'bias',
    `is:${strength}`,
    `before:${opensClause ? 'pause' : shapeOf(before)}`,
    `after:${closesClause ? 'pause' : shapeOf(after)}`,
    `${strength}+before:${opensClause ? 'pause' : shapeOf(before)}`,
    `${strength}+after:${closesClause ? 'pause' : shapeOf(after)}`,
    `before2:${opensClause ? 'pause' : `${shapeOf(before2)} ${shapeOf(before)}`}`,
    `head-words:${Math.min(2, words)}`,
    `modifiers:${Math.min(3, phrase.head - phrase.from)}`,
  ]
  if (hasNumber) features.push('sized', `${strength}+sized`)
  if (isNew) features.push('new', `${strength}+new`)
  if (phrase.measure !== undefined) features.push('measured', `${strength}+measured`)
  if (inside.some(token => token.tag === 'adjective')) features.push('adjective')
  if (before !== undefined && WITH.has(before.word)) features.push(`with:${before.word}`)
  const previous = before?.tag === 'determiner' ? before2 : before
  if (previous !== undefined && WITH.has(previous.word))
    features.push(`over-article:${previous.word}`, `${strength}+over-article:${previous.word}`)
  if (previous?.base !== undefined) {
    features.push('object')
    for (const name of classesOf(previous.base)) features.push(`object-of:${name}`, `${strength}+object-of:${name}`)
    if (USES.has(previous.base)) features.push('used', `${strength}+used`)
  }
  if (clause !== undefined) {
    features.push(`frame:${clause.frame}`, `${lexical}+frame:${clause.frame}`)
    if (clause.marker !== undefined) features.push(`marker:${clause.marker}`)
    if (clause.isNegated) features.push('negated', `${strength}+negated`)
  }
  if (verb?.base !== undefined)
    for (const name of classesOf(verb.base)) features.push(`verb:${name}`, `${lexical}+verb:${name}`)
  if (tokens.slice(Math.max(0, phrase.from - 3), phrase.from).some(token => token.tag === 'negation'))
    features.push('after-not')
  if (reading.isQuestion) features.push('question')
  if (reading.own.includes('has:money')) features.push('money')
  if (reading.own.includes('all-past')) features.push('past')
  if (reading.own.includes('has:people')) features.push('people')
  if (reading.own.includes('has:time-past')) features.push('time-past')
  features.push(`acts:${reading.own.find(name => name.startsWith('acts:')) ?? ''}`)
  const determiner = before?.tag === 'determiner' ? before.word : 'none'
  features.push(`article:${determiner}`, `${strength}+article:${determiner}`)
  features.push(`head:${wordOf(inside.at(-1), '')}`)
  for (const token of inside.slice(0, -1)) features.push(`mod:${wordOf(token, '')}`)
  if (previous?.base !== undefined) features.push(`of-verb:${previous.base}`, `${strength}+of-verb:${previous.base}`)
  if (verb?.base !== undefined) features.push(`verb-is:${verb.base}`)
  if (previous !== undefined) features.push(`prev:${wordOf(previous, '')}`)
  if (after !== undefined && !closesClause) features.push(`next:${wordOf(after, '')}`)
  return features
}

const isCandidate = (reading: Reading, phrase: NounPhrase): boolean => {
  if (phrase.isTool || phrase.isMaterial || phrase.measure !== undefined) return true
  const { tokens } = reading
  const inside = tokens.slice(phrase.from, phrase.to)
  if (inside.some(token => NEW.has(token.word) || token.tag === 'number')) return true
  const before = tokens[phrase.from - 1]
  const previous = before?.tag === 'determiner' ? tokens[phrase.from - 2] : before
  return (
    previous !== undefined &&
    (previous.word === 'with' ||
      previous.word === 'using' ||
      (previous.base !== undefined && (USES.has(previous.base) || RENEWS.has(previous.base))))
  )
}

/** @returns the mentions of a sentence that may be tools or materials, said or implied. */
export const toMentions = (reading: Reading): readonly Mention[] => {
  const { phrases } = reading
  return [
    ...phrases
      .filter(phrase => isCandidate(reading, phrase))
      .map(phrase => ({ from: phrase.from, to: phrase.to, phrase, features: featuresOf(reading, phrase) })),
    ...impliedMentions(reading, phrases),
  ]
}
