import {
  Conversion,
  ConversionCanceledError,
  EncodedPacketSink,
  FlacOutputFormat,
  MkvOutputFormat,
  Mp3OutputFormat,
  Mp4OutputFormat,
  OggOutputFormat,
  Output,
  type OutputFormat,
  WavOutputFormat,
  WebMOutputFormat,
} from 'mediabunny'
import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import { formatTime, type Span } from '@/lib/procedure/time'
import { blobTarget } from './blob-target'
import { copyMp4 } from './clip-copy'
import { codecName } from './codec'
import type { OpenFootage } from './open'

export type ClipOptions = {
  /**
   * `copy`: nothing is encoded anew, which takes no time and loses nothing; the picture then begins at the key frame
   * at or before the start. `exact`: the picture is encoded anew and begins at the start; the sound is still copied.
   */
  readonly way: 'copy' | 'exact'
  /** Written into the file; nothing else of the footage's own tags (place, device, date) is. */
  readonly title?: string
  /** Decibels the sound is raised by; not 0: the sound is encoded anew, as Opus (WAV stays WAV). */
  readonly gain?: number
  readonly signal?: AbortSignal
  /** @param share 0 to 1 */
  readonly onProgress?: (share: number) => void
}

export type Clip = {
  /** Outside the page's memory: slices of the footage, or in the browser's store; see write-blob.ts for writing it. */
  readonly blob: Blob
  /** With the dot, such as `.mp4`. */
  readonly extension: string
  /** What of the footage is in the file, seconds; nothing outside it is. */
  readonly span: Span
  /** Names of the codecs in the clip; null for a part that is not there. */
  readonly picture: string | null
  readonly sound: string | null
  /** What the user should know: edges moved to a key frame, a codec changed. */
  readonly notices: readonly Problem[]
}

/** Shortest clip, seconds. */
const SHORTEST = 0.1

/** Allows for the rounding of timestamps when asking for "from this packet on", seconds. */
const ROUNDING = 1e-4

/** Sound alone may begin up to a packet late without anything to be out of step with, seconds. */
const PACKET = 0.2

/** Edges nearer than this to what was asked for are not worth a word, seconds. */
const NOTABLE = 0.05

/** @returns a container that carries the footage's own codecs and that common players know */
const formatFor = ({ container, hasVideo }: OpenFootage, hasNewSound: boolean): OutputFormat => {
  if (container === 'WebM') return new WebMOutputFormat()
  if (container === 'Matroska') return new MkvOutputFormat()
  if (!hasVideo && container === 'WAVE') return new WavOutputFormat()
  if (!hasVideo && (container === 'Ogg' || hasNewSound)) return new OggOutputFormat()
  if (!hasVideo && container === 'MP3') return new Mp3OutputFormat()
  if (!hasVideo && container === 'FLAC') return new FlacOutputFormat()
  return new Mp4OutputFormat({ fastStart: false })
}

const louder = (gain: number) => {
  const factor = 10 ** (gain / 20)
  return async (sample: import('mediabunny').AudioSample) => {
    const { AudioSample } = await import('mediabunny')
    const { numberOfChannels, numberOfFrames, sampleRate, timestamp } = sample
    const data = new Float32Array(numberOfChannels * numberOfFrames)
    for (let planeIndex = 0; planeIndex < numberOfChannels; planeIndex++)
      sample.copyTo(data.subarray(planeIndex * numberOfFrames, (planeIndex + 1) * numberOfFrames), {
        planeIndex,
        format: 'f32-planar',
      })
    for (let i = 0; i < data.length; i++) data[i] = Math.max(-1, Math.min(1, (data[i] ?? 0) * factor))
    return new AudioSample({ data, format: 'f32-planar', numberOfChannels, sampleRate, timestamp })
  }
}

/** The key frame at or before the start: a copied picture can begin nowhere else. */
const keyBefore = async (footage: OpenFootage, start: number): Promise<number> => {
  const track = await footage.input?.getPrimaryVideoTrack()
  if (!track) return start
  const sink = new EncodedPacketSink(track)
  const key =
    (await sink.getKeyPacket(start + ROUNDING, { verifyKeyPackets: true })) ?? (await sink.getFirstKeyPacket())
  return Math.max(0, key?.timestamp ?? start)
}

/** A packet that begins before the span or ends after it is left out: no footage outside travels along. */
const INSIDE = { mode: 'forced', boundaryPolicy: 'shrink' } as const

const conversionsOf = async (footage: OpenFootage, output: Output, span: Span, options: ClipOptions) => {
  const { input } = footage
  if (input === null) return []
  const { way, gain = 0 } = options
  const trim = { start: Math.max(0, span.start - ROUNDING), end: span.end }
  const common = { input, output, tracks: 'primary', trim, composable: true, showWarnings: false } as const
  const picture = await Conversion.init({
    ...common,
    audio: { discard: true },
    ...(way === 'copy'
      ? { copy: INSIDE }
      : { video: { forceTranscode: true, keyFrameInterval: 1 }, trim: span, copy: false as const }),
  })
  const sound = await Conversion.init({
    ...common,
    trim: span,
    video: { discard: true },
    ...(gain === 0
      ? { copy: { ...INSIDE, shiftTolerance: footage.hasVideo ? 0 : PACKET } }
      : {
          audio: {
            forceTranscode: true,
            process: louder(gain),
            ...(footage.container === 'WAVE' ? {} : { codec: 'opus' as const }),
          },
          copy: false as const,
        }),
  })
  return [picture, sound].filter(({ utilizedTracks }) => utilizedTracks.length > 0)
}

const noticesOf = (footage: OpenFootage, asked: Span, span: Span, sound: string | null): Problem[] => {
  const place = { file: footage.name }
  const notices: Problem[] = []
  if (asked.start - span.start > NOTABLE)
    notices.push({
      code: 'edge-at-key-frame',
      message: `copied as it is, the clip begins ${(asked.start - span.start).toFixed(1)} s early, at the key frame before the step; cut it exactly to begin where the step does`,
      place,
    })
  if (footage.sound !== null && sound === null)
    notices.push({
      code: 'no-sound-in-clip',
      message: `the sound (${footage.sound.codec}) can’t be put into the clip`,
      place,
    })
  else if (footage.sound !== null && sound !== footage.sound.codec)
    notices.push({
      code: 'sound-codec-changed',
      message: `the clip’s sound is ${sound}, not ${footage.sound.codec} as in the footage; a few old players can’t play it`,
      place,
    })
  return notices
}

/**
 * Cuts a span of the footage into a file of its own. Nothing outside the span that is told is in that file, hidden or not.
 *
 * @param span seconds
 * @returns the clip; problem `span-outside`, `cannot-cut` (no container for these codecs, or no encoder)
 * @throws the signal's reason when cancelled
 */
export const cutClip = async (footage: OpenFootage, span: Span, options: ClipOptions): Promise<Result<Clip>> => {
  const { way, title, signal, onProgress, gain = 0 } = options
  const refuse = (code: string, message: string) => refusal({ code, message, place: { file: footage.name } })
  const end = Math.min(span.end, footage.seconds)
  if (!(end - span.start >= SHORTEST))
    return refuse(
      'span-outside',
      span.start < footage.seconds
        ? `the span at ${formatTime(span.start)} is too short for a clip. Move the edges of the mark apart.`
        : `the span at ${formatTime(span.start)} lies after the end of the footage, ${formatTime(footage.seconds)}. Move the edges of the mark, or shift the times of the talk.`,
    )
  if (footage.input === null) return refuse('cannot-cut', 'clips of this container can’t be cut here; save it as MP4')
  signal?.throwIfAborted()
  const start = way === 'copy' ? await keyBefore(footage, span.start) : Math.max(0, span.start)
  const inside = { start, end }
  const copied = way === 'copy' && gain === 0 ? await copyMp4(footage, inside, title) : undefined
  signal?.throwIfAborted()
  if (copied !== undefined) {
    onProgress?.(1)
    const [picture, sound] = [footage.picture?.codec ?? null, footage.sound?.codec ?? null]
    const notices = noticesOf(footage, span, inside, sound)
    return success({ blob: copied, extension: '.mp4', span: inside, picture, sound, notices })
  }
  const format = formatFor(footage, gain !== 0)
  const made = blobTarget()
  const output = new Output({ format, target: made.target })
  const conversions = await conversionsOf(footage, output, inside, options)
  const kinds = conversions.flatMap(({ utilizedTracks }) => utilizedTracks.map(({ type }) => type))
  if (kinds.length === 0 || (footage.hasVideo && !kinds.includes('video'))) {
    await output.cancel()
    return refuse(
      'cannot-cut',
      way === 'copy'
        ? 'this footage can’t be copied into a clip; cut it exactly instead'
        : 'this browser can’t encode the picture; copy the clip instead',
    )
  }
  if (title !== undefined) output.setMetadataTags({ title })
  const stop = () => void Promise.all(conversions.map(conversion => conversion.cancel())).catch(() => {})
  signal?.addEventListener('abort', stop, { once: true })
  try {
    const shares = conversions.map(() => 0)
    for (const [i, conversion] of conversions.entries())
      conversion.onProgress = share => {
        shares[i] = share
        onProgress?.(shares.reduce((sum, one) => sum + one, 0) / shares.length)
      }
    await output.start()
    await Promise.all(conversions.map(conversion => conversion.execute()))
    await output.finalize()
  } catch (error) {
    if (output.state !== 'canceled') await output.cancel().catch(() => {})
    signal?.throwIfAborted()
    if (error instanceof ConversionCanceledError) throw error
    return refuse('cannot-cut', `the clip could not be cut: ${error instanceof Error ? error.message : String(error)}`)
  } finally {
    signal?.removeEventListener('abort', stop)
  }
  const newSound = gain !== 0 && footage.container !== 'WAVE' ? codecName('opus') : (footage.sound?.codec ?? null)
  const sound = kinds.includes('audio') ? newSound : null
  return success({
    blob: made.blob(format.mimeType),
    extension: format.fileExtension,
    span: inside,
    picture: footage.picture === null ? null : way === 'exact' ? 'H.264' : footage.picture.codec,
    sound,
    notices: noticesOf(footage, span, inside, sound),
  })
}
