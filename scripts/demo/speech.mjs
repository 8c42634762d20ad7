import { execFile } from 'node:child_process'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'

const run = promisify(execFile)

/** Samples a second that espeak-ng writes. */
export const RATE = 22_050
/** Quieter than this share of full scale is silence at the edges of a sentence. */
const SILENT = 0.01

const samplesOf = async file => {
  const wav = await readFile(file)
  const at = wav.indexOf('data') + 8
  return new Int16Array(wav.buffer.slice(wav.byteOffset + at, wav.byteOffset + at + ((wav.length - at) & ~1)))
}

const trimmed = samples => {
  const loud = sample => Math.abs(sample) > SILENT * 32_768
  return samples.subarray(samples.findIndex(loud), samples.findLastIndex(loud) + 1)
}

/** Speaks one sentence with espeak-ng. */
const speak = async (folder, n, { speaker, text }, voices) => {
  const { voice, speed, pitch } = voices[speaker]
  const file = join(folder, `sentence-${n}.wav`)
  const spoken = text.replace('80W-90', '80 W 90')
  await run('espeak-ng', ['-v', voice, '-s', String(speed), '-p', String(pitch), '-g', '2', '-w', file, spoken])
  return trimmed(await samplesOf(file))
}

/** A WAV file of one channel. */
const toWav = samples => {
  const head = Buffer.alloc(44)
  const bytes = samples.length * 2
  head.write('RIFF', 0)
  head.writeUInt32LE(36 + bytes, 4)
  head.write('WAVEfmt ', 8)
  head.writeUInt32LE(16, 16)
  head.writeUInt16LE(1, 20)
  head.writeUInt16LE(1, 22)
  head.writeUInt32LE(RATE, 24)
  head.writeUInt32LE(RATE * 2, 28)
  head.writeUInt16LE(2, 32)
  head.writeUInt16LE(16, 34)
  head.write('data', 36)
  head.writeUInt32LE(bytes, 40)
  return Buffer.concat([head, Buffer.from(samples.buffer, samples.byteOffset, bytes)])
}

/**
 * Speaks the whole talk into one WAV file.
 *
 * @returns the sentences with their true start and end, and the length of all, in seconds
 */
export const speakTalk = async (talk, voices, tail, folder, file) => {
  const pieces = []
  for (const [n, line] of talk.entries()) pieces.push(await speak(folder, n, line, voices))
  let at = 0
  const lines = talk.map((line, i) => {
    const from = at + Math.round(line.pause * RATE)
    at = from + pieces[i].length
    return { ...line, from, start: from / RATE, end: at / RATE }
  })
  const all = new Int16Array(at + Math.round(tail * RATE))
  for (const [i, { from }] of lines.entries()) all.set(pieces[i], from)
  await writeFile(file, toWav(all))
  return { lines: lines.map(({ from: _, ...line }) => line), seconds: all.length / RATE }
}
