import { type Box, box, joined, u32, u64 } from './boxes'
import type { FilePart } from './copy-stream'
import type { Movie } from './movie'
import { writeMovie } from './movie-edit'
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

/** One box of the old file and what stands in its place. */
export type Slot = { readonly old: Box; readonly parts: readonly FilePart[] }

export const sizeOf = (part: Blob | Uint8Array): number => (part instanceof Blob ? part.size : part.length)

/** A box that went up to the end of the file must say where it ends, now that something follows. */
export const closed = (file: Blob, old: Box, isOpen: boolean): Slot => {
  if (!isOpen) return { old, parts: [file.slice(old.start, old.end)] }
  const size = old.end - old.content
  const type = [...old.type].map(letter => letter.charCodeAt(0))
  const header = size + 8 < 2 ** 32 ? joined(u32(size + 8), type) : joined(u32(1), type, u64(size + 16))
  return { old, parts: [header, file.slice(old.content, old.end)] }
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
export const layOut = (slots: readonly Slot[], movie: Movie, texts: MuxTexts): readonly FilePart[] => {
  const tracks = textsOf(movie, texts)
  const chapters = texts.chapters.filter(({ start }) => start < movie.seconds)
  const write = (index: number, is64: boolean) => {
    const starts: number[] = []
    let at = 0
    for (const { old, parts } of slots) {
      starts.push(at)
      at += old.type === 'moov' ? index : parts.reduce((sum, part) => sum + sizeOf(part), 0)
    }
    let slot = 0
    const move = (offset: number): number => {
      const isIn = (i: number) => offset >= (slots[i]?.old.start ?? 0) && offset < (slots[i]?.old.end ?? 0)
      if (!isIn(slot))
        slot = Math.max(
          0,
          slots.findIndex((_, i) => isIn(i)),
        )
      // The content keeps its length, so its end is where to count from: a header may have grown.
      return isIn(slot) ? (starts[slot + 1] ?? at) - ((slots[slot]?.old.end ?? 0) - offset) : offset
    }
    let offset = at + 8
    const placed = tracks.map(track => {
      const own = { track, offset }
      offset += track.samples.reduce((sum, { data }) => sum + data.length, 0)
      return own
    })
    return { end: at, bytes: writeMovie(movie, { move, is64, chapters, texts: placed }) }
  }
  // Its size hangs on how many places there are, not on what they are.
  const narrow = write(0, false)
  const is64 = narrow.end + narrow.bytes.length >= 2 ** 32
  const index = write((is64 ? write(0, true) : narrow).bytes.length, is64).bytes
  const said = tracks.flatMap(({ samples }) => samples.map(({ data }) => data))
  return [
    ...slots.flatMap(({ old, parts }) => (old.type === 'moov' ? [index] : parts)),
    ...(said.length > 0 ? [box('mdat', ...said)] : []),
  ]
}
