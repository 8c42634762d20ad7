import { spawn } from 'node:child_process'
import { access } from 'node:fs/promises'
import type { Hear } from '@/lib/footage/align'
import { openFootage } from '@/lib/footage/open'
import { soundPieces } from '@/lib/footage/sound'
import { VOICE_RATE, voiceStream } from '@/lib/footage/voice-stream'
import { formatProblem, TellwrightError } from '@/lib/procedure/problem'
import { FileBlob } from './file-blob'

/** Sound as speech is heard: 16 kHz mono, 16 bit. An hour takes 115 MB. */
export type VoiceSound = { readonly samples: Int16Array; readonly hear: Hear }

const soundOf = (chunks: readonly Uint8Array[]): VoiceSound => {
  const bytes = Buffer.concat(chunks)
  const samples = new Int16Array(bytes.buffer, bytes.byteOffset, bytes.length >> 1)
  const hear: Hear = (from, to) =>
    Float32Array.from(samples.subarray(Math.round(from * VOICE_RATE), Math.round(to * VOICE_RATE)), n => n / 32768)
  return { samples, hear }
}

/** @returns undefined where there is no ffmpeg on the PATH */
const byFfmpeg = (path: string): Promise<VoiceSound | undefined> =>
  new Promise((resolve, reject) => {
    const args = [
      '-nostdin',
      '-v',
      'error',
      '-i',
      path,
      '-vn',
      '-ac',
      '1',
      '-ar',
      String(VOICE_RATE),
      '-f',
      's16le',
      '-',
    ]
    const child = spawn('ffmpeg', args, { stdio: ['ignore', 'pipe', 'pipe'] })
    const chunks: Uint8Array[] = []
    let said = ''
    child.stdout.on('data', chunk => chunks.push(chunk))
    child.stderr.on('data', chunk => {
      said += chunk
    })
    child.on('error', (error: NodeJS.ErrnoException) => (error.code === 'ENOENT' ? resolve(undefined) : reject(error)))
    child.on('close', code => {
      if (code === 0 && chunks.length > 0) return resolve(soundOf(chunks))
      const why = said.trim().split('\n').at(-1) ?? ''
      reject(new TellwrightError('cannot-decode', `cannot read the sound of ${path}: ${why || 'it has none'}`))
    })
  })

const byOurselves = async (path: string): Promise<VoiceSound> => {
  const file = FileBlob.open(path)
  const opened = await openFootage(file, path)
  if (!opened.ok) throw new TellwrightError('cannot-decode', opened.problems.map(formatProblem).join('\n'))
  const track = (await opened.value.input?.getPrimaryAudioTrack()) ?? null
  if (track === null || opened.value.ways.sound !== 'browser')
    throw new TellwrightError(
      'cannot-decode',
      `cannot decode the sound of ${path} (${opened.value.sound?.codec ?? 'none'}): install ffmpeg, or save the sound as a WAV file`,
    )
  const chunks: Uint8Array[] = []
  const stream = voiceStream(samples => {
    const whole = Int16Array.from(samples, sample => Math.max(-1, Math.min(1, sample)) * 32767)
    chunks.push(new Uint8Array(whole.buffer))
  }, 12)
  for await (const piece of soundPieces(track)) stream.push(piece)
  stream.end()
  opened.value.close()
  file.close()
  return soundOf(chunks)
}

/**
 * The sound of a file: through ffmpeg where it is on the PATH, else WAV alone.
 *
 * @throws TellwrightError `cannot-read` where there is no such file, `cannot-decode`
 */
export const readVoice = async (path: string): Promise<VoiceSound> => {
  try {
    await access(path)
  } catch (cause) {
    throw new TellwrightError('cannot-read', `cannot read ${path}: there is no such file; check the path`, { cause })
  }
  return (await byFfmpeg(path)) ?? (await byOurselves(path))
}
