import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

/** What came off goes back on. */
export const notRefitted: Rule = {
  id: 'not-refitted',
  level: 'stop',
  about: 'A part is taken off and never put back.',
  why: 'Guards, clips and covers forgotten on the bench are the classic way a repair hurts someone later.',
  source: 'IEC/IEEE 82079-1:2019 on completeness (from memory); common practice, no source',
  trips: sample([
    ['step', 'Take off the belt guard'],
    ['step', 'Adjust the belt'],
    ['step', 'Run the machine'],
  ]),
  passes: sample([
    ['step', 'Take off the belt guard'],
    ['step', 'Adjust the belt'],
    ['step', 'Put the belt guard back on'],
    ['step', 'Run the machine'],
  ]),
  check: unrestored({
    undone: 'removed',
    was: 'removed',
    never: 'put back',
    step: 'Refit {}',
    // Of three things or more taken off at once, one may have gone back inside another.
    level: ({ among }) => (among >= 3 ? 'consider' : undefined),
  }),
}
