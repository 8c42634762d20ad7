import type { Token } from '@/lib/trade/tagger'

/** Said while thinking or to soften; left out of the sheet. */
const IDLE = new Set(
  "um uh er erm ah eh oh hmm mmm like just actually basically literally honestly really simply obviously please kinda sorta anyway alright okay ok yeah yep aye och mate folks guys buddy sir ma'am dear wee mind probably".split(
    ' ',
  ),
)
/** Idle only at the end of what is said. */
const IDLE_AT_END = new Set(
  'now there here then again too also well first right so and but or for me you us see look if course'.split(' '),
)
const IDLE_PHRASES =
  /\b(?:you know(?: what i mean)?|i mean|i guess|i think|i suppose|i reckon|kind of|sort of|go ahead and|or whatever|or something(?: like that)?|of course|by the way|as i said|like i said|if you like|if you want|for me|for us|if you can|if you will|or so|a little bit of|at this point|this time|as well|right here|right there|over there|over here|up there|down there|real quick|nice and|god forbid|believe me|trust me|to be honest|no worries)\b/gi

/** @returns the words of a stretch of tokens as said, idle ones left out; contractions stay whole. */
export const sayTokens = (text: string, tokens: readonly Token[], from: number, to: number): string => {
  const out: string[] = []
  let last = -1
  for (let i = from; i < to; i++) {
    const token = tokens[i]
    if (token === undefined || token.at === last) continue
    last = token.at
    // Half a contraction is said whole only when both halves are meant.
    const twin = tokens[i + 1]
    const startsHalf = tokens[i - 1]?.at === token.at
    const endsHalf = twin?.at === token.at && i + 1 >= to
    if (IDLE.has(token.word) && token.tag !== 'verb') continue
    const word = startsHalf || endsHalf ? token.word : text.slice(token.at, token.to)
    out.push(/^(?:gonna|wanna|gotta|'em|till|'til|'cause)$/i.test(word) ? token.word : word)
  }
  return tidy(out.join(' '))
}

/** Leaves out idle phrases and loose ends. */
export const tidy = (said: string): string => {
  let words = said.replace(IDLE_PHRASES, ' ').replace(/\s+/g, ' ').trim().split(' ')
  while (
    words.length > 1 &&
    IDLE_AT_END.has(words.at(-1)?.toLowerCase() ?? '') &&
    !/^(?:it|them|that)$/.test(words.at(-1) ?? '')
  )
    words = words.slice(0, -1)
  while (words.length > 1 && /^(?:and|then|so|but|or|now)$/i.test(words[0] ?? '')) words = words.slice(1)
  return words.join(' ').replace(/[,;:.!?]+$/, '')
}

export const countWords = (text: string): number => text.split(/\s+/).filter(word => /[\p{L}\p{N}]/u.test(word)).length

/** Most words a step may have. @source ASD-STE100 rule 5.1 (from memory): 20 words in a procedural sentence */
export const MOST_WORDS = 20

const LOOSE = new Set(
  'a an the this that these those your my our his her its their to of with from into onto for at by and or but nor if when while because as than which who is are was be will would can could should must very about around between per each every some any not no in on off up out over under so until before after it'.split(
    ' ',
  ),
)

/** Cuts a text to so many words, never ending on a word that calls for another. */
export const cutToWords = (text: string, most = MOST_WORDS): string => {
  if (countWords(text) <= most) return text
  const words = text.split(/\s+/).slice(0, most)
  const comma = words.findLastIndex(word => /[,;]$/.test(word))
  const kept = comma >= most / 2 ? words.slice(0, comma + 1) : words
  while (kept.length > 2 && LOOSE.has((kept.at(-1) ?? '').toLowerCase().replace(/[,;]$/, ''))) kept.pop()
  return kept.join(' ').replace(/[,;]+$/, '')
}

/** A sentence for the sheet: capital first, full stop last. */
export const asSentence = (text: string): string => {
  const bare = text.trim().replace(/[\s,;:.!?]+$/, '')
  return bare === '' ? '' : `${bare.charAt(0).toUpperCase()}${bare.slice(1)}.`
}
