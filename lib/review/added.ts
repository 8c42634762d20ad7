import { wordSet } from '@/lib/trade/list'
import type { Action } from './action'
import { onceFor } from './memo'
import { type Thing, toThing } from './thing'

const AIDS_IN =
  /\b(?:(?:plastic|blanking|rubber|blank|sealing|transport) (?:plug|cap)|masking tape|locking (?:pin|tool|plate)|timing pin|gauge manifold|manifold gauge|jumper(?: wire| lead)?|bypass lead|hose pinch|pinch clamp)\b/
/** What is held with something pushed in between must be free again before it turns. */
const JAMS = wordSet('wedge jam block lock')
const TURNING = wordSet(
  'blade shaft flywheel pulley gear rotor impeller spindle crankshaft drum chain sprocket fan wheel disc',
)
const BRINGS = wordSet(
  'cap plug mask fit insert install connect place put push attach clip block seal stick apply tape bridge',
)

/** What stands about the work until it is over. Chocks may well stay. */
const ABOUT = wordSet('cone barrier bollard')
const SETS = wordSet('set put place stand lay position')
const GATHERS = wordSet('gather collect pick clear bring take lift stow load fetch remove')

const NONE: readonly Thing[] = []

/** Tools that hold or turn from where they were put, and would fly or jam once it runs. Common practice, no source. */
export const LEFT_ON = wordSet('handwheel crank strut prop')
/** @returns the tool that an action leaves on the machine: pushed onto its shaft, or set under what was lifted. */
export const leftOn = onceFor(({ acts, verb, things, rest }: Action): readonly Thing[] => {
  if (acts.has('remove') || (rest[0] !== 'on' && rest[0] !== 'onto')) return NONE
  const brought = things.filter(({ head }) => LEFT_ON.has(head))
  if (brought.length > 0) return acts.has('refit') ? brought : NONE
  const under = rest.find(word => word === 'strut' || word === 'prop')
  return LIFTS.has(verb) && under !== undefined && !rest.includes('its') ? [toThing([under])] : NONE
})
const LIFTS = wordSet('lift rest raise lower set prop support lean')

/** @returns whether an action takes away what stood about the work. */
export const isGathering = ({ verb, things }: Action): boolean =>
  GATHERS.has(verb) && things.some(({ head }) => ABOUT.has(head))

/** @returns what an action puts in only for the time of the work: blanking plugs, masking, a locking pin, a gauge manifold. */
export const addedBy = onceFor(({ verb, acts, things, along, rest, isAgain }: Action): readonly Thing[] =>
  isAgain
    ? NONE
    : JAMS.has(verb) && rest[0] === 'between' && rest.some(word => TURNING.has(word))
      ? things.filter(({ head }) => head !== '')
      : JAMS.has(verb) && things.some(({ words }) => words.some(word => TURNING.has(word)))
        ? along.filter(({ head }) => head !== '')
        : [
            ...(BRINGS.has(verb) && !acts.has('remove')
              ? [...things, ...along].filter(({ words }) => AIDS_IN.test(words.join(' ')))
              : NONE),
            ...(SETS.has(verb) ? things.filter(({ head }) => ABOUT.has(head)) : NONE),
          ],
)
