import { type Box, box, childrenOf, findBox, fullBox, joined, type Part, u32, u64 } from './boxes'
import { type Movie, offsetsIn, TO_OFFSETS, type Track } from './movie'
import { type MuxChapter, toUtf8 } from './text-samples'
import { type TextTrack, textTrack } from './text-track'

/** Chapters as a list beside the tracks, for players that read it there: at most 255, starts in units of 100 ns. */
const chapterList = (chapters: readonly MuxChapter[]): Uint8Array =>
  fullBox('chpl', 1, 0, u32(0), [
    chapters.length,
    ...chapters.flatMap(({ start, title }) => {
      const text = toUtf8(title, 255)
      return [...u64(Math.round(start * 1e7)), text.length, ...text]
    }),
  ])

export type MovieEdit = {
  /** New place of what stood at an offset of the old file. */
  readonly move: (offset: number) => number
  /** Whether some place lies past 4 GB, so that tables need 64 bits. */
  readonly is64: boolean
  readonly chapters: readonly MuxChapter[]
  /** New tracks with the place of their samples. */
  readonly texts: readonly { readonly track: TextTrack; readonly offset: number }[]
}

/** @returns the movie box with everything as it was but the places of samples, chapters, and the new text tracks. */
export const writeMovie = ({ bytes, clock, tracks }: Movie, edit: MovieEdit): Uint8Array<ArrayBuffer> => {
  const chapterTrack = edit.texts.find(({ track }) => track.kind === 'chapters')?.track
  const inside = ({ content, end }: Box, write: (child: Box) => Part, tail: readonly Part[] = []): Part[] => {
    const list = childrenOf(bytes, content, end)
    return [...list.boxes.map(write), ...tail, bytes.subarray(list.end, end)]
  }
  const table = (old: Box): Part => {
    const offsets = offsetsIn(bytes, old)
    const places = new DataView(new ArrayBuffer(offsets.length * (edit.is64 ? 8 : 4)))
    for (let i = 0; i < offsets.length; i++) {
      const offset = edit.move(offsets[i] ?? 0)
      if (edit.is64) places.setBigUint64(8 * i, BigInt(offset))
      else places.setUint32(4 * i, offset)
    }
    return fullBox(edit.is64 ? 'co64' : 'stco', 0, 0, u32(offsets.length), new Uint8Array(places.buffer))
  }
  const media = (child: Box): Part => {
    if (child.type === 'stco' || child.type === 'co64') return table(child)
    if (TO_OFFSETS.includes(child.type)) return box(child.type, ...inside(child, media))
    return bytes.subarray(child.start, child.end)
  }
  const refer = chapterTrack === undefined ? [] : [box('chap', u32(chapterTrack.id))]
  const references = (old: Box): Part => {
    const kept = inside(old, ({ type, start, end }) => (type === 'chap' ? [] : bytes.subarray(start, end)))
    return box('tref', ...kept, ...refer)
  }
  const trak = ({ box: old, handler }: Track): Part => {
    const isMedia = handler === 'vide' || handler === 'soun'
    const has = findBox(bytes, ['tref'], old.content, old.end) !== undefined
    const write = (child: Box) => (child.type === 'tref' && isMedia ? references(child) : media(child))
    return box('trak', ...inside(old, write, has || !isMedia || refer.length === 0 ? [] : [box('tref', ...refer)]))
  }
  const list = edit.chapters.length > 0 && edit.chapters.length <= 255 ? [chapterList(edit.chapters)] : []
  const user = (old: Box): Part =>
    box('udta', ...inside(old, ({ type, start, end }) => (type === 'chpl' ? [] : bytes.subarray(start, end)), list))
  const nextId = Math.max(0, ...tracks.map(({ id }) => id), ...edit.texts.map(({ track }) => track.id)) + 1
  const [movie] = childrenOf(bytes, 0, bytes.length).boxes
  if (movie === undefined) return joined(bytes)
  const hasUser = findBox(bytes, ['udta'], movie.content, movie.end) !== undefined
  const write = (child: Box): Part => {
    if (child.type === 'mvhd') return joined(bytes.subarray(child.start, child.end - 4), u32(nextId))
    if (child.type === 'udta') return user(child)
    const track = tracks.find(({ box: own }) => own.start === child.start)
    if (track === undefined) return bytes.subarray(child.start, child.end)
    return track.isReplaced ? [] : trak(track)
  }
  const texts = edit.texts.map(({ track, offset }) => textTrack(track, clock, offset))
  return box(
    'moov',
    ...inside(movie, write, [...texts, ...(hasUser || list.length === 0 ? [] : [box('udta', ...list)])]),
  )
}
