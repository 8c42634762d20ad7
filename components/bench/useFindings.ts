import { useEffect, useRef, useState } from 'react'
import type { Project } from '@/lib/procedure/project'
import type { Transcript } from '@/lib/procedure/recording'
import type { Finding } from '@/lib/review/rule'
import type { ToReviewer } from './review.worker'

const NONE: readonly Finding[] = []

/** One review in work at most; the newest project waits, older ones are passed over. */
const openReviewer = (onFindings: (findings: readonly Finding[]) => void) => {
  const worker = new Worker(new URL('./review.worker.ts', import.meta.url), { type: 'module' })
  let known: Transcript | null | undefined
  let waiting: Project | undefined
  let isBusy = false
  const send = (project: Project) => {
    const { transcript } = project.recording
    const light = { ...project, recording: { ...project.recording, transcript: null } }
    const message: ToReviewer = { project: light, ...(transcript === known ? {} : { transcript }) }
    known = transcript
    isBusy = true
    worker.postMessage(message)
  }
  worker.onmessage = ({ data }: MessageEvent<{ findings: readonly Finding[] }>) => {
    isBusy = false
    if (waiting === undefined) onFindings(data.findings)
    else {
      const next = waiting
      waiting = undefined
      send(next)
    }
  }
  return {
    review: (project: Project) => {
      if (isBusy) waiting = project
      else send(project)
    },
    close: () => worker.terminate(),
  }
}

/** The findings of a project, live; reviewed in a worker. */
export const useFindings = (project: Project): readonly Finding[] => {
  const [findings, setFindings] = useState(NONE)
  const reviewer = useRef<ReturnType<typeof openReviewer>>(undefined)
  useEffect(() => {
    reviewer.current = openReviewer(setFindings)
    return () => {
      reviewer.current?.close()
      reviewer.current = undefined
    }
  }, [])
  const isEmpty = project.marks.length === 0
  useEffect(() => {
    if (!isEmpty) reviewer.current?.review(project)
  }, [project, isEmpty])
  return isEmpty ? NONE : findings
}
