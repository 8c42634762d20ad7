import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

const LOWERS = /\b(?:lowering|(?:comes?|sinks?|goes|settles?) (?:slowly |smoothly |evenly )?down)\b/i

/** What was raised comes down. */
export const notLowered: Rule = {
  id: 'not-lowered',
  level: 'fix',
  about: 'A machine is raised and never lowered.',
  why: 'Wheel nuts are torqued and levels read with the machine on the ground; left up, it is a trap for the next hand.',
  source: 'IEC/IEEE 82079-1:2019 on completeness (from memory); common practice, no source',
  trips: sample([
    ['step', 'Jack up the front of the car'],
    ['step', 'Replace the link'],
    ['step', 'Refit the wheel'],
  ]),
  passes: sample([
    ['step', 'Jack up the front of the car'],
    ['step', 'Replace the link'],
    ['step', 'Refit the wheel'],
    ['step', 'Lower the car'],
  ]),
  check: unrestored({
    undone: 'raised',
    was: 'raised',
    never: 'lowered',
    step: 'Lower {}',
    // "Pull the emergency lowering collar", "Load comes down slowly".
    redoneBy: text => LOWERS.test(text),
  }),
}
