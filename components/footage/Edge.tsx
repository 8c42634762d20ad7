'use client'

import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import { formatMoment } from './clock'
import styles from './footage.module.css'
import { toPixels, toSeconds, type View } from './lanes'
import type { Side } from './types'

type Props = {
  readonly side: Side
  readonly label: string
  readonly seconds: number
  readonly view: View
  /** Seconds the edge may not go below or above. */
  readonly low: number
  readonly high: number
  readonly isMoving: boolean
  readonly snap: ((seconds: number) => number) | undefined
  readonly onMove: (side: Side, seconds: number) => void
  readonly onDone: (side: Side, seconds: number) => void
}

/** How far the arrow keys move an edge, seconds: plain, and with Shift. */
const [STEP, STRIDE] = [0.1, 1]

/** How far Ctrl and an arrow look for the next pause, seconds. */
const LOOK = 10

const nextPause = (from: number, direction: number, snap: (seconds: number) => number): number => {
  for (let away = 0.05; away <= LOOK; away += 0.05) {
    const found = snap(from + direction * away)
    if ((found - from) * direction > 0.02) return found
  }
  return from
}

/** One edge of the chosen mark, to be moved with the mouse or from the keyboard. */
export const Edge = ({ side, label, seconds, view, low, high, isMoving, snap, onMove, onDone }: Props) => {
  const pending = useRef<number>(undefined)
  const limit = (value: number) => Math.round(Math.min(high, Math.max(low, value)) * 1000) / 1000
  const move = (value: number) => {
    pending.current = limit(value)
    onMove(side, pending.current)
  }
  const done = () => {
    if (pending.current === undefined) return
    const at = pending.current
    pending.current = undefined
    onDone(side, at)
  }
  const drag = (event: PointerEvent<HTMLButtonElement>) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return
    const left = event.currentTarget.parentElement?.getBoundingClientRect().left ?? 0
    const at = toSeconds(view, event.clientX - left)
    move(snap === undefined || event.altKey ? at : snap(at))
  }
  const press = (event: KeyboardEvent<HTMLButtonElement>) => {
    const direction = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0
    if (direction === 0) return
    event.preventDefault()
    event.stopPropagation()
    const from = pending.current ?? seconds
    if (event.ctrlKey && snap !== undefined) move(nextPause(from, direction, snap))
    else move(from + direction * (event.shiftKey ? STRIDE : STEP))
  }
  const x = toPixels(view, seconds)
  return (
    <>
      <button
        type="button"
        className={styles.edge}
        style={{ left: x }}
        data-moving={isMoving}
        data-side={side}
        role="slider"
        aria-label={`${side === 'start' ? 'Start' : 'End'} of ${label}`}
        aria-valuemin={low}
        aria-valuemax={high}
        aria-valuenow={seconds}
        aria-valuetext={formatMoment(seconds)}
        title="Drag, or use the arrow keys. Shift: whole seconds. Ctrl: next pause. Alt while dragging: no snapping."
        onPointerDown={event => event.currentTarget.setPointerCapture(event.pointerId)}
        onPointerMove={drag}
        onPointerUp={done}
        onPointerCancel={done}
        onKeyDown={press}
        onKeyUp={done}
        onBlur={done}
      />
      {isMoving && (
        <span className={styles.hint} style={{ left: Math.min(view.width - 40, Math.max(40, x)) }}>
          {formatMoment(seconds)}
        </span>
      )}
    </>
  )
}
