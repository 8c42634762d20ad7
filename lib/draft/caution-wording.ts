import { avoidedIn, refusedMeans } from './caution-avoidance'
import { refusedIn, withoutCalls, withoutRefusal } from './caution-talk'
import type { Clause } from './clause'
import { asSentence, isContrasted, isRefusedAhead, joinOrders, sayTokens } from './clause-text'
import { type Reading, readSentence } from './feature'
import { conditionOf, KEEPS } from './wording-condition'
import { isSound } from './wording-parts'
import { impliedOrder, orderOf } from './wording-phrase'
import { isIdleVerb } from './wording-verb'

/** Calls for care and nothing else: "careful", "watch out", "mind yourself". */
const CALLS =
  /^(?:(?:and|so|but|now|oh|okay|well|please|just|be|very|really|extra) )*(?:careful|caution|warning|danger|attention|beware|heads up|watch (?:out|it|yourself)|look out|mind(?: (?:out|you|yourself))?|take care|be (?:careful|warned)|first thing|first of all|one (?:more )?thing|(?:big|safety|quick) (?:warning|note)|listen)(?: (?:here|now|though|with (?:this|that|it)))?$/i

/** "I should have said this": about the talk, not the work. */
const ASIDE =
  /\b(?:i|we) (?:really |just |nearly |almost )?(?:(?:should|ought to|must|could|would) (?:have |'ve )?|'ve |forgot to |meant to |wanted to )(?:\w+ )?(?:said|say|told|tell|mention(?:ed)?|warn(?:ed)?|start(?:ed)?)\b|\bbefore i forget\b|^(?:and )?(?:i mean (?:it|that)|i'm not joking|no joke|seriously)$/i

/** Adjectives and particles by sense, whatever their tag. */
const NO_ORDER = /^(?:like|thank|short|number|bit|ring|hair|hand)$/

/** Who speaks on behind the last word; what is said to somebody ends there. */
const ENDS = /^(?:you|me|us|them|there|here|again|too|first|yourself)$/

const wordsOf = ({ tokens }: Reading, { from, to }: Pick<Clause, 'from' | 'to'>): string =>
  tokens
    .slice(from, to)
    .map(({ word }) => word)
    .join(' ')
    .replace(/ (?='|n't)/g, '')

/** What is said in [from, to), its last word too where a step would not need it: "will burn you". */
const sayWhole = ({ text, tokens }: Reading, from: number, to: number): string => {
  const said = sayTokens(text, tokens, from, to)
  const last = tokens[to - 1]
  if (last === undefined || !ENDS.test(last.word) || said.toLowerCase().endsWith(last.word)) return said
  const inside = tokens[to - 2]?.word
  const lead = last.word === 'there' && inside === 'in' && !/ in$/.test(said) ? ' in' : ''
  return said === '' ? said : `${said}${lead} ${last.word}`
}

/** Whether the clause tells the reader to do something: not what things do ("they lift up and come away"). */
const isAvoidance = ({ tokens, clauses }: Reading, clause: Clause, i: number): boolean => {
  const { frame, marker, verb, from } = clause
  const token = tokens[verb ?? -1]
  if (
    frame !== 'order' ||
    marker !== undefined ||
    token === undefined ||
    isIdleVerb(token) ||
    NO_ORDER.test(token.word) ||
    isContrasted(tokens, from)
  )
    return false
  // "And give you a bloody nose."
  if (/^(?:you|him|her|us|me)$/.test(tokens[(verb ?? 0) + 1]?.word ?? '') && !clause.isNegated) return false
  // "Wind'll have that."
  if (/^(?:modal|auxiliary)$/.test(tokens[(verb ?? 0) + 1]?.tag ?? '')) return false
  const [first, before] = [tokens[from], clauses[i - 1]]
  if (first === undefined || before === undefined || clause.isNegated) return true
  if (first.tag === 'and' && first.word !== 'so' && first.word !== 'then')
    return before.frame === 'order' || before.frame === 'fragment'
  return first.isAfterPause || first.tag === 'and' || before.marker !== undefined || before.frame === 'fragment'
}

const orderIn = (reading: Reading, clause: Clause): string | undefined => {
  const order = orderOf(reading, clause)
  if (order === undefined || !isSound(order)) return undefined
  // "Put nothing on it" forbids as it stands.
  const forbids = /^[a-z]+ (?:no|nothing|none|neither)\b/i.test(order)
  return !forbids && (clause.isNegated || isRefusedAhead(reading.tokens, clause.from))
    ? `do not ${order.replace(/^(?:do )?(?:not|never|don't) /i, '')}`
    : order
}

const lower = (said: string): string =>
  /^(?:I\b|\p{Lu}[\p{Lu}\d])/u.test(said) ? said : `${said.charAt(0).toLowerCase()}${said.slice(1)}`

/** What happens otherwise stands by itself: "or you'll", "because it". */
const asConsequence = (said: string): string =>
  lower(said.replace(/^(?:and|so|but|then|because|since|cause|'cause|cos|coz|for)\b,? /i, ''))

/** "Push on the outer and you leave a row of dents": what happens if one does, never what to do. */
const isThreat = ({ tokens, clauses }: Reading, clause: Clause, i: number): boolean => {
  const next = clauses[i + 1]
  if (clause.isNegated || next === undefined || next.marker !== undefined || next.frame === 'order') return false
  const [and, subject] = tokens.slice(next.from, next.to)
  return and?.word === 'and' && /^(?:determiner|pronoun|part|tool|material|noun|word)$/.test(subject?.tag ?? '')
}

/** "You hold it wrong and it cuts you": what happens to somebody, said of "you". */
const isHypothetical = (reading: Reading, clause: Clause, i: number): boolean => {
  const next = reading.clauses[i + 1]
  return (
    clause.frame === 'you' &&
    next !== undefined &&
    !BOUND.test(wordsOf(reading, clause)) &&
    !BOUND.test(wordsOf(reading, next)) &&
    !/^and (?:(?:i|we|there)\b|you (?!are\b|will\b|['’]))/.test(wordsOf(reading, next)) &&
    isThreat(reading, clause, i)
  )
}
const BOUND = /\b(?:must|have to|need to|ought|should|want to|better|would)\b/

type Piece = { readonly from: number; readonly to: number }

/** Clauses but for calls for care, and asides with what belongs to them. */
const withoutTalk = (reading: Reading): ReadonlySet<Clause> => {
  const kept = new Set<Clause>()
  let isDropping = false
  for (const clause of reading.clauses) {
    const said = wordsOf(reading, clause)
    isDropping = CALLS.test(said) || ASIDE.test(said) || (isDropping && KEEPS.has(clause.marker ?? ''))
    if (!isDropping) kept.add(clause)
  }
  return kept
}

/**
 * The avoidance as orders, each with its condition, then what happens otherwise; both from the words said. Where no order is
 * said, care is asked for; calls for care and asides of the talk are left out.
 *
 * @param before the sentence before: what it asked and this one refuses is what not to do
 */
export const wordCaution = (spoken: Reading, before?: Reading): string => {
  const refused = refusedIn(spoken.text, before)
  const said = withoutCalls(refused?.rest ?? withoutRefusal(spoken.text))
  const reading = said === spoken.text ? spoken : readSentence(said)
  const { clauses, tokens } = reading
  const kept = withoutTalk(reading)
  const isOrder = (i: number): boolean => {
    const clause = clauses[i]
    return clause !== undefined && kept.has(clause) && isAvoidance(reading, clause, i) && !isThreat(reading, clause, i)
  }
  const orders: string[] = refused === undefined ? [] : [refused.order]
  const rest: Piece[] = []
  let pending = ''
  let orderedAt = -1
  for (const [i, clause] of clauses.entries()) {
    if (!kept.has(clause)) continue
    const found = refusedMeans(reading, clause) ?? (isOrder(i) ? orderIn(reading, clause) : undefined)
    // "Don't open it | or lift it": neither.
    const isNeither =
      tokens[clause.from]?.word === 'or' && orderedAt === i - 1 && orders.at(-1)?.startsWith('do not ') === true
    const told = isNeither && found?.startsWith('do not ') === false ? `do not ${found}` : found
    const order = told ?? (isHypothetical(reading, clause, i) ? undefined : avoidedIn(reading, clause))
    const condition = order === undefined && KEEPS.has(clause.marker ?? '') ? conditionOf(reading, clause) : ''
    const isBehind = orderedAt === i - 1 && orders.length > 0 && tokens[clause.from]?.isAfterPause === false
    const last = rest.at(-1)
    if (order !== undefined) {
      orders.push(pending === '' ? order : `${order} ${pending}`)
      pending = ''
      orderedAt = i
    } else if (condition !== '' && isBehind) orders.push(`${orders.pop()} ${condition}`)
    else if (condition !== '' && clause.marker !== 'if' && isOrder(i + 1)) pending = condition
    else if (last?.to === clause.from) rest.splice(-1, 1, { from: last.from, to: clause.to })
    else rest.push(clause)
  }
  return join(reading, orders, rest)
}

/** Asks for care already, or forbids. */
const CARES =
  /^(?:mind|watch|beware|keep|never|don['’]t|do not|no(?! (?:it|you|i|we|they|he|she|that|the|this)\b)|not|avoid|stay)\b/i

const join = (reading: Reading, orders: readonly string[], rest: readonly Piece[]): string => {
  const told = rest
    .map(({ from, to }) => {
      const said = sayWhole(reading, from, to)
      const isElse =
        reading.tokens[from]?.word === 'or' && /^(?:else )?(?:you|it|they|he|she|the|that|we|i)\b/i.test(said)
      return isElse && orders.length > 0 ? `otherwise ${said.replace(/^else /i, '')}` : said
    })
    .filter(said => said.split(' ').length > 1)
    .map((said, i) => (i === 0 ? asConsequence(said) : lower(said)))
    .join(', ')
  if (orders.length > 0) return asSentence(told === '' ? joinOrders(orders) : `${joinOrders(orders)}; ${told}`)
  const [first, ...more] = told.split(', ')
  const worn = first === undefined ? undefined : impliedOrder(first)
  if (worn?.startsWith('put on') === true)
    return asSentence(more.length === 0 ? worn : `${worn}; ${asConsequence(more.join(', '))}`)
  const said = told === '' ? lower(sayWhole(reading, 0, reading.tokens.length)) : told
  // Captions without commas: "careful the spring is under tension".
  const bare = said.replace(
    /^(?:be )?(?:very |real(?:ly)? )?careful (?=(?:the|that|this|it|its|these|those|there)\b)/i,
    '',
  )
  const cared = bare.replace(
    /^(?:be )?(?:very |real(?:ly)? )?careful(?= (?:with|of|on|around|near|when|as|not)\b)/i,
    'take care',
  )
  return asSentence(cared !== bare || CARES.test(bare) ? cared : `take care: ${bare}`)
}
