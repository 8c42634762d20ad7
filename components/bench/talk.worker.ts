import type { Transcript } from '@/lib/procedure/recording'
import { toSentences } from '@/lib/transcript/sentence'
import { toTalk } from '@/lib/transcript/talk'

/** Finds the sentences of a transcript and sets them as running text, off the main thread. */
self.onmessage = ({ data }: MessageEvent<Transcript>) => self.postMessage(toTalk(toSentences(data)))
