import type { Mark } from '@/lib/procedure/mark'
import { type Action, actionsOf } from '../action'
import { inSteps } from '../chunks'
import { quote } from '../late'
import { onceForText } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isSameThing, type Thing } from '../thing'

const LEFT = /\b(?:anti-?clockwise|counter-?clockwise|to the left)\b/i
const RIGHT = /(?<!anti-?)(?<!counter-?)(?<!anti)(?<!counter)\bclockwise\b|\bto the right\b/i
const LEFT_HAND = /\bleft[- ]hand(?:ed)? thread|\breverse thread|\bleft-hand thread/i
const LOOSENS = new Set('unscrew undo loosen slacken remove unthread crack'.split(' '))
const TIGHTENS = new Set('tighten torque screw refit fit nip snug do retighten secure close'.split(' '))

type Turn = { readonly thing: Thing; readonly direction: 'left' | 'right'; readonly does: 'loosens' | 'tightens' }

const doesIn = ({ verb, particle }: Action, text: string): Turn['does'] | undefined => {
  if (LOOSENS.has(verb) || /\bto (?:loosen|undo|remove|open|release|slacken)\b/i.test(text)) return 'loosens'
  if ((TIGHTENS.has(verb) && particle !== 'off') || /\bto (?:tighten|close|secure|fit|lock)\b/i.test(text))
    return 'tightens'
  return undefined
}

const turnsIn = onceForText((text: string): readonly Turn[] => {
  const direction = LEFT.test(text) ? 'left' : RIGHT.test(text) ? 'right' : undefined
  if (direction === undefined) return []
  return actionsOf(text).flatMap(action => {
    const does = doesIn(action, text)
    return does === undefined
      ? []
      : action.things.filter(({ head }) => head !== '').map((thing): Turn => ({ thing, direction, does }))
  })
})

const usual = ({ direction, does }: Turn): boolean => (direction === 'right') === (does === 'tightens')

const turnings = inSteps(({ mark }) => turnsIn(mark.text).map(turn => ({ mark, turn })))

const check = ({ project, sheet }: Subject): readonly Found[] => {
  const rows = turnings(sheet)
  if (rows.length === 0) return []
  const leftHand = project.marks.filter(({ text, kind }) => kind !== 'symptom' && LEFT_HAND.test(text))
  const isLeftHand = (mark: Mark, thing: Thing) =>
    LEFT_HAND.test(mark.text) ||
    leftHand.some(({ text }) => thing.words.some(word => text.toLowerCase().includes(word)))
  return rows.flatMap(({ mark, turn }, i): Found[] => {
    const other = rows
      .slice(0, i)
      .find(
        row =>
          isSameThing(row.turn.thing, turn.thing) &&
          (row.turn.direction === turn.direction) !== (row.turn.does === turn.does),
      )
    if (other !== undefined)
      return [
        {
          place: atMark(mark),
          level: 'stop',
          message: `${quote(mark)} and ${quote(other.mark)} disagree on which way the ${turn.thing.name} turns. Look at the part and mend one of them.`,
        },
      ]
    if (usual(turn) || isLeftHand(mark, turn.thing)) return []
    return [
      {
        place: atMark(mark),
        message: `${quote(mark)}: ${turn.direction === 'right' ? 'clockwise' : 'anticlockwise'} ${turn.does} only a left-hand thread. Say that it is one, or change the direction.`,
      },
    ]
  })
}

/** Clockwise loosens here and tightens there. */
export const directionDisagrees: Rule = {
  id: 'direction-disagrees',
  level: 'fix',
  about: 'Directions of turning disagree with each other, or with the thread nobody says is left-handed.',
  why: 'Turned the wrong way with a long bar, the bolt shears.',
  source: 'common practice, no source: clockwise tightens a right-hand thread',
  trips: sample([['step', 'Unscrew the impeller nut clockwise']]),
  passes: sample([['step', 'Unscrew the impeller nut clockwise, it has a left-hand thread']]),
  check,
}
