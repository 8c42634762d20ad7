import { toSheet } from '@/lib/procedure/sheet'
import type { Publication } from './publication'
import { toFileName } from './text'

/** Every publication, in the order they are offered. Each loads its writer only when it is asked for. */
export const PUBLICATIONS: readonly Publication[] = [
  {
    name: 'sheet',
    about: 'The job sheet in Markdown: every mark with its time, readable back after editing by hand.',
    files: async (project, options) => {
      const { toSheetMarkdown } = await import('./markdown')
      const { toPictures } = await import('./pictures')
      const sheet = toSheet(project)
      const { files, paths } = toPictures(
        sheet.steps.map(step => step.mark),
        options.stills,
      )
      const name = toFileName(project.procedure.title, 'procedure')
      const content = toSheetMarkdown(sheet, options, paths)
      return [{ path: `${name}.md`, type: 'text/markdown', content }, ...files]
    },
  },
]
