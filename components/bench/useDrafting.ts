import { useCallback, useEffect, useRef, useState } from 'react'
import type { Mark } from '@/lib/procedure/mark'
import type { Transcript } from '@/lib/procedure/recording'

export type Drafting = {
  readonly isRunning: boolean
  /** Share done, 0 to 1. */
  readonly done: number
  /** Time left in words. */
  readonly left: string
  readonly problem: string | undefined
  readonly start: () => void
  readonly stop: () => void
}

type Answer = {
  readonly done?: number
  readonly marks?: readonly Mark[]
  /** Why the draft as a whole is to be doubted. */
  readonly doubt?: string
  readonly problem?: string
}

/** Drafts marks from the transcript in a worker; stopping ends the worker, and nothing is changed. */
export const useDrafting = (
  transcript: Transcript | null,
  onMarks: (marks: readonly Mark[], doubt?: string) => void,
): Drafting => {
  const worker = useRef<Worker>(undefined)
  const [state, setState] = useState<{ done: number; begun: number }>()
  const [problem, setProblem] = useState<string>()

  const stop = useCallback(() => {
    worker.current?.terminate()
    worker.current = undefined
    setState(undefined)
  }, [])
  useEffect(() => stop, [stop])

  const start = () => {
    if (transcript === null) return
    stop()
    setProblem(undefined)
    setState({ done: 0, begun: performance.now() })
    const running = new Worker(new URL('./draft.worker.ts', import.meta.url), { type: 'module' })
    worker.current = running
    running.onmessage = (event: MessageEvent<Answer>) => {
      const { done, marks, doubt, problem: said } = event.data
      if (done !== undefined) setState(before => before && { ...before, done })
      if (marks !== undefined) onMarks(marks, doubt)
      if (said !== undefined) setProblem(`The draft failed: ${said}. Nothing was changed.`)
      if (marks !== undefined || said !== undefined) stop()
    }
    running.onerror = event => {
      setProblem(`The draft could not start: ${event.message}. Nothing was changed.`)
      stop()
    }
    running.postMessage(transcript)
  }

  const spent = state === undefined ? 0 : (performance.now() - state.begun) / 1000
  const seconds = state === undefined || state.done < 0.05 ? undefined : (spent / state.done) * (1 - state.done)
  return {
    isRunning: state !== undefined,
    done: state?.done ?? 0,
    left: seconds === undefined ? 'reading the talk' : `about ${Math.max(1, Math.ceil(seconds))} s left`,
    problem,
    start,
    stop,
  }
}
