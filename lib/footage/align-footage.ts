import { type Result, refusal, success } from '@/lib/procedure/problem'
import type { Span } from '@/lib/procedure/time'
import type { Alignment, AlignOptions } from './align'
import type { FromAligner, ToAligner } from './align-messages'
import { decodingFor } from './decode-here'
import type { OpenFootage } from './open'

export type AlignFootageOptions = {
  readonly signal?: AbortSignal
  readonly hints?: AlignOptions['hints']
  /** @param share 0 to 1; @param left seconds of waiting left, undefined while it can't be told */
  readonly onProgress?: (share: number, left: number | undefined) => void
}

/**
 * Times a text against the footage's sound in a worker; see align.ts.
 *
 * @param texts lines (sentences) in the order they are said; English
 * @param speech as `listen` found it
 * @returns the alignment; problem `no-sound`, `no-speech`, `no-text`, `cannot-align`
 * @throws the signal's reason when cancelled; the worker is gone by then
 */
export const alignFootage = async (
  footage: OpenFootage,
  texts: readonly string[],
  speech: readonly Span[],
  { signal, hints, onProgress }: AlignFootageOptions = {},
): Promise<Result<Alignment>> => {
  const place = { file: footage.name }
  const refuse = (code: string, message: string) => refusal({ code, message, place })
  if (!footage.hasSound)
    return refuse('no-sound', 'there is no sound in this file, so the text can’t be timed against it')
  if (speech.length === 0)
    return refuse('no-speech', 'no speech was heard in this file, so the text can’t be timed against it')
  if (texts.every(text => text.trim() === '')) return refuse('no-text', 'there is no text to time')
  signal?.throwIfAborted()
  const worker = new Worker(new URL('./align.worker.ts', import.meta.url), { type: 'module' })
  const decoding = decodingFor(worker, footage.file)
  const begun = performance.now()
  const stop = new AbortController()
  try {
    return await new Promise<Result<Alignment>>((resolve, reject) => {
      signal?.addEventListener('abort', () => reject(signal.reason), { once: true, signal: stop.signal })
      worker.onerror = event => resolve(refuse('cannot-align', `the text could not be timed: ${event.message}`))
      worker.onmessage = ({ data }: MessageEvent<FromAligner>) => {
        switch (data.say) {
          case 'decode':
          case 'sound':
            return decoding.answer(data)
          case 'done': {
            const elapsed = (performance.now() - begun) / 1000
            return onProgress?.(data.share, data.share > 0.02 ? (elapsed * (1 - data.share)) / data.share : undefined)
          }
          case 'aligned':
            return resolve(success(data.alignment))
          case 'failed':
            return resolve(refuse('cannot-align', `the text could not be timed: ${data.why}`))
        }
      }
      const { file, seconds, ways } = footage
      const { origin } = location
      const message: ToAligner = { say: 'align', file, seconds, way: ways.sound, texts, speech, hints, origin }
      worker.postMessage(message)
    })
  } finally {
    stop.abort()
    worker.terminate()
    decoding.close()
  }
}
