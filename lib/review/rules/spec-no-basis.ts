import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'

/** A limit from memory is a guess until someone reads it off the plate or the page. */
export const specNoBasis: Rule = {
  id: 'spec-no-basis',
  level: 'fix',
  about: 'A spec was only spoken: nobody says that it was read off the plate or the manual.',
  why: 'Memory swaps models and units; a limit that nobody checked is passed on as if it were the maker’s.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Torque the head bolts'],
    ['spec', 'head bolt torque', { quantity: { low: 42, high: 48, unit: 'N.m' }, basis: 'spoken' }],
  ]),
  passes: sample([
    ['step', 'Torque the head bolts'],
    [
      'spec',
      'head bolt torque',
      { quantity: { low: 42, high: 48, unit: 'N.m' }, basis: 'manual', citation: 'service manual, torque table' },
    ],
  ]),
  check: eachMark(['spec'], mark =>
    (mark.basis ?? 'spoken') === 'spoken'
      ? [
          {
            place: atMark(mark),
            message: `"${mark.text}" was only spoken. Check it against the plate or the manual and note where it stands.`,
          },
        ]
      : [],
  ),
}
