import { type Ref, type RefObject, useImperativeHandle, useRef } from 'react'
import type { FootageController } from './types'

/** Frames a second to step by where the footage doesn't tell. */
const USUAL_RATE = 25

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value))

/** Playing can be refused (no gesture yet, source gone); the media element's own error event tells the user. */
const start = (media: HTMLMediaElement | null): void => void media?.play().catch(() => {})

/** Puts the controller on `ref` and gives it back for the player's own buttons. */
export const useController = (
  media: RefObject<HTMLVideoElement | null>,
  frameRate: number | undefined,
  ref: Ref<FootageController> | undefined,
): FootageController => {
  const stopAt = useRef<number>(undefined)
  const { current: controller } = useRef<FootageController>({
    seek: seconds => {
      const element = media.current
      stopAt.current = undefined
      if (element === null || !Number.isFinite(seconds)) return
      element.currentTime = clamp(seconds, 0, Number.isFinite(element.duration) ? element.duration : seconds)
    },
    play: () => {
      stopAt.current = undefined
      start(media.current)
    },
    pause: () => media.current?.pause(),
    toggle: () => (media.current?.paused ? controller.play() : controller.pause()),
    rate: rate => {
      if (media.current !== null) media.current.playbackRate = clamp(rate, 0.25, 4)
    },
    time: () => media.current?.currentTime ?? 0,
    playSpan: ({ start: from, end }) => {
      controller.seek(from)
      stopAt.current = end
      start(media.current)
      const watch = () => {
        const element = media.current
        if (element === null || stopAt.current !== end) return
        if (element.currentTime >= end) {
          element.pause()
          stopAt.current = undefined
        } else requestAnimationFrame(watch)
      }
      requestAnimationFrame(watch)
    },
    stepFrames: frames => {
      controller.pause()
      controller.seek(controller.time() + frames / (rate.current || USUAL_RATE))
    },
  })
  const rate = useRef(frameRate)
  rate.current = frameRate
  useImperativeHandle(ref, () => controller, [controller])
  return controller
}
