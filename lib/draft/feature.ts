import { harmSigns } from '@/lib/trade/harm'
import { singular } from '@/lib/trade/morphology'
import { type Token, toTokens } from '@/lib/trade/tagger'
import { type Clause, toClauses } from './clause'
import { clauseFeatures, patternFeatures } from './clause-feature'
import { type NounPhrase, toNounPhrases } from './noun-phrase'
import { wordFeatures } from './word-feature'

/** A sentence as the model sees it. */
export type Reading = {
  readonly text: string
  readonly tokens: readonly Token[]
  readonly clauses: readonly Clause[]
  readonly phrases: readonly NounPhrase[]
  readonly isQuestion: boolean
  /** Those of the features below that no comma changes. */
  readonly steady: readonly string[]
  /** Names of the features that hold, of the sentence alone, but for its n-grams (ngram-feature.ts). */
  readonly own: readonly string[]
  /** Things it speaks of, each by its last word in the singular. */
  readonly things: ReadonlySet<string>
}

const INVERTED =
  /^(?:(?:so|and|but|okay|oh|well|now|then|right|um|uh|er|wait|hang on)\s+)*(?:(?:can|could|should|shall|will|would|do|does|did|is|isn't|are|aren't|was|were|has|have|am|don't|doesn't|won't) (?:i|you|we|it|that|this|there|they|he|she|the|your|people|everybody|anyone)\b|(?:why|how|what|where|who|which)(?:'s|'re|'d)? (?:do|does|did|is|are|about|if|would|should|happens|can|could|will|the|that|this|not|it|many|much|often|long|far|tight|hard|snug|come|else|for)\b|what for|how come)/i

/** @returns whether the sentence asks, by its mark or, where marks are missing, by its word order. */
export const asks = (text: string): boolean => {
  if (/\?["')]*\s*$/.test(text)) return true
  return !/[.!,;]/.test(text) && INVERTED.test(text.replaceAll('’', "'"))
}

const THINGS = new Set(['part', 'tool', 'material', 'noun', 'word'])

/** Features that no comma changes. */
const steadyFeatures = (text: string, tokens: readonly Token[], isQuestion: boolean): readonly string[] => {
  const harms = harmSigns(text).map(sign => `harm:${sign}`)
  return [...(isQuestion ? ['question'] : []), ...wordFeatures(tokens), ...harms, ...(harms.length > 0 ? ['harm'] : [])]
}

const asRead = (
  text: string,
  tokens: readonly Token[],
  isQuestion: boolean,
  steady: readonly string[],
  things: ReadonlySet<string>,
): Reading => {
  const clauses = toClauses(tokens, isQuestion)
  const own = new Set([...steady, ...clauseFeatures(tokens, clauses), ...patternFeatures(tokens, clauses)])
  return { text, tokens, clauses, phrases: toNounPhrases(tokens), isQuestion, steady, own: [...own], things }
}

/** Reads one sentence: words, clauses, and the features that hold of it alone. */
export const readSentence = (text: string): Reading => {
  const tokens = toTokens(text)
  const isQuestion = asks(text)
  const things = new Set<string>()
  for (const { tag, word } of tokens) if (THINGS.has(tag)) things.add(singular(word))
  return asRead(text, tokens, isQuestion, steadyFeatures(text, tokens, isQuestion), things)
}

/** Reads a sentence once more with commas put in: what they keep apart is told apart, the rest stays. */
export const readAnew = (text: string, { isQuestion, steady, things }: Reading): Reading =>
  asRead(text, toTokens(text), isQuestion, steady, things)
