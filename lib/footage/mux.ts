import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import { type Box, findBox } from './boxes'
import { type CopyOptions, copyStream, type FilePart } from './copy-stream'
import { ID, readElement } from './ebml'
import { closed, layOut, type MuxTexts, sizeOf } from './lay-out'
import { layOutMatroska } from './matroska-mux'
import { type Movie, readMovie } from './movie'
import { bytesOf, LARGEST_INDEX, outline } from './outline'

/** A copy of the footage that is ready to be written; nothing of it is in memory but its index. */
export type Muxed = {
  readonly bytes: number
  /** The copy as a stream to be piped to a file; may be called again. */
  readonly stream: (options?: CopyOptions) => ReadableStream<Uint8Array<ArrayBuffer>>
  /** The copy as a blob that reads from the footage when it is written; in a page only. */
  readonly blob: () => Blob
}

const MESSAGES = {
  'not-mp4':
    'chapters and captions can be put into MP4, M4A, MOV, WebM and MKV only. Save the footage as MP4 first, or use the caption and chapter files beside it',
  'cut-short': 'the file breaks off before its end, so no copy of it can be relied on. Copy it from the camera again',
  'in-fragments':
    'the file is a recording in fragments, whose index is spread over it. Save it as an ordinary MP4 first, or use the caption and chapter files beside it',
  'no-index': 'the file has no index that can be read. Copy it from the camera again, or save it as MP4',
  'chapters-out-of-order':
    'the first chapter must start at 0 and each later than the one before. Put the steps in order of time',
} as const

/** Media that only replaced tracks speak of would be left behind unseen. */
const isLeftover = ({ type, start, end }: Box, movie: Movie): boolean => {
  const speaking = movie.tracks.filter(({ offsets }) => offsets.some(offset => offset >= start && offset < end))
  return type === 'mdat' && speaking.length > 0 && speaking.every(({ isReplaced }) => isReplaced)
}

/**
 * A copy of MP4, M4A, MOV, WebM or MKV footage with chapters and captions inside; picture and sound are copied packet by packet as
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
  const made = (parts: readonly FilePart[]): Result<Muxed> => {
    const size = parts.reduce((sum, part) => sum + sizeOf(part), 0)
    return success({
      bytes: size,
      stream: options => copyStream(parts, name, options),
      blob: () => new Blob([...parts], { type: file.type }),
    })
  }
  if (readElement(await bytesOf(file, 0, 12), 0)?.id === ID.header) {
    const parts = await layOutMatroska(file, texts)
    return typeof parts === 'string' ? refuse(parts) : made(parts)
  }
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
  return made(parts)
}
