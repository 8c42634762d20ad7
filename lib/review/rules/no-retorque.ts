import { quote } from '../late'
import { actsOn, lastStep, linesOf, REDO } from '../proof'
import { addStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const WHEEL = /(?<!steering )\b(?:lug|wheel) (?:nuts?|bolts?)\b/i
/** Others that settle in use, by the machine. Common practice, no source. */
const SETTLING: readonly (readonly [machine: RegExp, fastener: RegExp])[] = [
  [/\bceiling fan/i, /\bblades?\b/i],
  [/\b(?:spring|suspension|leaf|axle|truck|trailer|van)\b/i, /\bu-bolts?\b/i],
  [/\b(?:bicycle|bike|cycle)\b/i, /\bcrank (?:arm )?bolts?\b/i],
  [/\b(?:head gasket|cylinder head)\b/i, /\bcylinder head (?:bolts?|nuts?)\b/i],
  [/\b(?:trailer|caravan)\b/i, /\b(?:hitch|coupling|tow ?ball) (?:bolts?|nuts?)\b/i],
]
const AGAIN =
  /\b(?:re-?check|re-?torque|re-?tighten|check\b[^.;]*\b(?:again|after)|after (?:the first |a |an |one )?(?:\d+|days?|weeks?|months?|hours?|ride|drive|trip|circle|run|lap|load|use|cycle|outing)|again after)\b/i

const isSettling = (text: string, machine: string): boolean =>
  WHEEL.test(text) || SETTLING.some(([on, fastener]) => on.test(machine) && fastener.test(text))

const check = ({ sheet }: Subject): readonly Found[] => {
  const last = lastStep(
    sheet,
    ({ mark }) =>
      isSettling(mark.text, `${sheet.heading.title} ${sheet.heading.equipment}`) &&
      actsOn(mark.text, REDO, /^(?:nut|bolt|screw|blade|u-bolt)$/) &&
      !AGAIN.test(mark.text),
  )
  if (last === undefined) return []
  const lines = [
    ...linesOf(sheet).map(({ text }) => text),
    ...sheet.specs.map(({ text, reference }) => `${text} ${reference ?? ''}`),
  ]
  if (lines.some(text => AGAIN.test(text) && /\b(?:lug|wheel|nuts?|bolts?|screws?|torque|blades?)\b/i.test(text)))
    return []
  const message = `The fasteners of step ${last.number}, ${quote(last.mark)}, are not checked again after the first distance. Add the distance the maker gives.`
  return [
    {
      place: atMark(last.mark),
      message,
      remedy: addStep(
        'retorque',
        'Check the wheel fasteners again after the distance the maker gives',
        sheet.steps.length,
        last.mark,
      ),
    },
  ]
}

/** Wheels settle: they are torqued twice. */
export const noRetorque: Rule = {
  id: 'no-retorque',
  level: 'fix',
  about: 'Wheel nuts or bolts are tightened and not checked again after the first distance.',
  why: 'Paint and rust under the wheel give way on the first drive and the clamp load goes with them.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Refit the wheel'],
    ['step', 'Torque the wheel nuts crosswise'],
  ]),
  passes: sample([
    ['step', 'Refit the wheel'],
    ['step', 'Torque the wheel nuts crosswise'],
    ['check', 'Recheck wheel nut torque after 50 km'],
  ]),
  check,
}
