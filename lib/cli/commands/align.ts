import { createRequire } from 'node:module'
import { dirname, join, sep } from 'node:path'
import { type Alignment, align } from '@/lib/footage/align'
import { detectorOn } from '@/lib/footage/detector'
import { loadFvad, loadRecogniser } from '@/lib/footage/engines-node'
import { hintsOf } from '@/lib/footage/hints'
import { speechFinder } from '@/lib/footage/speech'
import { formatProblem } from '@/lib/procedure/problem'
import type { Sentence } from '@/lib/procedure/recording'
import { formatTime, type Span } from '@/lib/procedure/time'
import { readTranscript } from '@/lib/transcript/read'
import { toSentences } from '@/lib/transcript/sentence'
import { parseArguments } from '../arguments'
import { type Command, EXIT, type Io } from '../command'
import { readVoice, type VoiceSound } from '../sound'

const usage = `usage: tellwright align TEXT SOUND [-o OUT.vtt] [--json]

Times a text, sentence by sentence, against the sound in which it is spoken (English). TEXT is a transcript of any form,
with or without times; coarse times (one a paragraph) tell where to look. SOUND is footage or sound: any file ffmpeg reads where ffmpeg is on the PATH, else a WAV file.
Sentences that are not heard, and speech that is not in the text, are told on standard error and noted in the file.

  -o, --out FILE   write WebVTT there instead of to standard output
  --json           write lines, words and what was left out as JSON instead

Exit: 0 done, 2 nothing could be timed or misuse.`

/** Samples the speech finder is given at once. */
const PORTION = 1 << 20

const speechIn = async ({ samples }: VoiceSound): Promise<readonly Span[]> => {
  const finder = speechFinder(detectorOn(await loadFvad(), 1))
  for (let at = 0; at < samples.length; at += PORTION)
    finder.push(Float32Array.from(samples.subarray(at, at + PORTION), sample => sample / 32768))
  return finder.end()
}

const stamp = (seconds: number): string => {
  const ms = Math.max(0, Math.round(seconds * 1000))
  const two = (n: number) => String(n).padStart(2, '0')
  const [h, m, s] = [Math.floor(ms / 3_600_000), Math.floor(ms / 60_000) % 60, Math.floor(ms / 1000) % 60]
  return `${two(h)}:${two(m)}:${two(s)}.${String(ms % 1000).padStart(3, '0')}`
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')

/** A NOTE can't hold an arrow. */
const note = (text: string): string => `NOTE ${text.replaceAll('-->', '->')}`

const toWebVtt = (sentences: readonly Sentence[], { lines, unwritten }: Alignment): string => {
  const blocks = lines.map(({ line, start, end, isHeard }) => {
    const { text = '', speaker } = sentences[line] ?? {}
    const voice = speaker === undefined ? '' : `<v ${escaped(speaker)}>`
    const body = isHeard
      ? `${stamp(start)} --> ${stamp(Math.max(end, start + 0.05))}\n${voice}${escaped(text)}`
      : note(`not heard: ${text}`)
    return { start, body }
  })
  const notes = unwritten.map(({ start, end }) => ({
    start,
    body: note(`not in the text: ${stamp(start)} to ${stamp(end)}`),
  }))
  const all = [...blocks, ...notes].sort((a, b) => a.start - b.start)
  return `${['WEBVTT', ...all.map(({ body }) => body)].join('\n\n')}\n`
}

const report = (sentences: readonly Sentence[], { lines, unwritten }: Alignment, io: Io): void => {
  for (const { line, start, isHeard } of lines)
    if (!isHeard) io.err(`not heard, after ${formatTime(start)}: "${sentences[line]?.text ?? ''}"`)
  for (const { start, end } of unwritten)
    io.err(`said from ${formatTime(start)} to ${formatTime(end)}, but not in the text`)
}

const modelFolder = (): string => join(dirname(createRequire(import.meta.url).resolve('soundswallower')), 'model') + sep

/** `tellwright align`: times a text against its sound. */
export const command: Command = {
  verb: 'align',
  about: 'time a text against the sound in which it is spoken',
  usage,
  run: async (args, io) => {
    const parsed = parseArguments(args, { out: { type: 'string', short: 'o' }, json: { type: 'boolean' } })
    const [path, sound, ...more] = parsed.ok ? parsed.value.positionals : []
    if (!parsed.ok || path === undefined || sound === undefined || more.length > 0) {
      const why = parsed.ok ? 'expected a text and a sound' : parsed.problems.map(formatProblem).join('\n')
      io.err(`tellwright align: ${why}`)
      io.err(usage)
      return EXIT.misuse
    }
    const read = readTranscript(await io.read(path), path)
    if (!read.ok) {
      for (const problem of read.problems) io.err(`tellwright align: ${formatProblem(problem)}`)
      return EXIT.misuse
    }
    const sentences = toSentences(read.value.transcript)
    const voice = await readVoice(sound)
    const speech = await speechIn(voice)
    if (speech.length === 0) {
      io.err(`tellwright align: ${sound}: no speech was heard; is it the sound of this text?`)
      return EXIT.misuse
    }
    let told = 0
    const onProgress = (share: number) => {
      if (share < told + 0.1) return
      told = Math.floor(share * 10) / 10
      io.err(`${Math.round(told * 100)} % timed`)
    }
    const texts = sentences.map(({ text }) => text)
    const alignment = await align(texts, speech, voice.hear, await loadRecogniser(modelFolder()), {
      hints: hintsOf(read.value.transcript, sentences),
      onProgress,
    })
    report(sentences, alignment, io)
    if (alignment.words.length === 0) {
      io.err(`tellwright align: none of ${path} is heard in ${sound}; is it the sound of this text?`)
      return EXIT.misuse
    }
    const { json, out } = parsed.value.options
    const lines = alignment.lines.map(line => ({ ...line, text: texts[line.line] }))
    const text =
      json === true ? `${JSON.stringify({ ...alignment, lines }, null, 1)}\n` : toWebVtt(sentences, alignment)
    if (typeof out === 'string') await io.write(out, text)
    else io.out(text)
    return EXIT.done
  },
}
