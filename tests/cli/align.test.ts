import { mkdtemp, open, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { command } from '@/lib/cli/commands/align'
import { processIo } from '@/lib/cli/io'
import { ffmpeg } from '../lib/footage/samples'
import { WHEEL } from '../lib/footage/sentences'
import { makeSpeech, type Talk } from '../lib/footage/talk'

let folder: string
let talk: Talk

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tellwright-align-'))
  talk = await makeSpeech(WHEEL.slice(0, 6))
  await writeFile(join(folder, 'talk.raw'), Buffer.from(Int16Array.from(talk.samples, s => s * 32767).buffer))
  await ffmpeg('-f', 's16le', '-ar', '16000', '-ac', '1', '-i', join(folder, 'talk.raw'), join(folder, 'talk.wav'))
  const texts = [...WHEEL.slice(0, 3), 'The moon is made of <cheese> & rye.', ...WHEEL.slice(3, 6)]
  await writeFile(join(folder, 'talk.txt'), `${texts.join(' ')}\n`)
}, 60_000)
afterAll(() => rm(folder, { recursive: true, force: true }))

const run = async (...args: string[]) => {
  const seen = { out: '', err: '' }
  const io = {
    ...processIo,
    out: (text: string | Uint8Array) => {
      seen.out += String(text)
    },
    err: (text: string) => {
      seen.err += `${text}\n`
    },
  }
  return { code: await command.run(args, io), ...seen }
}

/**
 * A copy of a QuickTime file whose sound lies past `by` bytes: a hole behind its ftyp box, its places (stco) made co64
 * by hand (ISO/IEC 14496-12, 8.7.5).
 */
const movePast = async (from: string, to: string, by: number) => {
  const bytes = await readFile(from)
  const head = Buffer.alloc(16)
  head.writeUInt32BE(1, 0)
  head.write('free', 4)
  head.writeBigUInt64BE(BigInt(by), 8)
  const boxes: { type: string; bytes: Buffer }[] = []
  for (let at = 0; at < bytes.length; at += bytes.readUInt32BE(at))
    boxes.push({
      type: bytes.toString('latin1', at + 4, at + 8),
      bytes: bytes.subarray(at, at + bytes.readUInt32BE(at)),
    })
  const [index, others] = [boxes.find(({ type }) => type === 'moov'), boxes.filter(({ type }) => type !== 'moov')]
  const old = index?.bytes ?? Buffer.alloc(0)
  const table = old.indexOf('stco') - 4
  const [size, count] = [old.readUInt32BE(table), old.readUInt32BE(table + 12)]
  const wide = Buffer.alloc(16 + 8 * count)
  wide.writeUInt32BE(wide.length, 0)
  wide.write('co64', 4)
  wide.writeUInt32BE(count, 12)
  for (let i = 0; i < count; i++) wide.writeBigUInt64BE(BigInt(old.readUInt32BE(table + 16 + 4 * i) + by), 16 + 8 * i)
  const moov = Buffer.concat([old.subarray(0, table), wide, old.subarray(table + size)])
  for (const type of ['moov', 'trak', 'mdia', 'minf', 'stbl']) {
    const at = moov.indexOf(type) - 4
    moov.writeUInt32BE(moov.readUInt32BE(at) + wide.length - size, at)
  }
  const file = await open(to, 'w')
  const [type = Buffer.alloc(0), ...rest] = others.map(box => box.bytes)
  await file.write(Buffer.concat([type, head]))
  await file.write(Buffer.concat([...rest, moov]), 0, undefined, type.length + by)
  await file.close()
}

const seconds = (stamp: string) => stamp.split(':').reduce((sum, part) => 60 * sum + Number(part), 0)

/** Starts of the cues by their text. */
const startsOf = (vtt: string) =>
  new Map(
    [...vtt.matchAll(/^([\d:.]+) --> [\d:.]+\n(.*)$/gm)].map(([, stamp = '', text = '']) => [text, seconds(stamp)]),
  )

test.each([
  ['with ffmpeg', process.env.PATH ?? ''],
  ['without ffmpeg, from WAV', ''],
])(
  '[F15] tellwright align writes WebVTT, %s; what is not heard is noted and told',
  async (_, path) => {
    const before = process.env.PATH
    process.env.PATH = path
    const out = join(folder, 'out.vtt')
    const { code, err } = await run(join(folder, 'talk.txt'), join(folder, 'talk.wav'), '-o', out).finally(() => {
      process.env.PATH = before
    })
    expect(code).toBe(0)
    const vtt = await readFile(out, 'utf8')
    const starts = startsOf(vtt)
    for (const { start, text } of talk.sentences) expect(Math.abs((starts.get(text) ?? 99) - start)).toBeLessThan(0.4)
    expect(vtt.startsWith('WEBVTT\n\n')).toBe(true)
    expect(vtt).toContain('NOTE not heard: The moon is made of')
    expect(err).toMatch(/not heard, after 0:\d\d: "The moon is made of/)
  },
  60_000,
)

test('[F15] sound past 4 GB of a file is read without ffmpeg too', async () => {
  const long = join(folder, 'long.mov')
  await ffmpeg('-i', join(folder, 'talk.wav'), '-c:a', 'pcm_s16le', join(folder, 'short.mov'))
  await movePast(join(folder, 'short.mov'), long, 2 ** 32 + 2 ** 20)
  const before = process.env.PATH
  process.env.PATH = ''
  const out = join(folder, 'long.vtt')
  const { code } = await run(join(folder, 'talk.txt'), long, '-o', out).finally(() => {
    process.env.PATH = before
  })
  expect(code).toBe(0)
  const starts = startsOf(await readFile(out, 'utf8'))
  for (const { start, text } of talk.sentences) expect(Math.abs((starts.get(text) ?? 99) - start)).toBeLessThan(0.4)
}, 60_000)

test('[F16] one time a paragraph in the text tells where to look', async () => {
  const sentences = [...talk.sentences]
  const at = (i: number) => `[0:${String(Math.floor(sentences[i]?.start ?? 0)).padStart(2, '0')}]`
  const words = (from: number, to: number) => WHEEL.slice(from, to).join(' ')
  const path = join(folder, 'coarse.txt')
  await writeFile(path, `${at(0)} ${words(0, 3)}\n\n${at(3)} ${words(3, 6)}\n`)
  const { code, out, err } = await run(path, join(folder, 'talk.wav'))
  expect([code, err]).toEqual([0, expect.not.stringContaining('not')])
  for (const { start, text } of sentences) expect(Math.abs((startsOf(out).get(text) ?? 99) - start)).toBeLessThan(0.4)
}, 60_000)

test('[F15] misuse and missing files say what to do', async () => {
  expect(await run(join(folder, 'talk.txt'))).toMatchObject({
    code: 2,
    err: expect.stringContaining('usage: tellwright align'),
  })
  await expect(run(join(folder, 'talk.txt'), join(folder, 'none.wav'))).rejects.toThrow(/there is no such file/)
  await expect(run(join(folder, 'talk.txt'), join(folder, 'talk.txt'))).rejects.toThrow(/cannot read the sound/)
})
