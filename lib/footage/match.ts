import type { Band, Sequence } from './grid'
import { findPath, type Path } from './path'
import { NAT, phoneScores } from './phone-scores'
import { PHONES } from './recogniser'

/** Half the band looked at around a path found before, phones: about 40 seconds of talk. */
const HALF = 400

/** Cells looked at where nothing is known of the path: the whole grid of two hours, half an hour either way of five. */
const CELLS = 8e9

/**
 * Points a phone that leaving out costs, round by round: first the scores must be learned, from as much as there is;
 * what to leave out is settled when they are.
 */
const RELUCTANCE = [60, 20, 0]

/** Points of a phone missing on one side inside a sentence, for judging it. */
const MISSING = -1.5 * NAT

/** Least points a phone for a sentence to count as heard, as a share of the talk's middle one. Tuned on synthesised talks. */
const HEARD = 0.32

/** Phones that are not counted for that: a short sentence may be heard badly as a whole. */
const FREE = 3

/** No bounds but the number of cells. */
const wideBand = (n: number, m: number): Band => {
  const half = Math.max(3000, Math.floor(CELLS / (n + 1) / 2))
  const middle = (row: number) => Math.round((row * m) / Math.max(1, n))
  return {
    left: Int32Array.from({ length: n + 1 }, (_, row) => (row === 0 ? 0 : Math.max(0, middle(row) - half))),
    right: Int32Array.from({ length: n + 1 }, (_, row) => (row === n ? m : Math.min(m, middle(row) + half))),
  }
}

/** Around a path; wide where it leaves something out. */
const bandAround = ({ matches }: Path, m: number): Band => {
  const n = matches.length
  const [left, right] = [new Int32Array(n + 1), new Int32Array(n + 1)]
  for (let row = 0, last = 0; row <= n; row++) {
    left[row] = Math.max(0, last - HALF)
    if ((matches[row] ?? -1) >= 0) last = (matches[row] ?? 0) + 1
  }
  for (let row = n, next = m; row >= 0; row--) {
    right[row] = Math.min(m, next + HALF)
    if ((matches[row - 1] ?? -1) >= 0) next = matches[row - 1] ?? 0
  }
  return { left, right }
}

/** What two bands have in common that hold the same path. */
const overlap = (a: Band, b: Band): Band => ({
  left: a.left.map((left, row) => Math.max(left, b.left[row] ?? 0)),
  right: a.right.map((right, row) => Math.min(right, b.right[row] ?? 0)),
})

/** Heard phones [from, to] that a sentence's phones may be matched with. */
export type Bounds = { readonly from: number; readonly to: number }

/** The band that bounds by sentence leave; sentences without phones have none. */
const bandWithin = (bounds: readonly Bounds[], begins: readonly number[], m: number): Band => {
  const n = begins.at(-1) ?? 0
  const [left, right] = [new Int32Array(n + 1).fill(m), new Int32Array(n + 1)]
  for (const [k, { from, to }] of bounds.entries()) {
    for (let row = begins[k] ?? 0; row <= (begins[k + 1] ?? 0); row++) {
      left[row] = Math.min(left[row] ?? m, from)
      right[row] = Math.max(right[row] ?? 0, to)
    }
  }
  left[0] = 0
  right[n] = m
  for (let row = n - 1; row >= 0; row--) left[row] = Math.min(left[row] ?? 0, left[row + 1] ?? m)
  for (let row = 1; row <= n; row++) right[row] = Math.max(right[row] ?? m, right[row - 1] ?? 0)
  return { left, right }
}

/** @returns for each sentence on a path whether it fits its place much worse than the others fit theirs */
const judge = (written: Sequence, heard: Sequence, scores: Int32Array, { matches, asides }: Path): boolean[] => {
  const judged = written.begins.slice(1).map((end, k) => {
    const begin = written.begins[k] ?? 0
    let [sum, matched, first, last] = [0, 0, 0, -1]
    for (let i = begin; i < end; i++) {
      const match = matches[i] ?? -1
      if (match < 0) continue
      if (matched++ === 0) first = match
      last = match
      sum += scores[(written.phones[i] ?? 0) * PHONES.length + (heard.phones[match] ?? 0)] ?? 0
    }
    const apart = asides.subarray(first, last + 1).reduce((all, one) => all + one, 0)
    const missing = end - begin - matched + (last + 1 - first - matched - apart)
    return { length: end - begin, isMatched: matched > 0, sum: sum + MISSING * missing }
  })
  const shares = judged.flatMap(({ isMatched, sum, length }) => (isMatched ? [sum / length] : [])).sort((a, b) => a - b)
  const middle = shares[shares.length >> 1] ?? 0
  return judged.map(({ isMatched, sum, length }) => isMatched && sum < HEARD * middle * (length - FREE))
}

/** The text without some of its sentences. */
const without = ({ phones, begins }: Sequence, isOut: readonly boolean[]) => {
  const kept: number[] = []
  const left = [0]
  for (const [k, out] of isOut.entries()) {
    for (let i = begins[k] ?? 0; !out && i < (begins[k + 1] ?? 0); i++) kept.push(i)
    left.push(kept.length)
  }
  return { sequence: { phones: Uint8Array.from(kept, i => phones[i] ?? 0), begins: left }, kept }
}

/**
 * Matches the phones of a text with the phones that were heard. How this voice in this room makes each phone sound is
 * learned from the talk itself. A sentence that fits its place much worse than the others do counts as not said.
 *
 * @param bounds one a sentence, where its place is roughly known
 */
export const matchPhones = (written: Sequence, heard: Sequence, bounds?: readonly Bounds[]): Path => {
  const [n, m] = [written.phones.length, heard.phones.length]
  const limits = bounds === undefined ? wideBand(n, m) : bandWithin(bounds, written.begins, m)
  let band = limits
  let scores = phoneScores(heard.phones)
  let path: Path = { matches: new Int32Array(n).fill(-1), asides: new Uint8Array(m) }
  let isOut: readonly boolean[] = []
  for (const reluctance of RELUCTANCE) {
    path = findPath(written, heard, scores, band, reluctance)
    isOut = judge(written, heard, scores, path)
    if (reluctance === 0) break
    // What fits badly would teach what isn't so.
    const taught = Int32Array.from(path.matches)
    for (const [k, out] of isOut.entries()) if (out) taught.fill(-1, written.begins[k], written.begins[k + 1])
    scores = phoneScores(heard.phones, { written: written.phones, matches: taught })
    band = overlap(bandAround(path, m), limits)
  }
  if (!isOut.includes(true)) return path
  const { sequence, kept } = without(written, isOut)
  const matches = Int32Array.from(kept, i => path.matches[i] ?? -1)
  const again = findPath(sequence, heard, scores, bandAround({ matches, asides: path.asides }, m), 0)
  path.matches.fill(-1)
  for (const [k, i] of kept.entries()) path.matches[i] = again.matches[k] ?? -1
  return { matches: path.matches, asides: again.asides }
}
