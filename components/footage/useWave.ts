import { type RefObject, useCallback, useEffect, useRef, useState } from 'react'
import type WaveSurfer from 'wavesurfer.js'
import type { Span } from '@/lib/procedure/time'
import type { View } from './lanes'

/** Closest view, pixels a second: a syllable is about a hand wide. */
const CLOSEST = 400

/** A line without sound, until there are peaks. */
const FLAT = new Float32Array(2)

export type Wave = {
  readonly view: View
  /** Zooms by a factor around a moment. */
  readonly zoom: (factor: number, around?: number) => void
  /** Shows a span with some room beside it; the whole footage without one. */
  readonly show: (span?: Span) => void
}

const colours = (element: HTMLElement) => {
  const style = getComputedStyle(element)
  const of = (name: string, otherwise: string) => style.getPropertyValue(name).trim() || otherwise
  return {
    waveColor: of('--rule-2', '#8a8574'),
    progressColor: of('--ink-2', '#4c5661'),
    cursorColor: of('--brass', '#a87b2d'),
  }
}

/**
 * The sound drawn by wavesurfer.js from given peaks (nothing is decoded here), with its zoom and scroll as a view.
 *
 * @param onSeek told when the user clicks into the sound
 */
export const useWave = (
  container: RefObject<HTMLDivElement | null>,
  media: HTMLMediaElement | null,
  peaks: Float32Array | null,
  seconds: number,
  onSeek: (seconds: number) => void,
): Wave => {
  const wave = useRef<WaveSurfer>(undefined)
  const [isReady, setReady] = useState(0)
  const [view, setView] = useState<View>({ start: 0, end: seconds || 1, width: 1 })
  const seek = useRef(onSeek)
  seek.current = onSeek
  const scale = useRef(0)

  const look = useCallback(() => {
    const [element, width] = [wave.current, container.current?.clientWidth ?? 0]
    if (element === undefined || width === 0 || seconds <= 0) return
    const perSecond = Math.max(scale.current, width / seconds)
    const start = element.getScroll() / perSecond
    const end = Math.min(seconds, start + width / perSecond)
    setView(old => (old.start === start && old.end === end && old.width === width ? old : { start, end, width }))
  }, [container, seconds])

  useEffect(() => {
    const element = container.current
    if (element === null || seconds <= 0) return
    let isGone = false
    let made: WaveSurfer | undefined
    const dark = matchMedia('(prefers-color-scheme: dark)')
    const recolour = () => made?.setOptions(colours(element))
    const make = async () => {
      const { default: WaveSurfer } = await import('wavesurfer.js')
      if (isGone) return
      made = WaveSurfer.create({
        container: element,
        height: 90,
        ...colours(element),
        cursorWidth: 2,
        normalize: true,
        minPxPerSec: scale.current,
        ...(media === null ? {} : { media }),
        peaks: [FLAT],
        duration: seconds,
      })
      wave.current = made
      made.on('interaction', at => seek.current(at))
      for (const event of ['scroll', 'zoom', 'redraw', 'resize', 'ready'] as const) made.on(event, look)
      setReady(count => count + 1)
    }
    void make()
    dark.addEventListener('change', recolour)
    return () => {
      isGone = true
      dark.removeEventListener('change', recolour)
      wave.current = undefined
      made?.destroy()
    }
  }, [container, media, seconds, look])

  useEffect(() => {
    if (isReady === 0) return
    // A newer load takes over from one under way; that is no failure.
    wave.current?.load(media?.currentSrc ?? '', [peaks ?? FLAT], seconds).catch(() => {})
  }, [isReady, peaks, media, seconds])

  const apply = (perSecond: number, start: number) => {
    const width = container.current?.clientWidth ?? 1
    scale.current = Math.min(CLOSEST, Math.max(width / seconds, perSecond))
    wave.current?.zoom(scale.current)
    wave.current?.setScrollTime(Math.max(0, start))
    look()
  }
  return {
    view,
    zoom: (factor, around) => {
      const middle = around ?? (view.start + view.end) / 2
      const perSecond = Math.min(CLOSEST, (view.width / (view.end - view.start)) * factor)
      const share = (middle - view.start) / (view.end - view.start)
      apply(perSecond, middle - (share * view.width) / perSecond)
    },
    show: span => {
      if (span === undefined) return apply(0, 0)
      const room = Math.max(1, (span.end - span.start) * 0.25)
      const perSecond = view.width / (span.end - span.start + 2 * room)
      apply(perSecond, span.start - room)
    },
  }
}
