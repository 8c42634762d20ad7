import type { Mark } from '@/lib/procedure/mark'
import { SAME_PART } from '@/lib/trade/pairs'
import { actionsOf } from '../action'
import { inSteps } from '../chunks'
import { quote } from '../late'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isOpposed, type Thing } from '../thing'

const GROUPS = SAME_PART.slice(0, 5)
const groupOf = (head: string): number => GROUPS.findIndex(group => group.includes(head))

/** Parts of a step that could go by another name, with what such names have in common. */
const namesIn = inSteps(({ mark }) =>
  actionsOf(mark.text).flatMap(({ things }) =>
    things
      .filter(({ words, head }) => words.length > 1 && groupOf(head) >= 0)
      .map(thing => ({ mark, thing, key: `${groupOf(thing.head)} ${thing.rest.join(' ')}` })),
  ),
)

const check = ({ sheet }: Subject): readonly Found[] => {
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
