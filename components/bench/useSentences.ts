import { useEffect, useState } from 'react'
import type { Sentence, Transcript } from '@/lib/procedure/recording'

/** The sentences of a transcript, for captions timed by the word; undefined until the sentence model is fetched. */
export const useSentences = (transcript: Transcript | null): readonly Sentence[] | undefined => {
  const [sentences, setSentences] = useState<readonly Sentence[]>()
  useEffect(() => {
    let isOver = false
    if (transcript === null) return setSentences(undefined)
    import('@/lib/transcript/sentence').then(({ toSentences }) => {
      if (!isOver) setSentences(toSentences(transcript))
    })
    return () => {
      isOver = true
    }
  }, [transcript])
  return sentences
}
