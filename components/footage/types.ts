import type { ReactNode, Ref } from 'react'
import type { Kind } from '@/lib/procedure/kinds'
import type { Problem } from '@/lib/procedure/problem'
import type { Span } from '@/lib/procedure/time'

/** What drives the footage from outside: the talk, the keys, the sheet. Times in seconds, clamped to the footage. */
export type FootageController = {
  readonly seek: (seconds: number) => void
  readonly play: () => void
  readonly pause: () => void
  readonly toggle: () => void
  /** @param rate 1 is as filmed; 0.25 to 4 */
  readonly rate: (rate: number) => void
  /** @returns the moment shown now, seconds */
  readonly time: () => number
  /** Plays a span and stops at its end. */
  readonly playSpan: (span: Span) => void
  /** Moves by whole frames where the frame rate is known, else by 1/25 s; pauses. */
  readonly stepFrames: (frames: number) => void
}

/** What the media element says once it knows the footage. */
export type FootageReady = {
  /** Duration, seconds. */
  readonly seconds: number
  /** Size as shown, pixels; 0 for sound alone. */
  readonly width: number
  readonly height: number
  /** Hand it to SoundStrip. */
  readonly media: HTMLMediaElement
}

export type FootagePlayerProps = {
  /** The user's own file; never changed. */
  readonly file: Blob
  /** Shown as the label of the picture. */
  readonly name: string
  /** Whether there is a picture; sound alone gets no empty black box. */
  readonly hasPicture: boolean
  /** Frames a second, for stepping; absent or 0: 25. */
  readonly frameRate?: number
  /** Captions shown over the picture, as a whole WebVTT text. */
  readonly captions?: string
  readonly controller?: Ref<FootageController>
  readonly onTime?: (seconds: number) => void
  readonly onReady?: (ready: FootageReady) => void
  readonly onPlaying?: (isPlaying: boolean) => void
  readonly onProblem?: (problem: Problem) => void
  /** Further buttons at the end of the transport row. */
  readonly children?: ReactNode
}

/** A mark as the strip shows it. */
export type StripMark = Span & {
  readonly id: string
  readonly kind: Kind
  /** What a screen reader hears: "step 3, drain the sump". */
  readonly label: string
  readonly isPencilled?: boolean
}

export type Side = 'start' | 'end'

export type SoundStripProps = {
  /** From FootagePlayer's onReady; null until then (the strip still shows the sound). */
  readonly media: HTMLMediaElement | null
  /** Loudest sample a bucket, 0 to 1; null while there are none yet or for footage without sound. */
  readonly peaks: Float32Array | null
  /** Duration of the footage, seconds. */
  readonly seconds: number
  /** Spans of speech, shaded. */
  readonly speech?: readonly Span[]
  /** Picture changes, seconds: small ticks; offered as edges. */
  readonly shots?: readonly number[]
  readonly marks: readonly StripMark[]
  /** Id of the mark whose edges can be moved. */
  readonly chosen?: string
  readonly onChoose?: (id: string | undefined) => void
  /** An edge was moved with mouse or keys; called once, on letting go. */
  readonly onEdge?: (id: string, side: Side, seconds: number) => void
  readonly onSeek?: (seconds: number) => void
  /** Where an edge let go at `seconds` would land; the modifier key (Alt) passes it by. Absent: no snapping. */
  readonly snap?: (seconds: number) => number
}
