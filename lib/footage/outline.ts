import { type Box, readHeader } from './boxes'

/** @returns the bytes of the file in [from, to) */
export const bytesOf = async (file: Blob, from: number, to: number): Promise<Uint8Array> =>
  new Uint8Array(await file.slice(from, to).arrayBuffer())

/** Bytes of an index beyond which it can't be one; hours of footage have less than 50 MB. */
export const LARGEST_INDEX = 2 ** 29

/** Boxes of the file at the top level one by one, the last perhaps going on past its end; undefined where there is none. */
export async function* topBoxes(file: Blob): AsyncGenerator<Box | undefined> {
  for (let at = 0; file.size - at >= 8; ) {
    const next = readHeader(await bytesOf(file, at, at + 16), at, file.size)
    yield next
    if (next === undefined) return
    at = next.end
  }
}

/**
 * Boxes of the file at the top level; reads 16 bytes of each.
 *
 * @returns `no-boxes` where the file isn't made of any, `cut-short` where the last goes on past its end
 */
export const outline = async (file: Blob): Promise<readonly Box[] | 'no-boxes' | 'cut-short'> => {
  const boxes: Box[] = []
  for await (const next of topBoxes(file)) {
    if (next === undefined || !/^[\x20-\x7e\xa9]{4}$/.test(next.type))
      return boxes.length === 0 ? 'no-boxes' : 'cut-short'
    if (next.end > file.size)
      return boxes.length === 0 && !['ftyp', 'mdat', 'moov'].includes(next.type) ? 'no-boxes' : 'cut-short'
    boxes.push(next)
  }
  return boxes
}
