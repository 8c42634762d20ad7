import { CanvasSink, type InputVideoTrack } from 'mediabunny'
import { type Result, refusal, success } from '@/lib/procedure/problem'
import type { Span } from '@/lib/procedure/time'
import { type FfmpegFootage, ffmpegOn } from './ffmpeg'
import { framesThrough } from './frames-by-ffmpeg'
import type { OpenFootage } from './open'
import { type FrameMeasure, measureFrame, type Plane, pickStills } from './still-measure'

/** A frame as a picture of its own. */
export type Still = {
  /** The frame's own moment, seconds. */
  readonly time: number
  readonly width: number
  readonly height: number
  /** JPEG, turned as shown. */
  readonly picture: Blob
}

/** A proposed frame with what was measured of it. */
export type ProposedStill = Still & { readonly measure: FrameMeasure }

/** Frames looked at for a proposal: at most so many, evenly spread over the span. */
const LOOKED_AT = 24

/** Width frames are measured at, pixels: sharpness is told well enough and it is quick. */
const MEASURED_WIDTH = 480

/** Seconds before a frame that steadiness is told from. */
const BEFORE = 0.08

/** Quality of the JPEG, 0 to 1. */
const QUALITY = 0.92

type Canvas = HTMLCanvasElement | OffscreenCanvas

const trackOf = async (footage: OpenFootage): Promise<Result<InputVideoTrack>> => {
  const place = { file: footage.name }
  const track = (await footage.input?.getPrimaryVideoTrack()) ?? null
  if (track === null) return refusal({ code: 'no-picture', message: 'there is no picture to take a still from', place })
  if (footage.ways.picture !== 'browser')
    return refusal({
      code: 'picture-not-decodable',
      message: `this browser can’t decode ${footage.picture?.codec ?? 'the picture'}, so no still can be taken; try another browser or save the footage as H.264`,
      place,
    })
  return success(track)
}

const toJpeg = async (canvas: Canvas): Promise<Blob> => {
  if ('convertToBlob' in canvas) return canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY })
  return new Promise((resolve, reject) =>
    canvas.toBlob(blob => (blob === null ? reject(new Error('no picture')) : resolve(blob)), 'image/jpeg', QUALITY),
  )
}

/** Brightness of each pixel. @source ITU-R BT.709 luma weights (from memory) */
const brightnessOf = (canvas: Canvas): Plane => {
  const { width, height } = canvas
  const pen = canvas.getContext('2d') as CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D | null
  const data = pen?.getImageData(0, 0, width, height).data ?? new Uint8ClampedArray(4 * width * height)
  const values = new Float32Array(width * height)
  for (let i = 0; i < values.length; i++)
    values[i] = 0.2126 * (data[4 * i] ?? 0) + 0.7152 * (data[4 * i + 1] ?? 0) + 0.0722 * (data[4 * i + 2] ?? 0)
  return { width, height, values }
}

const noFrame = ({ name }: OpenFootage, at: number) =>
  refusal({ code: 'no-frame', message: `there is no frame at ${at.toFixed(2)} s`, place: { file: name } })

/** Does it with an ffmpeg that is ended afterwards, for its memory. */
const withFfmpeg = async <T>(
  footage: OpenFootage,
  work: (ffmpeg: FfmpegFootage) => Promise<T>,
  signal?: AbortSignal,
): Promise<T> => {
  const ffmpeg = await ffmpegOn(footage.file, signal)
  return work(ffmpeg).finally(ffmpeg.close)
}

const stillByFfmpeg = async (ffmpeg: FfmpegFootage, footage: OpenFootage, at: number): Promise<Result<Still>> => {
  const time = Math.min(Math.max(0, at), Math.max(0, footage.seconds - 0.1))
  const picture = await ffmpeg.frameAt(time)
  if (picture === undefined) return noFrame(footage, at)
  const bitmap = await createImageBitmap(picture)
  const { width, height } = bitmap
  const canvas = new OffscreenCanvas(width, height)
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0)
  bitmap.close()
  return success({ time, width, height, picture: await toJpeg(canvas) })
}

const clampTo = async (track: InputVideoTrack, at: number, seconds: number): Promise<number> =>
  Math.min(Math.max(at, await track.getFirstTimestamp(), 0), Math.max(0, seconds - 0.001))

/**
 * The frame shown at a moment, in full size.
 *
 * @param at seconds; clamped to the footage
 * @returns a JPEG; problem `no-picture`, `picture-not-decodable`, `no-frame`
 */
export const stillAt = async (footage: OpenFootage, at: number): Promise<Result<Still>> => {
  if (footage.ways.picture === 'ffmpeg') return withFfmpeg(footage, ffmpeg => stillByFfmpeg(ffmpeg, footage, at))
  const track = await trackOf(footage)
  if (!track.ok) return track
  const sink = new CanvasSink(track.value)
  const frame = await sink.getCanvas(await clampTo(track.value, at, footage.seconds))
  if (frame === null) return noFrame(footage, at)
  const { width, height } = frame.canvas
  return success({ time: frame.timestamp, width, height, picture: await toJpeg(frame.canvas) })
}

/** Moments looked at, each with one just before it to tell whether the camera holds still. */
const momentsIn = ({ start, end }: Span): readonly number[] => {
  const count = Math.max(3, Math.min(LOOKED_AT, Math.floor((end - start) * 4)))
  const step = (end - start) / count
  return Array.from({ length: count }, (_, i) => start + step * (i + 0.5))
}

type Measured = { readonly first: number; readonly last: number; readonly measures: readonly FrameMeasure[] }

const measureHere = async (footage: OpenFootage, span: Span, signal?: AbortSignal): Promise<Result<Measured>> => {
  const track = await trackOf(footage)
  if (!track.ok) return track
  const first = await clampTo(track.value, span.start, footage.seconds)
  const last = await clampTo(track.value, span.end, footage.seconds)
  const width = Math.min(MEASURED_WIDTH, footage.picture?.width ?? MEASURED_WIDTH)
  const sink = new CanvasSink(track.value, { width, poolSize: 2 })
  const pairs = momentsIn({ start: first, end: Math.max(first + 0.01, last) }).flatMap(at => [
    Math.max(first, at - BEFORE),
    at,
  ])
  const measures: FrameMeasure[] = []
  let before: { plane: Plane; time: number } | undefined
  let i = 0
  for await (const frame of sink.canvasesAtTimestamps(pairs)) {
    signal?.throwIfAborted()
    const isSecond = i++ % 2 === 1
    if (frame === null) continue
    const plane = brightnessOf(frame.canvas)
    if (isSecond && !measures.some(({ time }) => time === frame.timestamp))
      measures.push(measureFrame(frame.timestamp, plane, before?.time === frame.timestamp ? undefined : before?.plane))
    before = { plane, time: frame.timestamp }
  }
  return success({ first, last, measures })
}

/** The same through ffmpeg, from one pass over the span. */
const measureByFfmpeg = async (ffmpeg: FfmpegFootage, footage: OpenFootage, span: Span): Promise<Result<Measured>> => {
  const [from, to] = [Math.max(0, span.start), Math.min(span.end, footage.seconds)]
  const moments = [...momentsIn({ start: from, end: Math.max(from + 0.01, to) })]
  const measures: FrameMeasure[] = []
  let before: Plane | undefined
  const wanted = { from, to, perSecond: 1 / BEFORE, side: MEASURED_WIDTH }
  for await (const frame of framesThrough(ffmpeg, footage, wanted)) {
    const { width, height, luma } = frame
    const plane = { width, height, values: Float32Array.from(luma) }
    if (frame.time >= (moments[0] ?? Number.POSITIVE_INFINITY)) {
      while (frame.time >= (moments[0] ?? Number.POSITIVE_INFINITY)) moments.shift()
      measures.push(measureFrame(frame.time, plane, before))
    }
    before = plane
  }
  return success({ first: from, last: to, measures })
}

/** What a proposal asks of footage, by whichever way its picture is decoded. */
type Way = {
  readonly measure: (span: Span) => Promise<Result<Measured>>
  readonly still: (at: number) => Promise<Result<Still>>
}

const propose = async (way: Way, span: Span, count: number, signal?: AbortSignal) => {
  const measured = await way.measure(span)
  if (!measured.ok) return measured
  const { first, last, measures } = measured.value
  const stills: ProposedStill[] = []
  for (const measure of pickStills(measures, count, last - first)) {
    signal?.throwIfAborted()
    const still = await way.still(measure.time)
    if (still.ok) stills.push({ ...still.value, measure })
  }
  return success(stills)
}

/**
 * Proposes three frames of a span: sharp, steady and well exposed, by measurement, and apart from each other.
 *
 * @param span seconds
 * @returns the best first, in full size; fewer where the span has fewer frames; problems as for `stillAt`
 * @throws the signal's reason when cancelled
 */
export const proposeStills = async (
  footage: OpenFootage,
  span: Span,
  { signal, count = 3 }: { readonly signal?: AbortSignal; readonly count?: number } = {},
): Promise<Result<readonly ProposedStill[]>> => {
  if (footage.ways.picture !== 'ffmpeg') {
    const here: Way = {
      measure: part => measureHere(footage, part, signal),
      still: at => stillAt(footage, at),
    }
    return propose(here, span, count, signal)
  }
  // One ffmpeg for the look and the stills: starting it takes longer than most of what is asked of it.
  const through = (ffmpeg: FfmpegFootage): Way => ({
    measure: part => measureByFfmpeg(ffmpeg, footage, part),
    still: at => stillByFfmpeg(ffmpeg, footage, at),
  })
  return withFfmpeg(footage, ffmpeg => propose(through(ffmpeg), span, count, signal), signal)
}
