import type { Tag } from '@/lib/trade/known-word'
import { MATERIAL_HEADS } from '@/lib/trade/materials'
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

const TOOLS = new Set(TOOL_HEADS)
const MATERIALS = new Set(MATERIAL_HEADS)

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

const lastWords = (set: ReadonlySet<string>): ReadonlySet<string> =>
  new Set([...set].map(name => name.split(' ').at(-1) ?? name))
const LAST = new Map<ReadonlySet<string>, ReadonlySet<string>>([TOOLS, MATERIALS].map(set => [set, lastWords(set)]))

const nameAt = (tokens: readonly Token[], at: number, set: ReadonlySet<string>): number => {
  const word = tokens[at]?.word ?? ''
  const lasts = LAST.get(set)
  if (lasts !== undefined && !lasts.has(word) && !lasts.has(singular(word))) return -1
  for (let n = 3; n >= 1; n--) {
    const from = at - n + 1
    if (from < 0) continue
    const words = tokens.slice(from, at + 1)
    if (words.some((token, i) => i > 0 && token.isAfterPause)) continue
    const said = words.map(token => token.word).join(' ')
    const last = words.at(-1)?.word ?? ''
    if (set.has(said) || set.has([...words.slice(0, -1).map(token => token.word), singular(last)].join(' ')))
      return from
  }
  return -1
}

const canEnd = (tokens: readonly Token[], i: number): boolean => {
  const token = tokens[i]
  const next = tokens[i + 1]
  if (token === undefined || !HEADS.has(token.tag)) return false
  return next === undefined || next.isAfterPause || !HEADS.has(next.tag)
}

/** Modifiers that say nothing about which thing it is. */
const isModifier = (tokens: readonly Token[], i: number, head: number): boolean => {
  const token = tokens[i]
  const next = tokens[i + 1]
  if (token === undefined || next?.isAfterPause) return false
  if (!MODIFIERS.has(token.tag)) return false
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
    const asTool = nameAt(tokens, i, TOOLS)
    const asMaterial = nameAt(tokens, i, MATERIALS)
    const isEnd = canEnd(tokens, i)
    const isLexical = (asTool >= 0 || asMaterial >= 0) && token.tag !== 'verb' && token.tag !== 'third'
    if (
      !isEnd &&
      !(
        isLexical &&
        (tokens[i + 1] === undefined || tokens[i + 1]?.isAfterPause || !HEADS.has(tokens[i + 1]?.tag ?? 'filler'))
      )
    )
      return
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
      isTool: asTool >= 0 && token.tag !== 'verb',
      isMaterial: asMaterial >= 0 && token.tag !== 'verb',
      measure: measure !== undefined && MEASURES.has(measure) ? measure : undefined,
    })
    floor = i + 1
  })
  return found
}
