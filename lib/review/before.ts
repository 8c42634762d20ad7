import { type Action, actionsOf } from './action'
import { onceForText } from './memo'
import { isLikeThing } from './thing'
import { verbOf } from './words'

const CLAUSE = /\b(?:before|prior to)\s+(?:you (?:start |begin )?)?([a-z][a-z\s'-]*)/gi

/** @returns what a text says must come later: "warm the oil before locking it out" gives lock out. Bare nouns are left out. */
export const laterActions = onceForText((text: string): readonly Action[] =>
  [...text.matchAll(CLAUSE)].flatMap(match => {
    const [first = '', ...rest] = (match[1] ?? '').trim().split(/\s+/)
    const verb = verbOf(first.toLowerCase())
    return verb === undefined ? [] : actionsOf([verb, ...rest].join(' ')).slice(0, 1)
  }),
)

/** Verbs too general to find a step by. */
const VAGUE = new Set(
  'do start begin go use get make be have continue proceed work touch move refit close check'.split(' '),
)

/** @returns whether an action of a step is the one meant: same verb and particle or act, and the same thing if one is named. */
export const isMeant = (meant: Action, action: Action, isLocal: boolean): boolean => {
  const isSameVerb =
    meant.verb === action.verb &&
    (meant.particle === action.particle || meant.particle === undefined || action.particle === undefined)
  const shared = [...meant.acts].some(act => action.acts.has(act))
  const named = meant.things.filter(thing => thing.head !== '')
  if (named.length === 0) return isLocal && isSameVerb && !VAGUE.has(meant.verb)
  const isOnIt = named.some(thing => action.things.some(other => isLikeThing(thing, other)))
  return isOnIt && (isSameVerb || shared)
}
