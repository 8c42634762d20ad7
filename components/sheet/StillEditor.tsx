'use client'

import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Dialog } from '@/components/ui/Dialog'
import { Field } from '@/components/ui/Field'
import { arrowLines, drawOn, insidePicture, type Shape } from '@/lib/footage/draw'
import styles from './still.module.css'

type Props = {
  readonly picture: Blob
  readonly alt: string
  readonly onDone: (picture: Blob, alt: string) => void
  readonly onClose: () => void
}

const FRESH: Readonly<Record<Shape['is'], Shape>> = {
  ring: { is: 'ring', x: 0.35, y: 0.35, w: 0.3, h: 0.3 },
  arrow: { is: 'arrow', x: 0.2, y: 0.2, w: 0.2, h: 0.2 },
  crop: { is: 'crop', x: 0.1, y: 0.1, w: 0.8, h: 0.8 },
}

const WORDS: Readonly<Record<Shape['is'], string>> = { ring: 'ring', arrow: 'arrow', crop: 'part to keep' }

/** Share of the picture an arrow key moves a shape by. */
const STEP = 0.01

const outline = ({ is, x, y, w, h }: Shape): string => {
  if (is === 'arrow')
    return arrowLines(x * 100, y * 100, w * 100, h * 100, 4)
      .map(([px, py], i) => `${i === 0 ? 'M' : 'L'}${px} ${py}`)
      .join('')
  if (is === 'crop') return `M${x * 100} ${y * 100}h${w * 100}v${h * 100}h${-w * 100}Z`
  const [rx, ry] = [w * 50, h * 50]
  return `M${x * 100} ${y * 100 + ry}a${rx} ${ry} 0 1 0 ${2 * rx} 0a${rx} ${ry} 0 1 0 ${-2 * rx} 0Z`
}

const moved = (shape: Shape, dx: number, dy: number, isSize: boolean): Shape =>
  insidePicture(
    isSize ? { ...shape, w: shape.w + dx, h: shape.h + dy } : { ...shape, x: shape.x + dx, y: shape.y + dy },
  )

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-STEP, 0],
  ArrowRight: [STEP, 0],
  ArrowUp: [0, -STEP],
  ArrowDown: [0, STEP],
}

/** Rings, arrows and the part to keep, laid on a still by mouse or keys, and its alternative text. */
export const StillEditor = ({ picture, alt, onDone, onClose }: Props) => {
  const [shapes, setShapes] = useState<readonly Shape[]>([])
  const [words, setWords] = useState(alt)
  const [problem, setProblem] = useState<string>()
  const frame = useRef<HTMLDivElement>(null)
  const drag = useRef<{ readonly index: number; readonly isSize: boolean; x: number; y: number }>(undefined)
  const url = useMemo(() => URL.createObjectURL(picture), [picture])
  useEffect(() => () => URL.revokeObjectURL(url), [url])

  const change = (index: number, next: (shape: Shape) => Shape) =>
    setShapes(shapes.map((shape, i) => (i === index ? next(shape) : shape)))
  const onKeyDown = (index: number) => (event: KeyboardEvent) => {
    const by = ARROWS[event.key]
    if (by !== undefined) change(index, shape => moved(shape, by[0], by[1], event.shiftKey))
    else if (event.key === 'Delete' || event.key === 'Backspace') setShapes(shapes.filter((_, i) => i !== index))
    else return
    event.preventDefault()
  }
  const grip = (index: number, isSize: boolean) => (event: PointerEvent) => {
    event.preventDefault()
    frame.current?.setPointerCapture(event.pointerId)
    drag.current = { index, isSize, x: event.clientX, y: event.clientY }
  }
  const pull = (event: PointerEvent) => {
    const held = drag.current
    const box = frame.current?.getBoundingClientRect()
    if (held === undefined || box === undefined) return
    const [dx, dy] = [(event.clientX - held.x) / box.width, (event.clientY - held.y) / box.height]
    held.x = event.clientX
    held.y = event.clientY
    change(held.index, shape => moved(shape, dx, dy, held.isSize))
  }
  const done = async () => {
    if (words.trim() === '')
      return setProblem('Say in a few words what the picture shows: it is read to those who can’t see it.')
    try {
      onDone(shapes.length === 0 ? picture : await drawOn(picture, shapes), words.trim())
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error))
    }
  }

  return (
    <Dialog title="The still of this step" onClose={onClose} wide>
      <div className={styles.tools}>
        {(['ring', 'arrow', 'crop'] as const).map(is => (
          <Button key={is} onClick={() => setShapes([...shapes, FRESH[is]])}>
            {is === 'crop' ? 'Keep only a part' : `Draw a ${is === 'arrow' ? 'pointer' : 'ring'}`}
          </Button>
        ))}
        <small>
          Drag a shape to move it, its corner to size it; or arrow keys, with Shift for the size, Delete to take it
          away.
        </small>
      </div>
      <div
        ref={frame}
        className={styles.frame}
        onPointerMove={pull}
        onPointerUp={() => {
          drag.current = undefined
        }}
      >
        <img src={url} alt={words} draggable={false} />
        <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
          {shapes.map((shape, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no other identity than their place
            <g key={index}>
              <path d={outline(shape)} className={styles.halo} />
              <path d={outline(shape)} className={styles.stroke} data-is={shape.is} />
            </g>
          ))}
        </svg>
        {shapes.map((shape, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no other identity than their place
          <div key={index}>
            <button
              type="button"
              className={styles.grip}
              style={{ left: `${shape.x * 100}%`, top: `${shape.y * 100}%` }}
              aria-label={`${WORDS[shape.is]} ${index + 1}`}
              onPointerDown={grip(index, false)}
              onKeyDown={onKeyDown(index)}
            />
            <button
              type="button"
              tabIndex={-1}
              className={styles.corner}
              style={{ left: `${(shape.x + shape.w) * 100}%`, top: `${(shape.y + shape.h) * 100}%` }}
              aria-label={`size of ${WORDS[shape.is]} ${index + 1}`}
              onPointerDown={grip(index, true)}
            />
          </div>
        ))}
      </div>
      <Field
        label="What the picture shows (alternative text)"
        value={words}
        onDone={typed => {
          setWords(typed)
          setProblem(undefined)
          return undefined
        }}
      />
      {problem !== undefined && <p role="alert">{problem}</p>}
      <div className={styles.tools}>
        <Button look="main" onClick={() => void done()}>
          Take this still
        </Button>
        <Button look="quiet" onClick={onClose}>
          Leave it
        </Button>
      </div>
    </Dialog>
  )
}
