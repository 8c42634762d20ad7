import { CAUSES, CONDITIONS } from '@/lib/trade/english'
import type { Token } from '@/lib/trade/tagger'

/** Whether a token is or carries a verb in the clause. */
export const isVerbal = (token: Token | undefined): boolean =>
  token !== undefined &&
  (token.tag === 'verb' ||
    token.tag === 'third' ||
    token.tag === 'past' ||
    token.tag === 'auxiliary' ||
    token.tag === 'modal')

const OBJECT_OPENERS = new Set(['determiner', 'pronoun', 'number'])
const SUBJECT_WORDS = new Set('i you we he she they it that this there'.split(' '))

/** Where a clause begins: after a pause with a verb near, at a subordinator, at "and" before a verb or subject, at an order in running text. */
export const isBoundary = (tokens: readonly Token[], i: number, from: number): boolean => {
  const token = tokens[i]
  const before = tokens[i - 1]
  const after = tokens[i + 1]
  if (token === undefined || before === undefined || i - from < 1) return false
  if (token.isAfterPause) return true
  if (CAUSES.has(token.word) && token.word !== 'since') return true
  if (CONDITIONS.has(token.word) && !['as', 'once', 'where', 'before', 'after'].includes(token.word)) return true
  if (['once', 'before', 'after', 'where', 'as'].includes(token.word))
    return after !== undefined && (SUBJECT_WORDS.has(after.word) || after.tag === 'determiner' || after.tag === 'ing')
  if (token.tag === 'and' || token.word === 'which') {
    if (token.word === 'then' || token.word === 'but' || token.word === 'so' || token.word === 'which') return true
    return (
      after !== undefined &&
      (after.tag === 'verb' ||
        after.tag === 'modal' ||
        after.tag === 'negation' ||
        after.word === 'then' ||
        after.word === 'just' ||
        SUBJECT_WORDS.has(after.word) ||
        after.tag === 'condition' ||
        (after.tag === 'determiner' && tokens.slice(i + 2, i + 6).some(isVerbal)))
    )
  }
  if (token.tag === 'verb' && after !== undefined && OBJECT_OPENERS.has(after.tag)) {
    // "wheel back in | close the quick release"
    return (
      ['noun', 'part', 'tool', 'material', 'particle', 'adverb', 'unit', 'word', 'adjective'].includes(before.tag) &&
      tokens.slice(from, i).every(other => other.tag !== 'modal' && other.tag !== 'to')
    )
  }
  return false
}

const ENDS_WITH: ReadonlySet<string> = new Set([
  'noun',
  'part',
  'tool',
  'material',
  'particle',
  'unit',
  'word',
  'adjective',
  'past',
])
const NOT_BEFORE_SUBJECT =
  /^(?:way|time|place|moment|reason|how|like|than|as|so|because|that|what|where|when|side|point)$/
const STATED = /^(?:'s|is|are|'re|has|was)$/

/** In a sentence without a comma: at a ban, at an order behind its purpose, at "it" as a new subject. */
export const isUnmarkedBoundary = (tokens: readonly Token[], i: number, from: number): boolean => {
  const [before, token, after] = [tokens[i - 1], tokens[i], tokens[i + 1]]
  if (before === undefined || token === undefined || after === undefined || i - from < 3) return false
  const isBan = /^(?:don't|never)$/.test(token.word)
  const isOrder = token.tag === 'verb' && OBJECT_OPENERS.has(after.tag)
  if (!isBan && !isOrder && !/^(?:that|it|they)$/.test(token.word)) return false
  const said = tokens.slice(from, i)
  const isWhole = ENDS_WITH.has(before.tag) && said.some(isVerbal)
  // "Comes out with a pick | don't scratch the shaft".
  if (isBan) return after.tag === 'verb' && (isWhole || before.word === 'it')
  // "To get the cover off | undo the four screws".
  if (isOrder) {
    const to = said.findIndex(({ tag }) => tag === 'to')
    const isPurpose = to >= 0 && said.slice(0, to).every(({ tag }) => tag === 'and' || tag === 'filler')
    return isPurpose && isWhole && !said.slice(to + 1).some(({ tag }) => tag === 'to' || tag === 'modal')
  }
  // "Under the plug | that's the square one"; what "that's stuck" tells of stays.
  if (token.word === 'that') return isWhole && STATED.test(after.word) && tokens[i + 2]?.tag === 'determiner'
  // "Into a tray | it holds two litres".
  return isWhole && !NOT_BEFORE_SUBJECT.test(before.word) && (after.tag === 'third' || STATED.test(after.word))
}
