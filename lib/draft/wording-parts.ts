import type { Token } from '@/lib/trade/tagger'
import { NUMBERS } from './bound-words'
import type { Clause } from './clause'
import { countWords, isContrasted, isLooseEnded, isRefusedAhead, sayTokens } from './clause-text'
import type { Reading } from './feature'
import { conditionOf, KEEPS, TORN } from './wording-condition'
import { fastenersAt } from './wording-fastener'
import { gripOf, namedAlone } from './wording-grip'
import { orderOf } from './wording-phrase'
import { tellsWay } from './wording-place'
import { stateOrder } from './wording-placing'
import { actionFrom, isIdleVerb, orderFrom } from './wording-verb'

const OPENS_BADLY =
  /^(?:\S+ )(?:is|are|was|were|has|had|will|would|can|could|should|must|didn't|don't|doesn't|isn't|of)\b|^(?!let|give|show|help)\S+ (?:i|we|you|she|he|they)\b|^\S+ (?:it|them) (?:is|are|should|will|must|can|was|has)\b/i

/** "sign every six months we come back": another's doing runs on into the order. */
const RUNS_ON =
  /(?<!\b(?:until|before|after|when|where|while|as|if|once|that|which|what|unless|how|than|because|so)(?: just)?) (?:i|we|you) (?:[a-z]+)\b.*$/i

/** "Nuts | get twelve newton metres": what they are given, never an order. */
const GETS_LIMIT = new RegExp(
  `^(?:get|want|take|need) (?:about |only |around )?(?:\\d[\\d.]*|(?:[a-z]+-)?(?:${NUMBERS}|hundred))[ -](?:[\\w-]+ ){0,3}?(?:newton|foot|inch|pound|n\\.?m)`,
  'i',
)

/** Whether a phrase can stand as an order on the sheet. */
export const isSound = (phrase: string): boolean =>
  phrase.includes(' ') &&
  !TORN.test(phrase) &&
  !isLooseEnded(phrase) &&
  !OPENS_BADLY.test(phrase) &&
  !/^(?:(?:strike|scratch) that|let me)\b/.test(phrase) &&
  !GETS_LIMIT.test(phrase) &&
  !/(?:^| )(?:the|an?) (?:['’]s|which|none|nothing|who)\b/i.test(phrase) &&
  !/^(?:come|go) (?:off|out|away|apart|up|down|loose|free|in|on|back|and|to)?$/.test(phrase)

/** "never a nail", "not too tight", "flat side down": how an action is meant, said right behind it. */
const refusalOf = ({ text, tokens }: Reading, { from, to, frame }: Clause): string => {
  if (frame !== 'fragment' && frame !== 'nominal') return ''
  // "Not just the switch" refuses nothing.
  if (/^(?:just|only|merely)$/.test(tokens[from + 1]?.word ?? '')) return ''
  const said = sayTokens(text, tokens, from, to)
  if (tellsWay(said) && countWords(said) < 8) return said
  return /^(?:but )?(?:not|never|no|without)\b/i.test(said) &&
    countWords(said) > 1 &&
    countWords(said) < 7 &&
    !isLooseEnded(said)
    ? said
    : ''
}

/** "let the water | find its way", "before you ever | touch it", "try | and pull it off": one order in two clauses. */
const runsOn = (tokens: readonly Token[], clause: Clause, next: Clause): boolean => {
  const [first, last, verb] = [tokens[next.from], tokens[clause.to - 1], tokens[clause.verb ?? -1]]
  if (first === undefined || first.isAfterPause || next.frame !== 'order') return false
  if (verb?.word === 'try' && last === verb) return first.word === 'and'
  const isLetting = verb?.word === 'let' && last !== verb
  return first.tag === 'verb' && (isLetting || (clause.marker !== undefined && last?.word === 'ever'))
}

/** "of | which bolt was which": the question belongs to the word before. */
const widened = (reading: Reading, clauses: readonly Clause[], i: number): Clause | undefined => {
  const [clause, next] = [clauses[i], clauses[i + 1]]
  if (clause === undefined || next === undefined) return clause
  const { tokens } = reading
  const first = tokens[next.from]
  const last = tokens[clause.to - 1]
  if (runsOn(tokens, clause, next)) return { ...clause, to: next.to }
  const isOpen = last?.tag === 'preposition' || last?.tag === 'verb' || last?.tag === 'to'
  return isOpen && first !== undefined && !first.isAfterPause && /^(?:which|where|what|how|when)$/.test(first.word)
    ? { ...clause, to: next.to }
    : clause
}

/** "they lift up | and come away": goes on telling what things do. */
const goesOnTelling = (reading: Reading, clause: Clause, before: Clause | undefined): boolean => {
  const { tokens } = reading
  if (before === undefined || before.frame !== 'statement' || clause.frame !== 'order') return false
  if (tokens[clause.from]?.tag !== 'and' || tokens[clause.from]?.word === 'so') return false
  const telling = tokens.slice(before.start, before.to)
  const subject = telling[0]?.word ?? ''
  return telling.some(({ tag }) => tag === 'modal') || /^(?:they|these|those)$/.test(subject)
}

const isAgent = (token: Token | undefined): boolean => /^(?:i|we|you)$/.test(token?.word ?? '')

/** "if it's tight | I add a shim" in one breath. */
const parted = (reading: Reading, clause: Clause): readonly Clause[] => {
  const { tokens } = reading
  if (clause.marker === undefined || !KEEPS.has(clause.marker)) return [clause]
  for (let i = clause.start + 2; i < clause.to; i++) {
    if (
      !isAgent(tokens[i]) ||
      !tokens.slice(clause.start, i).some(({ tag }) => /^(?:verb|third|past|auxiliary|modal)$/.test(tag))
    )
      continue
    if (/^(?:verb|preposition|condition|question|negation|and|to)$/.test(tokens[i - 1]?.tag ?? '')) continue
    const verb = actionFrom(tokens, i + 1, clause.to)
    if (verb === undefined || isIdleVerb(tokens[verb])) continue
    const isNegated = tokens.slice(i, verb).some(({ tag }) => tag === 'negation')
    return [
      { ...clause, to: i },
      { from: i, to: clause.to, start: i, frame: 'we', verb, marker: undefined, isNegated },
    ]
  }
  return [clause]
}

const SPOKEN_TO = new Set(['order', 'you', 'i', 'we', 'past'])

/** Whether "not" stands before the action; behind it ("in the drum, not the drain") it is part of what is said. */
const isForbidden = ({ tokens }: Reading, { from, verb, frame }: Clause): boolean =>
  SPOKEN_TO.has(frame) &&
  verb !== undefined &&
  (isRefusedAhead(tokens, from) ||
    tokens
      .slice(from, verb)
      .some(({ tag, word }) => tag === 'negation' && !/^(?:no|without|nothing|none|hardly)$/.test(word)))

const SUBJECT_OF_PURPOSE =
  /^(?:nobody|nothing|none|everybody|everyone|anybody|anyone|somebody|someone|it|they|he|she|that|there|this)$/

const CAN = /^(?:can|could)$/
const CAN_OR_NOT = /^(?:can|can't|don't|won't|could|couldn't|wouldn't|not)$/
const TELLS: ReadonlySet<string> = new Set(['third', 'modal', 'auxiliary', 'verb'])

/** "…, so nobody plugs it back in", "so the fresh edge points out": what for, never what is done. */
const isPurpose = ({ tokens }: Reading, { from, to, frame, isNegated }: Clause, hasOrder: boolean): boolean => {
  if (from === 0 || tokens[from]?.word !== 'so') return false
  const isSaid = tokens[from + 1]?.word === 'that'
  const at = isSaid ? from + 2 : from + 1
  const { word = '', tag } = tokens[at] ?? {}
  const rest = tokens.slice(at, to)
  if (SUBJECT_OF_PURPOSE.test(word)) return rest.length > 1
  if (/^(?:you|we|i)$/.test(word)) return rest.some(other => (hasOrder ? CAN_OR_NOT : CAN).test(other.word))
  if (!hasOrder && !isSaid) return false
  const isTelling = isSaid || frame !== 'passive' || isNegated
  return tag === 'determiner' && isTelling && rest.some(other => TELLS.has(other.tag))
}

/** "to keep fingers out | and catch the fluff": still what for. */
const goesOnForPurpose = ({ tokens }: Reading, clause: Clause, before: Clause | undefined): boolean =>
  before !== undefined &&
  before.frame === 'statement' &&
  (tokens[before.from]?.tag === 'to' || tokens[before.from]?.word === 'there') &&
  tokens
    .slice(before.from, before.to)
    .some(({ tag }, i) => tag === 'to' && tokens[before.from + i + 1]?.tag === 'verb') &&
  tokens[clause.from]?.word === 'and' &&
  tokens[clause.from]?.isAfterPause === false

/** "Changing the filter on the pump": a deed named, as titles and captions do. */
const namedDeed = (reading: Reading, { frame, start, to }: Clause): string | undefined => {
  const [deed, article] = reading.tokens.slice(start, to)
  const isNamed =
    (frame === 'nominal' || frame === 'fragment') &&
    deed?.tag === 'ing' &&
    article?.tag === 'determiner' &&
    !article.isAfterPause
  return isNamed ? orderFrom(reading, start, to) : undefined
}

/** An order of one clause or more, up to clause `until`; a weak one says nothing unless another stands beside it. */
export type Part = {
  readonly text: string
  readonly until: number
  /** Where its words end: an offset into the sentence. */
  readonly to: number
  readonly isGuess?: boolean
  readonly isWeak?: boolean
}

/** What the clauses order, each behind the other; undefined where one names what is handled and nothing tells how. */
export const partsOf = (reading: Reading, around: readonly (string | undefined)[]): readonly Part[] | undefined => {
  const parts: Part[] = []
  let isOpen = false
  let pending = ''
  let done = 0
  const endOf = (to: number): number => reading.tokens[to - 1]?.to ?? reading.text.length
  const clauses = reading.clauses.flatMap(clause => parted(reading, clause))
  clauses.forEach(({ from }, i) => {
    if (from < done) return
    const clause = widened(reading, clauses, i)
    const last = parts.at(-1)
    if (clause === undefined) return
    done = clause.to
    if (isPurpose(reading, clause, last !== undefined)) return
    const fasteners = fastenersAt(reading, clauses, i, around)
    if (fasteners !== undefined) {
      const { order, until, isGuess, isWeak, isOpen: asks } = fasteners
      done = clauses[until]?.to ?? done
      isOpen ||= asks
      if (order !== undefined) parts.push({ text: order, until, to: endOf(done), isGuess, isWeak })
      return
    }
    const addTo = (more: string) =>
      void parts.splice(-1, 1, { text: `${last?.text} ${more}`, until: i, to: endOf(done) })
    if (clause.marker !== undefined && !/^(?:therefore|hence|thus)$/.test(clause.marker)) {
      const condition = conditionOf(reading, clause)
      if (condition === '') return
      if (last !== undefined && last.until === i - 1) addTo(condition)
      else pending = condition
      return
    }
    if (isContrasted(reading.tokens, clause.from)) return
    const grip = gripOf(reading, clause)
    if (grip !== undefined) {
      if (last !== undefined && last.until === i - 1) addTo(grip)
      else {
        const held = namedAlone(reading, clauses[i - 1])
        if (held !== undefined) parts.push({ text: `tighten ${held} ${grip}`, until: i, to: endOf(done) })
      }
      return
    }
    const refusal = refusalOf(reading, clause)
    if (refusal !== '' && last !== undefined && last.until === i - 1) {
      parts.splice(-1, 1, { text: `${last.text}, ${refusal}`, until: i, to: endOf(done) })
      return
    }
    if (goesOnTelling(reading, clause, clauses[i - 1]) || goesOnForPurpose(reading, clause, clauses[i - 1])) return
    // "Or you will have moved it": what happens otherwise.
    const [opener, subject] = reading.tokens.slice(clause.from, clause.to)
    if (opener?.word === 'or' && /^(?:you|it|we|i|she|he|they)$/.test(subject?.word ?? '')) return
    const told = namedDeed(reading, clause) ?? orderOf(reading, clause)
    const order = (told ?? stateOrder(reading, { from: clause.start, to: clause.to }))
      ?.replace(/^go ahead(?: and|,)? ?/, '')
      .replace(RUNS_ON, '')
    if (order === undefined || !isSound(order)) return
    // "Don't open it | or lift it": neither.
    const isNeither = opener?.word === 'or' && last?.until === i - 1 && last.text.startsWith('do not ')
    const text =
      isNeither || isForbidden(reading, clause) ? `do not ${order.replace(/^(?:do )?(?:not|never) /, '')}` : order
    const whole = pending === '' || text.includes(pending) ? text : `${text} ${pending}`
    parts.push({ text: whole, until: i, to: endOf(done), isWeak: told === undefined })
    pending = ''
  })
  return isOpen ? undefined : parts
}
