import { CAUSES } from '@/lib/trade/english'
import { singular } from '@/lib/trade/morphology'
import type { Clause } from './clause'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import * as kind from './wording-kinds'
import { withArticle, yours } from './wording-place'
import { isTelling, objectOf } from './wording-stretch'

/** Where fasteners are, not where they go: "on the hood", "in each corner". */
const SITS =
  /^(?:on|in|at|under|underneath|behind|inside|below|above|along|round|around|through|down|across|per|either|each)$/

/** What a hand does once fasteners are out: the part swings, lifts or comes away. */
const OPENS =
  /\b(?:swing|hinge|fold|tip|tilt|flip|lean)\w*\b[^,;]{0,40}? back on (?:its|the|their) (?:hinges?|stays?|strap|cord|cable)\b|\b(?:come|fall|pop|swing|fold|hinge|tip|tilt|lift|pull|peel|flip|lean|draw|slide|drop|lower|ease|lever|prise|pry|wiggle|work|knock|tap|roll|spin|take|remove|open|withdraw|unhook|release|put)\w*\b[^,;]{0,40}?\b(?:off|out|away|aside|apart|clear|free|down|open|back(?! (?:on|in|into|onto|over|to|together|up)\b))\b|\b(?:remove|withdraw|open|unhook)\b|\bbreak\w* (?:it|them|those|loose|free)\b/i
const CLOSES =
  /\b(?:put|push|press|slide|swing|fold|drop|pop|lower|set)\w*\b[^,;]{0,40}?\b(?:back (?:on(?! (?:its|the|their) (?:hinges?|stays?|strap|cord|cable)\b)|in|into|onto|over|together)|home|shut|closed)\b|\b(?:close|shut|refit|snug|nip|torque|tighten)\w*\b/i

/** Fasteners named alone at the head of a clause, and what is done to them: undefined where nothing tells. */
export type Fasteners = {
  readonly order: string | undefined
  readonly isGuess: boolean
  /** Nothing tells what is done to them. */
  readonly isOpen: boolean
  /** Named without a place: another order has to bear it out. */
  readonly isWeak: boolean
  /** Last clause it takes in. */
  readonly until: number
}

/** "Two more screws hold the block". */
const MORE = /^\S+ more /i
const NOT_BARE = /\b(?:new|fresh|more|other|spare|longer?|shorter?|no|not|never)\b/i

/** The end of what fasteners are named by, and what places them: tokens [from, at), [at, to). */
const placedAt = ({ tokens, text }: Reading, { from, start, to }: Clause, isHeld: boolean): number | undefined => {
  const { tag, word } = tokens[start] ?? {}
  if (tag !== 'number' && !(tag === 'determiner' && /^(?:the|both|all|these|those)$/.test(word ?? ''))) return undefined
  const at = tokens.findIndex(({ word: other }, i) => i > start && i < to && SITS.test(other))
  const end = at < 0 ? to : at
  const thing = sayTokens(text, tokens, start, end)
  const last = thing.split(' ').at(-1) ?? ''
  const named = sayTokens(text, tokens, from, end)
  if (at < 0 && tag !== 'number' && singular(last) === last) return undefined
  if (end - start > 6 || !kind.FASTENERS.test(last) || NOT_BARE.test(isHeld ? named.replace(MORE, '') : named))
    return undefined
  if (at < 0) return end
  const opens = tokens[at + 1]
  return opens !== undefined && at + 1 < to && opens.tag === 'determiner' ? end : undefined
}

/** "A driver that really fits" fits nothing. */
const A_FIT = /\b(?:that|which|really|actually|properly|never) fits?\b/gi

/** "Three screws hold the burr": they are what does it. */
const HOLDS = /^(?:hold|keep|secure|retain|fix|fasten|clamp|lock|mount|join|carry|support)$/
/** "Those nuts get 35": told of them, by other rules. */
const WANTS = /^(?:stop|take|need|want|get|go|come|sit|stay)$/

const wayOf = (texts: readonly (string | undefined)[]): 'off' | 'on' | undefined => {
  for (const text of texts) {
    if (text === undefined) continue
    const [off, on] = [OPENS.test(text), CLOSES.test(text)]
    if (off !== on) return off ? 'off' : 'on'
    const way = off ? undefined : kind.direction([text.replace(A_FIT, '')])
    if (way !== undefined) return way
  }
  return undefined
}

/** "17 millimetre socket", named alone behind the fasteners: what turns them. */
const toolBehind = ({ tokens, text }: Reading, clause: Clause | undefined): string | undefined => {
  if (clause === undefined || clause.frame !== 'fragment' || clause.marker !== undefined) return undefined
  const said = sayTokens(text, tokens, clause.start, clause.to)
  if (!kind.HANDY.test(said) || said.split(' ').length > 5) return undefined
  return /^half-/i.test(said) ? `a ${said}` : kind.withA(yours(said), said)
}

/**
 * "Two bolts on the hood, 17 millimetre socket, and swing the hood back": fasteners named at the head of what undoes are
 * undone, at the head of what closes fitted; where neither the sentence nor those around it tell, nobody knows.
 *
 * @param i index of the clause among `clauses`
 * @returns undefined where the clause is no such name
 */
export const fastenersAt = (
  reading: Reading,
  clauses: readonly Clause[],
  i: number,
  around: readonly (string | undefined)[],
): Fasteners | undefined => {
  const clause = clauses[i]
  if (clause === undefined || clause.marker !== undefined) return undefined
  if (clause.frame !== 'nominal' && clause.frame !== 'fragment') return undefined
  const { text, tokens } = reading
  const next = tokens[clause.to]
  const said = next !== undefined && !next.isAfterPause && next.tag !== 'and' ? (next.base ?? next.word) : ''
  const isSubject = HOLDS.test(said)
  const end = placedAt(reading, clause, isSubject)
  if (end === undefined || WANTS.test(said)) return undefined
  const tool = toolBehind(reading, clauses[i + 1])
  const until = tool === undefined && !isSubject ? i : i + 1
  const rest = clauses
    .slice(until + 1)
    .filter(({ from, marker }) => !CAUSES.has(marker ?? '') && tokens[from]?.word !== 'or')
    .map(({ from, to }) => sayTokens(text, tokens, from, to))
  const own = wayOf([rest.join(' ')])
  const isBare = end === clause.to
  if (isSubject && own !== 'off') return { order: undefined, isGuess: false, isOpen: false, isWeak: true, until }
  // Without a place they are named only where what follows tells what becomes of them.
  if (isBare && own === undefined) return undefined
  const way = own ?? wayOf(around) ?? (kind.tellsFitting([text, ...around]) ? undefined : 'off')
  if (way === undefined) return { order: undefined, isGuess: false, isOpen: true, isWeak: isBare, until }
  const thing = withArticle(yours(sayTokens(text, tokens, clause.start, clause.to)))
  const order = `${way === 'off' ? 'undo' : 'fit'} ${thing}${tool === undefined ? '' : ` with ${tool}`}`
  return { order, isGuess: own === undefined, isOpen: false, isWeak: isBare, until }
}

/** What holds a part: "is held down by", "is just", "has", "'s got". */
const HELD =
  /^(?:is|are|'s|'re|has|have|got|just|only|both|all|held|fixed|secured|fastened|kept|hung|on|down|in|together|by|with)$/

/** "Two bolts missing", "two screws are seized": what they are like, not what they hold. */
const HOW_IT_IS = /^(?:is|are|was|were|have|has|'re|missing|gone|loose|short|seized|stripped|broken)$/

/** "The side panels are four quarter-turn clips", "the cover's held by two screws": the part with what holds it. */
export const heldBy = (
  { tokens, text, clauses }: Reading,
  around: readonly (string | undefined)[],
): { readonly text: string; readonly isGuess: true } | undefined => {
  const from = clauses[0]?.start ?? 0
  const at = tokens.findIndex(({ word }, i) => i > from && i < from + 7 && /^(?:is|are|'s|'re|has|have)$/.test(word))
  if (at < 0) return undefined
  let number = at
  while (number < tokens.length && HELD.test(tokens[number]?.word ?? '')) number++
  const pause = tokens.findIndex(({ isAfterPause, tag }, i) => i > number && (isAfterPause || tag === 'and'))
  const to = pause < 0 ? tokens.length : pause
  const end = tokens.findIndex(({ word }, i) => i > number && i < Math.min(to, number + 5) && kind.FASTENERS.test(word))
  if (tokens[number]?.tag !== 'number' || end < 0 || HOW_IT_IS.test(tokens[end + 1]?.word ?? '')) return undefined
  const held = sayTokens(text, tokens, number, to)
  const thing = objectOf(sayTokens(text, tokens, from, at))
  if (thing === undefined || /^(?:it|them)$/.test(thing) || NOT_BARE.test(held) || isTelling(tokens, from, at))
    return undefined
  return { text: `${wayOf(around) === 'on' ? 'refit' : 'remove'} ${thing}, ${held}`, isGuess: true }
}

/** "There are eight screws round the blower": what is done to them is as the sentences around it suggest, mostly undone. */
export const fastenersThere = (
  { tokens, text }: Reading,
  around: readonly (string | undefined)[],
): { readonly text: string; readonly isGuess: true } | undefined => {
  const at = tokens.findIndex(({ word }) => word === 'there')
  const number = tokens.findIndex(({ tag }, i) => i > at + 1 && i < at + 4 && tag === 'number')
  if (at < 0 || at > 2 || number < 0 || !/^(?:'s|'re|is|are)$/.test(tokens[at + 1]?.word ?? '')) return undefined
  const pause = tokens.findIndex(({ isAfterPause }, i) => i > number && isAfterPause)
  const to = pause < 0 ? tokens.length : pause
  const place = tokens.findIndex(({ word }, i) => i > number && i < to && SITS.test(word))
  const thing = sayTokens(text, tokens, number, place < 0 ? to : place)
  if (!kind.FASTENERS.test(thing.split(' ').at(-1) ?? '') || NOT_BARE.test(thing)) return undefined
  const verb = wayOf(around) === 'on' ? 'fit' : 'undo'
  return { text: `${verb} the ${sayTokens(text, tokens, number, to)}`, isGuess: true }
}
