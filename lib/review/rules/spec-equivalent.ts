import { compareEquivalents } from '@/lib/quantity/equivalent'
import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'

/** Two figures that are said to be the same and are not. */
export const specEquivalent: Rule = {
  id: 'spec-equivalent',
  level: 'stop',
  about: 'A spec states one value in two units, and the two disagree.',
  why: 'One of the two is a slip, and half of the readers will use that one.',
  source: 'NIST SP 811 (2008) appendix B.8 for the factors, B.7 for rounding (from memory)',
  trips: sample([
    [
      'spec',
      'clamp torque',
      { quantity: { low: 18, high: 22, unit: 'N.m' }, equivalent: { low: 18, high: 22, unit: '[ft_i].[lbf_av]' } },
    ],
  ]),
  passes: sample([
    [
      'spec',
      'clamp torque',
      { quantity: { nominal: 32, unit: 'N.m' }, equivalent: { nominal: 24, unit: '[ft_i].[lbf_av]' } },
    ],
  ]),
  ...eachMark(['spec'], mark => {
    const check = mark.quantity && mark.equivalent && compareEquivalents(mark.quantity, mark.equivalent)
    if (check === undefined || check.agrees) return []
    return [
      {
        place: atMark(mark),
        message: `"${mark.text}": the two values disagree. ${check.text} Find out which one was read off.`,
        remedy: { label: 'Drop the second value', edits: [{ do: 'change-mark', id: mark.id, clear: ['equivalent'] }] },
      },
    ]
  }),
}
