import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { transcriptSchema } from '@/lib/procedure/recording'
import { decodeText, LARGEST_TRANSCRIPT } from '@/lib/transcript/decode'
import { readTranscript } from '@/lib/transcript/read'
import { toSentences } from '@/lib/transcript/sentence'
import { problemCodes } from '../../transcripts'

const bytes = (...values: number[]) => Uint8Array.from(values)
const utf16 = (text: string, isLittle: boolean) => {
  const view = new DataView(new ArrayBuffer(text.length * 2))
  for (let i = 0; i < text.length; i++) view.setUint16(i * 2, text.charCodeAt(i), isLittle)
  return new Uint8Array(view.buffer)
}
const decoded = (content: Uint8Array) => {
  const result = decodeText(content, 'talk')
  return result.ok ? result.value.text : result.problems[0]?.code
}

describe('decoding', () => {
  const text = 'Gap 0,5 mm – “slowly”, 20 °C.'
  test('[T9] reads UTF-8 and UTF-16, with and without byte order mark', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', minLength: 1 }).map(tail => `${text}${tail}`),
        said => {
          expect(decoded(new TextEncoder().encode(said))).toBe(said)
          expect(decoded(new TextEncoder().encode(`\uFEFF${said}`))).toBe(said)
          expect(decoded(utf16(`\uFEFF${said}`, true))).toBe(said)
          expect(decoded(utf16(`\uFEFF${said}`, false))).toBe(said)
        },
      ),
    )
    expect(decoded(utf16(text, true))).toBe(text)
    expect(decoded(utf16(text, false))).toBe(text)
  })

  test('[T9] reads what is not UTF-8 as Windows-1252 and says so with the line', () => {
    const result = decodeText(bytes(0x61, 0x0a, 0x32, 0xb0), 'talk')
    expect(result.ok && result.value.text).toBe('a\n2°')
    expect(result.ok && result.value.problems).toMatchObject([{ code: 'assumed-encoding', place: { line: 2 } }])
  })

  test('[T9] refuses an empty file, white space, and files that are no text, by what they are', () => {
    expect(problemCodes('')).toEqual(['empty-file'])
    expect(problemCodes(' \n\t\n')).toEqual(['empty-file'])
    const mp4 = readTranscript(bytes(0, 0, 0, 0x18, 0x66, 0x74, 0x79, 0x70, 0x69, 0x73, 0x6f, 0x6d), 'talk.vtt')
    expect(mp4.ok ? '' : mp4.problems[0]?.message).toMatch(/MP4.*footage/)
    expect(
      problemCodes(
        Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919) % 256),
        'talk.vtt',
      ),
    ).toEqual(['binary-file'])
    expect(problemCodes(bytes(0x25, 0x50, 0x44, 0x46, 0x2d))).toEqual(['binary-file'])
  })

  test('[T9] refuses more than 25 MB, with the size', () => {
    const read = readTranscript(new Uint8Array(LARGEST_TRANSCRIPT + 1), 'long.txt')
    expect(read.ok ? [] : read.problems).toMatchObject([{ code: 'too-large', place: { file: 'long.txt' } }])
    expect(read.ok ? '' : read.problems[0]?.message).toMatch(/25\.0 MB.*at most 25 MB/)
  })
})

/** Whatever the bytes: no exception, a transcript the project file takes, and sentences in order. */
const survives = (content: Uint8Array) => {
  const read = readTranscript(content, 'hostile')
  if (!read.ok) return void expect(read.problems.length).toBeGreaterThan(0)
  const { transcript } = read.value
  expect(transcriptSchema.safeParse(transcript).error).toBeUndefined()
  let last = 0
  for (const sentence of toSentences(transcript)) {
    expect(sentence.start).toBeGreaterThanOrEqual(last)
    expect(Number.isFinite(sentence.end)).toBe(true)
    last = sentence.start
  }
}

describe('hostile input', () => {
  test('[T14] any bytes are read or refused, never a failure', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 400 }), survives))
    const head = fc.constantFrom('WEBVTT\n\n', '1\n', '[0:20]', '{"segments":', '[{', 'start,end,text\n', '0:01\t')
    const body = fc.array(
      fc.oneof(
        fc.string(),
        fc.constantFrom(
          '\n',
          '00:00:01,000 --> 00:00:00,500\n',
          '[0:01]',
          '"',
          ',',
          '\0',
          '<v A>',
          '- ',
          '>>',
          '99999999999:00:00.000 --> 0:01',
        ),
      ),
    )
    fc.assert(fc.property(head, body, (first, rest) => survives(new TextEncoder().encode(first + rest.join('')))))
  })

  test.each([
    ['zero bytes', `WEBVTT\n\n00:01.000 --> 00:02.000\n${'\0'.repeat(5000)}`],
    ['lone surrogates', '{"segments":[{"start":0,"end":1,"text":"a \\ud800 b \\udc00"}]}'],
    ['a word of 10,000 letters', `1\n00:00:01,000 --> 00:00:02,000\n${'x'.repeat(10_000)} ${'9'.repeat(10_000)}`],
    ['10,000 brackets', `0:01 ${'['.repeat(10_000)}\n0:02 ${'<'.repeat(10_000)}`],
    ['100,000 spaces', `1\n00:00:01,000 --> 00:00:02,000\n[${' '.repeat(100_000)}x\n- ${' '.repeat(100_000)}`],
    ['a line of 300,000 words', 'now take it off '.repeat(75_000)],
    ['end before start', 'WEBVTT\n\n00:09.000 --> 00:01.000\nback to front\n\n00:02.000 --> 00:03.000\nnext'],
    ['a hundred hours', 'WEBVTT\n\n100:00:00.000 --> 100:00:01.000\nlate'],
    ['10,000 levels of JSON', `${'['.repeat(10_000)}${']'.repeat(10_000)}`],
    ['a number too large for a time', `start,end,text\n${'9'.repeat(400)},1e999,off\n0,1,on`],
  ])('[T14] %s', (_, text) => survives(new TextEncoder().encode(text)))

  test('[T10] more problems than anybody reads are counted', () => {
    const lines = Array.from({ length: 1500 }, (_, i) => `x --> ${i}\n\n`).join('')
    const codes = problemCodes(`WEBVTT\n\n${lines}`)
    expect(codes.length).toBe(1002)
    expect(codes.at(-1)).toBe('more-problems')
  })
})
