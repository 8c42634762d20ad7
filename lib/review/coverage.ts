import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import type { Sentence } from '@/lib/procedure/recording'
import { type Span, sharedTime } from '@/lib/procedure/time'
import { isInstructing } from './instructing'
import { onceForLast } from './memo'
import { type Subject, talkOf } from './subject'

/** How much of the instructing talk the marks account for. */
export type Coverage = {
  /** Seconds of talk that instruct, and of those the seconds some mark covers. */
  readonly instructing: number
  readonly covered: number
  /** `covered` of `instructing`, 0 to 1; 1 where nothing instructs. */
  readonly share: number
  /** What is left over, in order: sentences that instruct and that no mark covers for the most part. */
  readonly left: readonly (Span & { readonly text: string })[]
}

const byStart = (a: Span, b: Span): number => a.start - b.start

/** Spans that overlap or touch made one. */
const united = (spans: readonly Span[]): readonly Span[] => {
  const all: Span[] = []
  for (const span of [...spans].sort(byStart)) {
    const last = all.at(-1)
    if (last !== undefined && span.start <= last.end)
      all[all.length - 1] = { start: last.start, end: Math.max(last.end, span.end) }
    else all.push({ start: span.start, end: span.end })
  }
  return all
}

/** @returns seconds of each sentence that marks cover; both lists run once. */
export const coveredSeconds = (sentences: readonly Sentence[], marks: readonly Mark[]): readonly number[] => {
  const spans = united(marks)
  let at = 0
  return sentences.map(sentence => {
    while (at < spans.length && (spans[at]?.end ?? 0) <= sentence.start) at++
    let seconds = 0
    for (let i = at; i < spans.length; i++) {
      const span = spans[i]
      if (span === undefined || span.start >= sentence.end) break
      seconds += sharedTime(span, sentence)
    }
    return seconds
  })
}

/** Share of a sentence that marks may cover though they are of other things. */
const GRAZED = 0.2

/** @returns sentences that take time and that none of the marks is of. */
export const leftOut = (sentences: readonly Sentence[], marks: readonly Mark[]): readonly Sentence[] => {
  const seconds = coveredSeconds(sentences, marks)
  return sentences.filter(({ start, end }, i) => end > start && (seconds[i] ?? 0) <= GRAZED * (end - start))
}

/** @returns sentences of the talk that no mark is of; none where nothing is marked yet. Asked once a review. */
export const leftByMarks = onceForLast(({ project, sentences }: Subject): readonly Sentence[] =>
  sentences.length === 0 || project.marks.length === 0 ? [] : leftOut(sentences, project.marks),
)

/**
 * How much of what was told the marks account for.
 *
 * @returns shares of time; everything 0 and share 1 where there is no timed talk. Linear in sentences and marks.
 */
export const coverageOf = (project: Project): Coverage => {
  const sentences = talkOf(project)
  const seconds = coveredSeconds(sentences, project.marks)
  let [instructing, covered] = [0, 0]
  const left: (Span & { text: string })[] = []
  for (const [i, { start, end, text }] of sentences.entries()) {
    if (!isInstructing(text) || end <= start) continue
    const own = Math.min(end - start, seconds[i] ?? 0)
    instructing += end - start
    covered += own
    if (own < 0.5 * (end - start)) left.push({ start, end, text })
  }
  return { instructing, covered, share: instructing === 0 ? 1 : covered / instructing, left }
}
