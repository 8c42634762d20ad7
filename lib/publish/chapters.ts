import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'
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

/** A step's text without its full stop, with a flag where nobody has kept it yet. */
const stepTitle = (mark: Mark): string =>
  `${toLine(mark.text).replace(/\.$/, '')}${mark.pencilled === undefined ? '' : ' (pencilled)'}`

const titleOf = (parts: readonly string[]): string => {
  const title = parts.filter(Boolean).join('; ')
  return title === '' ? 'Step' : title
}

/**
 * Chapters of the footage from the steps, in the order of the footage: the first at 0, each up to the next, the last up to
 * the end. One shorter than `least` joins the one before (the first joins the one after), both titles kept.
 *
 * @param least seconds; 0 joins none but those that start together
 * @returns none where the footage (or, without footage, the last mark) has no length
 */
export const toChapters = (sheet: Sheet, least = LEAST_CHAPTER): readonly Chapter[] => {
  const steps = [...sheet.steps].sort((a, b) => a.mark.start - b.mark.start || a.number - b.number)
  const last = Math.max(0, ...sheet.steps.map(step => step.mark.end))
  const end = Math.max(sheet.footage?.seconds ?? 0, last)
  if (end <= 0) return []
  const name = toLine(sheet.heading.title) || 'Beginning'
  const marks = steps.map(({ mark, number }) => ({ start: mark.start, titles: [stepTitle(mark)], steps: [number] }))
  const opening = { start: 0, titles: [marks.length === 0 ? name : 'Beginning'], steps: [] as number[] }
  const all = marks[0]?.start === 0 ? marks : [opening, ...marks]
  const joined: { start: number; titles: string[]; steps: number[] }[] = []
  for (const [i, chapter] of all.entries()) {
    const before = joined.at(-1)
    const length = (all[i + 1]?.start ?? end) - chapter.start
    const isFirstShort = joined.length === 1 && before !== undefined && chapter.start - before.start < least
    const isTogether = before !== undefined && chapter.start <= before.start
    if (before !== undefined && (isTogether || isFirstShort || length < least)) {
      const titles = before.steps.length === 0 && isFirstShort ? chapter.titles : [...before.titles, ...chapter.titles]
      joined[joined.length - 1] = { start: before.start, titles, steps: [...before.steps, ...chapter.steps] }
    } else joined.push({ ...chapter })
  }
  return joined.map(({ start, titles, steps: numbers }, i) => ({
    start,
    end: joined[i + 1]?.start ?? end,
    title: titleOf(titles),
    steps: numbers,
  }))
}
