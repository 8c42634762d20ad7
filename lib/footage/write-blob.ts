import { TellwrightError } from '@/lib/procedure/problem'
import type { CopyOptions } from './copy-stream'
import { gone, NOT_WRITABLE } from './not-saved'

/** Bytes written at once: between two of them progress is told and stopping heard. */
const PORTION = 32 * 2 ** 20

const isReadable = (blob: Blob): Promise<boolean> =>
  Promise.all([blob.slice(0, 1), blob.slice(-1)].map(part => part.arrayBuffer())).then(
    () => true,
    () => false,
  )

/**
 * Writes a blob to a file of the user's. Where it is made of slices of another file the browser copies from file to file,
 * past the page and its memory, several times faster than a stream.
 *
 * @param name of the footage, for messages
 * @throws the signal's reason when stopped, TellwrightError `footage-gone` where the slices can't be read any more and
 *   `not-writable` where they can but not be written, and what the disk throws (see not-saved.ts). The file is then what it was before.
 */
export const writeBlob = async (
  to: FileSystemWritableFileStream,
  blob: Blob,
  name: string,
  { signal, onProgress }: CopyOptions = {},
): Promise<void> => {
  try {
    for (let at = 0; at < blob.size; at += PORTION) {
      signal?.throwIfAborted()
      const end = Math.min(blob.size, at + PORTION)
      await to.write(blob.slice(at, end))
      onProgress?.(end)
    }
    signal?.throwIfAborted()
    await to.close()
  } catch (cause) {
    await to.abort(cause).catch(() => {})
    if (!(await isReadable(blob))) throw new TellwrightError('footage-gone', gone(name), { cause })
    // What is copied can be read, so it is the disk copied to: Chromium tells one without room now as full, now like this.
    if (cause instanceof DOMException && cause.name === 'NotReadableError')
      throw new TellwrightError(NOT_WRITABLE, 'its disk is full or cannot be written', { cause })
    throw cause
  }
}
