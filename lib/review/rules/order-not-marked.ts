import { shorten } from '@/lib/procedure/shorten'
import { leftByMarks } from '../coverage'
import { isOrder } from '../instructing'
import type { Found, Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const check = (subject: Subject): readonly Found[] =>
  leftByMarks(subject)
    .filter(({ text }) => isOrder(text))
    .map(({ start, end, text }) => ({
      place: { at: 'talk', start, end },
      message: `The talk tells to do something that no mark holds: "${shorten(text, 80)}" Mark it, or leave it out on purpose.`,
    }))

/** Told and not marked. */
export const orderNotMarked: Rule = {
  id: 'order-not-marked',
  level: 'consider',
  about: 'An instruction in the talk is covered by no mark.',
  why: 'What is not marked is not on the sheet.',
  source: 'common practice, no source',
  trips: sample([['step', 'Remove the cover']], { talk: ['Take the cover off.', 'Now disconnect the fan lead.'] }),
  passes: sample(
    [
      ['step', 'Remove the cover'],
      ['step', 'Disconnect the fan lead'],
    ],
    { talk: ['Take the cover off.', 'Now disconnect the fan lead.'] },
  ),
  check,
}
