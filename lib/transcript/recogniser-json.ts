import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import type { Cue, Word } from '@/lib/procedure/recording'
import { parseClock } from './clock'
import { quote, type Reading } from './reading'

type Item = Readonly<Record<string, unknown>>

const isItem = (value: unknown): value is Item => typeof value === 'object' && value !== null && !Array.isArray(value)

const TEXTS = ['punctuated_word', 'text', 'transcript', 'word', 'content', 'value', 'sentence', 'utterance']
const STARTS = ['start', 'begin', 'from', 'starttime', 'startoffset', 'startsec', 'startseconds', 'ts', 'timestart']
const ENDS = ['end', 'stop', 'to', 'endtime', 'endoffset', 'endsec', 'endseconds', 'endts', 'timeend']
const LENGTHS = ['duration', 'dur', 'length']
const SPEAKERS = ['speaker', 'speakerlabel', 'speakerid', 'speakername', 'who', 'voice']

/** Field of an item whatever its spelling: `start_time`, `startTime`, `start`; with whether it says milliseconds. */
const fieldOf = (item: Item, names: readonly string[]): { value: unknown; isMs: boolean } | undefined => {
  for (const [key, value] of Object.entries(item)) {
    const flat = key.toLowerCase().replace(/[_-]/g, '')
    if (names.includes(flat) || names.includes(key)) return { value, isMs: false }
    const bare = flat.replace(/(?:inms|ms|milliseconds|millis)$/, '')
    if (bare !== flat && names.includes(bare)) return { value, isMs: true }
  }
  return undefined
}

const toMoment = (field: { value: unknown; isMs: boolean } | undefined): number | undefined => {
  if (field === undefined) return undefined
  const { value, isMs } = field
  if (typeof value === 'number') return Number.isFinite(value) && value >= 0 ? (isMs ? value / 1000 : value) : undefined
  if (typeof value !== 'string') return undefined
  if (/^\d+(?:\.\d+)?s?$/.test(value)) return Number(value.replace('s', '')) / (isMs ? 1000 : 1)
  return parseClock(value)
}

const textOf = (item: Item): string | undefined => {
  for (const name of TEXTS) if (typeof item[name] === 'string') return item[name]
  const first = Array.isArray(item.alternatives) ? item.alternatives.find(isItem) : undefined
  return first === undefined ? undefined : textOf(first)
}

const spanOf = (item: Item): { start: number; end: number } | undefined => {
  const pair = item.timestamp
  const start = Array.isArray(pair)
    ? toMoment({ value: pair[0], isMs: false })
    : toMoment(fieldOf(item, STARTS) ?? fieldOf(item, ['offset', 'timestamp', 'time']))
  if (start === undefined) return undefined
  const length = toMoment(fieldOf(item, LENGTHS))
  const end = Array.isArray(pair) ? toMoment({ value: pair[1], isMs: false }) : toMoment(fieldOf(item, ENDS))
  return { start, end: end ?? (length === undefined ? start : start + length) }
}

const speakerOf = (item: Item): { speaker: string } | undefined => {
  const value = fieldOf(item, SPEAKERS)?.value
  if (typeof value === 'string' && value.trim() !== '') return { speaker: value.trim() }
  return typeof value === 'number' ? { speaker: `Speaker ${value}` } : undefined
}

/** Whether something has words and a time: a segment or a word. */
const isSpoken = (value: unknown): value is Item =>
  isItem(value) && textOf(value) !== undefined && spanOf(value) !== undefined

type List = { readonly path: string; readonly items: readonly unknown[]; readonly share: number }

/** Every list of timed texts in a document, outermost first; what lies inside such a list is not looked at. */
const findLists = (root: unknown): readonly List[] => {
  const found: List[] = []
  const queue: { path: string; value: unknown }[] = [{ path: '', value: root }]
  for (let i = 0; i < queue.length && queue.length < 100_000; i++) {
    const { path, value } = queue[i] ?? { path: '', value: undefined }
    if (Array.isArray(value)) {
      const spoken = value.filter(isSpoken).length
      if (spoken > 0) found.push({ path, items: value, share: spoken })
      else value.forEach((item, n) => void queue.push({ path: `${path}[${n}]`, value: item }))
    } else if (isItem(value)) {
      for (const [key, item] of Object.entries(value))
        if (typeof item === 'object') queue.push({ path: path === '' ? key : `${path}.${key}`, value: item })
    }
  }
  return found
}

const isOneWord = (item: unknown): boolean => isSpoken(item) && !/\S\s+\S/.test(textOf(item) ?? '')
const isWordList = (list: List): boolean => list.items.filter(isOneWord).length > 0.9 * list.items.length

const toWord = (item: Item): Word | undefined => {
  const span = spanOf(item)
  const text = textOf(item)?.trim()
  return span === undefined || text === undefined || text === '' ? undefined : { ...span, text }
}

const LONGEST_PAUSE = 0.6
const LONGEST_CUE = 6

/** Cues from bare words: a cue ends at a pause, at a new speaker, or after six seconds. */
const gatherCues = (items: readonly Item[]): readonly Cue[] => {
  const cues: { start: number; end: number; text: string; speaker?: string }[] = []
  for (const item of items) {
    const word = toWord(item)
    if (word === undefined) continue
    const voice = speakerOf(item)
    const last = cues.at(-1)
    const isMark = /^[.,!?;:…]+$/.test(word.text)
    const goesOn =
      last !== undefined &&
      (isMark ||
        (word.start - last.end <= LONGEST_PAUSE &&
          word.end - last.start <= LONGEST_CUE &&
          last.speaker === voice?.speaker))
    if (!goesOn) cues.push({ ...word, ...voice })
    else {
      last.text += isMark ? word.text : ` ${word.text}`
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

/**
 * Reads what speech recognisers write: JSON (or a JSON document a line) that holds a list of segments with start, end and
 * text, each perhaps with words of their own; or a list of words alone, which are gathered to cues. The list is found by
 * what it holds, wherever it stands and however its fields spell "start" and "text".
 *
 * @returns cues in file order and their words; problem `not-json`, `project-as-transcript`, `no-segments`
 */
export const parseRecogniserJson = (text: string, file: string): Result<Reading> => {
  const parsed = parseDocument(text)
  if ('why' in parsed) {
    const message = `this looks like JSON but is not whole (${parsed.why}). Save it again and load that.`
    return refusal({ code: 'not-json', message, place: { file } })
  }
  const { root } = parsed
  if (isItem(root) && root.format === 'tellwright') {
    const message = 'this is a project file, not a transcript. Open it as a project.'
    return refusal({ code: 'project-as-transcript', message, place: { file } })
  }
  const lists = findLists(root)
  const segments = lists.filter(list => !isWordList(list))
  const chosen = (segments.length > 0 ? segments : lists).reduce<List | undefined>(
    (best, list) => (best === undefined || list.share > best.share ? list : best),
    undefined,
  )
  if (chosen === undefined) {
    const message = 'this JSON holds no list of texts with times; expected segments with start, end and text.'
    return refusal({ code: 'no-segments', message, place: { file } })
  }
  const problems: Problem[] = []
  const spoken = chosen.items.filter((item, i): item is Item => {
    if (isSpoken(item)) return true
    const message = `this entry has no text or no time and is left out: ${quote(JSON.stringify(item) ?? String(item))}`
    problems.push({ code: 'unread-entry', message, place: { path: `${chosen.path}[${i}]` } })
    return false
  })
  if (segments.length === 0) {
    const words = spoken.map(toWord).filter(word => word !== undefined)
    return success({ cues: gatherCues(spoken), words, problems })
  }
  const cues = spoken.map((item): Cue => {
    const span = spanOf(item) ?? { start: 0, end: 0 }
    return { ...span, text: (textOf(item) ?? '').trim(), ...speakerOf(item) }
  })
  const inside = spoken.flatMap(item =>
    findLists(item)
      .filter(isWordList)
      .flatMap(list => list.items),
  )
  const loose = inside.length > 0 ? inside : lists.filter(isWordList).flatMap(list => list.items)
  const words = loose
    .filter(isSpoken)
    .map(toWord)
    .filter(word => word !== undefined)
  return success({ cues, problems, ...(words.length > 0 ? { words } : {}) })
}
