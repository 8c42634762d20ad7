import { type Band, emptyRow, Grid, type Kept, NEVER, type Row, type Sequence, type Ways } from './grid'

/** Rows whose ways are held at once: the rest is worked out again from rows kept. */
const BLOCK = 600

/** What belongs together in text and talk. */
export type Path = {
  /** For each written phone the heard one it was matched with; -1 for none. */
  readonly matches: Int32Array
  /** For each heard phone 1 where it is speech that isn't written. */
  readonly asides: Uint8Array
}

/** How a cell ends; else with an aside. */
const [PAIR, INSERTED, DROPPED] = [0, 1, 2]

/** Works through rows (from, to], with the row at `from` given. @returns the row kept last, at `to` */
const sweep = (
  grid: Grid,
  cells: Row,
  from: Kept,
  to: number,
  most: number,
  onRow: (row: number) => Ways | undefined,
  onKept: (kept: Kept) => void = () => {},
): Kept => {
  let kept = from
  for (let row = from.row + 1; row <= to; row++) {
    const ways = onRow(row)
    grid.step(cells, row, most, ways)
    const begin = grid.beginOf(row)
    if (begin === undefined) continue
    if (begin === kept.row) grid.skip(cells, row, most, kept, ways)
    kept = grid.keep(cells, row, most)
    onKept(kept)
  }
  return kept
}

/** Rows that blocks begin with, and the last one. */
const checkpointsOf = (grid: Grid, n: number, m: number): readonly Kept[] => {
  const cells = emptyRow(m + 1)
  grid.step(cells, 0, m)
  const first = grid.keep(cells, 0, m)
  const checkpoints = [first]
  const onKept = (kept: Kept) => {
    if (kept.row - (checkpoints.at(-1)?.row ?? 0) >= BLOCK && kept.row < n) checkpoints.push(kept)
  }
  const last = sweep(grid, cells, first, n, m, () => undefined, onKept)
  return n === 0 ? [first, first] : [...checkpoints, last]
}

/** A place on the way back. */
type Place = { row: number; j: number; state: number }

/** Follows the ways of a block back to its first row, noting pairs and asides. */
const follow = (grid: Grid, first: number, place: Place, wayAt: (row: number, j: number) => number, path: Path) => {
  while (place.row > first || (first === 0 && place.j > 0)) {
    const code = wayAt(place.row, place.j)
    const way = place.state === PAIR ? code & 7 : (code >> 3) & 7
    if (place.state === INSERTED) {
      place.j--
      place.state = (code & 64) === 0 ? PAIR : INSERTED
    } else if (place.state === DROPPED) {
      place.row--
      place.state = (code & 128) === 0 ? PAIR : DROPPED
    } else if (way >= 4) {
      // A sentence left out; an aside goes on around it.
      place.row = grid.beginOf(place.row) ?? place.row - 1
      if (place.state === PAIR) place.state = way - 4
    } else if (place.state === PAIR) {
      path.matches[--place.row] = --place.j
      place.state = way
    } else {
      path.asides[--place.j] = 1
      place.state = way
    }
  }
}

/**
 * The likeliest way to match the phones of a text with those that were heard, in order: single phones may be missing on
 * either side; whole sentences may be left out, and asides come in between, more easily where there is a pause.
 *
 * @param scores points of a pair; see phone-scores.ts
 * @param reluctance points a phone that leaving out costs on either side, on top
 * @returns the path. Time grows with the cells of the band; memory with its width times 600 phones: 22 MB for an hour.
 * @source pairs of sequences with affine gaps: Gotoh 1982; rows worked out again: Hirschberg 1975 (general methods, from memory)
 */
export const findPath = (
  written: Sequence,
  heard: Sequence,
  scores: Int32Array,
  band: Band,
  reluctance: number,
): Path => {
  const [n, m] = [written.phones.length, heard.phones.length]
  const grid = new Grid(written, heard, scores, band, reluctance)
  const checkpoints = checkpointsOf(grid, n, m)
  const path: Path = { matches: new Int32Array(n).fill(-1), asides: new Uint8Array(m) }
  const end = checkpoints.at(-1)
  const ends = end?.cells.map(part => part[m - end.left] ?? NEVER) ?? []
  const place: Place = { row: n, j: m, state: ends.indexOf(Math.max(...ends)) }
  for (let block = checkpoints.length - 2; block >= 0; block--) {
    const kept = checkpoints[block]
    if (kept === undefined) break
    const [first, until, most] = [kept.row, place.row, place.j]
    const offsets: number[] = [0]
    for (let row = first; row <= until; row++)
      offsets.push((offsets.at(-1) ?? 0) + Math.max(0, grid.rightOf(row, most) - grid.leftOf(row) + 1))
    const ways = new Uint8Array(offsets.at(-1) ?? 0)
    const waysOf = (row: number): Ways => ({ of: ways, offset: offsets[row - first] ?? 0 })
    if (first === 0) grid.step(emptyRow(m + 1), 0, most, waysOf(0))
    sweep(grid, grid.restore(kept), kept, until, most, waysOf)
    follow(grid, first, place, (row, j) => ways[(offsets[row - first] ?? 0) + j - grid.leftOf(row)] ?? 0, path)
  }
  return path
}
