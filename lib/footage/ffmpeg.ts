import type { FFmpeg } from '@ffmpeg/ffmpeg'
import { TellwrightError } from '@/lib/procedure/problem'
import { vendored } from './vendored'
import { VOICE_RATE } from './voice-stream'

/** Footage read through ffmpeg.wasm, for codecs the browser can't decode. One call runs at a time. */
export type FfmpegFootage = {
  /** @returns the sound between two moments (seconds), 16 kHz mono; shorter or empty at the end of the footage */
  readonly soundBetween: (from: number, to: number) => Promise<Float32Array<ArrayBuffer>>
  /** @returns the frame at a moment, as PNG in full size, turned as shown; undefined where there is none */
  readonly frameAt: (at: number) => Promise<Blob | undefined>
  /**
   * Brightness of frames at a steady rate between two moments (seconds), turned as shown, row by row; the first at `from`.
   * Keep it to some seconds: the frames come at once.
   */
  readonly grayBetween: (
    from: number,
    to: number,
    size: { readonly width: number; readonly height: number; readonly perSecond: number },
  ) => Promise<readonly Uint8Array<ArrayBuffer>[]>
  /** Ends ffmpeg and frees its memory. */
  readonly close: () => void
}

const IN = '/in'
const OUT = '/out'

const load = async (): Promise<FFmpeg> => {
  const address = (name: '@ffmpeg/ffmpeg' | '@ffmpeg/core', file: string) => location.origin + vendored(name, file)
  const module = (await import(
    /* webpackIgnore: true */ /* turbopackIgnore: true */ /* @vite-ignore */ address('@ffmpeg/ffmpeg', 'index.js')
  )) as { FFmpeg: new () => FFmpeg }
  const ffmpeg = new module.FFmpeg()
  await ffmpeg.load({
    coreURL: address('@ffmpeg/core', 'ffmpeg-core.js'),
    wasmURL: address('@ffmpeg/core', 'ffmpeg-core.wasm'),
    classWorkerURL: address('@ffmpeg/ffmpeg', 'worker.js'),
  })
  return ffmpeg
}

/**
 * Starts ffmpeg.wasm (32 MB, served from our origin, GPL) with the file mounted, not copied. It takes seconds: start it once for
 * all that is to be read.
 *
 * @param signal ends it; what was asked of it throws the signal's reason then
 * @throws TellwrightError `no-ffmpeg` where it can't be loaded; the signal's reason when cancelled
 */
export const ffmpegOn = async (file: Blob, signal?: AbortSignal): Promise<FfmpegFootage> => {
  signal?.throwIfAborted()
  const ffmpeg = await load().catch((cause: unknown) => {
    throw new TellwrightError('no-ffmpeg', 'ffmpeg could not be loaded; reload the page and try again', { cause })
  })
  const end = () => {
    signal?.removeEventListener('abort', end)
    ffmpeg.terminate()
  }
  signal?.addEventListener('abort', end)
  if (signal?.aborted) end()
  signal?.throwIfAborted()
  await ffmpeg.createDir(IN)
  await ffmpeg.mount('WORKERFS' as never, { blobs: [{ name: 'footage', data: file }] }, IN)
  let queue: Promise<unknown> = Promise.resolve()
  /** Runs after what was asked for before. @returns what ffmpeg wrote; undefined where it wrote nothing */
  const make = (before: readonly string[], after: readonly string[]): Promise<Uint8Array<ArrayBuffer> | undefined> => {
    const run = async () => {
      const quiet = ['-nostdin', '-v', 'error', '-y']
      await ffmpeg.exec([...quiet, ...before, '-i', `${IN}/footage`, ...after, OUT])
      try {
        const made = (await ffmpeg.readFile(OUT)) as Uint8Array<ArrayBuffer>
        await ffmpeg.deleteFile(OUT)
        return made
      } catch {
        return undefined
      }
    }
    const result = queue.then(run).finally(() => signal?.throwIfAborted())
    queue = result.catch(() => {})
    return result
  }
  return {
    soundBetween: async (from, to) => {
      const sound = ['-vn', '-ac', '1', '-ar', String(VOICE_RATE), '-f', 'f32le']
      const made = await make(['-ss', String(from), '-t', String(to - from)], sound)
      return made === undefined ? new Float32Array() : new Float32Array(made.slice().buffer, 0, made.length >> 2)
    },
    frameAt: async at => {
      // Its JPEG encoder reaches past its memory when asked for a quality (core 0.12.10); PNG works.
      const made = await make(['-ss', String(at)], ['-an', '-frames:v', '1', '-c:v', 'png', '-f', 'image2pipe'])
      return made && made.length > 0 ? new Blob([made], { type: 'image/png' }) : undefined
    },
    grayBetween: async (from, to, { width, height, perSecond }) => {
      const filter = `fps=${perSecond}:start_time=0,scale=${width}:${height}:out_range=full,format=gray`
      const made = await make(['-ss', String(from), '-t', String(to - from)], ['-an', '-vf', filter, '-f', 'rawvideo'])
      const size = width * height
      return Array.from({ length: Math.floor((made?.length ?? 0) / size) }, (_, i) =>
        (made ?? new Uint8Array()).slice(i * size, (i + 1) * size),
      )
    },
    close: end,
  }
}
