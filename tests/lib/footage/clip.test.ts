import { writeFile } from 'node:fs/promises'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type ClipOptions, cutClip } from '@/lib/footage/clip'
import { openFootage } from '@/lib/footage/open'
import type { Span } from '@/lib/procedure/time'
import { ffmpeg, makeTalk, run, sampleFolder } from './samples'

let folder: Awaited<ReturnType<typeof sampleFolder>>

beforeAll(async () => {
  folder = await sampleFolder()
  const { path } = folder
  await makeTalk(path)
  const end = ['-i', path('end.mp4')]
  const place = ['-metadata', 'location=+52.5+013.4/', '-metadata', 'comment=made at home']
  await ffmpeg(...end, '-c', 'copy', '-movflags', 'use_metadata_tags', ...place, path('placed.mp4'))
  await ffmpeg(...end, '-metadata:s:v', 'rotate=90', '-c', 'copy', path('turned.mov'))
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
  await ffmpeg(...end, '-metadata:s:v', 'rotate=90', '-c', 'copy', path('turned.mp4'))
  // Frames at their own times, every third left out; and with frames before a key frame that need the one before it.
  const third = ['-vf', "select='mod(n\\,3)'", '-fps_mode', 'vfr', '-c:a', 'copy']
  await ffmpeg(...end, ...third, '-g', '30', path('uneven.mp4'))
  await ffmpeg(...end, '-c:v', 'libx264', '-x264-params', 'open-gop=1:keyint=30', '-c:a', 'copy', path('open.mp4'))
  for (const kind of ['mp3', 'm4a', 'flac']) await ffmpeg('-i', path('talk.wav'), path(`talk.${kind}`))
}, 120_000)

afterAll(() => folder.remove())

/** Cuts here in Node (copying needs no codecs) and writes the clip beside the sample. */
const cut = async (name: string, span: Span, options: Partial<ClipOptions> = {}) => {
  const opened = await openFootage(await folder.blob(name), name)
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
  const clip = await cutClip(opened.value, span, { way: 'copy', ...options })
  opened.value.close()
  if (!clip.ok) throw new Error(JSON.stringify(clip))
  const file = folder.path(`clip-${name}${clip.value.extension}`)
  await writeFile(file, Buffer.from(await clip.value.blob.arrayBuffer()))
  return { ...clip.value, file }
}

type Probed = {
  streams: {
    codec_name: string
    codec_type: string
    tags?: Record<string, string>
    side_data_list?: { rotation?: number }[]
  }[]
  packets: { codec_type: string; pts_time: string; duration_time: string }[]
  format: { duration: string; tags?: Record<string, string> }
}

/** Everything in the file, hidden by an edit list or not. */
const probe = async (file: string): Promise<Probed> => {
  const whole = ['-ignore_editlist', '1']
  const isMp4 = /\.(mp4|m4a)$/.test(file)
  const args = [
    '-v',
    'error',
    ...(isMp4 ? whole : []),
    '-show_streams',
    '-show_format',
    '-show_packets',
    '-of',
    'json',
    file,
  ]
  return JSON.parse(await run('ffprobe', ...args)) as Probed
}

/** Seconds of material of one kind that the file carries. */
const carried = ({ packets }: Probed, kind: string) =>
  packets
    .filter(packet => packet.codec_type === kind)
    .reduce((sum, { duration_time }) => sum + Number(duration_time), 0)

test.each(['end.mp4', 'web.webm', 'turned.mov'])(
  '[F20] a copied clip of %s begins at the key frame before and says how early that is',
  async name => {
    const clip = await cut(name, { start: 3.2, end: 6 })
    expect(clip.span.start).toBeLessThanOrEqual(3.2)
    const early = (3.2 - clip.span.start).toFixed(1)
    expect(clip.notices.map(({ message }) => message).join()).toContain(`begins ${early} s early`)
    const probed = await probe(clip.file)
    expect(Number(probed.format.duration)).toBeCloseTo(6 - clip.span.start, 0)
  },
)

test('[F21] nothing outside the told span is in the file, not even hidden', async () => {
  const clip = await cut('end.mp4', { start: 3.2, end: 6 })
  expect(clip.span).toEqual({ start: 2, end: 6 })
  const probed = await probe(clip.file)
  // 30 frames a second, key frames every 2 s: frames of 2.0 to 6.0 s.
  expect(probed.packets.filter(({ codec_type }) => codec_type === 'video').length).toBe(120)
  expect(carried(probed, 'video')).toBeCloseTo(4, 2)
  expect(carried(probed, 'audio')).toBeLessThanOrEqual(4)
  expect(carried(probed, 'audio')).toBeGreaterThan(3.85)
})

test('[F21] place, device and remarks of the footage do not travel with a clip; its title does', async () => {
  const cutOut = await cut('placed.mp4', { start: 0, end: 3 }, { title: 'Step 1 Belt cover' })
  const { format, streams } = await probe(cutOut.file)
  expect(JSON.stringify(streams)).not.toMatch(/libx264|creation_time/)
  expect(JSON.stringify(format.tags)).not.toMatch(/52\.5|home/)
  expect(format.tags?.title).toBe('Step 1 Belt cover')
})

test.each(['end.mp4', 'uneven.mp4', 'turned.mp4', 'open.mp4', 'talk.m4a'])(
  '[F20] packets in a copied clip of %s are the footage’s own, each shown as long after the clip’s beginning',
  async name => {
    const clip = await cut(name, { start: 3.2, end: 6.13 })
    const packets = async (file: string) => {
      const entries = ['-show_entries', 'packet=codec_type,pts_time,data_hash', '-show_data_hash', 'md5']
      type Packet = { codec_type: string; pts_time: string; data_hash: string }
      const said = await run('ffprobe', '-v', 'error', ...entries, '-of', 'json', file)
      const { packets } = JSON.parse(said) as { packets: Packet[] }
      return packets.map(({ codec_type, pts_time, data_hash }) => ({
        what: `${codec_type} ${data_hash}`,
        at: Number(pts_time),
      }))
    }
    const [own, footage] = [await packets(clip.file), await packets(folder.path(name))]
    // The sound alone begins within a packet.
    const begin = name === 'talk.m4a' ? footage.find(({ at }) => at >= clip.span.start)?.at : clip.span.start
    const apart = own.map(({ what, at }) =>
      Math.min(
        ...footage.filter(packet => packet.what === what).map(packet => Math.abs(packet.at - at - (begin ?? 0))),
      ),
    )
    expect(own.length).toBeGreaterThan(name === 'talk.m4a' ? 50 : 100)
    expect(Math.max(...apart)).toBeLessThan(0.002)
    expect(own.every(({ at }) => at >= 0 && at + clip.span.start <= clip.span.end)).toBe(true)
  },
)

test('[F20] codecs stay as they are, and turned footage stays turned', async () => {
  const { streams } = await probe((await cut('turned.mov', { start: 0, end: 2 })).file)
  expect(streams.map(({ codec_name }) => codec_name).sort()).toEqual(['aac', 'h264'])
  expect(Math.abs(streams.find(({ codec_type }) => codec_type === 'video')?.side_data_list?.[0]?.rotation ?? 0)).toBe(
    90,
  )
})

test.each([
  ['talk.wav', 'pcm_s16le'],
  ['talk.mp3', 'mp3'],
  ['talk.m4a', 'aac'],
  ['talk.flac', 'flac'],
])('[F20] sound alone is cut within a packet: %s', async (name, codec) => {
  const { file } = await cut(name, { start: 2, end: 5 })
  const probed = await probe(file)
  expect(probed.streams[0]?.codec_name).toBe(codec)
  expect(carried(probed, 'audio')).toBeLessThanOrEqual(3.001)
  expect(carried(probed, 'audio')).toBeGreaterThan(2.6)
})

test('[F20] a copied clip decodes without an error', async () => {
  const { file } = await cut('end.mp4', { start: 3.2, end: 6 })
  expect(await run('ffmpeg', '-v', 'error', '-i', file, '-f', 'null', '-')).toBe('')
})

test('[F20] an empty span and one outside the footage are refused', async () => {
  const opened = await openFootage(await folder.blob('end.mp4'), 'end.mp4')
  if (!opened.ok) throw new Error('no footage')
  for (const span of [
    { start: 3, end: 3 },
    { start: 60, end: 70 },
  ]) {
    const clip = await cutClip(opened.value, span, { way: 'copy' })
    expect(clip.ok ? [] : clip.problems.map(({ code }) => code)).toEqual(['span-outside'])
  }
  opened.value.close()
})
