import { countOf } from '@/lib/procedure/count'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { shorten } from '@/lib/procedure/shorten'
import { toLine } from './text'

/** A chapter: half-open span in seconds, a title of one line, the numbers of its steps. */
export type Chapter = {
  readonly start: number
  readonly end: number
  readonly title: string
  readonly steps: readonly number[]
}

/** Shortest chapter where the user sets none, seconds. Common practice, no source. */
export const LEAST_CHAPTER = 10

/** Longest title, characters: what a player's list of chapters shows of one. Common practice, no source. */
export const LONGEST_TITLE = 70

/** A step's words without their full stop. */
const wordsOf = (mark: Mark): string => toLine(mark.text).replace(/\.$/, '') || 'Step'

/** One short title: the words of its first step, how many more follow, and whether nobody has kept one of them yet. */
const titleOf = (marks: readonly Mark[], otherwise: string): string => {
  const [first, ...others] = marks
  if (first === undefined) return shorten(otherwise, LONGEST_TITLE)
  const more = others.length === 0 ? '' : ` and ${countOf(others.length, 'more step')}`
  const flag = marks.some(mark => mark.pencilled !== undefined) ? ' (pencilled)' : ''
  const words = shorten(wordsOf(first), LONGEST_TITLE - more.length - flag.length - 1)
  return `${words}${more === '' || words.endsWith('…') ? '' : ','}${more}${flag}`
}

/** How long the steps that follow each other from here on, each shorter than `least`, are together. */
const shortRun = (starts: readonly number[], from: number, end: number, least: number): number => {
  let at = from
  while (at < starts.length && Math.min(starts[at + 1] ?? end, end) - (starts[at] ?? end) < least) at++
  return Math.min(starts[at] ?? end, end) - (starts[from] ?? end)
}

/**
 * Chapters of the footage from the steps, in the order of the footage: the first at 0, each up to the next, the last up to
 * the end. One shorter than `least` joins the one before, unless those that follow it are short too and together long enough
 * for a chapter of their own; the first joins the one after, and so does the first with a step where a talk of some length comes
 * before it. What starts after the end of the footage joins the last. Each title is that of its first step and says how many more
 * follow.
 *
 * @param least seconds; 0 joins none but those that start together
 * @returns none where the footage (or, without footage, the last mark) has no length
 */
export const toChapters = (sheet: Sheet, least = LEAST_CHAPTER): readonly Chapter[] => {
  const steps = [...sheet.steps].sort((a, b) => a.mark.start - b.mark.start || a.number - b.number)
  const last = Math.max(0, ...sheet.steps.map(step => step.mark.end))
  const seconds = sheet.footage?.seconds ?? 0
  const end = seconds > 0 ? seconds : last
  if (end <= 0) return []
  const opening = { start: 0, steps: [] as SheetStep[] }
  const marks = steps.map(step => ({ start: step.mark.start, steps: [step] }))
  const all = marks[0]?.start === 0 ? marks : [opening, ...marks]
  const starts = all.map(({ start }) => start)
  const joined: { start: number; steps: SheetStep[] }[] = []
  for (const [i, chapter] of all.entries()) {
    const before = joined.at(-1)
    const length = Math.min(starts[i + 1] ?? end, end) - chapter.start
    const isTogether = before !== undefined && (chapter.start <= before.start || chapter.start >= end)
    // Nothing with steps stands before the last one that it could have joined.
    const isFirst = joined.slice(0, -1).every(each => each.steps.length === 0)
    const isFirstShort = before !== undefined && isFirst && chapter.start - before.start < least
    const isOwn =
      before !== undefined && chapter.start - before.start >= least && shortRun(starts, i, end, least) >= least
    const isShort = before !== undefined && before.steps.length > 0 && length < least && !isOwn
    if (before !== undefined && (isTogether || isFirstShort || isShort))
      joined[joined.length - 1] = { start: before.start, steps: [...before.steps, ...chapter.steps] }
    else joined.push({ ...chapter })
  }
  const name = marks.length === 0 ? toLine(sheet.heading.title) || 'Beginning' : 'Beginning'
  return joined.map(({ start, steps: of }, i) => ({
    start,
    end: joined[i + 1]?.start ?? end,
    title: titleOf(
      of.map(({ mark }) => mark),
      name,
    ),
    steps: of.map(({ number }) => number),
  }))
}
