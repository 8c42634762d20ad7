import { parseClock } from './clock'

/** An object of a JSON document. */
export type Item = Readonly<Record<string, unknown>>

/** Whether a value is an object, not a list. */
export const isItem = (value: unknown): value is Item =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const TEXTS = ['punctuated_word', 'text', 'transcript', 'word', 'content', 'value', 'sentence', 'utterance']
const STARTS = ['start', 'begin', 'from', 'starttime', 'startoffset', 'startsec', 'startseconds', 'ts', 'timestart']
const ENDS = ['end', 'stop', 'to', 'endtime', 'endoffset', 'endsec', 'endseconds', 'endts', 'timeend']
const LENGTHS = ['duration', 'dur', 'length']
const SPEAKERS = ['speaker', 'speakerlabel', 'speakerid', 'speakername', 'who', 'voice']

type Field = { readonly value: unknown; readonly isMs: boolean }

/** Field of an item whatever its spelling: `start_time`, `startTime`, `start`; with whether it says milliseconds. */
const fieldOf = (item: Item, names: readonly string[]): Field | undefined => {
  for (const [key, value] of Object.entries(item)) {
    const flat = key.toLowerCase().replace(/[_-]/g, '')
    if (names.includes(flat)) return { value, isMs: false }
    const bare = flat.replace(/(?:inms|ms|milliseconds|millis)$/, '')
    if (bare !== flat && names.includes(bare)) return { value, isMs: true }
  }
  return undefined
}

const toMoment = ({ value, isMs }: Field): number | undefined => {
  if (typeof value === 'number') return Number.isFinite(value) ? Math.max(0, isMs ? value / 1000 : value) : undefined
  if (typeof value !== 'string') return undefined
  if (/^\d{1,15}(?:\.\d{1,9})?s?$/.test(value)) return Number(value.replace('s', '')) / (isMs ? 1000 : 1)
  return parseClock(value)
}

const momentOf = (item: Item, names: readonly string[]): number | undefined => {
  const field = fieldOf(item, names)
  return field === undefined ? undefined : toMoment(field)
}

/** Start and end as an item gives them, in the document's own unit unless it names one. */
export type Extent = { readonly start: number; readonly end: number }

const ownExtent = (item: Item): Extent | undefined => {
  const { timestamp } = item
  if (Array.isArray(timestamp)) {
    const [start, end] = timestamp.map(value => toMoment({ value, isMs: false }))
    return start === undefined ? undefined : { start, end: end ?? start }
  }
  const start = momentOf(item, STARTS) ?? momentOf(item, ['offset', 'timestamp', 'time'])
  if (start === undefined) return undefined
  const length = momentOf(item, LENGTHS)
  return { start, end: momentOf(item, ENDS) ?? (length === undefined ? start : start + length) }
}

const listsIn = (item: Item): readonly (readonly unknown[])[] => Object.values(item).filter(Array.isArray)

/** @returns the words of the first list of timed words an item holds; a list of longer texts is none. */
export const wordsIn = (item: Item): readonly Item[] => {
  for (const list of listsIn(item)) {
    const words = list.filter(isItem).filter(word => textOf(word) !== undefined && ownExtent(word) !== undefined)
    const single = words.filter(word => !/\S\s+\S/.test(textOf(word) ?? ''))
    if (words.length > 0 && single.length > 0.8 * words.length) return words
  }
  return []
}

/** An object with more words than this is no segment but a whole talk. */
const LONGEST_SEGMENT = 100

/** @returns when an item was said: its own times, those of an object inside it, or those of its words. */
export const extentOf = (item: Item): Extent | undefined => {
  const own = ownExtent(item)
  if (own !== undefined) return own
  const nested = Object.values(item).filter(isItem)
  const clocks = nested.filter(inner => typeof fieldOf(inner, STARTS)?.value === 'string')
  for (const inner of [...clocks, ...nested]) {
    const extent = ownExtent(inner)
    if (extent !== undefined) return extent
  }
  const words = wordsIn(item)
  if (words.length > LONGEST_SEGMENT) return undefined
  const [first, last] = [words[0], words.at(-1)]
  const start = first === undefined ? undefined : ownExtent(first)?.start
  return start === undefined || last === undefined ? undefined : { start, end: ownExtent(last)?.end ?? start }
}

/** @returns what was said: the item's own text, or that of its first alternative. */
export const textOf = (item: Item): string | undefined => {
  const own = TEXTS.map(name => item[name]).find(value => typeof value === 'string')
  if (own !== undefined) return own
  const first = Array.isArray(item.alternatives) ? item.alternatives.find(isItem) : undefined
  return first === undefined ? undefined : TEXTS.map(name => first[name]).find(value => typeof value === 'string')
}

/** @returns who spoke; recognisers often only count people. */
export const speakerOf = (item: Item): { readonly speaker: string } | undefined => {
  const value = fieldOf(item, SPEAKERS)?.value
  if (typeof value === 'string' && value.trim() !== '') return { speaker: value.trim() }
  return typeof value === 'number' ? { speaker: `Speaker ${value}` } : undefined
}
