import { execFile } from 'node:child_process'
import { promisify } from 'node:util'
import { resample } from '@/lib/footage/resample'

const execute = promisify(execFile)

/** A sentence with its true time in the synthesised talk, seconds. */
export type Spoken = { readonly start: number; readonly end: number; readonly text: string }

export type Talk = {
  readonly samples: Float32Array<ArrayBuffer>
  readonly rate: 16_000
  readonly sentences: readonly Spoken[]
}

const RATE = 16_000

/** Quieter than this is silence around a synthesised sentence (-50 dB). */
const SILENCE = 0.003

const speak = async (text: string, voice: string, speed: number): Promise<Float32Array> => {
  const args = ['-v', voice, '-s', String(speed), '--stdout', text]
  const { stdout } = await execute('espeak-ng', args, { encoding: 'buffer', maxBuffer: 1 << 26 })
  const data = stdout.indexOf('data') + 8
  const view = new DataView(stdout.buffer, stdout.byteOffset + data, stdout.length - data)
  const samples = Float32Array.from({ length: view.byteLength >> 1 }, (_, i) => view.getInt16(2 * i, true) / 32768)
  const sound = resample(samples, stdout.readUInt32LE(24), RATE)
  const first = sound.findIndex(sample => Math.abs(sample) > SILENCE)
  const last = sound.findLastIndex(sample => Math.abs(sample) > SILENCE)
  return sound.slice(first, last + 1)
}

/** A repeatable stream of numbers in [0, 1) (mulberry32). */
export const random = (seed: number) => () => {
  seed = (seed + 0x6d2b79f5) | 0
  let t = Math.imul(seed ^ (seed >>> 15), 1 | seed)
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296
}

export type TalkOptions = {
  readonly voice?: string
  readonly speed?: number
  /** Shortest and longest pause between sentences, seconds. */
  readonly pauses?: readonly [number, number]
  readonly seed?: number
}

/** Has espeak-ng speak the sentences one by one, with pauses between them, so that each one's true time is known. */
export const makeSpeech = async (texts: readonly string[], options: TalkOptions = {}): Promise<Talk> => {
  const { voice = 'en-us', speed = 165, pauses = [0.3, 1.6], seed = 1 } = options
  const next = random(seed)
  const parts: Float32Array[] = []
  const sentences: Spoken[] = []
  let at = 0
  const pause = () => {
    const silence = new Float32Array(Math.round((pauses[0] + next() * (pauses[1] - pauses[0])) * RATE))
    parts.push(silence)
    at += silence.length
  }
  pause()
  for (const text of texts) {
    const sound = await speak(text, voice, speed)
    sentences.push({ start: at / RATE, end: (at + sound.length) / RATE, text })
    parts.push(sound)
    at += sound.length
    pause()
  }
  const samples = new Float32Array(at)
  let to = 0
  for (const part of parts) {
    samples.set(part, to)
    to += part.length
  }
  return { samples, rate: RATE, sentences }
}

const power = (samples: Float32Array, spans: readonly Spoken[]): number => {
  let [sum, count] = [0, 0]
  for (const { start, end } of spans)
    for (const sample of samples.subarray(Math.round(start * RATE), Math.round(end * RATE))) {
      sum += sample * sample
      count++
    }
  return sum / count
}

/** Noises of a workshop, each of power 1: a fan, a machine's hum with its harmonics, a tune of sawtooth notes. */
export const NOISES = {
  fan: (length: number, next: () => number) => {
    let low = 0
    return Float32Array.from({ length }, () => {
      low = 0.9 * low + 0.1 * (2 * next() - 1)
      return low * 7.6 + 0.3 * (2 * next() - 1)
    })
  },
  hum: (length: number, next: () => number) =>
    Float32Array.from({ length }, (_, i) =>
      [1, 2, 3, 5, 8].reduce((sum, k) => sum + Math.sin((2 * Math.PI * 49.7 * k * i) / RATE) / k, 0.4 * (next() - 0.5)),
    ),
  tune: (length: number) => {
    const notes = [220, 262, 330, 294, 247, 196, 392, 330]
    return Float32Array.from({ length }, (_, i) => {
      const note = notes[Math.floor(i / (RATE * 0.35)) % notes.length] ?? 220
      const fade = 1 - ((i / (RATE * 0.35)) % 1) * 0.8
      return [1, 1.5, 2].reduce((sum, k) => sum + 2 * (((note * k * i) / RATE) % 1) - 1, 0) * fade
    })
  },
} as const

/** Mixes a noise under the voice. @param decibels how far below the mean power of the spoken parts */
export const withNoise = (talk: Talk, noise: keyof typeof NOISES, decibels: number, seed = 7): Talk => {
  const made = NOISES[noise](talk.samples.length, random(seed))
  const own = made.reduce((sum, sample) => sum + sample * sample, 0) / made.length
  const gain = Math.sqrt((power(talk.samples, talk.sentences) * 10 ** (-decibels / 10)) / own)
  return { ...talk, samples: talk.samples.map((sample, i) => 0.7 * (sample + gain * (made[i] ?? 0))) }
}
