import { NAT } from './phone-scores'
import { PHONES } from './recogniser'

const points = (chance: number): number => Math.round(NAT * Math.log(chance))

/** Points by chance; chances tuned on synthesised talks. What is spoken beyond the text is called an aside. */
const [GO_ON, BACK] = [points(0.84), points(0.65)]
const [INSERT, INSERT_MORE] = [points(0.08), points(0.3)]
const [DROP, DROP_MORE] = [points(0.08), points(0.4)]
const [ASIDE, ASIDE_MORE, IN_SENTENCE, NO_PAUSE] = [points(0.03), -2, points(0.001), points(0.1)]
const SKIP = points(0.02)

export const NEVER = -1e8

/** The larger of two whole numbers less than 2^31 apart, without a branch: it would be guessed wrong half the time. */
const larger = (a: number, b: number): number => a - ((a - b) & ((a - b) >> 31))

/** Where each row of the grid lies: columns [left, right] of written phone 0 to n; neither goes back from row to row. */
export type Band = { readonly left: Int32Array; readonly right: Int32Array }

/** Phones in order, as indices into PHONES, and where each sentence or stretch of speech begins (with the end last). */
export type Sequence = { readonly phones: Uint8Array; readonly begins: readonly number[] }

/** Best points of a row's cells by how they end: with a pair, a phone heard alone, one written alone, an aside. */
export type Row = readonly [pair: Int32Array, insert: Int32Array, drop: Int32Array, aside: Int32Array]

/** A row kept, its cells from column `left` on. */
export type Kept = { readonly cells: Row; readonly left: number; readonly row: number }

/** Ways into the cells of some rows: bits 0-2 into a pair, 3-5 into an aside, 6 and 7 whether inserting, dropping goes on. */
export type Ways = { readonly of: Uint8Array; readonly offset: number }

export const emptyRow = (length: number): Row => {
  const none = () => new Int32Array(length).fill(NEVER)
  return [none(), none(), none(), none()]
}

/** The grid of a text and what was heard, worked through row by row. */
export class Grid {
  readonly #written: Sequence
  readonly #heard: Sequence
  readonly #scores: Int32Array
  readonly #band: Band
  readonly #reluctance: number
  /** By column: the phone heard before it, and what it costs to begin or end an aside before that phone. */
  readonly #sounds: Uint8Array
  readonly #gates: Int32Array
  readonly #begins: ReadonlyMap<number, number>

  constructor(written: Sequence, heard: Sequence, scores: Int32Array, band: Band, reluctance: number) {
    this.#written = written
    this.#heard = heard
    this.#scores = scores
    this.#band = band
    this.#reluctance = reluctance
    this.#sounds = new Uint8Array(heard.phones.length + 1)
    this.#sounds.set(heard.phones, 1)
    this.#gates = new Int32Array(heard.phones.length + 2).fill(NO_PAUSE)
    for (const begin of [-1, ...heard.begins]) this.#gates[begin + 1] = 0
    const sentences = written.begins.slice(1).map((end, k): [number, number] => [end, written.begins[k] ?? 0])
    this.#begins = new Map(sentences.filter(([end, begin]) => begin < end))
  }

  /** Where the sentence begins that ends before a row's phone; undefined inside of sentences. */
  beginOf(row: number): number | undefined {
    return this.#begins.get(row)
  }

  leftOf(row: number): number {
    return this.#band.left[row] ?? 0
  }

  rightOf(row: number, most: number): number {
    return Math.min(most, this.#band.right[row] ?? 0)
  }

  keep(cells: Row, row: number, most: number): Kept {
    const left = this.leftOf(row)
    const own = (part: Int32Array) => part.slice(left, this.rightOf(row, most) + 1)
    return { cells: [own(cells[0]), own(cells[1]), own(cells[2]), own(cells[3])], left, row }
  }

  restore({ cells, left }: Kept): Row {
    const row = emptyRow(this.#heard.phones.length + 1)
    for (const [i, part] of row.entries()) part.set(cells[i] ?? [], left)
    return row
  }

  /** Turns the cells of a row into those of the next, up to column `most`. */
  step(cells: Row, row: number, most: number, ways?: Ways): void {
    const [pair, insert, drop, aside] = cells
    const [left, right, before] = [this.leftOf(row), this.rightOf(row, most), this.leftOf(Math.max(0, row - 1))]
    const [sounds, scores, gates] = [this.#sounds, this.#scores, this.#gates]
    const own = row === 0 ? 0 : (this.#written.phones[row - 1] ?? 0) * PHONES.length
    const isEdge = row === 0 || this.#begins.has(row)
    const enter = ASIDE + (isEdge ? 0 : IN_SENTENCE)
    const more = ASIDE_MORE - this.#reluctance
    let [diagonalPair, diagonalInsert, diagonalDrop, diagonalAside] = [NEVER, NEVER, NEVER, NEVER]
    if (left > before) {
      diagonalPair = pair[left - 1] ?? NEVER
      diagonalInsert = insert[left - 1] ?? NEVER
      diagonalDrop = drop[left - 1] ?? NEVER
      diagonalAside = aside[left - 1] ?? NEVER
      for (const part of cells) part.fill(NEVER, before, left)
    }
    let [lastPair, lastInsert, lastDrop, lastAside] = [NEVER, NEVER, NEVER, NEVER]
    for (let j = left; j <= right; j++) {
      const abovePair = pair[j] ?? NEVER
      const aboveInsert = insert[j] ?? NEVER
      const aboveDrop = drop[j] ?? NEVER
      const aboveAside = aside[j] ?? NEVER
      const gate = gates[j] ?? 0
      const open = enter + gate
      // The way stands in the low bits, so that one comparison settles both.
      const toPair = larger(
        larger((diagonalPair + GO_ON) << 2, ((diagonalInsert + BACK) << 2) | 1),
        larger(((diagonalDrop + BACK) << 2) | 2, ((diagonalAside + gate) << 2) | 3),
      )
      const toDrop = larger((abovePair + DROP) << 1, ((aboveDrop + DROP_MORE) << 1) | 1)
      const toInsert = larger((lastPair + INSERT) << 1, ((lastInsert + INSERT_MORE) << 1) | 1)
      const toAside = larger(
        larger((lastPair + open) << 2, ((lastInsert + open) << 2) | 1),
        larger(((lastDrop + open) << 2) | 2, ((lastAside + more) << 2) | 3),
      )
      if (ways !== undefined)
        ways.of[ways.offset + j - left] =
          (toPair & 3) | ((toAside & 3) << 3) | ((toInsert & 1) << 6) | ((toDrop & 1) << 7)
      diagonalPair = abovePair
      diagonalInsert = aboveInsert
      diagonalDrop = aboveDrop
      diagonalAside = aboveAside
      lastPair = (toPair >> 2) + (scores[own + (sounds[j] ?? 0)] ?? 0)
      lastInsert = toInsert >> 1
      lastDrop = toDrop >> 1
      lastAside = toAside >> 2
      if (row === 0) {
        lastPair = j === 0 ? 0 : NEVER
        lastDrop = NEVER
      }
      pair[j] = lastPair
      insert[j] = lastInsert
      drop[j] = lastDrop
      aside[j] = lastAside
    }
  }

  /** Lets a whole sentence that ends at a row be left out: from the row `kept` where it begins. */
  skip(cells: Row, row: number, most: number, kept: Kept, ways?: Ways): void {
    const [pair, insert, , aside] = cells
    const [left, right] = [Math.max(this.leftOf(row), kept.left), this.rightOf(row, most)]
    const cost = SKIP - this.#reluctance * (row - kept.row)
    const set = (j: number, mask: number, way: number) => {
      if (ways === undefined) return
      const at = ways.offset + j - this.leftOf(row)
      ways.of[at] = ((ways.of[at] ?? 0) & ~mask) | way
    }
    const [oldPair, oldInsert, oldDrop, oldAside] = kept.cells
    const gate = (j: number) => ASIDE + (this.#gates[j] ?? 0)
    let [lastPair, lastInsert, lastAside] = [NEVER, NEVER, NEVER]
    for (let j = left; j <= right; j++) {
      const k = j - kept.left
      const olds = [oldPair[k], oldInsert[k], oldDrop[k]]
      for (let state = 0; state < 3; state++) {
        const jump = (olds[state] ?? NEVER) + cost
        if (jump <= (pair[j] ?? NEVER)) continue
        pair[j] = jump
        set(j, 7, 4 + state)
      }
      // What follows within the row may be reached better now.
      const apart = lastPair + gate(j)
      const along = lastAside + ASIDE_MORE - this.#reluctance
      const jump = (oldAside[k] ?? NEVER) + cost
      const best = Math.max(apart, along, jump)
      if (best > (aside[j] ?? NEVER)) {
        aside[j] = best
        set(j, 56, best === jump ? 32 : best === along ? 24 : 0)
      }
      const beside = lastPair + INSERT
      const further = lastInsert + INSERT_MORE
      if (Math.max(beside, further) > (insert[j] ?? NEVER)) {
        insert[j] = Math.max(beside, further)
        set(j, 64, further > beside ? 64 : 0)
      }
      lastPair = pair[j] ?? NEVER
      lastInsert = insert[j] ?? NEVER
      lastAside = aside[j] ?? NEVER
    }
  }
}
