import type { Cue, Sentence, Transcript, Word } from '@/lib/procedure/recording'
import type { Span } from '@/lib/procedure/time'

/** What alignment found: a time for each sentence, and for each word of those that were heard. `line` is the sentence. */
export type FoundTimes = {
  readonly lines: readonly (Span & { readonly line: number })[]
  readonly words: readonly (Span & { readonly line: number; readonly text: string })[]
}

type Extent = { start: number; end: number }

const widen = (extents: Map<number, Extent>, cue: number, { start, end }: Span): void => {
  const extent = extents.get(cue)
  if (extent === undefined) extents.set(cue, { start, end })
  else {
    extent.start = Math.min(extent.start, start)
    extent.end = Math.max(extent.end, end)
  }
}

/** Times of each cue, from the words of it that were heard; where none was, from its sentences. */
const extentsOf = (sentences: readonly Sentence[], { lines, words }: FoundTimes): ReadonlyMap<number, Extent> => {
  const heard = new Map<number, Extent>()
  const guessed = new Map<number, Extent>()
  const next = new Map<number, number>()
  for (const word of words) {
    const sentence = sentences[word.line]
    if (sentence === undefined) continue
    const from = next.get(word.line) ?? 0
    const at = sentence.words.findIndex((own, i) => i >= from && sentence.text.slice(own.at, own.to) === word.text)
    const own = sentence.words[at]
    if (own === undefined) continue
    next.set(word.line, at + 1)
    widen(heard, own.cue, word)
  }
  for (const line of lines) for (const { cue } of sentences[line.line]?.words ?? []) widen(guessed, cue, line)
  return new Map([...guessed, ...heard])
}

/**
 * A transcript with the times that alignment found: its cues keep their words, and words have times of their own.
 *
 * @param sentences of this transcript, the lines that were aligned
 * @returns cues in their order, timed, none before the one in front of it; the form of untimed text becomes `timed-text`
 */
export const withFoundTimes = (
  transcript: Transcript,
  sentences: readonly Sentence[],
  found: FoundTimes,
): Transcript => {
  const extents = extentsOf(sentences, found)
  let last = 0
  const cues = transcript.cues.map((cue, i): Cue => {
    const extent = extents.get(i)
    const start = Math.max(last, extent?.start ?? last)
    const end = Math.max(start, extent?.end ?? start)
    last = start
    return { ...cue, start, end }
  })
  const words: readonly Word[] = found.words.map(({ text, start, end }) => ({ text, start, end }))
  return { ...transcript, form: transcript.form === 'untimed' ? 'timed-text' : transcript.form, cues, words }
}
