import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import type { Cue, Word } from '@/lib/procedure/recording'
import { extentOf, type Item, isItem, speakerOf, textOf, wordsIn } from './json-item'
import { doubtTimes, guessScale, quote, type Reading } from './reading'

/** Whether something has words and a time: a segment or a word. */
const isSpoken = (value: unknown): value is Item =>
  isItem(value) && textOf(value) !== undefined && extentOf(value) !== undefined

/** A punctuation mark listed between words has no time of its own. */
const isPunctuation = (value: unknown): value is Item =>
  isItem(value) && /^[.,!?;:…]+$/.test(textOf(value)?.trim() ?? '')

type Entry = { readonly path: string; readonly value: unknown }
type List = { readonly entries: readonly Entry[]; readonly spoken: number }

const MOST_VALUES = 3_000_000

/**
 * The lists of timed texts in a document, outermost first; those that stand in the same place of repeated objects are one
 * list. What lies inside a timed text is not looked at, nor are alternatives but the first.
 */
const findLists = (root: unknown): readonly List[] => {
  const lists = new Map<string, { entries: Entry[]; spoken: number }>()
  const queue: { path: string; shape: string; value: unknown }[] = [{ path: '', shape: '', value: root }]
  for (let i = 0; i < queue.length && queue.length < MOST_VALUES; i++) {
    const { path, shape, value } = queue[i] ?? { path: '', shape: '', value: undefined }
    if (isSpoken(value) || Array.isArray(value)) {
      const items: readonly unknown[] = Array.isArray(value)
        ? /alternatives$/.test(shape)
          ? value.slice(0, 1)
          : value
        : [value]
      const spoken = items.filter(isSpoken).length
      const placed = items.map((item, n) => ({ path: Array.isArray(value) ? `${path}[${n}]` : path, value: item }))
      if (spoken === 0) for (const entry of placed) queue.push({ ...entry, shape: `${shape}[]` })
      else {
        const list = lists.get(shape) ?? { entries: [], spoken: 0 }
        for (const entry of placed) list.entries.push(entry)
        list.spoken += spoken
        lists.set(shape, list)
      }
    } else if (isItem(value)) {
      for (const [key, inner] of Object.entries(value)) {
        if (typeof inner !== 'object' || inner === null) continue
        queue.push({ path: path === '' ? key : `${path}.${key}`, shape: `${shape}.${key}`, value: inner })
      }
    }
  }
  return [...lists.values()]
}

const isOneWord = (value: unknown): boolean =>
  isPunctuation(value) || (isSpoken(value) && !/\S\s+\S/.test(textOf(value) ?? ''))

/** Segments can be one word long, but hardly all of them. */
const isWordList = ({ entries }: List): boolean =>
  entries.length > 3 && entries.filter(({ value }) => isOneWord(value)).length > 0.9 * entries.length

const toWord = (item: Item): Word | undefined => {
  const extent = extentOf(item)
  const text = textOf(item)?.trim()
  return extent === undefined || text === undefined || text === '' ? undefined : { ...extent, text }
}

/** A cue gathered from words ends at a pause this long, or when it gets this long, in seconds. */
const LONGEST_PAUSE = 0.6
const LONGEST_CUE = 6

/** Cues from bare words: a cue ends at a pause, at a new speaker, or after six seconds. */
const gatherCues = (items: readonly Item[], scale: number): readonly Cue[] => {
  const cues: { start: number; end: number; text: string; speaker?: string }[] = []
  for (const item of items) {
    const last = cues.at(-1)
    if (isPunctuation(item)) {
      if (last !== undefined) last.text += textOf(item)?.trim() ?? ''
      continue
    }
    const word = toWord(item)
    if (word === undefined) continue
    const voice = speakerOf(item)
    const goesOn =
      last !== undefined &&
      (word.start - last.end) * scale <= LONGEST_PAUSE &&
      (word.end - last.start) * scale <= LONGEST_CUE &&
      last.speaker === voice?.speaker
    if (!goesOn) cues.push({ ...word, ...voice })
    else {
      last.text += ` ${word.text}`
      last.end = Math.max(last.end, word.end)
    }
  }
  return cues
}

const parseDocument = (text: string): { readonly root: unknown } | { readonly why: string } => {
  try {
    return { root: JSON.parse(text) as unknown }
  } catch (error) {
    const lines = text.split('\n').filter(line => line.trim() !== '')
    try {
      if (lines.length > 1) return { root: lines.map(line => JSON.parse(line) as unknown) }
    } catch {}
    return { why: error instanceof Error ? error.message : String(error) }
  }
}

/** Whether a text opens as JSON does; a time in brackets does not. */
export const isJson = (text: string): boolean => /^\s*(?:\{\s*["}]|\[\s*[{\]"[])/.test(text)

const largest = (lists: readonly List[]): List | undefined =>
  lists.reduce<List | undefined>(
    (best, list) => (best === undefined || list.spoken > best.spoken ? list : best),
    undefined,
  )

const rounded = (time: number, scale: number): number => (scale === 1 ? time : Math.round(time * scale * 1e6) / 1e6)

const countWords = (items: readonly { readonly text: string }[]): number =>
  items.reduce((sum, { text }) => sum + (text.match(/\S+/g)?.length ?? 0), 0)

/**
 * Reads what speech recognisers write: JSON (or a JSON document a line) that holds a list of segments with start, end and
 * text, each perhaps with words of their own; or a list of words alone, which are gathered to cues. The list is found by
 * what it holds, wherever it stands and however its fields spell "start" and "text".
 *
 * @returns cues in file order and their words, seconds; problem `not-json`, `project-as-transcript`, `no-segments`
 */
export const parseRecogniserJson = (text: string, file: string): Result<Reading> => {
  const parsed = parseDocument(text)
  const refuse = (code: string, message: string) => refusal({ code, message, place: { file } })
  if ('why' in parsed)
    return refuse('not-json', `this looks like JSON but is not whole (${parsed.why}). Save it again.`)
  if (isItem(parsed.root) && parsed.root.format === 'tellwright')
    return refuse('project-as-transcript', 'this is a project file, not a transcript. Open it as a project.')
  const lists = findLists(parsed.root)
  const segments = largest(lists.filter(list => !isWordList(list)))
  const chosen = segments ?? largest(lists)
  if (chosen === undefined)
    return refuse(
      'no-segments',
      'this JSON holds no list of texts with times; expected segments with start, end and text.',
    )
  const problems: Problem[] = []
  const items: Item[] = []
  for (const { path, value } of chosen.entries) {
    if (isSpoken(value) || (segments === undefined && isPunctuation(value))) items.push(value)
    else {
      const message = `this entry has no text or no time and is left out: ${quote(JSON.stringify(value) ?? String(value))}`
      problems.push({ code: 'unread-entry', message, place: { path } })
    }
  }
  const loose = lists.filter(isWordList).flatMap(list => list.entries.map(({ value }) => value))
  const inside = segments === undefined ? [] : items.flatMap(wordsIn)
  const heard = (inside.length > 0 ? inside : loose).filter(isSpoken).filter(item => !isPunctuation(item))
  const words = heard.map(toWord).filter(word => word !== undefined)
  const spans = segments === undefined ? words : items.map(toWord).filter(word => word !== undefined)
  const scale = guessScale(
    countWords(spans),
    spans.reduce((sum, { start, end }) => sum + Math.max(0, end - start), 0),
  )
  if (scale !== 1)
    problems.push({
      code: 'assumed-scale',
      message: `a unit of time here was read as ${scale} s; else people would speak far too slowly.`,
    })
  const inSeconds = <T extends Word>(item: T): T => ({
    ...item,
    start: rounded(item.start, scale),
    end: rounded(item.end, scale),
  })
  const spoken: readonly Cue[] =
    segments === undefined
      ? gatherCues(items, scale)
      : items.map(item => ({
          ...(extentOf(item) ?? { start: 0, end: 0 }),
          text: (textOf(item) ?? '').trim(),
          ...speakerOf(item),
        }))
  const cues = spoken.map(inSeconds)
  for (const cue of cues) for (const { code, message } of doubtTimes(cue, 0)) problems.push({ code, message })
  return success({ cues, problems, ...(words.length > 0 ? { words: words.map(inSeconds) } : {}) })
}
