import * as words from './english'
import { MATERIAL_HEADS } from './materials'
import { onceForText } from './memo'
import { singular, type VerbReading, verbOf } from './morphology'
import { PART_HEADS } from './parts'
import { TOOL_HEADS } from './tools'
import { ADVERBS, NOUNISH, NUMBER_WORDS, OPENED } from './word-tables'

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

const closedTag = (word: string): Tag | undefined => {
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
}

const nounTag = (word: string): Tag | undefined => {
  const one = singular(word)
  if (TOOLS.has(word) || TOOLS.has(one)) return 'tool'
  if (MATERIALS.has(word) || MATERIALS.has(one)) return 'material'
  if (PART_HEADS.has(word) || PART_HEADS.has(one)) return 'part'
  return NOUNISH.has(word) ? 'noun' : undefined
}

/** First words of names of several words. */
const NAME_OPENERS = new Set(
  [...TOOLS, ...MATERIALS].filter(name => name.includes(' ')).map(name => name.slice(0, name.indexOf(' '))),
)

/** What the tables tell of a word wherever it stands: looked up once, however often it is said. */
export type Known = {
  readonly word: string
  readonly closed: Tag | undefined
  readonly noun: Tag | undefined
  readonly verb: VerbReading | undefined
  /** Whether a name of several words may open with it. */
  readonly opensName: boolean
}

const known = (word: string): Known => ({
  word,
  closed: closedTag(word),
  noun: nounTag(word),
  verb: verbOf(word),
  opensName: NAME_OPENERS.has(word),
})

/** @returns the words that one stretch of letters holds: most often one, of "gonna" and "it's" two. */
export const wordsIn = onceForText((said: string): readonly Known[] => {
  const word = said
    .toLowerCase()
    .replaceAll('’', "'")
    .replace(/[.,]+$/, '')
  const contraction = /^([a-z]+)('(?:s|re|ve|ll|d|m))$/.exec(word)
  const isWhole = contraction === null || /^(?:o|ma)$/.test(contraction[1] ?? '')
  return (OPENED[word] ?? (isWhole ? [word] : contraction.slice(1))).map(known)
})

/** Whether two words name one thing, "torque wrench", "drain pan": the first is no order. */
export const isCompound = ({ word, opensName }: Known, next: string): boolean => {
  if (!opensName) return false
  const both = `${word} ${next}`
  return TOOLS.has(both) || MATERIALS.has(both) || TOOLS.has(singular(both)) || MATERIALS.has(singular(both))
}
