import { type Act, FASTENERS } from '@/lib/trade/pairs'
import { type Action, actionsOf } from '../action'
import { isDisposing } from '../disposing'
import { quote } from '../late'
import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'
import { isLikeThing } from '../thing'

const MINOR = new Set(
  'keep hold let wait leave allow make be check look feel listen watch note record write use repeat press run start stop switch power shut unplug turn cool'.split(
    ' ',
  ),
)

/** Where the thing in hand goes then: no action of its own. */
const ASIDE = new Set(['put', 'place', 'lay', 'set'])

/** Screws go with what they hold, both off or both on. */
const SIDES: readonly (readonly Act[])[] = [
  ['remove', 'loosen', 'disconnect', 'open'],
  ['refit', 'tighten', 'connect', 'close'],
]
const isOn = ({ acts }: Action, side: readonly Act[]): boolean => side.some(act => acts.has(act))

const isOfFastener = ({ things }: Action): boolean => things.some(({ head }) => FASTENERS.has(head))

/** How it is done is no second thing to do. */
const MANNER = /\b(?:by|while) (?=[a-z]+ing\b)[^.;]*/gi

const ROLLS = new Set(['push', 'roll', 'ride', 'spin', 'drive', 'walk', 'wheel'])
const BRAKES = new Set(['brake', 'handbrake', 'lever', 'pedal'])
const TRIES = new Set(['pull', 'press', 'apply', 'squeeze', 'try', 'work', 'brake', 'step'])

/** Two actions that are one move: on one thing, screws with what they hold, or done at once. */
const areOne = (a: Action, b: Action): boolean => {
  if (b.things.length === 0 || b.things.some(({ head }) => head === '') || a.things.length === 0) return true
  // "Push the trolley and pull the hand brake": the brake is tried by it.
  if (ROLLS.has(a.verb) && TRIES.has(b.verb) && b.things.some(({ head }) => BRAKES.has(head))) return true
  if (MINOR.has(a.verb) || MINOR.has(b.verb) || ASIDE.has(b.verb)) return true
  if (
    a.things.some(thing =>
      b.things.some(
        other => isLikeThing(thing, other) || thing.words.includes(other.head) || other.words.includes(thing.head),
      ),
    )
  )
    return true
  const drivesIn = (one: Action, other: Action) =>
    isOfFastener(one) && one.acts.size === 0 && SIDES.some(side => isOn(other, side))
  if (drivesIn(a, b) || drivesIn(b, a)) return true
  return SIDES.some(side => isOn(a, side) && isOn(b, side)) && (isOfFastener(a) || isOfFastener(b))
}

/** One step, one thing to do. */
export const twoActions: Rule = {
  id: 'two-actions',
  level: 'consider',
  about: 'A step tells to do several things.',
  why: 'The second one is skipped: the eye comes back to the next number.',
  source: 'ASD-STE100 rule 5.2, issue 8; IEC/IEEE 82079-1:2019: one action a step (from memory)',
  trips: sample([['step', 'Drain the tank, remove the pump and fit the new seal']]),
  passes: sample([
    ['step', 'Undo the four screws and lift off the cover'],
    ['step', 'Lift out and rinse the tray'],
  ]),
  ...eachMark(['step'], mark => {
    if (isDisposing(mark.text)) return []
    const actions = actionsOf(mark.text.replaceAll(MANNER, ''))
    let breaks = 0
    for (let i = 1; i < actions.length; i++) {
      const [a, b] = [actions[i - 1], actions[i]]
      if (a !== undefined && b !== undefined && !areOne(a, b)) breaks++
    }
    const heads = new Set(actions.flatMap(({ things }) => things.map(({ head }) => head)))
    if (breaks === 0 && (actions.length < 3 || heads.size < 2)) return []
    return [
      {
        place: atMark(mark),
        message: `Step ${quote(mark)} tells ${actions.length} things to do: ${actions.map(({ verb, particle }) => (particle === undefined ? verb : `${verb} ${particle}`)).join(', ')}. Make a step of each.`,
      },
    ]
  }),
}
