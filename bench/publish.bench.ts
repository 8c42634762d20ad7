import { HtmlRenderer, Parser } from 'commonmark'
import { toSheet } from '@/lib/procedure/sheet'
import { toSheetMarkdown } from '@/lib/publish/markdown'
import { PUBLICATIONS } from '@/lib/publish/publications'
import { parseSheetMarkdown } from '@/lib/publish/read-markdown'
import { largeProject } from '../tests/lib/publish/large'
import { type Bench, type BenchRow, fastest } from './row'

const STEPS = 200

const rows = async (): Promise<readonly BenchRow[]> => {
  const project = largeProject(STEPS)
  const cold = performance.now()
  for (const publication of PUBLICATIONS) await publication.files(project, {})
  const first = performance.now() - cold
  const each: BenchRow[] = []
  for (const { name, files } of PUBLICATIONS)
    each.push({ what: `${STEPS} steps as ${name}`, value: await fastest(3, () => files(project, {})), unit: 'ms' })
  const singles = each.slice(0, -1).reduce((sum, row) => sum + row.value, 0)
  const text = toSheetMarkdown(toSheet(project))
  const ours = await fastest(3, () => parseSheetMarkdown(text))
  const peer = await fastest(3, () => new HtmlRenderer().render(new Parser().parse(text)))
  return [
    ...each,
    {
      what: `${STEPS} steps in every form, one after the other`,
      value: singles,
      unit: 'ms',
      against: 'at most 2000 ms',
    },
    { what: 'every form and the packet the first time, loading included', value: first, unit: 'ms' },
    {
      what: 'the sheet read back, against rendering it',
      value: ours / peer,
      unit: 'x',
      against: 'commonmark.js in the same run = 1',
    },
  ]
}

/** What a project is exported as, and read back from. */
export const bench: Bench = { name: 'publish', run: rows }
