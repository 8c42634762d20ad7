import type { Tag } from '@/lib/trade/known-word'
import { MATERIAL_HEADS } from '@/lib/trade/materials'
import { onceForText } from '@/lib/trade/memo'
import { singular } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { TOOL_HEADS } from '@/lib/trade/tools'

/** A thing named in a sentence. Token indices [from, to); the head is the last word or words. */
export type NounPhrase = {
  readonly from: number
  /** First token of the head ("torque wrench" is a head of two). */
  readonly head: number
  readonly to: number
  /** The head as the lexicon has it, else its last word in the singular. */
  readonly name: string
  readonly isTool: boolean
  readonly isMaterial: boolean
  /** "a smear of", "a drop of" before it. */
  readonly measure: string | undefined
}

const HEADS: ReadonlySet<Tag> = new Set(['tool', 'material', 'part', 'noun', 'word', 'name'])
const MODIFIERS: ReadonlySet<Tag> = new Set([
  'tool',
  'material',
  'part',
  'noun',
  'word',
  'adjective',
  'number',
  'unit',
  'ing',
  'past',
])

/** Words that measure out stuff: "a smear of grease". */
export const MEASURES = new Set(
  'smear dab drop drops bit squirt squirts coat coating film touch blob bead splash cup cups quart quarts litre litres liter liters pint pints teaspoon spoonful spoon piece sheet strip length block lump ball roll can bottle tube pack packet set pair couple handful spot lick wipe layer little dash puff spray mist pinch litre'.split(
    ' ',
  ),
)

/** Most words of a name that is looked for. */
const LONGEST = 3

/** Names as their words, by the last of these. */
const byLastWord = (names: readonly string[]): ReadonlyMap<string, readonly (readonly string[])[]> => {
  const found = new Map<string, (readonly string[])[]>()
  for (const words of names.map(name => name.split(' '))) {
    const last = words.at(-1) ?? ''
    if (words.length <= LONGEST) found.set(last, [...(found.get(last) ?? []), words])
  }
  return found
}
const TOOLS = byLastWord(TOOL_HEADS)
const MATERIALS = byLastWord(MATERIAL_HEADS)

type Names = readonly (readonly string[])[]

/** Names of tools and of materials that end with a word or with its singular, the longest first. */
const namesEndingWith = onceForText((word: string): { readonly tools: Names; readonly materials: Names } => {
  const ends = [...new Set([word, singular(word)])]
  const [tools = [], materials = []] = [TOOLS, MATERIALS].map(names =>
    ends.flatMap(end => names.get(end) ?? []).sort((a, b) => b.length - a.length),
  )
  return { tools, materials }
})

/** @returns whether a word alone names a tool or a material, whatever it is in its sentence */
export const kindOfWord = (word: string): { readonly isTool: boolean; readonly isMaterial: boolean } => {
  const { tools, materials } = namesEndingWith(word)
  return { isTool: tools.some(name => name.length === 1), isMaterial: materials.some(name => name.length === 1) }
}

/** First token of the longest of some names that ends at a token, as that token's word tells; -1 where none does. */
const nameAt = (tokens: readonly Token[], at: number, names: Names): number => {
  for (const name of names) {
    const from = at - name.length + 1
    let k = 0
    while (k < name.length - 1 && tokens[from + k]?.word === name[k] && tokens[from + k + 1]?.isAfterPause === false)
      k++
    if (k === name.length - 1) return from
  }
  return -1
}

const isVerbal = (token: Token | undefined): boolean => token?.tag === 'verb' || token?.tag === 'third'

/** "Kitchen roll", "zip ties": whether the next word, though it looks like a verb, ends a name that this one is in. */
const isInName = (tokens: readonly Token[], i: number): boolean => {
  const next = tokens[i + 1]
  if (next === undefined || next.isAfterPause || !isVerbal(next)) return false
  const { tools, materials } = namesEndingWith(next.word)
  return [tools, materials].some(names => {
    const from = nameAt(tokens, i + 1, names)
    return from >= 0 && from <= i
  })
}

/** Words the tagger takes for things that are none. */
const STRAY = new Set(
  'though anyhow beforehand overnight altogether afterwards meanwhile otherwise regardless except bang go underneath underway besides somehow indeed nevertheless nowadays'.split(
    ' ',
  ),
)
const isHeadWord = ({ tag, word }: Token): boolean => HEADS.has(tag) && !STRAY.has(word)

const canEnd = (tokens: readonly Token[], i: number): boolean => {
  const token = tokens[i]
  const next = tokens[i + 1]
  if (token === undefined || !isHeadWord(token)) return false
  return next === undefined || next.isAfterPause || !isHeadWord(next)
}

/** Modifiers that say nothing about which thing it is. */
const isModifier = (tokens: readonly Token[], i: number, head: number): boolean => {
  const token = tokens[i]
  const next = tokens[i + 1]
  if (token === undefined || next?.isAfterPause) return false
  if (!MODIFIERS.has(token.tag) || token.to === next?.at) return false
  if (token.tag === 'past' || token.tag === 'ing') {
    const before = tokens[i - 1]
    return (
      before?.tag === 'determiner' ||
      before?.tag === 'adjective' ||
      (before?.tag === 'preposition' && head - i < 2) ||
      i === 0 ||
      token.isAfterPause
    )
  }
  return true
}

/** @returns the things a sentence names, left to right, none inside another. */
export const toNounPhrases = (tokens: readonly Token[]): readonly NounPhrase[] => {
  const found: NounPhrase[] = []
  let floor = 0
  tokens.forEach((token, i) => {
    const { tools, materials } = namesEndingWith(token.word)
    const asTool = nameAt(tokens, i, tools)
    const asMaterial = nameAt(tokens, i, materials)
    const isEnd = canEnd(tokens, i)
    const next = tokens[i + 1]
    // "T25" is one word that the tagger takes apart.
    if (token.to === tokens[i + 1]?.at && tokens[i + 1]?.tag === 'number') return
    if (isInName(tokens, i)) return
    // A name of several words is none of a verb, whatever its last word looks like.
    const isCompoundName = (asTool >= 0 && asTool < i) || (asMaterial >= 0 && asMaterial < i)
    const isLexical = (asTool >= 0 || asMaterial >= 0) && (!isVerbal(token) || isCompoundName)
    if (!isEnd && !(isLexical && (next === undefined || next.isAfterPause || !isHeadWord(next)))) return
    const head = Math.max(floor, isLexical ? Math.min(asTool < 0 ? i : asTool, asMaterial < 0 ? i : asMaterial) : i)
    let from = head
    while (from > floor && head - from < 5 && isModifier(tokens, from - 1, head)) from--
    const of = tokens[from - 1]
    const measure = of?.word === 'of' ? tokens[from - 2]?.word : undefined
    found.push({
      from,
      head,
      to: i + 1,
      name: [...tokens.slice(head, i).map(t => t.word), singular(token.word)].join(' '),
      isTool: asTool >= 0 && (token.tag !== 'verb' || asTool < i),
      isMaterial: asMaterial >= 0 && (token.tag !== 'verb' || asMaterial < i),
      measure: measure !== undefined && MEASURES.has(measure) ? measure : undefined,
    })
    floor = i + 1
  })
  return found
}
