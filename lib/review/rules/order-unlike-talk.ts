import type { Mark } from '@/lib/procedure/mark'
import type { Sentence } from '@/lib/procedure/recording'
import type { SheetStep } from '@/lib/procedure/sheet'
import { sharedTime } from '@/lib/procedure/time'
import { quote, toldSteps } from '../late'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { lateIn } from './told-late'

/** Steps that stand where the talk has them: the longest run of them whose times rise, by their index. */
const inOrder = (steps: readonly SheetStep[]): ReadonlySet<number> => {
  // ends[n]: which step ends the run of n + 1 steps that begins latest; before[i]: which step precedes i in its run.
  const ends: number[] = []
  const before: number[] = []
  steps.forEach(({ mark }, i) => {
    let [low, high] = [0, ends.length]
    while (low < high) {
      const middle = (low + high) >> 1
      if ((steps[ends[middle] ?? 0]?.mark.start ?? 0) <= mark.start) low = middle + 1
      else high = middle
    }
    before[i] = ends[low - 1] ?? -1
    ends[low] = i
  })
  const kept = new Set<number>()
  for (let i = ends.at(-1) ?? -1; i >= 0; i = before[i] ?? -1) kept.add(i)
  return kept
}

/** Whoever says "I should have said before" tells late what is done early: there the sheet is right. */
const isToldLate = (mark: Mark, late: readonly Sentence[]): boolean =>
  late.some(sentence => sharedTime(sentence, mark) > 0 || Math.abs(sentence.end - mark.start) < NEAR)
/** Seconds between owning up and what was forgotten. */
const NEAR = 3

const check = ({ sheet, sentences }: Subject): readonly Found[] => {
  if (sentences.length === 0) return []
  const steps = toldSteps(sheet.steps)
  const kept = inOrder(steps)
  if (kept.size === steps.length) return []
  const late = lateIn(sentences)
  return steps.flatMap(({ mark, number }, i) => {
    if (kept.has(i) || isToldLate(mark, late)) return []
    const after = steps.find((other, j) => j > i && other.mark.end <= mark.start)
    const other = after ?? steps.findLast((one, j) => j < i && one.mark.start >= mark.end)
    if (other === undefined) return []
    return [
      {
        place: atMark(mark),
        message: `Step ${number}, ${quote(mark)}, stands ${after === undefined ? 'after' : 'before'} step ${other.number}, ${quote(other.mark)}; the talk tells it the other way round. Check that it is meant so.`,
      },
    ]
  })
}

/** The sheet has two steps the other way round. */
export const orderUnlikeTalk: Rule = {
  id: 'order-unlike-talk',
  level: 'consider',
  about: 'The sheet has a step before another one, the talk after it, and nobody says that it was told late.',
  why: 'A step that slipped out of its place sends the reader to a part that is still closed, under pressure or in the way.',
  source: 'IEC/IEEE 82079-1:2019: steps in the order of doing (from memory)',
  trips: sample(
    [
      ['step', 'Lift the wheel away', { start: 5, end: 10 }],
      ['step', 'Lower the axle onto the stand', { start: 0, end: 5 }],
    ],
    { talk: ['Lower the axle onto the stand.', 'Lift the wheel away.'] },
  ),
  passes: sample(
    [
      ['step', 'Photograph the wiring', { start: 5, end: 10 }],
      ['step', 'Take the cover off', { start: 0, end: 5 }],
    ],
    { talk: ['Take the cover off.', 'Oh, I should have said, photograph the wiring.'] },
  ),
  check,
}
