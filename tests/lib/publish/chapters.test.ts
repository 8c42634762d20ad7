import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { toSheet } from '@/lib/procedure/sheet'
import { toChaptersJson, toChaptersVtt, toFfmetadata } from '@/lib/publish/chapter-files'
import { type Chapter, toChapters } from '@/lib/publish/chapters'
import { projectOf, step } from '../../builders'
import { anyProject, HOSTILE } from './arbitrary'
import { exampleProject } from './example'
import { plainCue, referenceCues } from './reference'

const ms = (seconds: number) => Math.round(seconds * 1000) / 1000

describe('chapters', () => {
  test('[P11] begin at 0 and follow each other without gaps, whatever the project', () => {
    fc.assert(
      fc.property(anyProject, fc.integer({ min: 0, max: 60 }), (project, least) => {
        const sheet = toSheet(project)
        const chapters = toChapters(sheet, least)
        for (const [i, { start, end }] of chapters.entries()) {
          expect(start).toBe(i === 0 ? 0 : chapters[i - 1]?.end)
          expect(end).toBeGreaterThanOrEqual(start)
          if (chapters.length > 1)
            expect(end - start).toBeGreaterThanOrEqual(i === chapters.length - 1 ? 0 : Math.min(least, end - start))
        }
        if (chapters.length > 0) {
          const steps = chapters.flatMap(chapter => chapter.steps)
          expect([...steps].sort((a, b) => a - b)).toEqual(sheet.steps.map(each => each.number))
        }
      }),
      { numRuns: 300 },
    )
  })

  test('[P11] join what is shorter than the least length under one short title', () => {
    const sheet = toSheet(
      projectOf(step(0, 5, 'One.'), step(5, 40, 'Two'), step(40, 44, 'Three'), step(44, 90, 'Four')),
    )
    expect(toChapters(sheet, 10).map(({ start, end, title }) => [start, end, title])).toEqual([
      [0, 44, 'One, and 2 more steps'],
      [44, 90, 'Four'],
    ])
  })

  test('[P11] short steps in a row make chapters of their own, each long enough', () => {
    const sheet = toSheet(projectOf(...Array.from({ length: 13 }, (_, i) => step(4 * i, 4 * i + 4, `Step ${i + 1}`))))
    expect(toChapters(sheet, 10).map(({ start, end, title }) => [start, end, title])).toEqual([
      [0, 12, 'Step 1, and 2 more steps'],
      [12, 24, 'Step 4, and 2 more steps'],
      [24, 36, 'Step 7, and 2 more steps'],
      [36, 52, 'Step 10, and 3 more steps'],
    ])
    const later = toSheet(
      projectOf(step(0, 30, 'One'), step(30, 34, 'Two'), step(34, 38, 'Three'), step(38, 60, 'Four')),
    )
    expect(toChapters(later, 10).map(({ start }) => start)).toEqual([0, 38])
  })

  test('[P11] end with the footage, whatever was said to come after it', () => {
    const project = projectOf(step(0, 20, 'One'), step(20, 50, 'Two'), step(70, 90, 'Three'))
    const footage = { name: 'a.mp4', bytes: 1, seconds: 62.4, fingerprint: 'x' }
    const sheet = toSheet({ ...project, recording: { ...project.recording, footage } })
    expect(toChapters(sheet, 10).map(({ start, end, steps }) => [start, end, steps])).toEqual([
      [0, 20, [1]],
      [20, 62.4, [2, 3]],
    ])
  })

  test('[P11] a first step after a long opening takes the next ones along instead of hiding in the opening', () => {
    const sheet = toSheet(projectOf(step(30, 34, 'One'), step(34, 60, 'Two'), step(60, 90, 'Three')))
    expect(toChapters(sheet, 10).map(({ start, end, title }) => [start, end, title])).toEqual([
      [0, 30, 'Beginning'],
      [30, 60, 'One, and 1 more step'],
      [60, 90, 'Three'],
    ])
  })

  test('[P11] a title is at most 70 characters, of whole words, with one flag for all that is pencilled in it', () => {
    const long = 'Loosen the two anvil nuts one turn each with the long spanner from the left side of the machine'
    const pencilled = { confidence: 0.9, reason: 'said' }
    const sheet = toSheet(
      projectOf(step(0, 3, long, { pencilled }), step(3, 6, 'Turn it', { pencilled }), step(6, 60, 'Close it')),
    )
    expect(toChapters(sheet, 10).map(({ title }) => title)).toEqual([
      'Loosen the two anvil nuts one turn each… and 2 more steps (pencilled)',
    ])
    fc.assert(
      fc.property(anyProject, project => {
        for (const { title } of toChapters(toSheet(project))) {
          expect([...title].length).toBeLessThanOrEqual(70)
          expect(title).not.toBe('')
        }
      }),
      { numRuns: 200 },
    )
  })

  const chapters = toChapters(toSheet(exampleProject()))

  test('[P11] read back from WebVTT by another parser (vtt.js)', () => {
    expect(referenceCues(toChaptersVtt(chapters)).map(cue => [cue.start, cue.end, plainCue(cue.text)])).toEqual(
      chapters.map(({ start, end, title }) => [ms(start), ms(end), title]),
    )
  })

  test('[P11] read back from JSON', () => {
    expect(JSON.parse(toChaptersJson(chapters, 'Drill'))).toMatchObject({
      version: '1.2.0',
      title: 'Drill',
      chapters: chapters.map(({ start, end, title }) => ({ startTime: ms(start), endTime: ms(end), title })),
    })
  })

  const hasFfmpeg = spawnSync('ffmpeg', ['-version']).status === 0 && spawnSync('ffprobe', ['-version']).status === 0
  test.skipIf(hasFfmpeg)(
    '[P11] skipped: ffmpeg and ffprobe are not installed (Debian: apt-get install ffmpeg)',
    () => {},
  )
  test.skipIf(!hasFfmpeg)('[P11] read back from ffmetadata by ffprobe, hostile titles too', () => {
    const folder = mkdtempSync(join(tmpdir(), 'chapters-'))
    const titles = HOSTILE.map(each => each.replace(/[\p{Cc}\p{Cs}]+/gu, ' ').trim()).filter(
      each => each !== '' && each.length < 200,
    )
    const written: readonly Chapter[] = titles.map((title, i) => ({
      start: i * 10,
      end: i * 10 + 10,
      title,
      steps: [i + 1],
    }))
    writeFileSync(join(folder, 'a.ffmeta'), toFfmetadata(written, 'A = title; #1'))
    const length = String(written.length * 10)
    const made = spawnSync(
      'ffmpeg',
      [
        '-loglevel',
        'error',
        '-y',
        '-f',
        'lavfi',
        '-i',
        `anullsrc=d=${length}`,
        '-i',
        join(folder, 'a.ffmeta'),
        '-map_metadata',
        '1',
        '-map_chapters',
        '1',
        '-c:a',
        'pcm_u8',
        join(folder, 'a.mka'),
      ],
      { encoding: 'utf8' },
    )
    expect([made.status, made.stderr]).toEqual([0, ''])
    const shown = spawnSync(
      'ffprobe',
      ['-v', 'error', '-of', 'json', '-show_chapters', '-show_format', join(folder, 'a.mka')],
      { encoding: 'utf8' },
    )
    const probe = JSON.parse(shown.stdout)
    expect(
      probe.chapters.map((c: { start_time: string; end_time: string; tags: { title: string } }) => [
        Number(c.start_time),
        Number(c.end_time),
        c.tags.title,
      ]),
    ).toEqual(written.map(({ start, end, title }) => [start, end, title.replace(/\\+$/, '')]))
    expect(probe.format.tags.title).toBe('A = title; #1')
  })
})
