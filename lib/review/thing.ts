import { FASTENERS, OPPOSITES, SAME_PART } from '@/lib/trade/pairs'
import { isSmall, singular } from './words'

/** A part as a text names it: "the two upper cover screws" is head screw, words upper cover screw. */
export type Thing = {
  /** As written, articles and numbers left out. */
  readonly name: string
  /** Singular of the last word; empty for a pronoun. */
  readonly head: string
  /** Singular of every word that names it, the head last. */
  readonly words: readonly string[]
  /** `words` without the last. */
  readonly rest: readonly string[]
  /** What it may be called by in one word: its head, and the word before where the head says little. */
  readonly heads: readonly string[]
  readonly isPlural: boolean
}

/** Heads that say little: a filter element is a filter. */
const GENERIC = new Set('assembly unit kit set element body piece part cartridge half end system'.split(' '))
const TRAILING = new Set(
  'snug tight loosely clockwise anticlockwise counterclockwise together again hard straight first last left-hand right-hand round finger hand halfway partway tighter upright forward forwards backward backwards flush outdoors indoors dry clean upstream downstream above below nearby alongside beneath overhead inside outside underneath opposite'.split(
    ' ',
  ),
)

/** How a part is found or made, which names none: the wetted rope is the rope. English, no source. */
const STATES = new Set(
  'full wet wetted cracked broken bent soaked damaged dirty failed dead split perished burnt seized rusty rusted greased oiled cleaned rinsed dried fresh spare spent blunt dull chipped torn frayed leaking clogged blocked swollen soiled refurbished sharpened tired faulty defective'.split(
    ' ',
  ),
)

/** @returns the thing that a phrase names. */
export const toThing = (phrase: readonly string[]): Thing => {
  let to = phrase.length
  while (to > 1 && TRAILING.has(phrase[to - 1] ?? '')) to--
  const kept = phrase
    .slice(0, to)
    .filter(
      (word, i) =>
        word === 'back' ||
        (i === to - 1 && (word === 'half' || STATES.has(word))) ||
        (!isSmall(word) && !STATES.has(word)),
    )
  const words = kept.map(singular)
  const last = kept.at(-1) ?? ''
  const head = words.at(-1) ?? ''
  const before = words.at(-2)
  const named = GENERIC.has(head) && before !== undefined ? [head, before] : [head]
  // A V-belt is a belt.
  const heads = named.flatMap(word =>
    /-[a-z]{3,}$/.test(word) ? [word, word.slice(word.lastIndexOf('-') + 1)] : [word],
  )
  return { name: kept.join(' '), head, words, rest: words.slice(0, -1), heads, isPlural: last !== singular(last) }
}

const OPPOSITE_OF = new Map<string, string[]>()
for (const [one, other] of OPPOSITES)
  for (const [word, opposite] of [
    [one, other],
    [other, one],
  ] as const)
    OPPOSITE_OF.set(word, [...(OPPOSITE_OF.get(word) ?? []), opposite])

/** Whether two lists of words set two things apart: upper here, lower there. */
export const isOpposed = (a: readonly string[], b: readonly string[]): boolean =>
  a.some(word => {
    const opposites = OPPOSITE_OF.get(word)
    return (
      opposites !== undefined && !b.includes(word) && opposites.some(other => b.includes(other) && !a.includes(other))
    )
  })

const DISTINGUISHING = new Set(OPPOSITES.flat())

/** Whether a word only tells one part from its twin: upper, left, suction. */
export const isDistinguishing = (word: string): boolean => DISTINGUISHING.has(word)

/** Whether two lists of words could say more of one thing: one is empty, or they share a word, and nothing contradicts. */
export const areCompatible = (a: readonly string[], b: readonly string[]): boolean => {
  if (a.length === 0 || b.length === 0) return true
  return a.some(word => b.includes(word)) && !isOpposed(a, b)
}

/** Whether two names can stand for one part: same head, and what else is said of them doesn't contradict. */
export const isSameThing = (a: Thing, b: Thing): boolean => {
  if (a === b) return true
  if (a.head !== b.head && !a.heads.some(head => b.heads.includes(head))) return false
  return areCompatible(a.rest, b.rest)
}

const KIN = new Map<string, Set<string>>()
for (const group of SAME_PART) for (const word of group) KIN.set(word, new Set([...(KIN.get(word) ?? []), ...group]))

/** Whether two heads are near in meaning: a lid and a cover. */
export const isKin = (a: string, b: string): boolean => a === b || KIN.get(a)?.has(b) === true

/** Whether two names may well stand for one part although they differ: "access panel" and "access cover", "tank drain" and its valve. */
export const isLikeThing = (a: Thing, b: Thing): boolean => {
  if (isSameThing(a, b)) return true
  const [short, long] = a.words.length < b.words.length ? [a.words, b.words] : [b.words, a.words]
  // The bolts of the rear roller are not the rear roller.
  const isHeld = FASTENERS.has(long.at(-1) ?? '') && short.at(-1) !== long.at(-1)
  if (short.length > 1 && !isHeld && short.every(word => long.includes(word))) return true
  return isKin(a.head, b.head) && (a.rest.length === 0) === (b.rest.length === 0) && areCompatible(a.rest, b.rest)
}
