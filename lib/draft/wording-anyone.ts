import { verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import type { Clause } from './clause'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { fromAgent } from './wording-agent'
import { yours } from './wording-place'
import { isAct, isTelling, objectOf, placed, type Stretch } from './wording-stretch'
import { DIRECT, isIdleVerb, orderFrom } from './wording-verb'

const ACTORS = /^(?:one|she|he)$/

/** "one wipes from the inside out", "the ejectors one pushes forward": who does it is anyone. */
export const fromAnyone = (reading: Reading, stretch: Stretch): string | undefined => {
  const { tokens } = reading
  const at = tokens.findIndex(({ word }, i) => i >= stretch.from && i < stretch.to - 1 && ACTORS.test(word))
  if (at < 0) return undefined
  if (tokens.slice(stretch.from, at).some(({ tag }) => tag === 'third') || /\bneither\b/.test(reading.text))
    return undefined
  let verb = at + 1
  while (
    verb < stretch.to &&
    (tokens[verb]?.tag === 'adverb' || /^(?:then|now|just|also|always|only)$/.test(tokens[verb]?.word ?? ''))
  )
    verb++
  const token = tokens[verb]
  const as = token === undefined ? undefined : verbOf(token.word)
  if (token === undefined || as === undefined || token.isAfterPause || !isAct(as.base)) return undefined
  if (
    as.form === 'base' ||
    as.form === 'ing' ||
    /^(?:this|that|the|each|every|which|no|other|first|last)$/.test(tokens[at - 1]?.word ?? '')
  )
    return undefined
  const last = tokens[at - 1]
  if (at > stretch.from && last?.isAfterPause === false && (last.tag === 'adjective' || last.tag === 'past'))
    return undefined
  if (as.base === 'make' || as.base === 'do') return undefined
  const next = tokens[verb + 1]
  const takesThing = next?.tag === 'determiner' || next?.tag === 'pronoun'
  if (
    tokens[at]?.word !== 'one' &&
    !takesThing &&
    !(/^(?:adjective|material)$/.test(next?.tag ?? '') && as.form !== 'participle')
  )
    return undefined
  const takes =
    next?.tag === 'determiner' || next?.tag === 'pronoun' || next?.tag === 'preposition' || next?.tag === 'number'
  const hasFront = at > stretch.from
  if (!takes && !hasFront && next !== undefined && !next.isAfterPause && next.tag !== 'adverb') return undefined
  const retagged = tokens.map(
    (other, i): Token =>
      i === at
        ? { ...other, word: 'one', tag: 'pronoun' }
        : i === verb
          ? { ...other, tag: 'third', base: as.base }
          : other,
  )
  const clause: Clause = {
    from: stretch.from,
    to: stretch.to,
    start: stretch.from,
    frame: 'statement',
    verb,
    marker: undefined,
    isNegated: false,
  }
  return fromAgent({ ...reading, tokens: retagged }, clause)
}

const TELLERS = /^(?:i|we|you)$/

const LEADS =
  /^(?:just|always|then|now|also|usually|only|simply|have|got|to|need|want|gonna|going|must|should|will|'ll|'re|'m|do|did|'d|carefully|first|go|ahead|like|really|gently|never|do)$/

/** "the mould I open", "you fish it with a hook", "before anything I take a photograph": no table has the verb, or a thing stands in front. */
export const fromTold = (reading: Reading, { from, to }: Stretch, ahead: string): string | undefined => {
  const { tokens, text } = reading
  const at = tokens.findIndex(({ word }, i) => i >= from && i < to - 1 && TELLERS.test(word))
  if (at < 0 || tokens.slice(from, to).some(({ tag }, i) => tag === 'negation' && from + i !== at)) return undefined
  let verb = at + 1
  while (verb < to - 1 && (LEADS.test(tokens[verb]?.word ?? '') || tokens[verb]?.tag === 'adverb')) verb++
  const token = tokens[verb]
  const next = verb + 1 < to ? tokens[verb + 1] : undefined
  if (token === undefined || token.isAfterPause || isIdleVerb(token) || /^(?:get|go|come|make)$/.test(token.word))
    return undefined
  const as = verbOf(token.word)
  const isKnown = as !== undefined && isAct(as.base) && as.form !== 'ing' && !/^(?:noun|auxiliary)$/.test(token.tag)
  const takes = next !== undefined && !next.isAfterPause && /^(?:determiner|pronoun|number)$/.test(next.tag)
  const isUnknown =
    /^(?:word|material|adjective)$/.test(token.tag) &&
    as === undefined &&
    next !== undefined &&
    (DIRECT.test(next.word) || /^(?:up|down|off|out)$/.test(next.word))
  if (!isKnown && !isUnknown) return undefined
  // "You'd strip it": what would happen.
  if (as?.form === 'base' && tokens.slice(at, verb).some(({ word }) => word === "'d")) return undefined
  const base = as?.base ?? token.word
  const rest = sayTokens(text, tokens, verb + 1, to)
  if (rest === '' && at === from && ahead === '') return undefined
  if (/\b(?:already|ago|years|yesterday)\b/i.test(rest)) return undefined
  if (/^(?:keep|have|hold|leave) (?:it|them)$/.test(`${base} ${rest}`)) return undefined
  if (tokens.slice(verb + 1, to).some(({ tag }) => tag === 'third' || tag === 'modal' || tag === 'auxiliary'))
    return undefined
  if (as === undefined && /(?:pt|ought|aught|ed)$/.test(base)) return undefined
  const said = isKnown
    ? (orderFrom(reading, verb, to) ?? `${base} ${rest}`)
    : `${base} ${yours(rest).replace(/^(?:her|him)(?=$| )/i, 'it')}`.trim()
  if (at === from) {
    if (takes || isUnknown) return said
    const thing = objectOf(ahead)
    return thing === undefined ||
      thing === 'it' ||
      (next !== undefined && !/^(?:adverb|preposition|particle)$/.test(next.tag))
      ? undefined
      : `${base} ${thing} ${rest}`.trim()
  }
  if (tokens.slice(from, at).some(({ tag, word }) => tag === 'question' || /ever$/.test(word))) return undefined
  const front = sayTokens(text, tokens, from, at)
  const opener = tokens[from]
  if (/^(?:preposition|particle|to|condition)$/.test(opener?.tag ?? '')) {
    if (isTelling(tokens, from + (opener?.tag === 'to' ? 2 : 1), at) && opener?.tag !== 'preposition') return undefined
    return takes || next !== undefined ? placed(said, front) : undefined
  }
  const thing = takes ? undefined : objectOf(front)
  return thing === undefined || thing === 'it' || (next?.tag === 'noun' && !next.isAfterPause)
    ? undefined
    : `${base} ${thing} ${rest}`.trim()
}

/** "Do write it down", "have it on a flat floor": an order by a word that is none elsewhere. */
export const fromDoing = (reading: Reading, { from, to }: Stretch): string | undefined => {
  const { tokens, text } = reading
  const [first, next] = [tokens[from], tokens[from + 1]]
  if (first?.word !== 'do' || next === undefined || next.isAfterPause || from + 2 >= to) return undefined
  if (next.tag === 'verb' && !isIdleVerb(next)) return sayTokens(text, tokens, from + 1, to)
  if (isTelling(tokens, from + 1, to)) return undefined
  const said = sayTokens(text, tokens, from, to)
  return DIRECT.test(next.word) && !/^do (?:that|this|it)(?:$| (?:like|as)\b)/i.test(said) ? said : undefined
}
