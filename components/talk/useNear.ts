import { type RefObject, useEffect, useState } from 'react'
import { PARAGRAPH } from './ranges'

/** Which paragraphs are in view or close to it, and how wide the talk is (pixels). `count`: how many are drawn. */
export const useNear = (root: RefObject<HTMLElement | null>, count: number) => {
  const [near, setNear] = useState<ReadonlySet<number>>(new Set())
  const [width, setWidth] = useState(0)

  useEffect(() => {
    const element = root.current
    if (element === null || count === 0) return
    const observer = new IntersectionObserver(
      entries =>
        setNear(before => {
          const now = new Set(before)
          for (const { target, isIntersecting } of entries) {
            const index = Number(target.getAttribute(PARAGRAPH))
            if (isIntersecting) now.add(index)
            else now.delete(index)
          }
          return now
        }),
      { root: element, rootMargin: '600px 0px' },
    )
    for (const block of element.querySelectorAll(`[${PARAGRAPH}]`)) observer.observe(block)
    return () => observer.disconnect()
  }, [root, count])

  useEffect(() => {
    const element = root.current
    if (element === null) return
    const observer = new ResizeObserver(() => setWidth(element.clientWidth))
    observer.observe(element)
    return () => observer.disconnect()
  }, [root])

  return { near, width }
}
