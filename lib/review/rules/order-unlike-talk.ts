import type { Mark } from '@/lib/procedure/mark'
import type { Sentence } from '@/lib/procedure/recording'
import { longestRise } from '@/lib/procedure/rise'
import type { SheetStep } from '@/lib/procedure/sheet'
import { sharedTime } from '@/lib/procedure/time'
import { quote, toldSteps } from '../late'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { needsLater } from './needs-later'
import { preparationLate } from './preparation-late'
import { runUnready } from './run-unready'
import { stepLate } from './step-late'
import { lateIn } from './told-late'

/** Seconds between owning up and what was forgotten. */
const NEAR = 3

const isToldLate = (mark: Mark, late: readonly Sentence[]): boolean =>
  late.some(sentence => sharedTime(sentence, mark) > 0 || Math.abs(sentence.end - mark.start) < NEAR)

/**
 * Whoever says "I should have said before" tells late what is done early: there the sheet is right. So it is with the steps told
 * right after it that were moved up with it.
 */
const toldLate = (steps: readonly SheetStep[], sentences: readonly Sentence[]): ReadonlySet<string> => {
  const late = lateIn(sentences)
  const next = new Map<string, string>()
  const inTime = [...steps].sort((a, b) => a.mark.start - b.mark.start)
  inTime.forEach(({ mark }, i) => {
    next.set(mark.id, inTime[i + 1]?.mark.id ?? '')
  })
  const found = new Set<string>()
  for (const [i, { mark }] of steps.entries()) {
    const before = steps[i - 1]?.mark.id ?? ''
    const isMovedAlong = () =>
      found.has(before) &&
      next.get(before) === mark.id &&
      steps.some((other, j) => j > i && other.mark.end <= mark.start)
    if (isToldLate(mark, late) || isMovedAlong()) found.add(mark.id)
  }
  return found
}

/** Steps between which a reason is looked for; over more of them it costs more than a second look by whoever moved the step. */
const MOST_BETWEEN = 30

/** Rules that have a step moved out of the talk's order. */
const MOVERS = [stepLate, preparationLate, needsLater, runUnready]

/**
 * Steps that would have to be moved if the sheet kept to the talk: they stand elsewhere for a reason, which lies between where
 * they are told and where they stand, or before.
 */
const rightlyMoved = (
  subject: Subject,
  told: readonly SheetStep[],
  strays: readonly SheetStep[],
): readonly string[] => {
  const inTime = [...told].sort((a, b) => a.mark.start - b.mark.start)
  const places = strays.flatMap(step => [told.indexOf(step), inTime.indexOf(step)])
  const end = Math.max(...places) + 1
  const from = Math.max(0, end - MOST_BETWEEN)
  if (Math.min(...places) < from) return []
  const between = inTime.slice(from, end)
  const sheet = { ...subject.sheet, steps: between.map((step, i) => ({ ...step, number: i + 1 })) }
  return MOVERS.flatMap(rule => rule.check({ ...subject, sheet }))
    .flatMap(({ remedy }) => remedy?.edits ?? [])
    .flatMap(edit => (edit.do === 'move-step' ? edit.id : []))
}

const outOf = (steps: readonly SheetStep[]): readonly SheetStep[] => {
  const kept = longestRise(steps.map(({ mark }) => mark.start))
  return steps.filter((_, i) => !kept.has(i))
}

const check = (subject: Subject): readonly Found[] => {
  const { sheet, sentences } = subject
  if (sentences.length === 0) return []
  const told = toldSteps(sheet.steps)
  if (told.every(({ mark }, i) => (told[i - 1]?.mark.start ?? 0) <= mark.start)) return []
  const isLate = toldLate(told, sentences)
  const inTurn = told.filter(({ mark }) => !isLate.has(mark.id))
  const strays = outOf(inTurn)
  if (strays.length === 0) return []
  const isMeant = new Set(rightlyMoved(subject, told, strays))
  const steps = inTurn.filter(({ mark }) => !isMeant.has(mark.id))
  const kept = longestRise(steps.map(({ mark }) => mark.start))
  const isNextOf = (i: number): boolean =>
    !kept.has(i) && (steps[i - 1]?.mark.start ?? Number.POSITIVE_INFINITY) <= (steps[i]?.mark.start ?? -1)
  return steps.flatMap(({ mark, number }, i) => {
    // Of steps that were moved together, the first is told, and up to which they go.
    if (kept.has(i) || (i > 0 && !kept.has(i - 1) && isNextOf(i))) return []
    let last = i
    while (isNextOf(last + 1)) last++
    const after = steps.find((other, j) => j > last && other.mark.end <= mark.start)
    const other = after ?? steps.findLast((one, j) => j < i && one.mark.start >= mark.end)
    const end = steps[last]
    if (other === undefined || end === undefined) return []
    const side = after === undefined ? 'after' : 'before'
    const [who, what] =
      last === i
        ? [`Step ${number}, ${quote(mark)}, stands`, 'it']
        : [`Steps ${number} to ${end.number}, from ${quote(mark)} on, stand`, 'them']
    return [
      {
        place: atMark(mark),
        message: `${who} ${side} step ${other.number}, ${quote(other.mark)}; the talk tells ${what} the other way round. Check that it is meant so.`,
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
