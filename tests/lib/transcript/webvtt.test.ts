import { existsSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { WebVTT } from 'vtt.js'
import { parseCueText } from '@/lib/transcript/cue-text'
import { readTranscript } from '@/lib/transcript/read'
import { parseWebVtt } from '@/lib/transcript/webvtt'
import { cue, readText } from '../../transcripts'

const suite = `${process.env.TELLWRIGHT_SUITES ?? '../shared/suites'}/webvtt`

type Expected = { cues: { start: number; end: number; plain: string }[] }

/** Codes of why a file was refused; none where it was read. */
const problemsOf = (read: ReturnType<typeof readTranscript>) => (read.ok ? [] : read.problems.map(({ code }) => code))

/** @source web-platform-tests, WebVTT file parsing; expected.json holds the cues of Chromium's own parser */
describe('the W3C file-parsing suite', () => {
  const isThere = existsSync(`${suite}/expected.json`)
  test.skipIf(isThere)(
    '[T2] suite skipped: set TELLWRIGHT_SUITES to the folder that holds webvtt/expected.json',
    () => {},
  )
  const expected: Record<string, Expected> = isThere ? JSON.parse(readFileSync(`${suite}/expected.json`, 'utf8')) : {}
  test.each(Object.entries(expected))('[T2] reads the cues of %s as the browser does', (name, { cues }) => {
    const read = readTranscript(readFileSync(`${suite}/${name}`), name)
    if (!cues.some(({ plain }) => plain.trim() !== '')) return expect(problemsOf(read)).toContain('no-cues')
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    expect(read.value.transcript.form).toBe('webvtt')
    expect(read.value.transcript.cues.map(({ start, end, text }) => ({ start, end, text }))).toEqual(
      cues.map(({ start, end, plain }) => ({ start, end, text: plain })),
    )
  })
})

/** The cues of another parser. @source vtt.js 0.13 */
const referenceCues = (text: string) => {
  const found: { start: number; end: number; text: string }[] = []
  class VTTCue {
    startTime: number
    endTime: number
    text: string
    constructor(startTime: number, endTime: number, held: string) {
      this.startTime = startTime
      this.endTime = endTime
      this.text = held
    }
  }
  const parser = new WebVTT.Parser({ VTTCue }, WebVTT.StringDecoder())
  parser.oncue = one => void found.push({ start: one.startTime, end: one.endTime, text: one.text })
  parser.parse(text)
  parser.flush()
  return found
}

const two = (n: number) => String(n).padStart(2, '0')
const clock = (ms: number, isShort: boolean) => {
  const [h, m, s] = [Math.floor(ms / 3_600_000), Math.floor(ms / 60_000) % 60, Math.floor(ms / 1000) % 60]
  return `${isShort && h === 0 ? '' : `${two(h)}:`}${two(m)}:${two(s)}.${String(ms % 1000).padStart(3, '0')}`
}
const plainLine = fc
  .stringMatching(/^[A-Za-z0-9 ,.'"äöü°µ½-]{0,40}[A-Za-z0-9.]$/)
  .filter(line => line.trim() === line && !line.includes('--'))
const millis = fc.integer({ min: 0, max: 400_000_000 })
const anyCue = fc.record({
  start: millis,
  length: fc.integer({ min: 0, max: 20_000 }),
  lines: fc.array(plainLine, { minLength: 1, maxLength: 3 }),
  id: fc.option(fc.stringMatching(/^[a-z]{1,8}$/), { nil: undefined }),
  settings: fc.constantFrom('', ' align:start', ' line:90% position:10%'),
  isShort: fc.boolean(),
})

describe('written and read back', () => {
  test('[T2] gives back every cue of a file, as vtt.js does', () => {
    fc.assert(
      fc.property(
        fc.array(anyCue, { minLength: 1, maxLength: 12 }),
        fc.constantFrom('\n', '\r\n', '\r'),
        (cues, eol) => {
          const blocks = cues.map(({ start, length, lines, id, settings, isShort }) =>
            [
              ...(id === undefined ? [] : [id]),
              `${clock(start, isShort)} --> ${clock(start + length, isShort)}${settings}`,
              ...lines,
            ].join(eol),
          )
          const text = `WEBVTT${eol}${eol}${blocks.join(eol + eol)}${eol}`
          const { cues: read, problems } = parseWebVtt(text)
          expect(problems).toEqual([])
          expect(read.map(({ text: held }) => held)).toEqual(cues.map(({ lines }) => lines.join('\n')))
          read.forEach(({ start, end }, i) => {
            expect(start).toBeCloseTo((cues[i]?.start ?? -1) / 1000, 6)
            expect(end).toBeCloseTo(((cues[i]?.start ?? -1) + (cues[i]?.length ?? 0)) / 1000, 6)
          })
          if (eol === '\r') return
          const reference = referenceCues(text)
          expect(read.map(({ text: held }) => held)).toEqual(reference.map(({ text: held }) => held))
          reference.forEach(({ start }, i) => void expect(read[i]?.start).toBeCloseTo(start, 6))
        },
      ),
    )
  })

  test('[T14] reads any text after the signature without failing', () => {
    const piece = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom(
        '00:00.000 --> 00:01.000',
        '-->',
        '\n',
        '\n\n',
        'STYLE',
        'NOTE',
        '<v Bea>',
        '<',
        '&amp',
        '\0',
        '\r',
      ),
    )
    fc.assert(
      fc.property(fc.array(piece), pieces => {
        for (const one of parseWebVtt(`WEBVTT\n${pieces.join('')}`).cues) {
          expect(one.start).toBeGreaterThanOrEqual(0)
          expect(Number.isFinite(one.end)).toBe(true)
        }
      }),
    )
  })
})

describe('cue text', () => {
  test('[T3] drops tags and decodes character references', () => {
    const raw = '<c.loud>Set <i>0.5&nbsp;mm</i></c>, that&#39;s &lt; 1 &amp; &half; turn<00:01.000> more'
    expect(parseCueText(raw).text).toBe("Set 0.5\u00a0mm, that's < 1 & ½ turn more")
  })

  test('[T3] takes the voice as speaker', () => {
    expect(parseCueText('<v.first.loud Bea  Voss>Hold it.</v>')).toMatchObject({
      text: 'Hold it.',
      speaker: 'Bea Voss',
    })
    expect(parseCueText('<v>Nobody').speaker).toBeUndefined()
    expect(readText('WEBVTT\n\n00:01.000 --> 00:02.000\n<v Bea>Hold it.').transcript.cues).toEqual([
      cue(1, 2, 'Hold it.', { speaker: 'Bea' }),
    ])
  })

  test('[T10] says so where text is swallowed as a tag, and where two people share a cue', () => {
    const { problems } = readText(
      'WEBVTT\n\n00:01.000 --> 00:02.000\nthe gap is <2 mm\n\n00:02.000 --> 00:03.000\n<v Bea>Yes?<v Orrin>Yes.',
    )
    expect(problems.map(({ code, place }) => [code, place?.line])).toEqual([
      ['unknown-tag', 3],
      ['several-voices', 6],
    ])
  })

  test('[T13] takes timestamps inside a cue as times of its words', () => {
    const { transcript } = readText(
      'WEBVTT\n\n00:01.000 --> 00:04.000\nold line\nnow<00:02.000><c> the</c><00:02.500><c> left one</c>',
    )
    expect(transcript.words).toEqual([
      { start: 1, end: 2, text: 'now' },
      { start: 2, end: 2.5, text: 'the' },
      { start: 2.5, end: 4, text: 'left one' },
    ])
  })
})

test('[T10] reports what it leaves out with line and text, but no notes, styles and regions', () => {
  const text = [
    'WEBVTT - talk',
    'Language: en',
    'what is this',
    '',
    'NOTE kept aside',
    '',
    'STYLE',
    '::cue { color: lime }',
    '',
    'lost words',
    '',
    '00:01 --> 00:02',
    'no thousandths',
    '',
    '00:03.000 --> 00:02.000',
    'backwards',
  ].join('\n')
  const { transcript, problems } = readText(text, 'talk.vtt')
  expect(transcript.cues).toEqual([cue(3, 2, 'backwards')])
  expect(problems.map(({ code, place }) => [code, place?.file, place?.line])).toEqual([
    ['unread-header', 'talk.vtt', 3],
    ['untimed-block', 'talk.vtt', 10],
    ['bad-time-line', 'talk.vtt', 12],
    ['ends-before-start', 'talk.vtt', 15],
  ])
  expect(problems.map(({ message }) => message).join('\n')).toMatch(
    /what is this.*lost words.*no thousandths.*backwards/s,
  )
})

test.each(['WEBVTT', 'WEBVTT\n\n', 'WEBVTT\n\n00:01.000 --> 00:02.000\n<b> </b>\n'])(
  '[T9] a file without a word in a cue is refused: %j',
  text => {
    const read = readTranscript(new TextEncoder().encode(text), 'talk.vtt')
    expect(problemsOf(read)[0]).toBe('no-cues')
    expect(read.ok ? '' : read.problems[0]?.message).toMatch(/choose another/)
  },
)
