import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { HtmlValidate } from 'html-validate'
import { describe, expect, test } from 'vitest'
import { printPdf } from '@/lib/cli/print'
import { toSheet } from '@/lib/procedure/sheet'
import { toHandout } from '@/lib/publish/handout'
import { cssString } from '@/lib/publish/handout-style'
import { caution, projectOf, step, tool } from '../../builders'
import { exampleProject } from './example'
import { largeProject } from './large'

const html = toHandout(toSheet(exampleProject()), {
  stills: new Map([['step-2', new Uint8Array([0xff, 0xd8, 0xff, 0])]]),
  fonts: new Map([['text-400', new Uint8Array([1, 2, 3])]]),
})

describe('the handout', () => {
  test('[P7] is valid HTML (html-validate, its recommended rules)', async () => {
    const validator = new HtmlValidate({ extends: ['html-validate:recommended'], rules: { 'long-title': 'off' } })
    const report = await validator.validateString(html)
    expect(report.results.flatMap(result => result.messages.map(m => `${m.ruleId} ${m.line}: ${m.message}`))).toEqual(
      [],
    )
  })

  test('[P7] is one file: no script, and nothing that would be fetched', () => {
    expect(html).not.toMatch(/<script|<link|<iframe|@import/i)
    expect([...html.matchAll(/\bsrc="([^"]{0,12})/g)].map(match => match[1])).toEqual(['data:image/j'])
    expect([...html.matchAll(/url\(([^)]{0,12})/g)].map(match => match[1])).toEqual(['data:font/wo'])
  })

  test('[P7] shows cautions as panels before the step, boxes to tick and room for measured values', () => {
    const step = html.slice(html.indexOf('id="step-1"'), html.indexOf('id="step-2"'))
    expect(step.indexOf('class="panel warning"')).toBeLessThan(step.indexOf('class="box"'))
    expect(html.match(/<span>Measured<\/span>/g)).toHaveLength(3)
    expect(html).toMatch(/<div class="panel notice" role="note"><div class="signal"><span>NOTICE/)
  })

  test('[P7] leaves each text its own direction, Arabic beside English', () => {
    const words = 'افصل القابس'
    const rtl = toHandout(
      toSheet(projectOf(step(0, 4, words, { id: 'a' }), caution(0, 2, 'احذر', { step: 'a' }), tool(0, 2, 'مفك'))),
    )
    expect(rtl).toContain(`<p dir="auto">${words}</p>`)
    expect(rtl).toContain('<bdi>احذر</bdi>')
    expect(rtl).toContain('<bdi>مفك</bdi>')
  })

  test('[P7] cannot be broken out of by its title in the style sheet', () => {
    expect(cssString('a"}</style>\\')).toBe('"a\\22 \\7d \\3c \\2f style\\3e \\5c "')
  })

  const browser = [process.env.CHROMIUM ?? '', '/usr/bin/chromium'].find(existsSync)
  const hasTools = browser !== undefined && spawnSync('pdftotext', ['-v']).status === 0
  test.skipIf(hasTools)(
    '[P7] skipped: needs Chromium and pdftotext (Debian: apt-get install chromium poppler-utils)',
    () => {},
  )
  test.skipIf(!hasTools).each(['a4', 'letter'] as const)(
    '[P7] prints on %s with title, revision and number on every page, and no step over two',
    async paper => {
      const project = largeProject(30)
      const sheet = toSheet({ ...project, procedure: { ...project.procedure, revision: 'C' } })
      const folder = mkdtempSync(join(tmpdir(), 'handout-'))
      writeFileSync(join(folder, 'a.pdf'), await printPdf(toHandout(sheet, { paper })))
      const size = spawnSync('pdfinfo', [join(folder, 'a.pdf')], { encoding: 'utf8' }).stdout
      expect(size).toMatch(paper === 'a4' ? /Page size:\s+59[45](?:\.\d+)? x 84[12]/ : /Page size:\s+612 x 792/)
      const text = spawnSync('pdftotext', ['-layout', join(folder, 'a.pdf'), '-'], { encoding: 'utf8' }).stdout
      const pages = text.split('\f').slice(0, -1)
      expect(pages.length).toBeGreaterThan(2)
      for (const [i, page] of pages.entries()) {
        expect(page).toContain('Overhaul of the pillar drill')
        expect(page).toContain('Revision C')
        expect(page).toContain(`Page ${i + 1} of ${pages.length}`)
      }
      // Each step has an action, a spec with room for a value, and a check: whole on one page.
      const body = pages.map(page => page.slice(0, page.search(/^\s*Specs\s*$/m) >>> 0))
      for (const page of body) {
        const steps = page.match(/^\s{0,12}\d+\s+(?:Loosen|Lift|Clean|Fit|Tighten|Wipe|Line|Check) /gm)?.length ?? 0
        expect(page.match(/Measured/g)?.length ?? 0).toBe(steps)
      }
    },
    120_000,
  )
})
