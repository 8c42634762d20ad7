import { parseDocument } from 'yaml'
import type { Heading, Interval } from '@/lib/procedure/project'
import type { Unread } from './read-back'

/** What the front matter says. Absent where it does not say it. */
export type ReadFront = {
  readonly heading: Partial<Heading>
  readonly footage: { readonly name: string; readonly seconds: number } | null
  readonly isKeptOnly: boolean
  /** Line of each field; absent where no front matter could be read. */
  readonly lines?: ReadonlyMap<string, number>
  readonly unread: readonly Unread[]
}

type Fields = Readonly<Record<string, unknown>>

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Every scalar is read as text, so `revision: 3` and `title: no` stay what was typed. */
const asText = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined)

const positive = (value: unknown): number | undefined => {
  const number = Number(asText(value) ?? Number.NaN)
  return Number.isFinite(number) && number > 0 ? number : undefined
}

const toInterval = (hours: number | undefined, months: number | undefined): Interval => ({
  ...(hours === undefined ? {} : { hours }),
  ...(months === undefined ? {} : { months }),
})

/** Hours and months, or words such as `every 200 h or 12 months`. */
const readInterval = (value: unknown): Interval | undefined => {
  if (isFields(value)) {
    const isWhole = Object.entries(value).every(
      ([key, v]) => /^(?:hours|months)$/.test(key) && positive(v) !== undefined,
    )
    return isWhole ? toInterval(positive(value.hours), positive(value.months)) : undefined
  }
  const words = asText(value) ?? ''
  const hours = positive(/(\d+(?:\.\d+)?) ?(?:h|hours?)\b/.exec(words)?.[1])
  const months = positive(/(\d+(?:\.\d+)?) ?months?\b/.exec(words)?.[1])
  return hours === undefined && months === undefined ? undefined : toInterval(hours, months)
}

const readFootage = (value: unknown): ReadFront['footage'] => {
  if (!isFields(value)) return null
  const seconds = Number(asText(value.seconds) ?? Number.NaN)
  return { name: asText(value.name) ?? '', seconds: Number.isFinite(seconds) && seconds >= 0 ? seconds : 0 }
}

const readReferences = (value: unknown): Heading['references'] | undefined =>
  Array.isArray(value) && value.every(isFields)
    ? value.map(each => ({ title: asText(each.title) ?? '', part: asText(each.part) ?? '' }))
    : undefined

const KNOWN = [
  'title',
  'equipment',
  'interval',
  'revision',
  'author',
  'footage',
  'units',
  'pencilled',
  'scope',
  'references',
] as const

const LEFT_AS_IT_IS = 'Title, equipment, interval, revision and author are left as they are'

const NO_FRONT: ReadFront = { heading: {}, footage: null, isKeptOnly: false, unread: [] }

/** What a sheet without front matter says: nothing, which is no wish to take the head away. */
export const MISSING_FRONT: ReadFront = {
  ...NO_FRONT,
  unread: [{ line: 1, text: 'front matter', why: `none stands between --- lines at the top. ${LEFT_AS_IT_IS}` }],
}

/**
 * Reads front matter.
 *
 * @param yaml without its fences
 * @param line where it starts in the text, counted from 1
 * @returns what it says, and every field that was not understood. Never throws.
 */
export const readFrontMatter = (yaml: string, line: number): ReadFront => {
  const document = parseDocument(yaml, { schema: 'failsafe', prettyErrors: false, uniqueKeys: false })
  const [error] = document.errors
  const fields: unknown = error === undefined ? document.toJS() : undefined
  const rows = yaml.split('\n')
  if (!isFields(fields)) {
    const why = error === undefined ? 'expected fields such as `title: …`' : `this is not valid YAML: ${error.message}`
    const at = yaml.slice(0, error?.pos[0] ?? 0).split('\n').length - 1
    const text = rows[at] ?? ''
    return { ...NO_FRONT, unread: [{ line: line + at, text, why: `${why}. ${LEFT_AS_IT_IS}` }] }
  }
  const unreadField = (key: string, why: string): Unread => {
    const at = rows.findIndex(row => row.startsWith(`${key}:`))
    return { line: line + Math.max(0, at), text: rows[at] ?? key, why }
  }
  const interval = fields.interval === undefined ? undefined : readInterval(fields.interval)
  const unread = Object.keys(fields)
    .filter(key => !(KNOWN as readonly string[]).includes(key))
    .map(key => unreadField(key, `front matter has no field "${key}"; known: ${KNOWN.join(', ')}`))
  if (fields.interval !== undefined && interval === undefined)
    unread.push(unreadField('interval', 'expected hours and months, each a number over 0'))
  const texts = (['title', 'equipment', 'revision', 'author', 'scope'] as const).flatMap(key => {
    const value = asText(fields[key])
    return value === undefined ? [] : [[key, value] as const]
  })
  const references = readReferences(fields.references)
  return {
    heading: {
      ...Object.fromEntries(texts),
      ...(interval === undefined ? {} : { interval }),
      ...(references === undefined ? {} : { references }),
    },
    footage: readFootage(fields.footage),
    isKeptOnly: fields.pencilled === 'left out',
    lines: new Map(Object.keys(fields).map(key => [key, unreadField(key, '').line])),
    unread,
  }
}
