'use client'

import { useEffect, useMemo, useRef, useState } from 'react'
import { formatMoment } from './clock'
import styles from './footage.module.css'
import { Transport } from './Transport'
import type { FootagePlayerProps } from './types'
import { useController } from './useController'
import { useObjectUrl } from './useObjectUrl'

/** MediaError codes that mean the data, not the network or the user. @source HTML Living Standard, MediaError */
const DECODE_ERRORS = new Set([3, 4])

/** The user's footage with its transport. The file is played from where it lies; nothing is copied or sent. */
export const FootagePlayer = (props: FootagePlayerProps) => {
  const { file, name, hasPicture, frameRate, captions, controller, children } = props
  const media = useRef<HTMLVideoElement>(null)
  const control = useController(media, frameRate, controller)
  const [isPlaying, setPlaying] = useState(false)
  const [speed, setSpeed] = useState(1)
  const [seconds, setSeconds] = useState(0)
  const clock = useRef<HTMLElement>(null)
  const url = useObjectUrl(file)
  const track = useMemo(
    () => (captions === undefined ? undefined : new Blob([captions], { type: 'text/vtt' })),
    [captions],
  )
  const trackUrl = useObjectUrl(track)
  const latest = useRef(props)
  latest.current = props

  useEffect(() => {
    const element = media.current
    if (element === null) return
    let frame = 0
    let told = -1
    const tell = () => {
      const now = element.currentTime
      if (now === told) return
      told = now
      if (clock.current !== null) clock.current.textContent = formatMoment(now)
      latest.current.onTime?.(now)
    }
    const run = () => {
      tell()
      frame = requestAnimationFrame(run)
    }
    const follow = () => {
      cancelAnimationFrame(frame)
      if (element.paused) tell()
      else run()
      setPlaying(!element.paused)
      latest.current.onPlaying?.(!element.paused)
    }
    const known = () => {
      const { duration, videoWidth, videoHeight } = element
      setSeconds(duration)
      if (videoWidth > 0) element.style.setProperty('--shape', `${videoWidth} / ${videoHeight}`)
      element.toggleAttribute('data-upright', videoHeight > videoWidth)
      latest.current.onReady?.({ seconds: duration, width: videoWidth, height: videoHeight, media: element })
    }
    const fail = () => {
      const { error } = element
      if (error === null || !DECODE_ERRORS.has(error.code)) return
      latest.current.onProblem?.({
        code: 'cannot-play',
        message:
          'this browser can’t play the file (its codec or its data). Marking by the transcript still works; to see it, try another browser or save the footage as MP4 with H.264 and AAC',
        place: { file: latest.current.name },
      })
    }
    const pace = () => setSpeed(element.playbackRate)
    const listeners = { play: follow, pause: follow, ended: follow, seeking: tell, seeked: tell, timeupdate: tell }
    const all: Record<string, () => void> = { ...listeners, loadedmetadata: known, error: fail, ratechange: pace }
    for (const [event, listener] of Object.entries(all)) element.addEventListener(event, listener)
    if (element.readyState > 0) known()
    return () => {
      cancelAnimationFrame(frame)
      for (const [event, listener] of Object.entries(all)) element.removeEventListener(event, listener)
    }
  }, [])

  return (
    <section className={styles.player} aria-label="Player">
      {/* One element for picture and sound alone, so that refs and listeners stay; captions are offered as a track. */}
      {/* biome-ignore lint/a11y/useMediaCaption: a transcript may not have times yet */}
      <video
        ref={media}
        className={hasPicture ? styles.picture : styles.soundOnly}
        src={url}
        preload="auto"
        playsInline
        aria-label={name}
        onClick={control.toggle}
      >
        {trackUrl !== undefined && <track kind="captions" label="Transcript" src={trackUrl} default />}
      </video>
      <Transport
        control={control}
        isPlaying={isPlaying}
        hasPicture={hasPicture}
        speed={speed}
        seconds={seconds}
        clock={clock}
      >
        {children}
      </Transport>
    </section>
  )
}
