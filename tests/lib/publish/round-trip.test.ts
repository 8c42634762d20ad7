import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import { toSheet } from '@/lib/procedure/sheet'
import { toSheetMarkdown } from '@/lib/publish/markdown'
import type { PublishOptions } from '@/lib/publish/publication'
import type { ReadBack } from '@/lib/publish/read-back'
import { parseSheetMarkdown } from '@/lib/publish/read-markdown'
import { anyProject } from './arbitrary'
import { exampleProject } from './example'

const readBack = (project: Project, options: PublishOptions = {}, hasPictures = false): ReadBack => {
  const pictures = new Map(hasPictures ? project.marks.map(({ id }) => [id, 'stills/a.jpg'] as const) : [])
  const read = parseSheetMarkdown(toSheetMarkdown(toSheet(project), options, pictures))
  if (!read.ok) throw new Error(read.problems.map(problem => problem.message).join('\n'))
  return read.value
}

const byId = (marks: readonly Mark[]): readonly Mark[] => [...marks].sort((a, b) => (a.id < b.id ? -1 : 1))

const runs = Number(process.env.TELLWRIGHT_RUNS ?? 2000)

describe('a sheet read back', () => {
  test('[P2] is the same procedure, whatever the project holds', () => {
    fc.assert(
      fc.property(
        anyProject,
        fc.constantFrom('as-said' as const, 'metric' as const, 'us' as const, 'both' as const),
        fc.boolean(),
        (project, units, hasPictures) => {
          const read = readBack(project, { units }, hasPictures)
          expect(byId(read.marks)).toEqual(byId(project.marks))
          expect(read.heading).toEqual(project.procedure)
          expect({ unread: read.unread, echoes: read.echoes, fresh: read.fresh }).toEqual({
            unread: [],
            echoes: [],
            fresh: [],
          })
        },
      ),
      { numRuns: runs },
    )
  }, 600_000)

  test.each(['\u00A0', '\u2000', '\u3000', '\u2028', ' '])(
    '[P2] keeps a revision that is only white space (%j)',
    revision => {
      const project = exampleProject()
      const procedure = { ...project.procedure, revision }
      const read = readBack({ ...project, procedure })
      expect(read.heading).toEqual(procedure)
      expect({ unread: read.unread, echoes: read.echoes, fresh: read.fresh }).toEqual({
        unread: [],
        echoes: [],
        fresh: [],
      })
    },
  )

  test.each(['\u00A0', '\u2003', '\u3000', '\u2028', ' '])(
    '[P2] keeps a reference that is only white space (%j)',
    space => {
      const project = exampleProject()
      const procedure = { ...project.procedure, title: space, references: [{ title: '', part: space }] }
      expect(readBack({ ...project, procedure }).heading).toEqual(procedure)
    },
  )

  test('[P2] gives the example exactly, words spoken aside', () => {
    const project = exampleProject()
    const read = readBack(project)
    expect(byId(read.marks)).toEqual(byId(project.marks))
    expect(read.heading).toEqual(project.procedure)
    expect(read.footage).toEqual({ name: 'drill service.mp4', seconds: 754.32 })
  })
})
