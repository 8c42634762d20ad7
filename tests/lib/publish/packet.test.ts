import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { unzipSync, zipSync } from 'fflate'
import { HtmlValidate } from 'html-validate'
import { describe, expect, test } from 'vitest'
import { sha256 } from '@/lib/publish/digest'
import { isSafePath, MANIFEST } from '@/lib/publish/manifest'
import { packetFiles } from '@/lib/publish/packet'
import { publicationOf } from '@/lib/publish/publications'
import { verifyPacket } from '@/lib/publish/verify'
import { toZip } from '@/lib/publish/zip'
import { caution, material, projectOf, step, tool } from '../../builders'
import { exampleProject } from './example'

const jpeg = new Uint8Array([0xff, 0xd8, 0xff, 0, 1, 2])
const mp4 = new Uint8Array([0, 0, 0, 8, 0x66, 0x74, 0x79, 0x70, 0])
const options = { stills: new Map([['step-2', jpeg]]), clips: new Map([['step-2', mp4]]) }
const packet = async () => (await publicationOf('packet')?.files(exampleProject(), options))?.[0]?.content as Uint8Array

const codes = async (files: Record<string, Uint8Array>) => {
  const result = await verifyPacket(zipSync(files))
  return result.ok ? [] : result.problems.map(({ code, place }) => [code, place?.path])
}

describe('a packet', () => {
  test('[P14] holds every publication, stills, clips, a page of contents and a manifest', async () => {
    const names = Object.keys(unzipSync(await packet()))
    const name = 'yearly-service-of-the-pillar-drill'
    const endings = [
      'sheet.md',
      'handout.html',
      'notes.md',
      'notes.txt',
      'captions.vtt',
      'captions.srt',
      'chapters.vtt',
      'chapters.json',
      'chapters.ffmeta',
      'howto.html',
      'dita',
    ]
    for (const ending of endings) expect(names).toContain(`${name}.${ending}`)
    expect(names).toContain('stills/002-slacken-the-motor-lock-and-lift-out-both-belts.jpg')
    expect(names).toContain('clips/002-slacken-the-motor-lock-and-lift-out-both-belts.mp4')
    expect(names).toContain('index.html')
    expect(names.at(-1)).toBe(MANIFEST)
  })

  const indexOf = async (...jobs: Parameters<typeof packetFiles>[0]) =>
    String((await packetFiles(jobs)).find(({ path }) => path === 'index.html')?.content)

  test('[P14] says on its page of contents what stops the job, for what it is, what each clip shows and where the footage is', async () => {
    const findings = [{ level: 'stop' as const, message: 'No guard.' }]
    const page = await indexOf({ project: exampleProject(), options: { ...options, findings } })
    expect(page).toContain('<strong>Not fit for release: 1 stop finding.</strong>')
    expect(page).toContain('<li>No guard.')
    expect(page).toContain('<strong>Unchecked: ')
    expect(page).toContain('<li>Revision: B</li>')
    expect(page).toContain('Clip of step 2: Slacken the motor lock and lift out both belts</a>')
    expect(page).toContain('Footage: drill service.mp4, 12:34. It is not in this packet')
    const online = await indexOf({
      project: exampleProject(),
      options: { footageAddress: 'https://example.org/a.mp4' },
    })
    expect(online).toContain('Footage: drill service.mp4, 12:34.</li>')
  })

  test('[P14] names files by whole words', async () => {
    const text = 'The left side has a left hand thread so it goes clockwise today: undo it'
    const project = projectOf(step(0, 9, text, { id: 'one' }))
    const paths = (await packetFiles([{ project, options: { clips: new Map([['one', mp4]]) } }])).map(
      ({ path }) => path,
    )
    expect(paths).toContain('clips/001-the-left-side-has-a-left-hand-thread-so-it-goes-clockwise.mp4')
  })

  test('[P5] leaves out stills and clips of steps that are left out', async () => {
    const project = projectOf(
      step(0, 9, 'Drain it', { id: 'kept' }),
      step(9, 19, 'Fill it', { id: 'drafted', pencilled: { confidence: 0.9, reason: 'said' } }),
    )
    const both = (bytes: Uint8Array) => new Map(project.marks.map(({ id }) => [id, bytes]))
    const namesWith = async (pencilled: 'include' | 'leave-out') =>
      (await packetFiles([{ project, options: { pencilled, stills: both(jpeg), clips: both(mp4) } }]))
        .map(({ path }) => path)
        .filter(path => path.includes('/'))
    expect(await namesWith('include')).toEqual([
      'stills/001-drain-it.jpg',
      'stills/002-fill-it.jpg',
      'clips/001-drain-it.mp4',
      'clips/002-fill-it.mp4',
    ])
    expect(await namesWith('leave-out')).toEqual(['stills/001-drain-it.jpg', 'clips/001-drain-it.mp4'])
  })

  /** First bytes from memory of each format: ISO/IEC 14496-12, RFC 9559, RFC 3533, RFC 9639, RIFF, ISO/IEC 11172-3. */
  test.each([
    ['mp4', '\0\0\0\x18ftypisom'],
    ['webm', '\x1a\x45\xdf\xa3\x9f\x42\x86\x81\x01\x42\x82\x84webm'],
    ['mkv', '\x1a\x45\xdf\xa3\x9f\x42\x86\x81\x01\x42\x82\x88matroska'],
    ['wav', 'RIFF\x24\0\0\0WAVEfmt '],
    ['ogg', 'OggS\0\x02'],
    ['flac', 'fLaC\0\0\0\x22'],
    ['mp3', 'ID3\x04'],
    ['mp3', '\xff\xfb\x90\x64'],
  ])('[P14] holds a clip as %s by what it begins with', async (ending, start) => {
    const project = projectOf(step(0, 9, 'Drain it', { id: 'one' }))
    const clips = new Map([['one', Uint8Array.from(start, char => char.charCodeAt(0))]])
    const paths = (await packetFiles([{ project, options: { clips } }])).map(({ path }) => path)
    expect(paths).toContain(`clips/001-drain-it.${ending}`)
  })

  test('[P14] is the same bytes for the same input, and whole', async () => {
    const [one, other] = [await packet(), await packet()]
    expect(await sha256(one)).toBe(await sha256(other))
    expect(await verifyPacket(one)).toMatchObject({ ok: true, value: { title: 'Yearly service of the pillar drill' } })
  })

  const hasUnzip = spawnSync('unzip', ['-v']).status === 0
  test.skipIf(hasUnzip)('[P14] skipped: unzip is not installed (Debian: apt-get install unzip)', () => {})
  test.skipIf(!hasUnzip)('[P14] is sound by another program (unzip -t)', async () => {
    const path = join(mkdtempSync(join(tmpdir(), 'packet-')), 'a.zip')
    writeFileSync(path, await packet())
    expect(spawnSync('unzip', ['-t', path], { encoding: 'utf8' }).stdout).toContain('No errors detected')
  })

  test('[P14] links only to what is in it, by relative addresses', async () => {
    const files = unzipSync(await packet())
    const html = new TextDecoder().decode(files['index.html'])
    const links = [...html.matchAll(/href="([^"]*)"/g)].map(match => decodeURIComponent(match[1] ?? ''))
    expect(links.length).toBeGreaterThan(10)
    for (const link of links) expect(Object.keys(files)).toContain(link)
    const report = await new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: { 'long-title': 'off' },
    }).validateString(html)
    expect(report.valid).toBe(true)
  })

  /** @source FIPS 180-4, SHA-256 of "abc" (NIST example) */
  test('[P14] digests by SHA-256', async () => {
    expect(await sha256(new TextEncoder().encode('abc'))).toBe(
      'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
    )
  })

  test('[P14] verify finds what was altered, taken out, added, or would unpack outside', async () => {
    const files = unzipSync(await packet())
    const name = 'yearly-service-of-the-pillar-drill.notes.txt'
    const notes = files[name] ?? new Uint8Array()
    const flipped = Uint8Array.from(notes, (byte, i) => (i === 3 ? byte ^ 1 : byte))
    const { [name]: _, ...without } = files
    const { [MANIFEST]: __, ...unlisted } = files
    expect(await codes({ ...files, [name]: flipped })).toEqual([['altered-file', name]])
    expect(await codes({ ...files, [name]: notes.slice(1) })).toEqual([['altered-file', name]])
    expect(await codes(without)).toEqual([['missing-file', name]])
    expect(await codes({ ...files, 'more.txt': jpeg })).toEqual([['unlisted-file', 'more.txt']])
    expect(await codes({ ...files, '../up.txt': jpeg })).toEqual([['unsafe-path', '../up.txt']])
    expect(await codes(unlisted)).toEqual([['no-manifest', MANIFEST]])
    expect(await codes({ [MANIFEST]: new TextEncoder().encode('{}') })).toEqual([['no-manifest', MANIFEST]])
    expect(await verifyPacket(jpeg)).toMatchObject({ ok: false, problems: [{ code: 'not-a-packet' }] })
  })

  test('[P14] verify finds bytes that were put before or behind the ZIP', async () => {
    const whole = await packet()
    const codesOf = async (bytes: Uint8Array) => {
      const result = await verifyPacket(bytes)
      return result.ok ? [] : result.problems.map(({ code, message }) => `${code}: ${message.split(' ')[0]}`)
    }
    expect(await codesOf(whole)).toEqual([])
    expect(await codesOf(Uint8Array.of(...whole, 1, 2, 3))).toEqual(['added-bytes: 3'])
    expect(await codesOf(Uint8Array.of(1, 2, ...whole))).toEqual(['not-a-packet: this'])
  })

  test.each(['a.txt', 'a/b.txt', 'ü 1.md'])('[P4] %s is a path inside', path => expect(isSafePath(path)).toBe(true))
  test.each(['', '/a', '../a', 'a/../b', 'a//b', 'a\\b', 'C:a', './a', 'a\0b'])('[P4] %j is no path inside', path =>
    expect(isSafePath(path)).toBe(false),
  )
})

describe('a service of several jobs', () => {
  const belt = exampleProject()
  const base = projectOf(
    step(1, 9, 'Drain the coolant', { id: 's1', place: 1 }),
    tool(2, 3, '13 MM spanner', { step: 's1' }),
    material(2, 3, 'coolant, 2 L', { step: 's1', price: '18' }),
    caution(3, 4, 'Coolant burns the eyes. Wear glasses.', { step: 's1', level: 'danger' }),
  )
  const coolant = {
    ...base,
    procedure: { ...base.procedure, title: 'Coolant change', interval: { months: 24 } },
    recording: { ...base.recording, footage: { name: 'b.mp4', bytes: 1, seconds: 65, fingerprint: 'x' } },
  }
  const service = async (...projects: (typeof belt)[]) =>
    packetFiles(
      projects.map(project => ({ project, options: {} })),
      'Yearly drill service',
    )

  test('[P15] has one list of tools and materials, one safety summary gravest first, running times and due dates', async () => {
    const files = await service(belt, coolant)
    const notes = String(files.find(({ path }) => path === 'service.md')?.content)
    const times = notes.split('\n').filter(line => line.startsWith('| ['))
    expect(times.map(line => line.replace(/\]\([^)]*\)/, ']'))).toEqual([
      '| [Yearly service of the pillar drill] | 0:00 | 12:34 | every 500 h or 12 months, whichever comes first |',
      '| [Coolant change] | 12:34 | 1:05 | every 24 months |',
    ])
    const safety = notes.slice(notes.indexOf('## Safety summary'), notes.indexOf('## Tools'))
    expect(safety.match(/\*\*[A-Z]+/g)).toEqual(['**DANGER', '**WARNING', '**NOTICE'])
    expect(notes).toContain(
      '- 13 mm spanner – Yearly service of the pillar drill: steps 2, 4; Coolant change: step 1\n',
    )
    expect(notes).toContain('- coolant, 2 L (18) – Coolant change: step 1\n')
  })

  test('[P15] [P5] says on its page of contents what the notes say, and flags things nobody kept', async () => {
    const drafted = {
      ...coolant,
      marks: coolant.marks.map(mark => ({ ...mark, pencilled: { confidence: 0.9, reason: '' } })),
    }
    const files = await service(belt, drafted)
    const page = String(files.find(({ path }) => path === 'index.html')?.content)
    expect(page).toContain('<a href="2-coolant-change/index.html">Coolant change</a></td><td>12:34</td><td>1:05</td>')
    expect(page).toContain('<strong>Coolant change: Unchecked: 4 marks of 4, 1 caution among them.</strong>')
    expect(page).toContain('<strong>DANGER:</strong> Coolant burns the eyes')
    for (const text of [page, String(files.find(({ path }) => path === 'service.md')?.content)]) {
      expect(text).toContain('coolant, 2 L (18) – Coolant change: step 1 (pencilled)')
      expect(text).toContain('13 mm spanner – Yearly service of the pillar drill: steps 2, 4; Coolant change: step 1')
      expect(text).not.toContain(
        '13 mm spanner – Yearly service of the pillar drill: steps 2, 4; Coolant change: step 1 (pencilled)',
      )
    }
    const report = await new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: { 'long-title': 'off' },
    }).validateString(page)
    expect(report.results.flatMap(({ messages }) => messages.map(({ message }) => message))).toEqual([])
  })

  test('[P15] keeps the order given, a folder a job, and is whole', async () => {
    const folders = (files: readonly { path: string }[]) => [
      ...new Set(files.flatMap(({ path }) => (path.includes('/') ? [path.split('/')[0]] : []))),
    ]
    expect(folders(await service(coolant, belt))).toEqual(['1-coolant-change', '2-yearly-service-of-the-pillar-drill'])
    expect(folders(await service(belt, belt))).toEqual([
      '1-yearly-service-of-the-pillar-drill',
      '2-yearly-service-of-the-pillar-drill',
    ])
    expect((await verifyPacket(await toZip(await service(coolant, belt)))).ok).toBe(true)
  })

  test('[P15] says what stops each job, and which running times are not known', async () => {
    const findings = [{ level: 'stop' as const, message: 'No guard.' }]
    const jobs = [
      { project: base, options: { findings } },
      { project: belt, options: {} },
    ]
    const notes = String((await packetFiles(jobs)).find(({ path }) => path === 'service.md')?.content)
    expect(notes).toContain('- **Untitled procedure: Not fit for release: 1 stop finding.**')
    expect(notes).toContain('(1-procedure/index.html) | 0:00 | not known | not stated |')
    expect(notes).toContain('| not known | 12:34 | every 500 h')
  })

  test('[P15] a job without footage runs as long as its talk', async () => {
    const cues = [
      { start: 0, end: 61, text: 'Take off the guard.' },
      { start: 61, end: 205, text: 'And so on.' },
    ]
    const recording = { footage: null, transcript: { name: 'talk.txt', form: 'timed-text' as const, cues } }
    const jobs = [
      { project: { ...base, recording }, options: {} },
      { project: belt, options: {} },
    ]
    const notes = String((await packetFiles(jobs)).find(({ path }) => path === 'service.md')?.content)
    expect(notes).toContain('(1-procedure/index.html) | 0:00 | 3:25 | not stated |')
    expect(notes).toContain('| 3:25 | 12:34 | every 500 h')
  })

  test('[P15] says a caution that holds in two jobs once, with both places', async () => {
    const notes = String((await service(coolant, coolant)).find(({ path }) => path === 'service.md')?.content)
    expect(notes.match(/Coolant burns the eyes/g)).toHaveLength(1)
    expect(notes).toContain('(Coolant change, step 1; Coolant change, step 1)')
  })
})
