import { execFile } from 'node:child_process'
import { openAsBlob } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'

const execute = promisify(execFile)

/** Runs a tool of the machine (ffmpeg, ffprobe, espeak-ng, sox). @returns its standard output */
export const run = async (tool: string, ...args: string[]): Promise<string> =>
  (await execute(tool, args, { maxBuffer: 1 << 28 })).stdout

export const ffmpeg = (...args: string[]) => run('ffmpeg', '-hide_banner', '-loglevel', 'error', '-y', ...args)

/** A folder of its own for samples; call `remove` afterwards. */
export const sampleFolder = async () => {
  const folder = await mkdtemp(join(tmpdir(), 'tellwright-footage-'))
  return {
    path: (name: string) => join(folder, name),
    blob: (name: string): Promise<Blob> => openAsBlob(join(folder, name)) as Promise<Blob>,
    remove: () => rm(folder, { recursive: true, force: true }),
  }
}

/** A talk of about 9 seconds and pictures of 8, made by real tools: H.264 and AAC with the index at the end. */
export const makeTalk = async (path: (name: string) => string): Promise<void> => {
  const words =
    'First take off the belt cover. Four bolts, ten millimetre heads. Be careful, the edge is sharp. Then slacken the tensioner by a quarter turn.'
  await run('espeak-ng', '-v', 'en-us', '-w', path('talk.wav'), words)
  const picture = ['-f', 'lavfi', '-i', 'testsrc2=size=640x360:rate=30:duration=8']
  const codecs = ['-c:v', 'libx264', '-preset', 'veryfast', '-g', '60', '-pix_fmt', 'yuv420p', '-c:a', 'aac']
  await ffmpeg(...picture, '-i', path('talk.wav'), '-shortest', ...codecs, path('end.mp4'))
}
