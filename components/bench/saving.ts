import type { CopyOptions } from '@/lib/footage/copy-stream'
import { writeBlob } from '@/lib/footage/write-blob'
import { toFileName } from '@/lib/publish/text'

/** Saves a file where the user wants it: a save dialog where the browser has one, else its downloads. */
export const saveFile = async (name: string, content: BlobPart, type: string): Promise<boolean> => {
  const blob = new Blob([content], { type })
  if (typeof window.showSaveFilePicker === 'function' && navigator.webdriver !== true) {
    try {
      const handle = await window.showSaveFilePicker({ suggestedName: name })
      const stream = await handle.createWritable()
      await stream.write(blob)
      await stream.close()
      return true
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return false
    }
  }
  const link = document.createElement('a')
  link.href = URL.createObjectURL(blob)
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000)
  return true
}

/** @returns the file the user chose for it; undefined where the browser shows no save dialog, false when the user turned away */
const chosenFor = async (name: string): Promise<FileSystemFileHandle | undefined | false> => {
  if (typeof window.showSaveFilePicker !== 'function' || navigator.webdriver === true) return undefined
  try {
    return await window.showSaveFilePicker({ suggestedName: name })
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return false
    // Making it took so long that the browser no longer takes it for the user's wish: a download needs none.
    if (error instanceof DOMException && error.name === 'SecurityError') return undefined
    throw error
  }
}

/**
 * Saves what is made of footage: straight to the disk where the browser has a save dialog, else as a download.
 *
 * @param footage name of the footage it reads from, for messages
 * @returns whether it was saved; false when the user turned away
 * @throws what lib/footage/write-blob.ts throws; nothing half-written is kept
 */
export const saveBlob = async (name: string, blob: Blob, footage: string, options: CopyOptions): Promise<boolean> => {
  const handle = await chosenFor(name)
  if (handle === undefined) return saveFile(name, blob, blob.type)
  if (handle === false) return false
  await writeBlob(await handle.createWritable(), blob, footage, options)
  return true
}

/**
 * Saves what is made bit by bit: straight to the disk where the browser has a save dialog, else as a download.
 *
 * @param body makes the stream, once the user has said where it goes
 * @returns whether it was saved; false when the user turned away
 * @throws what the stream or the disk throws; nothing half-written is kept
 */
export const saveStream = async (
  name: string,
  body: () => Response,
  type: string,
  signal: AbortSignal,
): Promise<boolean> => {
  const handle = await chosenFor(name)
  if (handle === false) return false
  if (handle !== undefined) {
    await body().body?.pipeTo(await handle.createWritable(), { signal })
    return true
  }
  return saveFile(name, await body().blob(), type)
}

/** @returns a file name made of a title, as publications have it. */
export const fileNameOf = (title: string): string => toFileName(title, 'procedure')
