import { execFileSync } from 'node:child_process'
import { appendFile, mkdtemp, readFile, rm, stat, truncate } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { align } from '@/lib/footage/align'
import { detectorOn } from '@/lib/footage/detector'
import { loadFvad, loadRecogniser } from '@/lib/footage/engines-node'
import { speechFinder } from '@/lib/footage/speech'
import { type FootagePage, footagePage } from '../tests/lib/footage/browser'
import { WHEEL } from '../tests/lib/footage/sentences'
import { makeSpeech } from '../tests/lib/footage/talk'
import type { Bench, BenchRow } from './row'

/** Length of the footage, seconds. */
const LENGTH = 3600

/** Size of the big file, bytes; the part past the footage is a hole, so that it takes no disk. */
const BIG = 4.5e9

const ffmpeg = (...args: string[]): void =>
  void execFileSync('ffmpeg', ['-nostdin', '-hide_banner', '-loglevel', 'error', '-y', '-threads', '1', ...args])

const seconds = (work: () => void): number => {
  const begun = performance.now()
  work()
  return (performance.now() - begun) / 1000
}

/** An hour of talk with a picture, H.264 and AAC in stereo, and the same padded by a free box to over 4 GB. */
const makeFootage = async (path: (name: string) => string): Promise<void> => {
  execFileSync('espeak-ng', ['-v', 'en-us', '-w', path('talk.wav'), WHEEL.join(' ')])
  const part = [
    '-f',
    'lavfi',
    '-i',
    'testsrc2=size=1280x720:rate=30:duration=60',
    '-stream_loop',
    '-1',
    '-i',
    path('talk.wav'),
  ]
  const codecs = [
    '-c:v',
    'libx264',
    '-preset',
    'ultrafast',
    '-g',
    '60',
    '-pix_fmt',
    'yuv420p',
    '-c:a',
    'aac',
    '-ac',
    '2',
  ]
  ffmpeg(...part, '-t', '60', ...codecs, '-ar', '48000', path('part.mp4'))
  ffmpeg('-stream_loop', '-1', '-i', path('part.mp4'), '-t', String(LENGTH), '-c', 'copy', path('hour.mp4'))
  execFileSync('cp', [path('hour.mp4'), path('big.mp4')])
  const { size } = await stat(path('big.mp4'))
  const head = Buffer.alloc(16)
  head.writeUInt32BE(1, 0)
  head.write('free', 4)
  head.writeBigUInt64BE(BigInt(BIG - size), 8)
  await appendFile(path('big.mp4'), head)
  await truncate(path('big.mp4'), BIG)
}

const OPEN = `
  const begun = performance.now()
  const opened = await footage.openFootage(file, file.name)
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
`
const TOOK = 'return (performance.now() - begun) / 1000'

/** Most memory a page's process ever had, MB. */
const memoryOf = async ({ page }: FootagePage): Promise<number> => {
  const session = await page.context().browser()?.newBrowserCDPSession()
  const { processInfo } = (await session?.send('SystemInfo.getProcessInfo')) ?? { processInfo: [] }
  const pages = processInfo.filter(({ type }) => type === 'renderer')
  const most = pages.map(async ({ id }) => /VmHWM:\s+(\d+)/.exec(await readFile(`/proc/${id}/status`, 'utf8'))?.[1])
  return Math.max(...(await Promise.all(most)).map(Number)) / 1024
}

/** Measures one thing in a page of its own: the fastest of so many times, with the file opened anew for each. */
const inPage = async (file: string, run: string, times = 2): Promise<{ took: number; memory: number }> => {
  const page = await footagePage('tests/lib/footage/making-page.ts')
  try {
    const took: number[] = []
    for (let i = 0; i < times; i++) took.push(await page.on<number>(file, `${OPEN}${run}; ${TOOK}`))
    return { took: Math.min(...took), memory: await memoryOf(page) }
  } finally {
    await page.close()
  }
}

const fastest = (work: () => void): number => Math.min(seconds(work), seconds(work))

const alignment = async (): Promise<readonly BenchRow[]> => {
  const talk = await makeSpeech(WHEEL)
  const length = talk.samples.length / talk.rate
  const fvad = await loadFvad()
  const recogniser = await loadRecogniser('node_modules/soundswallower/model/')
  const hear = (from: number, to: number) =>
    talk.samples.slice(Math.round(from * talk.rate), Math.round(to * talk.rate))
  let begun = process.cpuUsage()
  const cpu = () => process.cpuUsage(begun).user / 1e6
  const finder = speechFinder(detectorOn(fvad, 1))
  finder.push(talk.samples)
  const speech = finder.end()
  const heard = cpu()
  begun = process.cpuUsage()
  const texts = talk.sentences.map(({ text }) => text)
  const { lines } = await align(texts, speech, hear, recogniser)
  const timed = cpu()
  recogniser.free()
  const errors = lines.map(({ start }, i) => Math.abs(start - (talk.sentences[i]?.start ?? 0)))
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length
  return [
    { what: 'speech found, times real time of CPU', value: length / heard, unit: 'x' },
    { what: 'text timed, times real time of CPU', value: length / timed, unit: 'x', against: 'at least 10' },
    { what: 'mean error of sentence starts', value: mean * 1000, unit: 'ms', against: 'under 150' },
  ]
}

/** Opening, listening, stills and clips in Chromium against ffmpeg on one thread. */
export const bench: Bench = {
  name: 'footage',
  run: async () => {
    const folder = await mkdtemp(join(tmpdir(), 'tellwright-bench-'))
    const path = (name: string) => join(folder, name)
    try {
      await makeFootage(path)
      const hour = path('hour.mp4')
      const rows: BenchRow[] = []
      const row = (what: string, took: number, peer: number, memory: number, bound: string) =>
        rows.push(
          {
            what: `${what}, times native`,
            value: took / peer,
            unit: 'x',
            against: `${bound}; here ${took.toFixed(2)} s, native ${peer.toFixed(2)} s`,
          },
          { what: `${what}, page's memory`, value: memory, unit: 'MB', against: 'under 500' },
        )
      const big = await inPage(path('big.mp4'), '', 1)
      rows.push({ what: 'opening 4.5 GB', value: big.took, unit: 's', against: 'under 1' })
      rows.push({ what: "opening 4.5 GB, page's memory", value: big.memory, unit: 'MB', against: 'under 500' })
      ffmpeg('-i', hour, '-vn', '-c', 'copy', path('hour.m4a'))
      for (const [what, file] of [
        ['peaks and speech of an hour of sound', path('hour.m4a')],
        ['the same out of 3.4 GB of footage', hour],
      ] as const) {
        const sound = await inPage(file, 'await footage.listen(opened.value)')
        const native = fastest(() => ffmpeg('-i', file, '-vn', '-ac', '1', '-ar', '16000', '-f', 'null', '-'))
        row(what, sound.took, native, sound.memory, 'within 3')
      }
      ffmpeg('-stream_loop', '4', '-i', path('hour.m4a'), '-c', 'copy', path('five.m4a'))
      const heard = `const heard = await footage.listen(opened.value)
        if (!(heard.value.speech.at(-1).end > ${5 * LENGTH - 60})) throw new Error('not heard to the end')`
      const five = await inPage(path('five.m4a'), heard, 1)
      const whole = seconds(() => ffmpeg('-i', path('five.m4a'), '-ac', '1', '-ar', '16000', '-f', 'null', '-'))
      row('five hours of sound, heard to the end', five.took, whole, five.memory, 'no bound')
      await rm(path('five.m4a'))
      const still = await inPage(hour, 'await footage.stillAt(opened.value, 1801.3)')
      const frame = fastest(() => ffmpeg('-ss', '1801.3', '-i', hour, '-frames:v', '1', path('still.jpg')))
      row('one still', still.took, frame, still.memory, 'no bound')
      const span = ['-ss', '1200.5', '-t', '30', '-i', hour]
      for (const way of ['copy', 'exact'] as const) {
        const clip = await inPage(
          hour,
          // A copied clip is made of slices of the footage: all of it is read, as writing it would.
          `const clip = await footage.cutClip(opened.value, { start: 1200.5, end: 1230.5 }, { way: '${way}' })
          for await (const part of clip.value.blob.stream()) if (part.length === 0) throw new Error('empty')`,
        )
        const codecs = way === 'copy' ? ['-c', 'copy'] : ['-c:v', 'libx264', '-preset', 'veryfast', '-c:a', 'copy']
        const peer = fastest(() => ffmpeg(...span, ...codecs, path('clip.mp4')))
        row(`clip of 30 s, ${way}`, clip.took, peer, clip.memory, way === 'copy' ? 'within 3' : 'no bound')
      }
      return [...rows, ...(await alignment())]
    } finally {
      await rm(folder, { recursive: true, force: true })
    }
  },
}
