import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Project } from '@/lib/procedure/project'
import { toSheet } from '@/lib/procedure/sheet'
import { parseSpanAddress } from '@/lib/publish/address'
import { UNIT_CHOICES, type UnitChoice } from '@/lib/publish/publication'
import { SINGLES } from '@/lib/publish/singles'
import { formatQuantity, toSystem } from '@/lib/quantity/format'
import { exampleProject } from './example'

/** Steps apart in time, each with one spec of its own name and value. */
const anyJob: fc.Arbitrary<Project> = fc
  .array(
    fc.record({
      length: fc.integer({ min: 1, max: 400_000 }),
      low: fc.integer({ min: 1, max: 500 }),
      more: fc.integer({ min: 1, max: 99 }),
      unit: fc.constantFrom('N.m', 'mm', '[psi]', '[in_i]', 'bar', 'Cel', 'L', 'min', 'circ'),
      isMost: fc.boolean(),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map(parts => {
    let at = 0
    const marks = parts.flatMap(({ length, low, more, unit, isMost }, i): Mark[] => {
      const [start, end] = [at / 1000, (at + length) / 1000]
      at += length + 11_000
      const step = `s${i}`
      const quantity = isMost ? { high: low, unit } : { low, high: low + more, unit }
      return [
        { id: step, kind: 'step', start, end, said: '', place: i + 1, text: `Action ${String.fromCharCode(65 + i)}` },
        {
          id: `v${i}`,
          kind: 'spec',
          start,
          end,
          said: '',
          step,
          text: `value ${String.fromCharCode(65 + i)}`,
          quantity,
          basis: 'manual',
        },
      ]
    })
    const footage = { name: 'a.mp4', bytes: 1, seconds: at / 1000 + 20, fingerprint: 'x' }
    return { ...emptyProject(), marks, recording: { footage, transcript: null } }
  })

const contentOf = async (name: string, ending: string, project: Project, units: UnitChoice) => {
  const files = await SINGLES.find(publication => publication.name === name)?.files(project, {
    units,
    notes: { leastChapter: 0 },
  })
  return String(files?.find(({ path }) => path.endsWith(ending))?.content)
}

const spansIn = (text: string, link: RegExp) =>
  [...text.matchAll(link)].map(match => parseSpanAddress(match[1] ?? '')).map(span => [span?.start, span?.end])

/** Where each publication says the spec of this name, the words after it. */
const valueIn = (plain: string, name: string) => {
  const at = plain.indexOf(name)
  return plain.slice(at + name.length, at + name.length + 80).replace(/^[:\s|*]+/, '')
}

describe('all publications of one project', () => {
  test(
    '[P16] give each step the same span, to the millisecond',
    () =>
      fc.assert(
        fc.asyncProperty(anyJob, async project => {
          const steps = toSheet(project).steps.map(({ mark }) => [mark.start, mark.end])
          const of = (name: string, ending: string) => contentOf(name, ending, project, 'as-said')
          expect(spansIn(await of('sheet', '.md'), /^\d+\. Action . \[[^\]]*\]\((\S+) /gm)).toEqual(steps)
          expect(spansIn(await of('task', '.dita'), /<cmd>Action . <xref href="([^"]*)"/g)).toEqual(steps)
          expect(
            spansIn(await of('handout', '.html'), /<p dir="auto">Action .<\/p><a class="time" href="([^"]*)"/g),
          ).toEqual(steps)
          const how = JSON.parse((await of('page', '.html')).split('\n').slice(1, -2).join('\n'))
          expect(
            how.step.map((step: { video: { startOffset: number; endOffset: number } }) => [
              step.video.startOffset,
              step.video.endOffset,
            ]),
          ).toEqual(steps)
          expect(spansIn(JSON.stringify(how.step.map((step: { url: string }) => step.url)), /"(a[^"]*)"/g)).toEqual(
            steps,
          )
          const chapters = JSON.parse(await of('chapters', '.json')).chapters
          const starts = steps.map(([start]) => start)
          expect(chapters.map((chapter: { startTime: number }) => chapter.startTime)).toEqual(starts)
          expect(spansIn(await of('notes', '.md'), /^- \[[^\]]*\]\((\S+)\) Action/gm).map(([start]) => start)).toEqual(
            starts,
          )
        }),
        { numRuns: 40 },
      ),
    120_000,
  )

  test(
    '[P16] give each spec the same number and unit, in any choice of units',
    () =>
      fc.assert(
        fc.asyncProperty(anyJob, fc.constantFrom(...UNIT_CHOICES), async (project, units) => {
          const of = (name: string, ending: string) => contentOf(name, ending, project, units)
          const sheet = await of('sheet', '.md')
          const texts = [
            sheet.slice(sheet.indexOf('## Steps')),
            await of('notes', '.txt'),
            (await of('task', '.dita')).replace(/<[^>]*>/g, ''),
            await of('page', '.html'),
          ]
          const handout = await of('handout', '.html')
          for (const mark of project.marks.filter(each => each.kind === 'spec')) {
            const system = units === 'as-said' ? {} : { system: units }
            const wanted = formatQuantity(mark.quantity ?? {}, system)
            for (const text of texts) expect(valueIn(text, mark.text).startsWith(wanted)).toBe(true)
            expect(handout).toContain(`<bdi>${mark.text}</bdi>: <span class="value">${wanted}</span>`)
          }
        }),
        { numRuns: 40 },
      ),
    120_000,
  )

  /** @source NIST SP 811 (2008) B.8: 1 lbf·ft = 1.355 818 N·m, so 25 N·m = 18.4 lbf·ft; limits rounded inwards */
  test('[P16] convert by the same factors everywhere', async () => {
    expect(toSystem({ nominal: 25, unit: 'N.m' }, 'us')?.nominal).toBeCloseTo(25 / 1.355818, 1)
    for (const [name, ending] of [
      ['sheet', '.md'],
      ['handout', '.html'],
      ['notes', '.txt'],
      ['page', '.html'],
      ['task', '.dita'],
    ] as const)
      expect(await contentOf(name, ending, exampleProject(), 'both')).toContain('25 N·m (18.4 lbf·ft)')
  })
})
