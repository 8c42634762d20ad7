import type { SheetStep } from '@/lib/procedure/sheet'
import { type Act, FASTENERS } from '@/lib/trade/pairs'
import { type Action, actionsOf } from '../action'
import { atSteps, type StepBody } from '../chunks'
import { isDisposing } from '../disposing'
import { grouped } from '../grouped'
import { quote } from '../late'
import { onceFor } from '../memo'
import { moveStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isSameThing, type Thing } from '../thing'
import { undoneBy } from '../undone'
import { stemOf, stemSet } from '../words'

/** Verbs that say the thing was undone before. */
const AGAIN = new Set(
  'refit reinstall reconnect reassemble replug refasten reattach remount reinsert rehang'.split(' '),
)
const MAKES = new Set('cut mix make prepare build print mill bend form crimp splice shape assemble'.split(' '))
const TAKES = new Set(['removed', 'disconnected'])

type Unplaced = { readonly action: Action; readonly thing: Thing }
type Row = Unplaced & { readonly step: SheetStep }

const rowsOf = onceFor(({ mark }: StepBody): readonly Unplaced[] =>
  isDisposing(mark.text)
    ? []
    : actionsOf(mark.text).flatMap(action =>
        action.things.filter(({ head }) => head !== '').map(thing => ({ action, thing })),
      ),
)

const rowsIn = atSteps(rowsOf)

const isAgain = ({ action }: Unplaced): boolean =>
  AGAIN.has(action.verb) || (action.particle === 'back' && action.acts.has('refit'))

const isTaking = ({ action, thing }: Unplaced): boolean => {
  const undone = undoneBy(action, thing)
  return undone !== undefined && TAKES.has(undone)
}

/** Whether `earlier` needs what `later` brings about. */
const isUpsideDown = (earlier: Unplaced, later: Unplaced): boolean => {
  if (isAgain(earlier) && isTaking(later)) return true
  if (
    MAKES.has(later.action.verb) &&
    earlier.action.acts.has('refit') &&
    !MAKES.has(earlier.action.verb) &&
    later.thing.words.length > 1
  )
    return true
  const isTight = earlier.action.verb === 'torque' || earlier.action.verb === 'tighten'
  return isTight && FASTENERS.has(earlier.thing.head) && isFitting(later) && later.thing.words.length > 1
}

const isFitting = ({ action }: Unplaced): boolean =>
  action.acts.has('refit') &&
  !action.acts.has('remove') &&
  action.verb !== 'tighten' &&
  action.verb !== 'torque' &&
  !action.acts.has('close') === !AGAIN.has(action.verb)

/** Whether a row can need anything of a later one at all. */
const mayNeed = (row: Unplaced): boolean =>
  isAgain(row) ||
  (row.action.acts.has('refit') && !MAKES.has(row.action.verb)) ||
  ((row.action.verb === 'torque' || row.action.verb === 'tighten') && FASTENERS.has(row.thing.head))

const wantedIn = atSteps((step): readonly Unplaced[] => rowsOf(step).filter(mayNeed))

/** Rows that may bring about what an earlier one needs. */
const mayBring = (row: Unplaced): boolean =>
  isTaking(row) || (row.thing.words.length > 1 && (MAKES.has(row.action.verb) || isFitting(row)))
const bringingIn = atSteps((step): readonly Unplaced[] => rowsOf(step).filter(mayBring))

/** Said to be open, off or free already: "cap the open ports" comes after what opened them. */
const STATE =
  /\b(?:open|opened|exposed|disconnected|detached|loosened|removed|freed|bare|uncovered|drained|emptied) (?:[a-z-]+ )?(?:ports?|lines?|hoses?|pipes?|ends?|fittings?|unions?|leads?|wires?|terminals?|tubes?|connections?|stubs?|barbs?|flanges?|joints?|spigots?|bores?|holes?|housings?|cavit(?:y|ies)|seats?)\b|\b(?:cap|plug|bung|blank|stopper|cover)\w*\b[^.;]*\b(?:ports?|(?:pipe|hose|line|tube) ends?|stubs?|open ends?)\b/i
const LEAVES_OPEN = new Set<Act>(['disconnect', 'remove', 'open', 'loosen', 'drain'])
const PIPED =
  /^(?:hose|line|pipe|tube|union|fitting|coupling|lead|wire|cable|connector|cover|cap|plug|valve|pump|injector|nut|banjo|flange|filter|cylinder|ram|gasket|seal|sensor|element|motor|bearing|shaft|tank)$/

const statesIn = atSteps(({ mark }) => (STATE.test(mark.text) ? [{}] : []))
const leavingIn = atSteps(step =>
  actionsOf(step.mark.text).some(
    ({ acts, things }) =>
      [...acts].some(act => LEAVES_OPEN.has(act)) && !acts.has('refit') && things.some(({ head }) => PIPED.test(head)),
  )
    ? [{}]
    : [],
)

/** A step that takes something for open which only a later one opens. */
const tooSoon = (sheet: Subject['sheet']): readonly Found[] =>
  statesIn(sheet).flatMap(({ step }) => {
    const opening = leavingIn(sheet)
      .map(own => own.step)
      .filter(({ mark }) => mark !== step.mark)
    const later = opening.find(({ number }) => number > step.number)
    if (later === undefined || opening.some(({ number }) => number < step.number)) return []
    const message = `Step ${step.number}, ${quote(step.mark)}, takes for open what only step ${later.number}, ${quote(later.mark)}, opens. Put that one first.`
    return [{ place: atMark(step.mark), message, remedy: moveStep(later.mark, step.number) }]
  })

/** What has to be made up before it is used. */
const MIXES = new Set('mix dilute dissolve prepare brew blend stir make'.split(' '))
const mixingIn = atSteps((step): readonly Unplaced[] =>
  rowsOf(step).filter(
    ({ action, thing }) =>
      MIXES.has(action.verb) && MIXTURE.test(thing.head) && (action.verb !== 'make' || action.particle === 'up'),
  ),
)
const MIXTURE =
  /^(?:solution|sanitizer|sanitiser|disinfectant|cleaner|descaler|detergent|epoxy|resin|adhesive|glue|paste|grout|mortar|cement|plaster|paint|coolant|antifreeze|filler|hardener|soap|bleach|acid|soda|mixture|mix|emulsion|slurry|foam)$/

/** Something used before the step that mixes it. */
const unmixed = (sheet: Subject['sheet']): readonly Found[] =>
  mixingIn(sheet).flatMap(({ step, thing }) => {
    const early = sheet.steps.find(
      ({ number, mark }) =>
        number < step.number && stemSet(mark.text).has(stemOf(thing.head)) && !isDisposing(mark.text),
    )
    if (early === undefined) return []
    const message = `Step ${early.number}, ${quote(early.mark)}, uses what only step ${step.number}, ${quote(step.mark)}, makes up. Put that one first.`
    return [{ place: atMark(early.mark), message, remedy: moveStep(step.mark, early.number) }]
  })

const check = ({ sheet }: Subject): readonly Found[] => [...tooSoon(sheet), ...unmixed(sheet), ...upsideDown(sheet)]

const upsideDown = (sheet: Subject['sheet']): readonly Found[] => {
  const wanted = wantedIn(sheet)
  const heads = grouped(bringingIn(sheet), ({ thing }) => thing.head)
  const seen = new Set<string>()
  let all: ReadonlyMap<string, readonly Row[]> | undefined
  const wasBefore = ({ thing, step }: Row): boolean => {
    all ??= grouped(rowsIn(sheet), row => row.thing.head)
    return all.get(thing.head)?.some(row => row.step.number < step.number && isSameThing(row.thing, thing)) === true
  }
  return wanted.flatMap(row => {
    if (seen.has(row.step.mark.id)) return []
    const later = heads
      .get(row.thing.head)
      ?.find(
        other => other.step.number > row.step.number && isSameThing(other.thing, row.thing) && isUpsideDown(row, other),
      )
    if (later === undefined || wasBefore(row)) return []
    seen.add(row.step.mark.id)
    const message = `Step ${row.step.number}, ${quote(row.step.mark)}, needs what step ${later.step.number}, ${quote(later.step.mark)}, brings about. Put that one first.`
    return [{ place: atMark(row.step.mark), message, remedy: moveStep(later.step.mark, row.step.number) }]
  })
}

/** Refitted before it came off. */
export const needsLater: Rule = {
  id: 'needs-later',
  level: 'fix',
  about: 'A step needs something that only a later step brings about.',
  why: 'The reader gets stuck, or guesses.',
  source: 'IEC/IEEE 82079-1:2019: steps in the order of doing (from memory)',
  trips: sample([
    ['step', 'Refit the pump cover'],
    ['step', 'Clean the strainer'],
    ['step', 'Remove the pump cover'],
  ]),
  passes: sample([
    ['step', 'Remove the pump cover'],
    ['step', 'Clean the strainer'],
    ['step', 'Refit the pump cover'],
  ]),
  check,
}
