import { joined } from './boxes'
import { element, elementsIn, ID, numberBytes, numberElement, readNumber, textElement } from './ebml'
import type { MuxCaption, MuxChapter } from './text-samples'

/** Marks the caption track as ours, so that the next copy can replace it. */
const UID = 0x7e11a7

const SUBTITLE = 0x11

/** Ticks a block may lie after its cluster's time: 16 bits with sign. */
const FARTHEST = 32_767

/** A track entry's number, and whether it is the captions of an earlier copy. */
const readEntry = (bytes: Uint8Array): { number: number; isOurs: boolean } => {
  const number = (wanted: number) => {
    const found = elementsIn(bytes).find(({ id }) => id === wanted)
    return found === undefined ? 0 : readNumber(bytes.subarray(found.content, found.end))
  }
  return { number: number(ID.trackNumber), isOurs: number(ID.trackUid) === UID }
}

/** The tracks with one for captions added, those of an earlier copy taken out. */
export type TracksWithTexts = {
  readonly bytes: Uint8Array<ArrayBuffer>
  /** Number of the caption track; undefined where there are none. */
  readonly added: number | undefined
  /** Number of the track that was taken out. */
  readonly removed: number | undefined
}

/**
 * @param content of the Tracks element
 * @source RFC 9559, TrackEntry; codec ids S_TEXT/UTF8 (RFC 9559 codec mappings) and D_WEBVTT/SUBTITLES (WebM)
 */
export const withCaptionTrack = (
  content: Uint8Array,
  captions: readonly MuxCaption[],
  language: string,
  isWebM: boolean,
): TracksWithTexts | 'no-index' => {
  const entries = elementsIn(content)
    .filter(({ id }) => id === ID.track)
    .map(entry => ({ ...entry, ...readEntry(content.subarray(entry.content, entry.end)) }))
  const others = entries.filter(({ isOurs }) => !isOurs)
  const added = Math.max(0, ...others.map(({ number }) => number)) + 1
  // Numbers above 126 take two bytes in a block.
  if (others.length === 0 || added > 126) return 'no-index'
  const own = element(
    ID.track,
    numberElement(ID.trackNumber, added),
    numberElement(ID.trackUid, UID),
    numberElement(ID.trackType, SUBTITLE),
    numberElement(ID.isDefault, 0),
    numberElement(ID.isLaced, 0),
    textElement(ID.name, 'Captions'),
    textElement(ID.language, language),
    textElement(ID.codecId, isWebM ? 'D_WEBVTT/SUBTITLES' : 'S_TEXT/UTF8'),
  )
  const bytes = element(
    ID.tracks,
    ...others.map(({ start, end }) => content.subarray(start, end)),
    ...(captions.length > 0 ? [own] : []),
  )
  return {
    bytes,
    added: captions.length > 0 ? added : undefined,
    removed: entries.find(({ isOurs }) => isOurs)?.number,
  }
}

/** @param seconds of the footage; chapters from there on are left out */
export const chaptersElement = (chapters: readonly MuxChapter[], seconds: number, language: string) => {
  const within = chapters.filter(({ start }) => start < seconds)
  const nanoseconds = (at: number) => numberBytes(Math.round(at * 1e3) * 1e6, 8)
  const atoms = within.map(({ start, title }, i) =>
    element(
      ID.atom,
      numberElement(ID.atomUid, UID + i + 1),
      element(ID.atomStart, nanoseconds(start)),
      element(ID.atomEnd, nanoseconds(within[i + 1]?.start ?? seconds)),
      element(ID.display, textElement(ID.title, title), textElement(ID.titleLanguage, language)),
    ),
  )
  const edition = element(
    ID.edition,
    numberElement(ID.editionUid, UID),
    numberElement(ID.isEditionDefault, 1),
    ...atoms,
  )
  return atoms.length === 0 ? new Uint8Array() : element(ID.chapters, edition)
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')

/** A caption ready to be put between the clusters, times in ticks. */
export type CaptionBlock = { readonly time: number; readonly ticks: number; readonly text: Uint8Array }

/** Captions in order of time, cut at the end of the footage. @param scale nanoseconds of a tick */
export const captionBlocks = (
  captions: readonly MuxCaption[],
  seconds: number,
  scale: number,
  isWebM: boolean,
): readonly CaptionBlock[] => {
  const ticks = (at: number) => Math.round((at * 1e9) / scale)
  return captions
    .filter(({ start, end, text }) => start < Math.min(end, seconds) && text.trim() !== '')
    .map(({ start, end, text }) => ({
      time: ticks(start),
      ticks: ticks(Math.min(end, seconds)) - ticks(start),
      // WebM: id and settings, each on a line, then the text, marked up.
      text: new TextEncoder().encode(isWebM ? `\n\n${escaped(text)}` : text),
    }))
    .sort((a, b) => a.time - b.time)
}

/** Clusters of captions alone; they stand in front of the media they belong to. */
export const captionClusters = (
  blocks: readonly CaptionBlock[],
  track: number,
  from: number,
): Uint8Array<ArrayBuffer> => {
  const groups = new Map<number, Uint8Array[]>()
  for (const { time, ticks, text } of blocks) {
    const base = time - from > FARTHEST || time < from ? time : from
    const relative = time - base
    const block = element(ID.block, [0x80 | track, relative >> 8, relative & 255, 0], text)
    const group = groups.get(base) ?? []
    group.push(element(ID.group, block, numberElement(ID.blockDuration, ticks)))
    groups.set(base, group)
  }
  return joined(...[...groups].map(([time, group]) => element(ID.cluster, numberElement(ID.timestamp, time), ...group)))
}
