import { verbOf } from '@/lib/trade/morphology'
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

const TOLD_AS_PAST =
  /^(before|until|till|once|after|while|when) (you|it|they|anything|(?:the|your|an?) (?:single )?[a-z]+) (was|were|had|[a-z]+)\b/i
const BE: Readonly<Record<string, string>> = { was: 'is', were: 'are' }

/** "Before your hands went in", told of the one time filmed: before they go in. */
const inPresent = (said: string): string =>
  said.replace(TOLD_AS_PAST, (all, marker: string, who: string, verb: string) => {
    const be = BE[verb.toLowerCase()]
    if (be !== undefined) return `${marker} ${who} ${be}`
    const told = verb === 'had' ? { base: 'have', form: 'past' } : verbOf(verb)
    if (told?.form !== 'past' || told.base === verb) return all
    if (/^(?:you|they)$|[^s]s$/i.test(who)) return `${marker} ${who} ${told.base}`
    const third = told.base === 'have' ? 'has' : `${told.base}${/(?:ch|sh|s|x|o)$/.test(told.base) ? 'es' : 's'}`
    return `${marker} ${who} ${third}`
  })

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
    : inPresent(said)
}
