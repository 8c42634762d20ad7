import { PHONES } from './recogniser'

/** Phones that are easily taken for each other. Textbook classes of articulation. */
const CLASSES: readonly (readonly string[])[] = [
  ['P', 'B', 'T', 'D', 'K', 'G'],
  ['F', 'V', 'TH', 'DH', 'S', 'Z', 'SH', 'ZH', 'HH', 'CH', 'JH'],
  ['M', 'N', 'NG'],
  ['L', 'R', 'W', 'Y', 'ER', 'UW', 'UH', 'OW'],
  ['IY', 'IH', 'EY', 'EH', 'AE', 'Y', 'AY'],
  ['AH', 'UH', 'AA', 'AO', 'OW', 'AW', 'ER', 'OY', 'AE', 'EH', 'IH'],
]

/** Points for the same phone, a similar one, another one; and for a phone on one side alone. Tuned on synthesised talk. */
const [SAME, LIKE, OTHER, GAP] = [8, 0, -7, -5]

/** Points for leaving out a whole sentence or a whole stretch of speech: a fixed part and one for each phone of it. */
const [SKIP, SKIP_EACH] = [-10, -1]

const SCORES = Int8Array.from({ length: PHONES.length ** 2 }, (_, i) => {
  const [a, b] = [PHONES[Math.floor(i / PHONES.length)] ?? '', PHONES[i % PHONES.length] ?? '']
  if (a === b) return SAME
  return CLASSES.some(one => one.includes(a) && one.includes(b)) ? LIKE : OTHER
})

/** Half the band of heard phones looked at around the best place so far: about two and a half minutes of talk. */
const HALF = 1500

const NEVER = -1e9

/** Ways into a cell. */
const [BOTH, WRITTEN, HEARD, SENTENCE, STRETCH] = [1, 2, 3, 4, 5]

/** Phones in order, as indices into PHONES, and where each sentence or stretch of speech begins (with the end last). */
export type Sequence = { readonly phones: Uint8Array; readonly begins: readonly number[] }

/**
 * Matches the phones of a text with the phones that were heard, in order. On either side single phones can be left out,
 * and, more cheaply, whole sentences (written, not said) and whole stretches of speech (said, not written): global
 * alignment in a band that follows the best score.
 *
 * @returns for each written phone the index of the heard one it was matched with; -1 for none. Memory: half a byte a cell,
 *   54 MB for an hour.
 * @source Needleman and Wunsch 1970, general method (from memory)
 */
export const matchPhones = (written: Sequence, heard: Sequence): Int32Array => {
  const [n, m] = [written.phones.length, heard.phones.length]
  const width = Math.min(m + 1, 2 * HALF + 1)
  const trace = new Uint8Array(Math.ceil(((n + 1) * width) / 2))
  const set = (cell: number, way: number) => {
    trace[cell >> 1] = (trace[cell >> 1] ?? 0) | (way << ((cell & 1) << 2))
  }
  const lefts = new Int32Array(n + 1)
  /** Begin of the stretch that ends at a column. */
  const stretches = new Map(heard.begins.slice(1).map((end, i) => [end, heard.begins[i] ?? 0]))
  const sentences = new Map(written.begins.slice(1).map((end, i) => [end, written.begins[i] ?? 0]))
  const starts = new Set(written.begins)

  const skipStretches = (row: Int32Array, i: number, left: number) => {
    for (const [end, begin] of stretches) {
      const [from, to] = [begin - left, end - left]
      if (from < 0 || to >= width || begin === end) continue
      const score = (row[from] ?? NEVER) + SKIP + SKIP_EACH * (end - begin)
      if (score <= (row[to] ?? NEVER)) continue
      row[to] = score
      const cell = i * width + to
      trace[cell >> 1] = (trace[cell >> 1] ?? 0) & ~(15 << ((cell & 1) << 2))
      set(cell, STRETCH)
      // What follows within the row may be reached better now.
      for (let k = to + 1; k < width && !stretches.has(left + k); k++) {
        const beside = (row[k - 1] ?? NEVER) + GAP
        if (beside <= (row[k] ?? NEVER)) break
        row[k] = beside
        const next = i * width + k
        trace[next >> 1] = (trace[next >> 1] ?? 0) & ~(15 << ((next & 1) << 2))
        set(next, HEARD)
      }
    }
  }

  let before = new Int32Array(width)
  for (let j = 1; j < width; j++) {
    before[j] = j * GAP
    set(j, HEARD)
  }
  skipStretches(before, 0, 0)
  const kept = new Map<number, { row: Int32Array; left: number }>([[0, { row: before, left: 0 }]])
  let left = 0
  let centre = 0
  const pace = m / Math.max(1, n)
  for (let i = 1; i <= n; i++) {
    const row = new Int32Array(width)
    const from = Math.max(left, Math.min(m + 1 - width, Math.round(centre + pace) - HALF))
    const shift = from - left
    lefts[i] = from
    const own = (written.phones[i - 1] ?? 0) * PHONES.length
    const begun = sentences.get(i)
    const skipped = begun === undefined ? undefined : kept.get(begun)
    const cost = begun === undefined ? 0 : SKIP + SKIP_EACH * (i - begun)
    let best = Number.NEGATIVE_INFINITY
    for (let k = 0; k < width; k++) {
      const j = from + k
      const up = k + shift
      const above = up < width ? (before[up] ?? NEVER) + GAP : NEVER
      const diagonal =
        j > 0 && up > 0 && up - 1 < width
          ? (before[up - 1] ?? NEVER) + (SCORES[own + (heard.phones[j - 1] ?? 0)] ?? 0)
          : NEVER
      const beside = k > 0 ? (row[k - 1] ?? NEVER) + GAP : NEVER
      let score = diagonal
      let way = BOTH
      if (above > score) [score, way] = [above, WRITTEN]
      if (beside > score) [score, way] = [beside, HEARD]
      if (skipped !== undefined) {
        const at = j - skipped.left
        const jump = at >= 0 && at < width ? (skipped.row[at] ?? NEVER) + cost : NEVER
        if (jump > score) [score, way] = [jump, SENTENCE]
      }
      row[k] = score
      set(i * width + k, way)
      if (score > best) {
        best = score
        centre = j
      }
    }
    if (starts.has(i)) {
      skipStretches(row, i, from)
      if (begun !== undefined) kept.delete(begun)
      kept.set(i, { row, left: from })
    }
    left = from
    before = row
  }

  const matches = new Int32Array(n).fill(-1)
  let [i, j] = [n, m]
  while (i > 0 || j > 0) {
    const cell = i * width + Math.min(width - 1, Math.max(0, j - (lefts[i] ?? 0)))
    const way = ((trace[cell >> 1] ?? 0) >> ((cell & 1) << 2)) & 15
    if (way === BOTH && i > 0 && j > 0) {
      matches[--i] = --j
    } else if (way === SENTENCE) i = sentences.get(i) ?? i - 1
    else if (way === STRETCH) j = stretches.get(j) ?? j - 1
    else if ((way === HEARD && j > 0) || i === 0) j--
    else i--
  }
  return matches
}
