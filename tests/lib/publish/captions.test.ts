import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Project } from '@/lib/procedure/project'
import type { Cue } from '@/lib/procedure/recording'
import { toSubrip, toVtt } from '@/lib/publish/caption-files'
import { CAPTION_LIMITS, captionNotices, toCaptions } from '@/lib/publish/captions'
import { SINGLES } from '@/lib/publish/singles'
import { toSpoken, withFigures } from '@/lib/publish/spoken'
import type { Quantity } from '@/lib/quantity/quantity'
import { readTranscript } from '@/lib/transcript/read'
import { toSentences } from '@/lib/transcript/sentence'
import { projectOf, spec } from '../../builders'
import { plainCue, referenceCues } from './reference'

const transcript = (...cues: Cue[]) => ({ name: 'a.vtt', form: 'webvtt' as const, cues })
const captionsOf = (...cues: Cue[]) => toCaptions(toSpoken(transcript(...cues)))

const word = fc.oneof(
  { weight: 8, arbitrary: fc.stringMatching(/^[a-z]{1,9}[.,?]?$/) },
  { weight: 1, arbitrary: fc.stringMatching(/^[a-z]{30,130}$/) },
  { weight: 1, arbitrary: fc.constantFrom('<b>', '-->', '&amp;', 'A&B', '10', '2.5') },
)
const anyCues = fc
  .array(
    fc.record({
      gap: fc.integer({ min: 0, max: 4000 }),
      length: fc.integer({ min: 40, max: 20_000 }),
      words: fc.array(word, { minLength: 1, maxLength: 60 }),
      speaker: fc.constantFrom('', 'Ana', 'Bo & Co'),
    }),
    { maxLength: 8 },
  )
  .map(parts => {
    let at = 0
    return parts.map(({ gap, length, words, speaker }): Cue => {
      const start = at + gap
      at = start + length
      return { start: start / 1000, end: at / 1000, text: words.join(' '), ...(speaker === '' ? {} : { speaker }) }
    })
  })

describe('captions', () => {
  test('[P9] stay inside columns and lines, never overlap, and say every word once in order', () => {
    fc.assert(
      fc.property(anyCues, cues => {
        const captions = captionsOf(...cues)
        for (const { lines } of captions) {
          expect(lines.length).toBeLessThanOrEqual(CAPTION_LIMITS.lines)
          for (const line of lines) expect([...line].length).toBeLessThanOrEqual(CAPTION_LIMITS.columns)
        }
        for (const [i, caption] of captions.entries()) {
          expect(caption.end).toBeGreaterThan(caption.start)
          expect(caption.end).toBeLessThanOrEqual(captions[i + 1]?.start ?? Number.POSITIVE_INFINITY)
        }
        const letters = (text: string) => text.replace(/\s/g, '')
        const kept = letters(captions.flatMap(caption => caption.lines).join(''))
        expect(kept).toBe(letters(cues.map(cue => cue.text).join('')))
      }),
      { numRuns: 300 },
    )
  })

  test('[P9] read back to the same cues by another parser and by our own reader', () => {
    fc.assert(
      fc.property(
        anyCues.filter(cues => cues.length > 0),
        cues => {
          const captions = captionsOf(...cues)
          const ms = (seconds: number) => Math.round(seconds * 1000) / 1000
          const wanted = captions.map(c => ({ start: ms(c.start), end: ms(c.end), text: c.lines.join('\n') }))
          const vtt = toVtt(captions)
          expect(referenceCues(vtt).map(cue => ({ ...cue, text: plainCue(cue.text) }))).toEqual(wanted)
          const own = readTranscript(new TextEncoder().encode(vtt), 'a.vtt')
          const flat = (text: string) => text.replace(/\s+/g, ' ')
          expect(
            own.ok &&
              own.value.transcript.cues.map(c => ({
                start: ms(c.start),
                end: ms(c.end),
                text: flat(c.text),
                speaker: c.speaker ?? '',
              })),
          ).toEqual(captions.map((c, i) => ({ ...wanted[i], text: flat(wanted[i]?.text ?? ''), speaker: c.speaker })))
        },
      ),
      { numRuns: 100 },
    )
  })

  test('[P9] SubRip has the same times and, but for its brackets, the same lines', () => {
    const captions = captionsOf({ start: 1, end: 4, text: 'Take the <red> lead, then the black one, and wait.' })
    const read = readTranscript(new TextEncoder().encode(toSubrip(captions)), 'a.srt')
    expect(read.ok && read.value.transcript).toMatchObject({
      form: 'subrip',
      cues: [{ start: 1, end: 4, text: expect.stringContaining('‹red›') }],
    })
  })

  test('[P9] break at phrases: before “because”, not inside a value', () => {
    const [caption] = captionsOf({
      start: 0,
      end: 6,
      text: 'Pull the plug out of the wall because the switch can stick.',
    })
    expect(caption?.lines).toEqual(['Pull the plug out of the wall', 'because the switch can stick.'])
  })

  test('[P9] start anew where somebody else speaks, and name the speaker as a voice', () => {
    const captions = captionsOf(
      { start: 0, end: 2, text: 'Ready?', speaker: 'Ana' },
      { start: 2, end: 4, text: 'Ready.', speaker: 'Bo' },
    )
    expect(toVtt(captions)).toBe(
      'WEBVTT\n\n00:00:00.000 --> 00:00:02.000\n<v Ana>Ready?</v>\n\n00:00:02.000 --> 00:00:04.000\n<v Bo>Ready.</v>\n',
    )
  })

  test('[P9] stand longer where nothing follows, and say where they are too fast', () => {
    const [short] = captionsOf({ start: 0, end: 0.3, text: 'Stop.' })
    expect(short).toMatchObject({ start: 0, end: 1 })
    const fast = captionsOf(
      { start: 0, end: 1, text: 'This is far too much to be read in one second.' },
      { start: 1, end: 3, text: 'Right.', speaker: 'Bo' },
    )
    expect(captionNotices(fast)[0]).toMatch(/^caption at 0:00: \d+ characters a second, more than 17/)
  })

  test('[P9] say at what time a caption stands too long, and nothing where tenths of a second do not show it', () => {
    const standing = (start: number, end: number) => ({ start, end, lines: ['Wait.'], speaker: '' })
    const [late, near] = [standing(154.4, 161.6), standing(30, 37.04)]
    expect(captionNotices([late])).toEqual([
      'caption at 2:34: stands 7.2 s, more than 7 s; see whether the times of the talk are right',
    ])
    expect(captionNotices([near])).toEqual([])
  })

  test('[P9] take the words as corrected, and sentences where they are given', async () => {
    const corrected = { start: 0, end: 3, text: 'Lift the belled.', corrected: 'Lift the belt.' }
    expect(captionsOf(corrected)[0]?.lines).toEqual(['Lift the belt.'])
    const project: Project = { ...projectOf(), recording: { footage: null, transcript: transcript(corrected) } }
    const captions = SINGLES.find(({ name }) => name === 'captions')
    const files = await captions?.files(project, { sentences: toSentences(transcript(corrected)) })
    expect(files?.map(file => file.content)[0]).toContain('Lift the belt.')
    expect(await captions?.files(projectOf(), {})).toEqual([])
  })

  test('[P10] spoken values of spec marks stand in figures, others as they were said', () => {
    const cue = { start: 0, end: 8, text: 'You want ten to twelve newton metres on all four of them.' }
    const mark = spec(0, 8, 'cover bolts', { quantity: { low: 10, high: 12, unit: 'N.m' } })
    const text = withFigures(toSpoken(transcript(cue)), [mark])
      .map(each => each.text)
      .join(' ')
    expect(text).toBe(
      'You want 10 to 12 N·m on all four of them.'.replace('10 to 12 N·m', '10\u00A0to\u00A012\u00A0N·m'),
    )
    const shown = (said: string, quantity: Quantity) =>
      withFigures(toSpoken(transcript({ start: 0, end: 8, text: said })), [spec(0, 8, 'gap', { quantity })])
        .map(each => each.text)
        .join(' ')
        .replaceAll('\u00A0', ' ')
    // The words of a bound stay as they were spoken.
    expect(shown('Set it to within two millimetres of the wheel.', { high: 2, unit: 'mm' })).toBe(
      'Set it to within 2 mm of the wheel.',
    )
    expect(shown('Give it at least two minutes.', { low: 2, unit: 'min' })).toBe('Give it at least 2 min.')
    const other = spec(0, 8, 'cover bolts', { quantity: { low: 1, high: 2, unit: 'N.m' } })
    expect(withFigures(toSpoken(transcript(cue)), [other])).toEqual(toSpoken(transcript(cue)))
  })
})
