import type { Mark } from '@/lib/procedure/mark'
import type { Sentence } from '@/lib/procedure/recording'

/** What a mark says of where it is from: its span in seconds and the words spoken. */
export type Source = Pick<Mark, 'start' | 'end' | 'said'>

/** @returns the whole sentence. */
export const sourceOf = (sentence: Sentence): Source => ({
  start: sentence.start,
  end: sentence.end,
  said: sentence.text,
})

/** @returns the words that lie in [at, to) of the sentence's text; the whole sentence where none does. */
export const sourceWithin = (sentence: Sentence, at: number, to: number): Source => {
  const words = sentence.words.filter(word => word.at < to && word.to > at)
  const [first] = words
  const last = words.at(-1)
  if (first === undefined || last === undefined) return sourceOf(sentence)
  return { start: first.start, end: Math.max(first.start, last.end), said: sentence.text.slice(first.at, last.to) }
}

/** Shortens marks of a kind that reach into the next one; of two that begin at once the second begins where the first ends. */
export const separate = (marks: readonly Mark[]): readonly Mark[] => {
  const sorted = [...marks].sort((a, b) => a.start - b.start || a.end - b.end)
  const out: Mark[] = []
  for (const mark of sorted) {
    const last = out.at(-1)
    if (last === undefined || mark.start >= last.end) {
      out.push(mark)
      continue
    }
    if (mark.start > last.start) out[out.length - 1] = { ...last, end: mark.start }
    else {
      const start = Math.min(last.end, mark.end)
      out.push({ ...mark, start, end: Math.max(start, mark.end) })
      continue
    }
    out.push(mark)
  }
  return out
}
