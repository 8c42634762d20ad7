import { execFileSync } from 'node:child_process'
import { createWriteStream, openAsBlob } from 'node:fs'
import { mkdtemp, open, readFile, rm, stat, truncate, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Writable } from 'node:stream'
import { FileBlob } from '@/lib/cli/file-blob'
import { childrenOf } from '@/lib/footage/boxes'
import { copyStream } from '@/lib/footage/copy-stream'
import { layOut, type MuxTexts } from '@/lib/footage/lay-out'
import { readMovie } from '@/lib/footage/movie'
import { type Muxed, muxTexts } from '@/lib/footage/mux'
import { footagePage } from '../tests/lib/footage/browser'
import type { Bench, BenchRow } from './row'

/** Size of the footage, bytes. */
const SIZE = 1e9

const CHAPTERS = Array.from({ length: 12 }, (_, i) => ({ start: 5 * i, title: `Step ${i + 1}` }))
const CAPTIONS = Array.from({ length: 40 }, (_, i) => ({
  start: 2 * i,
  end: 2 * i + 1.8,
  text: `Sentence number ${i + 1}.`,
}))
const TEXTS: MuxTexts = { chapters: CHAPTERS, captions: CAPTIONS, language: 'eng' }

const ffmpeg = (...args: string[]): string =>
  execFileSync('ffmpeg', ['-nostdin', '-hide_banner', '-loglevel', 'error', '-y', ...args], {
    maxBuffer: 1 << 26,
  }).toString()

/** Noise in full HD, 20 s of it again and again up to the size; the index at the end or in front. */
const makeFootage = async (path: (name: string) => string): Promise<void> => {
  const picture = ['-f', 'lavfi', '-i', 'nullsrc=size=1920x1080:rate=25:duration=20,noise=alls=60:allf=t']
  const sound = ['-f', 'lavfi', '-i', 'anoisesrc=duration=20']
  const codecs = ['-c:v', 'libx264', '-preset', 'ultrafast', '-b:v', '60M', '-pix_fmt', 'yuv420p', '-c:a', 'aac']
  ffmpeg(...picture, ...sound, ...codecs, path('part.mp4'))
  const times = Math.ceil(SIZE / (await stat(path('part.mp4'))).size)
  ffmpeg('-stream_loop', String(times - 1), '-i', path('part.mp4'), '-c', 'copy', path('end.mp4'))
  ffmpeg('-i', path('end.mp4'), '-c', 'copy', '-movflags', '+faststart', path('start.mp4'))
}

/** What ffmpeg needs to do the same. */
const writeTexts = async (path: (name: string) => string): Promise<void> => {
  const list = CHAPTERS.map(
    ({ start, title }) => `[CHAPTER]\nTIMEBASE=1/1\nSTART=${start}\nEND=${start + 5}\ntitle=${title}\n`,
  )
  await writeFile(path('chapters.txt'), `;FFMETADATA1\n${list.join('')}`)
  const clock = (seconds: number) => `00:${new Date(seconds * 1000).toISOString().slice(14, 23).replace('.', ',')}`
  const cues = CAPTIONS.map(({ start, end, text }, i) => `${i + 1}\n${clock(start)} --> ${clock(end)}\n${text}\n`)
  await writeFile(path('captions.srt'), cues.join('\n'))
}

const seconds = async (work: () => unknown): Promise<number> => {
  const begun = performance.now()
  await work()
  return (performance.now() - begun) / 1000
}

const packets = (file: string): string =>
  ffmpeg('-i', file, '-map', '0:v', '-map', '0:a', '-c', 'copy', '-f', 'streamhash', '-')

const muxTo = async (from: string, to: string): Promise<void> => {
  const muxed = await muxTexts(await openAsBlob(from), from, TEXTS)
  if (!muxed.ok) throw new Error(JSON.stringify(muxed.problems))
  await muxed.value.stream().pipeTo(Writable.toWeb(createWriteStream(to)))
}

/** Writes a stream without its zeros: they become a hole in the file. */
const writeSparse = async (stream: ReadableStream<Uint8Array>, to: string): Promise<void> => {
  const file = await open(to, 'w')
  let at = 0
  for await (const chunk of stream) {
    if (chunk.some(byte => byte !== 0)) await file.write(chunk, 0, chunk.length, at)
    at += chunk.length
  }
  await file.truncate(at)
  await file.close()
}

/** Footage whose media stand past 4 GB, behind an empty box, with its index in front. */
const pastFourGigabytes = async (path: (name: string) => string): Promise<BenchRow[]> => {
  ffmpeg('-i', path('part.mp4'), '-t', '2', '-c', 'copy', '-movflags', '+faststart', path('short.mp4'))
  const short = await readFile(path('short.mp4'))
  const media = short.indexOf('mdat') - 4
  const hole = 2 ** 32 + 2 ** 28
  await writeFile(path('hole'), Buffer.from([0, 0, 0, 1, 0x66, 0x72, 0x65, 0x65, 0, 0, 0, 1, 0x10, 0, 0, 0]))
  await truncate(path('hole'), hole)
  // The tables of ffmpeg have 32 bits here: laid out by our own hand first, then read again as a file of 4.6 GB.
  const empty = FileBlob.open(path('hole'))
  const boxes = childrenOf(short, 0, short.length).boxes
  const slots = boxes.map(old => ({
    old,
    parts: [...(old.start === media ? [empty] : []), new Uint8Array(short.subarray(old.start, old.end))],
  }))
  const index = boxes.find(({ type }) => type === 'moov')
  const movie = index && readMovie(new Uint8Array(short.subarray(index.start, index.end)))
  if (movie === undefined) throw new Error('no index')
  await writeSparse(copyStream(layOut(slots, movie, { chapters: [], captions: [] }), 'large.mp4'), path('large.mp4'))
  const large = FileBlob.open(path('large.mp4'))
  let copy: Muxed | undefined
  const planned = await seconds(async () => {
    const muxed = await muxTexts(large, 'large.mp4', TEXTS)
    copy = muxed.ok ? muxed.value : undefined
  })
  if (copy === undefined) throw new Error('the file of 4.6 GB was refused')
  await writeSparse(copy.stream(), path('large-copy.mp4'))
  empty.close()
  large.close()
  const same = ['large.mp4', 'large-copy.mp4'].filter(name => packets(path(name)) === packets(path('short.mp4')))
  const captions = ffmpeg('-i', path('large-copy.mp4'), '-map', '0:s', '-f', 'webvtt', '-').split('-->').length - 1
  return [
    { what: 'a copy of 4.6 GB planned', value: planned * 1000, unit: 'ms', against: 'opening under 1,000 ms' },
    {
      what: 'files past 4 GB whose packets are not the original’s',
      value: 2 - same.length,
      unit: 'count',
      against: '0',
    },
    {
      what: 'captions read back from past 4 GB',
      value: captions,
      unit: 'count',
      against: String(CAPTIONS.filter(({ start }) => start < movie.seconds).length),
    },
  ]
}

/** The same in Chromium, written to the browser's own disk. @returns seconds, and most memory of the page's process in MB */
const inPage = async (file: string): Promise<{ took: number; memory: number }> => {
  const page = await footagePage('tests/lib/footage/mux-page.ts')
  try {
    const session = await page.page.context().browser()?.newBrowserCDPSession()
    const took = await page.on<number>(
      file,
      `const root = await navigator.storage.getDirectory()
      const to = await (await root.getFileHandle('copy.mp4', { create: true })).createWritable()
      const begun = performance.now()
      const muxed = await footage.muxTexts(file, file.name, ${JSON.stringify(TEXTS)})
      await footage.writeBlob(to, muxed.value.blob(), file.name)
      return (performance.now() - begun) / 1000`,
    )
    const { processInfo } = (await session?.send('SystemInfo.getProcessInfo')) ?? { processInfo: [] }
    const peaks = await Promise.all(
      processInfo
        .filter(({ type }) => type === 'renderer')
        .map(async ({ id }) => Number(/VmHWM:\s+(\d+)/.exec(await readFile(`/proc/${id}/status`, 'utf8'))?.[1]) / 1024),
    )
    return { took, memory: Math.max(...peaks) }
  } finally {
    await page.close()
  }
}

/** Chapters and captions put into 1 GB of footage, beside native ffmpeg doing the same on one thread. */
export const bench: Bench = {
  name: 'footage-mux',
  run: async () => {
    const folder = await mkdtemp(join(tmpdir(), 'tellwright-bench-'))
    const path = (name: string) => join(folder, name)
    try {
      await makeFootage(path)
      await writeTexts(path)
      const rows: BenchRow[] = []
      for (const name of ['end.mp4', 'start.mp4']) {
        const where = name === 'end.mp4' ? 'index at the end' : 'index in front'
        const front = name === 'start.mp4' ? ['-movflags', '+faststart'] : []
        const inputs = ['-threads', '1', '-i', path(name), '-i', path('chapters.txt'), '-i', path('captions.srt')]
        const maps = ['-map', '0', '-map', '2', '-map_metadata', '1', '-c', 'copy', '-c:s', 'mov_text', ...front]
        const native = () => ffmpeg(...inputs, ...maps, path(`native-${name}`))
        const before = process.memoryUsage().rss
        let most = 0
        const watch = setInterval(() => {
          most = Math.max(most, process.memoryUsage().rss - before)
        }, 20)
        // Best of two each, in turn: the disk is not ours alone.
        const [owns, peers]: [number[], number[]] = [[], []]
        for (let i = 0; i < 2; i++) {
          owns.push(await seconds(() => muxTo(path(name), path(`own-${name}`))))
          peers.push(await seconds(native))
        }
        clearInterval(watch)
        const [own, peer] = [Math.min(...owns), Math.min(...peers)]
        rows.push(
          { what: `texts into 1 GB, ${where}`, value: own, unit: 's' },
          { what: `against native ffmpeg (${peer.toFixed(1)} s)`, value: own / peer, unit: 'x', against: 'at most 3' },
          { what: 'memory of Node meanwhile, garbage and all', value: most / 2 ** 20, unit: 'MB' },
        )
        const isSame = packets(path(name)) === packets(path(`own-${name}`))
        rows.push({
          what: 'streams whose packets are not the original’s',
          value: isSame ? 0 : 2,
          unit: 'count',
          against: '0',
        })
        await Promise.all([rm(path(`own-${name}`)), rm(path(`native-${name}`))])
      }
      rows.push(...(await pastFourGigabytes(path)))
      const { took, memory } = await inPage(path('start.mp4'))
      rows.push(
        { what: 'the same in Chromium, to the browser’s own disk', value: took, unit: 's' },
        { what: 'most memory of the page meanwhile', value: memory, unit: 'MB', against: 'under 500 MB' },
      )
      return rows
    } finally {
      await rm(folder, { recursive: true, force: true })
    }
  },
}
