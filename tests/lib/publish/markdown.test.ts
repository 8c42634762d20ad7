import { HtmlRenderer, Parser } from 'commonmark'
import { remark } from 'remark'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import recommended from 'remark-preset-lint-recommended'
import { describe, expect, test } from 'vitest'
import type { Project } from '@/lib/procedure/project'
import { toSheet } from '@/lib/procedure/sheet'
import { footageAddress, parseSpanAddress, spanAddress } from '@/lib/publish/address'
import { toSheetMarkdown } from '@/lib/publish/markdown'
import type { PublishOptions } from '@/lib/publish/publication'
import { parseSheetMarkdown } from '@/lib/publish/read-markdown'
import { caution, projectOf, step } from '../../builders'
import { exampleProject } from './example'
import { largeProject } from './large'

const sheetOf = (project: Project, options: PublishOptions = {}) => toSheetMarkdown(toSheet(project), options)
const headings = (text: string) => [...text.matchAll(/^#{1,2} (.*)$/gm)].map(match => match[1])

describe('the sheet', () => {
  const text = sheetOf(exampleProject())

  test('[P1] has its sections in order', () => {
    expect(headings(text)).toEqual([
      'Yearly service of the pillar drill',
      'Scope',
      'Safety summary',
      'Tools',
      'Materials',
      'Specs',
      'Steps',
      'Symptoms',
      'References',
      'Revision and sign-off',
      'Before you rely on this',
    ])
  })

  test('[P1] opens with front matter: title, equipment, interval, revision, footage name and length', () => {
    expect(text.slice(0, text.indexOf('\n# '))).toBe(`---
title: Yearly service of the pillar drill
equipment: Belt-driven pillar drill, 16 speed
interval:
  hours: 500
  months: 12
revision: B
author: Workshop 2
footage:
  name: drill service.mp4
  length: "12:34"
  seconds: 754.32
---
`)
  })

  test('[P1] links each step to its span of the footage and numbers on after a caution', () => {
    const steps = [...text.matchAll(/^(\d+)\. (.*?) \[(.*?)\]\((\S+) "/gm)].map(match => match.slice(1, 5))
    expect(steps).toEqual([
      ['1', 'Pull the mains plug', '0:07–0:18', 'drill%20service.mp4#t=7,18.5'],
      ['2', 'Slacken the motor lock and lift out both belts', '1:15–1:32', 'drill%20service.mp4#t=75,92'],
      ['3', 'Fit new belts and tension them', '2:00–2:11', 'drill%20service.mp4#t=120,131.25'],
      ['4', 'Tighten the motor lock bolts', '2:20–2:30', 'drill%20service.mp4#t=140,150'],
    ])
  })

  test('[P1] says each caution before the step it protects', () => {
    const body = text.slice(text.indexOf('## Steps'))
    const order = [/> \*\*WARNING \(ent/, /^1\. /m, /^3\. /m, /> \*\*NOTICE/, /^4\. /m].map(each => body.search(each))
    expect(order).toEqual([...order].sort((a, b) => a - b))
    expect(order.every(at => at >= 0)).toBe(true)
  })

  test('[P1] lists each tool once, with every step that needs it', () => {
    expect(text).toContain('- 13 mm spanner *(steps [2](drill%20service.mp4#t=76,78 "tool-1"), [4](')
  })

  test('[P1] ends with whose word holds', () => {
    expect(text.trimEnd().split('\n').at(-1)).toMatch(/maker's service manual, local codes and licensed practice/)
  })

  test('[P1] has nothing for remark-lint to say (remark-preset-lint-recommended)', async () => {
    for (const project of [exampleProject(), largeProject(20)]) {
      const file = await remark().use(remarkFrontmatter).use(remarkGfm).use(recommended).process(sheetOf(project))
      expect(file.messages.map(String)).toEqual([])
    }
  })

  test('[P1] renders by another CommonMark renderer to the same steps (commonmark.js)', () => {
    const html = new HtmlRenderer().render(new Parser().parse(text.slice(text.indexOf('\n# '))))
    expect([...html.matchAll(/<ol(?: start="(\d+)")?>/g)].map(match => match[1] ?? '1')).toEqual(['1', '4'])
    expect(html).toContain(
      '<li>Pull the mains plug <a href="drill%20service.mp4#t=7,18.5" title="step-1">0:07–0:18</a></li>',
    )
  })

  test('[P1] without anything marked is still a sheet, and says so when read', () => {
    const empty = sheetOf(projectOf())
    expect(headings(empty)).toEqual(['Untitled procedure', 'Revision and sign-off', 'Before you rely on this'])
    expect(parseSheetMarkdown(empty)).toMatchObject({ ok: true, value: { marks: [], unread: [] } })
  })

  test('[P1] a text that is no sheet is refused in plain words', () => {
    expect(parseSheetMarkdown('# Shopping\n\nMilk')).toMatchObject({ ok: false, problems: [{ code: 'not-a-sheet' }] })
  })
})

describe('links into footage (W3C Media Fragments URI 1.0)', () => {
  test('[P1] put the address the user gives in front', () => {
    const text = sheetOf(projectOf(step(75, 92, 'Fit it')), { footageAddress: 'https://example.org/watch?v=1#top' })
    expect(text).toContain('(https://example.org/watch?v=1#t=75,92 "')
  })

  test.each([
    ['shop.mp4', undefined, 'shop.mp4'],
    ['a b/ü#1.mp4', undefined, 'a%20b%2F%C3%BC%231.mp4'],
    ['javascript:alert(1)', undefined, 'javascript%3Aalert(1)'],
    ['x', 'javascript:alert(1)', 'javascript%3Aalert(1)'],
    ['x', 'videos/take 2.mp4', 'videos/take%202.mp4'],
    ['x', 'file:///tmp/a.mp4', 'file:///tmp/a.mp4'],
    ['lone \uD800', undefined, 'lone%20%EF%BF%BD'],
  ])('[P4] of %j with %j are %s', (name, given, expected) => {
    expect(footageAddress(name, given)).toBe(expected)
  })

  test('[P1] of a mark without length have a start only, since an empty span is no fragment', () => {
    expect(spanAddress('a.mp4', { start: 3, end: 3 })).toBe('a.mp4#t=3')
    expect(parseSpanAddress('a.mp4#t=npt:3,4.5')).toEqual({ start: 3, end: 4.5 })
  })
})

describe('pencilled marks and findings', () => {
  const project = exampleProject()

  test('[P5] are flagged each and counted at the head', () => {
    const text = sheetOf(project)
    expect(text).toContain('> **Unchecked: 1 mark of 16.**')
    expect(text.match(/\*pencilled\*/g)).toHaveLength(1)
  })

  test('[P5] can be left out, which is said', () => {
    const text = sheetOf(project, { pencilled: 'leave-out' })
    expect(text).toContain('> **Left out: 1 pencilled mark of 16.**')
    expect(text).not.toContain('Fit new belts')
    expect(text).toContain('V-belt, 660 mm')
  })

  test('[P6] stop findings are said at the head, the others only when asked for', () => {
    const findings = [
      { level: 'stop' as const, message: 'The guard is never refitted.', where: 'step 2' },
      { level: 'fix' as const, message: 'No tolerance.' },
      { level: 'stop' as const, message: 'Known.', waived: 'Owner agreed.' },
    ]
    const plain = sheetOf(project, { findings })
    expect(plain).toContain('> **Not fit for release: 1 stop finding.**')
    expect(plain.indexOf('The guard is never refitted. (step 2)')).toBeLessThan(plain.indexOf('## Scope'))
    expect(plain).not.toContain('No tolerance.')
    const listed = sheetOf(project, { findings, listFindings: true })
    expect(listed).toContain('- fix: No tolerance.')
    expect(listed).toContain('- Known. Let stand: Owner agreed.')
  })

  test('[P6] a finding that begins with its place does not say it again', () => {
    const findings = [
      { level: 'stop' as const, message: 'Step 2: the guard is never refitted.', where: 'step 2' },
      { level: 'stop' as const, message: 'Step 21 comes too late.', where: 'step 2' },
    ]
    const text = sheetOf(project, { findings })
    expect(text).toContain('> - Step 2: the guard is never refitted.\n')
    expect(text).toContain('> - Step 21 comes too late. (step 2)\n')
  })

  test('[P1] names the hazard of a caution in words, and gives it back as it was', () => {
    const named = projectOf(
      step(0, 9, 'Couple the shaft', { id: 'a' }),
      caution(0, 3, 'It winds up clothes', { step: 'a', level: 'danger', hazard: 'drive-shaft' }),
      caution(3, 6, 'It takes pictures', { step: 'a', level: 'danger', hazard: 'x-ray' }),
    )
    const text = sheetOf(named)
    expect(text).toContain('**DANGER (drive shaft):** It winds up clothes')
    expect(text).toContain('**DANGER (x-ray):** It takes pictures')
    const read = parseSheetMarkdown(text)
    expect(read.ok && read.value.marks.flatMap(({ hazard }) => hazard ?? [])).toEqual(['drive-shaft', 'x-ray'])
  })
})
