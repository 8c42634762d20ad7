import * as words from './english'
import { MATERIAL_HEADS } from './materials'
import { onceForText } from './memo'
import { singular, type VerbForm, verbOf } from './morphology'
import { PART_HEADS } from './parts'
import { TOOL_HEADS } from './tools'
import { ADJECTIVES, ADVERBS, NOUNISH, NUMBER_WORDS, OPENED, UNIT_WORDS } from './word-tables'

/** What a word is, as far as drafting needs to know. Tags of content words are guesses from lexicon, ending and neighbours. */
export type Tag =
  | 'verb'
  | 'third'
  | 'past'
  | 'ing'
  | 'noun'
  | 'tool'
  | 'material'
  | 'part'
  | 'adverb'
  | 'adjective'
  | 'number'
  | 'unit'
  | 'money'
  | 'determiner'
  | 'pronoun'
  | 'preposition'
  | 'particle'
  | 'auxiliary'
  | 'modal'
  | 'negation'
  | 'condition'
  | 'cause'
  | 'question'
  | 'filler'
  | 'word'
  | 'to'
  | 'and'
  | 'name'

/** A word or half of a contraction. Offsets [at, to) into the sentence's text. */
export type Token = {
  /** Lower case, straight apostrophes, "gonna" and the like opened up. */
  readonly word: string
  readonly tag: Tag
  readonly at: number
  readonly to: number
  /** Comma, colon, dash or full stop right before it. */
  readonly isAfterPause: boolean
  /** Base form, for verbs. */
  readonly base?: string
}

const isNumber = (word: string): boolean =>
  /^[\d][\d.,/]*(?:-\d[\d/]*)?$/.test(word) ||
  /^\d+[a-z]*-\d+$/.test(word) ||
  word.split('-').every(part => NUMBER_WORDS.has(part))
const isSized = (word: string): boolean =>
  /^\d[\d./]*-?(?:mm|mil|inch|in|ml|l|v|w|amp|volt|watt|ohm|hour|minute|micron|point|grit|gauge|pin|way|piece|ton)$/.test(
    word,
  )

const TOOLS = new Set(TOOL_HEADS)
const MATERIALS = new Set(MATERIAL_HEADS)

const raw = /(?:\$\s?\d[\d.,]*)|\d[\d.,/]*\d?(?:[a-z]+)?(?:-[a-z\d/.]+)*%?|[a-z]+(?:[-'’][a-z\d]+)*['’]?|['’][a-z]+/giu

type Piece = { word: string; at: number; to: number; isAfterPause: boolean }

const pieces = (text: string): Piece[] => {
  const found: Piece[] = []
  let last = 0
  for (const match of text.matchAll(raw)) {
    const at = match.index
    const to = at + match[0].length
    const isAfterPause = found.length === 0 || /[,;:.!?…—–]|\s-\s/.test(text.slice(last, at))
    last = to
    const word = match[0]
      .toLowerCase()
      .replaceAll('’', "'")
      .replace(/[.,]+$/, '')
    const opened = OPENED[word]
    const contraction = /^([a-z]+)('(?:s|re|ve|ll|d|m))$/.exec(word)
    const parts = opened ?? (contraction && !/^(?:o|ma)$/.test(contraction[1] ?? '') ? contraction.slice(1) : [word])
    parts.forEach((part, i) => void found.push({ word: part, at, to, isAfterPause: isAfterPause && i === 0 }))
  }
  return found
}

const closedTag = onceForText((word: string): Tag | undefined => {
  if (word.startsWith('$')) return 'money'
  if (word === 'to') return 'to'
  if (word === 'and' || word === 'or' || word === 'but' || word === 'then' || word === 'so') return 'and'
  if (/^\d[\d.,]*%$/.test(word) || isSized(word) || /^\d/.test(word)) return 'number'
  if (words.NEGATIONS.has(word)) return 'negation'
  if (words.MODALS.has(word)) return 'modal'
  if (words.AUXILIARIES.has(word)) return 'auxiliary'
  if (words.CAUSES.has(word)) return 'cause'
  if (words.QUESTION_WORDS.has(word)) return 'question'
  if (words.CONDITIONS.has(word)) return 'condition'
  if (isNumber(word)) return 'number'
  if (words.DETERMINERS.has(word)) return 'determiner'
  if (words.PRONOUNS.has(word) || words.SUBJECTS.has(word)) return 'pronoun'
  if (words.PARTICLES.has(word)) return 'particle'
  if (words.PREPOSITIONS.has(word)) return 'preposition'
  if (ADVERBS.has(word)) return 'adverb'
  if (words.FILLERS.has(word) && verbOf(word) === undefined) return 'filler'
  return undefined
})

const nounTag = onceForText((word: string): Tag | undefined => {
  const one = singular(word)
  if (TOOLS.has(word) || TOOLS.has(one)) return 'tool'
  if (MATERIALS.has(word) || MATERIALS.has(one)) return 'material'
  if (PART_HEADS.has(word) || PART_HEADS.has(one)) return 'part'
  return NOUNISH.has(word) ? 'noun' : undefined
})

/** "torque wrench", "drain pan": the first word is no order. */
const isCompound = (word: string, next: string): boolean => {
  const both = `${word} ${next}`
  return TOOLS.has(both) || MATERIALS.has(both) || TOOLS.has(singular(both)) || MATERIALS.has(singular(both))
}

const BEFORE_VERB = new Set(
  "to you we i they please just always never don't not let's go ahead then and us 'll will can could should must would might may carefully gently slowly now first next so really help".split(
    ' ',
  ),
)

/** A word that may be noun or verb: neighbours decide. */
const isVerbHere = (
  previous: Piece | undefined,
  tagBefore: Tag | undefined,
  next: Piece | undefined,
  isNoun: boolean,
): boolean => {
  if (next !== undefined && !next.isAfterPause && words.AUXILIARIES.has(next.word)) return false
  const after = next === undefined || next.isAfterPause ? undefined : closedTag(next.word)
  const takesObject = after === 'determiner' || after === 'pronoun' || after === 'number'
  if (tagBefore === 'determiner' || tagBefore === 'preposition' || tagBefore === 'adjective')
    return !isNoun && takesObject
  if (previous !== undefined && (BEFORE_VERB.has(previous.word) || tagBefore === 'modal' || tagBefore === 'to'))
    return !isNoun || previous.word !== 'and' || takesObject || after === 'particle'
  if (takesObject) return tagBefore !== 'number'
  if (isNoun) return false
  return true
}

/** An unknown word that opens a clause and takes an object is an order: "degauss the coil". */
const takesSurely = new Set(['the', 'your', 'it', 'them', 'a'])

const unknownTag = ({ word, isAfterPause }: Piece, before: Tag | undefined, next: Piece | undefined): Tag => {
  if (ADJECTIVES.has(word)) return 'adjective'
  if (/ly$/.test(word) && word.length > 4) return 'adverb'
  if (/ing$/.test(word) && word.length > 5) return 'ing'
  if (/ed$/.test(word) && word.length > 4) return 'past'
  const opens = isAfterPause || before === 'and' || before === 'filler' || before === 'to'
  return opens && word.length > 2 && next !== undefined && !next.isAfterPause && takesSurely.has(next.word)
    ? 'verb'
    : 'word'
}

const takesObject = (next: Piece | undefined): boolean =>
  next !== undefined && !next.isAfterPause && ['determiner', 'pronoun', 'number'].includes(closedTag(next.word) ?? '')

const IN_PHRASE: ReadonlySet<Tag> = new Set(['noun', 'tool', 'material', 'part', 'word', 'adjective', 'number'])

/** Whether the words right before stand in a phrase that an article opened: "the foam" before "bag". */
const isInPhrase = (tokens: readonly Token[]): boolean => {
  const last = tokens.at(-1)
  if (last === undefined || !IN_PHRASE.has(last.tag) || last.tag === 'adjective' || last.tag === 'number') return false
  if (singular(last.word) !== last.word) return false
  for (let i = tokens.length - 1; i >= 0; i--) {
    const token = tokens[i]
    if (token === undefined) return false
    if (token.tag === 'determiner') return true
    if (!IN_PHRASE.has(token.tag) || token.isAfterPause) return false
  }
  return false
}

const verbTag = (
  piece: Piece,
  previous: Piece | undefined,
  before: Tag | undefined,
  next: Piece | undefined,
  noun: Tag | undefined,
  form: VerbForm,
  isInside: boolean,
): Tag => {
  const { word, isAfterPause } = piece
  if (form === 'ing') return 'ing'
  if (form === 'third') {
    if (before === 'determiner' || before === 'adjective' || before === 'preposition' || before === 'number')
      return noun ?? 'noun'
    return noun !== undefined && before !== 'pronoun' ? noun : 'third'
  }
  if (form !== 'base') return ADJECTIVES.has(word) ? 'adjective' : 'past'
  if (next !== undefined && !next.isAfterPause && isCompound(word, next.word)) return noun ?? 'noun'
  if (isInside && !isAfterPause && !takesObject(next)) return noun ?? 'noun'
  const isThing = noun !== undefined && noun !== 'noun'
  return isVerbHere(isAfterPause ? undefined : previous, isAfterPause ? undefined : before, next, isThing)
    ? 'verb'
    : (noun ?? 'noun')
}

/** "that" and its like stand alone, or before the thing they point at. */
const pointerTag = (word: string, closed: Tag, next: Piece | undefined): Tag => {
  if (!words.DETERMINERS.has(word) || !words.PRONOUNS.has(word)) return closed
  if (next === undefined || next.isAfterPause) return 'pronoun'
  const isThird = verbOf(next.word)?.form === 'third' && nounTag(next.word) === undefined
  return isThird || !['number', undefined].includes(closedTag(next.word)) ? 'pronoun' : 'determiner'
}

const tagOf = (
  list: readonly Piece[],
  i: number,
  tokens: readonly Token[],
): { readonly tag: Tag; readonly base?: string } => {
  const before = tokens[i - 1]?.tag
  const piece = list[i]
  if (piece === undefined) return { tag: 'word' }
  const { word, isAfterPause } = piece
  const [previous, next] = [list[i - 1], list[i + 1]]
  if (word === 'cause' && (isAfterPause || before !== 'determiner') && words.SUBJECTS.has(next?.word ?? ''))
    return { tag: 'cause' }
  if (
    (word === 'open' || word === 'shut') &&
    takesObject(next) &&
    (isAfterPause || before === 'filler' || (previous !== undefined && BEFORE_VERB.has(previous.word)))
  )
    return { tag: 'verb', base: word }
  if (
    word === 'round' &&
    (before === 'determiner' || before === 'number') &&
    !takesObject(next) &&
    next !== undefined &&
    !next.isAfterPause
  )
    return { tag: 'adjective' }
  const closed = closedTag(word)
  if (closed === 'pronoun' || closed === 'determiner') return { tag: pointerTag(word, closed, next) }
  if (closed === 'modal' && (word === 'can' || word === 'will') && before === 'determiner') return { tag: 'noun' }
  if (closed !== undefined) return { tag: closed }
  const verb = verbOf(word)
  if (UNIT_WORDS.has(word) && (before === 'number' || word.length > 4))
    return { tag: before === 'number' || verb === undefined ? 'unit' : 'noun' }
  if (before === 'number' && words.MONEY.has(word)) return { tag: 'money' }
  const noun = nounTag(word)
  // "Line up your mark": opens, and what follows its particle is what it takes.
  if (
    verb?.form === 'base' &&
    (isAfterPause || before === 'filler') &&
    next !== undefined &&
    !next.isAfterPause &&
    words.PARTICLES.has(next.word) &&
    takesObject(list[i + 2])
  )
    return { tag: 'verb', base: verb.base }
  if (verb !== undefined) {
    const tag = verbTag(piece, previous, before, next, noun, verb.form, isInPhrase(tokens))
    return VERBAL.has(tag) || verb.form === 'third' ? { tag, base: verb.base } : { tag }
  }
  // "My screwdriver earns its keep": an unknown word that may be a verb, between a thing and what it takes.
  if (noun === undefined && /[^s]s$/.test(word) && !isAfterPause && takesObject(next) && isInPhrase(tokens))
    return { tag: 'third', base: singular(word) }
  const tag = noun ?? unknownTag(piece, before, next)
  return tag === 'verb' ? { tag, base: word } : { tag }
}

const VERBAL = new Set<Tag>(['verb', 'third', 'past', 'ing', 'adjective'])

/** @returns the sentence's words with tags, in order. Linear; never throws. */
export const toTokens = (text: string): readonly Token[] => {
  const list = pieces(text)
  const tokens: Token[] = []
  list.forEach(({ word, at, to, isAfterPause }, i) => {
    tokens.push({ word, at, to, isAfterPause, ...tagOf(list, i, tokens) })
  })
  return tokens
}
