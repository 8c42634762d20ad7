import { type Box, readHeader } from './boxes'

/** @returns the bytes of the file in [from, to) */
export const bytesOf = async (file: Blob, from: number, to: number): Promise<Uint8Array> =>
  new Uint8Array(await file.slice(from, to).arrayBuffer())

/**
 * Boxes of the file at the top level; reads 16 bytes of each.
 *
 * @returns `no-boxes` where the file isn't made of any, `cut-short` where the last goes on past its end
 */
export const outline = async (file: Blob): Promise<readonly Box[] | 'no-boxes' | 'cut-short'> => {
  const boxes: Box[] = []
  for (let at = 0; file.size - at >= 8; ) {
    const next = readHeader(await bytesOf(file, at, at + 16), at, file.size)
    if (next === undefined || !/^[\x20-\x7e\xa9]{4}$/.test(next.type))
      return boxes.length === 0 ? 'no-boxes' : 'cut-short'
    if (next.end > file.size)
      return boxes.length === 0 && !['ftyp', 'mdat', 'moov'].includes(next.type) ? 'no-boxes' : 'cut-short'
    boxes.push(next)
    at = next.end
  }
  return boxes
}
