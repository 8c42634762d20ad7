import { createWriteStream } from 'node:fs'
import { readFile, truncate } from 'node:fs/promises'
import { Writable } from 'node:stream'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { MuxTexts } from '@/lib/footage/lay-out'
import { muxTexts } from '@/lib/footage/mux'
import { ffmpeg, run, sampleFolder } from './samples'

let folder: Awaited<ReturnType<typeof sampleFolder>>

const TEXTS: MuxTexts = {
  language: 'eng',
  chapters: [
    { start: 0, title: 'Beginning' },
    { start: 4.5, title: 'Fit the Überwurf nut; "snug"' },
    { start: 40, title: 'Close the hatch' },
  ],
  captions: [
    { start: 1, end: 3, text: 'Slide it under,\nand keep your hands clear & dry.' },
    { start: 3, end: 5, text: 'Straight after.' },
    { start: 8.123, end: 9.5, text: 'Fünf Grad, 五度' },
    { start: 49, end: 70, text: 'To the end.' },
  ],
}

/** Made by ffmpeg; sizes and places as each muxer writes them: cues behind, in front, none at all, nothing sized. */
const FILES = ['phone.webm', 'same.mkv', 'front.mkv', 'live.webm', 'sound.mka']

beforeAll(async () => {
  folder = await sampleFolder()
  const { path } = folder
  const picture = ['-f', 'lavfi', '-i', 'testsrc2=size=160x90:rate=10:duration=50']
  const sound = ['-f', 'lavfi', '-i', 'sine=frequency=300:duration=50']
  const vp9 = ['-c:v', 'libvpx-vp9', '-cpu-used', '8', '-deadline', 'realtime', '-b:v', '80k', '-g', '20']
  await ffmpeg(...picture, ...sound, ...vp9, '-c:a', 'libopus', path('phone.webm'))
  await ffmpeg(
    ...picture,
    ...sound,
    '-c:v',
    'libx264',
    '-preset',
    'ultrafast',
    '-bf',
    '2',
    '-c:a',
    'aac',
    path('same.mkv'),
  )
  await ffmpeg('-i', path('same.mkv'), '-c', 'copy', '-metadata', 'title=Own', '-cues_to_front', '1', path('front.mkv'))
  await ffmpeg('-i', path('phone.webm'), '-c', 'copy', '-f', 'webm', '-live', '1', path('live.webm'))
  await ffmpeg('-i', path('same.mkv'), '-vn', '-c', 'copy', path('sound.mka'))
}, 60_000)
afterAll(() => folder.remove())

const mux = async (name: string, texts: MuxTexts, to: string) => {
  const muxed = await muxTexts(await folder.blob(name), name, texts)
  if (!muxed.ok) throw new Error(JSON.stringify(muxed.problems))
  await muxed.value.stream().pipeTo(Writable.toWeb(createWriteStream(folder.path(to))))
  expect((await readFile(folder.path(to))).length).toBe(muxed.value.bytes)
}

type Probe = {
  streams: { codec_type: string; codec_name: string; tags?: Record<string, string> }[]
  chapters: { start_time: string; end_time: string; tags: { title: string } }[]
  format: { tags?: Record<string, string> }
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

/** Captions as ffmpeg reads them, times in seconds. */
const captionsOf = async (name: string) => {
  const text = await ffmpeg('-copyts', '-i', folder.path(name), '-map', '0:s', '-f', 'srt', '-')
  const seconds = (stamp: string) =>
    stamp.split(':').reduce((sum, part) => sum * 60 + Number(part.replace(',', '.')), 0)
  return text
    .replaceAll('\r', '')
    .trim()
    .split('\n\n')
    .map(cue => {
      const [, times = '', ...lines] = cue.split('\n')
      const [start = '', end = ''] = times.split(' --> ')
      return { start: seconds(start), end: seconds(end), text: lines.join('\n') }
    })
}

const packetsOf = async (name: string) =>
  ffmpeg('-i', folder.path(name), '-map', '0:v?', '-map', '0:a', '-c', 'copy', '-f', 'streamhash', '-')

test.each(FILES)('[F45] chapters and captions stand in the copy of %s as ffprobe reads them', async name => {
  await mux(name, TEXTS, `a-${name}`)
  const { streams, chapters } = await probe(`a-${name}`)
  const found = chapters.map(({ start_time, end_time, tags }) => [Number(start_time), Number(end_time), tags.title])
  expect(found.map(([, , title]) => title)).toEqual(TEXTS.chapters.map(({ title }) => title))
  expect(found.map(([start]) => start)).toEqual([0, 4.5, 40])
  expect(found[1]?.[1]).toBe(40)
  expect(Number(found[2]?.[1])).toBeCloseTo(50, 0)
  expect(streams.filter(({ codec_type }) => codec_type === 'subtitle')).toMatchObject([
    { codec_name: name.endsWith('webm') ? 'webvtt' : 'subrip', tags: { language: 'eng', title: 'Captions' } },
  ])
  const captions = await captionsOf(`a-${name}`)
  expect(captions.map(({ text }) => text)).toEqual(TEXTS.captions.map(({ text }) => text))
  expect(captions.slice(0, 3)).toEqual(TEXTS.captions.slice(0, 3))
  expect(captions[3]?.end).toBeCloseTo(50, 0)
})

test.each(FILES)('[F46] packets of %s are copied as they are, and can be sought', async name => {
  await mux(name, TEXTS, `b-${name}`)
  expect(await packetsOf(`b-${name}`)).toBe(await packetsOf(name))
  expect(
    await ffmpeg('-xerror', '-i', folder.path(`b-${name}`), '-map', '0:v?', '-map', '0:a', '-f', 'null', '-'),
  ).toBe('')
  const at = (file: string) =>
    ffmpeg('-ss', '33.3', '-i', folder.path(file), '-map', '0:v?', '-map', '0:a', '-t', '0.5', '-f', 'framehash', '-')
  expect(await at(`b-${name}`)).toBe(await at(name))
  expect((await probe(`b-${name}`)).format.tags?.title).toBe((await probe(name)).format.tags?.title)
})

test('[F46] a copy of a copy in Matroska has the new texts only', async () => {
  const texts = { chapters: [{ start: 0, title: 'All of it' }], captions: [{ start: 2, end: 4, text: 'Otherwise.' }] }
  for (const name of ['front.mkv', 'phone.webm']) {
    await mux(name, TEXTS, `first-${name}`)
    await mux(`first-${name}`, texts, `second-${name}`)
    const { streams, chapters } = await probe(`second-${name}`)
    expect(streams.map(({ codec_type }) => codec_type)).toEqual(['video', 'audio', 'subtitle'])
    expect(chapters.map(({ tags }) => tags.title)).toEqual(['All of it'])
    expect(await captionsOf(`second-${name}`)).toEqual(texts.captions)
    const bytes = await readFile(folder.path(`second-${name}`))
    for (const old of ['Straight after', 'Überwurf', 'Beginning']) expect(bytes.includes(old), old).toBe(false)
    expect(await packetsOf(`second-${name}`)).toBe(await packetsOf(name))
    // Without any texts it is the original again but for its order.
    await mux(`second-${name}`, { chapters: [], captions: [] }, `none-${name}`)
    expect((await probe(`none-${name}`)).streams).toHaveLength(2)
  }
})

test('[F47] a WebM that breaks off is refused with the reason, wherever it does', async () => {
  const { length } = await readFile(folder.path('phone.webm'))
  for (const share of [0.999, 0.5, 0.01, 0.001]) {
    await ffmpeg('-i', folder.path('phone.webm'), '-c', 'copy', folder.path('cut.webm'))
    await truncate(folder.path('cut.webm'), Math.ceil(length * share))
    const muxed = await muxTexts(await folder.blob('cut.webm'), 'cut.webm', TEXTS)
    expect(muxed.ok ? [] : muxed.problems.map(({ code }) => code)).toEqual([
      share > 0.005 ? 'cut-short' : expect.any(String),
    ])
  }
})
