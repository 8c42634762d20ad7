import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

/** A supply shut for the job is opened again. */
export const notReopened: Rule = {
  id: 'not-reopened',
  level: 'fix',
  about: 'A supply valve is shut for the job and never opened again.',
  why: 'The machine runs dry or does not run at all, and the next hand hunts for a fault that is not there.',
  source: 'IEC/IEEE 82079-1:2019 on completeness (from memory); common practice, no source',
  trips: sample([
    ['step', 'Close the water supply valve'],
    ['step', 'Replace the hose'],
    ['step', 'Run a cycle'],
  ]),
  passes: sample([
    ['step', 'Close the water supply valve'],
    ['step', 'Replace the hose'],
    ['step', 'Open the water supply valve'],
    ['step', 'Run a cycle'],
  ]),
  check: unrestored({ undone: 'closed', was: 'shut', never: 'opened again', step: 'Open {}' }),
}
