import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

/** What was loosened is tightened. */
export const notTightened: Rule = {
  id: 'not-tightened',
  level: 'stop',
  about: 'A fastener is loosened and never tightened.',
  why: 'Bolts left loose work out under load.',
  source: 'IEC/IEEE 82079-1:2019 on completeness (from memory); common practice, no source',
  trips: sample([
    ['step', 'Slacken the four motor bolts'],
    ['step', 'Set the belt tension'],
    ['step', 'Run the machine'],
  ]),
  passes: sample([
    ['step', 'Slacken the four motor bolts'],
    ['step', 'Set the belt tension'],
    ['step', 'Nip up the motor bolts'],
    ['step', 'Run the machine'],
  ]),
  check: unrestored({ undone: 'loosened', was: 'loosened', never: 'tightened', step: 'Tighten {}' }),
}
