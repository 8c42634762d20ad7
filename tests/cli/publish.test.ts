import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import type { Io } from '@/lib/cli/command'
import { command as publish } from '@/lib/cli/commands/publish'
import { command as verify } from '@/lib/cli/commands/verify'
import { processIo } from '@/lib/cli/io'
import { formatProject } from '@/lib/procedure/project-file'
import { exampleProject } from '../lib/publish/example'

const run = async (command: typeof publish, ...args: string[]) => {
  const seen: { out: (string | Uint8Array)[]; err: string } = { out: [], err: '' }
  const io: Io = {
    ...processIo,
    out: text => void seen.out.push(text),
    err: text => {
      seen.err += `${text}\n`
    },
  }
  const code = await command.run(args, io)
  return {
    code,
    out: seen.out.map(part => (typeof part === 'string' ? part : `${part.length} bytes`)).join(''),
    err: seen.err,
  }
}

const folder = mkdtempSync(join(tmpdir(), 'publish-'))
const put = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}
const example = exampleProject()
const project = put('drill.tellwright.json', formatProject(example))
const name = 'yearly-service-of-the-pillar-drill'

describe('tellwright publish', () => {
  test('[P17] prints the sheet to standard output', async () => {
    const { code, out } = await run(publish, project)
    expect(code).toBe(0)
    expect(out).toMatch(/^---\ntitle: Yearly service/)
  })

  test('[P17] takes the footage’s address, units and kept marks from its options', async () => {
    const { out } = await run(publish, project, '--footage', 'https://example.org/v.mp4', '--units', 'us', '--kept')
    expect(out).toContain('(https://example.org/v.mp4#t=75,92 "step-2")')
    expect(out).toContain('| lock bolt torque | 18.4 lbf·ft |')
    expect(out).not.toContain('*pencilled*')
  })

  test('[P6] goes by the shop’s rules: those of a file given, or those beside the project', async () => {
    const rules = { format: 'tellwright-rules', version: 1, phrases: [{ phrase: 'blue badge', level: 'stop' }] }
    const shop = mkdtempSync(join(folder, 'shop-'))
    const job = join(shop, 'job.tellwright.json')
    writeFileSync(job, formatProject(example))
    expect((await run(publish, job)).out).not.toContain('blue badge')
    const own = put('own-rules.json', JSON.stringify(rules))
    expect((await run(publish, job, '--rules', own)).out).toMatch(/Not fit for release[^#]*blue badge/)
    writeFileSync(join(shop, 'tellwright-rules.json'), JSON.stringify(rules))
    const beside = await run(publish, job)
    expect([beside.out.includes('blue badge'), beside.err]).toEqual([true, expect.stringContaining('stop finding')])
    writeFileSync(join(shop, 'tellwright-rules.json'), '{')
    const bad = await run(publish, job)
    expect([bad.code, bad.out, bad.err]).toEqual([2, '', expect.stringContaining('tellwright-rules.json')])
  })

  test('[P6] runs the review: its stop findings stand at the head, all of them at the end with --findings', async () => {
    const marks = example.marks.filter(mark => mark.kind !== 'caution')
    const unsafe = put('unsafe.tellwright.json', formatProject({ ...example, marks }))
    const { out } = await run(publish, unsafe, '--findings')
    expect(out).toContain('\n## Findings\n')
    const plain = await run(publish, unsafe)
    expect(plain.out).not.toContain('\n## Findings\n')
    expect(plain.out.includes('Not fit for release')).toBe(plain.err.includes('stop finding'))
  })

  test('[P17] writes every file of a publication into a folder', async () => {
    const out = join(folder, 'out')
    expect((await run(publish, project, '--as', 'chapters', '-o', out)).code).toBe(0)
    expect(readdirSync(out).sort()).toEqual([
      `${name}.chapters.ffmeta`,
      `${name}.chapters.json`,
      `${name}.chapters.vtt`,
    ])
  })

  test('[P17] writes the file whose ending is asked for, or says which there are', async () => {
    const file = join(folder, 'talk.srt')
    expect((await run(publish, project, '--as', 'captions', '-o', file)).code).toBe(0)
    expect(readFileSync(file, 'utf8')).toMatch(/^1\n00:00:00,000 --> /)
    const wrong = await run(publish, project, '--as', 'captions', '-o', join(folder, 'talk.txt'))
    expect(wrong.code).toBe(2)
    expect(wrong.err).toContain('a file that ends in one of .vtt, .srt')
    const first = await run(publish, project, '--as', 'captions')
    expect(first.out).toMatch(/^WEBVTT\n/)
    expect(first.err).toContain(`not written to standard output: ${name}.captions.srt`)
  })

  test('[P17] takes stills from the project’s folder and from nowhere else', async () => {
    put('belts.jpg', new Uint8Array([0xff, 0xd8, 0xff, 0]))
    const still = (file: string) => ({ time: 80, alt: 'Both belts off', file })
    const withStill = (file: string) => ({
      ...example,
      marks: example.marks.map(mark => (mark.id === 'step-2' ? { ...mark, still: still(file) } : mark)),
    })
    const out = join(folder, 'stills-out')
    await run(publish, put('still.tellwright.json', formatProject(withStill('belts.jpg'))), '-o', out)
    expect(existsSync(join(out, 'stills', '002-slacken-the-motor-lock-and-lift-out-both-belts.jpg'))).toBe(true)
    expect(readFileSync(join(out, `${name}.sheet.md`), 'utf8')).toContain('![Both belts off](stills/002-')
    const outside = await run(publish, put('up.tellwright.json', formatProject(withStill('../../etc/hostname'))))
    expect(outside.err).toContain('lies outside the project')
    const missing = await run(publish, put('gone.tellwright.json', formatProject(withStill('gone.jpg'))))
    expect(missing).toMatchObject({ code: 0, err: expect.stringContaining('there is no such file') })
  })

  test('[P17] makes one packet of several projects, which verify finds whole, and not once it is changed', async () => {
    const packet = join(folder, 'service.zip')
    const made = await run(publish, project, project, '--as', 'packet', '-o', packet, '--title', 'Drill service')
    expect(made.code).toBe(0)
    expect(await run(verify, packet)).toMatchObject({
      code: 0,
      out: expect.stringMatching(/^whole: Drill service, \d+ files/),
    })
    const bytes = readFileSync(packet)
    const at = bytes.indexOf('Yearly service')
    bytes[at] = (bytes[at] ?? 0) ^ 1
    expect(await run(verify, put('bad.zip', bytes))).toMatchObject({ code: 1, err: expect.stringContaining('SHA-256') })
    expect(await run(verify, project)).toMatchObject({ code: 2, err: expect.stringContaining('not a ZIP file') })
  })

  test('[P17] keeps two projects of one title apart', async () => {
    const out = join(folder, 'twice')
    expect((await run(publish, project, project, '--as', 'task', '-o', out)).code).toBe(0)
    expect(readdirSync(out).sort()).toEqual(['2', `${name}.dita`])
  })

  test.each([
    [['--as', 'poster'], '--as poster: expected one of sheet, handout'],
    [['--units', 'feet'], '--units feet: expected one of as-said'],
    [['--paper', 'a3'], '--paper a3: expected a4 or letter'],
    [['--least', 'x'], '--least x: expected seconds'],
    [['--pdf'], '--pdf goes with --as handout only'],
    [['--colour'], "Unknown option '--colour'"],
  ])('[P17] refuses %j in plain words', async (args, words) => {
    expect(await run(publish, project, ...args)).toMatchObject({ code: 2, err: expect.stringContaining(words) })
  })

  test('[P17] refuses what is no project, naming the place', async () => {
    const bad = put(
      'bad.tellwright.json',
      '{"format":"tellwright","version":1,"procedure":{},"recording":{},"marks":[]}',
    )
    const { code, err } = await run(publish, bad)
    expect(code).toBe(2)
    expect(err).toContain('recording.footage')
    expect((await run(publish)).err).toContain('expected a project file')
  })

  test('[P17] says when there is nothing to publish', async () => {
    const silent = put(
      'silent.tellwright.json',
      formatProject({ ...example, recording: { footage: null, transcript: null } }),
    )
    expect(await run(publish, silent, '--as', 'captions')).toMatchObject({
      code: 2,
      err: expect.stringContaining('no transcript with times'),
    })
  })
})
