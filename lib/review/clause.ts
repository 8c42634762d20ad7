import { SUBJECTS } from '@/lib/trade/english'
import { wordSet } from '@/lib/trade/list'
import { PARTICLES } from '@/lib/trade/pairs'
import { DETERMINERS, FIRM, isAdverb, PREPOSITIONS } from './grammar'
import { isDistinguishing, type Thing, toThing } from './thing'
import { isVerb, NUMBER_WORDS, verbOf } from './words'

/** A clause being read: its verb, what it acts on, and what follows from the first preposition on. */
export type Clause = {
  verb: string
  particle: string | undefined
  phrases: string[][]
  rest: string[]
  /** Whether "back" stood with the particle. */
  isAgain: boolean
}

const PARTICLE_FROM: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    into: 'in',
    onto: 'on',
    in: 'in',
    on: 'on',
    from: 'off',
    clear: 'clear',
    over: 'over',
    to: 'to',
    around: 'around',
    round: 'around',
    through: 'through',
  },
  null,
)

const isNumber = (token: string): boolean => NUMBER_WORDS.has(token) || /^\d/.test(token)

const isNaming = (token: string): boolean => !DETERMINERS.has(token) && !isNumber(token)

const isEnd = (token: string | undefined): boolean =>
  token === undefined || PREPOSITIONS.has(token) || PARTICLES.has(token)

/** "The padlock you put on": who did it begins a clause of its own. */
const isDoer = (token: string): boolean => SUBJECTS.has(token) && !DETERMINERS.has(token)

/** "… following the photograph", "… keeping it square": how it is done. */
const isMeanwhile = (token: string, following: string | undefined): boolean =>
  /[a-z]{3}ing$/.test(token) &&
  following !== undefined &&
  (DETERMINERS.has(following) || NUMBER_WORDS.has(following)) &&
  verbOf(token) !== undefined

/** "Half a turn" and "half way" say how far; the half of a coupling is a part. */
const isTurn = (following: string | undefined): boolean =>
  following === 'a' || following === 'an' || following === 'way' || following === 'turn' || following === 'the'

/** How far or which way, after a particle: "draw the nut up anticlockwise", "wind it in two turns". */
const isManner = (token: string): boolean =>
  isAdverb(token) ||
  isNumber(token) ||
  /^(?:(?:anti-?|counter-?)?clockwise|again|hard|snug|firm|evenly|crosswise|straight)$/.test(token)

/** "Do the nuts up a flat at a time". */
const SMALL_AMOUNT = new Set('flat turn quarter third half little bit notch hair touch few click tooth step'.split(' '))

/** What is only said of a thing to tell it from the one before. */
const NEWNESS = wordSet('fresh spare clean replacement genuine matching matched identical')

/** A participle after the noun it describes: "the bar turned over". */
const isTrailing = (token: string, following: string | undefined): boolean =>
  !isVerb(token) && /(?:ed|ing|[a-z]n|wound)$/.test(token) && verbOf(token) !== undefined && isEnd(following)

/** "Let the oil run out" is running out, of the oil. */
const allowedIn = (verb: string, tokens: readonly string[]): Clause | undefined => {
  if (verb !== 'let' && verb !== 'allow') return undefined
  const named = tokens[0] === 'it' || tokens[0] === 'them' ? 0 : tokens.findIndex(isNaming)
  const at = tokens.findIndex((token, i) => i > named && isVerb(token))
  if (named < 0 || at < 0 || tokens.slice(0, at).some(token => PREPOSITIONS.has(token))) return undefined
  const clause = readClause(tokens[at] ?? '', tokens.slice(at + 1))
  return { ...clause, phrases: [[...tokens.slice(0, at)].filter(token => token !== 'to')] }
}

/** "Slide the half of the seal onto the hub", "take the block of wood away": where it goes stands after what it is of. */
const beyondOwner = (tokens: readonly string[]): string | undefined => {
  const next = tokens.find(token => PREPOSITIONS.has(token) || FIRM.has(token))
  if (next !== undefined && FIRM.has(next)) return next
  return next === 'into' || next === 'onto' || next === 'over' ? PARTICLE_FROM[next] : undefined
}

/** Reads particle, things and the rest from the words after a verb. */
export const readClause = (verb: string, tokens: readonly string[]): Clause => {
  const allowed = allowedIn(verb, tokens)
  if (allowed !== undefined) return allowed
  const clause: Clause = { verb, particle: undefined, phrases: [], rest: [], isAgain: false }
  const phrase: string[] = []
  let i = 0
  let isClosed = false
  const [next, second] = tokens
  if (next !== undefined && PARTICLES.has(next)) {
    const isTwo = next === 'back' && second !== undefined && PARTICLES.has(second)
    clause.particle = isTwo ? second : next
    clause.isAgain = isTwo
    i = isTwo ? 2 : 1
  }
  for (; i < tokens.length; i++) {
    const token = tokens[i] ?? ''
    const following = tokens[i + 1]
    // "A matched pair of belts" is belts.
    if ((token === 'pair' || token === 'couple') && following === 'of' && phrase.length > 0) {
      i++
      continue
    }
    if (isAdverb(token)) {
      isClosed = phrase.some(isNaming)
      continue
    }
    const isParticle =
      phrase.some(word => isNaming(word) || word === 'it' || word === 'them' || word === 'this' || word === 'that') &&
      clause.particle === undefined &&
      PARTICLES.has(token)
    if (
      isParticle &&
      (FIRM.has(token) ||
        following === undefined ||
        PREPOSITIONS.has(following) ||
        isManner(following) ||
        (following === 'a' && SMALL_AMOUNT.has(tokens[i + 2] ?? '')))
    ) {
      const isTwo =
        token === 'back' && (following === 'on' || following === 'in' || following === 'off' || following === 'out')
      const into =
        token === 'back' && (following === 'onto' || following === 'into') ? PARTICLE_FROM[following] : undefined
      clause.particle = isTwo ? following : (into ?? token)
      clause.isAgain = isTwo || into !== undefined
      clause.rest.push(...tokens.slice(i + (isTwo ? 2 : 1)))
      break
    }
    const isNamed = phrase.some(isNaming)
    // "A clear sheet", "a fresh 60 grit disc": more is said of what is named next.
    const isQualified = isNumber(token) && phrase.every(word => !isNaming(word) || NEWNESS.has(word))
    if (isQualified || (token === 'clear' && DETERMINERS.has(tokens[i - 1] ?? '') && !isEnd(following))) {
      phrase.push(token)
      continue
    }
    // "Push the brush up the flue": a way, where a noun follows.
    const isWay =
      isNamed &&
      (token === 'up' || token === 'down' || token === 'along') &&
      following !== 'all' &&
      DETERMINERS.has(following ?? '')
    if (
      PREPOSITIONS.has(token) ||
      isWay ||
      (isNamed &&
        (token === 'a' ||
          isDoer(token) ||
          isMeanwhile(token, following) ||
          (isNumber(token) && !(token === 'half' && !isTurn(following))) ||
          isTrailing(token, following)))
    ) {
      if (phrase.length > 0)
        clause.particle ??= PARTICLE_FROM[token] ?? (token === 'of' ? beyondOwner(tokens.slice(i + 1)) : undefined)
      if (token === 'to' && (following === 'off' || following === 'on')) clause.particle = following
      clause.rest.push(...tokens.slice(i))
      break
    }
    if (!isClosed) phrase.push(token)
  }
  if (phrase.some(isNaming) || phrase.includes('it') || phrase.includes('them')) clause.phrases.push(phrase)
  return clause
}

/** "… while tightening its lock nut" is something done as well. */
export const meanwhileIn = (rest: readonly string[]): Clause | undefined => {
  const at = rest.findIndex(
    (token, i) => (token === 'while' || token === 'by') && rest[i + 1]?.endsWith('ing') === true,
  )
  const verb = at < 0 ? undefined : verbOf(rest[at + 1] ?? '')
  return verb === undefined ? undefined : readClause(verb, rest.slice(at + 2))
}

/** What stands for the thing it is part of: "both halves of the old seal". */
const PORTIONS = new Set('half part piece pair rest remains remainder bit bits length stack bunch set'.split(' '))

/** The words after "of", up to where something else begins. */
const ownerOf = (rest: readonly string[]): readonly string[] => {
  if (rest[0] !== 'of') return []
  const end = rest.findIndex((token, i) => i > 0 && (PREPOSITIONS.has(token) || PARTICLES.has(token)))
  return rest.slice(1, end < 0 ? rest.length : end)
}

/** @returns the things of a clause; "suction and delivery hoses" are two kinds of hose, "the back one" is one more of the first. */
export const thingsOf = ({ phrases, rest }: Clause, before: Thing | undefined): readonly Thing[] =>
  phrases.map((phrase, i) => {
    const last = phrase.at(-1) ?? ''
    const first = phrases[0]?.at(-1)
    if (i > 0 && first !== undefined && (last === 'one' || last === 'ones'))
      return toThing([...phrase.slice(0, -1), first])
    if (before !== undefined && before.head !== '' && (phrase[0] === 'its' || phrase[0] === 'their'))
      return toThing([before.head, ...phrase])
    const thing = toThing(phrase)
    if (i === phrases.length - 1 && thing.words.length === 1 && PORTIONS.has(thing.head)) {
      const owner = toThing(ownerOf(rest))
      if (owner.head !== '') return owner
    }
    const head = phrases[i + 1]?.at(-1)
    return head !== undefined && isDistinguishing(thing.head) ? toThing([...phrase, head]) : thing
  })

/** @returns what goes along: "with its screws". */
export const alongIn = (rest: readonly string[]): readonly Thing[] => {
  const at = rest.indexOf('with')
  if (at < 0) return []
  const phrase = rest.slice(at + 1)
  const end = phrase.findIndex((token, i) => PREPOSITIONS.has(token) || (i > 0 && PARTICLES.has(token)))
  return [toThing(end < 0 ? phrase : phrase.slice(0, end))]
}
