import type { Cue, Transcript } from '@/lib/procedure/recording'
import type { Gold } from './cases'

/** As captions without punctuation have it. */
const bare = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9' ./%-]/g, ' ')
    .replace(/\.(?=\s|$)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()

type Part = { readonly start: number; readonly end: number; readonly text: string }

/** A sentence at its commas, its time shared by letters. */
const breathsOf = ({ start, end, text }: Part): readonly Part[] => {
  const perLetter = (end - start) / Math.max(1, text.length)
  let at = 0
  return text.split(/(?<=,) /).map(part => {
    const from = at
    at += part.length + 1
    return { start: start + from * perLetter, end: Math.min(end, start + at * perLetter), text: part }
  })
}

/** A width at which lines of text are often wrapped. */
const WIDTH = 42

const wrapped = (text: string): readonly string[] => text.match(new RegExp(`\\S.{0,${WIDTH - 1}}(?=\\s|$)`, 'g')) ?? []

const untimed = (lines: readonly string[]): Transcript => ({
  name: 'talk',
  form: 'untimed',
  cues: lines.map((text): Cue => ({ start: 0, end: 0, text })),
})

const timed = (parts: readonly Part[]): Transcript => ({
  name: 'talk',
  form: 'subrip',
  cues: parts.map(({ start, end, text }): Cue => ({ start, end, text: bare(text) })).filter(({ text }) => text !== ''),
})

/** The same talk without punctuation in other forms than rolling captions: told apart by lines or cues, or wrapped. */
export const otherForms = ({ sentences }: Gold): Readonly<Record<string, Transcript>> => {
  const breaths = sentences.flatMap(breathsOf)
  const linesOf = (parts: readonly Part[]) => parts.map(({ text }) => bare(text)).filter(text => text !== '')
  return {
    'a cue a sentence': timed(sentences),
    'a cue a breath': timed(breaths),
    'a line a sentence': untimed(linesOf(sentences)),
    'a line a breath': untimed(linesOf(breaths)),
    wrapped: untimed(wrapped(linesOf(sentences).join(' '))),
  }
}
