import { draftMarks } from '@/lib/draft/draft'
import type { Transcript } from '@/lib/procedure/recording'

/** Drafts off the main thread: takes a transcript, tells how far it is, gives the marks. */
self.onmessage = (event: MessageEvent<Transcript>) => {
  try {
    const marks = draftMarks(event.data, { onProgress: done => self.postMessage({ done }) })
    self.postMessage({ marks })
  } catch (error) {
    self.postMessage({ problem: error instanceof Error ? error.message : String(error) })
  }
}
