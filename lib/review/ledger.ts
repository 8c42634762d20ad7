import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'
import { wordSet } from '@/lib/trade/list'
import { type Act, FASTENERS } from '@/lib/trade/pairs'
import { type Action, actionsOf } from './action'
import { addedBy, isGathering, LEFT_ON, leftOn } from './added'
import { atSteps } from './chunks'
import { grouped } from './grouped'
import { listedThing } from './listed'
import { onceForLast } from './memo'
import type { Open, Unplaced } from './open'
import { isMoved, isPutBack } from './put-back'
import { isLocking, isMadeGood, ownerIn, redoneBy } from './restored'
import { fluidCaught, isLine, runsOut } from './runs-out'
import { ENDS, tellsOf } from './tells'
import { isOpposed, isSameThing, type Thing, toThing } from './thing'
import { isCut, isShut, type Undone, undoneBy } from './undone'
import { stemSet } from './words'

/** Verbs that bring something to the job that may be taken away again. */
const PLACING = wordSet(
  'place put lay set hang fit clamp wedge stand slide spread support connect hook insert tape mask cover tie strap chock block plug cap wrap slip screw thread use push mount attach',
)
const BINDS = wordSet('tie lash strap chain clamp hitch hook rope wedge chock block pin lock')
const LOCK = toThing(['lock'])

const ASSEMBLY = new Set<Undone>(['removed', 'opened', 'disconnected', 'loosened'])
const isHeldFastener = ({ thing, undone }: Open): boolean =>
  FASTENERS.has(thing.head) && !isLocking(thing) && (undone === 'removed' || undone === 'loosened')

/** Screws undone together with the part they hold follow that part. */
const withoutHeldFasteners = (items: readonly Open[]): readonly Open[] =>
  items.some(({ thing, undone }) => undone === 'removed' && !FASTENERS.has(thing.head))
    ? items.filter(item => !isHeldFastener(item))
    : items

/** Tied by its head, a ladder is untied. */
const isBoundAt = (bound: Thing, thing: Thing): boolean => isSameThing(bound, thing) || bound.words.includes(thing.head)

/** The head of the old spoke goes with it. */
const isPortion = ({ undone, thing }: Open, open: readonly Open[]): boolean =>
  undone === 'removed' &&
  PORTIONS.has(thing.head) &&
  open.some(other => other.undone === 'removed' && other.thing.head === thing.words.at(-2))
const PORTIONS = wordSet('head end half piece rest stub stump remains tail')

const isSwapped = ({ undone, thing }: Open, swapped: string): boolean =>
  undone === 'removed' && thing.head !== '' && swapped.includes(thing.head)

const isTwin = (a: Open, b: Open): boolean =>
  a.undone === b.undone && isSameThing(a.thing, b.thing) && a.thing.name === b.thing.name

const isRenewed = ({ thing, undone }: Open, action: Action, heads: ReadonlySet<string>): boolean =>
  heads.has(thing.head) &&
  redoneBy(action).has(undone) &&
  action.things.some(other => other.head === thing.head && !isOpposed(other.words, thing.words))

/** Fitted under another name, the material listed for the step is what came off: "a fresh sheet" of sandpaper. */
const isBrought = ({ thing, undone }: Open, { acts, things }: Action, brings: readonly Thing[]): boolean =>
  undone === 'removed' &&
  (acts.has('refit') || acts.has('connect') || acts.has('tighten')) &&
  !FASTENERS.has(thing.head) &&
  brings.some(({ words }) => words.includes(thing.head) && things.some(({ head }) => words.includes(head)))

/** Verbs whose object stays where it is: what goes along is brought. */
const COVERING = wordSet('wedge chock block mask cover cap plug tie strap support tape clamp wrap lock hold prop peg')

/** "Draw the clamp bars up hard": tightened and never loosened before, a clamp was put there for the work. */
const isDrawnTight = (verb: string, acts: ReadonlySet<Act>): boolean =>
  acts.has('tighten') && (verb === 'draw' || verb === 'pull' || verb === 'wind' || verb === 'crank' || verb === 'pinch')

const broughtBy = ({ acts, verb, things, along }: Action): readonly Thing[] => {
  if (acts.has('remove')) return []
  if (COVERING.has(verb)) return verb === 'tape' || verb === 'strap' ? [...things, ...along] : along
  return acts.has('refit') || PLACING.has(verb) || isDrawnTight(verb, acts) ? [...things, ...along] : []
}

/** "Take the lid off and set it on a towel" does not put it back. */
const isSetAside = ({ verb, things }: Action): boolean => SETS.has(verb) && things.every(({ head }) => head === '')
const SETS = wordSet('set put lay place hang tie keep stand store rest')

/** Whether an action undoes, makes good or brings anything at all. */
const isTelling = (action: Action): boolean =>
  action.acts.size > 0 ||
  [PLACING, COVERING, MORE_TOLD].some(verbs => verbs.has(action.verb)) ||
  isMoved(action) ||
  isGathering(action)
const MORE_TOLD = wordSet('apply add tip jam')

/** A cover that is swung down although it was never opened hangs open then. */
const isHingedShut = ({ verb, acts, particle }: Action): boolean =>
  acts.has('close') && particle === 'down' && HINGES.has(verb)
const HINGES = wordSet('hinge swing fold drop flip tilt pivot')

const isShutting = (action: Action): boolean => isShut(action) || action.particle === 'off'

/** What an action undoes or puts in for the time of the work. */
const opensBy = (action: Action, step: Mark): readonly Unplaced[] => {
  const things = action.acts.has('lock') && action.things.length === 0 ? [LOCK] : action.things
  const of = ownerIn(action.rest)
  const added = addedBy(action).map(
    (thing): Unplaced => ({ undone: 'added', thing, step, of: action.things[0], among: 1 }),
  )
  const undone = things.flatMap((thing): readonly Unplaced[] => {
    const undone = undoneBy(action, thing)
    return undone === undefined ? [] : [{ undone, thing, step, of, among: things.length }]
  })
  const left = leftOn(action).map((thing): Unplaced => ({ undone: 'added', thing, step, of: undefined, among: 1 }))
  return [...added, ...left, ...undone]
}

const LEVEL = /\b(?:level|sight glass|dipstick|max(?:imum)? (?:mark|line)|full mark)\b/i

/** "Tip the hopper up and lock it": no supply is locked. */
const isLatching = (action: Action, actions: readonly Action[]): boolean => {
  if (action.verb !== 'lock' || action.things.some(({ head }) => head !== '')) return false
  const before = actions[actions.indexOf(action) - 1]?.things ?? []
  return before.length > 0 && before.every(thing => thing.head !== '' && !isCut(thing))
}

/** What a device that guards an opening does when it is opened. */
const STOPS =
  /\b(?:stops?|stopped|halts?|dies|cuts? (?:out|off)|drops? out|trips?|goes? (?:out|off|dead)|stands? still|will not (?:start|run)|does not (?:start|run))\b/i

/** What a step tells the ledger; read once a step. */
const tellingIn = atSteps(({ mark, checks, materials }) => {
  const tells = tellsOf(mark.text)
  const texts = [mark.text, ...checks.map(({ text }) => text)]
  const actions = actionsOf(mark.text)
  // Opened to see it stop, a guard was only tried.
  const isTrial = checks.some(({ text }) => STOPS.test(text))
  const telling = actions.filter(isTelling).map(action => ({
    action,
    drained: runsOut(action, texts),
    opens: isLatching(action, actions)
      ? []
      : opensBy(action, mark).filter(({ undone }) => undone !== 'opened' || !isTrial),
  }))
  const done = checks.filter(({ text }) => tellsOf(text).isDone).map(({ text }) => stemSet(text))
  const isLevel = checks.some(({ text }) => LEVEL.test(text))
  const isIdle =
    tells.isDisposal || (telling.length + done.length === 0 && !tells.isGeneral && !tells.isLeftSo && !isLevel)
  return isIdle
    ? []
    : [
        {
          mark,
          checks,
          tells,
          stems: stemSet(mark.text),
          telling,
          done,
          brings: materials.map(own => listedThing(own.text)),
        },
      ]
})

type Telling = ReturnType<typeof tellingIn>[number]

/** "Back the nut off a quarter turn", "by two flats": so much and no more. */
const isAmount = ({ rest }: Action): boolean =>
  rest.some((word, i) => AMOUNTS.test(word) && (i === 0 || !/^(?:until|to|from)$/.test(rest[i - 1] ?? '')))
const AMOUNTS = /^(?:turns?|quarter|half|third|eighth|flats?|clicks?|notch(?:es)?|degrees?)$/

/** The parts as they stand between two steps. */
class Ledger {
  open: Open[] = []
  #implied: Open | undefined
  readonly #present = new Map<string, Thing[]>()
  /** What was tied or clamped for the work: untying it leaves nothing undone. */
  readonly #bound: Thing[] = []
  /** What was shut: it may be opened again and stay so. */
  readonly #shut: Thing[] = []
  /** What was tightened and not touched since: backed off by so much, it is set. */
  #tight: Thing[] = []
  readonly #tools: ReadonlyMap<string, readonly Thing[]>

  constructor(sheet: Sheet) {
    this.#tools = grouped(
      sheet.tools.flatMap(({ text }) => text.split(/\b(?:and|with)\b/).map(part => listedThing(part))),
      ({ head }) => head,
    )
    this.#fluid = fluidCaught(sheet)
  }

  /** What a hydraulic, cooling or brake circuit loses when a line of it is opened over a pan. */
  readonly #fluid: string | undefined

  step({ mark, number, checks, tells, stems, telling, done, brings }: Telling): void {
    if (tells.isGeneral) this.open = this.open.filter(({ undone }) => !ASSEMBLY.has(undone))
    if (tells.isLeftSo) this.open = this.open.filter(({ thing }) => !stems.has(thing.head))
    let fresh: Open[] = []
    for (const { action, drained, opens } of telling) {
      const still = (item: Open) =>
        !isMadeGood(item, action, stems) &&
        !isBrought(item, action, brings) &&
        !isRenewed(item, action, tells.renews) &&
        !isPutBack(item, action, number)
      if (this.#implied !== undefined && !still(this.#implied)) this.#implied = undefined
      const before = this.open.length + fresh.length
      if (redoneBy(action).size > 0 || this.open.some(item => isPutBack(item, action, number)))
        this.open = this.open.filter(still)
      if (!isSetAside(action)) fresh = fresh.filter(still)
      const isClosing = this.open.length + fresh.length < before
      if (!isClosing) this.#bring(action)
      if (isShutting(action) || (!isClosing && isHingedShut(action))) this.#shut.push(...action.things)
      if (isClosing && !action.acts.has('remove')) continue
      const lost =
        drained ?? (this.#fluid !== undefined && opens.some(isLine) ? toThing(this.#fluid.split(' ')) : undefined)
      if (lost !== undefined) this.#runOut(lost, mark, number)
      if (BINDS.has(action.verb)) this.#bound.push(...action.things)
      for (const item of this.#opened(opens.map(own => ({ ...own, number })))) {
        if (action.verb.startsWith('un') && this.#bound.some(other => isBoundAt(other, item.thing))) continue
        if (item.undone === 'loosened' && isAmount(action) && this.#tight.some(own => isSameThing(own, item.thing)))
          continue
        if (isPortion(item, this.open) || isSwapped(item, tells.swapped)) continue
        if (item.undone === 'drained') this.#implied = undefined
        this.open = this.open.filter(
          other =>
            !isTwin(other, item) &&
            !(other.undone === 'loosened' && item.undone !== 'loosened' && isSameThing(other.thing, item.thing)),
        )
        fresh = fresh.filter(other => !isTwin(other, item))
        fresh.push(item)
      }
    }
    this.#tight = telling.flatMap(({ action }) => (action.acts.has('tighten') ? action.things : []))
    if (tells.isLeftSo && ENDS.test(mark.text)) fresh = fresh.filter(({ thing }) => !stems.has(thing.head))
    this.open.push(...withoutHeldFasteners(fresh))
    if (this.#implied !== undefined && checks.some(({ text }) => LEVEL.test(text))) this.#implied = undefined
    for (const own of done) this.open = this.open.filter(item => item.number === number || !own.has(item.thing.head))
  }

  /** What an opened drain lets out, unless a step says in so many words that it is drained. */
  #runOut(thing: Thing, step: Mark, number: number): void {
    if (this.open.some(({ undone }) => undone === 'drained')) return
    this.#implied ??= { undone: 'drained', thing, step, number, of: undefined, among: 1 }
  }

  /** @returns everything still open, what only ran out included. */
  get left(): readonly Open[] {
    return this.#implied === undefined ? this.open : [...this.open, this.#implied]
  }

  #bring(action: Action): void {
    for (const thing of broughtBy(action))
      for (const head of thing.heads) {
        const alike = this.#present.get(head)
        if (alike === undefined) this.#present.set(head, [thing])
        else if (!alike.some(other => other.name === thing.name)) alike.push(thing)
      }
  }

  #isTool({ words, head }: Thing): boolean {
    return this.#tools.get(head)?.some(tool => words.every(word => tool.words.includes(word))) === true
  }

  #isPresent(thing: Thing): boolean {
    return thing.heads.some(head => this.#present.get(head)?.some(other => isSameThing(other, thing)) === true)
  }

  /** What an action undoes, but for what was brought only for the work. */
  #opened(items: readonly Open[]): readonly Open[] {
    return items.filter(({ undone, thing }) => {
      const isTaken = undone === 'removed' || undone === 'disconnected' || undone === 'loosened'
      if (isTaken && this.#isPresent(thing)) return false
      if ((undone === 'removed' || undone === 'raised' || undone === 'disconnected') && this.#isTool(thing))
        return false
      // A handwheel of the machine's own is no tool.
      if (undone === 'added' && LEFT_ON.has(thing.head)) return this.#isTool(thing)
      return undone !== 'opened' || !this.#shut.some(other => isSameThing(other, thing))
    })
  }
}

/** Titles of jobs that end with things apart, or with the machine laid up. */
const TAKES_APART =
  /\b(?:removal|dismantl\w*|strip(?:ping)? ?down|tear ?down|disassembl\w*|scrap\w*|decommission\w*)\b/i
const LAYS_UP =
  /\b(?:winteri[sz]\w*|lay(?:ing)? ?up|shut(?:ting)? ?down|(?:for|into|in|winter|seasonal|long[- ]term) storage|mothball\w*)\b/i
const LEFT_WHEN_LAID_UP = new Set<Undone>(['opened', 'closed', 'drained', 'switched-off', 'disconnected', 'locked'])

/**
 * Follows every part through the procedure.
 *
 * @returns what was undone and never made good, in order of the steps. Parts brought earlier in the same procedure (a
 *   puller, a locking pin) may come off again; fasteners count as back with the part they hold.
 */
export const openItems = onceForLast((sheet: Sheet): readonly Open[] => {
  const { title } = sheet.heading
  if (TAKES_APART.test(title)) return []
  const ledger = new Ledger(sheet)
  for (const telling of tellingIn(sheet)) ledger.step(telling)
  return LAYS_UP.test(title) ? ledger.left.filter(({ undone }) => !LEFT_WHEN_LAID_UP.has(undone)) : ledger.left
})
