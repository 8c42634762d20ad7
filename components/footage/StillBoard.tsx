'use client'

import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react'
import styles from './still.module.css'
import { cropBox, type Drawing, drawSigns, type Point } from './still-drawing'

/** What a stroke over the picture makes. */
export type Stroke = 'crop' | 'arrow' | 'ring'

type Props = {
  readonly picture: ImageBitmap
  readonly stroke: Stroke
  readonly drawing: Drawing
  readonly onDraw: (drawing: Drawing) => void
}

/** How far the arrow keys move the cross, share of the picture: plain, and with Shift. */
const [STEP, STRIDE] = [0.01, 0.1]

const clamp = (value: number): number => Math.min(1, Math.max(0, value))

const withStroke = (drawing: Drawing, stroke: Stroke, from: Point, to: Point): Drawing =>
  stroke === 'crop'
    ? { ...drawing, crop: { from, to } }
    : { ...drawing, signs: [...drawing.signs, { shape: stroke, from, to }] }

/** The frame to crop and draw on: drag, or move the cross with the arrow keys and set both ends with Enter. */
export const StillBoard = ({ picture, stroke, drawing, onDraw }: Props) => {
  const canvas = useRef<HTMLCanvasElement>(null)
  const [from, setFrom] = useState<Point>()
  const [cross, setCross] = useState<Point>({ x: 0.5, y: 0.5 })
  const [isKeyed, setKeyed] = useState(false)

  useEffect(() => {
    const element = canvas.current
    const pen = element?.getContext('2d')
    if (!element || !pen) return
    const { width, height } = picture
    element.width = width
    element.height = height
    pen.drawImage(picture, 0, 0)
    const shown = from === undefined ? drawing : withStroke(drawing, stroke, from, cross)
    drawSigns(pen, shown.signs, width, height)
    const box = cropBox(shown, width, height)
    pen.fillStyle = 'rgb(18 24 31 / 0.6)'
    pen.beginPath()
    pen.rect(0, 0, width, height)
    pen.rect(box.left, box.top, box.width, box.height)
    pen.fill('evenodd')
    if (!isKeyed) return
    const [x, y, arm] = [cross.x * width, cross.y * height, Math.max(width, height) / 40]
    for (const [colour, thick] of [
      ['#16202b', arm / 4],
      ['#ffffff', arm / 10],
    ] as const) {
      pen.strokeStyle = colour
      pen.lineWidth = thick
      pen.beginPath()
      pen.moveTo(x - arm, y)
      pen.lineTo(x + arm, y)
      pen.moveTo(x, y - arm)
      pen.lineTo(x, y + arm)
      pen.stroke()
    }
  }, [picture, drawing, stroke, from, cross, isKeyed])

  const pointOf = (event: PointerEvent<HTMLCanvasElement>): Point => {
    const { left, top, width, height } = event.currentTarget.getBoundingClientRect()
    return { x: clamp((event.clientX - left) / width), y: clamp((event.clientY - top) / height) }
  }
  const end = (to: Point) => {
    if (from !== undefined && Math.hypot(to.x - from.x, to.y - from.y) > STEP)
      onDraw(withStroke(drawing, stroke, from, to))
    setFrom(undefined)
  }
  const press = (event: KeyboardEvent<HTMLDivElement>) => {
    const by = event.shiftKey ? STRIDE : STEP
    const move: Record<string, Point> = {
      ArrowLeft: { x: -by, y: 0 },
      ArrowRight: { x: by, y: 0 },
      ArrowUp: { x: 0, y: -by },
      ArrowDown: { x: 0, y: by },
    }
    const step = move[event.key]
    if (step !== undefined) setCross({ x: clamp(cross.x + step.x), y: clamp(cross.y + step.y) })
    else if (event.key === 'Enter') from === undefined ? setFrom(cross) : end(cross)
    else if (event.key === 'Escape' && from !== undefined) setFrom(undefined)
    else return
    setKeyed(true)
    event.preventDefault()
    event.stopPropagation()
  }
  return (
    <div
      className={styles.frame}
      role="application"
      aria-label={`Frame to draw on: ${stroke}. Move the cross with the arrow keys, set its start and its end with Enter.`}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: drawn on with the keys as well
      tabIndex={0}
      onKeyDown={press}
    >
      <canvas
        ref={canvas}
        className={styles.board}
        onPointerDown={event => {
          event.currentTarget.setPointerCapture(event.pointerId)
          setKeyed(false)
          setFrom(pointOf(event))
          setCross(pointOf(event))
        }}
        onPointerMove={event => from !== undefined && !isKeyed && setCross(pointOf(event))}
        onPointerUp={event => !isKeyed && end(pointOf(event))}
        onPointerCancel={() => setFrom(undefined)}
      />
    </div>
  )
}
