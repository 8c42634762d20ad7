import * as words from '@/lib/trade/english'
import { classesOf } from '@/lib/trade/morphology'
import { type Token, toTokens } from '@/lib/trade/tagger'
import { type Clause, toClauses } from './clause'

/** A sentence as the model sees it. */
export type Reading = {
  readonly text: string
  readonly tokens: readonly Token[]
  readonly clauses: readonly Clause[]
  readonly isQuestion: boolean
  /** Names of the features that hold, of the sentence alone. */
  readonly own: readonly string[]
}

const INVERTED =
  /^(?:(?:so|and|but|okay|oh|well|now|then|right|um|uh|er|wait|hang on)\s+)*(?:(?:can|could|should|shall|will|would|do|does|did|is|isn't|are|aren't|was|were|has|have|am|don't|doesn't|won't) (?:i|you|we|it|that|this|there|they|he|she|the|your|people|everybody|anyone)\b|(?:why|how|what|where|who|which)(?:'s|'re|'d)? (?:do|does|did|is|are|about|if|would|should|happens|can|could|will|the|that|this|not|it|many|much|often|long|far|tight|hard|snug|come|else|for)\b|what for|how come)/i

/** @returns whether the sentence asks, by its mark or, where marks are missing, by its word order. */
export const asks = (text: string): boolean => {
  if (/\?["')]*\s*$/.test(text)) return true
  return !/[.!,;]/.test(text) && INVERTED.test(text.replaceAll('’', "'"))
}

const has = (tokens: readonly Token[], set: ReadonlySet<string>): number =>
  tokens.reduce((n, token) => (set.has(token.word) ? n + 1 : n), 0)

/** Content words are seen as what they are, closed-class words as themselves. */
const shapeOf = (token: Token): string => {
  const { word, tag } = token
  if (tag === 'number') return '#'
  if (tag === 'unit') return 'UNIT'
  if (tag === 'money') return '$'
  if (tag === 'verb' || tag === 'third' || tag === 'past' || tag === 'ing') {
    if (COMMON.has(word)) return word
    return tag.toUpperCase()
  }
  if (tag === 'tool' || tag === 'material' || tag === 'part') return tag.toUpperCase()
  if (words.PEOPLE.has(word)) return 'PERSON'
  if (words.BODY.has(word)) return 'BODY'
  if (words.EVALUATIONS.has(word)) return 'EVAL'
  if (tag === 'noun' || tag === 'word') return 'N'
  if (tag === 'adjective') return COMMON.has(word) ? word : 'ADJ'
  if (tag === 'adverb') return 'ADV'
  return word
}

/** Verbs and adjectives so common in speech that they act like grammar. */
const COMMON = new Set(
  'check look feel listen watch make sure want need see find get give take put keep let leave go goes comes come turn use say says said told mean means know think tell run hold remember forget stop start work works new old same happens happen looking going doing coming getting using trying called supposed done gone read reads should used'.split(
    ' ',
  ),
)

const CLAUSE_LIMIT = 12

const clauseFeatures = (tokens: readonly Token[], clauses: readonly Clause[]): string[] => {
  const found: string[] = []
  clauses.slice(0, CLAUSE_LIMIT).forEach((clause, k) => {
    const where = k === 0 ? 'first' : 'later'
    const neg = clause.isNegated ? '-not' : ''
    const marker = clause.marker === undefined ? '' : `-${clause.marker}`
    found.push(`frame:${clause.frame}${neg}`, `frame:${clause.frame}${neg}@${where}`)
    if (marker !== '')
      found.push(`marked:${clause.marker}`, `marked:${clause.marker}@${where}`, `frame:${clause.frame}${marker}`)
    const verb = clause.verb === undefined ? undefined : tokens[clause.verb]
    if (verb?.base !== undefined)
      for (const name of classesOf(verb.base)) {
        found.push(`does:${name}`)
        if (clause.marker === undefined) found.push(`does:${name}:${clause.frame}${neg}`)
      }
    const object = clause.verb === undefined ? undefined : tokens[clause.verb + 1]
    if (clause.frame === 'order' && object !== undefined) found.push(`order-then:${object.tag}`)
  })
  const main = clauses.filter(clause => clause.marker === undefined)
  const acts = main.filter(
    clause => !clause.isNegated && ['order', 'you', 'i', 'we', 'passive', 'nominal'].includes(clause.frame),
  ).length
  found.push(`acts:${Math.min(3, acts)}`)
  if (main.every(clause => clause.frame === 'past')) found.push('all-past')
  if (main.every(clause => clause.frame === 'fragment')) found.push('all-fragment')
  if (clauses.some(clause => clause.marker === 'if' || clause.marker === 'unless') && acts === 0)
    found.push('if-no-act')
  if (clauses[0]?.marker === 'if' && clauses.length > 1)
    found.push(`if-then:${clauses.find((c, i) => i > 0 && c.marker === undefined)?.frame ?? 'none'}`)
  return found
}

const SETS = {
  body: words.BODY,
  harm: words.HARM,
  damage: words.DAMAGE,
  state: words.STATE_WORDS,
  people: words.PEOPLE,
  money: words.MONEY,
  evaluation: words.EVALUATIONS,
  hedge: words.HEDGE,
  advice: words.ADVICE,
  chat: words.CHAT,
  'time-past': words.TIME_PAST,
  negation: words.NEGATIONS,
  cause: words.CAUSES,
  condition: words.CONDITIONS,
  modal: words.MODALS,
} as const

const wordFeatures = (tokens: readonly Token[]): string[] => {
  const found: string[] = []
  const counts: Record<string, number> = {}
  for (const [name, set] of Object.entries(SETS)) {
    const n = has(tokens, set)
    counts[name] = n
    if (n > 0) found.push(`has:${name}`)
    if (n > 1) found.push(`has2:${name}`)
  }
  const pairs = [
    ['body', 'harm'],
    ['harm', 'negation'],
    ['damage', 'negation'],
    ['harm', 'modal'],
    ['damage', 'modal'],
    ['state', 'condition'],
    ['state', 'cause'],
    ['body', 'negation'],
    ['harm', 'condition'],
    ['damage', 'condition'],
    ['time-past', 'people'],
    ['advice', 'state'],
    ['body', 'modal'],
  ] as const
  for (const [a, b] of pairs) if ((counts[a] ?? 0) > 0 && (counts[b] ?? 0) > 0) found.push(`both:${a}+${b}`)
  for (const tag of [
    'number',
    'unit',
    'money',
    'tool',
    'material',
    'part',
    'verb',
    'past',
    'third',
    'ing',
    'particle',
  ] as const) {
    const n = tokens.filter(token => token.tag === tag).length
    if (n > 0) found.push(`tag:${tag}`)
    if (n > 1) found.push(`tag2:${tag}`)
  }
  const n = tokens.length
  found.push(`long:${n < 3 ? 0 : n < 5 ? 1 : n < 8 ? 2 : n < 12 ? 3 : n < 18 ? 4 : n < 26 ? 5 : 6}`)
  if (tokens.some(token => token.word === 'i' || token.word === 'my' || token.word === 'me' || token.word === 'mine'))
    found.push('has:i')
  if (tokens.some(token => token.word === 'you' || token.word === 'your')) found.push('has:you')
  if (tokens.some(token => token.word === 'we' || token.word === 'our' || token.word === 'us')) found.push('has:we')
  return found
}

const ngrams = (tokens: readonly Token[]): string[] => {
  const shape = ['^', ...tokens.map(shapeOf), '$']
  const found = new Set<string>()
  shape.forEach((one, i) => {
    const two = shape[i + 1]
    const three = shape[i + 2]
    if (i > 0 && i < shape.length - 1) found.add(`w:${one}`)
    if (two !== undefined) found.add(`w:${one} ${two}`)
    if (two !== undefined && three !== undefined) found.add(`w:${one} ${two} ${three}`)
  })
  for (const token of tokens)
    if (!['number', 'unit', 'name'].includes(token.tag)) found.add(`word:${token.base ?? token.word}`)
  return [...found]
}

/** Reads one sentence: words, clauses, and the features that hold of it alone. */
export const readSentence = (text: string): Reading => {
  const tokens = toTokens(text)
  const isQuestion = asks(text)
  const clauses = toClauses(tokens, isQuestion)
  const own = [
    ...(isQuestion ? ['question'] : []),
    ...clauseFeatures(tokens, clauses),
    ...wordFeatures(tokens),
    ...ngrams(tokens),
  ]
  return { text, tokens, clauses, isQuestion, own: [...new Set(own)] }
}

/** Features of a sentence in its place: its own, and the coarse ones of its neighbours. */
export const featuresAt = (readings: readonly Reading[], i: number): readonly string[] => {
  const here = readings[i]
  if (here === undefined) return []
  const coarse = (reading: Reading | undefined, side: string): string[] =>
    reading === undefined
      ? [`${side}:none`]
      : reading.own
          .filter(name => !name.startsWith('w') && !name.startsWith('tag') && !name.includes('@'))
          .map(name => `${side}:${name}`)
  const share = readings.length < 2 ? 0 : i / (readings.length - 1)
  return [
    ...here.own,
    ...coarse(readings[i - 1], 'before'),
    ...coarse(readings[i + 1], 'after'),
    share < 0.08 ? 'at:opening' : share > 0.95 ? 'at:closing' : 'at:middle',
    'bias',
  ]
}
