import { wordSet } from '@/lib/trade/list'
import type { Action } from './action'
import { onceFor } from './memo'
import type { Thing } from './thing'

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

/** @returns whether an action takes away what stood about the work. */
export const isGathering = ({ verb, things }: Action): boolean =>
  GATHERS.has(verb) && things.some(({ head }) => ABOUT.has(head))

/** @returns what an action puts in only for the time of the work: blanking plugs, masking, a locking pin, a gauge manifold. */
export const addedBy = onceFor(({ verb, acts, things, along, isAgain }: Action): readonly Thing[] =>
  isAgain
    ? NONE
    : JAMS.has(verb) && things.some(({ head }) => TURNING.has(head))
      ? along.filter(({ head }) => head !== '')
      : [
          ...(BRINGS.has(verb) && !acts.has('remove')
            ? [...things, ...along].filter(({ words }) => AIDS_IN.test(words.join(' ')))
            : NONE),
          ...(SETS.has(verb) ? things.filter(({ head }) => ABOUT.has(head)) : NONE),
        ],
)
