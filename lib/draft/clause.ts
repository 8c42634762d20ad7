import { CAUSES, CONDITIONS, LEAD } from '@/lib/trade/english'
import type { Token } from '@/lib/trade/tagger'
import { isBoundary, isUnmarkedBoundary, isVerbal } from './clause-boundary'

/** How a clause puts its action. */
export type Frame =
  /** "close the valve" */
  | 'order'
  /** "you want to close the valve", "what you do is close it", "you just close it" */
  | 'you'
  /** "I'm going to close it", "I always close it" */
  | 'i'
  /** "we close it", "let's close it" */
  | 'we'
  /** "the valve is closed", "goes back", "comes off", "gets wiped" */
  | 'passive'
  /** "wheel off", "cap back on", "new washer in" */
  | 'nominal'
  /** a question */
  | 'question'
  /** told in the past */
  | 'past'
  /** any other statement */
  | 'statement'
  /** no verb */
  | 'fragment'

/** A stretch of a sentence with at most one main verb. Indices into the sentence's tokens, [from, to). */
export type Clause = {
  readonly from: number
  readonly to: number
  /** First content word, after lead-in words. */
  readonly start: number
  readonly frame: Frame
  /** Index of the main verb, where there is one. */
  readonly verb: number | undefined
  /** "if", "until", "because" … that opens it. */
  readonly marker: string | undefined
  readonly isNegated: boolean
}

const PASSIVE_VERBS = new Set("goes go comes come gets get is are was were be 's 're been has have".split(' '))

const skipLead = (tokens: readonly Token[], from: number, to: number): number => {
  let at = from
  while (
    at < to - 1 &&
    (LEAD.has(tokens[at]?.word ?? '') ||
      tokens[at]?.tag === 'filler' ||
      (tokens[at]?.tag === 'adverb' && at > from - 1))
  )
    at++
  return at
}

const YOU_LEADS = new Set(
  "want going need have got can could should must just always 'll gonna to go ahead and 're 've like simply only then might may will would 'd do is just really also first gotta carefully gently probably shall usually still all now basically literally kind of".split(
    ' ',
  ),
)

/** From a subject pronoun on, over "want to", "'re going to", "just", finds the verb that says the action. */
const actionAfter = (
  tokens: readonly Token[],
  from: number,
  to: number,
): { verb: number | undefined; isPast: boolean } => {
  let isPast = false
  for (let i = from; i < to; i++) {
    const token = tokens[i]
    if (token === undefined) break
    if (token.tag === 'verb') {
      if (
        YOU_LEADS.has(token.word) &&
        (tokens[i + 1]?.word === 'to' || (token.word === 'go' && tokens[i + 1]?.word === 'ahead'))
      )
        continue
      return { verb: i, isPast }
    }
    if (
      token.word === 'had' ||
      token.word === 'did' ||
      token.word === "'ve" ||
      token.word === 'was' ||
      token.word === 'were'
    )
      isPast = true
    if (token.tag === 'past') return { verb: i, isPast: true }
    if (token.tag === 'ing' && token.word !== 'going') return { verb: i, isPast }
    if (
      YOU_LEADS.has(token.word) ||
      token.tag === 'adverb' ||
      token.tag === 'negation' ||
      token.tag === 'auxiliary' ||
      token.tag === 'modal'
    )
      continue
    // An unknown verb right after "to" or "gonna".
    if (token.tag === 'word' && i > from) return { verb: i, isPast }
    break
  }
  return { verb: undefined, isPast }
}

const ACTORS = new Set(['you', 'we', 'i'])

/** Where "with a soft brush we …", "at this point you …" comes to its subject; undefined where a verb or nothing comes first. */
const subjectAfterLead = (tokens: readonly Token[], start: number, to: number): number | undefined => {
  const { tag, word } = tokens[start] ?? {}
  if (!(tag === 'preposition' || tag === 'particle' || word === 'after' || word === 'to')) return undefined
  for (let i = start + 1; i < Math.min(to, start + 9); i++) {
    const token = tokens[i]
    if (token === undefined || isVerbal(token)) return undefined
    if (ACTORS.has(token.word)) return i
  }
  return undefined
}

const frameOf = (
  tokens: readonly Token[],
  start: number,
  to: number,
  isQuestion: boolean,
): { frame: Frame; verb: number | undefined } => {
  const first = tokens[start]
  if (first === undefined || start >= to) return { frame: 'fragment', verb: undefined }
  const subject = subjectAfterLead(tokens, start, to)
  if (subject !== undefined) return frameOf(tokens, subject, to, isQuestion)
  // "Off comes the cover."
  if (first.tag === 'particle' && /^(?:comes?|goes|go)$/.test(tokens[start + 1]?.word ?? '') && start + 2 < to)
    return { frame: 'passive', verb: start + 1 }
  const rest = tokens.slice(start, to)
  if (first.tag === 'verb')
    return first.word === 'let' && tokens[start + 1]?.word === 'us'
      ? { frame: 'we', verb: actionAfter(tokens, start + 2, to).verb }
      : { frame: isQuestion && first.word === 'want' ? 'question' : 'order', verb: start }
  if (
    first.tag === 'negation' &&
    (first.word === "don't" || first.word === 'never') &&
    (tokens[start + 1]?.tag === 'verb' ||
      tokens[start + 1]?.tag === 'word' ||
      tokens[start + 1]?.tag === 'filler' ||
      tokens[start + 1]?.word === 'you' ||
      tokens[start + 1]?.word === 'be')
  )
    return { frame: 'order', verb: tokens[start + 1]?.word === 'you' ? start + 2 : start + 1 }
  if (isQuestion) return { frame: 'question', verb: undefined }
  if (first.word === 'you' || first.word === 'what' || (first.word === 'all' && tokens[start + 1]?.word === 'you')) {
    const from = first.word === 'you' ? start + 1 : start + 2
    const is =
      first.word === 'you'
        ? -1
        : tokens.findIndex((token, i) => i > from && i < to && (token.word === 'is' || token.word === "'s"))
    const { verb, isPast } = actionAfter(tokens, is > 0 ? is + 1 : from, to)
    return verb === undefined ? { frame: 'statement', verb: undefined } : { frame: isPast ? 'past' : 'you', verb }
  }
  if (first.word === 'i' || first.word === 'we') {
    const { verb, isPast } = actionAfter(tokens, start + 1, to)
    if (verb === undefined) return { frame: 'statement', verb: undefined }
    return { frame: isPast ? 'past' : first.word === 'i' ? 'i' : 'we', verb }
  }
  const verbal = rest.findIndex(isVerbal)
  if (verbal < 0) {
    const last = rest.at(-1)
    const particle = rest.findIndex(token => token.tag === 'particle')
    const isNominal =
      particle > 0 &&
      particle < 6 &&
      rest.slice(0, particle).some(token => ['part', 'tool', 'material', 'noun', 'word', 'pronoun'].includes(token.tag))
    return { frame: isNominal && last !== undefined ? 'nominal' : 'fragment', verb: undefined }
  }
  const at = start + verbal
  const token = tokens[at]
  const next = tokens[at + 1]
  if (token?.tag === 'past') return { frame: 'past', verb: at }
  if (
    token !== undefined &&
    (PASSIVE_VERBS.has(token.word) || token.tag === 'modal' || token.base === 'go' || token.base === 'come')
  ) {
    const participle = rest.findIndex((other, i) => i > verbal && i < verbal + 5 && other.tag === 'past')
    const isMoving =
      (token.base === 'go' || token.base === 'come' || /^(?:goes|comes|gets)$/.test(token.word)) &&
      rest.slice(verbal + 1, verbal + 4).some(other => other.tag === 'particle' || other.tag === 'preposition')
    if (isMoving) return { frame: 'passive', verb: at }
    if (
      participle > 0 &&
      token.word !== 'was' &&
      token.word !== 'were' &&
      token.word !== 'has' &&
      token.word !== 'have'
    )
      return { frame: 'passive', verb: start + participle }
    if (token.word === 'was' || token.word === 'were') return { frame: 'past', verb: at }
  }
  return { frame: 'statement', verb: next === undefined ? undefined : at }
}

/** Splits a sentence into clauses and tells each one's frame. Linear in the sentence's length. */
export const toClauses = (tokens: readonly Token[], isQuestion: boolean): readonly Clause[] => {
  const clauses: Clause[] = []
  let from = 0
  const isUnmarked = tokens.every(({ isAfterPause }, i) => i === 0 || !isAfterPause)
  for (let i = 1; i <= tokens.length; i++) {
    const isInside = i < tokens.length && !isBoundary(tokens, i, from)
    if (isInside && !(isUnmarked && isUnmarkedBoundary(tokens, i, from))) continue
    if (i > from) {
      let head = from
      while (head < i - 1 && (tokens[head]?.tag === 'and' || tokens[head]?.tag === 'filler')) head++
      const opener = tokens[head]
      const marker =
        opener !== undefined && (CONDITIONS.has(opener.word) || CAUSES.has(opener.word) || opener.tag === 'cause')
          ? opener.word
          : undefined
      const start = skipLead(tokens, marker === undefined ? from : head + 1, i)
      const { frame, verb } = frameOf(tokens, start, i, isQuestion && marker === undefined)
      const isNegated = tokens
        .slice(from, i)
        .some(
          (token, k) => token.tag === 'negation' && token.word !== 'no' && (verb === undefined || from + k <= verb + 1),
        )
      clauses.push({ from, to: i, start, frame, verb, marker, isNegated })
    }
    from = i
  }
  return clauses
}
