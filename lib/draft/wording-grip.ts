import type { Clause } from './clause'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { withArticle, yours } from './wording-place'

const TIGHT = /tight$/
const GRIP = /^(?:and |just |only |but )*((?:by )?(?:hand|fingers?)[- ]tight)(?: only| no more| that's all)?$/i
const LONGEST_GRIP = 7
/** More words are no name. */
const LONGEST_NAME = 5

/** "Finger tight": how far, never a finger to tighten. */
export const gripOf = ({ text, tokens }: Reading, { from, to }: Clause): string | undefined => {
  if (to - from > LONGEST_GRIP || !tokens.slice(from, to).some(({ word }) => TIGHT.test(word))) return undefined
  return GRIP.exec(sayTokens(text, tokens, from, to))?.[1]
}

/** "Four screws |": what a clause names, and nothing else. */
export const namedAlone = ({ text, tokens }: Reading, clause: Clause | undefined): string | undefined => {
  if (clause?.frame !== 'fragment' || clause.to - clause.from > LONGEST_NAME) return undefined
  return tokens.slice(clause.from, clause.to).some(({ tag }) => /^(?:noun|part|material|tool)$/.test(tag))
    ? withArticle(yours(sayTokens(text, tokens, clause.start, clause.to)))
    : undefined
}
