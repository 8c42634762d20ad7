import type { Clause } from './clause'
import { countWords, isLooseEnded, sayTokens } from './clause-text'
import type { Reading } from './feature'

/** Markers whose clause stays, behind the action. */
export const KEEPS = new Set([
  'until',
  'till',
  'before',
  'after',
  'once',
  'when',
  'if',
  'unless',
  'while',
  'where',
  'as',
  'whenever',
])

/** Two words side by side that no phrase has: something was cut out between them. */
export const TORN =
  /\b(?:the|a|an|your|its) (?:the|a|an|your|its|with|of|from|at|by|where|when|and|or|is|are|it|them|this|these|i|you|we|she|he|they|until|before|if|was|were|to)\b|\b(?:of|with|from|into) (?:until|before|after|if|unless|and|is|was)\b|\b(?:towards?) (?:until|and|before)\b/i

/** Ends on what another sentence said: "if it isn't". */
const ELLIPTIC =
  /^if (?:it|they|that|he|she|not|so|this|any|there|you|one|the \w+)?\s?(?:isn't|is|aren't|are|is not|doesn't|don't|does not|does|do|won't|will|hasn't|has|had|hadn't|did|didn't|can't|can|is still|wasn't|was)?(?: not)?$/i

const isVerbal = (tag: string): boolean =>
  ['verb', 'third', 'past', 'auxiliary', 'modal', 'adjective', 'ing', 'particle'].includes(tag)

/** "until it stops", as it is put behind an action; empty where it says nothing there. */
export const conditionOf = (
  { text, tokens }: Reading,
  { from, to, marker }: Pick<Clause, 'from' | 'to' | 'marker'>,
): string => {
  if (marker === undefined || !KEEPS.has(marker)) return ''

  const said = sayTokens(text, tokens, from, to).replace(/^(?:and|then|so|but)\s+/i, '')
  if (ELLIPTIC.test(said)) return 'if necessary'
  const isWhole =
    /^(?:until|till|before|after)$/.test(marker) || tokens.slice(from, to).some(({ tag }) => isVerbal(tag))
  if (!isWhole || countWords(said) < 2 || isLooseEnded(said) || TORN.test(said)) return ''
  return /'(?:re|ve|ll|d|m)$|\b(?:as|like) i\b|^as (?:you can see|always|usual|if|though|a|they do|it does|we do|you do)\b|^if i (?:were|was|may)\b|^before (?:i forget|you ask)/i.test(
    said,
  )
    ? ''
    : said
}
