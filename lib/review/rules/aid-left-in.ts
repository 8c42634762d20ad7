import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

/** Blanking plugs come out again. */
export const aidLeftIn: Rule = {
  id: 'aid-left-in',
  level: 'fix',
  about: 'Something is put in only for the time of the work and never taken out.',
  why: 'A blanking plug left in a line, or a locking pin left in a gear, breaks the machine at the first start.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Cap the open ports with plastic plugs'],
    ['step', 'Clean the flange'],
    ['step', 'Run the machine'],
  ]),
  passes: sample([
    ['step', 'Cap the open ports with plastic plugs'],
    ['step', 'Clean the flange'],
    ['step', 'Pull the plastic plugs out'],
    ['step', 'Run the machine'],
  ]),
  check: unrestored({ undone: 'added', was: 'put in', never: 'taken out', step: 'Take out {}' }),
}
