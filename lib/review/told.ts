import type { Sentence } from '@/lib/procedure/recording'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { wordSet } from '@/lib/trade/list'
import { type Action, actionsOf } from './action'
import { atSteps } from './chunks'
import { leftByMarks } from './coverage'
import { isDisposing } from './disposing'
import { isChat, withoutLeadIn } from './instructing'
import { openItems } from './ledger'
import { onceForLast, onceForText } from './memo'
import type { Open } from './open'
import { isAway, ownerIn, redoneBy } from './restored'
import { runsOut } from './runs-out'
import type { Subject } from './subject'
import { isOpposed, isSameThing, type Thing, toThing } from './thing'
import { type Undone, undoneBy } from './undone'

/** @returns sentences of the talk that no mark is of, small talk left out. */
export const leftOfTalk = onceForLast((subject: Subject): readonly Sentence[] =>
  leftByMarks(subject).filter(({ text }) => !isChat(text)),
)

/** "Timber out from the blade", "cover back on": the verb a speaker leaves out. */
const VERBLESS: readonly (readonly [particle: RegExp, verb: string])[] = [
  [/^[a-z' -]+ (?:out|off|away)\b/i, 'take'],
  [/^[a-z' -]+ (?:shut|closed)\b/i, 'swing'],
  [/^[a-z' -]+ (?:back (?:on|in)|back|on|in|home)\b/i, 'put'],
  [/^[a-z' -]+ down\b/i, 'let'],
]
const AGAIN = /\bagain\b/i
/** "Stopper back in the trough", "foams back, blue one first". */
const BACK = /^(?:the |your |its |both )?(?:[a-z-]+ ){0,2}[a-z-]+ back\b/i
/** A sentence without a verb is short. */
const SHORT = 9

/** "Both ball valves, open again, slowly": the thing named first, then what becomes of it. */
const FRONTED =
  /^((?:the |both |all |your |its )?(?:[a-z-]+ ){0,3}[a-z-]+), ((?:back )?(?:open|shut|closed?|on|off|in|out|up|down|home|tight|loose)(?: again)?)\b/i
const FRONTED_VERBS: Readonly<Record<string, string>> = {
  open: 'open',
  shut: 'shut',
  close: 'close',
  closed: 'close',
  tight: 'tighten',
  loose: 'loosen',
}
const unfronted = (text: string): string => {
  const match = FRONTED.exec(text)
  if (match === null) return text
  const [, thing = '', told = ''] = match
  const [word = ''] = told.toLowerCase().replace('back ', '').split(' ')
  return `${FRONTED_VERBS[word] ?? 'put'} ${thing.toLowerCase()} ${FRONTED_VERBS[word] === undefined ? told : 'again'}`
}

const ordersIn = onceForText((text: string): readonly Action[] => {
  const bare = unfronted(withoutLeadIn(text))
  const again = AGAIN.test(text)
  const told = actionsOf(bare)
    .filter(
      ({ acts, things, verb }) => (acts.size > 0 || again || DRAWS.has(verb)) && things.some(({ head }) => head !== ''),
    )
    .map(order => (again && !order.isAgain ? { ...order, isAgain: true } : order))
  if (BACK.test(bare) && bare.split(/\s+/).length <= SHORT) return [...told, ...actionsOf(`put ${bare}`)]
  if (told.length > 0 || bare.split(/\s+/).length > SHORT) return told
  const verb = VERBLESS.find(([particle]) => particle.test(bare))?.[1]
  return verb === undefined ? [] : actionsOf(`${verb} ${bare}`)
})

const BRINGS = wordSet(
  'jam wedge chock block prop pin lock clamp tie strap hook chain place put set lay stand slide slip push tap drive knock hammer insert fit swing fold screw thread wrap pull hang cap plug bung mask tape cover raise stick',
)

type Row = {
  readonly step: SheetStep
  readonly action: Action
  readonly thing: Thing
  readonly first: Thing | undefined
}
const rowsIn = atSteps(({ mark }): readonly Omit<Row, 'step'>[] =>
  isDisposing(mark.text)
    ? []
    : actionsOf(mark.text).flatMap(action =>
        [...action.things, ...action.along, ...verbThing(action)]
          .filter(({ head }) => head !== '')
          .map(thing => ({ action, thing, first: action.things[0] })),
      ),
)

/** Who chocks the wheels has chocks: the verb names the thing. */
const verbThing = ({ verb }: Action): readonly Thing[] =>
  /^(?:chock|wedge|block|prop|pin|clamp|plug|cap|bung|mask|tape|strap)$/.test(verb) ? [toThing([verb])] : []

const isOne = (a: Thing, b: Thing): boolean => isSameThing(a, b) || (a.head === b.head && !isOpposed(a.words, b.words))

/** What may be put as it was by any turn or push of the same thing. */
const AS_FOUND = new Set<Undone>(['closed', 'opened', 'loosened', 'switched-off', 'disconnected'])

/** What a step did to a thing that the order of the talk makes good. */
const answeredBy = (order: Action, { action, thing }: Row): Undone | undefined => {
  const undone = undoneBy(action, thing)
  if (undone !== undefined && redoneBy(order).has(undone)) return undone
  // "Turn both valves in line again": whatever that means for it, it undoes what was done.
  if (order.isAgain && undone !== undefined && AS_FOUND.has(undone)) return undone
  const isBrought = BRINGS.has(action.verb) && !action.acts.has('remove') && !action.isAgain
  return isBrought && isTaking(order) ? 'added' : undefined
}

/** "Draw the drop pin" takes it out, without a word of where. */
const DRAWS = wordSet('draw pull lift take drag whip slip pluck knock yank fetch')
const isTaking = (order: Action): boolean =>
  order.acts.has('remove') ||
  (isAway(order) && !order.acts.has('refit')) ||
  (DRAWS.has(order.verb) && order.particle === undefined && !order.acts.has('refit'))

/** The last step before the order that it makes good, unless a step since then did so in plain words. */
const openBy = (sheet: Sheet, { start }: Sentence, order: Action, told: Thing): Open | undefined => {
  const rows = rowsIn(sheet).filter(({ thing }) => isOne(thing, told))
  const at = rows.findLastIndex(row => row.step.mark.start < start && answeredBy(order, row) !== undefined)
  const row = rows[at]
  const undone = row === undefined ? undefined : answeredBy(order, row)
  if (row === undefined || undone === undefined) return undefined
  const isDone = rows
    .slice(at + 1)
    .some(({ action }) => redoneBy(action).has(undone) || (undone === 'added' && isTaking(action)))
  if (isDone) return undefined
  const { mark, number } = row.step
  return { undone, thing: row.thing, step: mark, number, of: ownerIn(row.action.rest) ?? row.first, among: 1 }
}

const emptiesIn = atSteps(step =>
  !isDisposing(step.mark.text) &&
  actionsOf(step.mark.text).some(
    action =>
      runsOut(action, [step.mark.text, ...step.checks.map(({ text }) => text)]) !== undefined ||
      action.things.some(thing => undoneBy(action, thing) === 'drained'),
  )
    ? [{}]
    : [],
)
const fillsIn = atSteps(({ mark }) =>
  !isDisposing(mark.text) && actionsOf(mark.text).some(({ verb }) => FILLS.has(verb)) ? [{}] : [],
)
const FILLS = wordSet('fill refill top pour add replenish recharge prime charge')

/** Told to be poured in again, after a step that let it out. */
const unfilled = (sheet: Sheet, { start }: Sentence, order: Action): Open | undefined => {
  const [thing] = order.things
  if (!FILLS.has(order.verb) || thing === undefined) return undefined
  const step = emptiesIn(sheet).findLast(({ step: { mark } }) => mark.start < start)?.step
  if (step === undefined || fillsIn(sheet).some(later => later.step.number > step.number)) return undefined
  return { undone: 'drained', thing, step: step.mark, number: step.number, of: undefined, among: 1 }
}

/**
 * What the talk orders to make good and no mark holds.
 *
 * @returns what a step undid, by orders of the talk that no mark covers; empty where there is no timed transcript
 */
export const toldOpen = onceForLast((subject: Subject): readonly Open[] => {
  const { sheet } = subject
  const known = openItems(sheet)
  const found: Open[] = []
  for (const sentence of leftOfTalk(subject))
    for (const order of isDisposing(sentence.text) ? [] : ordersIn(sentence.text))
      for (const thing of order.things) {
        const open =
          thing.head === '' ? undefined : (openBy(sheet, sentence, order, thing) ?? unfilled(sheet, sentence, order))
        const isKnown = (other: Open) => other.number === open?.number && other.undone === open.undone
        if (open !== undefined && ![...known, ...found].some(isKnown)) found.push(open)
      }
  return found
})
