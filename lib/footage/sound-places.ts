import { type Box, findBox, readHeader, viewOf } from './boxes'
import { readMovie, TO_OFFSETS } from './movie'
import { bytesOf } from './outline'
import type { PacketPlaces } from './packet-reader'

/** Bytes of an index beyond which it can't be one; hours of footage have less than 50 MB. */
const LARGEST_INDEX = 2 ** 29

/** The movie box; undefined where the file isn't made of boxes or is a recording in fragments. */
const movieBox = async (file: Blob): Promise<Uint8Array | undefined> => {
  for (let at = 0; file.size - at >= 8; ) {
    const next = readHeader(await bytesOf(file, at, at + 16), at, file.size)
    if (next === undefined || next.type === 'moof' || next.end > file.size) return undefined
    if (next.type === 'moov')
      return next.end - at > LARGEST_INDEX ? undefined : await bytesOf(file, next.start, next.end)
    at = next.end
  }
  return undefined
}

/** Sizes of all packets. @source ISO/IEC 14496-12, sample size box (from memory) */
const sizesIn = (view: DataView, { content }: Box): Uint32Array => {
  const [one, count] = [view.getUint32(content + 4), view.getUint32(content + 8)]
  const sizes = new Uint32Array(count).fill(one)
  if (one === 0) for (let i = 0; i < count; i++) sizes[i] = view.getUint32(content + 12 + 4 * i)
  return sizes
}

/** Where each packet begins: so many to a chunk. @source ISO/IEC 14496-12, sample to chunk box (from memory) */
const offsetsOf = (view: DataView, { content }: Box, chunks: Float64Array, sizes: Uint32Array): Float64Array => {
  const offsets = new Float64Array(sizes.length)
  const runs = view.getUint32(content + 4)
  let packet = 0
  for (let run = 0; run < runs; run++) {
    const at = content + 8 + 12 * run
    const until = run + 1 < runs ? view.getUint32(at + 12) - 1 : chunks.length
    for (let chunk = view.getUint32(at) - 1; chunk < until; chunk++) {
      let offset = chunks[chunk] ?? 0
      for (let i = view.getUint32(at + 4); i > 0 && packet < sizes.length; i--) {
        offsets[packet] = offset
        offset += sizes[packet++] ?? 0
      }
    }
  }
  return packet === sizes.length ? offsets : new Float64Array()
}

/** When each packet begins, seconds from the first. @source ISO/IEC 14496-12, time to sample box (from memory) */
const timesIn = (view: DataView, { content }: Box, count: number, clock: number): Float64Array => {
  const times = new Float64Array(count)
  let ticks = 0
  let packet = 0
  for (let run = view.getUint32(content + 4), at = content + 8; run > 0; run--, at += 8)
    for (let i = view.getUint32(at); i > 0 && packet < count; i--) {
      times[packet++] = ticks / clock
      ticks += view.getUint32(at + 4)
    }
  return times
}

/**
 * Where the packets of a sound track stand, by the index of an MP4, M4A or MOV: an hour has 170,000, and asking a demuxer
 * for each takes longer than decoding them.
 *
 * @param track its number in the file
 * @param first when its first packet plays, seconds: what the file's edit list makes of it
 * @returns undefined where the index is of another kind (fragments, several sorts of packets) or places are not in order
 */
export const soundPlaces = async (file: Blob, track: number, first: number): Promise<PacketPlaces | undefined> => {
  const bytes = await movieBox(file)
  if (bytes === undefined || findBox(bytes, ['moov', 'mvex']) !== undefined) return undefined
  try {
    const own = readMovie(bytes)?.tracks.find(({ id }) => id === track)
    if (own === undefined) return undefined
    const find = (...path: string[]) => findBox(bytes, path, own.box.content, own.box.end)
    const [size, chunk, time] = ['stsz', 'stsc', 'stts'].map(type => find(...TO_OFFSETS, type))
    const [header, entries] = [find('mdia', 'mdhd'), find(...TO_OFFSETS, 'stsd')]
    if (size === undefined || chunk === undefined || time === undefined) return undefined
    if (header === undefined || entries === undefined || find(...TO_OFFSETS, 'ctts') !== undefined) return undefined
    const view = viewOf(bytes)
    if (view.getUint32(entries.content + 4) !== 1) return undefined
    const clock = view.getUint32(header.content + (bytes[header.content] === 1 ? 20 : 12))
    const sizes = sizesIn(view, size)
    const offsets = offsetsOf(view, chunk, own.offsets, sizes)
    const isInOrder = offsets.every((offset, i) => i === 0 || offset >= (offsets[i - 1] ?? 0) + (sizes[i - 1] ?? 0))
    if (offsets.length === 0 || !isInOrder || clock === 0) return undefined
    const times = timesIn(view, time, sizes.length, clock).map(seconds => first + seconds)
    return { offsets, sizes, times }
  } catch (error) {
    if (error instanceof RangeError) return undefined
    throw error
  }
}
