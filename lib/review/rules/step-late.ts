import { atSteps } from '../chunks'
import { doneTooEarly, quote, saysWhen } from '../late'
import { moveStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const sayingIn = atSteps(({ mark }) => (saysWhen(mark.text) ? [{}] : []))

const check = ({ sheet }: Subject): readonly Found[] =>
  sayingIn(sheet).flatMap(({ step: { mark, number } }) => {
    const early = doneTooEarly(mark.text, sheet.steps, number)
    if (early === undefined) return []
    const message = `Step ${number}, ${quote(mark)}, says that it comes first, but step ${early.number}, ${quote(early.mark)}, stands before it. Move it up.`
    return [{ place: atMark(mark), message, remedy: moveStep(mark, early.number) }]
  })

/** "… before you lock it out" told after the lockout. */
export const stepLate: Rule = {
  id: 'step-late',
  level: 'fix',
  about: 'A step says that it comes before something that an earlier step does.',
  why: 'Speakers remember things late; whoever follows the sheet can’t go back.',
  source: 'IEC/IEEE 82079-1:2019: steps in the order of doing (from memory)',
  trips: sample([
    ['step', 'Remove the wheel'],
    ['step', 'Clean the axle'],
    ['step', 'Mark the wheel and hub before removing the wheel'],
  ]),
  passes: sample([
    ['step', 'Mark the wheel and hub before removing the wheel'],
    ['step', 'Remove the wheel'],
    ['step', 'Clean the axle'],
  ]),
  check,
}
