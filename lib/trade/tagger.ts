import * as words from './english'
import { isCompound, type Known, type Tag, wordsIn } from './known-word'
import { singular, type VerbForm } from './morphology'
import { ADJECTIVES, UNIT_WORDS } from './word-tables'

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

const raw = /(?:\$\s?\d[\d.,]*)|\d[\d.,/]*\d?(?:[a-z]+)?(?:-[a-z\d/.]+)*%?|[a-z]+(?:[-'’][a-z\d]+)*['’]?|['’][a-z]+/giu

type Piece = { readonly known: Known; readonly at: number; readonly to: number; readonly isAfterPause: boolean }

const PAUSE = /[,;:.!?…—–]|\s-\s/

const pieces = (text: string): readonly Piece[] => {
  const found: Piece[] = []
  let last = 0
  raw.lastIndex = 0
  for (let match = raw.exec(text); match !== null; match = raw.exec(text)) {
    const at = match.index
    const to = raw.lastIndex
    const isBlank = at === last + 1 && text.charCodeAt(last) === 32
    let isAfterPause = found.length === 0 || (!isBlank && PAUSE.test(text.slice(last, at)))
    last = to
    for (const known of wordsIn(match[0])) {
      found.push({ known, at, to, isAfterPause })
      isAfterPause = false
    }
  }
  return found
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
  if (next !== undefined && !next.isAfterPause && words.AUXILIARIES.has(next.known.word)) return false
  const after = next === undefined || next.isAfterPause ? undefined : next.known.closed
  const takesObject = after === 'determiner' || after === 'pronoun' || after === 'number'
  if (tagBefore === 'determiner' || tagBefore === 'preposition' || tagBefore === 'adjective')
    return !isNoun && takesObject
  if (previous !== undefined && (BEFORE_VERB.has(previous.known.word) || tagBefore === 'modal' || tagBefore === 'to'))
    return !isNoun || previous.known.word !== 'and' || takesObject || after === 'particle'
  if (takesObject) return tagBefore !== 'number'
  if (isNoun) return false
  return true
}

/** An unknown word that opens a clause and takes an object is an order: "degauss the coil". */
const takesSurely = new Set(['the', 'your', 'it', 'them', 'a'])

const unknownTag = (
  { known: { word }, isAfterPause }: Piece,
  before: Tag | undefined,
  next: Piece | undefined,
): Tag => {
  if (ADJECTIVES.has(word)) return 'adjective'
  if (/ly$/.test(word) && word.length > 4) return 'adverb'
  if (/ing$/.test(word) && word.length > 5) return 'ing'
  if (/ed$/.test(word) && word.length > 4) return 'past'
  const opens = isAfterPause || before === 'and' || before === 'filler' || before === 'to'
  return opens && word.length > 2 && next !== undefined && !next.isAfterPause && takesSurely.has(next.known.word)
    ? 'verb'
    : 'word'
}

const takesObject = (next: Piece | undefined): boolean =>
  next !== undefined &&
  !next.isAfterPause &&
  (next.known.closed === 'determiner' || next.known.closed === 'pronoun' || next.known.closed === 'number')

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
  const { known, isAfterPause } = piece
  if (form === 'ing') {
    // "The lining", "coupling back on": a part, where nothing follows that is done to.
    const isNamed = before === 'determiner' || before === 'adjective' || before === 'number'
    const isPlaced = isAfterPause && next !== undefined && !next.isAfterPause && words.PARTICLES.has(next.known.word)
    return noun !== undefined && noun !== 'noun' && (isNamed || isPlaced) ? noun : 'ing'
  }
  if (form === 'third') {
    if (before === 'determiner' || before === 'adjective' || before === 'preposition' || before === 'number')
      return noun ?? 'noun'
    return noun !== undefined && before !== 'pronoun' ? noun : 'third'
  }
  if (form !== 'base') return ADJECTIVES.has(known.word) ? 'adjective' : 'past'
  if (next !== undefined && !next.isAfterPause && isCompound(known, next.known.word)) return noun ?? 'noun'
  if (isInside && !isAfterPause && !takesObject(next)) return noun ?? 'noun'
  const isThing = noun !== undefined && noun !== 'noun'
  return isVerbHere(isAfterPause ? undefined : previous, isAfterPause ? undefined : before, next, isThing)
    ? 'verb'
    : (noun ?? 'noun')
}

/** Whether a new statement opens: "it's", "they are". */
const isSaidOf = (subject: Piece | undefined, then: Piece | undefined): boolean =>
  /^(?:it|they|that)$/.test(subject?.known.word ?? '') &&
  /^(?:'s|'re|is|are|has|was|were)$/.test(then?.known.word ?? '')

const PRESSES = new Set(['press', 'push', 'hit', 'try'])
const BUTTONS = new Set([
  'start',
  'stop',
  'reset',
  'go',
  'enter',
  'run',
  'play',
  'pause',
  'hold',
  'test',
  'ok',
  'power',
])
const isAfterPauseOf = (piece: Piece | undefined): boolean => piece?.isAfterPause !== false

/** "that" and its like stand alone, or before the thing they point at. */
const pointerTag = (word: string, closed: Tag, next: Piece | undefined): Tag => {
  if (!words.DETERMINERS.has(word) || !words.PRONOUNS.has(word)) return closed
  if (next === undefined || next.isAfterPause) return 'pronoun'
  const isThird = next.known.verb?.form === 'third' && next.known.noun === undefined
  return isThird || (next.known.closed !== 'number' && next.known.closed !== undefined) ? 'pronoun' : 'determiner'
}

const tagOf = (
  list: readonly Piece[],
  i: number,
  tokens: readonly Token[],
): { readonly tag: Tag; readonly base?: string } => {
  const before = tokens[i - 1]?.tag
  const piece = list[i]
  if (piece === undefined) return { tag: 'word' }
  const { known, isAfterPause } = piece
  const { word, closed, noun, verb } = known
  const [previous, next] = [list[i - 1], list[i + 1]]
  if (word === 'cause' && (isAfterPause || before !== 'determiner') && words.SUBJECTS.has(next?.known.word ?? ''))
    return { tag: 'cause' }
  if (
    (word === 'open' || word === 'shut') &&
    takesObject(next) &&
    (isAfterPause || before === 'filler' || (previous !== undefined && BEFORE_VERB.has(previous.known.word)))
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
  if (closed === 'pronoun' || closed === 'determiner') return { tag: pointerTag(word, closed, next) }
  if (closed === 'modal' && (word === 'can' || word === 'will') && before === 'determiner') return { tag: 'noun' }
  if (closed !== undefined) return { tag: closed }
  if (UNIT_WORDS.has(word) && (before === 'number' || word.length > 4))
    return { tag: before === 'number' || verb === undefined ? 'unit' : 'noun' }
  if (before === 'number' && words.MONEY.has(word)) return { tag: 'money' }
  // "Press start", "and hit reset": what is on the button follows.
  if (
    PRESSES.has(word) &&
    !isAfterPauseOf(next) &&
    BUTTONS.has(next?.known.word ?? '') &&
    (isAfterPause || before === 'and')
  )
    return { tag: 'verb', base: word }
  if (BUTTONS.has(word) && !isAfterPause && before === 'verb' && PRESSES.has(previous?.known.word ?? ''))
    return { tag: 'noun' }
  // "Used oil is nasty": oil that was used, where nobody is said to use it.
  if (
    word === 'used' &&
    (isAfterPause || before === 'and' || before === 'determiner') &&
    next?.known.noun !== undefined &&
    !next.isAfterPause
  )
    return { tag: 'adjective' }
  // "Undo the grub screw it's a 2.5": what follows is said of it.
  if (noun !== undefined && verb?.form === 'base' && !isAfterPause && isSaidOf(next, list[i + 2]) && isInPhrase(tokens))
    return { tag: noun }
  // "Line up your mark": opens, and what follows its particle is what it takes.
  if (
    verb?.form === 'base' &&
    (isAfterPause || before === 'filler') &&
    next !== undefined &&
    !next.isAfterPause &&
    words.PARTICLES.has(next.known.word) &&
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
  list.forEach(({ known: { word }, at, to, isAfterPause }, i) => {
    const { tag, base } = tagOf(list, i, tokens)
    tokens.push(base === undefined ? { word, tag, at, to, isAfterPause } : { word, tag, at, to, isAfterPause, base })
  })
  return tokens
}
