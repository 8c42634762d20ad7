import { useEffect } from 'react'
import type { SessionState } from './session'

/** Asks before the page is left while something done here is in no store: not yet, not at all, or in another tab's. */
export const useUnsaved = ({ saved, history }: SessionState, isOpenElsewhere: boolean): void => {
  const isAtRisk = saved.is !== 'saved' || (isOpenElsewhere && history.past.length > 0)
  useEffect(() => {
    if (!isAtRisk) return
    const ask = (event: BeforeUnloadEvent) => event.preventDefault()
    window.addEventListener('beforeunload', ask)
    return () => window.removeEventListener('beforeunload', ask)
  }, [isAtRisk])
}
