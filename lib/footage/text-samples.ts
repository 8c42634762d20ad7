import { joined, letters, type Part, u16, u32 } from './boxes'

/** A chapter: from `start` to the next one's start, seconds. */
export type MuxChapter = { readonly start: number; readonly title: string }

/** A caption: half-open span in seconds; lines parted by line feeds. */
export type MuxCaption = { readonly start: number; readonly end: number; readonly text: string }

/** What a text track shows for so many milliseconds. */
export type TextSample = { readonly milliseconds: number; readonly data: Uint8Array }

/** The longest text a sample can hold, bytes. */
const LONGEST = 65_535

/** Text in UTF-8, cut at a whole character where it is longer than `most` bytes. */
export const toUtf8 = (text: string, most = LONGEST): Uint8Array => {
  const bytes = new TextEncoder().encode(text)
  if (bytes.length <= most) return bytes
  let end = most
  while (end > 0 && ((bytes[end] ?? 0) & 0xc0) === 0x80) end--
  return bytes.subarray(0, end)
}

const toSample = (text: string, milliseconds: number, more: Part = []): TextSample => {
  const bytes = toUtf8(text)
  return { milliseconds, data: joined(u16(bytes.length), bytes, more) }
}

/** Says that the text of a QuickTime text sample is UTF-8. @source QuickTime File Format, text media: `encd` 0x100 (from memory) */
const IS_UTF8 = joined(u32(12), letters('encd'), u32(0x100))

const toMilliseconds = (seconds: number): number => Math.round(seconds * 1000)

/**
 * Samples of a chapter track: one a chapter, without gaps.
 *
 * @param chapters in order, the first at 0
 * @param seconds of the footage; what begins there or later is left out
 */
export const chapterSamples = (chapters: readonly MuxChapter[], seconds: number): readonly TextSample[] => {
  const within = chapters.filter(({ start }) => toMilliseconds(start) < toMilliseconds(seconds))
  return within.flatMap(({ start, title }, i) => {
    const length = toMilliseconds(within[i + 1]?.start ?? seconds) - toMilliseconds(start)
    return length <= 0 ? [] : [toSample(title, length, IS_UTF8)]
  })
}

/**
 * Samples of a caption track: gaps are samples without text, captions at the same time stand below each other.
 *
 * @param captions in any order; what lies beyond the footage is left out
 */
export const captionSamples = (captions: readonly MuxCaption[], seconds: number): readonly TextSample[] => {
  const end = toMilliseconds(seconds)
  const shown = captions
    .map(({ start, end: to, text }) => ({ from: toMilliseconds(start), to: Math.min(end, toMilliseconds(to)), text }))
    .filter(({ from, to, text }) => from < to && text.trim() !== '')
    .sort((a, b) => a.from - b.from || a.to - b.to)
  const edges = [...new Set([0, ...shown.flatMap(({ from, to }) => [from, to]), end])].sort((a, b) => a - b)
  let first = 0
  return edges.slice(0, -1).map((from, i) => {
    const to = edges[i + 1] ?? from
    while ((shown[first]?.to ?? Number.POSITIVE_INFINITY) <= from) first++
    const texts: string[] = []
    for (let at = first; (shown[at]?.from ?? Number.POSITIVE_INFINITY) <= from; at++)
      if ((shown[at]?.to ?? 0) > from) texts.push(shown[at]?.text ?? '')
    return toSample(texts.join('\n'), to - from)
  })
}
