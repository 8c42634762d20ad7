import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import { headedList, noticeBlock } from './contents'
import { type Job, jobTimes, sharedCautions, sharedThings, thingWords } from './service'
import { toLine } from './text'
import { hazardWords, SIGNAL_WORDS } from './words'

const TIMES = ['Job', 'Starts at', 'Runs', 'Due'] as const

/**
 * What the page of contents of a service says before its files: what stops each job, running times and due dates, one safety
 * summary, one list of tools and of materials; the same as the notes of the service say in Markdown.
 *
 * @param jobs in the order the user gave
 */
export const serviceContents = (jobs: readonly Job[]): readonly ElementContent[] => {
  const rows = jobTimes(jobs).map(({ title, startsAt, runs, due }, i) =>
    h('tr', [
      h('td', [h('a', { href: `${encodeURIComponent(jobs[i]?.folder ?? '.')}/index.html` }, title)]),
      ...[startsAt, runs, due].map(cell => h('td', cell)),
    ]),
  )
  const cautions = sharedCautions(jobs).map(({ mark, where }) => {
    const hazard = hazardWords(mark)
    const word = SIGNAL_WORDS[mark.level ?? 'caution']
    const flag = mark.pencilled === undefined ? '' : ', pencilled'
    return [
      h('strong', `${hazard === '' ? word : `${word} (${hazard})`}:`),
      { type: 'text' as const, value: ` ${toLine(mark.text)} (${where}${flag})` },
    ]
  })
  return [
    ...jobs.flatMap(job =>
      job.notices.map(notice => noticeBlock({ ...notice, opening: `${job.title}: ${notice.opening}` })),
    ),
    h('h2', 'Jobs'),
    h('table', [
      h('thead', [
        h(
          'tr',
          TIMES.map(word => h('th', { scope: 'col' }, word)),
        ),
      ]),
      h('tbody', rows),
    ]),
    ...headedList('Safety summary', cautions),
    ...headedList('Tools', sharedThings(jobs, 'tool').map(thingWords)),
    ...headedList('Materials', sharedThings(jobs, 'material').map(thingWords)),
  ]
}
