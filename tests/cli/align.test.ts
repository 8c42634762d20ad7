import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
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

test('[F15] misuse and missing files say what to do', async () => {
  expect(await run(join(folder, 'talk.txt'))).toMatchObject({
    code: 2,
    err: expect.stringContaining('usage: tellwright align'),
  })
  await expect(run(join(folder, 'talk.txt'), join(folder, 'none.wav'))).rejects.toThrow(/there is no such file/)
  await expect(run(join(folder, 'talk.txt'), join(folder, 'talk.txt'))).rejects.toThrow(/cannot read the sound/)
})
