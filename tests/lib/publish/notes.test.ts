import { HtmlRenderer, Parser } from 'commonmark'
import { remark } from 'remark'
import remarkGfm from 'remark-gfm'
import recommended from 'remark-preset-lint-recommended'
import { describe, expect, test } from 'vitest'
import { toSheet } from '@/lib/procedure/sheet'
import { writeNotes } from '@/lib/publish/notes'
import { projectOf, step } from '../../builders'
import { exampleProject } from './example'
import { largeProject } from './large'

const sheet = toSheet(exampleProject())

describe('show notes', () => {
  test('[P8] say in plain text what the job is, its chapters from 0:00, safety, things with prices, values and references', () => {
    expect(writeNotes(sheet).text).toBe(`Yearly service of the pillar drill

Yearly service of the pillar drill. Belt-driven pillar drill, 16 speed. 4 steps, from “Pull the mains plug” to “Tighten the motor lock bolts”. With 3 specs and 2 cautions. Due every 500 h or 12 months, whichever comes first.

Unchecked: 1 mark of 16. It was drafted by program and nobody has kept it yet. It is flagged “pencilled”.

Chapters
0:00 Pull the mains plug
1:15 Slacken the motor lock and lift out both belts
2:00 Fit new belts and tension them (pencilled)
2:20 Tighten the motor lock bolts

Safety
0:09 WARNING (entanglement): The switch can stick in; the spindle starts by itself when power returns. Pull the plug before you reach in.
2:26 NOTICE: Too tight and the casting cracks

Tools
13 mm spanner
torque wrench

Materials
V-belt, 660 mm (9.50 each)

Values
2:04 belt deflection: 10 to 12 mm, firm thumb pressure at mid-span (manual: section 6.2)
2:24 lock bolt torque: 25 N·m (spoken)
2:26 belt guard screws: hand tight

References
Maker’s manual, section 6
Belt maker’s leaflet

This was written down from a recorded walkthrough. Follow the maker's service manual, local codes and licensed practice; where they differ from what stands here, they hold. Have every value checked by someone qualified before the job is done from it.
`)
  })

  test('[P8] in Markdown link each time into the footage, and references that are addresses', () => {
    const project = exampleProject()
    const references = [{ title: 'https://example.org/manual?a=1', part: '' }]
    const { markdown } = writeNotes(toSheet({ ...project, procedure: { ...project.procedure, references } }))
    const html = new HtmlRenderer().render(new Parser().parse(markdown))
    expect(html).toContain('<a href="drill%20service.mp4#t=75,120">1:15</a> Slacken the motor lock')
    expect(html).toContain('<a href="https://example.org/manual?a=1">')
  })

  test('[P8] have nothing for remark-lint to say (remark-preset-lint-recommended)', async () => {
    const file = await remark().use(remarkGfm).use(recommended).process(writeNotes(sheet).markdown)
    expect(file.messages.map(String)).toEqual([])
  })

  test('[P8] join chapters shorter than the least length that is set', () => {
    const short = toSheet(projectOf(step(0, 4, 'One'), step(4, 30, 'Two'), step(30, 60, 'Three')))
    const chapters = (least: number) =>
      writeNotes(short, { notes: { leastChapter: least } }).text.match(/^\d:\d\d .*$/gm)
    expect(chapters(0)).toEqual(['0:00 One', '0:04 Two', '0:30 Three'])
    expect(chapters(10)).toEqual(['0:00 One, and 1 more step', '0:30 Three'])
    expect(chapters(45)).toEqual(['0:00 One, and 2 more steps'])
  })

  test('[P8] say when they are longer than the limit, and by how much', () => {
    const long = writeNotes(toSheet(largeProject(100)), { notes: { most: 500 } })
    expect(long.notices).toEqual([
      `the plain text is ${[...long.text].length} characters, ${[...long.text].length - 500} over the limit of 500; join chapters (a longer least chapter) or leave values out`,
    ])
    expect(writeNotes(sheet).notices).toEqual([])
  })
})
