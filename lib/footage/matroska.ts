import { type Element, elementsIn, ID, readElement, readNumber } from './ebml'
import { bytesOf } from './outline'

/** A cluster of the file, its time in ticks, and the track of its first block. */
export type Cluster = { readonly start: number; readonly end: number; readonly time: number; readonly track: number }

/** What a Matroska or WebM file is made of; nothing of its media is in memory. */
export type Matroska = {
  readonly isWebM: boolean
  /** Begin of the segment's header and content, bytes. */
  readonly segment: { readonly start: number; readonly content: number }
  /** Everything at the top of the segment but clusters, in order. */
  readonly elements: readonly (Element & { end: number })[]
  readonly clusters: readonly Cluster[]
  /** Nanoseconds of a tick. */
  readonly scale: number
  readonly seconds: number
}

/** Bytes read at once when looking for the end of a cluster that doesn't say its size. */
const WINDOW = 1 << 16

/** Bytes of an element that is read whole beyond which it can't be one. */
const LARGEST = 2 ** 28

/** Reads headers through a window, so that headers near each other cost one read. */
const headerReader = (file: Blob) => {
  let [from, window] = [0, new Uint8Array()]
  return async (at: number, length = 12): Promise<Uint8Array> => {
    if (at < from || at + length > from + window.length) {
      from = at
      window = new Uint8Array(await bytesOf(file, at, Math.min(file.size, at + WINDOW)))
    }
    return window.subarray(at - from, at - from + length)
  }
}

const TOP: readonly number[] = [
  ID.seekHead,
  ID.info,
  ID.tracks,
  ID.cluster,
  ID.cues,
  ID.chapters,
  ID.tags,
  ID.attachments,
]

type Read = ReturnType<typeof headerReader>

/** End of a cluster that doesn't say its size: where something of the top begins. */
const endOf = async (read: Read, { content, end }: Element, size: number): Promise<number> => {
  if (end !== undefined) return end
  let at = content
  while (at < size) {
    const next = readElement(await read(at), at)
    if (next?.end === undefined || TOP.includes(next.id)) break
    at = next.end
  }
  return at
}

/** @param bytes beginning of a cluster's content */
const clusterOf = (bytes: Uint8Array): { time: number; track: number } => {
  let [time, track] = [0, 0]
  for (let at = 0; at < bytes.length && track === 0; ) {
    const { id, content, end } = readElement(bytes.subarray(at), at) ?? { id: 0, content: 0, end: undefined }
    if (end === undefined) break
    if (id === ID.timestamp) time = readNumber(bytes.subarray(content, end))
    // A block begins with the number of its track; a group with its block.
    if (id === ID.simpleBlock || id === ID.block) track = (bytes[content] ?? 0) & 0x7f
    at = id === ID.group ? content : end
  }
  return { time, track }
}

/** Reads the outline of a file: headers, and a few bytes of each cluster. @returns a word for what is wrong else */
export const readMatroska = async (file: Blob): Promise<Matroska | 'not-mp4' | 'cut-short' | 'no-index'> => {
  const read = headerReader(file)
  const header = readElement(await read(0), 0)
  if (header?.id !== ID.header || header.end === undefined || header.end > 4096) return 'not-mp4'
  const head = await bytesOf(file, 0, header.end)
  const type = elementsIn(head, header.content, header.end).find(({ id }) => id === ID.docType)
  const docType = type === undefined ? '' : new TextDecoder().decode(head.subarray(type.content, type.end))
  const segment = readElement(await read(header.end), header.end)
  if (segment?.id !== ID.segment) return 'no-index'
  if (segment.end !== undefined && segment.end > file.size) return 'cut-short'
  const elements: (Element & { end: number })[] = []
  const clusters: Cluster[] = []
  for (let at = segment.content; at < (segment.end ?? file.size); ) {
    const next = readElement(await read(at), at)
    if (next === undefined) return segment.end === undefined && clusters.length > 0 ? 'cut-short' : 'no-index'
    const end = await endOf(read, next, segment.end ?? file.size)
    if (end > file.size) return 'cut-short'
    if (next.id === ID.cluster)
      clusters.push({
        start: next.start,
        end,
        ...clusterOf(await read(next.content, Math.min(64, end - next.content))),
      })
    else elements.push({ ...next, end })
    at = end
  }
  const info = elements.find(({ id }) => id === ID.info)
  if (info === undefined || !elements.some(({ id }) => id === ID.tracks) || clusters.length === 0) return 'no-index'
  if (elements.some(({ id, start, end }) => TOP.includes(id) && id !== ID.attachments && end - start > LARGEST))
    return 'no-index'
  const bytes = await bytesOf(file, info.content, info.end)
  const child = (wanted: number) => {
    const found = elementsIn(bytes).find(({ id }) => id === wanted)
    return found && bytes.subarray(found.content, found.end)
  }
  const scale = readNumber(child(ID.scale) ?? new Uint8Array()) || 1_000_000
  const length = child(ID.duration)
  const view = length && new DataView(length.buffer, length.byteOffset, length.length)
  const ticks = view === undefined ? undefined : view.byteLength === 4 ? view.getFloat32(0) : view.getFloat64(0)
  const seconds = ((ticks ?? (clusters.at(-1)?.time ?? 0) + 1) * scale) / 1e9
  return { isWebM: docType === 'webm', segment, elements, clusters, scale, seconds }
}
