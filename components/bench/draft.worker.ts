import { draftMarks } from '@/lib/draft/draft'
import { ENGLISH_ONLY, isForeign } from '@/lib/draft/language'
import type { Transcript } from '@/lib/procedure/recording'

/** Drafts off the main thread: takes a transcript, tells how far it is, gives the marks and what to doubt in them. */
self.onmessage = (event: MessageEvent<Transcript>) => {
  try {
    const marks = draftMarks(event.data, { onProgress: done => self.postMessage({ done }) })
    self.postMessage({ marks, ...(isForeign(event.data) ? { doubt: ENGLISH_ONLY } : {}) })
  } catch (error) {
    self.postMessage({ problem: error instanceof Error ? error.message : String(error) })
  }
}
