import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { type Act, FASTENERS } from '@/lib/trade/pairs'
import { DISPOSAL } from '@/lib/trade/waste'
import { type Action, actionsOf } from './action'
import { PREPOSITIONS } from './grammar'
import { onceFor } from './memo'
import { isKin, isLikeThing, isSameThing, type Thing, toThing } from './thing'
import { addedBy, isCut, type Undone, undoneBy } from './undone'
import { stemSet } from './words'

/** Something undone in a step and not made good by any later one. */
export type Open = {
  readonly undone: Undone
  readonly thing: Thing
  readonly step: Mark
  readonly number: number
  /** What it holds: the panel of "the four screws of the base panel". */
  readonly of: Thing | undefined
  /** How many things the same words undo: "the mount, bearing and upper seat". */
  readonly among: number
}

const REDO: Readonly<Record<Undone, readonly Act[]>> = {
  removed: ['refit', 'connect', 'fill', 'tighten'],
  opened: ['close'],
  closed: ['open'],
  drained: ['fill'],
  disconnected: ['connect', 'on'],
  loosened: ['tighten', 'refit'],
  'switched-off': ['on'],
  locked: ['unlock'],
  raised: ['lower'],
  added: ['remove', 'disconnect', 'open'],
}

const oneOf = (text: string): ReadonlySet<string> => new Set(text.split(' '))
const FIXTURES = oneOf('vice vise bench jig')
const LOCKS = oneOf('lock tag padlock lockout isolation isolator breaker hasp')
const VEHICLES = oneOf('car vehicle machine jack bike van truck stand')
/** Small plugs inside a machine, not the one in the wall. */
const LEADS = oneOf('connector lead cable hose sensor harness wire plug')
const FLOWING = oneOf('valve tap cock water gas')
const RESTARTS = oneOf(
  'switch turn power restore energise energize re-energise re-energize start restart run enable activate boot bring fire return reinstate plug',
)
const FLUIDS = oneOf('oil coolant antifreeze water fuel petrol diesel electrolyte')
/** Verbs that bring something to the job that may be taken away again. */
const PLACING = oneOf(
  'place put lay set hang fit clamp wedge stand slide spread support connect hook insert tape mask cover tie strap chock block plug cap wrap slip screw thread use push mount attach',
)
const LOCK = toThing(['lock'])

const isOtherFluid = (a: Thing, b: Thing): boolean => FLUIDS.has(a.head) && FLUIDS.has(b.head) && a.head !== b.head

const isPronoun = ({ things }: Action): boolean => things.length === 0 || things.some(({ head }) => head === '')

const OWNS = new Set(['of', 'from', 'on', 'in', 'at', 'holding', 'securing'])

const ownerIn = (rest: readonly string[]): Thing | undefined => {
  if (!OWNS.has(rest[0] ?? '')) return undefined
  const end = rest.findIndex((token, i) => i > 0 && PREPOSITIONS.has(token))
  const owner = toThing(rest.slice(1, end < 0 ? rest.length : end))
  return owner.head === '' ? undefined : owner
}

const isSomeOf = ({ thing, undone, of }: Open, action: Action, stems: ReadonlySet<string>): boolean => {
  const { things, rest, along, verb } = action
  if (things.some(other => isLikeThing(thing, other)) || along.some(other => isLikeThing(thing, other))) return true
  if (isPronoun(action) && (stems.has(thing.head) || (verb === 'plug' && undone === 'disconnected'))) return true
  if (verb === 'plug' && undone === 'disconnected' && thing.head === 'plug')
    return !things.some(({ head }) => LEADS.has(head))
  const isFastener = FASTENERS.has(thing.head)
  if (isFastener && of !== undefined && things.some(other => isLikeThing(of, other))) return true
  if (rest.includes(thing.head) || rest.includes(`${thing.head}s`)) return isFastener || undone === 'disconnected'
  return isFastener && undone === 'removed' && things.some(other => thing.words.slice(0, -1).includes(other.head))
}

/** Whether power is back: told in so many words, or, where no isolator was opened, by the machine running. */
const isPowered = ({ thing, step }: Open, { verb, particle, things }: Action): boolean => {
  if (things.some(({ words }) => words.some(word => FLOWING.has(word)))) return false
  if (things.some(isCut)) return true
  const isAtSource = ISOLATED.test(`${thing.name} ${step.text}`)
  return (
    RESTARTS.has(verb) &&
    !((verb === 'start' || verb === 'run' || verb === 'restart' || verb === 'fire') && isAtSource && particle !== 'on')
  )
}

const ISOLATED = /\b(?:isolator|breaker|mains|supply|disconnect|fuse|main switch)\b/i

const isMadeGood = (open: Open, action: Action, stems: ReadonlySet<string>): boolean => {
  const { thing, undone } = open
  const { acts, things, verb, rest } = action
  if (undone === 'added' && verb === 'unplug') return true
  if (undone === 'removed' && rest.some(word => FIXTURES.has(word))) return false
  if (!REDO[undone].some(act => acts.has(act))) return false
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
        verb === 'lower' ||
        action.particle === 'down' ||
        isPronoun(action) ||
        things.some(({ head }) => isKin(head, thing.head) || VEHICLES.has(head))
      )
    case 'drained':
      return !things.some(other => isOtherFluid(other, thing))
    default:
      return isSomeOf(open, action, stems)
  }
}

const ASSEMBLY = new Set<Undone>(['removed', 'opened', 'disconnected', 'loosened'])
const GENERAL =
  /\b(?:in reverse|reverse order|(?:reassemble|refit|replace|reinstall|fasten|secure|reconnect|return|put) (?:back )?(?:everything|the (?:rest|remaining|others?|machine|unit|parts)|all (?:the )?(?:(?:removed|other|remaining) )?(?:parts|components|covers|panels|guards|items|connections))\b)/i
const LEFT_SO =
  /\b(?:leave|keep)\b.*\b(?:out|off|open|disconnected|loose|drained|empty|closed|shut|unplugged|removed)\b/i
const AWAY = /^(?:[a-z]+ly )?(?:take|put|hand|return|dispose|recycle|bin|throw|place|drop)\b/i
const DONE =
  /\b(?:refitted|replaced|reinstalled|fitted|in place|back on|back in|closed|shut|reconnected|connected|plugged in|tight|tightened|torqued|secured?|filled|refilled|full|latched|seated|restored|lowered)\b/i

const isHeldFastener = ({ thing, undone }: Open): boolean =>
  FASTENERS.has(thing.head) && (undone === 'removed' || undone === 'loosened')

/** Screws undone together with the part they hold follow that part. */
const withoutHeldFasteners = (items: readonly Open[]): readonly Open[] =>
  items.some(({ thing, undone }) => undone === 'removed' && !FASTENERS.has(thing.head))
    ? items.filter(item => !isHeldFastener(item))
    : items

const isTwin = (a: Open, b: Open): boolean =>
  a.undone === b.undone && isSameThing(a.thing, b.thing) && a.thing.name === b.thing.name

/** Verbs whose object stays where it is: what goes along is brought. */
const COVERING = oneOf('wedge chock block mask cover cap plug tie strap support tape clamp wrap')

const broughtBy = ({ acts, verb, things, along }: Action): readonly Thing[] => {
  if (acts.has('remove')) return []
  if (COVERING.has(verb)) return verb === 'tape' || verb === 'strap' ? [...things, ...along] : along
  return acts.has('refit') || PLACING.has(verb) ? [...things, ...along] : []
}

/** The parts as they stand between two steps. */
class Ledger {
  open: Open[] = []
  readonly #present: Thing[] = []
  readonly #tools: readonly ReadonlySet<string>[]

  constructor(sheet: Sheet) {
    this.#tools = sheet.tools.map(tool => stemSet(tool.text))
  }

  step({ mark, number, checks }: SheetStep): void {
    const stems = stemSet(mark.text)
    if (GENERAL.test(mark.text)) this.open = this.open.filter(({ undone }) => !ASSEMBLY.has(undone))
    if (LEFT_SO.test(mark.text)) this.open = this.open.filter(({ thing }) => !stems.has(thing.head))
    let fresh: Open[] = []
    if (DISPOSAL.test(mark.text) && AWAY.test(mark.text)) return
    for (const action of actionsOf(mark.text)) {
      const still = (item: Open) => !isMadeGood(item, action, stems)
      const before = this.open.length + fresh.length
      this.open = this.open.filter(still)
      fresh = fresh.filter(still)
      const isClosing = this.open.length + fresh.length < before
      this.#present.push(...broughtBy(action))
      if (isClosing && !action.acts.has('remove')) continue
      for (const item of this.#opened(action, mark, number)) {
        this.open = this.open.filter(
          other =>
            !isTwin(other, item) &&
            !(other.undone === 'loosened' && item.undone !== 'loosened' && isSameThing(other.thing, item.thing)),
        )
        fresh.push(item)
      }
    }
    this.open.push(...withoutHeldFasteners(fresh))
    for (const { text } of checks)
      if (DONE.test(text))
        this.open = this.open.filter(item => item.number === number || !stemSet(text).has(item.thing.head))
  }

  #opened(action: Action, step: Mark, number: number): readonly Open[] {
    const things = action.acts.has('lock') && action.things.length === 0 ? [LOCK] : action.things
    const added = addedBy(action).map(
      (thing): Open => ({ undone: 'added', thing, step, number, of: undefined, among: 1 }),
    )
    const undone = things.flatMap(thing => {
      const undone = undoneBy(action, thing)
      if (undone === undefined) return []
      const isTaken = undone === 'removed' || undone === 'disconnected' || undone === 'loosened'
      if (isTaken && this.#present.some(other => isSameThing(other, thing))) return []
      if (undone === 'removed' && this.#tools.some(tool => thing.words.every(word => tool.has(word)))) return []
      return [{ undone, thing, step, number, of: ownerIn(action.rest), among: things.length }]
    })
    return [...added, ...undone]
  }
}

/** Titles of jobs that end with things apart, or with the machine laid up. */
const TAKES_APART =
  /\b(?:removal|dismantl\w*|strip(?:ping)? ?down|tear ?down|disassembl\w*|scrap\w*|decommission\w*)\b/i
const LAYS_UP = /\b(?:winteri[sz]\w*|lay(?:ing)? ?up|shut(?:ting)? ?down|storage|mothball\w*)\b/i
const LEFT_WHEN_LAID_UP = new Set<Undone>(['opened', 'closed', 'drained', 'switched-off', 'disconnected', 'locked'])

/**
 * Follows every part through the procedure.
 *
 * @returns what was undone and never made good, in order of the steps. Parts brought earlier in the same procedure (a
 *   puller, a locking pin) may come off again; fasteners count as back with the part they hold.
 */
export const openItems = onceFor((sheet: Sheet): readonly Open[] => {
  const { title } = sheet.heading
  if (TAKES_APART.test(title)) return []
  const ledger = new Ledger(sheet)
  for (const step of sheet.steps) ledger.step(step)
  return LAYS_UP.test(title) ? ledger.open.filter(({ undone }) => !LEFT_WHEN_LAID_UP.has(undone)) : ledger.open
})
