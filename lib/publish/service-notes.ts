import type { Root } from 'mdast'
import { type Block, bullets, heading, item, link, paragraph, strong, table, text } from './nodes'
import { markdown } from './processor'
import { type Job, jobTimes, sharedCautions, sharedThings, thingWords } from './service'
import { toLine } from './text'
import { CLOSING_HEADING, CLOSING_NOTE, hazardWords, SIGNAL_WORDS } from './words'

const things = (title: string, jobs: readonly Job[], kind: 'tool' | 'material'): readonly Block[] => {
  const items = sharedThings(jobs, kind).map(thing => item(paragraph(text(thingWords(thing)))))
  return items.length === 0 ? [] : [heading(2, title), bullets(items)]
}

/**
 * The notes of a service of several jobs: running times and due dates, one safety summary, one list of tools and of
 * materials, a link to each job's own notes.
 *
 * @param jobs in the order the user gave
 * @returns Markdown
 */
export const toServiceNotes = (title: string, jobs: readonly Job[]): string => {
  const times = jobTimes(jobs)
  const rows = times.map((time, i) => [
    [link(time.title, `${jobs[i]?.folder ?? '.'}/index.html`)],
    [text(time.startsAt)],
    [text(time.runs)],
    [text(time.due)],
  ])
  const cautions = sharedCautions(jobs).map(({ mark, where }) => {
    const hazard = hazardWords(mark)
    const word = SIGNAL_WORDS[mark.level ?? 'caution']
    const flag = mark.pencilled === undefined ? '' : ', pencilled'
    return item(
      paragraph(
        strong(`${hazard === '' ? word : `${word} (${hazard})`}:`),
        text(` ${toLine(mark.text)} (${where}${flag})`),
      ),
    )
  })
  const notices = jobs.flatMap(job =>
    job.notices.map(({ opening, text: words }) =>
      item(paragraph(strong(`${job.title}: ${opening}`), text(` ${words}`))),
    ),
  )
  const root: Root = {
    type: 'root',
    children: [
      heading(1, title),
      ...(notices.length === 0 ? [] : [bullets(notices)]),
      heading(2, 'Jobs'),
      table([['Job', 'Starts at', 'Runs', 'Due'].map(word => [text(word)]), ...rows]),
      ...(cautions.length === 0 ? [] : [heading(2, 'Safety summary'), bullets(cautions)]),
      ...things('Tools', jobs, 'tool'),
      ...things('Materials', jobs, 'material'),
      heading(2, CLOSING_HEADING),
      paragraph(text(CLOSING_NOTE)),
    ],
  }
  return markdown.stringify(root)
}
