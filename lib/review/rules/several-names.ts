import type { Mark } from '@/lib/procedure/mark'
import { SAME_PART } from '@/lib/trade/pairs'
import { PART_NAMES } from '@/lib/trade/part-names'
import { type Action, actionsOf } from '../action'
import { atSteps, inSteps } from '../chunks'
import { quote } from '../late'
import { openItems } from '../ledger'
import { listedThing } from '../listed'
import { redoneBy } from '../restored'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import { stemIndex } from '../stem-index'
import type { Subject } from '../subject'
import { isOpposed, isSameThing, type Thing } from '../thing'
import { contentStems, stemOf, stemSet, verbOf } from '../words'

const GROUPS = [...SAME_PART.slice(0, 5), ...PART_NAMES]
const areNames = (a: string, b: string): boolean => GROUPS.some(group => group.includes(a) && group.includes(b))

const FAMILIES = SAME_PART.slice(0, 5)
const groupOf = (head: string): number => FAMILIES.findIndex(group => group.includes(head))

/** Parts of a step that could go by another name, with what such names have in common. */
const namesIn = inSteps(({ mark }) =>
  actionsOf(mark.text).flatMap(({ things }) =>
    things
      .filter(({ words, head }) => words.length > 1 && groupOf(head) >= 0)
      .map(thing => ({ mark, thing, key: `${groupOf(thing.head)} ${thing.rest.join(' ')}` })),
  ),
)

type Good = { readonly mark: Mark; readonly number: number; readonly action: Action; readonly thing: Thing }

/** What makes good something, with the thing it names. */
const goodIn = atSteps(({ mark }): readonly Omit<Good, 'number'>[] =>
  actionsOf(mark.text).flatMap(action =>
    redoneBy(action).size === 0
      ? []
      : action.things.filter(({ head }) => head !== '').map(thing => ({ mark, action, thing })),
  ),
)

/** What both name beside the part: "with the red cord". */
const shareContext = (a: string, b: string, things: readonly Thing[]): boolean => {
  const own = new Set(things.flatMap(({ words }) => words.map(stemOf)))
  const other = stemSet(b)
  return contentStems(a).filter(stem => other.has(stem) && !own.has(stem) && verbOf(stem) === undefined).length >= 2
}

const NEW = /\b(?:new|fresh|replacement|spare)\b/i

/** Movements that take each other back. */
const BACK: Readonly<Record<string, string>> = Object.setPrototypeOf(
  { down: 'up', up: 'down', out: 'in', in: 'out', open: 'shut', shut: 'open', off: 'on', on: 'off' },
  null,
)

type Move = {
  readonly mark: Mark
  readonly number: number
  readonly verb: string
  readonly particle: string
  readonly thing: Thing
}
const movesIn = atSteps(({ mark }): readonly Omit<Move, 'number'>[] =>
  actionsOf(mark.text).flatMap(({ verb, particle, things }) =>
    particle === undefined || BACK[particle] === undefined
      ? []
      : things.filter(({ head }) => head !== '').map(thing => ({ mark, verb, particle, thing })),
  ),
)

const message = (name: string, mark: Mark, other: string, earlier: Mark): string =>
  `"${name}" in ${quote(mark)} may be the "${other}" of ${quote(earlier)}. If it is one part, use one name; if there are two, say what becomes of the first.`

/** Swung down under one name and up again under another that nobody named before. */
const swung = (sheet: Subject['sheet']): readonly Found[] => {
  const moves = movesIn(sheet)
  const index = stemIndex(sheet.steps)
  return moves.flatMap((move): Found[] => {
    if (index.get(stemOf(move.thing.head))?.[0] !== move.number) return []
    const earlier = moves.find(
      other =>
        other.number < move.number &&
        other.verb === move.verb &&
        BACK[other.particle] === move.particle &&
        other.thing.head !== move.thing.head &&
        areNames(other.thing.head, move.thing.head) &&
        !isOpposed(other.thing.words, move.thing.words) &&
        !moves.some(
          own => own.number > other.number && own.particle === move.particle && own.thing.head === other.thing.head,
        ),
    )
    return earlier === undefined
      ? []
      : [{ place: atMark(move.mark), message: message(move.thing.name, move.mark, earlier.thing.name, earlier.mark) }]
  })
}

/** What steps take in hand: "with the barring handle". */
const inHandIn = atSteps(({ mark }) =>
  actionsOf(mark.text).flatMap(({ along }) => along.filter(({ head }) => head !== '').map(thing => ({ mark, thing }))),
)

/** Everything steps name. */
const namedIn = atSteps(({ mark }) =>
  actionsOf(mark.text).flatMap(({ things, along }) => [...things, ...along].map(thing => ({ thing }))),
)

/** A tool taken out under a name that nobody named before, while one that was put to use is never taken out. */
const takenOut = (sheet: Subject['sheet']): readonly Found[] => {
  const used = inHandIn(sheet)
  if (used.length === 0) return []
  const named = namedIn(sheet)
  const listed = sheet.tools.map(({ text }) => listedThing(text))
  return openItems(sheet).flatMap(({ thing, undone, step, number }): Found[] => {
    if (undone !== 'removed' || named.some(own => own.number < number && isSameThing(own.thing, thing))) return []
    if (listed.some(({ head }) => head === thing.head)) return []
    const tool = used.findLast(
      own =>
        own.number < number &&
        areNames(own.thing.head, thing.head) &&
        listed.some(({ head }) => head === own.thing.head) &&
        !isOpposed(own.thing.words, thing.words),
    )
    return tool === undefined
      ? []
      : [{ place: atMark(step), message: message(thing.name, step, tool.thing.name, tool.mark) }]
  })
}

/** Something left undone under one name, and something made good that nobody undid under the other. */
const renamed = (sheet: Subject['sheet']): readonly Found[] => {
  const left = openItems(sheet)
  if (left.length === 0) return []
  const index = stemIndex(sheet.steps)
  const listed = new Set([...sheet.tools, ...sheet.materials].map(({ text }) => listedThing(text).head))
  const renewed = new Set(
    sheet.materials.filter(({ text }) => NEW.test(text)).map(({ text }) => listedThing(text).head),
  )
  /** One came out, another goes in under another name, and the list has a new one of the first name only. */
  const isSwap = (text: string, { head }: Thing, { mark, thing }: Good): boolean =>
    ((/\bold\b/i.test(text) && NEW.test(mark.text) && listed.has(head)) || renewed.has(head)) && !listed.has(thing.head)
  return left.flatMap(({ thing, undone, step, number }): Found[] => {
    const goods = goodIn(sheet).filter(
      row =>
        row.number > number &&
        row.thing.head !== thing.head &&
        redoneBy(row.action).has(undone) &&
        !listed.has(row.thing.head) &&
        index.get(stemOf(row.thing.head))?.[0] === row.number &&
        !isOpposed(row.thing.words, thing.words),
    )
    const good =
      goods.find(
        row => areNames(row.thing.head, thing.head) || shareContext(step.text, row.mark.text, [thing, row.thing]),
      ) ?? goods.find(row => isSwap(step.text, thing, row))
    return good === undefined
      ? []
      : [
          {
            place: atMark(good.mark),
            message: message(good.thing.name, good.mark, thing.name, step),
          },
        ]
  })
}

const check = (subject: Subject): readonly Found[] => [
  ...alike(subject),
  ...renamed(subject.sheet),
  ...swung(subject.sheet),
  ...takenOut(subject.sheet),
]

const alike = ({ sheet }: Subject): readonly Found[] => {
  const first = new Map<string, { readonly mark: Mark; readonly thing: Thing }>()
  const rows = namesIn(sheet)
  const told = new Set<string>()
  return rows.flatMap(({ mark, thing, key }): Found[] => {
    const earlier = first.get(key)
    if (earlier === undefined) {
      first.set(key, { mark, thing })
      return []
    }
    const isOther =
      earlier.thing.head !== thing.head &&
      !isOpposed(earlier.thing.words, thing.words) &&
      !told.has(thing.words.join(' '))
    if (!isOther || earlier.mark === mark) return []
    told.add(thing.words.join(' '))
    return [
      {
        place: atMark(mark),
        message: `"${thing.name}" in ${quote(mark)} was "${earlier.thing.name}" in ${quote(earlier.mark)}. If it is one part, use one name; if there are two, say what tells them apart.`,
      },
    ]
  })
}

/** One part, one name. */
export const severalNames: Rule = {
  id: 'several-names',
  level: 'consider',
  about: 'One part seems to go by several names.',
  why: 'The reader looks for a second part that is not there.',
  source: 'ASD-STE100 rule 1.11 on one name for one thing, issue 8 (from memory)',
  trips: sample([
    ['step', 'Remove the access panel'],
    ['step', 'Clean the fan'],
    ['step', 'Refit the access cover'],
  ]),
  passes: sample([
    ['step', 'Remove the access panel'],
    ['step', 'Clean the fan'],
    ['step', 'Refit the access panel'],
  ]),
  check,
}
