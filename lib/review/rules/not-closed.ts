import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

/** What was opened is closed. */
export const notClosed: Rule = {
  id: 'not-closed',
  level: 'stop',
  about: 'A valve, drain, door or cover is opened and never closed.',
  why: 'A drain left open empties what was just filled; a door left open is no guard.',
  source: 'IEC/IEEE 82079-1:2019 on completeness (from memory); common practice, no source',
  trips: sample([
    ['step', 'Open the drain cock'],
    ['step', 'Let the water run off'],
    ['step', 'Refill the boiler'],
  ]),
  passes: sample([
    ['step', 'Open the drain cock'],
    ['step', 'Let the water run off'],
    ['step', 'Shut the drain cock'],
    ['step', 'Refill the boiler'],
  ]),
  check: unrestored({ undone: 'opened', was: 'opened', never: 'closed', step: 'Close {}' }),
}
