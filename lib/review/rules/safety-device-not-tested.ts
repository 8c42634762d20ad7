import { SAFETY_DEVICES } from '@/lib/trade/safety-devices'
import { inSteps } from '../chunks'
import { addStep } from '../remedy'
import { atMark, type Found, type Rule, WHOLE } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const RUNS =
  /\b(?:run|start|restart|restore|refit|reassemble|plug|reconnect|energi[sz]e|cycle|operate|drive|light|test)\b|\b(?:switch|turn|power)\w*\b[^.;]*\b(?:on|up)\b/i

/** A step and what is looked at there tell one trial: the guard goes up, the spiral stops. */
const triedIn = inSteps(({ mark, checks }) => [[mark, ...checks].map(({ text }) => text).join(', ')])

const check = ({ sheet }: Subject): readonly Found[] => {
  const machine = `${sheet.heading.title} ${sheet.heading.equipment}`
  return SAFETY_DEVICES.flatMap(device => {
    if (!device.machine.test(machine) || !sheet.steps.some(({ mark }) => RUNS.test(mark.text))) return []
    const { touched, used } = device
    if (
      touched !== undefined &&
      !sheet.steps.some(({ mark: { text } }) => touched.test(text) && used?.test(text) !== true)
    )
      return []
    if (triedIn(sheet).some(text => device.proves.test(text))) return []
    const last = sheet.steps.findLast(({ mark }) => RUNS.test(mark.text))
    const message = `The ${device.name} is not tried before the machine goes back to work. Add the test the maker’s manual gives.`
    if (last === undefined) return [{ place: WHOLE, message }]
    return [
      {
        place: atMark(last.mark),
        message,
        remedy: addStep(device.id, `Test the ${device.name} as the maker’s manual says`, sheet.steps.length, last.mark),
      },
    ]
  })
}

/** What protects the operator is tried last of all. */
export const safetyDeviceNotTested: Rule = {
  id: 'safety-device-not-tested',
  level: 'fix',
  about: 'A machine with a safety device goes back to work without that device being tried.',
  why: 'Work nearby can disturb it, and it is needed just once.',
  source: 'common practice, no source',
  trips: sample(
    [
      ['step', 'Refit the chain and bar'],
      ['step', 'Start the saw'],
    ],
    { heading: { equipment: 'petrol chainsaw' } },
  ),
  passes: sample(
    [
      ['step', 'Refit the chain and bar'],
      ['step', 'Start the saw'],
      ['check', 'Chain brake stops the chain at once'],
    ],
    { heading: { equipment: 'petrol chainsaw' } },
  ),
  check,
}
