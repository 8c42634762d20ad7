import type { Sentence } from '@/lib/procedure/recording'
import { firstIndex } from '@/lib/procedure/search'
import type { Span } from '@/lib/procedure/time'

/** A word of the talk: offsets [at, to) into its paragraph's text, times in seconds, the cue it is from. */
export type TalkWord = {
  readonly paragraph: number
  readonly at: number
  readonly to: number
  readonly start: number
  readonly end: number
  readonly cue: number
}

/** Sentences of one speaker without a long pause, as one block of running text. */
export type TalkParagraph = {
  readonly text: string
  readonly start: number
  readonly end: number
  readonly speaker?: string
  /** Its words are [first, last) of the talk's. */
  readonly first: number
  readonly last: number
}

/** The transcript as running text with a time for every word. */
export type Talk = { readonly paragraphs: readonly TalkParagraph[]; readonly words: readonly TalkWord[] }

/** Half-open range [from, to) of word numbers. */
export type WordRange = { readonly from: number; readonly to: number }

/** A pause of this many seconds starts a new paragraph; so does this many words. Layout only, no source. */
const LONG_PAUSE = 2
const LONG_PARAGRAPH = 70

/**
 * Sets sentences as running text.
 *
 * @param sentences in order of start
 * @returns paragraphs and words in that order
 */
export const toTalk = (sentences: readonly Sentence[]): Talk => {
  const paragraphs: TalkParagraph[] = []
  const words: TalkWord[] = []
  let open: Sentence[] = []
  let count = 0
  const close = () => {
    const [head] = open
    if (head === undefined) return
    const first = words.length
    let text = ''
    for (const sentence of open) {
      const shift = text === '' ? 0 : text.length + 1
      text = text === '' ? sentence.text : `${text} ${sentence.text}`
      for (const { at, to, start, end, cue } of sentence.words)
        words.push({ paragraph: paragraphs.length, at: at + shift, to: to + shift, start, end, cue })
    }
    const end = open.reduce((latest, sentence) => Math.max(latest, sentence.end), head.end)
    const speaker = head.speaker === undefined ? {} : { speaker: head.speaker }
    paragraphs.push({ text, start: head.start, end, ...speaker, first, last: words.length })
    open = []
    count = 0
  }
  for (const sentence of sentences) {
    const before = open.at(-1)
    if (
      before !== undefined &&
      (before.speaker !== sentence.speaker || sentence.start - before.end > LONG_PAUSE || count > LONG_PARAGRAPH)
    )
      close()
    open.push(sentence)
    count += sentence.words.length
  }
  close()
  return { paragraphs, words }
}

/** @returns how many words begin before `seconds` or at it. */
const begunBy = ({ words }: Talk, seconds: number): number =>
  firstIndex(words.length, i => (words[i]?.start ?? 0) > seconds)

/** @returns the number of the word spoken at `seconds`, or of the last one before; undefined before the first. */
export const wordAt = (talk: Talk, seconds: number): number | undefined => {
  const begun = begunBy(talk, seconds)
  return begun === 0 ? undefined : begun - 1
}

/** @returns the words whose middle lies in the span; undefined where there is none. */
export const wordsOfSpan = (talk: Talk, span: Span): WordRange | undefined => {
  const isInside = (index: number): boolean => {
    const word = talk.words[index]
    if (word === undefined) return false
    const middle = (word.start + word.end) / 2
    return middle >= span.start && middle < span.end
  }
  let from = Math.max(0, begunBy(talk, span.start) - 1)
  while (from < talk.words.length && !isInside(from)) {
    if ((talk.words[from]?.start ?? 0) >= span.end) return undefined
    from++
  }
  if (from >= talk.words.length) return undefined
  let to = from
  while (isInside(to)) to++
  return { from, to }
}

/** @returns from the first to the last word of a line of the transcript; undefined where it has none. */
export const wordsOfCue = ({ words }: Talk, cue: number): WordRange | undefined => {
  const from = words.findIndex(word => word.cue === cue)
  return from < 0 ? undefined : { from, to: words.findLastIndex(word => word.cue === cue) + 1 }
}

/** @returns the words [from, to) as they stand in the talk. */
export const textOfWords = (talk: Talk, { from, to }: WordRange): string => {
  const parts: string[] = []
  for (let at = from; at < to; ) {
    const word = talk.words[at]
    const paragraph = word && talk.paragraphs[word.paragraph]
    if (word === undefined || paragraph === undefined) break
    const stop = Math.min(to, paragraph.last)
    parts.push(paragraph.text.slice(word.at, talk.words[stop - 1]?.to))
    at = stop
  }
  return parts.join(' ')
}

/** @returns the time the words [from, to) take, first begun to last ended; undefined for no words. */
export const spanOfWords = (talk: Talk, { from, to }: WordRange): Span | undefined => {
  const first = talk.words[from]
  const last = talk.words[to - 1]
  if (first === undefined || last === undefined || to <= from) return undefined
  return { start: first.start, end: Math.max(last.end, first.start) }
}

/** @returns the word at a character offset of a paragraph: the one that holds it, else the next, else the last. */
export const wordAtOffset = (talk: Talk, paragraph: number, offset: number): number | undefined => {
  const block = talk.paragraphs[paragraph]
  if (block === undefined || block.last === block.first) return undefined
  for (let at = block.first; at < block.last; at++) if (offset < (talk.words[at]?.to ?? 0)) return at
  return block.last - 1
}
