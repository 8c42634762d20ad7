import { type Box, findBox, viewOf } from './boxes'
import { TO_OFFSETS, type Track } from './movie'
import { bytesOf, LARGEST_INDEX, topBoxes } from './outline'

/** What the index of an MP4 says of each packet of a track, in order of decoding. */
export type SampleTable = {
  /** Ticks a second. */
  readonly clock: number
  /** Where they stand in the file. */
  readonly offsets: Float64Array
  readonly sizes: Uint32Array
  /** When they are decoded and for how long, ticks. */
  readonly starts: Float64Array
  readonly durations: Uint32Array
  /** How much later they are shown, ticks; absent where that is at once. */
  readonly delays?: Int32Array
  /** Indices of key frames; absent where all are. */
  readonly keys?: Uint32Array
  /** The box that describes the codec, with one entry. */
  readonly description: Uint8Array
}

/** @returns the movie box; undefined where the file isn't made of boxes, is cut short before it or is in fragments */
export const movieBox = async (file: Blob): Promise<Uint8Array | undefined> => {
  for await (const next of topBoxes(file)) {
    if (next === undefined || next.type === 'moof' || next.end > file.size) return undefined
    if (next.type !== 'moov') continue
    const bytes = next.end - next.start > LARGEST_INDEX ? undefined : await bytesOf(file, next.start, next.end)
    return bytes && findBox(bytes, ['moov', 'mvex']) === undefined ? bytes : undefined
  }
  return undefined
}

const sizesIn = (view: DataView, { content }: Box): Uint32Array => {
  const [one, count] = [view.getUint32(content + 4), view.getUint32(content + 8)]
  const sizes = new Uint32Array(count).fill(one)
  if (one === 0) for (let i = 0; i < count; i++) sizes[i] = view.getUint32(content + 12 + 4 * i)
  return sizes
}

/** Chunks hold so many packets each; undefined where that doesn't come to as many as there are. */
const offsetsOf = (view: DataView, { content }: Box, chunks: Float64Array, sizes: Uint32Array) => {
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
  return packet === sizes.length ? offsets : undefined
}

/** Runs of a number of packets and a value, spread out. */
const spread = <T extends Uint32Array | Int32Array>(view: DataView, { content }: Box, into: T): T => {
  let packet = 0
  for (let run = view.getUint32(content + 4), at = content + 8; run > 0; run--, at += 8)
    for (let i = view.getUint32(at); i > 0 && packet < into.length; i--)
      into[packet++] = into instanceof Int32Array ? view.getInt32(at + 4) : view.getUint32(at + 4)
  return into
}

/**
 * Reads what the index says of a track's packets: an hour has some 100,000, and asking a demuxer for each takes longer
 * than decoding them.
 *
 * @param bytes the movie box
 * @returns undefined where a table is missing or the packets are of several sorts
 * @throws RangeError where a table says it is longer than its box
 * @source ISO/IEC 14496-12, sample table box and below (from memory; the tests compare with another demuxer)
 */
export const readSampleTable = (bytes: Uint8Array, track: Track): SampleTable | undefined => {
  const view = viewOf(bytes)
  const find = (...path: string[]) => findBox(bytes, path, track.box.content, track.box.end)
  const table = (type: string) => find(...TO_OFFSETS, type)
  const [header, entries, size, chunk, time] = [
    find('mdia', 'mdhd'),
    table('stsd'),
    table('stsz'),
    table('stsc'),
    table('stts'),
  ]
  if (!header || !entries || !size || !chunk || !time || view.getUint32(entries.content + 4) !== 1) return undefined
  const clock = view.getUint32(header.content + (bytes[header.content] === 1 ? 20 : 12))
  const sizes = sizesIn(view, size)
  const offsets = offsetsOf(view, chunk, track.offsets, sizes)
  if (offsets === undefined || sizes.length === 0 || clock === 0) return undefined
  const durations = spread(view, time, new Uint32Array(sizes.length))
  const starts = new Float64Array(sizes.length)
  for (let i = 1; i < starts.length; i++) starts[i] = (starts[i - 1] ?? 0) + (durations[i - 1] ?? 0)
  const [delay, sync] = [table('ctts'), table('stss')]
  return {
    clock,
    offsets,
    sizes,
    starts,
    durations,
    description: bytes.subarray(entries.start, entries.end),
    ...(delay && { delays: spread(view, delay, new Int32Array(sizes.length)) }),
    ...(sync && {
      keys: Uint32Array.from(
        { length: view.getUint32(sync.content + 4) },
        (_, i) => view.getUint32(sync.content + 8 + 4 * i) - 1,
      ),
    }),
  }
}
