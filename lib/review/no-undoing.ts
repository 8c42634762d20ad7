import { wordSet } from '@/lib/trade/list'
import type { Action } from './action'
import type { Thing } from './thing'
import type { Undone } from './undone'

/** Let go, these go back by themselves; nothing is loose then. */
const HELD = wordSet(
  'switch pedal control lever knob handle stop key paddle joystick strike hammer load weight plunger valve dial wheel bar cord',
)
/** Holds stuff for the work; taken away it comes back to no place. */
const HOLDS_STUFF = wordSet(
  'bottle can jar jug tin tub basin spray tube cartridge brush vacuum lamp torch light ladder',
)
/** What is worked on as a whole: moved off its stands or down from them, nothing came off it. English, no source. */
const WHOLE = wordSet(
  'car vehicle van truck lorry tractor motorcycle motorbike bike bicycle scooter mower machine trailer wheelchair boat bus coach forklift tiller digger excavator loader wagon cart trolley saw press instrument patient aircraft harvester baler',
)
/** What was put up to keep people out comes down when the work is over. Common practice, no source. */
const POSTED = wordSet('barrier sign notice cone cordon bunting')
const MOVES_OFF = wordSet('roll take drive push wheel ride lift lower move get bring back pull slide set')
/** "Open the roller door to ventilate the bay" lets air in for as long as the work takes. */
const FOR_AIR = wordSet('ventilate air fresh breathe')

/**
 * What is worded as an undoing and leaves nothing to be made good.
 *
 * @returns whether the thing goes back by itself, came with something new, is the machine itself, or only moves until something is so
 */
export const isNoUndoing = (
  { verb, particle, rest, along }: Action,
  { head, words }: Thing,
  undone: Undone,
): boolean => {
  switch (undone) {
    case 'loosened':
      return verb === 'release' && HELD.has(head)
    case 'drained':
      return rest[0] === 'to' && rest.slice(1, 4).some(word => word === 'level' || word === 'mark' || word === 'line')
    case 'opened':
      return (rest[0] === 'to' && rest.slice(1, 4).some(word => FOR_AIR.has(word))) || isWhileRunning(rest)
    case 'removed':
      return (
        verb === 'unload' ||
        ((particle === 'down' || particle === 'away') &&
          [head, ...along.map(own => own.head)].some(own => POSTED.has(own))) ||
        (head === 'part' && words.length === 1) ||
        (particle === 'away' && HOLDS_STUFF.has(head)) ||
        (particle === 'back' && rest.some(word => word === 'until' || word === 'till')) ||
        (WHOLE.has(head) && MOVES_OFF.has(verb)) ||
        isOfNew(rest)
      )
    default:
      return false
  }
}

/** "Lift the guard while it runs": opened to see it stop, and shut again by whoever goes on. */
const isWhileRunning = (rest: readonly string[]): boolean =>
  rest[0] === 'while' && rest.slice(1).some(word => RUNNING.test(word))
const RUNNING = /^(?:runs?|running|turns?|turning|spins?|spinning|works?|heats?|calls|moves?|moving|cycles?|on)$/

/** "Slip the foam sleeve off the new lamp": it was wrapped in it. */
const isOfNew = (rest: readonly string[]): boolean => {
  const at = rest.indexOf('new')
  return at >= 0 && at <= 3 && !rest.includes('fit') && !rest.slice(0, at).some(word => word === 'to' || word === 'for')
}
