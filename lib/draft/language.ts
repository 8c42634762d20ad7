import type { Transcript } from '@/lib/procedure/recording'
import { wordList } from '@/lib/trade/list'
import { verbOf } from '@/lib/trade/morphology'

/** Frequent in English talk and hardly a word elsewhere: what Danish, Dutch or German also writes so is left out. From memory. */
const COMMON: ReadonlySet<string> = new Set(
  wordList(
    "the, and, you, your, you're, you'll, it, it's, that, that's, this, these, those, with, are, they, they're, there, there's, when, what, which, where, because, going, gonna, get, got, just, from, then, now, right, out, down, back, sure, them, our, into, would, should, could, don't, doesn't, didn't, can't, won't, isn't, through, again, before, until, after, little, some, here's, let's, i'm, i've, we're, we've, we'll, my, his, their, very, only, about, any, other, same, first, next, new, old, good, each, every, both, too, than, all, if, by, at, up, off, okay, yeah",
  ),
)

/** Shortest verb that tells: shorter ones are words of other languages too (`die`, `den`, `man`). */
const TELLING = 4

// Log odds that a talk is in another language, by the word: shares of the words above in the tersest English of our talks and in
// other languages, rounded to the safe side. Of 190 English talks it doubts none, of their 11,989 cuts of 20 words two lists.
const ENGLISH_WORD = Math.log(0.03 / 0.25)
const OTHER_WORD = Math.log(0.97 / 0.75)
const OTHER_SCRIPT = 1
/** Twenty to one. */
const SURE = 3

const WORD = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]|[\p{L}\p{M}'’]+/gu
const LATIN = /^[\p{Script=Latin}\p{M}'’]+$/u

const weigh = (word: string): number => {
  if (!LATIN.test(word)) return OTHER_SCRIPT
  const plain = word.toLowerCase().replaceAll('’', "'")
  const isKnown = COMMON.has(plain) || (plain.length >= TELLING && verbOf(plain) !== undefined)
  return isKnown ? ENGLISH_WORD : OTHER_WORD
}

/** What to say where `isForeign`. */
export const ENGLISH_ONLY = 'The draft reads English only, and this talk reads like another language: mark it by hand.'

/**
 * Whether a talk is most likely in another language than English, the only one that is drafted from. Told by the share of
 * frequent English words and verbs of the trade; a talk of a few words is given the benefit of the doubt. Never throws.
 */
export const isForeign = ({ cues }: Transcript): boolean => {
  let odds = 0
  for (const cue of cues) for (const word of (cue.corrected ?? cue.text).match(WORD) ?? []) odds += weigh(word)
  return odds > SURE
}
