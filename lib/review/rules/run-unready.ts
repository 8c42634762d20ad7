import type { SheetStep } from '@/lib/procedure/sheet'
import { type Action, actionsOf } from '../action'
import { atSteps } from '../chunks'
import { quote } from '../late'
import { onceFor, onceForText } from '../memo'
import { moveStep } from '../remedy'
import { ownerIn } from '../restored'
import { atMark, type Found, type Rule } from '../rule'
import { isRun, NOT_A_RUN, runEmpty } from '../running'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isLikeThing, isSameThing, type Thing } from '../thing'
import { isCord, isCut, undoneBy } from '../undone'

const GUARDS = /^(?:guard|cover|shroud|panel|door|hood|cowl|cowling|fairing|lid|chute|deck)$/
/** Part of a guard where they are said to be of one. */
const PLATES = /^(?:plate|side|half|top|flap|front|back|section|screw)$/
/** The cover that locks a plug guards no machine. */
const LOCKING = /^(?:lock|lockout|plug|padlock|dust|transport|storage)$/
const DRAINS = /^(?:drain|plug|cock|valve|bolt|screw|tap)$/
const FILLS = new Set(['fill', 'refill', 'top', 'pour', 'add'])

const isDrain = ({ words, head }: Thing): boolean => words.includes('drain') && DRAINS.test(head)

const VESSELS =
  /^(?:crankcase|gearbox|tank|sump|radiator|reservoir|boiler|pot|bowl|transmission|case|cylinder|system|drum|basin)$/

/** Whether what is filled may be what this drain empties. */
const isInto = (drain: Thing, fills: readonly Action[]): boolean => {
  const of = drain.words.filter(word => word !== 'drain' && !DRAINS.test(word))
  const vessel = fills.flatMap(({ things }) => things).find(({ head }) => VESSELS.test(head))
  return of.length === 0 || vessel === undefined || vessel.words.some(word => of.includes(word))
}

const isBack = ({ acts }: Action): boolean =>
  acts.has('refit') || acts.has('close') || acts.has('tighten') || acts.has('connect')

type Off = { readonly thing: Thing; readonly drain: boolean; readonly step: SheetStep; used?: SheetStep }

const takenOff = (action: Action): readonly Omit<Off, 'step'>[] =>
  action.things.flatMap(thing => {
    const undone = undoneBy(action, thing)
    const drain = isDrain(thing)
    if (undone === undefined || undone === 'switched-off' || undone === 'locked' || undone === 'closed') return []
    const isGuard =
      GUARDS.test(thing.head) || (PLATES.test(thing.head) && GUARDS.test(ownerIn(action.rest)?.head ?? ''))
    return drain || (undone === 'removed' && isGuard && !thing.words.some(word => LOCKING.test(word)))
      ? [{ thing, drain }]
      : []
  })

/** Poured away, it fills nothing. */
const AWAY =
  /\b(?:pour|tip|empty)\w*\b[^.;]*\b(?:away|out|down|(?:in(?:to)?|to) (?:the |a |an )?(?:[a-z-]+ ){0,2}(?:drain|sink|gully|sewer|toilet|bucket|waste|drum|ditch|bin|can))\b/i

/** What a step takes off, puts back, fills and runs; read once a step. */
const movesIn = atSteps(step => {
  const actions = actionsOf(step.mark.text)
  const takes = actions.map(takenOff)
  const fills = AWAY.test(step.mark.text) ? [] : actions.filter(({ acts, verb }) => acts.has('fill') && FILLS.has(verb))
  const runs = actions.some(isRun) && !NOT_A_RUN.test(step.mark.text)
  const isIdle = !runs && fills.length === 0 && takes.every(own => own.length === 0) && !actions.some(isBack)
  return isIdle ? [] : [{ actions, takes, fills, runs }]
})

const isRunning = ({ mark }: SheetStep): boolean =>
  actionsOf(mark.text).some(({ verb }) => verb === 'run' || verb === 'start' || verb === 'restart')

/** Goes through the steps with what is off or open at each. */
const check = ({ sheet }: Subject): readonly Found[] => {
  let off: Off[] = []
  const found: Found[] = []
  for (const { step, actions, takes, fills, runs } of movesIn(sheet)) {
    for (const [i, action] of actions.entries()) {
      const taken = takes[i] ?? []
      if (taken.length === 0 && isBack(action))
        off = off.filter(item => {
          if (!action.things.some(thing => isLikeThing(item.thing, thing))) return true
          if (item.used !== undefined) found.push(finding(item, item.used, step))
          return false
        })
      off.push(...taken.map(own => ({ ...own, step })))
    }
    for (const item of off) {
      if (item.step === step || !(item.drain ? fills.length > 0 && isInto(item.thing, fills) : runs)) continue
      // Power on comes before the run itself.
      if (item.used === undefined || (!item.drain && !isRunning(item.used) && isRunning(step))) item.used = step
    }
  }
  const never = off.flatMap(item => (item.used === undefined || item.drain ? [] : [finding(item, item.used)]))
  return [...found, ...never, ...runWithoutPower(sheet), ...runEmpty(sheet)]
}

const MACHINE =
  /^(?:spindle|motor|pump|fan|compressor|machine|blower|saw|conveyor|lathe|mill|mixer|washer|dryer|printer|press|drum|drive|unit|appliance|system|heater|oven)$/

const MAINS = /\b(?:mains|wall|socket|outlet|machine|unit|appliance|power)\b/i
const isMainsText = (text: string): boolean => MAINS.test(text)
/** Pressing start to see that nothing happens is no run. */
const PROVES_DEAD =
  /\b(?:prov\w*|dead|discharg\w*|residual|capacitor|does not|doesn't|not start|stays? (?:still|off)|no longer|nothing|last|empty)\b/i
const isTry = (action: Action): boolean =>
  isRun(action) &&
  (action.particle === 'on' ||
    action.things.some(({ head }) => MACHINE.test(head) || head === 'test' || head === 'self-test'))

/** What only happens with the power on: it gets hot, fills with pressure, lights up, counts down. */
const NEEDS_POWER =
  /\b(?:wait|let|leave|allow|watch|until)\b[^.;]*\b(?:(?:is |are |gets? |comes? |builds? )?up to (?:temperature|pressure|speed|heat)|heats? up|warms? up|boots?|lights? (?:up|comes? on)|(?:lamp|light|display|led) (?:comes? on|lights|shows|goes out)|reach(?:es|ed)? (?:its |the )?(?:working |operating |set )?(?:temperature|pressure|speed)|beeps?|is hot|gets? hot|has heated|spins? up|comes? on)\b|\bpreheat\b|\bwarm (?:it|the machine) up\b/i
const waitsForPower = onceForText(
  (text: string): boolean => NEEDS_POWER.test(text) && !/\b(?:engine|sun|hair ?dryer|heat gun)\b/i.test(text),
)

/** Whether an action can have to do with power at all. */
const mayPower = onceFor(
  (action: Action): boolean =>
    action.verb === 'unplug' ||
    action.verb === 'plug' ||
    action.acts.has('on') ||
    action.acts.has('connect') ||
    isRun(action) ||
    action.things.some(thing => {
      const undone = undoneBy(action, thing)
      return undone === 'switched-off' || undone === 'disconnected'
    }),
)

/** Running what has no power: the step stood before the power was cut. */
const poweringIn = atSteps(step => {
  const actions = actionsOf(step.mark.text)
  const waits = waitsForPower(step.mark.text)
  return actions.filter((action, i) => mayPower(action) || (waits && i === 0)).map(action => ({ action, waits }))
})

const runWithoutPower = (sheet: Subject['sheet']): readonly Found[] => {
  let cut: SheetStep | undefined
  let own: readonly Thing[] = []
  let pulled: SheetStep | undefined
  let tried: SheetStep[] = []
  const early: { readonly step: SheetStep; readonly cut: SheetStep }[] = []
  for (const { step, action, waits } of poweringIn(sheet)) {
    const { verb, particle, acts, things } = action
    if (
      things.some(thing => isCord(thing) && undoneBy(action, thing) === 'disconnected') ||
      (verb === 'unplug' && isMainsText(step.mark.text))
    )
      pulled = step
    else if (pulled !== undefined && (verb === 'plug' || (acts.has('connect') && things.some(isCord)))) {
      const at = pulled
      early.push(...tried.map(own => ({ step: own, cut: at })))
      pulled = undefined
      tried = []
    } else if (
      pulled !== undefined &&
      pulled !== step &&
      (waits || isTry(action)) &&
      !NOT_A_RUN.test(step.mark.text) &&
      !PROVES_DEAD.test(step.mark.text)
    )
      tried.push(step)
    const switched = things.filter(thing => undoneBy(action, thing) === 'switched-off')
    if (switched.length > 0) {
      cut = step
      own = switched
    } else if (cut !== undefined && things.some(thing => own.some(other => isSameThing(thing, other)))) {
      // Stopped at its own switch, a pump that is started has its power.
      cut = undefined
    } else if (
      cut !== undefined &&
      acts.has('on') &&
      (things.some(isCut) || verb === 'plug' || verb === 'restore' || particle === 'on')
    )
      cut = undefined
    else if (
      cut !== undefined &&
      cut !== step &&
      (waits || ((verb === 'run' || verb === 'start') && things.some(({ head }) => MACHINE.test(head)))) &&
      !NOT_A_RUN.test(step.mark.text)
    )
      early.push({ step, cut })
  }
  return early.map(({ step, cut: off }) => ({
    place: atMark(step.mark),
    message: `Step ${step.number}, ${quote(step.mark)}, runs what step ${off.number}, ${quote(off.mark)}, took the power from. Put it before that step, or after the power is back.`,
    remedy: moveStep(step.mark, off.number),
  }))
}

const finding = ({ thing, drain }: Off, used: SheetStep, back?: SheetStep): Found => {
  const is = drain ? 'open' : 'off'
  const then =
    back === undefined
      ? 'and nothing puts it back. Put it back first'
      : `and step ${back.number} puts it back. Put that one first`
  return {
    place: atMark(used.mark),
    message: `Step ${used.number}, ${quote(used.mark)}, comes while the ${thing.name} is still ${is}, ${then}, or say why it stays ${is} and warn.`,
    ...(back === undefined ? {} : { remedy: moveStep(back.mark, used.number) }),
  }
}

/** Filled with the drain open, run with the guard off. */
export const runUnready: Rule = {
  id: 'run-unready',
  level: 'fix',
  about: 'A machine is filled while its drain is open, or run while a guard is off that goes back on later.',
  why: 'What is poured in runs out again; what turns without its guard takes fingers.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Remove the drain plug'],
    ['step', 'Drain the oil'],
    ['step', 'Fill with new oil'],
    ['step', 'Refit the drain plug'],
  ]),
  passes: sample([
    ['step', 'Remove the drain plug'],
    ['step', 'Drain the oil'],
    ['step', 'Refit the drain plug'],
    ['step', 'Fill with new oil'],
  ]),
  check,
}
