'use client'

import { type MouseEvent, useEffect, useMemo, useRef, useState, type WheelEvent } from 'react'
import { Button } from 'react-aria-components'
import { formatMoment } from './clock'
import { Edge } from './Edge'
import styles from './footage.module.css'
import { drawGround, SOUND_TOP } from './ground'
import { markAt, placeMarks } from './lanes'
import type { Side, SoundStripProps } from './types'
import { useWave } from './useWave'

/** Shortest mark that dragging leaves, seconds. */
const SHORTEST = 0.05

const NOTHING: readonly never[] = []

/** The sound of the footage with speech shaded and the marks of the visible part as brackets above it. */
export const SoundStrip = (props: SoundStripProps) => {
  const {
    media,
    peaks,
    seconds,
    speech = NOTHING,
    shots = NOTHING,
    marks,
    chosen,
    snap,
    onChoose,
    onEdge,
    onSeek,
  } = props
  const container = useRef<HTMLDivElement>(null)
  const ground = useRef<HTMLCanvasElement>(null)
  const { view, zoom, show } = useWave(container, media, peaks, seconds, at => onSeek?.(at))
  const [moving, setMoving] = useState<{ id: string; side: Side; seconds: number }>()

  const mark = marks.find(({ id }) => id === chosen)
  const moved = mark !== undefined && moving?.id === mark.id ? { [moving.side]: moving.seconds } : undefined
  const span = mark && { start: mark.start, end: mark.end, ...moved }
  const { start, end } = span ?? {}
  const placed = useMemo(() => placeMarks(marks, view), [marks, view])

  useEffect(() => {
    const canvas = ground.current
    if (canvas === null) return
    const draw = () => {
      const shown = start === undefined || end === undefined ? undefined : { start, end }
      drawGround(canvas, { view, placed, chosen, span: shown, speech, shots })
    }
    draw()
    const dark = matchMedia('(prefers-color-scheme: dark)')
    dark.addEventListener('change', draw)
    return () => dark.removeEventListener('change', draw)
  }, [view, placed, chosen, start, end, speech, shots])

  const choose = (event: MouseEvent<HTMLDivElement>) => {
    const { left, top } = event.currentTarget.getBoundingClientRect()
    const [x, y] = [event.clientX - left, event.clientY - top]
    if (y < SOUND_TOP && !(event.target instanceof HTMLButtonElement)) onChoose?.(markAt(placed, x, y)?.id)
  }
  const wheel = (event: WheelEvent<HTMLDivElement>) => {
    if (!event.ctrlKey || view.width <= 1) return
    const { left } = event.currentTarget.getBoundingClientRect()
    const share = (event.clientX - left) / view.width
    zoom(event.deltaY < 0 ? 1.25 : 0.8, view.start + share * (view.end - view.start))
  }
  const isVisible = (at: number) => at >= view.start - 0.001 && at <= view.end + 0.001
  const limits = (side: Side) =>
    side === 'start'
      ? { low: 0, high: Math.max(0, (span?.end ?? seconds) - SHORTEST) }
      : { low: (span?.start ?? 0) + SHORTEST, high: seconds }
  return (
    <section className={styles.strip} aria-label="Sound">
      {/* Marks are chosen in the talk from the keyboard; a click on a bracket is the mouse's short way. */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: see above */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: see above */}
      <div className={styles.field} onClick={choose} onWheel={wheel}>
        <canvas ref={ground} className={styles.ground} />
        <div ref={container} className={styles.wave} />
        {mark !== undefined &&
          span !== undefined &&
          onEdge !== undefined &&
          (['start', 'end'] as const)
            .filter(side => isVisible(span[side]))
            .map(side => (
              <Edge
                key={`${mark.id}-${side}`}
                side={side}
                label={mark.label}
                seconds={span[side]}
                view={view}
                {...limits(side)}
                isMoving={moving?.id === mark.id && moving.side === side}
                snap={snap}
                onMove={(_, at) => setMoving({ id: mark.id, side, seconds: at })}
                onDone={(_, at) => {
                  setMoving(undefined)
                  if (at !== mark[side]) onEdge(mark.id, side, at)
                }}
              />
            ))}
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: buttons that change the view, no form */}
      <div className={styles.views} role="group" aria-label="Part of the sound shown">
        <Button onPress={() => zoom(2, mark && isVisible(mark.start) ? mark.start : media?.currentTime)}>Closer</Button>
        <Button onPress={() => zoom(0.5)}>Wider</Button>
        <Button onPress={() => show()}>Whole</Button>
        <Button isDisabled={mark === undefined} onPress={() => show(mark)}>
          Chosen mark
        </Button>
        <output>
          {formatMoment(view.start)}–{formatMoment(view.end)}
        </output>
      </div>
    </section>
  )
}
