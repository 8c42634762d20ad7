import type { SheetStep } from '@/lib/procedure/sheet'
import { FASTENERS } from '@/lib/trade/pairs'
import { type Action, actionsOf } from './action'
import { atSteps } from './chunks'
import { isDisposing } from './disposing'
import { quote } from './late'
import { moveStep } from './remedy'
import { atMark, type Found } from './rule'
import type { Subject } from './subject'

/** What only sounds like setting the machine going. */
export const NOT_A_RUN =
  /\b(?:by hand|vacuum|(?:wash|clean|cleaning|rinse|service|drain|descal\w*|flush|bleed|prime|purge|diagnostic|maintenance) (?:cycle|mode|program(?:me)?|position)|with the [^.;]*\b(?:off|removed|open)\b|run (?:a|an|some|two) (?!cycle|test|full|wash|short)|run the (?:tap|thread|finger|cloth|file|bead)|(?:switch|turn) on (?:the )?(?:lamp|light|torch|meter|tester|water|tap|gas)|start (?:the |each |every |all )?(?:nut|bolt|screw|thread|cap|new)s?\b)/i

/** @returns whether an action sets the machine going. */
export const isRun = ({ verb, particle, things }: Action): boolean =>
  verb === 'start' ||
  verb === 'restart' ||
  (verb === 'run' &&
    !/^(?:in|out|up|home|down|off|back|on|over)$/.test(particle ?? '') &&
    !things.some(({ head }) => FASTENERS.has(head))) ||
  ((verb === 'switch' || verb === 'turn' || verb === 'power') &&
    particle === 'on' &&
    !things.some(({ head }) =>
      /^(?:handwheel|wheel|knob|handle|key|shaft|crank|water|gas|tap|valve|supply|thermostat|light)$/.test(head),
    )) ||
  verb === 'restore' ||
  /^energi[sz]e$/.test(verb)

const EMPTIES =
  /\b(?:drain|empty)\w*\b[^.;]*\b(?:tank|heater|boiler|oil|water|coolant|system|sump|gearbox|reservoir|cylinder)\b|\bopen\w*\b[^.;]*\bdrain (?:valve|cock|tap|plug)\b|\b(?:let|allow)\b[^.;]*\b(?:drain|run out)\b/i
const FILLING =
  /\b(?:fill|refill|top up|pour|prime)\w*\b[^.;]*\b(?:tank|heater|boiler|oil|water|coolant|system|sump|gearbox|reservoir|cylinder|level|fluid)\b|\b(?:fill|refill)\b/i

const fillingIn = atSteps(({ mark }) => {
  const { text } = mark
  const isDisposed = isDisposing(text)
  const empties = !isDisposed && EMPTIES.test(text)
  const fills = !isDisposed && !empties && FILLING.test(text) && actionsOf(text).some(({ acts }) => acts.has('fill'))
  const powers =
    !NOT_A_RUN.test(text) &&
    actionsOf(text).some(
      action => isRun(action) && !action.things.some(({ head }) => /^(?:water|valve|tap|pump)$/.test(head)),
    )
  return empties || fills || powers ? [{ empties, fills, powers }] : []
})

/** @returns what is switched on before what was drained is filled again. */
export const runEmpty = (sheet: Subject['sheet']): readonly Found[] => {
  let empty: SheetStep | undefined
  let early: SheetStep[] = []
  const found: Found[] = []
  for (const { step, empties, fills, powers } of fillingIn(sheet)) {
    if (empties) {
      empty = step
      early = []
    } else if (fills && empty !== undefined) {
      const drained = empty
      found.push(
        ...early.map(own => ({
          place: atMark(own.mark),
          message: `Step ${own.number}, ${quote(own.mark)}, comes while what step ${drained.number}, ${quote(drained.mark)}, let out is not filled again; step ${step.number} does that. Put that one first.`,
          remedy: moveStep(step.mark, own.number),
        })),
      )
      empty = undefined
    } else if (powers && empty !== undefined) early.push(step)
  }
  return found
}
