import { truncate, writeFile } from 'node:fs/promises'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type OpenFootage, openFootage } from '@/lib/footage/open'
import { ffmpeg, makeTalk, sampleFolder } from './samples'

let folder: Awaited<ReturnType<typeof sampleFolder>>

beforeAll(async () => {
  folder = await sampleFolder()
  const { path } = folder
  await makeTalk(path)
  const end = ['-i', path('end.mp4')]
  await ffmpeg(...end, '-c', 'copy', '-movflags', '+faststart', path('start.mp4'))
  await ffmpeg(
    ...end,
    '-c:v',
    'libvpx-vp9',
    '-b:v',
    '300k',
    '-deadline',
    'realtime',
    '-cpu-used',
    '8',
    '-c:a',
    'libopus',
    path('web.webm'),
  )
  await ffmpeg(...end, '-metadata:s:v', 'rotate=90', '-c', 'copy', path('turned.mov'))
  const skip = "select='not(mod(n\\,7))+lt(mod(n\\,13)\\,3)'"
  await ffmpeg(...end, '-vf', skip, '-vsync', 'vfr', '-c:v', 'libx264', '-c:a', 'copy', path('variable.mp4'))
  await ffmpeg(...end, '-c:v', 'copy', '-an', path('silent.mp4'))
  await ffmpeg(...end, '-c', 'copy', path('same.mkv'))
  await ffmpeg(...end, '-c:v', 'mpeg4', '-c:a', 'ac3', path('old.mp4'))
  await ffmpeg(...end, '-c:v', 'mpeg4', '-c:a', 'mp3', path('old.avi'))
  for (const kind of ['mp3', 'm4a', 'ogg', 'flac']) await ffmpeg('-i', path('talk.wav'), path(`talk.${kind}`))
  for (const name of ['start.mp4', 'end.mp4']) {
    const cut = path(`cut-${name}`)
    await ffmpeg('-i', path(name), '-c', 'copy', ...(name === 'start.mp4' ? ['-movflags', '+faststart'] : []), cut)
    await truncate(cut, 200_000)
  }
  await writeFile(path('empty.mp4'), '')
  await writeFile(path('list.mp4'), 'just some notes, not footage at all\n'.repeat(50))
}, 120_000)

afterAll(() => folder.remove())

const open = async (name: string): Promise<OpenFootage> => {
  const opened = await openFootage(await folder.blob(name), name)
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
  opened.value.close()
  return opened.value
}

const problemOf = async (name: string) => {
  const opened = await openFootage(await folder.blob(name), name)
  return opened.ok ? undefined : opened.problems.map(problem => problem.code)
}

const picture = { codec: 'H.264', width: 640, height: 360, rotation: 0, frameRate: 30, isRateConstant: true }

test.each(['start.mp4', 'end.mp4', 'same.mkv'])('[F3] opens H.264 with AAC, index at either end: %s', async name => {
  const footage = await open(name)
  expect(footage).toMatchObject({ name, hasVideo: true, hasSound: true, picture })
  expect(footage.sound).toMatchObject({ codec: 'AAC', channels: 1, sampleRate: 22050 })
  expect(footage.seconds).toBeGreaterThan(7.9)
  expect(footage.seconds).toBeLessThan(8.2)
})

test('[F3] opens VP9 with Opus in WebM', async () => {
  const footage = await open('web.webm')
  expect(footage).toMatchObject({ container: 'WebM', picture: { codec: 'VP9', width: 640 }, sound: { codec: 'Opus' } })
})

test('[F3] turned phone footage has its size as shown', async () => {
  const { picture } = await open('turned.mov')
  expect(picture).toMatchObject({ width: 360, height: 640 })
  expect([90, 270]).toContain(picture?.rotation)
})

test('[F3] a variable frame rate is told', async () => {
  expect((await open('variable.mp4')).picture).toMatchObject({ isRateConstant: false })
})

test('[F3] picture without sound is worked with, and it says so', async () => {
  const footage = await open('silent.mp4')
  expect(footage).toMatchObject({ hasVideo: true, hasSound: false, sound: null })
  expect(footage.notices.map(notice => notice.code)).toContain('no-sound')
})

test.each([
  ['talk.wav', 'PCM'],
  ['talk.mp3', 'MP3'],
  ['talk.m4a', 'AAC'],
  ['talk.ogg', 'Vorbis'],
  ['talk.flac', 'FLAC'],
])('[F3] sound alone is worked with: %s', async (name, codec) => {
  const footage = await open(name)
  expect(footage).toMatchObject({ hasVideo: false, hasSound: true, picture: null, sound: { codec, sampleRate: 22050 } })
  expect(footage.seconds).toBeGreaterThan(9)
  expect(footage.seconds).toBeLessThan(9.4)
  expect(footage.notices.map(notice => notice.code)).toContain('no-picture')
})

test('[F4] a codec that is not known is named, with what to do', async () => {
  const { notices, picture } = await open('old.mp4')
  expect(picture?.codec).toBe('mp4v')
  const messages = notices.map(notice => notice.message).join('\n')
  expect(messages).toMatch(/mp4v.*H\.264/)
  expect(messages).toMatch(/AC-3.*AAC/)
})

test('[F4] footage cut short, index at the start: opens as far as it goes and says so', async () => {
  const footage = await open('cut-start.mp4')
  const notice = footage.notices.find(({ code }) => code === 'cut-short')
  expect(footage.seconds).toBeGreaterThan(0.5)
  expect(footage.seconds).toBeLessThan(5)
  expect(notice?.message).toMatch(/announces 8\.\d s, but only the first/)
})

test.each([
  ['cut-end.mp4', 'no-index'],
  ['empty.mp4', 'empty-file'],
  ['list.mp4', 'not-media'],
  ['old.avi', 'not-media'],
])('[F4] %s is refused as %s', async (name, code) => {
  expect(await problemOf(name)).toEqual([code])
})
