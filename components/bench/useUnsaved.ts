import { useEffect, useSyncExternalStore } from 'react'
import { untaken } from '@/components/ui/typing'
import type { Session, SessionState } from './session'

/** @returns how many fields hold words that are not in the project yet. */
export const useUntaken = (): number => useSyncExternalStore(untaken.subscribe, untaken.count, () => 0)

/**
 * Takes over what stands in a field when the page goes or is put away, and keeps what no save has reached. Asks before the page is
 * left while something done here is in no store: not yet, not at all, or in another tab's.
 */
export const useUnsaved = (session: Session, { saved, history }: SessionState, isOpenElsewhere: boolean): void => {
  const isAtRisk = useUntaken() > 0 || saved.is !== 'saved' || (isOpenElsewhere && history.past.length > 0)
  useEffect(() => {
    const keep = () => {
      untaken.takeAll()
      session.keepLast()
    }
    const onHide = () => document.visibilityState === 'hidden' && keep()
    document.addEventListener('visibilitychange', onHide)
    window.addEventListener('pagehide', keep)
    return () => {
      document.removeEventListener('visibilitychange', onHide)
      window.removeEventListener('pagehide', keep)
    }
  }, [session])
  useEffect(() => {
    if (!isAtRisk) return
    const ask = (event: BeforeUnloadEvent) => {
      untaken.takeAll()
      event.preventDefault()
    }
    window.addEventListener('beforeunload', ask)
    return () => window.removeEventListener('beforeunload', ask)
  }, [isAtRisk])
}
