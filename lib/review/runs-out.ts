import type { Sheet } from '@/lib/procedure/sheet'
import { wordSet } from '@/lib/trade/list'
import type { Action } from './action'
import type { Unplaced } from './open'
import { type Thing, toThing } from './thing'

const RUNS_OUT = /\b(?:oil|coolant|antifreeze|hydraulic fluid|brake fluid|transmission fluid|gear oil)\b/i
const DRAINED_OF = wordSet('crankcase gearbox sump radiator transmission differential axle engine gearcase')
const DRAINS = wordSet('plug tap cock valve screw bolt')

/** @returns what runs out when a drain is opened, as the words of the step and of its checks name it. */
export const runsOut = ({ acts, things, rest }: Action, texts: readonly string[]): Thing | undefined => {
  const isDrain = things.some(({ words, head }) => DRAINS.has(head) && words.includes('drain'))
  if (!isDrain || !(acts.has('open') || acts.has('remove') || acts.has('loosen'))) return undefined
  const fluid = texts.map(text => RUNS_OUT.exec(text)?.[0]).find(word => word !== undefined)
  const vessel = fluid ?? [...things.flatMap(({ words }) => words), ...rest].find(word => DRAINED_OF.has(word))
  return vessel === undefined ? undefined : toThing(vessel.toLowerCase().split(' '))
}

/** A pan put under a joint says that something runs out of it. */
const CATCHES =
  /\b(?:pan|tray|bucket|container|bowl|jar|jug|tub|rags?|absorbent)\b[^.;]*\b(?:under|below|beneath|ready|catch)\b|\bcatch\w*\b[^.;]*\b(?:oil|coolant|fluid)\b/i
/** What flows in the circuit a job opens, by its title and equipment. */
const FLUIDS_BY_JOB: readonly (readonly [job: RegExp, fluid: string])[] = [
  [/\bhydraulics?\b(?! (?:disc|brake))/i, 'hydraulic oil'],
  [/\b(?:radiator|coolant|cooling system|thermostat|water pump)\b/i, 'coolant'],
  [/\bbrakes?\b[^.]*\b(?:hoses?|lines?|calipers?|cylinders?)\b/i, 'brake fluid'],
  [/\bpower steering\b/i, 'steering fluid'],
  [/\boil cooler|transmission cooler\b/i, 'oil'],
]
const fluidIn = ({ heading }: Sheet): string | undefined =>
  FLUIDS_BY_JOB.find(([job]) => job.test(`${heading.title} ${heading.equipment}`))?.[1]
/** @returns what a hydraulic, cooling or brake circuit loses when a line of it is opened over a pan; undefined where none is put ready. */
export const fluidCaught = (sheet: Sheet): string | undefined =>
  sheet.steps.some(({ mark }) => CATCHES.test(mark.text)) ? fluidIn(sheet) : undefined

const LINES = wordSet('hose line pipe fitting union nut coupling banjo tube connector')
/** @returns whether a line of a circuit is opened. */
export const isLine = ({ thing, undone }: Unplaced): boolean =>
  (undone === 'disconnected' || undone === 'removed' || undone === 'loosened') &&
  (thing.words.includes('hose') ||
    thing.words.includes('line') ||
    thing.words.includes('pipe') ||
    thing.words.includes('union')) &&
  LINES.has(thing.head)
