import { StreamTarget, type StreamTargetChunk } from 'mediabunny'

/** Bytes handed to the browser at once. */
const CHUNK = 4 * 2 ** 20

/**
 * Puts a file together from what is written here and there. Each piece becomes a blob at once: the browser keeps those
 * outside the page's memory, on its disk where they are many.
 */
export const blobPieces = () => {
  let pieces: { readonly start: number; readonly blob: Blob }[] = []
  let length = 0
  return {
    /** @param position at or before the end of what was written so far */
    write: ({ data, position }: Pick<StreamTargetChunk, 'data' | 'position'>): void => {
      const end = position + data.length
      const fresh = { start: position, blob: new Blob([data as Uint8Array<ArrayBuffer>]) }
      if (position === length) pieces.push(fresh)
      else {
        const before = pieces.flatMap(({ start, blob }) =>
          start < position ? [{ start, blob: blob.slice(0, position - start) }] : [],
        )
        const after = pieces.flatMap(({ start, blob }) =>
          start + blob.size > end ? [{ start: Math.max(start, end), blob: blob.slice(Math.max(0, end - start)) }] : [],
        )
        pieces = [...before, fresh, ...after]
      }
      length = Math.max(length, end)
    },
    /** @param type such as `video/mp4` */
    blob: (type: string): Blob =>
      new Blob(
        pieces.map(({ blob }) => blob),
        { type },
      ),
  }
}

/** @returns where a muxer writes, and the file once all is written */
export const blobTarget = () => {
  const { write, blob } = blobPieces()
  return { target: new StreamTarget(new WritableStream({ write }), { chunked: true, chunkSize: CHUNK }), blob }
}
