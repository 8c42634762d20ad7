import { OPPOSITES, SAME_PART } from '@/lib/trade/pairs'
import { isSmall, singular } from './words'

/** A part as a text names it: "the two upper cover screws" is head screw, words upper cover screw. */
export type Thing = {
  /** As written, articles and numbers left out. */
  readonly name: string
  /** Singular of the last word; empty for a pronoun. */
  readonly head: string
  /** Singular of every word that names it, the head last. */
  readonly words: readonly string[]
  readonly isPlural: boolean
}

/** Heads that say little: a filter element is a filter. */
const GENERIC = new Set('assembly unit kit set element body piece part cartridge half end system'.split(' '))
const TRAILING = new Set(
  'snug tight loosely clockwise anticlockwise counterclockwise together again hard straight first last left-hand right-hand round finger hand halfway partway tighter upright forward forwards backward backwards flush outdoors indoors dry clean'.split(
    ' ',
  ),
)

/** @returns the thing that a phrase names. */
export const toThing = (phrase: readonly string[]): Thing => {
  let to = phrase.length
  while (to > 1 && TRAILING.has(phrase[to - 1] ?? '')) to--
  const kept = phrase.slice(0, to).filter(word => word === 'back' || !isSmall(word))
  const words = kept.map(singular)
  const last = kept.at(-1) ?? ''
  return { name: kept.join(' '), head: words.at(-1) ?? '', words, isPlural: last !== singular(last) }
}

const headsOf = ({ words, head }: Thing): readonly string[] => {
  const before = words.at(-2)
  return GENERIC.has(head) && before !== undefined ? [head, before] : [head]
}

const isSplit = (a: readonly string[], b: readonly string[], one: string, other: string): boolean =>
  a.includes(one) && !a.includes(other) && b.includes(other) && !b.includes(one)

/** Whether two lists of words set two things apart: upper here, lower there. */
export const isOpposed = (a: readonly string[], b: readonly string[]): boolean =>
  OPPOSITES.some(([one, other]) => isSplit(a, b, one, other) || isSplit(b, a, one, other))

const DISTINGUISHING = new Set(OPPOSITES.flat())

/** Whether a word only tells one part from its twin: upper, left, suction. */
export const isDistinguishing = (word: string): boolean => DISTINGUISHING.has(word)

/** Whether two lists of words could say more of one thing: one is empty, or they share a word, and nothing contradicts. */
export const areCompatible = (a: readonly string[], b: readonly string[]): boolean => {
  if (isOpposed(a, b)) return false
  return a.length === 0 || b.length === 0 || a.some(word => b.includes(word))
}

const restOf = (thing: Thing): readonly string[] => thing.words.slice(0, -1)

/** Whether two names can stand for one part: same head, and what else is said of them doesn't contradict. */
export const isSameThing = (a: Thing, b: Thing): boolean => {
  const heads = headsOf(b)
  return headsOf(a).some(head => heads.includes(head)) && areCompatible(restOf(a), restOf(b))
}

const KIN = new Map<string, Set<string>>()
for (const group of SAME_PART) for (const word of group) KIN.set(word, new Set([...(KIN.get(word) ?? []), ...group]))

/** Whether two heads are near in meaning: a lid and a cover. */
export const isKin = (a: string, b: string): boolean => a === b || KIN.get(a)?.has(b) === true

/** Whether two names may well stand for one part although they differ: "access panel" and "access cover", "tank drain" and its valve. */
export const isLikeThing = (a: Thing, b: Thing): boolean => {
  if (isSameThing(a, b)) return true
  const [short, long] = a.words.length < b.words.length ? [a.words, b.words] : [b.words, a.words]
  if (short.length > 1 && short.every(word => long.includes(word))) return true
  const [ofA, ofB] = [restOf(a), restOf(b)]
  return isKin(a.head, b.head) && areCompatible(ofA, ofB) && (ofA.length === 0) === (ofB.length === 0)
}
