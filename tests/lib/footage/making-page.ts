// Loaded into the browser by browser.ts: what stills, clips and alignment are tested with.
import { alignFootage } from '@/lib/footage/align-footage'
import { cutClip } from '@/lib/footage/clip'
import { listen } from '@/lib/footage/listen'
import { whyNotSaved } from '@/lib/footage/not-saved'
import { openFootage } from '@/lib/footage/open'
import { proposeStills, stillAt } from '@/lib/footage/still'
import { writeBlob } from '@/lib/footage/write-blob'

/** A blob as base64, to be handed to the test. */
const toText = async (blob: Blob): Promise<string> => {
  const bytes = new Uint8Array(await blob.arrayBuffer())
  let text = ''
  for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192))
  return btoa(text)
}

Object.assign(globalThis, {
  footage: { openFootage, listen, alignFootage, cutClip, proposeStills, stillAt, toText, whyNotSaved, writeBlob },
})
