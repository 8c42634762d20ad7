import * as words from '@/lib/trade/english'
import { onceForText } from '@/lib/trade/memo'
import { classesOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import type { Clause } from './clause'

const CLAUSE_LIMIT = 12

/** Names of what a clause with an action put some way tells: each is made once for all talks. */
const putAs = onceForText((how: string) => ({
  frame: `frame:${how}`,
  first: `frame:${how}@first`,
  later: `frame:${how}@later`,
  opened: onceForText(marker => `frame:${how}-${marker}`),
  does: onceForText(action => `does:${action}:${how}`),
}))
const openedBy = onceForText((marker: string) => ({
  marked: `marked:${marker}`,
  first: `marked:${marker}@first`,
  later: `marked:${marker}@later`,
}))
const does = onceForText(action => `does:${action}`)
const orderThen = onceForText(tag => `order-then:${tag}`)

/** Features of how a sentence's clauses put their actions. */
export const clauseFeatures = (tokens: readonly Token[], clauses: readonly Clause[]): string[] => {
  const found: string[] = []
  clauses.slice(0, CLAUSE_LIMIT).forEach((clause, k) => {
    const where = k === 0 ? 'first' : 'later'
    const how = putAs(clause.isNegated ? `${clause.frame}-not` : clause.frame)
    found.push(how.frame, how[where])
    if (clause.marker !== undefined) {
      const by = openedBy(clause.marker)
      found.push(by.marked, by[where], putAs(clause.frame).opened(clause.marker))
    }
    const verb = clause.verb === undefined ? undefined : tokens[clause.verb]
    if (verb?.base !== undefined)
      for (const name of classesOf(verb.base)) {
        found.push(does(name))
        if (clause.marker === undefined) found.push(how.does(name))
      }
    const object = clause.verb === undefined ? undefined : tokens[clause.verb + 1]
    if (clause.frame === 'order' && object !== undefined) found.push(orderThen(object.tag))
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

/** What only the words together tell: a threat, a person's body, a forbidden act and its price. */
export const patternFeatures = (tokens: readonly Token[], clauses: readonly Clause[]): string[] => {
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
