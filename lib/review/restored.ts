import { wordSet } from '@/lib/trade/list'
import { type Act, FASTENERS } from '@/lib/trade/pairs'
import type { Action } from './action'
import { isGathering } from './added'
import { PREPOSITIONS } from './grammar'
import { onceFor } from './memo'
import type { Open } from './open'
import { FIXTURES } from './put-back'
import { isSwungBack, isTensioned, mayTension } from './set-again'
import { isKin, isLikeThing, type Thing, toThing } from './thing'
import { isCord, isCut, type Undone } from './undone'

const REDO: Readonly<Record<Undone, readonly Act[]>> = {
  removed: ['refit', 'connect', 'fill', 'tighten'],
  opened: ['close', 'refit', 'tighten'],
  closed: ['open'],
  drained: ['fill'],
  disconnected: ['connect', 'on', 'refit'],
  loosened: ['tighten', 'refit', 'connect'],
  'switched-off': ['on'],
  locked: ['unlock'],
  raised: ['lower'],
  added: ['remove', 'disconnect', 'open'],
}

const LOCKS = wordSet('lock tag label notice sign padlock lockout isolation isolator breaker hasp')
const VEHICLES = wordSet('car vehicle machine jack bike van truck stand')
/** Small plugs inside a machine, not the one in the wall. */
const LEADS = wordSet('connector lead cable hose sensor harness wire plug')
/** A plug out of which something runs is none of a socket. */
const LETS_RUN = /\b(?:drain\w*|runs?|oil|fluid|coolant|fuel|sump|tank)\b/i
/** "Roll the mower off the ramps" lowers it. */
const STOOD_ON = wordSet('ramp ramps stand stands trestle trestles blocks lift hoist')
/** Lifted and lowered by themselves, whatever the machine stands on. */
const SEPARATE = wordSet('load fork bucket boom implement header deck pallet platform')
const FLOWING = wordSet('valve tap cock water gas')
const RESTARTS = wordSet(
  'switch turn power restore energise energize re-energise re-energize start restart run enable activate boot bring fire return reinstate plug',
)
/** "Turn the water back on" opens the valve that was shut. */
const FLOWS = wordSet('water gas supply fuel air steam main mains')
const FLUIDS = wordSet('oil coolant antifreeze water fuel petrol diesel electrolyte')

const isOtherFluid = (a: Thing, b: Thing): boolean => FLUIDS.has(a.head) && FLUIDS.has(b.head) && a.head !== b.head

const isPronoun = ({ things }: Action): boolean => things.length === 0 || things.some(({ head }) => head === '')

const SECURES = wordSet('circlip cotter linchpin lockwire r-clip snap-ring tab-washer')
const SECURING =
  /\b(?:split|cotter|roll|spring|safety|grooved?|hitch) pin\b|\b(?:snap|retaining) ring\b|\b(?:lock|locking|safety) (?:wire|clip|pin|tab)\b/

/** Whether a part keeps another from coming off: nobody takes for granted that it went back with it. */
export const isLocking = ({ words, head }: Thing): boolean => SECURES.has(head) || SECURING.test(words.join(' '))

const PLUGS = wordSet('plug lead cord flex')
const WEDGES = wordSet('wedge chock block')

/** "The spring half of the seal" is the seal. */
const PORTIONS = wordSet('half part piece end section side face lip set rest')
const OWNS = new Set(['of', 'from', 'on', 'in', 'at', 'holding', 'securing'])

/** @returns what fasteners hold, by the words after them: "of the base panel". */
export const ownerIn = (rest: readonly string[]): Thing | undefined => {
  if (!OWNS.has(rest[0] ?? '')) return undefined
  const end = rest.findIndex((token, i) => i > 0 && PREPOSITIONS.has(token))
  const owner = toThing(rest.slice(1, end < 0 ? rest.length : end))
  return owner.head === '' ? undefined : owner
}

const isPortionOf = ({ things, rest }: Action, { head }: Thing): boolean => {
  return rest[0] === 'of' && rest.includes(head) && things.some(other => PORTIONS.has(other.head))
}

/** Verbs that put a part on for good: its screws are in. "Place" and "lay" leave them out. */
const FASTENING = wordSet(
  'refit reinstall fit install replace reassemble attach reattach mount remount secure fasten refasten bolt screw assemble rebuild renew swap change exchange tighten torque clamp close connect reconnect return snap clip latch lock',
)

/** Whether fasteners are those of something else: the bolts of the guard are not the motor bolts. */
const isOfAnother = ({ rest, things }: Action, { head, rest: words }: Thing, of: Thing | undefined): boolean => {
  if (!FASTENERS.has(head) || rest[0] !== 'of' || things.some(other => other.rest.length > 0)) return false
  const owner = ownerIn(rest)
  if (owner === undefined || (words.length === 0 && of === undefined)) return false
  return !owner.words.some(word => words.includes(word)) && !(of !== undefined && isLikeThing(of, owner))
}

const MEANS = new Set(['with', 'by', 'using', 'via'])

/** Whether a thing stands in the rest of a clause as the means: "secure the cover with the four screws". */
const isBy = (rest: readonly string[], head: string): boolean => {
  const at = rest.findIndex(word => word === head || word === `${head}s`)
  const means = rest.slice(0, at).findLast(word => PREPOSITIONS.has(word))
  return means !== undefined && MEANS.has(means)
}

/** Fasteners tightened that bear the name of what they hold. */
const isHeldBy = (thing: Thing, { acts, things }: Action): boolean =>
  acts.has('tighten') &&
  !FASTENERS.has(thing.head) &&
  things.some(
    ({ head, rest }) =>
      FASTENERS.has(head) &&
      rest.includes(thing.head) &&
      thing.rest.every(word => rest.includes(word) || rest.length === 1),
  )

const isSomeOf = ({ thing, undone, of }: Open, action: Action, stems: ReadonlySet<string>): boolean => {
  const { things, rest, along, verb } = action
  const isOthers = isOfAnother(action, thing, of)
  if ((!isOthers && things.some(other => isLikeThing(thing, other))) || along.some(other => isLikeThing(thing, other)))
    return true
  // "Bolt the pump down": its bolts are back. "Pin the free end": the pin is.
  if (verb === thing.head && FASTENERS.has(thing.head) && undone === 'removed') return true
  // "Refit and torque the flange bolts": the flange is on.
  if ((undone === 'loosened' || (undone === 'removed' && verb.startsWith('re'))) && isHeldBy(thing, action)) return true
  // "Clamp the base" closes the base clamp.
  if (verb === thing.head && things.some(({ head }) => thing.rest.includes(head))) return true
  if (isPronoun(action) && (stems.has(thing.head) || (verb === 'plug' && undone === 'disconnected'))) return true
  if (verb === 'plug' && undone === 'disconnected' && thing.head === 'plug')
    return !things.some(({ head }) => LEADS.has(head))
  if (isPortionOf(action, thing)) return true
  // "Unhook both ends of the old wire": the new wire brings its own.
  if (of !== undefined && PORTIONS.has(thing.head) && things.some(other => isLikeThing(of, other))) return true
  const isFastener = FASTENERS.has(thing.head) && !isLocking(thing)
  if (isFastener && of !== undefined && FASTENING.has(verb) && things.some(other => isLikeThing(of, other))) return true
  if (rest.includes(thing.head) || rest.includes(`${thing.head}s`))
    return undone === 'disconnected' || (isFastener && isBy(rest, thing.head))
  return (
    isFastener &&
    undone === 'removed' &&
    (FASTENING.has(verb) || (action.particle === 'on' && action.acts.has('connect'))) &&
    things.some(other => thing.words.slice(0, -1).includes(other.head))
  )
}

/** Whether power is back: told in so many words, or, where no isolator was opened, by the machine running. */
const isPowered = ({ thing, step }: Open, { verb, particle, things }: Action): boolean => {
  if (things.some(({ head }) => FLOWING.has(head))) return false
  if (things.some(isCut)) return true
  const isAtSource = ISOLATED.test(`${thing.name} ${step.text}`)
  return (
    RESTARTS.has(verb) &&
    !((verb === 'start' || verb === 'run' || verb === 'restart' || verb === 'fire') && isAtSource && particle !== 'on')
  )
}

const ISOLATED = /\b(?:isolator|breaker|mains|supply|disconnect|fuse|main switch)\b/i

/** Filling a new filter does not fit it. */
const isOnlyFilling = ({ acts }: Action): boolean =>
  acts.has('fill') && !acts.has('refit') && !acts.has('connect') && !acts.has('tighten')

/** Whether something is taken from another place than where the aid was put. */
const isElsewhere = (rest: readonly string[], { of, thing }: Open): boolean => {
  const words = rest.map(word => word.replace(/s$/, ''))
  const place = of === undefined || of === thing ? undefined : of.head
  return (
    place !== undefined &&
    place !== '' &&
    !words.includes(place) &&
    rest.length > 1 &&
    !of?.words.some(word => words.includes(word))
  )
}

const UNDONE = Object.keys(REDO) as readonly Undone[]

const AWAY = wordSet('out off away aside down clear free')

/** @returns whether a thing is moved out of the way: "fold the prop down", "swing the stay aside". */
export const isAway = ({ particle, verb }: Action): boolean =>
  (particle !== undefined && AWAY.has(particle)) || verb === 'unhook' || verb === 'stow'

const PROPS = wordSet('prop wedge chock block stay strut bar timber sprag pin post')

/** @returns which kinds of undoing an action can make good at all. */
export const redoneBy = onceFor((action: Action): ReadonlySet<Undone> => {
  const redone = new Set(UNDONE.filter(undone => REDO[undone].some(act => action.acts.has(act))))
  if (isAway(action) && action.things.some(({ head }) => PROPS.has(head))) redone.add('added')
  if (isGathering(action)) redone.add('added')
  if (mayTension(action)) redone.add('loosened')
  // "Take your padlock out of the fuse carrier": however a lock comes off.
  if (action.acts.has('remove') && action.things.some(({ head }) => LOCKS.has(head) && !isCutHead(head)))
    redone.add('locked')
  // "Undo the hatch" opens it.
  if (action.acts.has('close') && action.things.some(({ head }) => SHUT.has(head))) redone.add('loosened')
  return redone
})
const isCutHead = (head: string): boolean => head === 'isolator' || head === 'breaker' || head === 'isolation'
const SHUT = wordSet('hatch door lid gate flap cover hood bonnet panel guard')

/** @returns whether an action makes good what is open; `stems` are those of the whole step, for "put it back". */
export const isMadeGood = (open: Open, action: Action, stems: ReadonlySet<string>): boolean => {
  const { thing, undone, step } = open
  if (isSwungBack(open, action) || isTensioned(open, action)) return true
  // "Plug the feeder in": its plug is out of the lock box.
  if (
    action.verb === 'plug' &&
    action.particle === 'in' &&
    thing.head === 'plug' &&
    (thing.words.length === 1 || isCord(thing)) &&
    !LETS_RUN.test(step.text)
  )
    return true
  if (!redoneBy(action).has(undone)) return false
  const { acts, things, verb, rest } = action
  if (
    undone === 'added' &&
    !(rest[0] === 'from' && isElsewhere(rest, open)) &&
    (verb === 'unplug' || (acts.has('remove') && things.some(({ head }) => WEDGES.has(head))))
  )
    return true
  // "Pull the timbers from under the deck" leaves the one in the blade.
  if (
    undone === 'added' &&
    rest[0] === 'from' &&
    open.of !== undefined &&
    open.of.head !== '' &&
    isElsewhere(rest, open)
  )
    return false
  if (undone === 'removed' && rest.some(word => FIXTURES.has(word) || (acts.has('refit') && STOOD_ON.has(word))))
    return false
  if (undone === 'removed' && isOnlyFilling(action) && !FLUIDS.has(thing.head)) return false
  switch (undone) {
    case 'switched-off':
      return isPowered(open, action)
    case 'locked':
      return (
        verb === 'unlock' ||
        verb === 'untag' ||
        things.some(({ head, words }) => LOCKS.has(head) || words.includes('lock'))
      )
    case 'raised':
      return (
        (verb === 'lower' && (SEPARATE.has(thing.head) || !things.some(({ head }) => SEPARATE.has(head)))) ||
        action.particle === 'down' ||
        isPronoun(action) ||
        (action.particle === 'off' && rest.some(word => STOOD_ON.has(word))) ||
        things.some(({ head }) => isKin(head, thing.head) || VEHICLES.has(head))
      )
    case 'closed':
      return isSomeOf(open, action, stems) || things.some(({ head }) => FLOWS.has(head))
    case 'disconnected':
      // "Unplug the packer" is made good by its plug.
      if (
        /\bunplug/i.test(step.text) &&
        !(LEADS.has(thing.head) && !isCord(thing)) &&
        things.some(
          other => (other.head === 'plug' && other.words.length === 1) || (PLUGS.has(other.head) && isCord(other)),
        )
      )
        return true
      // What is unplugged does not come back by being started.
      // Locked in its box, a plug stays apart.
      return (
        !(verb === 'lock' && (isCut(thing) || isCord(thing))) &&
        !((verb === 'start' || verb === 'restart') && /\b(?:un)?plug/i.test(step.text)) &&
        isSomeOf(open, action, stems)
      )
    case 'drained':
      return !things.some(other => isOtherFluid(other, thing))
    default:
      return isSomeOf(open, action, stems)
  }
}
