import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { toSheet } from '@/lib/procedure/sheet'
import { toTask } from '@/lib/publish/task'
import { anyProject } from './arbitrary'
import { exampleProject } from './example'
import { largeProject } from './large'

const hasXmllint = spawnSync('xmllint', ['--version']).status === 0
const folder = mkdtempSync(join(tmpdir(), 'task-'))

/** Checks many files in one run of xmllint. @returns what it complains about */
const complaints = (tasks: readonly string[], ...options: string[]): string => {
  const paths = tasks.map((task, i) => {
    const path = join(folder, `${i}.dita`)
    writeFileSync(path, task)
    return path
  })
  const { status, stderr } = spawnSync('xmllint', ['--noout', '--nonet', ...options, ...paths], {
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  return status === 0 ? '' : stderr.slice(0, 2000)
}

describe('the task', () => {
  test.skipIf(hasXmllint)('[P13] skipped: xmllint is not installed (Debian: apt-get install libxml2-utils)', () => {})

  test.skipIf(!hasXmllint)(
    '[P13] keeps to the content models of DITA 1.3, whatever the project (xmllint)',
    () => {
      const projects = [exampleProject(), largeProject(30), ...fc.sample(anyProject, 150)]
      const tasks = projects.map(project => toTask(toSheet(project), { findings: [{ level: 'stop', message: 'x' }] }))
      expect(complaints(tasks, '--dtdvalid', 'tests/lib/publish/dita-task.dtd')).toBe('')
    },
    120_000,
  )

  /** The whole DTD is not in any package of the npm registry; point to a copy's catalogue to check against it. */
  const catalogue = process.env.DITA_CATALOG ?? ''
  test.skipIf(existsSync(catalogue))(
    '[P13] skipped: set DITA_CATALOG to the catalog.xml of the OASIS DITA 1.3 DTDs',
    () => {},
  )
  test.skipIf(!existsSync(catalogue) || !hasXmllint)('[P13] is valid against the DITA 1.3 DTD', () => {
    process.env.XML_CATALOG_FILES = catalogue
    expect(complaints([toTask(toSheet(exampleProject()))], '--valid', '--catalogs')).toBe('')
  })

  test('[P13] says hazards before the command, specs as information, checks as result, symptoms as troubleshooting', () => {
    const task = toTask(toSheet(exampleProject()))
    const third = task.slice(task.indexOf('<step id="step-3">'), task.indexOf('<step id="step-4">'))
    const order = [
      '<cmd>Fit new belts',
      '<info>',
      'Spec: belt deflection: 10 to 12 mm',
      '<stepresult>',
      '<steptroubleshooting>',
    ].map(each => third.indexOf(each))
    expect(order).toEqual([...order].sort((a, b) => a - b))
    expect(order.every(at => at >= 0)).toBe(true)
    expect(task).toContain(
      '<step id="step-1"><hazardstatement type="warning"><messagepanel><typeofhazard>entanglement</typeofhazard>',
    )
  })
})
