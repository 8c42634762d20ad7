import type { SheetStep } from '@/lib/procedure/sheet'
import { actionsOf } from '../action'
import { quote } from '../late'
import { lastStep, linesOf } from '../proof'
import { addStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isCut } from '../undone'

const THREE_PHASE = /\b(?:three|3)[- ]phase\b/i
const TURNS = /\b(?:pump|motor|fan|compressor|impeller|conveyor|blower|spindle)\b/i
/** Run backwards, these turn and do nothing; a belt that runs backwards is seen. Common practice, no source. */
const FLOWS_BY_IT = /\b(?:pump|motor|fan|compressor|impeller|blower|spindle)\b/i
const RESTORES =
  /\b(?:switch(?:es)? (?:it |the [^.;]* )?(?:back )?on|restore|energi[sz]e|turn (?:the [^.;]* )?on|remove (?:the |your )?lock|reconnect\b[^.;]*\b(?:leads?|phases?|supply|motor))\b/i
const PROVES =
  /\b(?:rotation|direction|phase (?:sequence|order)|turns? the right way|turning the right way|runs? the right way|arrow|backwards|bump|level (?:falls|drops|goes down|sinks)|sump empties|(?:swap|exchange|change over)\b[^.;]*\btwo\b[^.;]*\b(?:wires|leads|phases|cores|tails))\b/i

/** What can swap two phases: leads taken off and put on, or another motor. */
const LEADS =
  /\b(?:leads?|phases?|wir(?:es?|ing)|terminals?|cables?|cores?|conductors?|tails|connections?|supply|plug|socket|contactor|starter|inverter|drive)\b/i
const CHANGES =
  /\b(?:re-?connect|connect|wire|rewire|land|terminate|make off|swap|replace|exchange|change|renew|install)\b/i
const NEW_MOTOR =
  /\bnew\b[^.;]*\b(?:motor|pump|fan|compressor|blower)\b|\b(?:swap|replace|exchange|change|rewind|renew)\b[^.;]*\b(?:motor|pump|compressor)\b/i
const isLeads = ({ mark }: SheetStep): boolean =>
  LEADS.test(mark.text) &&
  CHANGES.test(mark.text) &&
  !/\b(?:battery|earth|ground|sensor|probe|hose|wire (?:brush|wool|cup|cutters?|strippers?)|drive (?:wheel|belt|chain|shaft))\b/i.test(
    mark.text,
  )
const swapsPhases = (step: SheetStep): boolean => isLeads(step) || NEW_MOTOR.test(step.mark.text)

const check = ({ sheet }: Subject): readonly Found[] => {
  const all = [sheet.heading.title, sheet.heading.equipment, ...sheet.steps.map(({ mark }) => mark.text)].join(' ')
  if (
    !THREE_PHASE.test(all) ||
    !TURNS.test(all) ||
    !(FLOWS_BY_IT.test(sheet.heading.title) || sheet.steps.some(swapsPhases))
  )
    return []
  const last = lastStep(
    sheet,
    ({ mark }) =>
      RESTORES.test(mark.text) ||
      actionsOf(mark.text).some(({ acts, things, verb }) => acts.has('on') && verb !== 'put' && things.some(isCut)),
  )
  if (last === undefined || linesOf(sheet).some(({ text }) => PROVES.test(text) && !/\bclockwise\b/i.test(text)))
    return []
  const leads = lastStep(sheet, isLeads)
  const what = leads === undefined ? 'Three-phase power comes back' : 'Three-phase leads are connected'
  const { mark, number } = leads ?? last
  const message = `${what} in step ${number}, ${quote(mark)}, and nobody looks which way the motor turns. Add a check of rotation against the arrow.`
  return [
    {
      place: atMark(mark),
      message,
      remedy: addStep('rotation', 'Check the direction of rotation against the arrow', last.number, last.mark),
    },
  ]
}

/** Two phases swapped and a pump runs backwards. */
export const noRotationCheck: Rule = {
  id: 'no-rotation-check',
  level: 'fix',
  about: 'A three-phase motor was worked on, and its direction of rotation is not checked.',
  why: 'Run backwards, a pump moves little and wrecks its seal, and a threaded part unscrews itself.',
  source: 'common practice, no source',
  trips: sample(
    [
      ['step', 'Reconnect the three motor leads'],
      ['step', 'Switch on the isolator'],
    ],
    { heading: { equipment: 'three-phase pump' } },
  ),
  passes: sample(
    [
      ['step', 'Reconnect the three motor leads'],
      ['step', 'Switch on the isolator'],
      ['check', 'Motor turns in the direction of the arrow'],
    ],
    { heading: { equipment: 'three-phase pump' } },
  ),
  check,
}
