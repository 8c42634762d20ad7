import { type Box, box, findBox, fullBox, letters, type Part, u16, u32, u64 } from './boxes'
import type { Track } from './movie'
import type { SampleTable } from './sample-table'

/** Packets [from, to) of one track that go into a clip. */
export type ClipTrack = {
  readonly track: Track
  readonly table: SampleTable
  readonly from: number
  readonly to: number
  /** When the first is shown, seconds from the clip's beginning; 0 or more. */
  readonly late: number
}

/** Packets of one track that stand next to each other in the clip. */
export type Chunk = { readonly offset: number; readonly count: number }

/** Ticks a second of the movie. */
const CLOCK = 90_000

const MATRIX = [0x10000, 0, 0, 0, 0x10000, 0, 0, 0, 0x40000000].flatMap(u32)
const zeros = (count: number): readonly number[] => new Array(count).fill(0)

/** Values of 32 bits one after the other. */
const words = (values: Iterable<number>): Uint8Array => {
  const list = [...values]
  const view = new DataView(new ArrayBuffer(4 * list.length))
  for (const [i, value] of list.entries()) view.setInt32(4 * i, value | 0)
  return new Uint8Array(view.buffer)
}

/** Runs of equal values: how many, then the value. */
const runs = (values: Iterable<number>): Part => {
  const list: number[] = []
  for (const value of values)
    if (list.length > 0 && list.at(-1) === value) list[list.length - 2] = (list.at(-2) ?? 0) + 1
    else list.push(1, value)
  return words([list.length / 2, ...list])
}

const ticks = ({ table, from, to }: ClipTrack): number =>
  table.durations.subarray(from, to).reduce((sum, duration) => sum + duration, 0)

const chunkRuns = (chunks: readonly Chunk[]): Part => {
  const list = chunks.flatMap(({ count }, i) => (chunks[i - 1]?.count === count ? [] : [i + 1, count, 1]))
  return words([list.length / 3, ...list])
}

/** Without the name of what encoded the picture, which may be the camera's: 32 bytes in the entry of a picture. */
const nameless = ({ table, track }: ClipTrack): Uint8Array => {
  const description = table.description.slice()
  return track.handler === 'vide' ? description.fill(0, 66, 98) : description
}

const sampleTable = (clip: ClipTrack, chunks: readonly Chunk[], is64: boolean): Uint8Array => {
  const { table, from, to } = clip
  const delays = table.delays?.subarray(from, to)
  const keys = table.keys?.filter(key => key >= from && key < to)
  const places = is64 ? chunks.flatMap(({ offset }) => u64(offset)) : words(chunks.map(({ offset }) => offset))
  return box(
    'stbl',
    nameless(clip),
    fullBox('stts', 0, 0, runs(table.durations.subarray(from, to))),
    delays === undefined ? [] : fullBox('ctts', delays.some(delay => delay < 0) ? 1 : 0, 0, runs(delays)),
    keys === undefined ? [] : fullBox('stss', 0, 0, words([keys.length, ...keys.map(key => key - from + 1)])),
    fullBox('stsc', 0, 0, chunkRuns(chunks)),
    fullBox('stsz', 0, 0, u32(0), words([to - from, ...table.sizes.subarray(from, to)])),
    fullBox(is64 ? 'co64' : 'stco', 0, 0, u32(chunks.length), places),
  )
}

/** How long the track is shown and from when on. */
const edits = (clip: ClipTrack): Uint8Array => {
  const late = Math.round(clip.late * CLOCK)
  const shown = Math.round((ticks(clip) * CLOCK) / clip.table.clock)
  const wait = late > 0 ? [...u32(late), ...u32(-1), ...u32(0x10000)] : []
  const play = [...u32(shown), ...u32(clip.table.delays?.[clip.from] ?? 0), ...u32(0x10000)]
  return box('edts', fullBox('elst', 0, 0, u32(late > 0 ? 2 : 1), wait, play))
}

const trackBox = (bytes: Uint8Array, clip: ClipTrack, chunks: readonly Chunk[], is64: boolean): Uint8Array => {
  const { track, table } = clip
  const find = (...path: string[]): Box | undefined => findBox(bytes, path, track.box.content, track.box.end)
  const part = (old: Box | undefined): Part => (old === undefined ? [] : bytes.subarray(old.start, old.end))
  /** What follows the version, whose dates and lengths are longer in version 1. */
  const tail = (old: Box | undefined, short: number, long: number): Part =>
    old === undefined ? [] : bytes.subarray(old.content + (bytes[old.content] === 1 ? long : short), old.end)
  const shown = Math.round((clip.late + ticks(clip) / table.clock) * CLOCK)
  const kind = track.handler === 'vide' ? 'VideoHandler' : 'SoundHandler'
  return box(
    'trak',
    // Dates are left out: they are not the clip's.
    fullBox('tkhd', 0, 3, zeros(8), u32(track.id), u32(0), u32(shown), tail(find('tkhd'), 24, 36)),
    edits(clip),
    box(
      'mdia',
      fullBox('mdhd', 0, 0, zeros(8), u32(table.clock), u32(ticks(clip)), tail(find('mdia', 'mdhd'), 20, 32)),
      fullBox('hdlr', 0, 0, u32(0), letters(track.handler), zeros(12), letters(kind), [0]),
      box(
        'minf',
        part(find('mdia', 'minf', 'vmhd') ?? find('mdia', 'minf', 'smhd')),
        box('dinf', fullBox('dref', 0, 0, u32(1), fullBox('url ', 0, 1))),
        sampleTable(clip, chunks, is64),
      ),
    ),
  )
}

/** The title as common players read it. @source Apple, QuickTime File Format, metadata item list (from memory) */
const titleBox = (title: string): Uint8Array =>
  box(
    'udta',
    fullBox(
      'meta',
      0,
      0,
      fullBox('hdlr', 0, 0, u32(0), letters('mdirappl'), zeros(9)),
      box('ilst', box('\u00a9nam', box('data', u32(1), u32(0), new TextEncoder().encode(title)))),
    ),
  )

/**
 * The beginning of a clip's file: everything up to the packets.
 *
 * @param bytes movie box of the footage; of it only what describes the codecs and how they are shown is taken over
 * @param chunks of each track, whose offsets count from the first packet
 * @param length of the packets, bytes
 * @source ISO/IEC 14496-12, file type, movie box and below (from memory; the tests read the result with ffprobe)
 */
export const clipHead = (
  bytes: Uint8Array,
  tracks: readonly ClipTrack[],
  chunks: readonly (readonly Chunk[])[],
  length: number,
  title?: string,
): Uint8Array<ArrayBuffer> => {
  const seconds = Math.max(...tracks.map(clip => clip.late + ticks(clip) / clip.table.clock))
  const nextId = Math.max(...tracks.map(({ track }) => track.id)) + 1
  const is64 = length > 2 ** 32 - 2 ** 26
  const media = is64 ? [...u32(1), ...letters('mdat'), ...u64(length + 16)] : [...u32(length + 8), ...letters('mdat')]
  const type = box('ftyp', letters('isom'), u32(512), letters('isomiso2mp41'))
  const movie = (start: number) =>
    box(
      'moov',
      fullBox('mvhd', 0, 0, zeros(8), u32(CLOCK), u32(Math.round(seconds * CLOCK)), u32(0x10000), u16(0x100), [
        ...zeros(10),
        ...MATRIX,
        ...zeros(24),
        ...u32(nextId),
      ]),
      ...tracks.map((clip, i) => {
        const moved = (chunks[i] ?? []).map(({ offset, count }) => ({ offset: offset + start, count }))
        return trackBox(bytes, clip, moved, is64)
      }),
      title === undefined ? [] : titleBox(title),
    )
  // Its size does not hang on the offsets in it.
  const start = type.length + movie(0).length + media.length
  const head = new Uint8Array(start)
  head.set(type)
  head.set(movie(start), type.length)
  head.set(media, start - media.length)
  return head
}

/** @returns what the description of a track's packets calls their codec, such as `avc1` */
export const entryOf = ({ description }: SampleTable): string => String.fromCharCode(...description.subarray(20, 24))
