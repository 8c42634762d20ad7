import { useEffect, useRef, useState } from 'react'
import type { Project } from '@/lib/procedure/project'
import type { Transcript } from '@/lib/procedure/recording'
import { onceFor } from '@/lib/review/memo'
import type { Finding } from '@/lib/review/rule'
import type { ShopRules } from '@/lib/review/shop'
import type { FromReviewer, ToReviewer } from './review.worker'
import { loadShopRules } from './shop-rules'

/** What is found where there is no mark. */
const NONE: FromReviewer = { findings: [], coverage: { instructing: 0, covered: 0, share: 1, left: [] } }
/** What stands there until the first review is done. */
const NOT_YET: FromReviewer = { ...NONE }

/** @returns whether that is a review, not what stands there before the first one is done. */
export const isReviewed = (reviewed: FromReviewer): boolean => reviewed !== NOT_YET

/** What a finding says, all of it; one that was kept is not spelt out again. */
const keyOf = onceFor((finding: Finding): string => JSON.stringify(finding))

/**
 * Takes over from the last review what it found alike, as the same objects: so that what shows them need not be drawn anew.
 * Exported for its test.
 */
export const keptFindings = (before: readonly Finding[], now: readonly Finding[]): readonly Finding[] => {
  const known = new Map(before.map(finding => [keyOf(finding), finding]))
  return now.map(finding => known.get(keyOf(finding)) ?? finding)
}

/** One review in work at most; the newest project waits, older ones are passed over. */
const openReviewer = (onReviewed: (reviewed: FromReviewer) => void) => {
  const worker = new Worker(new URL('./review.worker.ts', import.meta.url), { type: 'module' })
  let rules: ShopRules | undefined
  let known: Transcript | null | undefined
  let waiting: Project | undefined
  let isBusy = false
  const send = (project: Project) => {
    const { transcript } = project.recording
    const light = { ...project, recording: { ...project.recording, transcript: null } }
    const message: ToReviewer = {
      project: light,
      ...(transcript === known ? {} : { transcript }),
      ...(rules === undefined ? {} : { rules }),
    }
    known = transcript
    rules = undefined
    isBusy = true
    worker.postMessage(message)
  }
  worker.onmessage = ({ data }: MessageEvent<FromReviewer>) => {
    isBusy = false
    if (waiting === undefined) onReviewed(data)
    else {
      const next = waiting
      waiting = undefined
      send(next)
    }
  }
  return {
    /** Rules go with the next review. */
    goBy: (own: ShopRules) => {
      rules = own
    },
    review: (project: Project) => {
      if (isBusy) waiting = project
      else send(project)
    },
    close: () => worker.terminate(),
  }
}

/** The findings of a project and what its marks leave over of the talk, live; reviewed in a worker. */
export const useFindings = (project: Project): FromReviewer => {
  const [reviewed, setReviewed] = useState(NOT_YET)
  const [isRuled, setRuled] = useState(false)
  const reviewer = useRef<ReturnType<typeof openReviewer>>(undefined)
  useEffect(() => {
    const opened = openReviewer(next =>
      setReviewed(last => ({ ...next, findings: keptFindings(last.findings, next.findings) })),
    )
    reviewer.current = opened
    loadShopRules()
      .then(own => {
        if (own === undefined) return
        opened.goBy(own)
        setRuled(true)
      })
      .catch(() => undefined)
    return () => {
      reviewer.current?.close()
      reviewer.current = undefined
    }
  }, [])
  const isEmpty = project.marks.length === 0
  // biome-ignore lint/correctness/useExhaustiveDependencies: reviewed anew when the shop's rules arrive
  useEffect(() => {
    if (!isEmpty) reviewer.current?.review(project)
  }, [project, isEmpty, isRuled])
  return isEmpty ? NONE : reviewed
}
