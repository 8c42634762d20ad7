import * as words from '@/lib/trade/english'
import { classesOf, singular } from '@/lib/trade/morphology'
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
  deadly: words.DEADLY,
  injury: words.INJURIES,
  agent: words.AGENTS,
  spoils: words.SPOILS,
  care: words.CARE,
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
    ['care', 'body'],
    ['care', 'spoils'],
    ['spoils', 'negation'],
    ['spoils', 'modal'],
    ['agent', 'body'],
    ['agent', 'care'],
    ['agent', 'modal'],
    ['injury', 'body'],
    ['injury', 'modal'],
    ['deadly', 'modal'],
    ['agent', 'negation'],
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

/** What only the words together tell: a threat, a person's body, a forbidden act and its price. */
const patternFeatures = (tokens: readonly Token[], clauses: readonly Clause[]): string[] => {
  const found: string[] = []
  const forbids = clauses.findIndex(
    clause => clause.isNegated && (clause.frame === 'order' || clause.frame === 'you') && clause.marker === undefined,
  )
  const later = forbids < 0 ? [] : tokens.slice(clauses[forbids]?.to ?? 0)
  if (forbids >= 0) {
    found.push('forbids')
    if (later.some(token => words.SPOILS.has(token.word))) found.push('forbids-then:spoils')
    if (
      later.some(token => words.INJURIES.has(token.word) || words.DEADLY.has(token.word) || words.BODY.has(token.word))
    )
      found.push('forbids-then:hurts')
    if (later.some(token => token.tag === 'modal')) found.push('forbids-then:modal')
    if (later.length > 0) found.push('forbids-then:more')
  }
  tokens.forEach((token, i) => {
    const next = tokens[i + 1]
    if (next === undefined) return
    if (token.word === 'your' && words.BODY.has(next.word)) found.push('your-body')
    if (
      (token.word === 'you' || token.word === 'somebody' || token.word === 'someone' || token.word === 'people') &&
      words.BODY.has(tokens[i + 2]?.word ?? '')
    )
      found.push('person-body')
    if (
      (token.word === "'ll" ||
        token.word === 'will' ||
        token.word === 'can' ||
        token.word === 'could' ||
        token.word === 'would' ||
        token.word === "'d" ||
        token.word === 'may') &&
      (words.INJURIES.has(next.word) || words.DEADLY.has(next.word))
    )
      found.push('threat:hurts')
    if (
      (token.word === "'ll" ||
        token.word === 'will' ||
        token.word === 'can' ||
        token.word === 'could' ||
        token.word === "'d" ||
        token.word === 'may') &&
      words.SPOILS.has(next.word)
    )
      found.push('threat:spoils')
    if (
      token.word === 'or' &&
      (next.word === 'you' || next.word === 'it' || next.word === 'they' || next.word === 'the')
    )
      found.push('or-else')
  })
  const opener = tokens.find(token => token.tag !== 'filler' && token.tag !== 'and')
  if (opener !== undefined && /^(?:careful|mind|watch|beware|never|keep|stay|don't)$/.test(opener.word))
    found.push(`opens:${opener.word}`)
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
    ...patternFeatures(tokens, clauses),
    ...ngrams(tokens),
  ]
  return { text, tokens, clauses, isQuestion, own: [...new Set(own)] }
}

/** Things a sentence speaks of, by their last word. */
const thingsOf = (reading: Reading | undefined): ReadonlySet<string> =>
  new Set(
    reading?.tokens
      .filter(token => ['part', 'tool', 'material', 'noun', 'word'].includes(token.tag))
      .map(token => singular(token.word)),
  )

const cohesion = (readings: readonly Reading[], i: number): readonly string[] => {
  const here = thingsOf(readings[i])
  const shares = (other: Reading | undefined): boolean => [...thingsOf(other)].some(word => here.has(word))
  return [
    ...(shares(readings[i - 1]) ? ['shares:before'] : []),
    ...(shares(readings[i - 2]) ? ['shares:before2'] : []),
    ...(shares(readings[i + 1]) ? ['shares:after'] : []),
  ]
}

/** What was read of limits in each sentence, for its features: shape and dimension. */
export type LimitNote = { readonly sentence: number; readonly shape: string; readonly dimension: string }

/** @returns feature names of the limits, by sentence. */
export const limitFeatures = (notes: readonly LimitNote[]): ReadonlyMap<number, readonly string[]> => {
  const found = new Map<number, string[]>()
  for (const { sentence, shape, dimension } of notes) {
    const list = found.get(sentence) ?? []
    list.push(`limit:${shape}`, `limit-of:${dimension}`, `limit:${shape}-of:${dimension}`, 'has-limit')
    found.set(sentence, list)
  }
  return found
}

/** Features of a sentence in its place: its own, its limits', and the coarse ones of its neighbours. */
export const featuresAt = (
  readings: readonly Reading[],
  i: number,
  limits?: ReadonlyMap<number, readonly string[]>,
): readonly string[] => {
  const here = readings[i]
  if (here === undefined) return []
  const coarse = (reading: Reading | undefined, side: string): string[] =>
    reading === undefined
      ? [`${side}:none`]
      : reading.own
          .filter(name => !name.startsWith('w') && !name.startsWith('tag') && !name.includes('@'))
          .map(name => `${side}:${name}`)
  const share = readings.length < 2 ? 0 : i / (readings.length - 1)
  const own = limits?.get(i) ?? []
  return [
    ...here.own,
    ...own,
    ...(own.length > 0
      ? here.own
          .filter(name => /^(?:frame:[a-z]+|does:inspect|has:advice|question|acts:\d)$/.test(name))
          .map(name => `limited+${name}`)
      : []),
    ...(limits?.has(i - 1) ? ['before:has-limit'] : []),
    ...(limits?.has(i + 1) ? ['after:has-limit'] : []),
    ...cohesion(readings, i),
    ...coarse(readings[i - 1], 'before'),
    ...coarse(readings[i + 1], 'after'),
    share < 0.08 ? 'at:opening' : share > 0.95 ? 'at:closing' : 'at:middle',
    'bias',
  ]
}
