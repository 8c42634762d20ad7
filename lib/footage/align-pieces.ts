import { firstIndex } from '@/lib/procedure/search'
import type { Span } from '@/lib/procedure/time'

/** A line of the text, its words as written and as said. */
export type Line = {
  readonly line: number
  readonly words: readonly { readonly text: string; readonly said: readonly string[] }[]
}

/** A stretch of speech with the heard phones [first, last) in it. */
export type Stretch = Span & { readonly first: number; readonly last: number }

/** Lines that follow each other without a break, and the sound they are said in. */
export type Piece = Span & { readonly lines: readonly Line[] }

/** Speech longer than this is cut even without a pause, seconds: the recogniser's memory grows with length. */
const LONGEST = 25

/** Pieces are closed at the next pause once they are this long, seconds: the cost of timing grows faster than length. */
const ENOUGH = 8

/** Least share of a line's phones that must be matched for it to count as heard. */
const MATCHED = 0.4

/** Silence taken with a piece on either side, seconds. */
const MARGIN = 0.15

/** Speech cut into stretches the recogniser can bear. */
export const joinSpeech = (speech: readonly Span[]): Span[] =>
  speech.flatMap(({ start, end }) => {
    const parts = Math.ceil((end - start) / LONGEST)
    const length = (end - start) / parts
    return Array.from({ length: parts }, (_, i) => ({ start: start + i * length, end: start + (i + 1) * length }))
  })

type HeardPhones = { readonly times: readonly number[]; readonly stretches: readonly Stretch[] }

/** Cuts stretches where speech beyond the text begins and ends. */
export const splitStretches = ({ times, stretches }: HeardPhones, asides: Uint8Array): Stretch[] =>
  stretches.flatMap(stretch => {
    const parts: { start: number; end: number; first: number; last: number }[] = []
    for (let i = stretch.first; i < stretch.last; i++) {
      const open = parts.at(-1)
      if (open !== undefined && asides[i] === asides[open.first]) open.last = i + 1
      else {
        const start = open === undefined ? stretch.start : (times[i] ?? stretch.start)
        if (open !== undefined) open.end = start
        parts.push({ start, end: stretch.end, first: i, last: i + 1 })
      }
    }
    return parts
  })

/** @returns index of the stretch that a heard phone lies in */
const stretchOf = (stretches: readonly Stretch[], phone: number): number =>
  firstIndex(stretches.length - 1, i => (stretches[i]?.last ?? 0) > phone)

/** The stretches a line was matched in; one at either end that holds only a few of its phones is left to its neighbour. */
const placeOf = (line: number, begins: readonly number[], matches: Int32Array, stretches: readonly Stretch[]) => {
  const [from, to] = [begins[line] ?? 0, begins[line + 1] ?? 0]
  const counts = new Map<number, number>()
  let matched = 0
  for (let i = from; i < to; i++) {
    const phone = matches[i] ?? -1
    if (phone < 0) continue
    matched++
    const stretch = stretchOf(stretches, phone)
    counts.set(stretch, (counts.get(stretch) ?? 0) + 1)
  }
  if (to === from || matched < MATCHED * (to - from)) return undefined
  const few = ([stretch, count]: readonly [number, number]) => {
    const { first = 0, last = 0 } = stretches[stretch] ?? {}
    return count < 0.25 * (last - first) && count < 0.25 * matched
  }
  const order = [...counts].sort(([a], [b]) => a - b)
  while (order.length > 1 && order[0] !== undefined && few(order[0])) order.shift()
  for (let end = order.at(-1); order.length > 1 && end !== undefined && few(end); end = order.at(-1)) order.pop()
  return { first: order[0]?.[0] ?? 0, last: order.at(-1)?.[0] ?? 0 }
}

/**
 * Groups lines into pieces that can be timed one by one: each is bounded by pauses, and by what one side leaves out.
 *
 * @param begins where each line's phones begin among the written ones
 * @param matches heard phone of each written one, or -1
 */
export const piecesOf = (
  lines: readonly Line[],
  begins: readonly number[],
  matches: Int32Array,
  stretches: readonly Stretch[],
): Piece[] => {
  const pieces: { lines: Line[]; first: number; last: number }[] = []
  for (const line of lines) {
    const place = placeOf(line.line, begins, matches, stretches)
    if (place === undefined) continue
    const open = pieces.at(-1)
    if (open === undefined) {
      pieces.push({ lines: [line], ...place })
      continue
    }
    const length = (stretches[open.last]?.end ?? 0) - (stretches[open.first]?.start ?? 0)
    // Two lines in one stretch are timed together; so are short ones that follow each other.
    if (place.first <= open.last || (place.first === open.last + 1 && length < ENOUGH)) {
      open.lines.push(line)
      open.last = Math.max(open.last, place.last)
    } else pieces.push({ lines: [line], ...place })
  }
  return pieces.map(({ lines: own, first, last }) => {
    const [start, end] = [stretches[first]?.start ?? 0, stretches[last]?.end ?? 0]
    const before = stretches[first - 1]?.end ?? 0
    const after = stretches[last + 1]?.start ?? end + 1
    return {
      lines: own,
      start: Math.max(0, start - Math.min(MARGIN, (start - before) / 2)),
      end: end + Math.min(MARGIN, (after - end) / 2),
    }
  })
}
