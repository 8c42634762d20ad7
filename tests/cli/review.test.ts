import { expect, test } from 'vitest'
import type { Io } from '@/lib/cli/command'
import { command } from '@/lib/cli/commands/review'
import { TellwrightError } from '@/lib/procedure/problem'
import { formatProject } from '@/lib/procedure/project-file'
import { sample } from '@/lib/review/sample'

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
      if (text === undefined)
        throw new TellwrightError('cannot-read', `cannot read ${path}`, {
          cause: Object.assign(new Error('none'), { code: 'ENOENT' }),
        })
      return new TextEncoder().encode(text)
    },
    write: async () => {},
  }
  return { code: await command.run(args, io), ...seen }
}

const spoilt = formatProject(
  sample([
    ['step', 'Take off the belt guard'],
    ['step', 'Oil the belt'],
    ['step', 'Run the machine'],
  ]),
)
const fine = formatProject(
  sample([
    ['step', 'Wipe the lens with a dry cloth'],
    ['tool', 'cloth'],
  ]),
)

test('[R9] lists findings as text and exits with 1 when one is at or over the level', async () => {
  const { code, out } = await run({ 'job.json': spoilt }, 'job.json')
  expect(code).toBe(1)
  expect(out).toMatch(/^stop +step 1, 0:00: Step 1: the belt guard is removed and never put back.*\[not-refitted\]$/m)
})

test('[R9] --json gives findings, counts and coverage', async () => {
  const { out } = await run({ 'job.json': spoilt }, 'job.json', '--json')
  const report = JSON.parse(out)
  expect(Object.keys(report)).toEqual(['findings', 'counts', 'coverage'])
  expect(report.findings[0]).toMatchObject({
    rule: 'not-refitted',
    level: 'stop',
    place: { at: 'mark', mark: 'step-1', step: 1 },
  })
})

test('[R9] --sarif gives one SARIF run', async () => {
  const { out } = await run({ 'job.json': spoilt }, 'job.json', '--sarif')
  expect(JSON.parse(out)).toMatchObject({ version: '2.1.0', runs: [{ tool: { driver: { name: 'Tellwright' } } }] })
})

test('[R5] the level decides about the exit code, not about what is listed', async () => {
  const vague = formatProject(sample([['step', 'Push this guy in']]))
  expect([
    (await run({ 'a.json': vague }, 'a.json')).code,
    (await run({ 'a.json': vague }, 'a.json', '--level', 'fix')).code,
  ]).toEqual([0, 1])
  expect((await run({ 'a.json': fine }, 'a.json', '--level', 'consider')).code).toBe(0)
})

test('[R7] the shop’s rules are read from a file given, or from beside the project', async () => {
  const rules = JSON.stringify({
    format: 'tellwright-rules',
    version: 1,
    phrases: [{ phrase: 'wear the blue badge', level: 'stop' }],
  })
  const given = await run({ 'shop/a.json': fine, 'own.json': rules }, 'shop/a.json', '--rules', 'own.json')
  const beside = await run({ 'shop/a.json': fine, 'shop/tellwright-rules.json': rules }, 'shop/a.json')
  expect([given.code, beside.code]).toEqual([1, 1])
  expect(given.out).toContain('wear the blue badge')
  const bad = await run({ 'shop/a.json': fine, 'shop/tellwright-rules.json': '{' }, 'shop/a.json')
  expect([bad.code, bad.err]).toEqual([2, expect.stringContaining('tellwright-rules.json')])
})

test('[R9] misuse and bad input exit with 2 and say what to do', async () => {
  expect((await run({}, '--json')).code).toBe(2)
  expect((await run({ 'a.json': fine }, 'a.json', '--json', '--sarif')).err).toContain('not both')
  expect((await run({ 'a.json': fine }, 'a.json', '--level', 'loud')).err).toContain('stop, fix, consider')
  expect((await run({ 'a.json': 'nonsense' }, 'a.json')).err).toContain('not valid JSON')
})
