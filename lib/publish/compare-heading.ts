import type { Heading } from '@/lib/procedure/project'
import { type Change, clip } from './change'
import type { ReadBack, Unread } from './read-back'

const TEXTS = ['title', 'equipment', 'scope', 'revision', 'author'] as const

const ofHeading = (about: string, line: number, to: Partial<Heading>): Change => ({
  about,
  line,
  edit: { do: 'change-heading', to },
})

const textChange = (key: (typeof TEXTS)[number], value: string, line: number): Change =>
  ofHeading(value === '' ? `Take away the ${key}` : `Change the ${key} to “${clip(value)}”`, line, { [key]: value })

/** Repetitions of the heading that a hand changed: taken where the front matter still says what the project says. */
const fromEchoes = (before: Heading, read: ReadBack): { changes: Change[]; unread: Unread[] } => {
  const changes: Change[] = []
  const unread: Unread[] = []
  const seen = new Set<string>()
  for (const { heading, line, section } of read.echoes)
    for (const key of ['title', 'equipment', 'revision', 'author'] as const) {
      const value = heading[key]
      if (value === undefined || value === before[key] || seen.has(`${key} ${value}`)) continue
      seen.add(`${key} ${value}`)
      if (read.heading[key] === before[key]) changes.push(textChange(key, value, line))
      else
        unread.push({ line, text: value, why: `the ${section} says otherwise than the front matter, which is taken` })
    }
  return { changes, unread }
}

/** @returns what a hand changed in the heading: front matter, scope and references, and the lines that repeat them. */
export const compareHeading = (before: Heading, read: ReadBack): { changes: Change[]; unread: Unread[] } => {
  const after = read.heading
  const changes: Change[] = TEXTS.filter(key => before[key] !== after[key]).map(key => textChange(key, after[key], 1))
  const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)
  const references = (heading: Heading) => heading.references.map(({ title, part }) => [title, part])
  if (!same(references(before), references(after)))
    changes.push(ofHeading('Change the references', 1, { references: after.references }))
  const interval = ({ interval: i }: Heading) => (i === undefined ? undefined : [i.hours, i.months])
  if (!same(interval(before), interval(after)))
    changes.push(
      after.interval === undefined
        ? { about: 'Take away the interval', line: 1, edit: { do: 'clear-interval' } }
        : ofHeading('Change the interval', 1, { interval: after.interval }),
    )
  const echoed = fromEchoes(before, read)
  return { changes: [...changes, ...echoed.changes], unread: echoed.unread }
}
