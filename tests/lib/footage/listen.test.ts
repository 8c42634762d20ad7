import { truncate } from 'node:fs/promises'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type FootagePage, footagePage } from './browser'
import { ffmpeg, makeTalk, sampleFolder } from './samples'

let folder: Awaited<ReturnType<typeof sampleFolder>>
let page: FootagePage

beforeAll(async () => {
  folder = await sampleFolder()
  const { path } = folder
  await makeTalk(path)
  await ffmpeg('-stream_loop', '8', '-i', path('talk.wav'), '-ac', '2', '-ar', '44100', '-c:a', 'aac', path('long.m4a'))
  await ffmpeg('-i', path('long.m4a'), '-c', 'copy', path('long.mkv'))
  await ffmpeg('-i', path('long.m4a'), '-c:a', 'libmp3lame', path('long.mp3'))
  await ffmpeg('-i', path('long.m4a'), '-c:a', 'libopus', path('long.webm'))
  await ffmpeg('-i', path('end.mp4'), '-an', '-c', 'copy', path('silent.mp4'))
  await ffmpeg('-i', path('end.mp4'), '-c', 'copy', '-movflags', '+faststart', path('start.mp4'))
  await ffmpeg('-i', path('end.mp4'), '-c', 'copy', path('phone.mov'))
  // Frames of over 1 MB between the sound.
  const noise = 'nullsrc=size=1280x720:rate=5:duration=3,noise=alls=100:allf=t'
  const lossless = ['-c:v', 'libx264', '-qp', '0', '-preset', 'ultrafast', '-c:a', 'aac', '-shortest']
  await ffmpeg('-f', 'lavfi', '-i', noise, '-i', path('talk.wav'), ...lossless, path('wide.mp4'))
  page = await footagePage()
}, 120_000)

afterAll(async () => {
  await page.close()
  await folder.remove()
})

const OPEN = `
  const opened = await footage.openFootage(file, file.name)
  if (!opened.ok) return opened.problems
`

/** Spans of speech: 4 sentences, 9 times over. */
type Heard = {
  ways: { sound: string }
  buckets: number
  worst: number
  share: number
  speech: [number, number][]
  reports: number[]
}

test.each(['long.m4a', 'long.mkv', 'long.mp3', 'long.webm', 'talk.wav'])(
  '[F5] peaks of %s are those of its samples, one by one',
  async name => {
    const heard = await page.on<Heard>(
      folder.path(name),
      `${OPEN}
    const reports = []
    const listened = await footage.listen(opened.value, { onProgress: ({ done }) => reports.push(done) })
    if (!listened.ok) return listened.problems
    const { peaks, seconds, speech } = listened.value
    const plain = footage.silentPeaks(seconds)
    for await (const piece of footage.soundPieces(await opened.value.input.getPrimaryAudioTrack())) footage.addPeaks(plain, piece)
    const off = plain.map((peak, i) => Math.abs(peak - peaks[i]))
    return {
      ways: opened.value.ways,
      buckets: peaks.length - Math.ceil(seconds * 100 - 1e-6),
      worst: Math.max(...off),
      share: off.filter(by => by > 0.02).length / off.length,
      speech: speech.map(({ start, end }) => [start, end]),
      reports,
    }`,
    )
    expect(heard).toMatchObject({ ways: { sound: 'browser' }, buckets: 0 })
    expect(heard.share).toBeLessThan(0.01)
    expect(heard.speech.length).toBeGreaterThanOrEqual(name === 'talk.wav' ? 3 : 27)
    expect(heard.reports.at(-1)).toBeGreaterThan(name === 'talk.wav' ? 9 : 80)
  },
)

test.each(['end.mp4', 'start.mp4', 'phone.mov', 'wide.mp4', 'long.m4a', 'long.webm'])(
  '[F5] packets of %s read by its index are those the demuxer gives, from any moment on',
  async name => {
    const [own, given] = await page.on<[string[], string[]]>(
      folder.path(name),
      `${OPEN}
      const track = await opened.value.input.getPrimaryAudioTrack()
      const all = async (from, source) => {
        const list = []
        for await (const lot of footage.soundPackets(track, from, source))
          for (const { time, data } of lot) list.push(time.toFixed(4) + ' ' + data.length + ' ' + data.reduce((sum, byte) => (31 * sum + byte) % 1000003, 0))
        return list
      }
      return [[...(await all(0, file)), ...(await all(2, file)).slice(-15)], [...(await all(0)), ...(await all(2)).slice(-15)]]`,
    )
    expect(own.length).toBeGreaterThan(80)
    expect(own).toEqual(given)
  },
)

test('[F5] sound with a gap is heard where it is played, not earlier', async () => {
  const { path } = folder
  // The time stamps leave out two seconds, which the decoder alone would close up.
  await ffmpeg('-i', path('talk.wav'), '-af', "aselect='lt(t,3)+gt(t,5)'", '-c:a', 'aac', path('gap.m4a'))
  const peaks = await page.on<number[]>(
    path('gap.m4a'),
    `${OPEN} return Array.from((await footage.listen(opened.value)).value.peaks)`,
  )
  const loudest = (from: number, to: number) => Math.max(...peaks.slice(from * 100, to * 100))
  expect([loudest(1, 2.9) > 0.2, loudest(3.1, 4.9), loudest(5.1, 8) > 0.2]).toEqual([true, 0, true])
})

test('[F5] what was listened to is kept by fingerprint, and the second time nothing is decoded', async () => {
  const result = await page.on<{ same: boolean; keys: string[]; reports: number }>(
    folder.path('talk.wav'),
    `${OPEN}
    const kept = new Map()
    const cache = { get: async key => kept.get(key), put: async (key, value) => void kept.set(key, value) }
    const fingerprint = await footage.fingerprintOf(file)
    const first = await footage.listen(opened.value, { cache, fingerprint })
    let reports = 0
    const second = await footage.listen(opened.value, { cache, fingerprint, onProgress: () => reports++ })
    return { same: first.value === second.value, keys: [...kept.keys()], reports }`,
  )
  expect(result).toEqual({ same: true, keys: [expect.stringMatching(/^listened-\d+-[0-9a-f]{64}$/)], reports: 0 })
})

test('[F5] what was heard is there though the disk is too full to keep it', async () => {
  const speech = await page.on<number>(
    folder.path('talk.wav'),
    `${OPEN}
    const full = () => Promise.reject(new DOMException('no room', 'QuotaExceededError'))
    const heard = await footage.listen(opened.value, { cache: { get: full, put: full }, fingerprint: 'any' })
    return heard.value.speech.length`,
  )
  expect(speech).toBeGreaterThanOrEqual(3)
})

test('[F5] listening can be stopped; the worker is gone then', async () => {
  const before = page.page.workers().length
  const said = await page.on<string>(
    folder.path('long.m4a'),
    `${OPEN}
    const control = new AbortController()
    setTimeout(() => control.abort(new DOMException('stopped', 'AbortError')), 30)
    try { await footage.listen(opened.value, { signal: control.signal }); return 'went through' } catch (error) { return error.name }`,
  )
  expect(said).toBe('AbortError')
  await expect.poll(() => page.page.workers().length).toBeLessThanOrEqual(before)
})

test('[F5] of footage cut short what is there is listened to', async () => {
  await ffmpeg('-i', folder.path('long.m4a'), '-c', 'copy', '-movflags', '+faststart', folder.path('cut.m4a'))
  await truncate(folder.path('cut.m4a'), 300_000)
  const heard = await page.on<{ seconds: number; speech: number; loudest: number; last: number }>(
    folder.path('cut.m4a'),
    `${OPEN} const listened = await footage.listen(opened.value)
    if (!listened.ok) return listened.problems
    const { peaks, speech, seconds } = listened.value
    return { seconds, speech: speech.length, loudest: Math.max(...peaks), last: Math.max(...peaks.slice(-1000)) }`,
  )
  expect(heard.seconds).toBeGreaterThan(10)
  expect(heard.seconds).toBeLessThan(60)
  expect(heard.speech).toBeGreaterThan(2)
  expect(Math.min(heard.loudest, heard.last)).toBeGreaterThan(0.2)
})

test('[F5] five hours of sound open at once, are heard as they come, and let go of when stopped', async () => {
  // The same talk again and again, its packets copied: 18,000 s.
  await ffmpeg(
    '-stream_loop',
    '-1',
    '-i',
    folder.path('long.m4a'),
    '-t',
    '18000',
    '-c',
    'copy',
    folder.path('five.m4a'),
  )
  const before = page.page.workers().length
  const heard = await page.on<{ seconds: number; name: string; done: number; left: number; buckets: number }>(
    folder.path('five.m4a'),
    `${OPEN}
    const control = new AbortController()
    const seen = { seconds: opened.value.seconds }
    const onProgress = ({ done, left, total, peaks }) => {
      if (done < 60 || left === undefined) return
      Object.assign(seen, { done, left, buckets: peaks.length })
      control.abort(new DOMException('stopped', 'AbortError'))
    }
    try { await footage.listen(opened.value, { signal: control.signal, onProgress }) } catch (error) { seen.name = error.name }
    opened.value.close()
    return seen`,
  )
  expect(heard.seconds).toBeCloseTo(18_000, 0)
  expect(heard).toMatchObject({ name: 'AbortError', buckets: Math.ceil(heard.seconds * 100 - 1e-6) })
  expect(heard.done).toBeLessThan(17_000)
  expect(heard.left).toBeGreaterThan(0)
  await expect.poll(() => page.page.workers().length).toBeLessThanOrEqual(before)
}, 60_000)

test('[F5] footage without sound says there is nothing to listen to', async () => {
  const said = await page.on<string>(
    folder.path('silent.mp4'),
    `${OPEN} return (await footage.listen(opened.value)).problems[0].code`,
  )
  expect(said).toBe('no-sound')
})
