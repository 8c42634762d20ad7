import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import { type Box, box, findBox, joined, u32, u64 } from './boxes'
import { type CopyOptions, copyStream } from './copy-stream'
import { type Movie, readMovie } from './movie'
import { writeMovie } from './movie-edit'
import { bytesOf, outline } from './outline'
import { captionSamples, chapterSamples, type MuxCaption, type MuxChapter } from './text-samples'
import type { TextTrack } from './text-track'

/** What goes into the copy. */
export type MuxTexts = {
  /** In order of time, the first at 0. */
  readonly chapters: readonly MuxChapter[]
  readonly captions: readonly MuxCaption[]
  /** Language of the captions, ISO 639-2 code of three letters; `und` where it isn't known. */
  readonly language?: string
}

/** A copy of the footage that is ready to be written; nothing of it is in memory but its index. */
export type Muxed = {
  readonly bytes: number
  /** The copy as a stream to be piped to a file; may be called again. */
  readonly stream: (options?: CopyOptions) => ReadableStream<Uint8Array<ArrayBuffer>>
}

/** One box of the old file and what stands in its place. */
type Slot = { readonly old: Box; readonly parts: readonly (Blob | Uint8Array<ArrayBuffer>)[] }

/** Bytes of an index beyond which it can't be one; hours of footage have less than 50 MB. */
const LARGEST_INDEX = 2 ** 29

const MESSAGES = {
  'not-mp4':
    'chapters and captions can be put into MP4, M4A and MOV only. Save the footage as MP4 first, or use the caption and chapter files beside it',
  'cut-short': 'the file breaks off before its end, so no copy of it can be relied on. Copy it from the camera again',
  'in-fragments':
    'the file is a recording in fragments, whose index is spread over it. Save it as an ordinary MP4 first, or use the caption and chapter files beside it',
  'no-index': 'the file has no index that can be read. Copy it from the camera again, or save it as MP4',
  'chapters-out-of-order':
    'the first chapter must start at 0 and each later than the one before. Put the steps in order of time',
} as const

const sizeOf = (part: Blob | Uint8Array): number => (part instanceof Blob ? part.size : part.length)

/** A box that went up to the end of the file must say where it ends, now that something follows. */
const closed = (file: Blob, old: Box, isOpen: boolean): Slot => {
  if (!isOpen) return { old, parts: [file.slice(old.start, old.end)] }
  const size = old.end - old.content
  const type = [...old.type].map(letter => letter.charCodeAt(0))
  const header = size + 8 < 2 ** 32 ? joined(u32(size + 8), type) : joined(u32(1), type, u64(size + 16))
  return { old, parts: [header, file.slice(old.content, old.end)] }
}

/** Media that only replaced tracks speak of would be left behind unseen. */
const isLeftover = ({ type, start, end }: Box, movie: Movie): boolean => {
  const speaking = movie.tracks.filter(({ offsets }) => offsets.some(offset => offset >= start && offset < end))
  return type === 'mdat' && speaking.length > 0 && speaking.every(({ isReplaced }) => isReplaced)
}

const textsOf = (movie: Movie, { chapters, captions, language = 'und' }: MuxTexts): readonly TextTrack[] => {
  const id = Math.max(0, ...movie.tracks.map(track => track.id)) + 1
  const size = movie.tracks.find(({ handler }) => handler === 'vide')?.size
  const said = {
    kind: 'captions',
    id,
    samples: captionSamples(captions, movie.seconds),
    language,
    ...(size && { size }),
  } as const
  const titled = { kind: 'chapters', id: id + 1, samples: chapterSamples(chapters, movie.seconds), language } as const
  return [...(captions.length > 0 ? [said] : []), ...(chapters.length > 0 ? [titled] : [])]
}

/** Lays the copy out: old boxes in their order, the index rewritten where it stood, the texts at the end. */
const layOut = (slots: readonly Slot[], movie: Movie, texts: MuxTexts): readonly (Blob | Uint8Array<ArrayBuffer>)[] => {
  const tracks = textsOf(movie, texts)
  const chapters = texts.chapters.filter(({ start }) => start < movie.seconds)
  const write = (index: number, is64: boolean) => {
    const starts: number[] = []
    let at = 0
    for (const { old, parts } of slots) {
      starts.push(at)
      at += old.type === 'moov' ? index : parts.reduce((sum, part) => sum + sizeOf(part), 0)
    }
    const move = (offset: number): number => {
      const i = slots.findIndex(({ old }) => offset >= old.start && offset < old.end)
      const slot = slots[i]
      // The content keeps its length, so its end is where to count from: a header may have grown.
      return slot === undefined ? offset : (starts[i + 1] ?? at) - (slot.old.end - offset)
    }
    let offset = at + 8
    const placed = tracks.map(track => {
      const own = { track, offset }
      offset += track.samples.reduce((sum, { data }) => sum + data.length, 0)
      return own
    })
    return { end: at, bytes: writeMovie(movie, { move, is64, chapters, texts: placed }) }
  }
  const is64 = write(write(0, false).bytes.length, false).end >= 2 ** 32
  const index = write(write(0, is64).bytes.length, is64).bytes
  const said = tracks.flatMap(({ samples }) => samples.map(({ data }) => data))
  return [
    ...slots.flatMap(({ old, parts }) => (old.type === 'moov' ? [index] : parts)),
    ...(said.length > 0 ? [box('mdat', ...said)] : []),
  ]
}

/**
 * A copy of MP4, M4A or MOV footage with chapters and captions inside; picture and sound are copied packet by packet as
 * they are, and earlier chapters, and captions of an earlier copy, are replaced. The file itself is only read, in slices.
 * Chromium shows no captions from inside an MP4: give a WebVTT file along.
 *
 * @param name of the file, for messages
 * @returns the copy; or problem `not-mp4`, `cut-short`, `in-fragments`, `no-index`, `chapters-out-of-order`
 */
export const muxTexts = async (file: Blob, name: string, texts: MuxTexts): Promise<Result<Muxed>> => {
  const refuse = (code: keyof typeof MESSAGES): Result<never> => {
    const problem: Problem = { code, message: MESSAGES[code], place: { file: name } }
    return refusal(problem)
  }
  if (texts.chapters.some(({ start }, i) => (i === 0 ? start !== 0 : start <= (texts.chapters[i - 1]?.start ?? 0))))
    return refuse('chapters-out-of-order')
  const boxes = await outline(file)
  if (boxes === 'no-boxes') return refuse('not-mp4')
  if (boxes === 'cut-short') return refuse('cut-short')
  const index = boxes.find(({ type }) => type === 'moov')
  if (index === undefined || index.end - index.start > LARGEST_INDEX)
    return refuse(boxes.some(({ type }) => type === 'ftyp') ? 'no-index' : 'not-mp4')
  const bytes = await bytesOf(file, index.start, index.end)
  if (boxes.some(({ type }) => type === 'moof') || findBox(bytes, ['moov', 'mvex'])) return refuse('in-fragments')
  let movie: Movie | undefined
  try {
    movie = readMovie(bytes)
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
  }
  if (movie === undefined || movie.tracks.length === 0 || movie.seconds <= 0) return refuse('no-index')
  const own = movie
  const last = boxes.at(-1)
  const isOpen = last !== undefined && (await bytesOf(file, last.start, last.start + 4)).every(byte => byte === 0)
  const kept = boxes.filter(each => !isLeftover(each, own))
  const parts = layOut(
    kept.map(each => closed(file, each, isOpen && each === last)),
    own,
    texts,
  )
  const size = parts.reduce((sum, part) => sum + sizeOf(part), 0)
  return success({ bytes: size, stream: options => copyStream(parts, name, options) })
}
