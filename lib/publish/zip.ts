import { makeZip } from 'client-zip'
import { toBytes } from './digest'
import { isSafePath } from './manifest'
import type { PublishedFile } from './publication'

/** ZIP cannot date a file before 1980; a fixed day keeps the same packet the same bytes. */
const DAY = new Date(2000, 0, 1)

/**
 * Files as a ZIP, streamed: no more than one file is held at a time. The same files give the same bytes.
 *
 * @param files with paths that stay inside the ZIP; any other path is a mistake of ours and is left out
 */
export const toZipStream = (files: readonly PublishedFile[]): ReadableStream<Uint8Array> =>
  makeZip(
    files
      .filter(({ path }) => isSafePath(path))
      .map(({ path, content }) => ({
        name: path,
        input: toBytes(content) as Uint8Array<ArrayBuffer>,
        lastModified: DAY,
      })),
  )

/** @returns the whole ZIP as bytes. */
export const toZip = async (files: readonly PublishedFile[]): Promise<Uint8Array> =>
  new Uint8Array(await new Response(toZipStream(files) as ReadableStream<Uint8Array<ArrayBuffer>>).arrayBuffer())
