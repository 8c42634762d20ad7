import { startTransition, useEffect, useState } from 'react'

/**
 * How many of `count` things are drawn: a first portion at once, which fills the window, then one more after the other without
 * holding anything up, until it is all.
 */
export const useGrowing = (count: number, portion: number): number => {
  const [drawn, setDrawn] = useState(portion)
  useEffect(() => {
    if (drawn >= count) return
    const next = setTimeout(() => startTransition(() => setDrawn(drawn + portion)))
    return () => clearTimeout(next)
  }, [drawn, count, portion])
  return Math.min(drawn, count)
}
