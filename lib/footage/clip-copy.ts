import { EncodedPacketSink, type InputTrack } from 'mediabunny'
import type { Span } from '@/lib/procedure/time'
import { type Chunk, type ClipTrack, clipHead, entryOf } from './clip-movie'
import { type Movie, readMovie } from './movie'
import type { OpenFootage } from './open'
import { movieBox, readSampleTable, type SampleTable } from './sample-table'

/** Time stamps are off by rounding, seconds. */
const ROUNDING = 1e-4

/** When each packet is shown, seconds. */
type Shown = (packet: number) => number

/** From the key frame at the start on, in order of decoding; undefined where later packets are shown before it. */
const pictureIn = (table: SampleTable, shown: Shown, { start, end }: Span): readonly [number, number] | undefined => {
  const isStart = (packet: number) => Math.abs(shown(packet) - start) < 10 * ROUNDING
  const from = table.keys?.find(isStart) ?? (table.keys ? -1 : table.sizes.findIndex((_, i) => isStart(i)))
  if (from < 0) return undefined
  let to = from
  const length = (packet: number) => (table.durations[packet] ?? 0) / table.clock
  for (; to < table.sizes.length && shown(to) + length(to) <= end + ROUNDING; to++)
    if (shown(to) < shown(from)) return undefined
  return [from, to]
}

const soundIn = (table: SampleTable, shown: Shown, { start, end }: Span): readonly [number, number] => {
  const from = table.sizes.findIndex((_, i) => shown(i) >= start - ROUNDING)
  let to = Math.max(0, from)
  while (to < table.sizes.length && shown(to) + (table.durations[to] ?? 0) / table.clock <= end + ROUNDING) to++
  return [Math.max(0, from), to]
}

type Index = { readonly bytes: Uint8Array; readonly movie: Movie; readonly tables: ReadonlyMap<number, SampleTable> }

const readIndex = async ({ input, file, container }: OpenFootage): Promise<Index | undefined> => {
  const bytes = input !== null && container === 'MP4' ? await movieBox(file) : undefined
  const movie = bytes && readMovie(bytes)
  if (bytes === undefined || movie === undefined) return undefined
  const tables = movie.tracks.flatMap(track => {
    const table = track.handler === 'vide' || track.handler === 'soun' ? readSampleTable(bytes, track) : undefined
    return table === undefined ? [] : [[track.id, table] as const]
  })
  return { bytes, movie, tables: new Map(tables) }
}

/** A set of clips out of one footage reads its index once; it goes with the footage. */
const indexes = new WeakMap<OpenFootage, Promise<Index | undefined>>()

const indexOf = (footage: OpenFootage): Promise<Index | undefined> => {
  const known = indexes.get(footage) ?? readIndex(footage)
  indexes.set(footage, known)
  // A disk that could not be read then may be there again.
  known.catch(() => indexes.delete(footage))
  return known
}

const trackIn = async ({ movie, tables }: Index, input: InputTrack, span: Span, isAlone: boolean) => {
  const track = movie.tracks.find(({ id }) => id === input.id)
  const table = tables.get(input.id)
  const first = await new EncodedPacketSink(input).getFirstPacket({ metadataOnly: true })
  if (!track || !table || !first || entryOf(table).startsWith('enc')) return undefined
  // What the file's edit list makes of the first packet holds for all.
  const ticks = (packet: number) => (table.starts[packet] ?? 0) + (table.delays?.[packet] ?? 0)
  const shown = (packet: number) => first.timestamp + (ticks(packet) - ticks(0)) / table.clock
  const range = track.handler === 'vide' ? pictureIn(table, shown, span) : soundIn(table, shown, span)
  if (range === undefined || range[0] >= range[1] || (table.delays?.[range[0]] ?? 0) < 0) return undefined
  const late = isAlone ? 0 : Math.max(0, shown(range[0]) - span.start)
  return { track, table, from: range[0], to: range[1], late }
}

/** Lays the packets of all tracks out as they stand in the footage: where they go, and what of the footage is copied. */
const layOutPackets = (tracks: readonly ClipTrack[]) => {
  const packets = tracks.flatMap(({ table, from, to }, track) =>
    Array.from({ length: to - from }, (_, i) => ({
      track,
      start: table.offsets[from + i] ?? 0,
      size: table.sizes[from + i] ?? 0,
    })),
  )
  // Sorting keeps the order of decoding within a track only where the footage has it so.
  packets.sort((a, b) => a.start - b.start)
  const chunks = tracks.map((): Chunk[] => [])
  const spans: { start: number; end: number }[] = []
  let [length, before] = [0, -1]
  for (const { track, start, size } of packets) {
    const [own, span] = [chunks[track], spans.at(-1)]
    const last = own?.at(-1)
    if (own && last && before === track) own[own.length - 1] = { offset: last.offset, count: last.count + 1 }
    else own?.push({ offset: length, count: 1 })
    if (span?.end === start) span.end += size
    else spans.push({ start, end: start + size })
    length += size
    before = track
  }
  return { chunks, spans, length }
}

/**
 * Copies a span of an MP4 into a file of its own without reading it: the clip is made of slices of the footage, which are
 * read when it is written. Only packets inside the span are in it.
 *
 * @param span seconds; with a picture it begins at a key frame
 * @returns undefined where the index is of another kind or the packets can't be cut so simply (clip.ts copies those one
 *   by one)
 */
export const copyMp4 = async (footage: OpenFootage, span: Span, title?: string): Promise<Blob | undefined> => {
  const { input, file, hasVideo } = footage
  if (input === null) return undefined
  try {
    const index = await indexOf(footage)
    if (index === undefined) return undefined
    const inputs = [await input.getPrimaryVideoTrack(), await input.getPrimaryAudioTrack()].filter(one => one !== null)
    const all = await Promise.all(inputs.map(one => trackIn(index, one, span, !hasVideo)))
    const tracks = all.filter(track => track !== undefined)
    const isWhole = tracks.every(({ table: { offsets, sizes }, from, to }) => {
      const places = offsets.subarray(from, to)
      return places.every((offset, i) => offset > (places[i - 1] ?? 0) && offset + (sizes[from + i] ?? 0) <= file.size)
    })
    if (tracks.length === 0 || tracks.length < inputs.length || !isWhole) return undefined
    const { chunks, spans, length } = layOutPackets(tracks)
    const head = clipHead(index.bytes, tracks, chunks, length, title)
    const type = hasVideo ? 'video/mp4' : 'audio/mp4'
    return new Blob([head, ...spans.map(({ start, end }) => file.slice(start, end))], { type })
  } catch (error) {
    if (error instanceof RangeError) return undefined
    throw error
  }
}
