import { writeFile } from 'node:fs/promises'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type FootagePage, footagePage } from './browser'
import { ffmpeg, makeTalk, run, sampleFolder } from './samples'
import { WHEEL } from './sentences'
import { makeSpeech } from './talk'

let folder: Awaited<ReturnType<typeof sampleFolder>>
let page: FootagePage

beforeAll(async () => {
  folder = await sampleFolder()
  const { path } = folder
  await makeTalk(path)
  await ffmpeg('-i', path('end.mp4'), '-metadata:s:v', 'rotate=90', '-c', 'copy', path('turned.mov'))
  await ffmpeg(
    '-i',
    path('end.mp4'),
    '-t',
    '5',
    '-c:v',
    'libx265',
    '-x265-params',
    'log-level=none',
    '-preset',
    'ultrafast',
    '-tag:v',
    'hvc1',
    '-c:a',
    'ac3',
    path('other.mp4'),
  )
  // Sharp only from 3 to 5 s; before it is out of focus, after it is dark.
  const parts = "[0:v]boxblur=12:enable='lt(t,3)',eq=brightness=-0.8:enable='gt(t,5)'"
  await ffmpeg(
    '-i',
    path('end.mp4'),
    '-filter_complex',
    parts,
    '-an',
    '-c:v',
    'libx264',
    '-preset',
    'ultrafast',
    path('focus.mp4'),
  )
  page = await footagePage('tests/lib/footage/making-page.ts')
}, 120_000)

afterAll(async () => {
  await page.close()
  await folder.remove()
})

const OPEN = `
  const opened = await footage.openFootage(file, file.name)
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
`

const save = async (name: string, base64: string) => {
  await writeFile(folder.path(name), Buffer.from(base64, 'base64'))
  return folder.path(name)
}

test('[F31] of a span the frames proposed are those in focus and well lit', async () => {
  const times = await page.on<number[]>(
    folder.path('focus.mp4'),
    `${OPEN} const stills = await footage.proposeStills(opened.value, { start: 0, end: 8 })
    return stills.value.map(({ time }) => time)`,
  )
  expect(times.length).toBe(3)
  expect(Math.min(...times)).toBeGreaterThanOrEqual(2.95)
  expect(Math.max(...times)).toBeLessThanOrEqual(5.05)
}, 60_000)

test('[F31] a still is the frame shown at its moment, turned as shown', async () => {
  const still = await page.on<{ time: number; width: number; height: number; text: string }>(
    folder.path('turned.mov'),
    `${OPEN} const { value } = await footage.stillAt(opened.value, 4.02)
    return { ...value, text: await footage.toText(value.picture) }`,
  )
  expect([still.width, still.height]).toEqual([360, 640])
  expect(still.time).toBeCloseTo(4, 2)
  const ours = await save('still.jpg', still.text)
  await ffmpeg('-ss', '4', '-i', folder.path('turned.mov'), '-frames:v', '1', folder.path('true.png'))
  const compare = ['-lavfi', '[0:v]format=yuv420p[a];[1:v]format=yuv420p[b];[a][b]ssim=stats_file=-', '-f', 'null', '-']
  const told = await run('ffmpeg', '-v', 'error', '-i', ours, '-i', folder.path('true.png'), ...compare)
  expect(Number(/All:([\d.]+)/.exec(told)?.[1])).toBeGreaterThan(0.9)
}, 60_000)

type Packets = { packets: { codec_type: string; duration_time: string }[]; streams: { codec_name: string }[] }

test('[F22] an exact clip begins and ends where asked, its sound copied, and carries nothing else', async () => {
  const clip = await page.on<{ span: object; notices: unknown[]; sound: string; text: string; shares: number[] }>(
    folder.path('end.mp4'),
    `${OPEN} const shares = []
    const { value } = await footage.cutClip(opened.value, { start: 3.2, end: 5.7 }, { way: 'exact', onProgress: share => shares.push(share) })
    return { ...value, shares, text: await footage.toText(value.blob) }`,
  )
  expect(clip).toMatchObject({ span: { start: 3.2, end: 5.7 }, notices: [], sound: 'AAC' })
  const file = await save('exact.mp4', clip.text)
  const args = ['-v', 'error', '-ignore_editlist', '1', '-show_packets', '-show_streams', '-of', 'json', file]
  const { packets, streams } = JSON.parse(await run('ffprobe', ...args)) as Packets
  expect(streams.map(({ codec_name }) => codec_name).sort()).toEqual(['aac', 'h264'])
  const carried = (kind: string) =>
    packets
      .filter(({ codec_type }) => codec_type === kind)
      .reduce((sum, packet) => sum + Number(packet.duration_time), 0)
  // A frame is 1/30 s, an AAC packet at 22,050 Hz is 0.046 s.
  expect(Math.abs(carried('video') - 2.5)).toBeLessThan(0.05)
  expect(carried('audio')).toBeLessThanOrEqual(2.5)
  expect(carried('audio')).toBeGreaterThan(2.4)
  expect(await run('ffmpeg', '-v', 'error', '-i', file, '-f', 'null', '-')).toBe('')
}, 90_000)

test('[F22] a clip made louder says that its sound is another codec now', async () => {
  const clip = await page.on<{ notices: { code: string }[]; sound: string; text: string }>(
    folder.path('end.mp4'),
    `${OPEN} const { value } = await footage.cutClip(opened.value, { start: 2, end: 4 }, { way: 'copy', gain: -6 })
    return { ...value, text: await footage.toText(value.blob) }`,
  )
  expect(clip.sound).toBe('Opus')
  expect(clip.notices.map(({ code }) => code)).toEqual(['sound-codec-changed'])
  await save('quiet.mp4', clip.text)
  const volume = async (name: string, ...cut: string[]) => {
    const said = await run(
      'sh',
      '-c',
      `ffmpeg -hide_banner ${cut.join(' ')} -i ${folder.path(name)} -vn -af volumedetect -f null - 2>&1`,
    )
    return Number(/mean_volume: (-[\d.]+)/.exec(said)?.[1])
  }
  expect((await volume('quiet.mp4')) - (await volume('end.mp4', '-ss', '2', '-t', '2'))).toBeCloseTo(-6, 0)
}, 90_000)

test('[F22] cutting can be stopped', async () => {
  const said = await page.on<string>(
    folder.path('end.mp4'),
    `${OPEN} const control = new AbortController()
    const onProgress = () => control.abort(new DOMException('stopped', 'AbortError'))
    try { await footage.cutClip(opened.value, { start: 0, end: 8 }, { way: 'exact', signal: control.signal, onProgress }); return 'went through' }
    catch (error) { return error.name }`,
  )
  expect(said).toBe('AbortError')
}, 60_000)

test('[F22] stopped, cutting and proposing stills let go of every decoder and encoder they took', async () => {
  const left = await page.on<string[]>(
    folder.path('end.mp4'),
    `${OPEN}
    const taken = []
    const kinds = ['VideoDecoder', 'VideoEncoder', 'AudioDecoder', 'AudioEncoder']
    const plain = kinds.map(kind => globalThis[kind])
    for (const kind of kinds)
      globalThis[kind] = class extends globalThis[kind] { constructor(init) { super(init); taken.push([kind, this]) } }
    const stopped = async (work, delay) => {
      const control = new AbortController()
      const stop = () => control.abort(new DOMException('stopped', 'AbortError'))
      if (delay !== undefined) setTimeout(stop, delay)
      try { await work(control.signal, stop); return 'went through' } catch (error) { return error.name }
    }
    const said = []
    const span = { start: 0, end: 8 }
    for (const gain of [0, -6])
      said.push(await stopped((signal, onProgress) => footage.cutClip(opened.value, span, { way: 'exact', gain, signal, onProgress })))
    said.push(await stopped(signal => footage.proposeStills(opened.value, span, { signal }), 100))
    const open = () => taken.filter(([, codec]) => codec.state !== 'closed').map(([kind]) => kind)
    for (let i = 0; i < 50 && open().length > 0; i++) await new Promise(resolve => setTimeout(resolve, 100))
    kinds.forEach((kind, i) => { globalThis[kind] = plain[i] })
    opened.value.close()
    return [...said, taken.length > 2, ...open()]`,
  )
  expect(left).toEqual(['AbortError', 'AbortError', 'AbortError', true])
}, 60_000)

test('[F48] a full disk is told when a clip is saved, copied or exact; the clip before stays whole', async () => {
  const session = await page.page.context().newCDPSession(page.page)
  const { origin } = new URL(page.page.url())
  const save = (way: string) => `${OPEN}
    const { value } = await footage.cutClip(opened.value, { start: 2, end: 6 }, { way: '${way}' })
    const root = await navigator.storage.getDirectory()
    const handle = await root.getFileHandle('clip.mp4', { create: true })
    const to = await handle.createWritable()
    const result = await footage.writeBlob(to, value.blob, file.name).then(() => 'saved', error => footage.whyNotSaved(error, 'clip.mp4'))
    const names = []
    for await (const name of root.keys()) names.push(name)
    return [result, (await handle.getFile()).size, names]`
  for (const way of ['copy', 'exact']) {
    const saved = await page.on<[string, number, string[]]>(folder.path('end.mp4'), save(way))
    expect(saved).toEqual(['saved', expect.any(Number), ['clip.mp4']])
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: saved[1] + 10_000 })
    const full = await page.on<[string, number, string[]]>(folder.path('end.mp4'), save(way))
    expect(full).toEqual([
      expect.stringMatching(/^The disk is full(?: or cannot be written)?: clip.mp4 was not saved/),
      saved[1],
      ['clip.mp4'],
    ])
    await session.send('Storage.overrideQuotaForOrigin', { origin })
  }
}, 60_000)

test('[F14] timing can be stopped; the worker is gone then', async () => {
  const before = page.page.workers().length
  const said = await page.on<string>(
    folder.path('end.mp4'),
    `${OPEN}
    const control = new AbortController()
    setTimeout(() => control.abort(new DOMException('stopped', 'AbortError')), 100)
    try { await footage.alignFootage(opened.value, ['First take off the belt cover.'], [{ start: 0, end: 8 }], { signal: control.signal }); return 'went through' }
    catch (error) { return error.name }`,
  )
  expect(said).toBe('AbortError')
  await expect.poll(() => page.page.workers().length).toBeLessThanOrEqual(before)
})

test('[F14] in the browser a text is timed in a worker, with progress', async () => {
  const talk = await makeSpeech(WHEEL.slice(0, 6))
  const pcm = folder.path('wheel.raw')
  await writeFile(pcm, Buffer.from(Int16Array.from(talk.samples, sample => sample * 32767).buffer))
  await ffmpeg(
    '-f',
    's16le',
    '-ar',
    '16000',
    '-ac',
    '1',
    '-i',
    pcm,
    '-c:a',
    'aac',
    '-ar',
    '44100',
    folder.path('wheel.m4a'),
  )
  const { starts, shares } = await page.on<{ starts: number[]; shares: number[] }>(
    folder.path('wheel.m4a'),
    `${OPEN} const heard = await footage.listen(opened.value)
    const shares = []
    const texts = ${JSON.stringify(WHEEL.slice(0, 6))}
    const aligned = await footage.alignFootage(opened.value, texts, heard.value.speech, { onProgress: share => shares.push(share) })
    if (!aligned.ok) throw new Error(JSON.stringify(aligned.problems))
    return { starts: aligned.value.lines.map(({ start }) => start), shares }`,
  )
  const errors = talk.sentences.map(({ start }, i) => Math.abs(start - (starts[i] ?? 99)))
  expect(errors.reduce((sum, error) => sum + error, 0) / errors.length).toBeLessThan(0.15)
  expect(shares.at(-1)).toBe(1)
}, 120_000)

test('[F32] sound and picture the browser can’t decode are read through ffmpeg, and that is told', async () => {
  const read = await page.on<{ ways: object; notices: string[]; peaks: number; speech: number; still: object }>(
    folder.path('other.mp4'),
    `${OPEN} const heard = await footage.listen(opened.value)
    if (!heard.ok) throw new Error(JSON.stringify(heard.problems))
    const still = await footage.stillAt(opened.value, 2)
    const { peaks, speech } = heard.value
    const { ways, notices } = opened.value
    return { ways, notices: notices.map(({ code }) => code), peaks: Math.max(...peaks), speech: speech.length, still: still.value ?? still }`,
  )
  expect(read.ways).toEqual({ picture: 'ffmpeg', sound: 'ffmpeg' })
  expect(read.notices).toEqual(['picture-not-decodable', 'sound-not-decodable'])
  expect(read.peaks).toBeGreaterThan(0.4)
  expect(read.speech).toBeGreaterThan(0)
  expect(read.still).toMatchObject({ width: 640, height: 360 })
}, 120_000)

test('[F32] of HEVC, which the browser can’t decode, stills are proposed through ffmpeg: those in focus and well lit', async () => {
  const x265 = ['-c:v', 'libx265', '-x265-params', 'log-level=none', '-preset', 'ultrafast', '-tag:v', 'hvc1']
  await ffmpeg('-i', folder.path('focus.mp4'), ...x265, folder.path('focus-hevc.mp4'))
  const read = await page.on<{ way: string; times: number[]; sizes: number[][] }>(
    folder.path('focus-hevc.mp4'),
    `${OPEN} const stills = await footage.proposeStills(opened.value, { start: 0, end: 8 })
    if (!stills.ok) throw new Error(JSON.stringify(stills.problems))
    return {
      way: opened.value.ways.picture,
      times: stills.value.map(({ time }) => time),
      sizes: stills.value.map(({ width, height }) => [width, height]),
    }`,
  )
  expect(read.way).toBe('ffmpeg')
  expect(read.sizes).toEqual([1, 2, 3].map(() => [640, 360]))
  for (const time of read.times) {
    expect(time).toBeGreaterThanOrEqual(3)
    expect(time).toBeLessThanOrEqual(5)
  }
}, 120_000)

test('[F32] stopped while ffmpeg works on it, proposing stills throws the reason, and ffmpeg is gone', async () => {
  const before = page.page.workers().length
  const said = await page.on<string>(
    folder.path('other.mp4'),
    `${OPEN} const control = new AbortController()
    const plain = Worker.prototype.postMessage
    Worker.prototype.postMessage = function (message, ...rest) {
      plain.call(this, message, ...rest)
      if (message.type === 'EXEC') setTimeout(() => control.abort(new DOMException('stopped', 'AbortError')))
    }
    const span = { start: 0, end: 5 }
    try { await footage.proposeStills(opened.value, span, { signal: control.signal }); return 'went through' }
    catch (error) { return error.name }
    finally { Worker.prototype.postMessage = plain }`,
  )
  expect(said).toBe('AbortError')
  await expect.poll(() => page.page.workers().length).toBeLessThanOrEqual(before)
}, 60_000)
