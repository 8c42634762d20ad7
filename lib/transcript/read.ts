import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import type { Form, Transcript } from '@/lib/procedure/recording'
import { decodeText } from './decode'
import { type Reading, toLines } from './reading'
import { isJson, parseRecogniserJson } from './recogniser-json'
import { toNamedCues } from './speakers'
import { countArrows, parseSubRip } from './subrip'
import { isTable, parseTable } from './table'
import { findHeadStyle, parseTimedText } from './timed-text'
import { parseUntimed } from './untimed'
import { isWebVtt, parseWebVtt } from './webvtt'

/** A transcript and everything in its file that could not be read as it stands. */
export type ReadTranscript = { readonly transcript: Transcript; readonly problems: readonly Problem[] }

const MOST_PROBLEMS = 1000
const SAMPLE_LINES = 2000

/** The form a text is written in, by what it holds. */
const recogniseForm = (text: string): Form => {
  if (isWebVtt(text)) return 'webvtt'
  if (isJson(text)) return 'recogniser-json'
  const lines = toLines(text.slice(0, 400_000)).slice(0, SAMPLE_LINES)
  if (countArrows(lines) > 0) return 'subrip'
  if (isTable(text)) return 'table'
  const filled = lines.filter(line => line.trim() !== '')
  const { read, count } = findHeadStyle(filled)
  const isHeaded = filled[0] !== undefined && read(filled[0]) !== undefined
  return count >= 2 || (count === 1 && isHeaded) ? 'timed-text' : 'untimed'
}

const PARSERS = {
  webvtt: parseWebVtt,
  subrip: parseSubRip,
  table: parseTable,
  'timed-text': parseTimedText,
  untimed: parseUntimed,
} as const

const parseAs = (form: Form, text: string, name: string): Result<Reading> => {
  if (form === 'recogniser-json') return parseRecogniserJson(text, name)
  const reading = PARSERS[form](text)
  return success(form === 'webvtt' ? reading : { ...reading, cues: toNamedCues(reading.cues) })
}

const isMarkup = (text: string): boolean => /^\s*(?:<\?xml|<!doctype|<html|<tt[\s>])/i.test(text)

const within = (problems: readonly Problem[], file: string): readonly Problem[] => {
  const placed = problems.slice(0, MOST_PROBLEMS).map(problem => ({ ...problem, place: { file, ...problem.place } }))
  const rest = problems.length - placed.length
  if (rest === 0) return placed
  const message = `${rest} more lines could not be read. Is this really a transcript?`
  return [...placed, { code: 'more-problems', message, place: { file } }]
}

/** What a file without a line to read looks like. */
const FORM_WORDS: Partial<Record<Form, string>> = {
  subrip: 'SubRip captions',
  'timed-text': 'text with times',
  table: 'a table',
  'recogniser-json': "a speech recogniser's JSON",
}

const noWords = (form: Form, cues: number): string => {
  if (cues > 0) return 'its cues hold no words. Export the transcript again, or choose another.'
  if (form !== 'webvtt')
    return `this looks like ${FORM_WORDS[form] ?? 'a transcript'}, but no line of it could be read. Export it again, or choose another.`
  return 'this WebVTT file holds no cue that can be read; expected lines such as "00:01.000 --> 00:04.000" with words under them. Export it again, or choose another.'
}

/**
 * Reads a transcript of any form, recognised by its content.
 *
 * @param bytes the file
 * @param name its name, for messages only
 * @returns the transcript and a problem (line number and text) for each thing in it that could not be read; refused only
 *   where nothing can be read: `empty-file`, `binary-file`, `too-large`, `mark-up`, `not-json`, `no-segments`,
 *   `project-as-transcript`, `no-cues`. Never throws.
 */
export const readTranscript = (bytes: Uint8Array, name: string): Result<ReadTranscript> => {
  const decoded = decodeText(bytes, name)
  if (!decoded.ok) return decoded
  const { text } = decoded.value
  const place = { file: name }
  if (text.trim() === '')
    return refusal({ code: 'empty-file', message: 'this file holds nothing but white space.', place })
  if (isMarkup(text)) {
    const message = 'this is XML or HTML, which is not read; save it as WebVTT, SubRip or plain text and load that.'
    return refusal({ code: 'mark-up', message, place })
  }
  const form = recogniseForm(text)
  const reading = parseAs(form, text, name)
  if (!reading.ok) return reading
  const { cues, words } = reading.value
  const problems = within([...decoded.value.problems, ...reading.value.problems], name)
  if (!cues.some(({ text }) => text.trim() !== ''))
    return { ok: false, problems: [{ code: 'no-cues', message: noWords(form, cues.length), place }, ...problems] }
  const transcript: Transcript = { name, form, cues, ...(words === undefined ? {} : { words }) }
  return success({ transcript, problems })
}
