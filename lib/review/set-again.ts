import { wordSet } from '@/lib/trade/list'
import { type Action, actionsOf } from './action'
import type { Open } from './open'
import { isLikeThing } from './thing'

/** "Set the belt tension", "wind the tensioner up": what was slackened to take the belt off is set. */
export const isTensioned = ({ undone, thing }: Open, { acts, verb, things, rest }: Action): boolean =>
  undone === 'loosened' &&
  thing.words.some(word => TENSIONERS.has(word)) &&
  (acts.has('tighten') || TENSIONS.has(verb)) &&
  !acts.has('loosen') &&
  things.some(
    ({ head, words }) => head === 'tension' || words.some(word => TENSIONERS.has(word)) || rest.includes(thing.head),
  )
/** @returns whether an action may set what tensions a belt or chain. */
export const mayTension = ({ verb, things }: Action): boolean =>
  TENSIONS.has(verb) && things.some(({ head, words }) => head === 'tension' || words.some(word => TENSIONERS.has(word)))
const TENSIONERS = wordSet('tensioner idler jockey')
const TENSIONS = wordSet('set adjust tension turn wind crank swing push release let')

const OPPOSITE: Readonly<Record<string, string>> = { down: 'up', up: 'down', out: 'in', aside: 'back', back: 'down' }
/** What was swung down to open it is shut when it is swung up. */
export const isSwungBack = ({ undone, thing, step }: Open, { particle, things, acts }: Action): boolean =>
  undone === 'opened' &&
  particle !== undefined &&
  acts.size > 0 &&
  things.some(other => isLikeThing(thing, other)) &&
  actionsOf(step.text).some(
    own => OPPOSITE[own.particle ?? ''] === particle && own.things.some(other => isLikeThing(thing, other)),
  )
