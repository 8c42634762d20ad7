import type { Cue } from '@/lib/procedure/recording'
import { toKey, toPieces } from './token'

/** Longest repetition looked for, in words: two full caption lines and more. */
const REACH = 60
/** Cues further apart than this, in seconds, do not roll into each other. */
const NEAR = 1.5

/**
 * Length of the longest tail of `before` that is also the head of `after`, in words (Knuth, Morris and Pratt's prefix
 * function over the head, then the tail).
 */
export const overlapOf = (before: readonly string[], after: readonly string[]): number => {
  const head = after.slice(0, REACH)
  const run: (string | undefined)[] = [...head, undefined, ...before.slice(-REACH)]
  const prefix = [0]
  for (let i = 1; i < run.length; i++) {
    let k = prefix[i - 1] ?? 0
    while (k > 0 && run[i] !== run[k]) k = prefix[k - 1] ?? 0
    prefix.push(run[i] === run[k] && run[i] !== undefined ? k + 1 : k)
  }
  return before.length === 0 || head.length === 0 ? 0 : (prefix.at(-1) ?? 0)
}

type Overlap = { readonly repeated: number; readonly isLine: boolean }

/** For each cue (in the order given) how many of its first words repeat what the cues before had just said. */
const overlapsOf = (cues: readonly Cue[]): readonly Overlap[] => {
  let said: string[] = []
  let end = Number.NEGATIVE_INFINITY
  return cues.map(cue => {
    const keys = toPieces(cue.text).map(piece => toKey(piece.text))
    if (cue.start > end + NEAR) said = []
    const repeated = said.includes(keys[0] ?? '') ? overlapOf(said, keys) : 0
    said = said.concat(repeated === 0 ? keys : keys.slice(repeated)).slice(-REACH)
    end = Math.max(end, cue.start, cue.end)
    const isLine =
      repeated > 0 && (repeated === keys.length || repeated === toPieces(cue.text.split('\n')[0] ?? '').length)
    return { repeated, isLine }
  })
}

/**
 * How many of the first words of each cue only repeat the cues before, as rolling captions do. In a file that does not
 * roll, only a long repetition (four words) counts: people do say things twice.
 *
 * @param cues by start; repetitions are sought in the text as the file had it, not as it was corrected
 */
export const countRepeated = (cues: readonly Cue[]): readonly number[] => {
  const overlaps = overlapsOf(cues)
  const telling = overlaps.filter(({ repeated, isLine }) => repeated >= 2 || (repeated === 1 && isLine))
  const words = telling.reduce((sum, { repeated }) => sum + repeated, 0)
  const rolls = telling.length >= 0.3 * (cues.length - 1) && words >= 3
  return overlaps.map(({ repeated, isLine }) => (repeated >= 4 || (rolls && (repeated >= 2 || isLine)) ? repeated : 0))
}

/**
 * The same count for the corrected text of a cue: the words of the repetition may have been corrected too.
 *
 * @param repeated of the words as the file had them
 */
export const repeatedAfterCorrection = (cue: Cue, repeated: number): number => {
  if (repeated === 0 || cue.corrected === undefined) return repeated
  const before = toPieces(cue.text).map(piece => toKey(piece.text))
  const after = toPieces(cue.corrected).map(piece => toKey(piece.text))
  let same = 0
  while (same < repeated && before[same] === after[same]) same++
  if (same === repeated) return repeated
  const fresh = before.length - repeated
  let tail = 0
  while (tail < fresh && before.at(-1 - tail) === after.at(-1 - tail)) tail++
  return tail === fresh ? Math.max(0, after.length - fresh) : Math.min(repeated, after.length)
}
