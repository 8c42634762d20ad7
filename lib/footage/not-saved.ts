import { TellwrightError } from '@/lib/procedure/problem'

/** Code of what could be read and not be written; see write-blob.ts. */
export const NOT_WRITABLE = 'not-writable'

/** @returns the message that the footage can't be read any more */
export const gone = (name: string): string =>
  `${name} could not be read any more: it was moved, changed or its disk taken away. Choose it again and start over`

/**
 * Why something could not be written to the user's disk, and what to do: a full disk first of all.
 *
 * @param error as the browser's file or the stream threw it
 * @param name of the file
 */
export const whyNotSaved = (error: unknown, name: string): string => {
  const { name: kind, message } = error instanceof Error ? error : new Error(String(error))
  // A writable file of the browser writes beside the old one and puts it in its place only when closed.
  const isFull = kind === 'QuotaExceededError' || /no space left/i.test(message)
  if (isFull || (error instanceof TellwrightError && error.code === NOT_WRITABLE))
    return `The disk is full${isFull ? '' : ' or cannot be written'}: ${name} was not saved, and nothing half-written is left behind. Make room or choose another disk, then save again; the footage and your work are untouched.`
  if (kind === 'NotAllowedError' || kind === 'NoModificationAllowedError')
    return `${name} may not be written there. Choose another folder.`
  return `${name} could not be saved: ${message}`
}
