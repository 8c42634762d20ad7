import { expect, test } from 'vitest'
import type { Io } from '@/lib/cli/command'
import { command } from '@/lib/cli/commands/draft'
import { TellwrightError } from '@/lib/procedure/problem'
import { parseProject } from '@/lib/procedure/project-file'

const run = async (files: Readonly<Record<string, string>>, ...args: string[]) => {
  const seen: { out: string; err: string; written: Record<string, string> } = { out: '', err: '', written: {} }
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
    write: async (path, content) => {
      seen.written[path] = String(content)
    },
  }
  return { code: await command.run(args, io), ...seen }
}

const talk =
  'WEBVTT\n\n00:01.000 --> 00:04.000\nFirst, pull the plug out of the wall.\n\n00:05.000 --> 00:08.000\nThen take the cover off with a 10 mm socket.\n'

test('[D12] --json gives a project file with the title and pencilled marks', async () => {
  const { code, out, err } = await run({ 'talk.vtt': talk }, 'talk.vtt', '--title', 'Cover', '--json')
  const read = parseProject(out)
  expect(code).toBe(0)
  expect(err).toBe('')
  expect(read.ok && read.value.procedure.title).toBe('Cover')
  expect(read.ok && read.value.marks.filter(mark => mark.kind === 'step').map(mark => mark.text)).toEqual([
    'Pull the plug out of the wall.',
    'Take the cover off with a 10 mm socket.',
  ])
})

test('[D12] -o writes the project file and leaves standard output alone', async () => {
  const { code, out, written } = await run({ 'talk.vtt': talk }, 'talk.vtt', '-o', 'cover.tellwright.json')
  expect(code).toBe(0)
  expect(out).toBe('')
  expect(parseProject(written['cover.tellwright.json'] ?? '').ok).toBe(true)
})

test('[D12] without a title it is the file’s name, and of standard input none', async () => {
  const titleOf = (out: string): unknown => {
    const read = parseProject(out)
    return read.ok && read.value.procedure.title
  }
  expect(titleOf((await run({ 'jobs/wall_fan.vtt': talk }, 'jobs/wall_fan.vtt', '--json')).out)).toBe('wall fan')
  expect(titleOf((await run({ '-': talk }, '-', '--json')).out)).toBe('')
})

test('[D12] without either it lists the steps', async () => {
  const { out } = await run({ 'talk.vtt': talk }, 'talk.vtt')
  expect(out).toMatch(/^pencilled: 2 step/)
  expect(out).toContain('  1  Pull the plug out of the wall.')
})

test('[D12] nothing to read and misuse say so and exit with 2', async () => {
  expect(await run({ 'empty.vtt': '' }, 'empty.vtt')).toMatchObject({ code: 2, out: '' })
  expect((await run({}, '--colour')).code).toBe(2)
  expect((await run({})).err).toContain('expected one transcript')
})

test('[D12] without a cue nothing is written, and the exit is 2', async () => {
  const { code, written, err } = await run({ 'talk.vtt': 'WEBVTT\n' }, 'talk.vtt', '-o', 'cover.tellwright.json')
  expect({ code, written }).toEqual({ code: 2, written: {} })
  expect(err).toContain('holds no cue that can be read')
})

test('[D13] a talk in another language is drafted with a word of warning', async () => {
  const german =
    'WEBVTT\n\n00:00.000 --> 00:04.000\nZuerst den Deckel abnehmen und die Schrauben lösen.\n\n00:04.000 --> 00:08.000\nMit 20 bis 25 Newtonmeter anziehen. Vorsicht, heiß!\n'
  const { code, err } = await run({ 'de.vtt': german }, 'de.vtt', '--json')
  expect(code).toBe(0)
  expect(err).toContain('The draft reads English only')
})
