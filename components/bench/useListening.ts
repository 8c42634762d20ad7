import { useEffect, useRef, useState } from 'react'
import type { Listened } from '@/lib/footage/listen'
import type { OpenFootage } from '@/lib/footage/open'
import { formatProblem } from '@/lib/procedure/problem'
import { formatTime, type Span } from '@/lib/procedure/time'
import { benchStore } from './laying'

export type Listening = {
  readonly peaks: Float32Array | null
  readonly speech: readonly Span[]
  /** How far it is, in words; undefined when it does not run. */
  readonly running: string | undefined
  readonly problem: string | undefined
  readonly stop: () => void
  readonly again: () => void
}

const cache = {
  get: async (key: string) => (await benchStore().madeOf(key)) as Listened | undefined,
  put: (key: string, value: Listened) => benchStore().keepMade(key, value),
}

/** Listens to the footage in a worker for peaks and speech; kept by fingerprint, so that reopening is instant. */
export const useListening = (opened: OpenFootage | undefined, fingerprint: string | undefined): Listening => {
  const [heard, setHeard] = useState<{ peaks: Float32Array; speech: readonly Span[] }>()
  const [running, setRunning] = useState<string>()
  const [problem, setProblem] = useState<string>()
  const [attempt, setAttempt] = useState(0)
  const control = useRef<AbortController>(undefined)

  // biome-ignore lint/correctness/useExhaustiveDependencies: attempt is no input, it asks to listen again
  useEffect(() => {
    if (opened === undefined || !opened.hasSound) return
    const abort = new AbortController()
    control.current = abort
    setProblem(undefined)
    setRunning('Listening to the sound')
    const hearing = import('@/lib/footage/listen').then(({ listen }) =>
      listen(opened, {
        signal: abort.signal,
        cache,
        ...(fingerprint === undefined || fingerprint === '' ? {} : { fingerprint }),
        onProgress: ({ done, total, left, peaks }) => {
          if (abort.signal.aborted) return
          setHeard(before => ({ peaks, speech: before?.speech ?? [] }))
          const rest = left === undefined ? '' : `, about ${formatTime(left)} left`
          setRunning(`Listening to the sound: ${Math.round((100 * done) / total)} %${rest}`)
        },
      }),
    )
    hearing
      .then(result => {
        if (result.ok) setHeard(result.value)
        else setProblem(result.problems.map(formatProblem).join(' '))
      })
      .catch((error: unknown) => {
        if (!abort.signal.aborted) setProblem(error instanceof Error ? error.message : String(error))
      })
      .finally(() => {
        if (control.current === abort) setRunning(undefined)
      })
    return () => abort.abort(new DOMException('left', 'AbortError'))
  }, [opened, fingerprint, attempt])

  return {
    peaks: heard?.peaks ?? null,
    speech: heard?.speech ?? [],
    running,
    problem,
    stop: () => {
      control.current?.abort(new DOMException('stopped', 'AbortError'))
      setRunning(undefined)
    },
    again: () => setAttempt(attempt + 1),
  }
}
