import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

/** What was drained is filled. */
export const notRefilled: Rule = {
  id: 'not-refilled',
  level: 'stop',
  about: 'A fluid is drained and nothing says to fill it.',
  why: 'Started dry, an engine, gearbox or pump is scrap within a minute.',
  source: 'IEC/IEEE 82079-1:2019 on completeness (from memory); common practice, no source',
  trips: sample([
    ['step', 'Drain the gearbox'],
    ['step', 'Refit the drain plug'],
    ['step', 'Start the machine'],
  ]),
  passes: sample([
    ['step', 'Drain the gearbox'],
    ['step', 'Refit the drain plug'],
    ['step', 'Fill with gear oil to the level plug'],
    ['step', 'Start the machine'],
  ]),
  check: unrestored({ undone: 'drained', was: 'drained', never: 'filled again', step: 'Fill {}' }),
}
