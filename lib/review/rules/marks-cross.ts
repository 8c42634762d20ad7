import type { Mark } from '@/lib/procedure/mark'
import { grouped } from '../grouped'
import { quote } from '../late'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

/** Overlaps shorter than this are slips of the hand that do no harm, seconds. */
const SLACK = 0.3

const cross = (a: Mark, b: Mark): boolean => {
  const shared = Math.min(a.end, b.end) - Math.max(a.start, b.start)
  const isNested =
    (a.start <= b.start + SLACK && a.end >= b.end - SLACK) || (b.start <= a.start + SLACK && b.end >= a.end - SLACK)
  // One inside the other is fine for steps; a limit or a caution that holds another step's has run on too far.
  const isStray = isNested && a.kind !== 'step' && a.step !== b.step && Math.abs(a.start - b.start) > SLACK
  return shared > SLACK && (!isNested || isStray)
}

/** Kinds whose marks say something of their own; tools and materials may share words. */
const CROSSING = new Set(['step', 'caution', 'spec', 'check'])

const check = ({ project }: Subject): readonly Found[] => {
  const kinds = grouped(
    project.marks.filter(({ kind, start, end }) => CROSSING.has(kind) && end > start),
    ({ kind }) => kind,
  )
  return [...kinds.values()].flatMap(marks => {
    const inTime = [...marks].sort((a, b) => a.start - b.start || a.end - b.end)
    return inTime.flatMap((mark, i): Found[] => {
      const next = inTime[i + 1]
      if (next === undefined || !cross(mark, next)) return []
      const message = `${quote(mark)} and ${quote(next)} cross in time. Say where the one ends and the other begins.`
      return [
        {
          place: atMark(next),
          message,
          remedy: {
            label: 'End the first where the second begins',
            edits: [{ do: 'change-mark', id: mark.id, to: { end: next.start } }],
          },
        },
      ]
    })
  })
}

/** Two steps over the same seconds, neither inside the other. */
export const marksCross: Rule = {
  id: 'marks-cross',
  level: 'consider',
  about: 'Two marks of one kind cross in time.',
  why: 'The clip of one step shows half of the next.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Remove the cover', { end: 8 }],
    ['step', 'Remove the fan'],
  ]),
  passes: sample([
    ['step', 'Remove the cover'],
    ['step', 'Remove the fan'],
  ]),
  check,
}
