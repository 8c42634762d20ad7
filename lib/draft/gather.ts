import { onceForText } from '@/lib/trade/memo'
import type { Reading } from './feature'
import { toMentions } from './mention'
import { pausedTalk } from './pauses'
import { inDigits, keyOfThing, nameOfThing, withSizes } from './thing-name'

/** A mention of a thing: index of the sentence, offsets [at, to) into its text, name, and the features it shows. */
export type Named = {
  readonly sentence: number
  readonly at: number
  readonly to: number
  readonly name: string
  readonly features: readonly string[]
}

/** A thing of a talk with all its mentions, and the features of it as a whole. */
export type Thing = {
  /** Its fullest name. */
  readonly name: string
  readonly mentions: readonly Named[]
  readonly features: readonly string[]
}

const wordsOf = onceForText((name): readonly string[] => keyOfThing(name).split(' '))
const isSize = (word: string): boolean => /\d/.test(word)

/** Whether two names may mean one thing: the same head, and all words of one are in the other; sizes never differ. */
const isSame = (a: readonly string[], b: readonly string[]): boolean => {
  if (a.at(-1) !== b.at(-1)) return false
  const [short, long] = a.length <= b.length ? [a, b] : [b, a]
  return (
    short.every(word => long.includes(word)) &&
    !(short.some(isSize) && long.some(word => isSize(word) && !short.includes(word)))
  )
}

/** Longest name a list takes, in words. */
const LONGEST = 5

const fullest = (mentions: readonly Named[]): string =>
  mentions.reduce((best, { name }) => {
    const n = wordsOf(name).length
    return n > wordsOf(best).length && n <= LONGEST ? name : best
  }, mentions[0]?.name ?? '')

const featuresOf = (mentions: readonly Named[], sentences: number): readonly string[] => {
  const n = mentions.length
  const counts = new Map<string, number>()
  // Of one mention alone nothing has to be counted.
  if (n > 1)
    for (const { features } of mentions) for (const name of features) counts.set(name, (counts.get(name) ?? 0) + 1)
  const first = (mentions[0]?.sentence ?? 0) / Math.max(1, sentences)
  const found = [
    ...(n > 1 ? counts.keys() : new Set(mentions[0]?.features)),
    `mentions:${n < 4 ? n : n < 7 ? '4' : '7'}`,
    `first:${first < 0.15 ? 'early' : first < 0.85 ? 'middle' : 'late'}`,
  ]
  if (n > 1) for (const [name, count] of counts) if (count === n && name !== 'bias') found.push(`all:${name}`)
  const words = wordsOf(fullest(mentions))
  found.push(`words:${Math.min(4, words.length)}`)
  if (words.some(isSize)) found.push('has-size')
  return found
}

const same = (place: number): number => place

/** Things named in a talk, each once: synonyms, spellings and plurals folded, a bare name joined to the fuller one. */
export const gatherThings = (said: readonly Reading[]): readonly Thing[] => {
  const paused = pausedTalk(said)
  const readings = paused?.readings ?? said
  const groups: { words: readonly string[]; mentions: Named[] }[] = []
  const byHead = new Map<string, typeof groups>()
  // Who says "spanner" lists spanners.
  const isSpanner = readings.some(({ tokens }) => tokens.some(({ word }) => word === 'spanner' || word === 'spanners'))
  const impliedName = (implied: string): string =>
    withSizes(
      inDigits((isSpanner ? implied.replace(/(?<!torque |lug |impact )wrench$/, 'spanner') : implied).split(' ')),
    )
  readings.forEach((reading, sentence) => {
    for (const { from, to, phrase, implied, features } of toMentions(reading)) {
      const name = phrase === undefined ? impliedName(implied ?? '') : nameOfThing(reading.tokens, phrase)
      const back = paused?.backs[sentence] ?? same
      const at = back(reading.tokens[from]?.at ?? 0)
      const one = { sentence, at, to: back(reading.tokens[to - 1]?.to ?? at), name, features }
      const words = wordsOf(name)
      const head = words.at(-1) ?? ''
      const near = byHead.get(head) ?? []
      const group = near.find(other => isSame(other.words, words))
      if (group === undefined) {
        const fresh = { words, mentions: [one] }
        groups.push(fresh)
        near.push(fresh)
        byHead.set(head, near)
      } else {
        group.mentions.push(one)
        if (words.length > group.words.length && words.length <= LONGEST) group.words = words
      }
    }
  })
  return groups.map(({ mentions }) => ({
    name: fullest(mentions),
    mentions,
    features: featuresOf(mentions, readings.length),
  }))
}
