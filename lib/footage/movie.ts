import { type Box, childrenOf, findBox, viewOf } from './boxes'
import { CAPTIONS_NAME } from './text-track'

/** What of the movie box matters here; see ISO/IEC 14496-12, movie, track and media boxes (from memory). */
export type Movie = {
  /** The whole box. */
  readonly bytes: Uint8Array
  /** Ticks a second. */
  readonly clock: number
  /** Duration, seconds. */
  readonly seconds: number
  readonly tracks: readonly Track[]
}

export type Track = {
  readonly box: Box
  readonly id: number
  /** Four letters, such as `vide`. */
  readonly handler: string
  /** Earlier chapters or captions of ours, which a new copy replaces. */
  readonly isReplaced: boolean
  /** 8 bytes of its header. */
  readonly size: Uint8Array
  /** Where its samples stand in the file. */
  readonly offsets: Float64Array
}

/** Boxes on the way from a track to its table of places. */
export const TO_OFFSETS = ['mdia', 'minf', 'stbl']

/** Places in the file that a table names. @throws RangeError where it is longer than its box */
export const offsetsIn = (bytes: Uint8Array, table: Box): Float64Array => {
  const view = viewOf(bytes)
  const count = view.getUint32(table.content + 4)
  const width = table.type === 'co64' ? 8 : 4
  if (table.content + 8 + count * width > table.end) throw new RangeError(`a table of ${count} places is cut short`)
  const offsets = new Float64Array(count)
  for (let i = 0, at = table.content + 8; i < count; i++, at += width)
    offsets[i] = width === 8 ? view.getUint32(at) * 2 ** 32 + view.getUint32(at + 4) : view.getUint32(at)
  return offsets
}

const trackOf = (bytes: Uint8Array, trak: Box, chapterIds: ReadonlySet<number>): Track | undefined => {
  const view = viewOf(bytes)
  const find = (...path: string[]) => findBox(bytes, path, trak.content, trak.end)
  const [header, handlerBox] = [find('tkhd'), find('mdia', 'hdlr')]
  if (header === undefined || handlerBox === undefined) return undefined
  const id = view.getUint32(header.content + (bytes[header.content] === 1 ? 20 : 12))
  const latin = (from: number, to: number) => String.fromCharCode(...bytes.subarray(from, to))
  const table = find(...TO_OFFSETS, 'co64') ?? find(...TO_OFFSETS, 'stco')
  return {
    box: trak,
    id,
    handler: latin(handlerBox.content + 8, handlerBox.content + 12),
    isReplaced: chapterIds.has(id) || latin(handlerBox.content + 24, handlerBox.end).includes(CAPTIONS_NAME),
    size: bytes.subarray(header.end - 8, header.end),
    offsets: table === undefined ? new Float64Array() : offsetsIn(bytes, table),
  }
}

/**
 * Reads the movie box.
 *
 * @returns undefined where it isn't whole
 * @throws RangeError where a table says it is longer than its box
 */
export const readMovie = (bytes: Uint8Array): Movie | undefined => {
  const view = viewOf(bytes)
  const header = findBox(bytes, ['moov', 'mvhd'])
  const movie = findBox(bytes, ['moov'])
  if (header === undefined || movie === undefined) return undefined
  const is64 = bytes[header.content] === 1
  const at = header.content + (is64 ? 20 : 12)
  const clock = view.getUint32(at)
  const ticks = is64 ? view.getUint32(at + 4) * 2 ** 32 + view.getUint32(at + 8) : view.getUint32(at + 4)
  const traks = childrenOf(bytes, movie.content, movie.end).boxes.filter(({ type }) => type === 'trak')
  const chapterIds = new Set<number>()
  for (const trak of traks) {
    const list = findBox(bytes, ['tref', 'chap'], trak.content, trak.end)
    for (let i = list?.content ?? 0; i < (list?.end ?? 0); i += 4) chapterIds.add(view.getUint32(i))
  }
  const tracks = traks.map(trak => trackOf(bytes, trak, chapterIds)).filter(track => track !== undefined)
  return { bytes, clock, seconds: clock === 0 ? 0 : ticks / clock, tracks }
}
