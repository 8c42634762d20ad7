import type { Hear } from './align'
import type { SoundPiece } from './peaks'
import { VOICE_RATE, voiceStream } from './voice-stream'

/** Zero crossings of the resampling filter for what the recogniser hears. */
const FINE = 12

/** Seconds kept behind what was asked for last, so that the next piece may begin a little earlier. */
const BEHIND = 2

/**
 * Gives any span of a recording's sound as 16 kHz mono, decoding in a stream. Asking in order of time decodes everything
 * once; going back starts anew from there. About a minute of sound is in memory.
 *
 * @param open decodes from a moment (seconds) on; the first piece may begin a little before it
 */
export const hearFrom = (open: (from: number) => AsyncIterable<SoundPiece>): Hear => {
  let parts: Float32Array[] = []
  let start = 0
  let length = 0
  let pieces: AsyncGenerator<unknown> | undefined
  const begin = (from: number) => {
    parts = []
    start = from
    length = 0
    const stream = voiceStream(
      samples => {
        parts.push(samples)
        length += samples.length
      },
      FINE,
      from,
    )
    const run = async function* () {
      for await (const piece of open(from)) {
        stream.push(piece)
        yield
      }
      stream.end()
    }
    return run()
  }
  const forget = (before: number) => {
    for (let first = parts[0]; first !== undefined && start + first.length / VOICE_RATE < before; first = parts[0]) {
      start += first.length / VOICE_RATE
      length -= first.length
      parts.shift()
    }
  }
  return async (from, to) => {
    if (pieces === undefined || from < start) pieces = begin(Math.max(0, from))
    while (start + length / VOICE_RATE < to && !(await pieces.next()).done) forget(from - BEHIND)
    const [first, last] = [from, to].map(at => Math.max(0, Math.min(length, Math.round((at - start) * VOICE_RATE))))
    const out = new Float32Array(Math.max(0, (last ?? 0) - (first ?? 0)))
    let at = 0
    for (const part of parts) {
      const [a, b] = [Math.max(first ?? 0, at), Math.min(last ?? 0, at + part.length)]
      if (b > a) out.set(part.subarray(a - at, b - at), a - (first ?? 0))
      at += part.length
    }
    return out
  }
}
