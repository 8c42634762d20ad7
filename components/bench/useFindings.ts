import { useEffect, useRef, useState } from 'react'
import type { Project } from '@/lib/procedure/project'
import type { ShopRules } from '@/lib/review/shop'
import { type FromReviewer, heardReview, openProjectTeller, type Reviewed, type ToReviewer } from './reviewing'
import { loadShopRules } from './shop-rules'

/** What is found where there is no mark. */
const NONE: Reviewed = { findings: [], coverage: { instructing: 0, covered: 0, share: 1, left: [] } }
/** What stands there until the first review is done. */
const NOT_YET: Reviewed = { ...NONE }

/** @returns whether that is a review, not what stands there before the first one is done. */
export const isReviewed = (reviewed: Reviewed): boolean => reviewed !== NOT_YET

/** One review in work at most; the newest project waits, older ones are passed over. */
const openReviewer = (onReviewed: (reviewed: Reviewed) => void) => {
  const worker = new Worker(new URL('./review.worker.ts', import.meta.url), { type: 'module' })
  const told = openProjectTeller()
  let last = NONE
  let rules: ShopRules | undefined
  let waiting: Project | undefined
  let isBusy = false
  const send = (project: Project) => {
    const message: ToReviewer = { ...told(project), ...(rules === undefined ? {} : { rules }) }
    rules = undefined
    isBusy = true
    worker.postMessage(message)
  }
  worker.onmessage = ({ data }: MessageEvent<FromReviewer>) => {
    isBusy = false
    // Heard even where it is passed over: the next one says only what changed since.
    last = heardReview(last, data)
    if (waiting === undefined) onReviewed(last)
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
export const useFindings = (project: Project): Reviewed => {
  const [reviewed, setReviewed] = useState(NOT_YET)
  const [isRuled, setRuled] = useState(false)
  const reviewer = useRef<ReturnType<typeof openReviewer>>(undefined)
  useEffect(() => {
    const opened = openReviewer(setReviewed)
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
