import { BODY } from '@/lib/trade/english'
import { singular } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { decapitalize } from './clause-text'
import type { Reading } from './feature'

/** What hands point at: "this guy", "these little fellas". */
const POINTED =
  /\b(?:this|that|these|those) (?:(?:little|lil|wee|big|tiny|small|other|last|next|here) )*(?:guys?|fell(?:a|as|ow|ows|er|ers)|bad boys?|suckers?|dudes?|chaps?|lads?|thingy|thingies|things?|thingamajigs?|doodads?|babies|baby)\b/i

const THINGS = new Set(['part', 'tool', 'material'])

type Named = { readonly name: string; readonly at: number; readonly isMany: boolean; readonly isTool: boolean }

/** Whether a name speaks of several: "bolts", but not "pliers". */
const isPlural = (name: string): boolean => {
  const last = name.split(' ').at(-1) ?? ''
  return singular(last) !== last
}

/** Where a figure stands written: "twelve, it's on the plate". */
const WRITTEN_ON = /^(?:plate|nameplate|book|manual|sheet|label|sticker|card|decal|tag|chart|leaflet)$/i
const isWrittenOn = ({ tokens }: Reading, from: number, to: number): boolean =>
  WRITTEN_ON.test(tokens[to - 1]?.word ?? '') &&
  /^(?:on|in|by|from|to)$/.test(tokens[from - 2]?.word ?? '') &&
  tokens.some(({ tag }) => tag === 'number')

/** Things a sentence names surely, left to right, with where they begin in its text. */
const thingsOf = (reading: Reading): readonly Named[] => {
  const { tokens, phrases, text } = reading
  return phrases
    .filter(({ from, to }) => !isWrittenOn(reading, from, to))
    .filter(({ to }) => THINGS.has(tokens[to - 1]?.tag ?? '') && !BODY.has(tokens[to - 1]?.word ?? ''))
    .map(({ from, to, isTool }) => {
      const at = tokens[from]?.at ?? 0
      const before = tokens[from - 1]?.word === 'the' ? tokens[from - 2]?.word : tokens[from - 1]?.word
      const isUsed = /^(?:with|using|use|a|an|your|my)$/.test(before ?? '') && isTool
      const said = text.slice(at, tokens[to - 1]?.to ?? at)
      const name = from === 0 ? decapitalize(said) : said
      return { at, name, isMany: isPlural(name.toLowerCase()), isTool: isUsed || isTool }
    })
}

const definite = (name: string): string =>
  `the ${name.replace(/^(?:the|a|an|this|that|these|those|your|my|new) /i, '')}`

const ask = (pointer: string): string => `What is “${pointer}”? The talk does not name it nearby.`

const BETWEEN: ReadonlySet<string> = new Set([
  'determiner',
  'adjective',
  'filler',
  'pronoun',
  'adverb',
  'auxiliary',
  'number',
])

/** "Which is", "we call it". */
const NAMING = /^(?:which|called|call|calls|named|known|as|here|there|right)$/

/** What is named as the pointed thing itself: "this guy, the drain screw", not "this guy through the hole". */
const apposed = (reading: Reading, [pointer = '']: RegExpExecArray, at: number): string | undefined => {
  const { tokens } = reading
  const thing = thingsOf(reading).find(({ at: own }) => own > at)
  if (thing === undefined) return undefined
  const between = tokens.filter(token => token.at >= at + pointer.length && token.at < thing.at)
  const isBetween = ({ tag, word }: Token): boolean => BETWEEN.has(tag) || NAMING.test(word)
  if (between.every(isBetween)) return thing.name
  const opens = between.findLastIndex(token => !isBetween(token)) + 1
  const first = between[opens] ?? tokens.find(token => token.at === thing.at)
  return first?.isAfterPause === true ? thing.name : undefined
}

/** "The locking pin?": somebody names it in the next breath. */
const namedNext = (after: Reading | undefined): string | undefined => {
  if (after === undefined || after.tokens.length > 6) return undefined
  const isName = after.tokens.every(({ tag }) =>
    /^(?:determiner|adjective|filler|part|tool|material|noun|word|ing|number)$/.test(tag),
  )
  return isName ? thingsOf(after).at(-1)?.name : undefined
}

const askWhether = (pointer: string, name: string): string =>
  `Is “${pointer}” ${definite(name)}? The talk names it around here.`

/**
 * Puts names where hands pointed. "This guy" becomes what the sentence names as it right after, else what the next one names
 * alone, else what the sentence before named last, unless the step names that itself; both of these are asked about. Where
 * none does, the part stays open and the user is asked. "It", "them", "that" and "those" get the name
 * where only one thing fits; "that" and "those" are asked about where none does.
 */
export const nameThings = (
  said: string,
  reading: Reading,
  before: Reading | undefined,
  after: Reading | undefined,
): { text: string; question?: string } => {
  const pointed = POINTED.exec(said)
  if (pointed === null) return namePronoun(said, reading, before)
  const shown = POINTED.exec(reading.text) ?? pointed
  const own = apposed(reading, shown, shown.index)
  const near = namedNext(after) ?? (before === undefined ? undefined : thingsOf(before).at(-1)?.name)
  const isOther = near !== undefined && !content(said).has(near.toLowerCase().split(' ').at(-1) ?? '')
  const name = own ?? (isOther ? near : undefined)
  if (name === undefined) {
    const isMany = /^th(?:e|o)se/i.test(pointed[0])
    return {
      text: said.replace(POINTED, isMany ? 'the parts shown' : 'the part shown'),
      question: ask(pointed[0]),
    }
  }
  // "This fellow, the timer": named once is enough.
  const told = definite(name)
  const text = said.replace(POINTED, told).replace(`${told}, ${told}`, told).replace(`${told} ${told}`, told)
  return own === undefined ? { text, question: askWhether(pointed[0], name) } : { text }
}

const PRONOUN =
  /^((?:do not )?[a-z-]+(?: (?:off|on|out|up|down|in|away|back|not [a-z-]+))?) (it|them|that|this|those|these)(?=$|[,.]| (?:off|out|up|down|in|on|onto|into|to|with|from|before|after|until|while|when|if|and|over|through|under|by|at|for|back|away|apart|open|shut|as|right|straight|hand|tight|clean|dry|once|where|all|a)\b)/i

const content = (text: string): ReadonlySet<string> => new Set(text.toLowerCase().match(/[a-z]{3,}/g) ?? [])

const NOMINAL = new Set(['part', 'tool', 'material', 'noun', 'word', 'name'])

/** Whether a sentence speaks of one thing alone, so that "it" can be nothing else. */
const isSingle = ({ tokens, phrases }: Reading): boolean =>
  phrases.filter(({ to }) => NOMINAL.has(tokens[to - 1]?.tag ?? '')).length === 1

/** The one thing of these that fits; undefined where none or several do. */
const onlyOf = (things: readonly Named[], isMany: boolean, said: string): string | undefined => {
  const fits = things.filter(thing => thing.isMany === isMany && !thing.isTool)
  const names = new Set(fits.map(({ name }) => name.toLowerCase().split(' ').at(-1)))
  const last = fits.at(-1)
  if (last === undefined || names.size !== 1) return undefined
  // What the step names anyway is something else, or need not be said twice.
  const told = content(said)
  return told.has(last.name.toLowerCase().split(' ').at(-1) ?? '') ? undefined : last.name
}

const namePronoun = (
  said: string,
  reading: Reading,
  before: Reading | undefined,
): { text: string; question?: string } => {
  const found = PRONOUN.exec(said)
  const [, lead = '', pronoun = ''] = found ?? []
  if (found === null) return { text: said }
  const isMany = /^th(?:em|ose|ese)$/i.test(pronoun)
  const verb = lead.replace(/^do not /, '').split(' ')[0] ?? ''
  const at = placeOf(reading, verb, pronoun)
  const here = thingsOf(reading).filter(thing => thing.at < at)
  const name = here.some(thing => thing.isMany === isMany && !thing.isTool)
    ? onlyOf(here, isMany, said)
    : before === undefined || here.length > 0 || !isSingle(before)
      ? undefined
      : onlyOf(thingsOf(before), isMany, said)
  if (name !== undefined) return { text: `${lead} ${definite(name)}${said.slice(found[0].length)}` }
  const isKnown = here.length > 0 || !/^(?:that|this|those|these)$/i.test(pronoun)
  return isKnown ? { text: said } : { text: said, question: ask(pronoun) }
}

/** Where in the text the pronoun stands: the first of its kind after the verb, else the first. */
const placeOf = ({ tokens }: Reading, verb: string, pronoun: string): number => {
  const from = tokens.findIndex(({ word, base }) => word === verb || base === verb)
  const at = tokens.findIndex(({ word }, i) => i >= from && word === pronoun.toLowerCase())
  return tokens[at]?.at ?? tokens[from]?.at ?? 0
}
