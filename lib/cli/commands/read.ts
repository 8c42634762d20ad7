import { countOf } from '@/lib/procedure/count'
import { formatProblem } from '@/lib/procedure/problem'
import type { Sentence } from '@/lib/procedure/recording'
import { formatTime } from '@/lib/procedure/time'
import { type ReadTranscript, readTranscript } from '@/lib/transcript/read'
import { toSentences } from '@/lib/transcript/sentence'
import { parseArguments } from '../arguments'
import { type Command, EXIT } from '../command'

const usage = `usage: tellwright read TRANSCRIPT [--json]

Reads a transcript (WebVTT, SubRip, lines headed by times, recogniser JSON, a table, or untimed lines; told apart by
content) and shows its sentences with their times. What could not be read goes to standard error, with line numbers.
A file named - is standard input.

  --json   form, cues, sentences and problems as JSON on standard output

Exit: 0 read (perhaps with problems), 2 nothing could be read or misuse.`

const row = (sentence: Sentence, isTimed: boolean): string => {
  const time = isTimed ? `${formatTime(sentence.start).padStart(7)}  ` : ''
  const speaker = sentence.speaker === undefined ? '' : `${sentence.speaker}: `
  return `${time}${speaker}${sentence.text}`
}

const listing = ({ transcript }: ReadTranscript): string => {
  const sentences = toSentences(transcript)
  const head = `${transcript.name}: ${transcript.form}, ${countOf(transcript.cues.length, 'cue')}, ${countOf(sentences.length, 'sentence')}`
  const rows = sentences.map(sentence => row(sentence, transcript.form !== 'untimed'))
  return `${[head, '', ...rows].join('\n')}\n`
}

/** `tellwright read`: shows what was understood of a transcript. */
export const command: Command = {
  verb: 'read',
  about: 'show the sentences of a transcript and what could not be read',
  usage,
  run: async (args, io) => {
    const parsed = parseArguments(args, { json: { type: 'boolean' } })
    const [path, ...more] = parsed.ok ? parsed.value.positionals : []
    if (!parsed.ok || path === undefined || more.length > 0) {
      io.err(
        `tellwright read: ${parsed.ok ? 'expected one transcript' : parsed.problems.map(formatProblem).join('\n')}`,
      )
      io.err(usage)
      return EXIT.misuse
    }
    const name = path === '-' ? 'standard input' : (path.split(/[\\/]/).at(-1) ?? path)
    const read = readTranscript(await io.read(path), name)
    if (!read.ok) {
      for (const problem of read.problems) io.err(`tellwright read: ${formatProblem(problem)}`)
      return EXIT.misuse
    }
    const { transcript, problems } = read.value
    if (parsed.value.options.json === true) {
      const { form, cues } = transcript
      io.out(`${JSON.stringify({ form, cues, sentences: toSentences(transcript), problems }, null, 1)}\n`)
    } else io.out(listing(read.value))
    for (const problem of problems) io.err(formatProblem(problem))
    return EXIT.done
  },
}
