import { wordSet } from '@/lib/trade/list'
import type { Act } from '@/lib/trade/pairs'
import type { Action } from './action'
import { PREPOSITIONS } from './grammar'
import type { Open } from './open'
import { isLikeThing, type Thing } from './thing'

/** What holds a part while it is worked on. */
export const FIXTURES = wordSet('vice vise bench jig')

const PUT = wordSet(
  'sling offer hang lay stand set seat spin click snap braze weld bolt glue screw hook stack line run',
)
/** Verbs of moving a part to its place. */
const MOVED = wordSet(
  'slide feed twist turn push press drop lower ease guide raise lift roll work draw pull thread lay set stand rotate slip walk rock offer tip hoist wind wriggle',
)
const TOWARDS = wordSet('onto into on in over up home up-to through to round around between clockwise until')
/** @returns whether a thing is moved into, onto or up to something. */
export const isMoved = ({ verb, rest, particle, acts }: Action): boolean =>
  MOVED.has(verb) &&
  !TAKES.some(act => acts.has(act)) &&
  (TOWARDS.has(particle ?? '') || rest.some(word => TOWARDS.has(word)))
const TAKES: readonly Act[] = ['remove', 'disconnect', 'loosen', 'drain', 'open']

/** "Fit the wheel on its spindle", "push it in until both clips snap": what holds a part is named with it. */
const isNamedWith = ({ rest, acts }: Action, { head }: Thing): boolean => {
  if (!acts.has('refit') && !acts.has('connect') && !acts.has('tighten')) return false
  const at = rest.findIndex(word => word === head || word === `${head}s`)
  if (at < 1) return false
  if (/^(?:snaps?|clicks?|latch(?:es)?|catch(?:es)?|engages?|locks?|seats?|drops?)$/.test(rest[at + 1] ?? ''))
    return true
  return (
    rest.slice(0, at).findLast(word => PREPOSITIONS.has(word) || OWNED.has(word)) !== undefined &&
    rest.slice(Math.max(0, at - 2), at).some(word => OWNED.has(word))
  )
}
const OWNED = wordSet('its their')
const ASIDE = wordSet(
  'aside bench table sink bucket tray cloth rag rags towel sand box bag wire string cord hook nail ground floor outside newspaper cardboard card mat bowl jar tub pallet sack bin paper bath solvent water pan cleaner degreaser can locker shelf corner wall stands trestles trestle trolley side',
)

/** Hung, laid or set in a later step and not put aside, a part that came off is back. */
export const isPutBack = ({ undone, thing, number }: Open, action: Action, now: number): boolean => {
  const { verb, things, rest, particle } = action
  if (undone !== 'removed' || number >= now || particle === 'off' || particle === 'out' || particle === 'aside')
    return false
  if (isNamedWith(action, thing)) return true
  if (rest.some(word => ASIDE.has(word) || FIXTURES.has(word))) return false
  return (
    (PUT.has(verb) || isMoved(action)) && things.some(other => other.head === thing.head && isLikeThing(thing, other))
  )
}
