import { ffmpegOn } from './ffmpeg'
import type { OpenFootage } from './open'
import type { SmallFrame } from './small-picture'

/** Seconds decoded at once: what it tells, and what it lets go of when stopped, comes in such pieces. */
const PIECE = 8

export type FramesWanted = {
  /** Seconds. */
  readonly from: number
  readonly to: number
  readonly perSecond: number
  /** Pixels along the longer side. */
  readonly side: number
  readonly signal?: AbortSignal | undefined
}

/**
 * Small frames at a steady rate through ffmpeg.wasm, for a picture the browser can't decode: right, but ten times slower
 * or more. ffmpeg is ended, and its memory freed, when the caller is done, or stops.
 *
 * @throws TellwrightError `no-ffmpeg`; the signal's reason when cancelled
 */
export async function* framesByFfmpeg(footage: OpenFootage, wanted: FramesWanted): AsyncGenerator<SmallFrame> {
  const { from, to, perSecond, side, signal } = wanted
  if (footage.picture === null) return
  const shrink = Math.min(1, side / Math.max(footage.picture.width, footage.picture.height))
  const [width, height] = [footage.picture.width, footage.picture.height].map(own =>
    Math.max(1, Math.round(own * shrink)),
  ) as [number, number]
  signal?.throwIfAborted()
  const ffmpeg = await ffmpegOn(footage.file)
  const stop = () => ffmpeg.close()
  signal?.addEventListener('abort', stop, { once: true })
  try {
    for (let at = from; at < to; at += PIECE) {
      const frames = await ffmpeg
        .grayBetween(at, Math.min(to, at + PIECE), { width, height, perSecond })
        .catch(error => {
          signal?.throwIfAborted()
          throw error
        })
      signal?.throwIfAborted()
      for (const [i, luma] of frames.entries()) yield { time: at + i / perSecond, width, height, luma }
    }
  } finally {
    signal?.removeEventListener('abort', stop)
    ffmpeg.close()
  }
}
