import { hasNumber } from '@/lib/quantity/quantity'
import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'

/** A number alone is not a limit. */
export const specNoUnit: Rule = {
  id: 'spec-no-unit',
  level: 'stop',
  about: 'A spec has a number but no unit.',
  why: 'Twenty-five may be newton metres or foot-pounds; taken for the other, the thread strips or the joint comes loose.',
  source: 'NIST SP 811 (2008): a value is a number and a unit (from memory)',
  trips: sample([
    ['step', 'Tighten the drain plug'],
    ['spec', 'drain plug torque', { quantity: { nominal: 25 } }],
  ]),
  passes: sample([
    ['step', 'Tighten the drain plug'],
    ['spec', 'drain plug torque', { quantity: { low: 22, high: 28, unit: 'N.m' } }],
  ]),
  ...eachMark(['spec'], mark =>
    mark.quantity !== undefined && hasNumber(mark.quantity) && (mark.quantity.unit ?? '') === ''
      ? [
          {
            place: atMark(mark),
            message: `"${mark.text}" has a number but no unit. Say which unit it is in, from the plate or the manual.`,
          },
        ]
      : [],
  ),
}
