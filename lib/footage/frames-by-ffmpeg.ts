import { type FfmpegFootage, ffmpegOn } from './ffmpeg'
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
 * or more. Whoever started ffmpeg ends it.
 *
 * @throws the reason of the signal ffmpeg was started with, when cancelled
 */
export async function* framesThrough(
  ffmpeg: FfmpegFootage,
  footage: OpenFootage,
  { from, to, perSecond, side }: Omit<FramesWanted, 'signal'>,
): AsyncGenerator<SmallFrame> {
  if (footage.picture === null) return
  const shrink = Math.min(1, side / Math.max(footage.picture.width, footage.picture.height))
  const [width, height] = [footage.picture.width, footage.picture.height].map(own =>
    Math.max(1, Math.round(own * shrink)),
  ) as [number, number]
  for (let at = from; at < to; at += PIECE) {
    const frames = await ffmpeg.grayBetween(at, Math.min(to, at + PIECE), { width, height, perSecond })
    for (const [i, luma] of frames.entries()) yield { time: at + i / perSecond, width, height, luma }
  }
}

/**
 * The same with an ffmpeg of its own, which is ended, and its memory freed, when the caller is done, or stops.
 *
 * @throws TellwrightError `no-ffmpeg`; the signal's reason when cancelled
 */
export async function* framesByFfmpeg(footage: OpenFootage, wanted: FramesWanted): AsyncGenerator<SmallFrame> {
  const ffmpeg = await ffmpegOn(footage.file, wanted.signal)
  try {
    yield* framesThrough(ffmpeg, footage, wanted)
  } finally {
    ffmpeg.close()
  }
}
