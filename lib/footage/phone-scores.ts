import { PHONES } from './recogniser'

/** Phones that are easily taken for each other. Textbook classes of articulation. */
const CLASSES: readonly (readonly string[])[] = [
  ['P', 'B', 'T', 'D', 'K', 'G'],
  ['F', 'V', 'TH', 'DH', 'S', 'Z', 'SH', 'ZH', 'HH', 'CH', 'JH'],
  ['M', 'N', 'NG'],
  ['L', 'R', 'W', 'Y', 'ER', 'UW', 'UH', 'OW'],
  ['IY', 'IH', 'EY', 'EH', 'AE', 'Y', 'AY'],
  ['AH', 'UH', 'AA', 'AO', 'OW', 'AW', 'ER', 'OY', 'AE', 'EH', 'IH'],
]

const COUNT = PHONES.length

/** How often a phone is heard as itself and as one of its class, before anything is known of the voice. */
const [SELF, CLASS] = [0.5, 0.3]

/** What is believed before counting is worth so many phones counted. */
const BELIEF = 12

/** Points for 1 nat. */
export const NAT = 100

/** Chance of hearing the phone `heard` where `written` is said: rows of written phones, each of sum 1. */
const BELIEVED = (() => {
  const chances = new Float64Array(COUNT * COUNT)
  for (const [a, one] of PHONES.entries()) {
    const like = PHONES.map(other => other !== one && CLASSES.some(all => all.includes(one) && all.includes(other)))
    const likes = like.filter(Boolean).length
    for (let b = 0; b < COUNT; b++)
      chances[a * COUNT + b] = a === b ? SELF : like[b] ? CLASS / likes : (1 - SELF - CLASS) / (COUNT - 1 - likes)
  }
  return chances
})()

/** Written phones, and for each the index of the heard one it was matched with; -1 for none. */
type Matched = { readonly written: Uint8Array; readonly matches: Int32Array }

/**
 * Points for hearing one phone where another is written: the logarithm of how much likelier that is than hearing it by
 * chance.
 *
 * @param heard all phones heard, for their chance
 * @param before what was matched, if anything: what this voice, room and recogniser make of each phone
 * @returns points by written phone and heard phone, rows of written ones
 */
export const phoneScores = (heard: Uint8Array, before?: Matched): Int32Array => {
  const chance = new Float64Array(COUNT).fill(5)
  for (const phone of heard) chance[phone] = (chance[phone] ?? 0) + 1
  const counts = BELIEVED.map(share => share * BELIEF)
  for (const [i, match] of before?.matches.entries() ?? []) {
    const cell = (before?.written[i] ?? 0) * COUNT + (heard[match] ?? 0)
    if (match >= 0) counts[cell] = (counts[cell] ?? 0) + 1
  }
  const total = heard.length + 5 * COUNT
  const sums = PHONES.map((_, a) => counts.subarray(a * COUNT, (a + 1) * COUNT).reduce((sum, one) => sum + one, 0))
  return Int32Array.from(counts, (count, i) => {
    return Math.round(NAT * Math.log(count / (sums[Math.floor(i / COUNT)] ?? 1) / ((chance[i % COUNT] ?? 1) / total)))
  })
}
