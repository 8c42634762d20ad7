import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Span } from '@/lib/procedure/time'
import { onceFor } from '@/lib/review/memo'
import { isUntimed, wordsBySaid } from '@/lib/transcript/said'
import { type Talk, type WordRange, wordAt, wordsOfSpan } from '@/lib/transcript/talk'

/** Something to look at in the talk that is no mark: a finding about what was said. */
export type Doubt = Span & { readonly id: string; readonly label: string }

/** A mark or a doubt as the margin shows it: the words it covers and the lane it asks for, counted from the text outwards. */
export type Bracket = {
  readonly id: string
  readonly kind: Kind | 'doubt'
  readonly label: string
  readonly isPencilled: boolean
  /** Where it stands: the words it covers, or the one word it stands by. */
  readonly words: WordRange
  /** The lane of one that goes on over paragraphs; within one, fit.ts finds the lane by where the lines fall. */
  readonly lane: number
}

/** Lanes the margin has room for; what needs more shares the last. */
export const LANES = 6

/** Words between two marks of one lane, so that they do not meet on the same line. */
const APART = 7

type Thing = Span & Pick<Bracket, 'id' | 'kind' | 'label' | 'isPencilled'>

const ofMark = onceFor(
  ({ id, kind, text, pencilled, start, end }: Mark): Thing => ({
    id,
    kind,
    label: `${kind}: ${text}`,
    isPencilled: pencilled !== undefined,
    start,
    end,
  }),
)

const ofDoubt = ({ id, label, start, end }: Doubt): Thing => ({
  id,
  kind: 'doubt',
  label,
  isPencilled: false,
  start,
  end,
})

/**
 * The words a span covers; a span over a pause, or over less than a word, stands by the word said last before its end,
 * so that no mark can vanish from the talk.
 *
 * @returns undefined only for a talk without words
 */
export const wordsCovered = (talk: Talk, span: Span): WordRange | undefined => {
  const covered = wordsOfSpan(talk, span)
  if (covered !== undefined || talk.words.length === 0) return covered
  const by = wordAt(talk, span.end) ?? 0
  return { from: by, to: by + 1 }
}

/** By the talk, then by the mark: what an edit left as it was is not looked for again. */
const coveredIn = onceFor((talk: Talk) => onceFor((mark: Mark) => wordsCovered(talk, mark)))

/** What each mark covers: by its time, or, in a talk without times, by its words; without words of the talk it has no place. */
export const placesOf = (talk: Talk, marks: readonly Mark[]): ReadonlyMap<string, WordRange> => {
  if (isUntimed(talk)) return wordsBySaid(talk, marks)
  const coveredBy = coveredIn(talk)
  return new Map(
    marks.flatMap(mark => {
      const words = coveredBy(mark)
      return words === undefined ? [] : [[mark.id, words] as const]
    }),
  )
}

/**
 * Lays the marks out beside the talk, those that cover the same words in lanes next to each other.
 *
 * @returns brackets by paragraph number; a mark over several paragraphs stands in each of them. A mark that
 *   covers no word stands by the one said last before its end.
 */
export const bracketsByParagraph = (
  talk: Talk,
  marks: readonly Mark[],
  doubts: readonly Doubt[],
  places: ReadonlyMap<string, WordRange> = placesOf(talk, marks),
): ReadonlyMap<number, readonly Bracket[]> => {
  const placed = [...marks.map(ofMark), ...doubts.map(ofDoubt)]
    .flatMap(thing => {
      const words = thing.kind === 'doubt' ? wordsCovered(talk, thing) : places.get(thing.id)
      return words === undefined ? [] : [{ thing, words }]
    })
    .sort((a, b) => a.words.from - b.words.from || b.words.to - a.words.to)
  const laneEnds: number[] = []
  const byParagraph = new Map<number, Bracket[]>()
  for (const { thing, words } of placed) {
    const free = laneEnds.findIndex(end => end === 0 || end + APART <= words.from)
    const lane = free >= 0 ? free : Math.min(laneEnds.length, LANES - 1)
    laneEnds[lane] = Math.max(laneEnds[lane] ?? 0, words.to)
    const { id, kind, label, isPencilled } = thing
    const bracket = { id, kind, label, isPencilled, words, lane }
    const last = talk.words[words.to - 1]?.paragraph ?? 0
    for (let paragraph = talk.words[words.from]?.paragraph ?? 0; paragraph <= last; paragraph++) {
      const list = byParagraph.get(paragraph)
      if (list === undefined) byParagraph.set(paragraph, [bracket])
      else list.push(bracket)
    }
  }
  return byParagraph
}

const sameBracket = (a: Bracket, b: Bracket): boolean =>
  a === b ||
  (a.id === b.id &&
    a.kind === b.kind &&
    a.label === b.label &&
    a.isPencilled === b.isPencilled &&
    a.lane === b.lane &&
    a.words.from === b.words.from &&
    a.words.to === b.words.to)

const sameList = <T>(a: readonly T[], b: readonly T[], isSame: (a: T, b: T) => boolean): boolean =>
  a.length === b.length &&
  a.every((one, i) => {
    const other = b[i]
    return other !== undefined && isSame(one, other)
  })

/** Brackets of some paragraphs on end: a list for each of them. */
export type Portion = readonly (readonly Bracket[])[]

const NONE: readonly Bracket[] = []

/**
 * Cuts the brackets of `count` paragraphs into portions of `size`.
 *
 * @param before what was cut last time: lists and portions that would be drawn the same are taken over as the same objects
 */
export const portionsOf = (
  byParagraph: ReadonlyMap<number, readonly Bracket[]>,
  count: number,
  size: number,
  before: readonly Portion[],
): readonly Portion[] =>
  Array.from({ length: Math.ceil(count / size) }, (_, at) => {
    const old = before[at] ?? []
    const now = Array.from({ length: Math.min(size, count - at * size) }, (_, i) => {
      const list = byParagraph.get(at * size + i) ?? NONE
      const same = old[i]
      return same !== undefined && sameList(same, list, sameBracket) ? same : list
    })
    return sameList(old, now, (a, b) => a === b) ? old : now
  })
