import { TellwrightError } from '@/lib/procedure/problem'
import { gone } from './not-saved'

/** A part of a file to be written: bytes, or a slice of the old file, read when its turn comes. */
export type FilePart = Blob | Uint8Array<ArrayBuffer>

export type CopyOptions = {
  readonly signal?: AbortSignal
  /** @param done bytes handed on so far */
  readonly onProgress?: (done: number) => void
}

/** Bytes read at once: one is read while the one before is written. Larger ones cost more, as their memory is fresh. */
const SLICE = 2 ** 20

async function* slices(parts: readonly FilePart[], name: string): AsyncGenerator<Uint8Array<ArrayBuffer>> {
  for (const part of parts) {
    if (part instanceof Uint8Array) {
      yield part
      continue
    }
    for (let at = 0; at < part.size; at += SLICE) {
      const slice = part.slice(at, Math.min(part.size, at + SLICE))
      const read = await slice.arrayBuffer().catch((cause: unknown) => {
        throw new TellwrightError('footage-gone', gone(name), { cause })
      })
      yield new Uint8Array(read)
    }
  }
}

/**
 * Streams parts of files and bytes one after the other, read as they are asked for.
 *
 * @param name of the file, for messages
 * @returns a stream that fails with the signal's reason when cancelled, and with TellwrightError `footage-gone` when the
 *   file can't be read any more
 */
export const copyStream = (
  parts: readonly FilePart[],
  name: string,
  { signal, onProgress }: CopyOptions = {},
): ReadableStream<Uint8Array<ArrayBuffer>> => {
  const source = slices(parts, name)
  let done = 0
  return new ReadableStream<Uint8Array<ArrayBuffer>>(
    {
      pull: async controller => {
        signal?.throwIfAborted()
        const { value, done: isOver } = await source.next()
        signal?.throwIfAborted()
        if (isOver || value === undefined) return controller.close()
        done += value.length
        onProgress?.(done)
        controller.enqueue(value)
      },
      cancel: async () => {
        await source.return(undefined)
      },
    },
    { highWaterMark: 1 },
  )
}
