import { joined } from './boxes'
import type { FilePart } from './copy-stream'
import { type Element, element, elementHeader, elementsIn, ID, idBytes, numberBytes, readNumber } from './ebml'
import { type MuxTexts, sizeOf } from './lay-out'
import { type Matroska, readMatroska } from './matroska'
import { captionBlocks, captionClusters, chaptersElement, withCaptionTrack } from './matroska-texts'
import { bytesOf } from './outline'

/** A part of the copy's segment: what it is, where it stood in the old one if it did, and its bytes. */
type Slot = { readonly id: number; readonly old?: number; readonly part: FilePart }

/** Elements a player looks up by the seek head. */
const SOUGHT: readonly number[] = [ID.info, ID.tracks, ID.chapters, ID.tags, ID.cues, ID.attachments]

/** Cue points with the clusters' new places, as long whatever those are. */
const moveCues = (bytes: Uint8Array, { content, end }: Element & { end: number }, place: (old: number) => number) => {
  const again = ({ id, content: from, end: to }: Element & { end: number }): Uint8Array => {
    if (id === ID.clusterPosition) return element(id, numberBytes(place(readNumber(bytes.subarray(from, to))), 8))
    if (id !== ID.cuePoint && id !== ID.cuePlace) return joined(elementHeader(id, to - from), bytes.subarray(from, to))
    return element(id, ...elementsIn(bytes, from, to).map(again))
  }
  const points = elementsIn(bytes, content, end).filter(({ id }) => id === ID.cuePoint)
  return element(ID.cues, ...points.map(again))
}

const seekHead = (places: readonly (readonly [id: number, at: number])[]): Uint8Array<ArrayBuffer> =>
  element(
    ID.seekHead,
    ...places.map(([id, at]) =>
      element(ID.seek, element(ID.seekId, idBytes(id)), element(ID.seekPosition, numberBytes(at, 8))),
    ),
  )

/** Clusters as they are, each after the captions that begin while it lasts. */
const mediaSlots = (file: Blob, { clusters, ...of }: Matroska, texts: MuxTexts, added?: number, removed?: number) => {
  const media = clusters.filter(({ track }) => track !== removed || removed === undefined)
  const blocks = captionBlocks(texts.captions, of.seconds, of.scale, of.isWebM)
  let next = 0
  return media.flatMap(({ start, end, time }, i): Slot[] => {
    const first = next
    const until = media[i + 1]?.time ?? Number.POSITIVE_INFINITY
    while (next < blocks.length && (blocks[next]?.time ?? 0) < until) next++
    const own = blocks.slice(first, next)
    const said = added === undefined || own.length === 0 ? [] : [captionClusters(own, added, time)]
    return [
      ...said.map(part => ({ id: ID.cluster, part })),
      { id: ID.cluster, old: start, part: file.slice(start, end) },
    ]
  })
}

/**
 * Lays out a copy of a Matroska or WebM file with chapters and captions inside; clusters are copied as they are.
 *
 * @returns its parts in order, or a word for what is wrong
 */
export const layOutMatroska = async (
  file: Blob,
  texts: MuxTexts,
): Promise<readonly FilePart[] | 'not-mp4' | 'cut-short' | 'no-index'> => {
  const matroska = await readMatroska(file)
  if (typeof matroska === 'string') return matroska
  const { segment, elements, seconds, isWebM } = matroska
  const language = texts.language ?? 'und'
  const index = elements.find(({ id }) => id === ID.tracks)
  if (index === undefined) return 'no-index'
  const content = await bytesOf(file, index.content, index.end)
  const tracks = withCaptionTrack(content, texts.captions, language, isWebM)
  if (tracks === 'no-index') return 'no-index'
  const chapters = chaptersElement(texts.chapters, seconds, language)
  const media = mediaSlots(file, matroska, texts, tracks.added, tracks.removed)
  const firstMedia = matroska.clusters[0]?.start ?? 0
  const slots: Slot[] = []
  const cues = elements.find(({ id }) => id === ID.cues)
  const cueBytes = cues && (await bytesOf(file, cues.start, cues.end))
  const isDropped = ({ id }: Element) => [ID.seekHead, ID.void, ID.crc, ID.chapters].some(other => other === id)
  const kept = elements.filter(each => !isDropped(each))
  const slotOf = (each: Element & { end: number }): Slot[] => {
    if (each.id === ID.tracks)
      return [
        { id: ID.tracks, part: tracks.bytes },
        ...(chapters.length > 0 ? [{ id: ID.chapters, part: chapters }] : []),
      ]
    return [{ id: each.id, old: each.start, part: file.slice(each.start, each.end) }]
  }
  slots.push(...kept.filter(({ start }) => start < firstMedia).flatMap(slotOf))
  slots.push(...media)
  slots.push(...kept.filter(({ start }) => start > firstMedia).flatMap(slotOf))
  const cuesAt = (place: (old: number) => number): Slot[] =>
    slots.map(slot =>
      slot.id === ID.cues && cues !== undefined && cueBytes !== undefined && slot.old === cues.start
        ? {
            ...slot,
            part: moveCues(cueBytes, { ...cues, content: cues.content - cues.start, end: cueBytes.length }, place),
          }
        : slot,
    )
  // Sizes hang on how many places there are, not on what they are.
  const sized = cuesAt(() => 0)
  const sought = sized.filter(({ id }) => SOUGHT.includes(id))
  let at = seekHead(sought.map(({ id }) => [id, 0])).length
  const starts = sized.map(({ part }) => {
    const own = at
    at += sizeOf(part)
    return own
  })
  const newPlaces = new Map(sized.map(({ old }, i) => [old, starts[i] ?? 0]))
  const placed = cuesAt(old => newPlaces.get(old + segment.content) ?? 0)
  const head = seekHead(sought.map(slot => [slot.id, starts[sized.indexOf(slot)] ?? 0]))
  return [file.slice(0, segment.start), elementHeader(ID.segment, at), head, ...placed.map(({ part }) => part)]
}
