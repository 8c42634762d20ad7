import { VideoSampleSink } from 'mediabunny'
import { type Result, refusal, success } from '@/lib/procedure/problem'
import { framesByFfmpeg } from './frames-by-ffmpeg'
import type { OpenFootage } from './open'
import { changeFinder, FRAMES_PER_SECOND, type PictureChange } from './shots'
import type { SmallFrame } from './small-picture'

export type FramesOptions = {
  readonly signal?: AbortSignal
  /** @param done seconds looked at */
  readonly onProgress?: (done: number) => void
}

/** Longer side of a small frame, pixels. */
const SIDE = 64

function* moments(from: number, to: number): Generator<number> {
  for (let i = 0; from + i / FRAMES_PER_SECOND < to; i++) yield from + i / FRAMES_PER_SECOND
}

/**
 * Decodes small frames at a steady rate, one after the other, in a page or a worker; only one is in memory.
 *
 * @param footage with a picture that the browser or ffmpeg decodes
 * @returns frames of 64 pixels along the longer side, turned as they are shown; `time` is the moment asked for, seconds
 * @throws the signal's reason when cancelled
 */
export async function* smallFrames(footage: OpenFootage, options: FramesOptions = {}): AsyncGenerator<SmallFrame> {
  const { signal, onProgress } = options
  if (footage.ways.picture === 'ffmpeg') {
    const wanted = { from: 0, to: footage.seconds, perSecond: FRAMES_PER_SECOND, side: SIDE, signal }
    for await (const frame of framesByFfmpeg(footage, wanted)) {
      onProgress?.(frame.time)
      yield frame
    }
    return
  }
  const track = await footage.input?.getPrimaryVideoTrack()
  if (!track || footage.picture === null) return
  const shrink = SIDE / Math.max(footage.picture.width, footage.picture.height)
  const [width, height] = [footage.picture.width, footage.picture.height].map(side =>
    Math.max(1, Math.round(side * shrink)),
  ) as [number, number]
  const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true })
  if (context === null) return
  context.imageSmoothingQuality = 'medium'
  const first = Math.max(0, await track.getFirstTimestamp())
  const asked = [...moments(first, footage.seconds)]
  let at = 0
  for await (const sample of new VideoSampleSink(track).samplesAtTimestamps(asked)) {
    if (signal?.aborted) sample?.close()
    signal?.throwIfAborted()
    const time = asked[at++] ?? footage.seconds
    if (sample === null) continue
    sample.draw(context, 0, 0, width, height)
    sample.close()
    const { data } = context.getImageData(0, 0, width, height)
    const luma = new Uint8Array(width * height)
    // Weights of ITU-R BT.709 (from memory), in 1/256.
    for (let i = 0; i < luma.length; i++)
      luma[i] = (54 * (data[4 * i] ?? 0) + 183 * (data[4 * i + 1] ?? 0) + 19 * (data[4 * i + 2] ?? 0)) >> 8
    onProgress?.(time)
    yield { time, width, height, luma }
  }
}

/**
 * Looks through the footage for changes of the picture; see shots.ts for what counts.
 *
 * @returns changes in order of time; problem `no-picture`, or `picture-not-decodable` where neither browser nor
 *   ffmpeg decodes it, or stops on the way
 * @throws the signal's reason when cancelled; the decoder is gone by then
 */
export const findPictureChanges = async (
  footage: OpenFootage,
  options: FramesOptions = {},
): Promise<Result<readonly PictureChange[]>> => {
  const place = { file: footage.name }
  if (footage.picture === null)
    return refusal({ code: 'no-picture', message: 'there is no picture in this file to look for changes in', place })
  const refuse = (why: string) =>
    refusal({
      code: 'picture-not-decodable',
      message: `changes of the picture can't be looked for: ${why}. Save the footage as H.264, or set edges by hand`,
      place,
    })
  if (footage.ways.picture === 'none') return refuse(`nothing here can decode ${footage.picture.codec}`)
  const finder = changeFinder()
  const found: PictureChange[] = []
  try {
    for await (const frame of smallFrames(footage, options)) found.push(...finder.push(frame))
  } catch (error) {
    options.signal?.throwIfAborted()
    return refuse(error instanceof Error ? error.message : String(error))
  }
  return success([...found, ...finder.end()])
}
