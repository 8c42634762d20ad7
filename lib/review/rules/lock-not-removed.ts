import { unlocks } from '../power'
import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

/** A stop button pushed in pops out again. */
const RELEASES =
  /\b(?:twist|turn|pull|release|reset|free|unlatch)\w*\b[^.;]*\b(?:button|e-?stop|emergency stop|stop)\b/i

/** A lock comes off by the one who put it on. */
export const lockNotRemoved: Rule = {
  id: 'lock-not-removed',
  level: 'fix',
  about: 'A lock or tag is put on and never taken off.',
  why: 'Someone will cut a lock whose owner has gone home; the sheet has to say when it comes off, and by whom.',
  source: 'OSHA 29 CFR 1910.147 on release from lockout (from memory)',
  trips: sample([
    ['step', 'Lock out the isolator'],
    ['step', 'Replace the belt'],
    ['step', 'Refit the guard'],
  ]),
  passes: sample([
    ['step', 'Lock out the isolator'],
    ['step', 'Replace the belt'],
    ['step', 'Take your lock off and switch on'],
  ]),
  check: unrestored({
    undone: 'locked',
    was: 'locked out',
    never: 'unlocked',
    step: 'Remove the lock and tag from {}',
    // "Turn the isolator on, your padlock and tag off".
    redoneBy: text => unlocks(text) || RELEASES.test(text),
  }),
}
