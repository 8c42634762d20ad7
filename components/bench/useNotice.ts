import { useCallback, useState } from 'react'

/** The line at the foot of the bench. Each notice is a new one, so that the same words are announced twice. */
export const useNotice = (first: string) => {
  const [notice, setNotice] = useState({ text: first, number: 0 })
  const tell = useCallback((text: string) => setNotice(before => ({ text, number: before.number + 1 })), [])
  return { notice, tell }
}
