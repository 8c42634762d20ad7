import type { Heading } from '@/lib/procedure/project'
import { type Change, clip } from './change'
import { shownScope } from './front-matter'
import type { ReadBack, Unread } from './read-back'
import { listOf } from './text'
import { formatInterval } from './words'

/** Fields that the front matter says, and the lines at the head repeat. */
const TEXTS = ['title', 'equipment', 'revision', 'author'] as const

/** What keeping a changed part of the heading would do: from what, to what. */
const aboutPart = (what: string, from: string, to: string): string => {
  if (to === '') return `Take away the ${what}, ${from}`
  return from === '' ? `Set the ${what} to ${to}` : `Change the ${what} from ${from} to ${to}`
}

const quotedOrNone = (value: string): string => (value === '' ? '' : `“${clip(value)}”`)

const ofHeading = (what: string, from: string, to: string, line: number, change: Partial<Heading>): Change => ({
  about: aboutPart(what, from, to),
  line,
  edit: { do: 'change-heading', to: change },
})

const textChange = (key: (typeof TEXTS)[number] | 'scope', before: Heading, value: string, line: number): Change =>
  ofHeading(key, quotedOrNone(before[key]), quotedOrNone(value), line, { [key]: value })

/** Repetitions of the heading that a hand changed: taken where the front matter still says what the project says. */
const fromEchoes = (before: Heading, read: ReadBack): { changes: Change[]; unread: Unread[] } => {
  const changes: Change[] = []
  const unread: Unread[] = []
  const seen = new Set<string>()
  for (const { heading, line, section } of read.echoes)
    for (const key of TEXTS) {
      const value = heading[key]
      if (value === undefined || value === before[key] || seen.has(`${key} ${value}`)) continue
      seen.add(`${key} ${value}`)
      if (read.front === undefined || read.heading[key] === before[key])
        changes.push(textChange(key, before, value, line))
      else
        unread.push({ line, text: value, why: `the ${section} says otherwise than the front matter, which is taken` })
    }
  return { changes, unread }
}

const referenceWords = ({ references }: Heading): string =>
  references.length === 0
    ? ''
    : listOf(references.map(({ title, part }) => `“${clip([title, part].filter(Boolean).join(', '))}”`))

const sameReferences = (a: Heading, b: Heading): boolean => {
  const plain = ({ references }: Heading) => JSON.stringify(references.map(({ title, part }) => [title, part]))
  return plain(a) === plain(b)
}

const intervalChange = (before: Heading, after: Heading, line: number): readonly Change[] => {
  const plain = ({ interval: i }: Heading) => JSON.stringify(i === undefined ? [] : [i.hours, i.months])
  if (plain(before) === plain(after)) return []
  const [from, to] = [formatInterval(before.interval) ?? '', formatInterval(after.interval) ?? '']
  return [
    after.interval === undefined
      ? { about: aboutPart('interval', from, to), line, edit: { do: 'clear-interval' } }
      : ofHeading('interval', from, to, line, { interval: after.interval }),
  ]
}

/** @returns what a hand changed in the heading: front matter, scope and references, and the lines that repeat them. */
export const compareHeading = (before: Heading, read: ReadBack): { changes: Change[]; unread: Unread[] } => {
  const { heading: after, front } = read
  const lineOf = (key: string): number => front?.get(key) ?? 1
  const texts = TEXTS.filter(key => front !== undefined && before[key] !== after[key])
  const changes: Change[] = texts.map(key => textChange(key, before, after[key], lineOf(key)))
  // Without front matter, the scope is known only as the sheet shows it.
  const isSameScope = front === undefined ? shownScope(before.scope) === after.scope : before.scope === after.scope
  if (!isSameScope) changes.push(textChange('scope', before, after.scope, lineOf('scope')))
  if (!sameReferences(before, after)) {
    const { references } = after
    changes.push(
      ofHeading('references', referenceWords(before), referenceWords(after), lineOf('references'), { references }),
    )
  }
  if (front !== undefined) changes.push(...intervalChange(before, after, lineOf('interval')))
  const echoed = fromEchoes(before, read)
  return { changes: [...changes, ...echoed.changes], unread: echoed.unread }
}
