import type { Mark } from '@/lib/procedure/mark'
import { type Action, actionsOf } from '../action'
import { atSteps } from '../chunks'
import { quote } from '../late'
import { onceForText } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isSameThing, type Thing } from '../thing'

const LEFT = /\b(?:anti-?clockwise|counter-?clockwise|to the left)\b/i
const RIGHT = /(?<!anti-?)(?<!counter-?)(?<!anti)(?<!counter)\bclockwise\b|\bto the right\b/i
/** Nuts of fuel gas are left-handed by rule. @source EN 560 (from memory) */
const LEFT_HAND =
  /\bleft[- ]hand(?:ed)? (?:threads?|(?:fuel|gas|acetylene|propane|butane|hydrogen|methane)\b|(?:[a-z-]+ )?(?:nut|locknut|bolt|screw|collar|plug)s?\b)|\breverse thread/i
const LOOSENS = new Set('unscrew undo loosen slacken remove unthread crack'.split(' '))
const TIGHTENS = new Set('tighten torque screw refit fit nip snug do retighten secure close'.split(' '))

/** Directions told by what lies there: front against rear, towards you against away from you. */
const WAYS: readonly (readonly [way: string, words: RegExp])[] = [
  ['front', /\b(?:to(?:wards?)? the front|forwards?|frontwards?)\b/i],
  ['rear', /\b(?:to(?:wards?)? the (?:rear|back)|backwards?|rearwards?)\b/i],
  ['near', /\b(?:towards? (?:you|yourself|the operator)|to you)\b/i],
  ['far', /\baway from (?:you|yourself|the operator)\b/i],
  ['up', /\b(?:upwards?|to the top)\b/i],
  ['down', /\b(?:downwards?|to the bottom)\b/i],
  ['wall', /\btowards? the (?:wall|window|door)\b/i],
]

type Direction = 'left' | 'right' | (string & {})
type Turn = {
  readonly thing: Thing
  readonly direction: Direction
  readonly does: 'loosens' | 'tightens' | 'sets' | 'turns'
}

/** What the turning is for, or when it is enough. */
const LOOSE =
  /\bto (?:loosen|undo|remove|open|release|slacken)\b|\b(?:until|till)\b[^.;]*\b(?:slack|loose|free|sags?|droops?|(?:comes?|drops?|lifts?) (?:off|out|away))\b/i
const TIGHT =
  /\bto (?:tighten|close|secure|fit|lock)\b|\b(?:until|till)\b[^.;]*\b(?:tight|snug|firm)\b|\bup to [^.;]*\btension\b|\bwith (?:the|a|your) (?:\w+ )?torque (?:wrench|driver|screwdriver)\b/i

/** Turned to where it has to be, it is neither tight nor loose, but surely not the way it was slackened. */
const TO_MARK =
  /\bto (?:the|its) (?:[a-z]+ ){0,2}(?:mark|tension|setting|reading|line)\b|\b(?:until|till) the (?:gauge|scale|needle|pointer|dial) (?:reads|shows|points|stands)\b(?! (?:zero|nothing|nought|0))/i

const doesIn = ({ verb, particle, acts, things }: Action, text: string): Turn['does'] | undefined => {
  if (LOOSENS.has(verb) || LOOSE.test(text)) return 'loosens'
  if ((TIGHTENS.has(verb) && particle !== 'off') || TIGHT.test(text)) return 'tightens'
  if (!things.some(({ head }) => TURNED.has(head)) || verb === 'pull' || verb === 'push' || verb === 'slide')
    return undefined
  if (acts.has('loosen') || (acts.has('remove') && !acts.has('refit'))) return 'loosens'
  if (acts.has('tighten') && !acts.has('remove')) return 'tightens'
  return undefined
}

const turnsIn = onceForText((text: string): readonly Turn[] => {
  const direction = LEFT.test(text)
    ? 'left'
    : RIGHT.test(text)
      ? 'right'
      : WAYS.find(([, words]) => words.test(text))?.[0]
  if (direction === undefined) return []
  return actionsOf(text).flatMap(action => {
    const does =
      doesIn(action, text) ??
      (TO_MARK.test(text) && action.things.some(({ head }) => TURNED.has(head)) ? 'sets' : undefined) ??
      (action.verb === 'turn' || action.verb === 'spin' ? 'turns' : undefined)
    return does === undefined
      ? []
      : action.things
          .filter(({ head }) => TURNED.has(head) || (head !== '' && (direction === 'left' || direction === 'right')))
          .map((thing): Turn => ({ thing, direction, does }))
  })
})

/** What is turned one way with a thread, where other directions tell nothing. */
const TURNED = new Set(
  'nut bolt screw cap ring impeller collar union locknut plug knob chuck collet gland arbor spindle handwheel'.split(
    ' ',
  ),
)

/** Whether two turns can't both be so. What is set may be turned either way, only not as it was slackened. */
const isAgainst = (a: Turn, b: Turn): boolean => {
  const isOneDirection = a.direction === b.direction
  if (a.does === 'sets' || b.does === 'sets') return isOneDirection && (a.does === 'loosens' || b.does === 'loosens')
  return isOneDirection !== (a.does === b.does)
}

const usual = ({ direction, does }: Turn): boolean =>
  does === 'turns' ||
  does === 'sets' ||
  (direction !== 'left' && direction !== 'right') ||
  (direction === 'right') === (does === 'tightens')

const turnings = atSteps(({ mark }) => turnsIn(mark.text).map(turn => ({ mark, turn })))

/** What is only turned and then comes off was loosened; what is turned after it went on was tightened. */
const settled = (sheet: Subject['sheet'], { turn, number }: { readonly turn: Turn; readonly number: number }): Turn => {
  if (turn.does !== 'turns') return turn
  for (const step of sheet.steps.slice(number, number + 2))
    for (const action of actionsOf(step.mark.text))
      if (
        action.things.some(thing => isSameThing(thing, turn.thing)) &&
        action.acts.has('remove') &&
        !action.acts.has('refit')
      )
        return { ...turn, does: 'loosens' }
  const before = sheet.steps[number - 2]
  const isOn = actionsOf(before?.mark.text ?? '').some(
    action => action.acts.has('refit') && action.things.some(thing => isSameThing(thing, turn.thing)),
  )
  return isOn ? { ...turn, does: 'tightens' } : turn
}

const AXES: readonly (readonly string[])[] = [
  ['left', 'right'],
  ['front', 'rear'],
  ['near', 'far'],
  ['up', 'down'],
  ['wall'],
]
/** Whether two directions are told in the same way, so that they can be compared. */
const isOneWay = (a: string, b: string): boolean => AXES.some(axis => axis.includes(a) && axis.includes(b))

const check = ({ project, sheet }: Subject): readonly Found[] => {
  const rows = turnings(sheet).map(row => ({ ...row, turn: settled(sheet, row) }))
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
          row.turn.does !== 'turns' &&
          turn.does !== 'turns' &&
          isOneWay(row.turn.direction, turn.direction) &&
          isAgainst(row.turn, turn),
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
