import type { Mark } from '@/lib/procedure/mark'
import type { PublishedFile, PublishOptions } from './publication'
import { toFileName } from './text'

const startsWith = (bytes: Uint8Array, ...start: number[]): boolean => start.every((byte, i) => bytes[i] === byte)

/** @returns media type and ending of a picture or clip by its first bytes; undefined for anything else. */
export const mediaOf = (bytes: Uint8Array): { type: string; ending: string } | undefined => {
  if (startsWith(bytes, 0xff, 0xd8, 0xff)) return { type: 'image/jpeg', ending: 'jpg' }
  if (startsWith(bytes, 0x89, 0x50, 0x4e, 0x47)) return { type: 'image/png', ending: 'png' }
  if (startsWith(bytes, 0x52, 0x49, 0x46, 0x46) && bytes[8] === 0x57) return { type: 'image/webp', ending: 'webp' }
  if (startsWith(bytes.subarray(4), 0x66, 0x74, 0x79, 0x70)) return { type: 'video/mp4', ending: 'mp4' }
  if (startsWith(bytes, 0x1a, 0x45, 0xdf, 0xa3)) return { type: 'video/webm', ending: 'webm' }
  return undefined
}

/**
 * The stills of these marks as files of a folder beside the publication.
 *
 * @returns files, numbered in the order of the marks so that no two share a name, and the path of each by its mark's id
 */
export const toPictures = (
  marks: readonly Mark[],
  stills: PublishOptions['stills'],
  folder = 'stills',
): { readonly files: readonly PublishedFile[]; readonly paths: ReadonlyMap<string, string> } => {
  const files: PublishedFile[] = []
  const paths = new Map<string, string>()
  for (const mark of marks) {
    const content = stills?.get(mark.id)
    const media = content === undefined ? undefined : mediaOf(content)
    if (content === undefined || media === undefined || paths.has(mark.id)) continue
    const number = String(files.length + 1).padStart(3, '0')
    const path = `${folder}/${number}-${toFileName(mark.text, 'still')}.${media.ending}`
    files.push({ path, type: media.type, content })
    paths.set(mark.id, path)
  }
  return { files, paths }
}
