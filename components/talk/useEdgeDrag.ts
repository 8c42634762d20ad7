import { type PointerEvent, type RefObject, useRef } from 'react'
import type { Mark } from '@/lib/procedure/mark'
import { toMilliseconds } from '@/lib/procedure/time'
import type { Talk, WordRange } from '@/lib/transcript/talk'
import { wordsCovered } from './brackets'
import { PARAGRAPH, wordAtPoint } from './ranges'

type Side = 'start' | 'end'

type Options = {
  readonly root: RefObject<HTMLElement | null>
  readonly talk: Talk
  /** The chosen mark: the only one whose edges can be dragged. */
  readonly mark: Mark | undefined
  readonly onShow: (range: WordRange | undefined) => void
  /** @param seconds of footage, where the first word begins or the last one ends */
  readonly onEdge: (id: string, side: Side, seconds: number) => void
}

/** Dragging the ends of the chosen mark's bracket over the words. */
export const useEdgeDrag = ({ root, talk, mark, onShow, onEdge }: Options) => {
  const dragging = useRef<Side>(undefined)

  const wordUnder = (event: PointerEvent, side: Side): number | undefined => {
    const text = root.current?.querySelector(`[${PARAGRAPH}]`)?.getBoundingClientRect()
    if (text === undefined) return undefined
    const inText = Math.max(text.left + 2, Math.min(text.right - 2, event.clientX))
    const x = event.clientX <= text.right ? inText : side === 'start' ? text.left + 2 : text.right - 2
    return wordAtPoint(talk, x, event.clientY)
  }
  const rangeUnder = (event: PointerEvent): WordRange | undefined => {
    const side = dragging.current
    const range = mark && wordsCovered(talk, mark)
    const word = side && wordUnder(event, side)
    if (side === undefined || range === undefined || word === undefined) return undefined
    return side === 'start'
      ? { from: Math.min(word, range.to - 1), to: range.to }
      : { from: range.from, to: Math.max(word + 1, range.from + 1) }
  }
  return {
    onPointerDown: (event: PointerEvent) => {
      const side = (event.target as HTMLElement).dataset.edge
      if (side !== 'start' && side !== 'end') return
      event.preventDefault()
      dragging.current = side
      event.currentTarget.setPointerCapture(event.pointerId)
    },
    onPointerMove: (event: PointerEvent) => {
      if (dragging.current !== undefined) onShow(rangeUnder(event))
    },
    onPointerUp: (event: PointerEvent) => {
      const side = dragging.current
      const range = rangeUnder(event)
      dragging.current = undefined
      if (side === undefined || range === undefined || mark === undefined) return
      const seconds = side === 'start' ? talk.words[range.from]?.start : talk.words[range.to - 1]?.end
      if (seconds !== undefined) onEdge(mark.id, side, toMilliseconds(seconds))
    },
    onPointerCancel: () => {
      dragging.current = undefined
      onShow(mark && wordsCovered(talk, mark))
    },
  }
}
