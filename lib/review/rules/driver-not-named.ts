import type { SheetStep } from '@/lib/procedure/sheet'
import { actionsOf } from '../action'
import { atSteps } from '../chunks'
import { quote } from '../late'
import { onceForText } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isSameThing, type Thing, toThing } from '../thing'

const TURNED = new Set('screw bolt nut union setscrew capscrew'.split(' '))
const BY_HAND =
  /\b(?:(?:adjusting|adjustment|regulating|adjuster) screw\b[^.;]*\b(?:in|out|anti-?clockwise|clockwise|counter-?clockwise)|by hand|hand tight|finger|thumb|wing|knurled)\b/i
const TURNS =
  /\b(?:spanner|wrench|socket|driver|screwdriver|ratchet|key|hex|allen|torx|pliers|impact|bar|brace|bit|grips)s?\b/i

/** Bare "screws" are those of what the step takes off with them. */
const ownOf = (thing: Thing, all: readonly Thing[]): Thing => {
  const held = thing.rest.length > 0 ? undefined : all.find(({ head }) => !TURNED.has(head) && head !== '')
  return held === undefined ? thing : toThing([...held.words, thing.head])
}

/** Fasteners that a step turns with a tool. */
const turnedIn = onceForText((text: string): readonly Thing[] => {
  if (BY_HAND.test(text)) return []
  const actions = actionsOf(text)
  const all = actions.flatMap(({ things }) => things)
  return actions
    .filter(
      ({ acts, verb }) =>
        verb !== 'open' &&
        verb !== 'close' &&
        verb !== 'shut' &&
        (acts.has('loosen') || acts.has('remove') || acts.has('tighten')),
    )
    .flatMap(({ things }) => things.filter(({ head, words }) => TURNED.has(head) && !words.includes('thumb')))
    .map(thing => ownOf(thing, all))
})

const hasTool = ({ mark, tools }: SheetStep): boolean =>
  TURNS.test(mark.text) || tools.some(({ text }) => TURNS.test(text))

/** Whether this sheet names the driver with each step: else a list at its head is all that can be asked. */
const isStepwise = (steps: readonly SheetStep[]): boolean => {
  const own = steps.filter(hasTool).length
  return own >= 2 && own >= 0.4 * steps.length
}

const turningIn = atSteps(({ mark }) => (turnedIn(mark.text).length > 0 ? [{}] : []))

const check = ({ sheet }: Subject): readonly Found[] => {
  const steps = turningIn(sheet).map(({ step }) => step)
  if (!isStepwise(steps)) return []
  const known = steps.filter(hasTool).flatMap(({ mark }) => turnedIn(mark.text))
  const seen: Thing[] = []
  return steps.flatMap((step): Found[] => {
    const left = turnedIn(step.mark.text).find(thing => ![...known, ...seen].some(other => isSameThing(other, thing)))
    if (hasTool(step) || left === undefined) return []
    seen.push(left)
    return [
      {
        place: atMark(step.mark),
        message: `Step ${step.number}, ${quote(step.mark)}, turns the ${left.name} and names no tool for it. Say which driver or spanner fits, with its size.`,
      },
    ]
  })
}

/** Which spanner? */
export const driverNotNamed: Rule = {
  id: 'driver-not-named',
  level: 'consider',
  about: 'A fastener is turned and no driver or spanner for it is named, although other steps name theirs.',
  why: 'The next person goes back and forth between the machine and the drawers, or rounds the head.',
  source: 'IEC/IEEE 82079-1:2019: tools and materials up front (from memory)',
  trips: sample([
    ['step', 'Undo the cover screws'],
    ['tool', 'Torx T20 driver'],
    ['step', 'Loosen the hub bolt'],
    ['tool', '17 mm spanner'],
    ['step', 'Undo the terminal nuts'],
  ]),
  passes: sample([
    ['step', 'Undo the cover screws'],
    ['tool', 'Torx T20 driver'],
    ['step', 'Loosen the hub bolt'],
    ['tool', '17 mm spanner'],
    ['step', 'Undo the wing nuts by hand'],
  ]),
  check,
}
