import { AUXILIARIES, CHAT, CONDITIONS, FILLERS, MODALS, QUESTION_WORDS, SUBJECTS } from '@/lib/trade/english'
import { MATERIAL_HEADS } from '@/lib/trade/materials'
import { type Act, FASTENERS, PARTICLES } from '@/lib/trade/pairs'
import { PART_HEADS } from '@/lib/trade/parts'
import { TOOL_HEADS } from '@/lib/trade/tools'
import { actsFor, distantParticle, hingedActs, isWording, NO_ACTS, threadedActs } from './acts'
import { alongIn, type Clause, meanwhileIn, readClause, thingsOf } from './clause'
import { DETERMINERS, FIRM, isAdverb, LEADS, NEGATIONS, NOUNS_TOO, PREPOSITIONS, SKIPPED, SURE_VERBS } from './grammar'
import { onceForText } from './memo'
import type { Thing } from './thing'
import { isSmall, isVerb, NUMBER_WORDS, tokensOf, verbOf } from './words'

/** One thing a text tells to do: "take the upper tray off" is verb take, particle off, thing "upper tray". */
export type Action = {
  /** Base form. */
  readonly verb: string
  readonly particle?: string
  readonly acts: ReadonlySet<Act>
  readonly things: readonly Thing[]
  /** What follows, from the first preposition on: "from the hub", "with its screws". */
  readonly rest: readonly string[]
  /** What goes along: "with its screws". */
  readonly along: readonly Thing[]
  /** Said to go back where it was: "push the cap back on". */
  readonly isAgain: boolean
}

type Segment = { readonly tokens: readonly string[]; readonly after: string }

const isMark = (token: string): boolean => /^[,;:.!?()]$/.test(token)

/** Splits at punctuation and at "and", "then", "but"; `after` is what stood before the segment. */
const segmentsOf = (tokens: readonly string[]): readonly Segment[] => {
  const segments: Segment[] = []
  let now: string[] = []
  let after = '.'
  const isJoint = (token: string) => token === 'and' || token === 'then' || token === 'but' || isMark(token)
  for (const token of tokens) {
    if (!isJoint(token)) {
      now.push(token)
      continue
    }
    if (now.length > 0) segments.push({ tokens: now, after })
    if (now.length > 0 || isMark(token) || after === '.' || after === ',') after = token
    now = []
  }
  if (now.length > 0) segments.push({ tokens: now, after })
  return segments
}

const isFresh = ({ after }: Segment): boolean => after !== 'and' && after !== ','

const isArticleLike = (token: string): boolean =>
  DETERMINERS.has(token) || NUMBER_WORDS.has(token) || /^\d/.test(token) || isAdverb(token)

/** "Out and back" is one movement; "back off" is a verb. */
const FIRM_AFTER = new Set(['off', 'out', 'away'])

const NO_VERB = new Set([...SUBJECTS, ...AUXILIARIES, ...MODALS, ...QUESTION_WORDS, ...CONDITIONS, ...FILLERS, ...CHAT])
const ARTICLES = new Set(
  'the a an your its each both all any some every these those this that two three four'.split(' '),
)

const NOUNS = new Set([
  ...PART_HEADS,
  ...TOOL_HEADS.flatMap(head => head.split(' ')),
  ...MATERIAL_HEADS.flatMap(head => head.split(' ')),
])
const isNoun = (token: string): boolean => NOUNS.has(token) || token.endsWith('s') || token.includes('-')

/** No noun has an article after it: "wave a broom", "whack the pin out" begin with verbs, whether or not a list has them. */
const isUnknownVerb = (token: string, next: string | undefined): boolean =>
  next !== undefined &&
  (ARTICLES.has(next) ||
    NUMBER_WORDS.has(next) ||
    ((PREPOSITIONS.has(next) || PARTICLES.has(next)) && next !== 'of' && next !== 'for' && !isNoun(token))) &&
  /^[a-z]{3,}(?:-[a-z]+)*$/.test(token) &&
  !isSmall(token) &&
  !isAdverb(token) &&
  !PREPOSITIONS.has(token) &&
  !NO_VERB.has(token) &&
  !/(?:ing|ed|ness|tion|ment|ity)$/.test(token) &&
  (next === 'the' || !/(?:er|or)$/.test(token))

/** "Disconnect locked out", "battery unplugged": a noun and what was done to it; "replace worn parts" goes on. */
const isAbsolute = (segment: Segment, token: string, next: string | undefined): boolean => {
  if (segment.after === '.' || next === undefined || !next.endsWith('ed') || isVerb(next)) return false
  const after = segment.tokens[segment.tokens.indexOf(token) + 2]
  return verbOf(next) !== undefined && (after === undefined || PARTICLES.has(after) || PREPOSITIONS.has(after))
}

const isVerbHere = (segment: Segment, isFirst: boolean, token: string, next: string | undefined): boolean => {
  if (isAbsolute(segment, token, next)) return false
  if (!isVerb(token)) return isFirst && isUnknownVerb(token, next)
  if (
    segment.after === ',' &&
    !isFirst &&
    !SURE_VERBS.has(token) &&
    next !== undefined &&
    !isArticleLike(next) &&
    !PARTICLES.has(next) &&
    !PREPOSITIONS.has(next)
  )
    return false
  if (isFirst || isFresh(segment) || SURE_VERBS.has(token) || !NOUNS_TOO.has(token)) return true
  if (PARTICLES.has(token) && !FIRM_AFTER.has(next ?? '')) return false
  if (next !== undefined && PARTICLES.has(next)) return isWording(token, next)
  return next !== undefined && (isArticleLike(next) || next === 'until' || next === 'at' || next === 'for')
}

/** Whether a comma at this segment divides a list: an "and" follows before the next full stop. */
const isListed = (segments: readonly Segment[], at: number): boolean => {
  for (const { after } of segments.slice(at + 1)) {
    if (after === 'and') return true
    if (after !== ',') return false
  }
  return false
}

/** A verb that has no object yet and takes that of the next: "lift out and rinse the tray", but not "switch on and …". */
const isWaiting = ({ verb, phrases, rest, particle }: Clause): boolean =>
  verb !== 'plug' && phrases.length === 0 && rest.length === 0 && particle !== 'on' && particle !== 'off'

const addTo = (group: readonly Clause[], tokens: readonly string[], isList: boolean): void => {
  // "Up and down": the same thing goes both ways.
  if (PARTICLES.has(tokens[0] ?? '') && tokens.length < 3) {
    for (const clause of group) clause.rest.push(...tokens)
    return
  }
  const more = readClause('', tokens)
  for (const clause of group) {
    if (clause.phrases.length > 0 && more.phrases.length > 0 && clause.rest.length === 0 && isList)
      clause.phrases.push(...more.phrases)
    else clause.rest.push(...tokens)
    if (clause.phrases.at(-1) === more.phrases.at(-1)) clause.rest.push(...more.rest)
    if (more.particle !== undefined && (FIRM.has(more.particle) || more.isAgain)) {
      clause.isAgain ||= more.isAgain && clause.particle === undefined
      clause.particle ??= more.particle
    }
  }
}

/** "Turn the valve clockwise to close it" is closing. */
const TURNS = new Set('turn rotate twist swing move flip push pull press lift squeeze slide'.split(' '))
const PURPOSES = new Set('open close shut loosen tighten lock unlock release remove'.split(' '))

/** "Turn the nut until it is loose" is loosening. */
const RESULTS: ReadonlyMap<string, string> = new Map([
  ['loose', 'loosen'],
  ['free', 'loosen'],
  ['tight', 'tighten'],
  ['snug', 'tighten'],
  ['open', 'open'],
  ['closed', 'close'],
  ['shut', 'close'],
])
const BECOMES = new Set('is are comes come feels feel sits sit runs run stays gets'.split(' '))

/** "Turn it to the fully closed position". */
const positionOf = (rest: readonly string[]): string | undefined => {
  const at = rest.lastIndexOf('position')
  return at < 2 || !rest.slice(0, at).includes('to') ? undefined : RESULTS.get(rest[at - 1] ?? '')
}

/** "… until the belt is tight": the word after the verb of state, adverbs passed over. */
const resultOf = (rest: readonly string[]): string | undefined => {
  const position = positionOf(rest)
  if (position !== undefined) return position
  const from = rest.findIndex(token => token === 'until' || token === 'till')
  const at = from < 0 ? -1 : rest.findIndex((token, i) => i > from && BECOMES.has(token))
  const word = at < 0 ? undefined : rest.slice(at + 1).find(token => !ADVERBS.has(token) && !isAdverb(token))
  return word === undefined ? undefined : RESULTS.get(word)
}
const ADVERBS = new Set(['quite', 'just', 'hand', 'well', 'again'])

const purposeOf = ({ verb, rest }: Clause): string | undefined => {
  if (!TURNS.has(verb)) return undefined
  const result = resultOf(rest)
  if (result !== undefined) return result
  const at = rest.indexOf('to')
  const purpose = at < 0 ? undefined : rest[at + 1]
  return purpose !== undefined && PURPOSES.has(purpose) ? purpose : undefined
}

/** "Drive the four screws" tightens them; "run the pump" does not. */
const DRIVES = new Set('drive run zip gun send spin sink start work'.split(' '))
const DRIVEN: ReadonlySet<Act> = new Set<Act>(['tighten', 'refit', 'connect', 'close'])

/** "Tap the pin flush" drives it home. */
const flushIn = ({ phrases }: Clause): string | undefined =>
  phrases.some(phrase => phrase.length > 1 && phrase.at(-1) === 'flush') ? 'home' : undefined

const CAUGHT = /^(?:snaps?|clicks?|latch(?:es)?|catch(?:es)?)$/

const finish = (clause: Clause, before: Thing | undefined): Action => {
  const { rest } = clause
  const purpose = purposeOf(clause)
  const verb = purpose ?? clause.verb
  const particle =
    purpose === undefined ? (clause.particle ?? distantParticle(verb, rest) ?? flushIn(clause)) : undefined
  const along = alongIn(rest)
  // "Plug the line with a blanking plug" connects nothing.
  const isCapped = (verb === 'plug' || verb === 'cap') && particle === undefined && along.length > 0
  const things = thingsOf(clause, before)
  const isDriven =
    DRIVES.has(verb) && particle !== 'out' && particle !== 'off' && things.some(({ head }) => FASTENERS.has(head))
  // "Swing the lid up until it latches" closes it, wherever its hinge is.
  const isCaught = rest.includes('until') && rest.some(token => CAUGHT.test(token))
  const acts = isCapped
    ? NO_ACTS
    : isDriven
      ? DRIVEN
      : (hingedActs(verb, isCaught || (particle === 'up' && rest[0] === 'into') ? 'shut' : particle, things) ??
        threadedActs(verb, particle, things) ??
        actsFor(verb, particle))
  return {
    verb,
    ...(particle === undefined ? {} : { particle }),
    acts,
    things,
    rest,
    along,
    isAgain: clause.isAgain || particle === 'back' || /^re-?[a-z]{3}/.test(verb),
  }
}

/** "Go up with the platform" goes somewhere; "go ahead and lift" does not. */
const isGoing = (tokens: readonly string[], i: number): boolean =>
  tokens[i] === 'go' && tokens[i + 1] !== undefined && tokens[i + 1] !== 'ahead' && tokens[i + 1] !== 'and'

const firstWord = ({ tokens }: Segment): number => {
  let i = 0
  while (i < tokens.length && ((SKIPPED.has(tokens[i] ?? '') && !isGoing(tokens, i)) || isAdverb(tokens[i] ?? ''))) i++
  return i
}

/**
 * Reads what an instruction tells to do, in order. Conditions ("once it is cool, …") and prohibitions are left out.
 *
 * @param text an instruction as a sheet writes it, imperative
 * @returns one action a verb; an object shared by several verbs ("lift out and rinse the tray") is given to each
 */
export const actionsOf = onceForText((text: string): readonly Action[] => {
  const clauses: Clause[] = []
  let group: Clause[] = []
  let isSkipping = false
  let isFirst = true
  const segments = segmentsOf(tokensOf(text))
  for (const [at, segment] of segments.entries()) {
    if (segment.after !== 'and') isSkipping = false
    const i = firstWord(segment)
    const token = segment.tokens[i]
    if (token === undefined) continue
    const isCondition = LEADS.has(token)
    if (isCondition || NEGATIONS.has(token) || (token === 'do' && segment.tokens[i + 1] === 'not')) {
      isSkipping = true
      isFirst = isFresh(segment) && isCondition
      continue
    }
    if (isSkipping) continue
    const tail = segment.tokens.slice(i + 1)
    if (isVerbHere(segment, isFirst, token, tail[0])) {
      const clause = readClause(token, tail)
      const isShared = group.length > 0 && group.every(isWaiting)
      if (isShared) for (const earlier of group) earlier.phrases.push(...clause.phrases)
      group = isShared ? [...group, clause] : [clause]
      clauses.push(clause)
      const also = meanwhileIn(clause.rest)
      if (also !== undefined) clauses.push(also)
    } else addTo(group, segment.tokens.slice(i), segment.after === 'and' || isListed(segments, at))
    isFirst = false
  }
  const actions: Action[] = []
  for (const clause of clauses) actions.push(finish(clause, actions.at(-1)?.things.at(-1)))
  return actions
})

/** @returns the base form of the verb a text begins with, adverbs and conditions skipped; undefined where there is none. */
export const leadingVerb = (text: string): string | undefined => actionsOf(text)[0]?.verb
