import { useEffect, useState } from 'react'

const SLOT = 'tellwright:single-keys'

/** Whether letters by themselves work as keys; kept in this browser. @source WCAG 2.2, 2.1.4 (from memory) */
export const useSingleKeys = () => {
  const [isOn, setOn] = useState(true)
  useEffect(() => setOn(localStorage.getItem(SLOT) !== 'off'), [])
  const set = (on: boolean) => {
    localStorage.setItem(SLOT, on ? 'on' : 'off')
    setOn(on)
  }
  return [isOn, set] as const
}
