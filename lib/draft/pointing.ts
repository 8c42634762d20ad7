import type { Reading } from './feature'
import { toNounPhrases } from './noun-phrase'

/** What hands point at: "this guy", "these little fellas". */
const POINTED =
  /\b(?:this|that|these|those) (?:(?:little|lil|wee|big|tiny|small|other|last|next|here) )*(?:guys?|fell(?:a|as|ow|ows|er|ers)|bad boys?|suckers?|dudes?|chaps?|lads?|thingy|thingies|things?|thingamajigs?|doodads?|babies|baby)\b/i

const THINGS = new Set(['part', 'tool', 'material'])

/** Things a sentence names surely, left to right, with where they begin in its text. */
const thingsOf = ({ tokens, text }: Reading): readonly { name: string; at: number }[] =>
  toNounPhrases(tokens)
    .filter(phrase => THINGS.has(tokens[phrase.to - 1]?.tag ?? ''))
    .map(phrase => {
      const at = tokens[phrase.from]?.at ?? 0
      return { at, name: text.slice(at, tokens[phrase.to - 1]?.to ?? at).toLowerCase() }
    })

const definite = (name: string): string => `the ${name.replace(/^(?:the|a|an|this|that|these|those|your|my) /, '')}`

/**
 * Puts names where hands pointed. "This guy" becomes what the sentence names right after it, else what the sentence before
 * named last; where neither does, the part stays open and the user is asked. A sole "it" is named from the sentence before.
 */
export const nameThings = (
  said: string,
  reading: Reading,
  before: Reading | undefined,
): { text: string; question?: string } => {
  const pointed = POINTED.exec(said)
  if (pointed === null) return { text: nameSoleIt(said, before) }
  const at = POINTED.exec(reading.text)?.index ?? 0
  const name =
    thingsOf(reading).find(thing => thing.at > at)?.name ??
    (before === undefined ? undefined : thingsOf(before).at(-1)?.name)
  if (name === undefined) {
    const isMany = /^th(?:e|o)se/i.test(pointed[0])
    return {
      text: said.replace(POINTED, isMany ? 'the parts shown' : 'the part shown'),
      question: `What is “${pointed[0]}”? The talk does not name it nearby.`,
    }
  }
  return { text: said.replace(POINTED, definite(name)) }
}

const nameSoleIt = (said: string, before: Reading | undefined): string => {
  const it = /^([a-z-]+(?: (?:not [a-z-]+|off|on|out|up|down))?) (it|them)\b/i.exec(said)
  if (it === null || before === undefined) return said
  const things = thingsOf(before)
  const [only] = things
  return only !== undefined && things.length === 1 && !/\bthe [a-z]+/.test(said)
    ? said.replace(/\b(?:it|them)\b/, definite(only.name))
    : said
}
