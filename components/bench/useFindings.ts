import { useDeferredValue, useEffect, useMemo, useState } from 'react'
import type { Project } from '@/lib/procedure/project'
import type { Finding } from '@/lib/review/rule'

type Review = (project: Project) => readonly Finding[]

const NONE: readonly Finding[] = []

/** The findings of a project, live; the rules are fetched when first needed, and typing never waits for them. */
export const useFindings = (project: Project): readonly Finding[] => {
  const [review, setReview] = useState<{ readonly run: Review }>()
  useEffect(() => {
    let isOver = false
    import('@/lib/review/review').then(({ reviewProject }) => {
      if (!isOver) setReview({ run: reviewProject })
    })
    return () => {
      isOver = true
    }
  }, [])
  const deferred = useDeferredValue(project)
  return useMemo(
    () => (review === undefined || deferred.marks.length === 0 ? NONE : review.run(deferred)),
    [review, deferred],
  )
}
