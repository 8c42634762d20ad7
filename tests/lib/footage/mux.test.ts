import { createHash } from 'node:crypto'
import { createWriteStream } from 'node:fs'
import { readFile, truncate, writeFile } from 'node:fs/promises'
import { Writable } from 'node:stream'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { MuxTexts } from '@/lib/footage/lay-out'
import { muxTexts } from '@/lib/footage/mux'
import { footagePage } from './browser'
import { ffmpeg, run, sampleFolder } from './samples'

let folder: Awaited<ReturnType<typeof sampleFolder>>

const TEXTS: MuxTexts = {
  language: 'eng',
  chapters: [
    { start: 0, title: 'Beginning' },
    { start: 4.5, title: 'Drain the pan – 2.5 l' },
    { start: 12, title: 'Fit the Überwurf nut; "snug"' },
  ],
  captions: [
    { start: 1, end: 3, text: 'Slide it under,\nand keep your hands <clear> & dry.' },
    { start: 3, end: 5, text: 'Straight after.' },
    { start: 8.123, end: 9.5, text: 'Fünf Grad, 五度' },
  ],
}

const FILES = ['end.mp4', 'start.mp4', 'phone.mov', 'sound.m4a', 'open.mp4']

beforeAll(async () => {
  folder = await sampleFolder()
  const { path } = folder
  const picture = ['-f', 'lavfi', '-i', 'testsrc2=size=320x180:rate=25:duration=20']
  const sound = ['-f', 'lavfi', '-i', 'sine=frequency=300:duration=20']
  const codecs = ['-c:v', 'libx264', '-preset', 'ultrafast', '-bf', '2', '-pix_fmt', 'yuv420p', '-c:a', 'aac']
  await ffmpeg(...picture, ...sound, ...codecs, path('end.mp4'))
  const copy = ['-i', path('end.mp4'), '-c', 'copy']
  await ffmpeg(...copy, '-movflags', '+faststart', path('start.mp4'))
  await ffmpeg(...copy, '-metadata:s:v', 'rotate=90', '-metadata', 'title=Own title', path('phone.mov'))
  await ffmpeg(...copy, '-vn', path('sound.m4a'))
  await ffmpeg(...copy, '-movflags', '+frag_keyframe+empty_moov', path('fragments.mp4'))
  await ffmpeg(...copy, '-movflags', '+faststart', path('cut.mp4'))
  await truncate(path('cut.mp4'), 300_000)
  await writeFile(path('list.mp4'), 'just some notes, not footage at all\n'.repeat(50))
  // An index in front, and media that go on to the end of the file without saying how long they are.
  const open = await readFile(path('start.mp4'))
  open.writeUInt32BE(0, open.indexOf('mdat') - 4)
  await writeFile(path('open.mp4'), open)
}, 60_000)

afterAll(() => folder.remove())

const mux = async (name: string, texts: MuxTexts, to: string) => {
  const muxed = await muxTexts(await folder.blob(name), name, texts)
  if (!muxed.ok) throw new Error(JSON.stringify(muxed.problems))
  await muxed.value.stream().pipeTo(Writable.toWeb(createWriteStream(folder.path(to))))
  return muxed.value
}

const problemOf = async (name: string, texts = TEXTS) => {
  const muxed = await muxTexts(await folder.blob(name), name, texts)
  return muxed.ok ? undefined : muxed.problems.map(({ code }) => code)
}

type Probe = {
  streams: { codec_type: string; codec_name?: string; codec_tag_string: string; tags?: Record<string, string> }[]
  chapters: { start_time: string; end_time: string; tags: { title: string } }[]
  format: { duration: string; tags: Record<string, string> }
}
const probe = async (name: string): Promise<Probe> =>
  JSON.parse(
    await run(
      'ffprobe',
      '-v',
      'error',
      '-show_streams',
      '-show_chapters',
      '-show_format',
      '-of',
      'json',
      folder.path(name),
    ),
  )

const chaptersOf = async (name: string) =>
  (await probe(name)).chapters.map(({ start_time, end_time, tags }) => [
    Number(start_time),
    Number(end_time),
    tags.title,
  ])

/** Start, end, text of each caption, read by ffmpeg. */
const captionsOf = async (name: string) => {
  const text = await ffmpeg('-i', folder.path(name), '-map', '0:s', '-f', 'webvtt', '-')
  return text
    .trim()
    .split('\n\n')
    .slice(1)
    .map(cue => {
      const [times = '', ...lines] = cue.split('\n')
      const [start, end] = times
        .split(' --> ')
        .map(time => time.split(':').reduce((sum, part) => sum * 60 + Number(part), 0))
      return { start, end, text: lines.join('\n') }
    })
}

/** A hash a stream over all packets, picture and sound. */
const packetsOf = (name: string) => {
  const streams = name.endsWith('m4a') ? ['-map', '0:a'] : ['-map', '0:v', '-map', '0:a']
  return ffmpeg('-i', folder.path(name), ...streams, '-c', 'copy', '-f', 'streamhash', '-')
}

const EXPECTED = [
  [0, 4.5, 'Beginning'],
  [4.5, 12, 'Drain the pan – 2.5 l'],
  [12, 20, 'Fit the Überwurf nut; "snug"'],
]

test.each(FILES)(
  '[F45] chapters stand in the copy of %s, for players of either way to say it',
  async name => {
    await mux(name, TEXTS, `a-${name}`)
    expect(await chaptersOf(`a-${name}`)).toEqual(EXPECTED)
    // Each of the two ways alone: the other is made unreadable.
    for (const [way, other] of [
      ['chap', 'chpl'],
      ['chpl', 'chap'],
    ]) {
      const bytes = await readFile(folder.path(`a-${name}`))
      for (let at = bytes.indexOf(way ?? ''); at >= 0; at = bytes.indexOf(way ?? '', at)) bytes.write('skip', at)
      await writeFile(folder.path(`${other}-${name}`), bytes)
      expect(await chaptersOf(`${other}-${name}`), `${other} alone`).toEqual(EXPECTED)
    }
  },
  60_000,
)

test.each(FILES)('[F45] captions in the copy of %s are read back with the same times and words', async name => {
  await mux(name, TEXTS, `b-${name}`)
  expect(await captionsOf(`b-${name}`)).toEqual(TEXTS.captions)
  const { streams, format } = await probe(`b-${name}`)
  expect(streams.find(({ codec_type }) => codec_type === 'subtitle')).toMatchObject({
    codec_name: 'mov_text',
    codec_tag_string: 'tx3g',
    tags: { language: 'eng' },
  })
  expect(Number(format.duration)).toBeCloseTo(20, 1)
})

test.each(FILES)(
  '[F46] picture and sound of %s are copied packet by packet, and decode without a fault',
  async name => {
    const before = createHash('sha256')
      .update(await readFile(folder.path(name)))
      .digest('hex')
    const { bytes } = await mux(name, TEXTS, `c-${name}`)
    expect(await packetsOf(`c-${name}`)).toBe(await packetsOf(name))
    const media = name.endsWith('m4a') ? ['-map', '0:a'] : ['-map', '0:v', '-map', '0:a']
    expect(await ffmpeg('-xerror', '-i', folder.path(`c-${name}`), ...media, '-f', 'null', '-')).toBe('')
    const copy = await readFile(folder.path(`c-${name}`))
    expect(copy.length).toBe(bytes)
    const isInFront = (data: Buffer) => data.indexOf('moov') < data.indexOf('mdat')
    expect(isInFront(copy)).toBe(name === 'start.mp4' || name === 'open.mp4')
    expect(
      createHash('sha256')
        .update(await readFile(folder.path(name)))
        .digest('hex'),
    ).toBe(before)
  },
)

test('[F46] what else the file says of itself stays: its title and how it is turned', async () => {
  await mux('phone.mov', TEXTS, 'turned.mov')
  const [old, copy] = [await probe('phone.mov'), await probe('turned.mov')]
  expect(copy.format.tags).toEqual(old.format.tags)
  expect(copy.streams[0]).toEqual(old.streams[0])
  expect(copy.streams[0]).toHaveProperty('side_data_list.0.rotation')
})

test('[F46] a copy of a copy has the new texts only; nothing of the old ones is left in the file', async () => {
  await mux('start.mp4', TEXTS, 'first.mp4')
  const texts: MuxTexts = {
    chapters: [{ start: 0, title: 'All of it' }],
    captions: [{ start: 2, end: 4, text: 'Said otherwise.' }],
  }
  await mux('first.mp4', texts, 'second.mp4')
  expect(await chaptersOf('second.mp4')).toEqual([[0, 20, 'All of it']])
  expect(await captionsOf('second.mp4')).toEqual(texts.captions)
  expect((await probe('second.mp4')).streams.map(({ codec_type }) => codec_type)).toEqual([
    'video',
    'audio',
    'subtitle',
    'data',
  ])
  const bytes = await readFile(folder.path('second.mp4'))
  for (const old of ['Straight after', 'Überwurf', 'Beginning']) expect(bytes.includes(old), old).toBe(false)
  expect(await packetsOf('second.mp4')).toBe(await packetsOf('start.mp4'))
})

test('[F46] chapters made by another tool are replaced', async () => {
  await writeFile(
    folder.path('meta.txt'),
    ';FFMETADATA1\n[CHAPTER]\nTIMEBASE=1/1000\nSTART=0\nEND=20000\ntitle=Someone else’s\n',
  )
  await ffmpeg(
    '-i',
    folder.path('end.mp4'),
    '-i',
    folder.path('meta.txt'),
    '-map_metadata',
    '1',
    '-c',
    'copy',
    folder.path('had.mp4'),
  )
  expect(await chaptersOf('had.mp4')).toHaveLength(1)
  await mux('had.mp4', TEXTS, 'has.mp4')
  expect(await chaptersOf('has.mp4')).toEqual(EXPECTED)
  expect((await probe('has.mp4')).streams).toHaveLength(4)
  expect(await packetsOf('has.mp4')).toBe(await packetsOf('had.mp4'))
})

test('[F45] more than 255 chapters stand in the track; a list of so many can’t be written', async () => {
  const chapters = Array.from({ length: 300 }, (_, i) => ({ start: i / 20, title: `Part ${i + 1}` }))
  await mux('end.mp4', { chapters, captions: [] }, 'many.mp4')
  const found = await chaptersOf('many.mp4')
  expect(found).toHaveLength(300)
  expect(found.at(-1)).toEqual([14.95, 20, 'Part 300'])
})

test('[F47] what can’t be copied so is refused with the reason', async () => {
  expect(await problemOf('list.mp4')).toEqual(['not-mp4'])
  expect(await problemOf('cut.mp4')).toEqual(['cut-short'])
  expect(await problemOf('fragments.mp4')).toEqual(['in-fragments'])
  const late = { chapters: [{ start: 1, title: 'Late' }], captions: [] }
  const back = {
    chapters: [
      { start: 0, title: 'One' },
      { start: 0, title: 'Two' },
    ],
    captions: [],
  }
  expect(await problemOf('end.mp4', late)).toEqual(['chapters-out-of-order'])
  expect(await problemOf('end.mp4', back)).toEqual(['chapters-out-of-order'])
  const broken = await readFile(folder.path('end.mp4'))
  broken.writeUInt32BE(0xffffff, broken.indexOf('stco') + 8)
  await writeFile(folder.path('broken.mp4'), broken)
  expect(await problemOf('broken.mp4')).toEqual(['no-index'])
})

test('[F47] writing tells how far it is, can be stopped, and says when the file has gone', async () => {
  const muxed = await muxTexts(await folder.blob('end.mp4'), 'end.mp4', TEXTS)
  if (!muxed.ok) throw new Error('refused')
  const told: number[] = []
  for await (const chunk of muxed.value.stream({ onProgress: done => told.push(done) }))
    expect(chunk.length).toBeLessThanOrEqual(2 ** 22)
  expect(told.at(-1)).toBe(muxed.value.bytes)
  const control = new AbortController()
  const stopped = muxed.value.stream({
    signal: control.signal,
    onProgress: () => control.abort(new DOMException('stopped', 'AbortError')),
  })
  await expect(new Response(stopped).arrayBuffer()).rejects.toThrow('stopped')
  await ffmpeg('-i', folder.path('end.mp4'), '-c', 'copy', folder.path('going.mp4'))
  const gone = await muxTexts(await folder.blob('going.mp4'), 'going.mp4', TEXTS)
  if (!gone.ok) throw new Error('refused')
  await truncate(folder.path('going.mp4'), 1000)
  await expect(new Response(gone.value.stream()).arrayBuffer()).rejects.toMatchObject({ code: 'footage-gone' })
})

test('[F46] a page makes the same copy, byte for byte, and plays it', async () => {
  await mux('start.mp4', TEXTS, 'node.mp4')
  const page = await footagePage('tests/lib/footage/mux-page.ts')
  try {
    const made = await page.on<{ hash: string; seconds: number; at: number }>(
      folder.path('start.mp4'),
      `const muxed = await footage.muxTexts(file, file.name, ${JSON.stringify(TEXTS)})
      const bytes = await muxed.value.blob().arrayBuffer()
      const hash = Array.from(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)), byte => byte.toString(16).padStart(2, '0')).join('')
      const video = document.createElement('video')
      video.src = URL.createObjectURL(new Blob([bytes], { type: 'video/mp4' }))
      await new Promise((resolve, reject) => { video.oncanplay = resolve; video.onerror = () => reject(new Error(video.error.message)) })
      video.currentTime = 13
      await new Promise(resolve => { video.onseeked = resolve })
      return { hash, seconds: video.duration, at: video.currentTime }`,
    )
    expect(made.hash).toBe(
      createHash('sha256')
        .update(await readFile(folder.path('node.mp4')))
        .digest('hex'),
    )
    expect(made.seconds).toBeCloseTo(20, 1)
    expect(made.at).toBe(13)
  } finally {
    await page.close()
  }
}, 60_000)

test('[F48] a full disk is told; the copy before stays as it was, and with room again it is saved', async () => {
  const page = await footagePage('tests/lib/footage/mux-page.ts')
  try {
    const session = await page.page.context().newCDPSession(page.page)
    const { origin } = new URL(page.page.url())
    const save = `
      const root = await navigator.storage.getDirectory()
      const handle = await root.getFileHandle('copy.mp4', { create: true })
      const muxed = await footage.muxTexts(file, file.name, ${JSON.stringify(TEXTS)})
      const result = await handle.createWritable().then(to => footage.writeBlob(to, muxed.value.blob(), file.name)).then(() => 'saved', error => footage.whyNotSaved(error, 'copy.mp4'))
      const names = []
      for await (const name of root.keys()) names.push(name)
      return [result, (await handle.getFile()).size, names]`
    const saved = await page.on<[string, number, string[]]>(folder.path('end.mp4'), save)
    expect(saved).toEqual(['saved', expect.any(Number), ['copy.mp4']])
    // The browser's own disk with room for what is there and 100 kB.
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: saved[1] + 100_000 })
    const full = await page.on<[string, number, string[]]>(folder.path('end.mp4'), save)
    expect(full).toEqual([
      expect.stringMatching(/^The disk is full(?: or cannot be written)?: copy.mp4 was not saved/),
      saved[1],
      ['copy.mp4'],
    ])
    await session.send('Storage.overrideQuotaForOrigin', { origin })
    expect(await page.on(folder.path('end.mp4'), save)).toEqual(saved)
  } finally {
    await page.close()
  }
}, 60_000)

test('[F48] stopped in the middle, or the footage gone meanwhile, the copy saved before stays whole', async () => {
  const page = await footagePage('tests/lib/footage/mux-page.ts')
  const picture = ['-f', 'lavfi', '-i', 'nullsrc=size=1280x720:rate=25:duration=1,noise=alls=100:allf=t']
  await ffmpeg(...picture, '-c:v', 'libx264', '-qp', '0', '-preset', 'ultrafast', folder.path('large.mp4'))
  const save = (then: string) => `
    const root = await navigator.storage.getDirectory()
    const handle = await root.getFileHandle('copy.mp4', { create: true })
    const muxed = await footage.muxTexts(file, file.name, { chapters: [{ start: 0, title: 'All' }], captions: [] })
    const control = new AbortController()
    const told = []
    const onProgress = done => { told.push(done / muxed.value.bytes); ${then} }
    const to = await handle.createWritable()
    const result = await footage.writeBlob(to, muxed.value.blob(), file.name, { signal: control.signal, onProgress }).then(() => 'saved', error => (typeof error.code === 'string' ? error.code : error.name))
    const names = []
    for await (const name of root.keys()) names.push(name)
    return [result, told.length > 1, (await handle.getFile()).size - muxed.value.bytes, names]`
  try {
    const whole = ['saved', true, 0, ['copy.mp4']]
    expect(await page.on(folder.path('large.mp4'), save(''))).toEqual(whole)
    const stop = "control.abort(new DOMException('stopped', 'AbortError'))"
    expect(await page.on(folder.path('large.mp4'), save(stop))).toEqual(['AbortError', false, 0, ['copy.mp4']])
    await page.page.exposeFunction('cut', () => truncate(folder.path('large.mp4'), 1000))
    expect(await page.on(folder.path('large.mp4'), save('').replace('const to =', 'await cut(); const to ='))).toEqual([
      'footage-gone',
      false,
      0,
      ['copy.mp4'],
    ])
  } finally {
    await page.close()
  }
}, 60_000)

test('[F48] the tab closed in the middle of a copy: the one saved before stays whole, and the next is saved', async () => {
  const page = await footagePage('tests/lib/footage/mux-page.ts')
  const save = (then: string) => `
    const root = await navigator.storage.getDirectory()
    const handle = await root.getFileHandle('copy.mp4', { create: true })
    const muxed = await footage.muxTexts(file, file.name, { chapters: [{ start: 0, title: 'All' }], captions: [] })
    const to = await handle.createWritable()
    ${then}
    await footage.writeBlob(to, muxed.value.blob(), file.name)
    return (await handle.getFile()).size - muxed.value.bytes`
  try {
    expect(await page.on(folder.path('end.mp4'), save(''))).toBe(0)
    // Half of the copy is on the disk when the tab closes.
    const half = new Promise<void>(resolve => void page.page.exposeFunction('half', resolve))
    const then =
      'await to.write(muxed.value.blob().slice(0, muxed.value.bytes / 2)); await half(); await new Promise(() => {})'
    void page.on(folder.path('end.mp4'), save(then)).catch(() => {})
    await half
    await page.reopen()
    const kept = `
      const root = await navigator.storage.getDirectory()
      const names = []
      for await (const name of root.keys()) names.push(name)
      return [names, (await (await root.getFileHandle('copy.mp4')).getFile()).size > file.size]`
    expect(await page.on(folder.path('end.mp4'), kept)).toEqual([['copy.mp4'], true])
    expect(await page.on(folder.path('end.mp4'), save(''))).toBe(0)
  } finally {
    await page.close()
  }
}, 60_000)
