import { useEffect, useRef, useState } from 'react'
import type { Transcript } from '@/lib/procedure/recording'
import type { Talk } from '@/lib/transcript/talk'

const openWorker = (): Worker => new Worker(new URL('./talk.worker.ts', import.meta.url), { type: 'module' })

let waiting: Worker | undefined

/** Starts the worker that sets the talk, so that its model is fetched while the recording still is. */
export const readyTalkWorker = (): void => {
  waiting ??= openWorker()
}

const takeWorker = (): Worker => {
  const worker = waiting ?? openWorker()
  waiting = undefined
  return worker
}

const NONE: Talk = { paragraphs: [], words: [] }

/**
 * The running text of a transcript, set in a worker so that a talk of hours opens without holding up the page.
 *
 * @returns the talk, and whether it is that of the first transcript yet; after a correction the old one stays until the
 *   new one is set
 */
export const useTalk = (transcript: Transcript | null): { readonly talk: Talk; readonly isSet: boolean } => {
  const [set, setSet] = useState<Talk>()
  const worker = useRef<Worker>(undefined)
  const asked = useRef(0)
  useEffect(() => {
    const running = takeWorker()
    worker.current = running
    running.onmessage = ({ data }: MessageEvent<Talk>) => {
      asked.current--
      if (asked.current === 0) setSet(data)
    }
    return () => {
      running.terminate()
      asked.current = 0
    }
  }, [])
  useEffect(() => {
    if (transcript === null) return setSet(undefined)
    asked.current++
    worker.current?.postMessage(transcript)
  }, [transcript])
  return { talk: set ?? NONE, isSet: set !== undefined }
}
