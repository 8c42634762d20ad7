import { joined, type Part } from './boxes'

/** Ids of the elements of Matroska and WebM that are read or written here. @source RFC 8794 (EBML), RFC 9559 (Matroska) */
export const ID = {
  header: 0x1a45dfa3,
  docType: 0x4282,
  segment: 0x18538067,
  crc: 0xbf,
  void: 0xec,
  seekHead: 0x114d9b74,
  seek: 0x4dbb,
  seekId: 0x53ab,
  seekPosition: 0x53ac,
  info: 0x1549a966,
  scale: 0x2ad7b1,
  duration: 0x4489,
  tracks: 0x1654ae6b,
  track: 0xae,
  trackNumber: 0xd7,
  trackUid: 0x73c5,
  trackType: 0x83,
  isDefault: 0x88,
  isLaced: 0x9c,
  name: 0x536e,
  language: 0x22b59c,
  codecId: 0x86,
  cluster: 0x1f43b675,
  timestamp: 0xe7,
  group: 0xa0,
  block: 0xa1,
  simpleBlock: 0xa3,
  blockDuration: 0x9b,
  cues: 0x1c53bb6b,
  cuePoint: 0xbb,
  cuePlace: 0xb7,
  clusterPosition: 0xf1,
  chapters: 0x1043a770,
  edition: 0x45b9,
  editionUid: 0x45bc,
  isEditionDefault: 0x45db,
  atom: 0xb6,
  atomUid: 0x73c4,
  atomStart: 0x91,
  atomEnd: 0x92,
  display: 0x80,
  title: 0x85,
  titleLanguage: 0x437c,
  tags: 0x1254c367,
  attachments: 0x1941a469,
} as const

/** An element: [start, end) with its header, [content, end) without. `end` is undefined where its size isn't told. */
export type Element = {
  readonly id: number
  readonly start: number
  readonly content: number
  readonly end: number | undefined
}

/** Length of a number that says its length by its leading zeros, bytes; 0 where it can't be one. */
const lengthOf = (first: number): number => (first === 0 ? 0 : Math.clz32(first) - 23)

/**
 * @param bytes of the file from `start` on, 12 at least unless it ends before
 * @returns undefined where no header can be read
 */
export const readElement = (bytes: Uint8Array, start: number): Element | undefined => {
  const idLength = lengthOf(bytes[0] ?? 0)
  if (idLength === 0 || idLength > 4 || idLength >= bytes.length) return undefined
  let id = 0
  for (const byte of bytes.subarray(0, idLength)) id = id * 256 + byte
  const length = lengthOf(bytes[idLength] ?? 0)
  if (length === 0 || idLength + length > bytes.length) return undefined
  let size = (bytes[idLength] ?? 0) & (0xff >> length)
  let isUnknown = size === 0xff >> length
  for (const byte of bytes.subarray(idLength + 1, idLength + length)) {
    size = size * 256 + byte
    isUnknown &&= byte === 0xff
  }
  const content = start + idLength + length
  return { id, start, content, end: isUnknown ? undefined : content + size }
}

/** Elements directly inside of [from, to) of some bytes; what can't be read ends the list. */
export const elementsIn = (bytes: Uint8Array, from = 0, to = bytes.length): readonly (Element & { end: number })[] => {
  const found: (Element & { end: number })[] = []
  for (let at = from; at < to; ) {
    const next = readElement(bytes.subarray(at, to), at)
    if (next?.end === undefined || next.end > to) break
    found.push({ ...next, end: next.end })
    at = next.end
  }
  return found
}

/** A whole number of up to 8 bytes; exact below 2^53. */
export const readNumber = (bytes: Uint8Array): number => bytes.reduce((sum, byte) => sum * 256 + byte, 0)

/** A whole number in so many bytes, as few as hold it unless told. */
export const numberBytes = (value: number, length = 0): Uint8Array => {
  const bytes: number[] = []
  for (let left = value; left > 0 || bytes.length < Math.max(1, length); left = Math.floor(left / 256))
    bytes.unshift(left % 256)
  return Uint8Array.from(bytes)
}

export const idBytes = (id: number): Uint8Array => numberBytes(id)

/** A size in 8 bytes: the same length whatever it is. */
const sizeBytes = (size: number): Uint8Array => {
  const bytes = numberBytes(size, 8)
  bytes[0] = 1
  return bytes
}

/** The header of an element whose content follows elsewhere. */
export const elementHeader = (id: number, size: number): Uint8Array<ArrayBuffer> => joined(idBytes(id), sizeBytes(size))

export const element = (id: number, ...parts: readonly Part[]): Uint8Array<ArrayBuffer> => {
  const content = joined(...parts)
  return joined(elementHeader(id, content.length), content)
}

export const numberElement = (id: number, value: number, length = 0): Uint8Array<ArrayBuffer> =>
  element(id, numberBytes(value, length))

export const textElement = (id: number, text: string): Uint8Array<ArrayBuffer> =>
  element(id, new TextEncoder().encode(text))
