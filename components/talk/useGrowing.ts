import { startTransition, useEffect, useState } from 'react'

/** Paragraphs drawn at once: the first fills the window, the others follow without holding anything up. */
const PORTION = 48

/** @returns how many of `count` paragraphs are drawn: a first portion at once, then more until it is all. */
export const useGrowing = (count: number): number => {
  const [drawn, setDrawn] = useState(PORTION)
  useEffect(() => {
    if (drawn >= count) return
    const next = setTimeout(() => startTransition(() => setDrawn(drawn + PORTION)))
    return () => clearTimeout(next)
  }, [drawn, count])
  return Math.min(drawn, count)
}
