import type { Mark } from '@/lib/procedure/mark'
import type { PublishedFile, PublishOptions } from './publication'
import { toFileName } from './text'

const ascii = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to))

/** Media types by their first bytes, the first that fits. @source WHATWG MIME Sniffing; ISO/IEC 14496-12 `ftyp`; RFC 9559 */
const MEDIA: readonly (readonly [(bytes: Uint8Array) => boolean, type: string, ending: string])[] = [
  [bytes => ascii(bytes, 0, 3) === '\xff\xd8\xff', 'image/jpeg', 'jpg'],
  [bytes => ascii(bytes, 0, 4) === '\x89PNG', 'image/png', 'png'],
  [bytes => ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 12) === 'WEBP', 'image/webp', 'webp'],
  [bytes => ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 12) === 'WAVE', 'audio/wav', 'wav'],
  [bytes => ascii(bytes, 4, 8) === 'ftyp', 'video/mp4', 'mp4'],
  [bytes => isMatroska(bytes) && ascii(bytes, 0, 64).includes('webm'), 'video/webm', 'webm'],
  [bytes => isMatroska(bytes), 'video/matroska', 'mkv'],
  [bytes => ascii(bytes, 0, 4) === 'OggS', 'audio/ogg', 'ogg'],
  [bytes => ascii(bytes, 0, 4) === 'fLaC', 'audio/flac', 'flac'],
  [bytes => ascii(bytes, 0, 3) === 'ID3' || isMpegSound(bytes), 'audio/mpeg', 'mp3'],
]

/** The EBML header; its DocType stands within the first 64 bytes of what is written here. */
const isMatroska = (bytes: Uint8Array): boolean => ascii(bytes, 0, 4) === '\x1a\x45\xdf\xa3'

/** Eleven set bits, then MPEG 1 or 2, layer III. @source ISO/IEC 11172-3, frame header (from memory) */
const isMpegSound = (bytes: Uint8Array): boolean => bytes[0] === 0xff && ((bytes[1] ?? 0) & 0xe6) === 0xe2

/** @returns media type and ending of a picture or clip by its first bytes; undefined for anything else. */
export const mediaOf = (bytes: Uint8Array): { type: string; ending: string } | undefined => {
  const found = MEDIA.find(([fits]) => fits(bytes))
  return found && { type: found[1], ending: found[2] }
}

/**
 * The stills of these marks as files of a folder beside the publication.
 *
 * @returns files, numbered by the place of their mark (the number of a step) so that no two share a name, and the path of each by
 *   its mark's id
 */
export const toPictures = (
  marks: readonly Mark[],
  stills: PublishOptions['stills'],
  folder = 'stills',
): { readonly files: readonly PublishedFile[]; readonly paths: ReadonlyMap<string, string> } => {
  const files: PublishedFile[] = []
  const paths = new Map<string, string>()
  for (const [i, mark] of marks.entries()) {
    const content = stills?.get(mark.id)
    const media = content === undefined ? undefined : mediaOf(content)
    if (content === undefined || media === undefined || paths.has(mark.id)) continue
    const number = String(i + 1).padStart(3, '0')
    const path = `${folder}/${number}-${toFileName(mark.text, 'still')}.${media.ending}`
    files.push({ path, type: media.type, content })
    paths.set(mark.id, path)
  }
  return { files, paths }
}
