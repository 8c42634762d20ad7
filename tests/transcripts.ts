import type { Cue, Form, Transcript, Word } from '@/lib/procedure/recording'
import { type ReadTranscript, readTranscript } from '@/lib/transcript/read'

/** A cue: `cue(0, 4, 'Take it off.')`. */
export const cue = (start: number, end: number, text: string, more: Partial<Cue> = {}): Cue => ({
  start,
  end,
  text,
  ...more,
})

/** A word with its own time. */
export const word = (start: number, end: number, text: string): Word => ({ start, end, text })

/** A transcript of these cues. */
export const transcriptOf = (cues: readonly Cue[], form: Form = 'webvtt', words?: readonly Word[]): Transcript => ({
  name: 'talk',
  form,
  cues,
  ...(words === undefined ? {} : { words }),
})

/** Reads a text as a file; fails the test where it is refused. */
export const readText = (text: string, name = 'talk.txt'): ReadTranscript => {
  const read = readTranscript(new TextEncoder().encode(text), name)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}

/** Codes of the problems of a refused or read text, in order. */
export const problemCodes = (content: string | Uint8Array, name = 'talk.txt'): readonly string[] => {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content
  const read = readTranscript(bytes, name)
  return (read.ok ? read.value.problems : read.problems).map(problem => problem.code)
}
