import { execFileSync } from 'node:child_process'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { loudnessMeter } from '@/lib/footage/loudness'
import { footagePage } from '../tests/lib/footage/browser'
import type { Bench } from './row'

const ffmpeg = (...args: string[]): void => {
  execFileSync('ffmpeg', ['-nostdin', '-hide_banner', '-loglevel', 'error', '-y', ...args])
}

const seconds = async (work: () => unknown): Promise<number> => {
  const begun = performance.now()
  await work()
  return (performance.now() - begun) / 1000
}

/** Best of two each, in turn. */
const inTurn = async (own: () => unknown, peer: () => unknown): Promise<readonly [number, number]> => {
  const [owns, peers]: [number[], number[]] = [[], []]
  for (let i = 0; i < 2; i++) {
    owns.push(await seconds(own))
    peers.push(await seconds(peer))
  }
  return [Math.min(...owns), Math.min(...peers)]
}

/** Ten minutes of stereo sound in the lots a decoder gives. */
const measure = (samples: Float32Array): void => {
  const meter = loudnessMeter(48_000, 2)
  for (let at = 0; at < samples.length; at += 1024) {
    const lot = samples.subarray(at, at + 1024)
    meter.push([lot, lot])
  }
  meter.measure()
}

/** Loudness and changes of the picture, each beside native ffmpeg measuring the like on one thread. */
export const bench: Bench = {
  name: 'footage-measure',
  run: async () => {
    const folder = await mkdtemp(join(tmpdir(), 'tellwright-bench-'))
    const path = (name: string) => join(folder, name)
    const page = await footagePage('tests/lib/footage/shots-page.ts')
    try {
      const words = 'Loosen the lock nut, then turn the screw in until it just touches, and back it off by half a turn.'
      execFileSync('espeak-ng', ['-v', 'en-us', '-w', path('said.wav'), words])
      const talk = ['-stream_loop', '-1', '-i', path('said.wav'), '-t', '600', '-ar', '48000']
      ffmpeg(...talk, '-ac', '2', '-c:a', 'pcm_f32le', path('talk.wav'))
      ffmpeg(...talk, '-ac', '1', '-f', 'f32le', path('talk.raw'))
      const bytes = await readFile(path('talk.raw'))
      const samples = new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length))
      const [loud, meter] = await inTurn(
        () => measure(samples),
        () => ffmpeg('-threads', '1', '-i', path('talk.wav'), '-af', 'ebur128=peak=true', '-f', 'null', '-'),
      )
      const picture = ['-f', 'lavfi', '-i', 'testsrc2=size=1920x1080:rate=30:duration=60']
      ffmpeg(
        ...picture,
        '-vf',
        'noise=alls=10:allf=t',
        '-c:v',
        'libx264',
        '-preset',
        'ultrafast',
        '-crf',
        '28',
        path('film.mp4'),
      )
      const look = `const opened = await footage.openFootage(file, file.name)
        const result = await footage.findPictureChanges(opened.value)
        opened.value.close()
        return result.ok`
      const scenes = ['-vf', "scale=64:36,select='gt(scene,0.3)'", '-f', 'null', '-']
      const [seen, scene] = await inTurn(
        () => page.on(path('film.mp4'), look),
        () => ffmpeg('-threads', '1', '-i', path('film.mp4'), ...scenes),
      )
      return [
        { what: 'loudness and true peak of 10 minutes in stereo', value: loud, unit: 's' },
        { what: `against native ffmpeg (${meter.toFixed(1)} s)`, value: loud / meter, unit: 'x' },
        { what: 'changes of the picture in 1 minute of full HD, in Chromium', value: seen, unit: 's' },
        { what: `against native ffmpeg (${scene.toFixed(1)} s)`, value: seen / scene, unit: 'x' },
      ]
    } finally {
      await page.close()
      await rm(folder, { recursive: true, force: true })
    }
  },
}
