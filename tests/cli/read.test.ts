import { expect, test } from 'vitest'
import type { Io } from '@/lib/cli/command'
import { command } from '@/lib/cli/commands/read'
import { TellwrightError } from '@/lib/procedure/problem'

const run = async (files: Readonly<Record<string, string>>, ...args: string[]) => {
  const seen = { out: '', err: '' }
  const io: Io = {
    out: text => {
      seen.out += String(text)
    },
    err: text => {
      seen.err += `${text}\n`
    },
    read: async path => {
      const text = files[path]
      if (text === undefined) throw new TellwrightError('cannot-read', `cannot read ${path}`)
      return new TextEncoder().encode(text)
    },
    write: async () => {},
  }
  return { code: await command.run(args, io), ...seen }
}

const talk =
  'WEBVTT\n\n00:01.000 --> 00:03.000\n<v Bea>Take the cover\n\n00:03.000 --> 00:05.000\n<v Bea>off. Slowly.\n'

test('[T1] tellwright read --json gives form, cues, sentences and problems', async () => {
  const { code, out, err } = await run({ 'talk.srt': `${talk}\nlost\n` }, 'talk.srt', '--json')
  const result = JSON.parse(out)
  expect(Object.keys(result)).toEqual(['form', 'cues', 'sentences', 'problems'])
  expect(result.form).toBe('webvtt')
  expect(result.cues).toEqual([
    { start: 1, end: 3, text: 'Take the cover', speaker: 'Bea' },
    { start: 3, end: 5, text: 'off. Slowly.', speaker: 'Bea' },
  ])
  expect(result.sentences.map(({ text }: { text: string }) => text)).toEqual(['Take the cover off.', 'Slowly.'])
  expect(result.problems).toMatchObject([{ code: 'untimed-block', place: { file: 'talk.srt', line: 9 } }])
  expect(err).toContain('talk.srt, line 9')
  expect(code).toBe(0)
})

test('[T1] tellwright read lists the sentences for people, from standard input too', async () => {
  const { code, out } = await run({ '-': talk }, '-')
  expect(out).toBe(
    'standard input: webvtt, 2 cues, 2 sentences\n\n   0:01  Bea: Take the cover off.\n   0:03  Bea: Slowly.\n',
  )
  expect(code).toBe(0)
})

test('[T9] tellwright read says what is wrong with a file that is no transcript', async () => {
  const { code, out, err } = await run({ 'talk.vtt': '' }, 'talk.vtt')
  expect({ code, out }).toEqual({ code: 2, out: '' })
  expect(err).toMatch(/talk\.vtt: this file is empty; expected/)
})

test('[T1] tellwright read refuses misuse with its usage', async () => {
  expect(await run({})).toMatchObject({ code: 2, out: '', err: expect.stringContaining('usage: tellwright read') })
  expect((await run({ a: talk }, 'a', '--yaml')).err).toContain("Unknown option '--yaml'")
  await expect(run({}, 'missing.vtt')).rejects.toThrow('cannot read missing.vtt')
})

test('[T9] tellwright read exits with 2 where a file holds no cue', async () => {
  const { code, out, err } = await run({ 'talk.vtt': 'WEBVTT\n' }, 'talk.vtt')
  expect({ code, out }).toEqual({ code: 2, out: '' })
  expect(err).toContain('holds no cue that can be read')
})
