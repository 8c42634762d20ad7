import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import type { Span } from '@/lib/procedure/time'
import { decodingFor } from './decode-here'
import type { FromListener, ToListener } from './listen-messages'
import type { OpenFootage } from './open'
import { PEAKS_PER_SECOND, type Peaks, silentPeaks } from './peaks'

/** What one pass over the sound tells. */
export type Listened = Peaks & {
  /** Spans of speech, in order; empty where there is none. */
  readonly speech: readonly Span[]
}

/** Where what was listened to is kept, so that reopening is instant; values are plain data that IndexedDB can hold. */
export type ListenCache = {
  readonly get: (key: string) => Promise<Listened | undefined>
  readonly put: (key: string, value: Listened) => Promise<void>
}

/** How far listening is. */
export type ListenProgress = {
  /** Seconds of sound listened to. */
  readonly done: number
  /** Seconds of sound altogether. */
  readonly total: number
  /** Seconds of waiting left, as far as can be told; undefined in the first second. */
  readonly left?: number
  /** Peaks so far: whole length, 0 where not listened to yet. A new array each time. */
  readonly peaks: Float32Array
}

export type ListenOptions = {
  readonly signal?: AbortSignal
  readonly onProgress?: (progress: ListenProgress) => void
  /** With the fingerprint of the file. */
  readonly cache?: ListenCache
  readonly fingerprint?: string
}

/** Raise it when what is stored changes its meaning. */
const CACHE_VERSION = 1

/** Milliseconds between two reports. */
const REPORT_EVERY = 250

/**
 * Listens to the footage once, in a worker, in a stream: peaks for the sound strip and spans of speech.
 *
 * @param footage opened, with sound
 * @returns what was heard, from the cache where it is known already; problem `no-sound`, `sound-unreadable`
 * @throws the signal's reason when cancelled; worker and decoders are gone by then
 */
export const listen = async (footage: OpenFootage, options: ListenOptions = {}): Promise<Result<Listened>> => {
  const { signal, onProgress, cache, fingerprint } = options
  const place = { file: footage.name }
  if (!footage.hasSound)
    return refusal({
      code: 'no-sound',
      message: 'there is no sound in this file, so there is nothing to listen to',
      place,
    })
  signal?.throwIfAborted()
  const key = cache && fingerprint !== undefined ? `listened-${CACHE_VERSION}-${fingerprint}` : undefined
  // A store that is full or broken costs listening again next time, not what was heard.
  const known = key && (await cache?.get(key).catch(() => undefined))
  if (known) return success(known)

  const worker = new Worker(new URL('./listen.worker.ts', import.meta.url), { type: 'module' })
  const decoding = decodingFor(worker, footage.file)
  const peaks = silentPeaks(footage.seconds)
  const begun = performance.now()
  let reported = begun
  const report = (done: number) => {
    const now = performance.now()
    if (onProgress === undefined || (now - reported < REPORT_EVERY && done < footage.seconds)) return
    reported = now
    const elapsed = (now - begun) / 1000
    const left = elapsed > 1 && done > 0 ? { left: (elapsed * (footage.seconds - done)) / done } : undefined
    onProgress({ done, total: footage.seconds, peaks: peaks.slice(), ...left })
  }
  const say = (message: ToListener) => worker.postMessage(message)
  const stop = new AbortController()
  try {
    const speech = await new Promise<readonly Span[] | Problem>((resolve, reject) => {
      signal?.addEventListener('abort', () => reject(signal.reason), { once: true, signal: stop.signal })
      worker.onerror = event =>
        resolve({ code: 'sound-unreadable', message: `the sound could not be read: ${event.message}`, place })
      worker.onmessage = ({ data }: MessageEvent<FromListener>) => {
        switch (data.say) {
          case 'decode':
          case 'sound':
            decoding.answer(data)
            return
          case 'peaks':
            peaks.set(data.peaks, data.from)
            report(data.done)
            return
          case 'heard':
            resolve(data.speech)
            return
          case 'failed':
            resolve({ code: 'sound-unreadable', message: data.why, place })
        }
      }
      const { file, seconds, ways } = footage
      say({ say: 'listen', file, seconds, way: ways.sound, origin: location.origin })
    })
    if (!Array.isArray(speech)) return refusal(speech as Problem)
    const listened: Listened = { perSecond: PEAKS_PER_SECOND, peaks, seconds: footage.seconds, speech }
    if (key) await cache?.put(key, listened).catch(() => {})
    return success(listened)
  } finally {
    stop.abort()
    worker.terminate()
    decoding.close()
  }
}
