import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

/** Power cut for the job comes back. */
export const powerNotRestored: Rule = {
  id: 'power-not-restored',
  level: 'fix',
  about: 'The supply is switched off and never switched on again.',
  why: 'Without power there is no test, and the job is not done until it was tried.',
  source: 'IEC/IEEE 82079-1:2019 on completeness (from memory); common practice, no source',
  trips: sample([
    ['step', 'Switch off the breaker'],
    ['step', 'Replace the heater'],
  ]),
  passes: sample([
    ['step', 'Switch off the breaker'],
    ['step', 'Replace the heater'],
    ['step', 'Switch the breaker back on'],
  ]),
  check: unrestored({ undone: 'switched-off', was: 'switched off', never: 'switched on again', step: 'Switch on {}' }),
}
