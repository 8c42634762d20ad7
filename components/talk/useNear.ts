import { type RefObject, useEffect, useRef, useState } from 'react'
import { PORTION_NAME } from './TalkPortion'

/** Which portions are in view or close to it, and how wide the talk is (pixels). `count`: how many are drawn. */
export const useNear = (root: RefObject<HTMLElement | null>, count: number) => {
  const [near, setNear] = useState<ReadonlySet<number>>(new Set())
  const [width, setWidth] = useState(0)

  const watched = useRef<{ readonly observer: IntersectionObserver; readonly portions: Set<Element> }>(undefined)

  useEffect(() => {
    const observer = new IntersectionObserver(
      entries =>
        setNear(before => {
          const now = new Set(before)
          for (const { target, isIntersecting } of entries) {
            const at = Number(target.getAttribute(PORTION_NAME))
            if (isIntersecting) now.add(at)
            else now.delete(at)
          }
          return now
        }),
      { root: root.current, rootMargin: '600px 0px' },
    )
    watched.current = { observer, portions: new Set() }
    return () => observer.disconnect()
  }, [root])
  // biome-ignore lint/correctness/useExhaustiveDependencies: more are drawn than before
  useEffect(() => {
    const { observer, portions } = watched.current ?? {}
    if (observer === undefined || portions === undefined) return
    const now = new Set(root.current?.querySelectorAll(`[${PORTION_NAME}]`))
    for (const portion of now) if (!portions.has(portion)) observer.observe(portion)
    for (const portion of portions) if (!now.has(portion)) observer.unobserve(portion)
    if (watched.current !== undefined) watched.current = { observer, portions: now }
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
