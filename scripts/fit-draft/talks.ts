import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Cue, Transcript } from '@/lib/procedure/recording'
import { toSentences } from '@/lib/transcript/sentence'
import type { Case, Gold, GoldMark } from './cases'
import { parseTalk } from './talk-file'

const KIND_OF: Readonly<Record<string, string>> = {
  s: 'step',
  c: 'caution',
  k: 'check',
  r: 'reason',
  y: 'symptom',
  Q: 'spec',
}
/** Words a second, and pauses between sentences, as in a calm explanation. */
const RATE = 2.7

type Line = {
  readonly codes: string
  readonly tools: readonly string[]
  readonly materials: readonly string[]
  readonly text: string
}

const parseLine = (line: string): Line => {
  const at = line.indexOf(': ')
  const [codes = '', ...lists] = line.slice(0, at).split(' ')
  const entries = lists
    .join(' ')
    .split(/;|\s(?=m=)/)
    .map(entry => entry.trim().split('='))
  const of = (key: string) =>
    entries
      .filter(([name, value]) => name === key && value !== undefined && value !== '-')
      .map(([, value]) => value ?? '')
  return { codes, tools: of('t'), materials: of('m'), text: line.slice(at + 2) }
}

const bare = (text: string): string =>
  text
    .toLowerCase()
    .replace(/(?<!\d)[.,;:?!]|[.,;:?!](?!\d)/g, '')
    .replace(/-/g, ' ')

/** Words into cues of at most `seconds`, as captions have them. */
const toCues = (sentences: Gold['sentences'], seconds: number, shape: (text: string) => string): readonly Cue[] => {
  const cues: Cue[] = []
  let open: { start: number; end: number; words: string[] } | undefined
  const close = () => {
    if (open !== undefined) cues.push({ start: open.start, end: open.end, text: open.words.join(' ') })
  }
  for (const sentence of sentences) {
    const words = shape(sentence.text)
      .split(' ')
      .filter(word => word !== '')
    const each = (sentence.end - sentence.start) / words.length
    words.forEach((word, i) => {
      const [start, end] = [sentence.start + i * each, sentence.start + (i + 1) * each]
      if (open !== undefined && end - open.start > seconds) {
        close()
        open = undefined
      }
      if (open === undefined) open = { start, end, words: [word] }
      else {
        open.end = end
        open.words.push(word)
      }
    })
  }
  close()
  return cues
}

/** Times as calm speech has them: words at an even pace, pauses of a quarter to nine tenths of a second between sentences. */
const timesOf =
  (seed: number) =>
  (texts: readonly string[]): readonly { start: number; end: number }[] => {
    let at = 0.4
    return texts.map((text, i) => {
      const start = at
      const end = start + text.split(' ').length / RATE
      const noise = Math.sin((i + 1) * 12.9898 + seed) * 43758.5453
      at = end + 0.25 + 0.65 * (noise - Math.floor(noise))
      return { start, end }
    })
  }

/** The short form: codes before the colon. */
const parseShort = (text: string, seed: number): Gold => {
  const lines = text
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(parseLine)
  const times = timesOf(seed)(lines.map(line => line.text))
  const sentences = lines.map((line, i) => ({ text: line.text, ...(times[i] ?? { start: 0, end: 0 }) }))
  const marks: GoldMark[] = lines.flatMap(({ codes }, i) =>
    [...codes].flatMap(code => {
      const kind = KIND_OF[code]
      const { start, end } = times[i] ?? { start: 0, end: 0 }
      return kind === undefined ? [] : [{ kind, start, end, text: '' }]
    }),
  )
  return {
    sentences,
    marks,
    specs: [],
    tools: lines.flatMap(line => line.tools),
    materials: lines.flatMap(line => line.materials),
  }
}

/** Talks written to be dense in things and limits: each counts half, so that the weights do not expect so many. */
const DENSE = /^[g-m]-/
const HALF = 0.5

const toCases = (file: string, text: string): readonly Case[] => {
  const name = file.replace(/\.\w+$/, '')
  const isShort = file.endsWith('.txt')
  const gold = isShort ? parseShort(text, name.length) : parseTalk(text, timesOf(name.length))
  const make = (form: string, cues: readonly Cue[]): Case => {
    const transcript: Transcript = { name, form: form === 'vtt' ? 'webvtt' : 'subrip', cues }
    return {
      name,
      form,
      gold,
      transcript,
      sentences: toSentences(transcript),
      isOwn: isShort,
      weight: DENSE.test(name) ? HALF : 1,
    }
  }
  return [
    make(
      'vtt',
      toCues(gold.sentences, 5, said => said),
    ),
    make('raw.srt', toCues(gold.sentences, 3, bare)),
  ]
}

/**
 * Walkthroughs we wrote to fit by. `*.talk` has labels in double braces (see its README.md). `*.txt` is shorter: one sentence a line, before the colon what a careful writer takes from it (s step, c caution,
 * k check, r reason, y symptom, Q a spec, - nothing), `t=` tools and `m=` materials, split by `;`.
 */
export const readTalks = (folder: string): readonly Case[] =>
  readdirSync(folder)
    .filter(file => /\.(?:txt|talk)$/.test(file))
    .sort()
    .flatMap(file => toCases(file, readFileSync(join(folder, file), 'utf8')))
