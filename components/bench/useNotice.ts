import { useCallback, useEffect, useState } from 'react'
import type { Session } from './session'
import { toldOf } from './told'

/**
 * The line at the foot of the bench. Each notice is a new one, so that the same words are announced twice; a change of the project
 * says what it did, so that no notice outlives what it was about.
 *
 * @param show chooses a mark that undoing or redoing is about
 */
export const useNotice = (session: Session, first: string, show: (mark: string) => void) => {
  const [notice, setNotice] = useState({ text: first, aside: '', number: 0 })
  const tell = useCallback(
    (text: string, aside = '') => setNotice(before => ({ text, aside, number: before.number + 1 })),
    [],
  )
  useEffect(() => {
    let before = session.get().history
    return session.subscribe(() => {
      const now = session.get().history
      const told = toldOf(before, now)
      before = now
      if (told === undefined) return
      tell(told.text)
      if (told.mark !== undefined) show(told.mark)
    })
  }, [session, tell, show])
  return { notice, tell }
}
