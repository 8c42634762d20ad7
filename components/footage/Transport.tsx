'use client'

import type { ReactNode, RefObject } from 'react'
import { Button } from 'react-aria-components'
import { formatMoment, JUMP } from './clock'
import styles from './footage.module.css'
import type { FootageController } from './types'

const SPEEDS = [0.5, 0.75, 1, 1.25, 1.5, 2]

type Props = {
  readonly control: FootageController
  readonly isPlaying: boolean
  readonly hasPicture: boolean
  readonly speed: number
  /** Duration; NaN or 0 while unknown. */
  readonly seconds: number
  readonly clock: RefObject<HTMLElement | null>
  readonly children?: ReactNode
}

/** Play, move, speed and the moment shown. */
export const Transport = ({ control, isPlaying, hasPicture, speed, seconds, clock, children }: Props) => {
  const move = (by: number) => () => control.seek(control.time() + by)
  return (
    // biome-ignore lint/a11y/useSemanticElements: a toolbar of buttons, no form
    <div className={styles.transport} role="group" aria-label="Transport">
      <Button className={styles.playing ?? ''} onPress={control.toggle}>
        {isPlaying ? 'Pause' : 'Play'}
      </Button>
      <Button aria-label={`Back ${JUMP} seconds`} onPress={move(-JUMP)}>
        −{JUMP} s
      </Button>
      <Button aria-label={`On ${JUMP} seconds`} onPress={move(JUMP)}>
        +{JUMP} s
      </Button>
      {hasPicture && (
        <>
          <Button aria-label="Back one frame" onPress={() => control.stepFrames(-1)}>
            −1 frame
          </Button>
          <Button aria-label="On one frame" onPress={() => control.stepFrames(1)}>
            +1 frame
          </Button>
        </>
      )}
      <label>
        <span className={styles.speed}>Speed</span>
        <select
          aria-label="Speed"
          title="Speed"
          value={speed}
          onChange={event => control.rate(Number(event.target.value))}
        >
          {(SPEEDS.includes(speed) ? SPEEDS : [...SPEEDS, speed].sort((a, b) => a - b)).map(rate => (
            <option key={rate} value={rate}>
              {rate}×
            </option>
          ))}
        </select>
      </label>
      {children}
      <span className={styles.clock}>
        <b ref={clock}>{formatMoment(control.time())}</b>
        <span> / {seconds > 0 ? formatMoment(seconds) : '…'}</span>
      </span>
    </div>
  )
}
