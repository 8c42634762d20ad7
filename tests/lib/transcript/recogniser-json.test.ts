import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cue, problemCodes, readText, word } from '../../transcripts'

const readJson = (value: unknown) => readText(JSON.stringify(value))

describe('recogniser JSON', () => {
  test('[T6] reads segments, speakers and words', () => {
    const { transcript, problems } = readJson({
      text: 'Take it off.',
      segments: [
        {
          id: 0,
          start: 1,
          end: 2.5,
          text: ' Take it off.',
          speaker: 'Bea',
          words: [
            { word: ' Take', start: 1, end: 1.4 },
            { word: ' it', start: 1.4, end: 1.6 },
            { word: ' off.', start: 1.7, end: 2.5 },
          ],
        },
      ],
    })
    expect(transcript.cues).toEqual([cue(1, 2.5, 'Take it off.', { speaker: 'Bea' })])
    expect(transcript.words).toEqual([word(1, 1.4, 'Take'), word(1.4, 1.6, 'it'), word(1.7, 2.5, 'off.')])
    expect(problems).toEqual([])
  })

  test.each([
    ['start_time and end_time', [{ start_time: '1.0', end_time: '2.5', transcript: 'take it off' }]],
    ['startTime with unit', { items: [{ startTime: '1s', endTime: '2.5s', text: 'take it off' }] }],
    ['milliseconds by name', { a: { b: [{ startMs: 1000, endMs: 2500, text: 'take it off' }] } }],
    ['milliseconds by speed', { utterances: [{ start: 1000, end: 2500, text: 'take it off' }] }],
    ['ticks by speed', [{ offset: 10_000_000, duration: 15_000_000, text: 'take it off' }]],
    ['a pair', { chunks: [{ timestamp: [1, 2.5], text: 'take it off' }] }],
    [
      'clock times inside',
      [{ timestamps: { from: '00:00:01,000', to: '00:00:02,500' }, offsets: { from: 1, to: 2 }, text: 'take it off' }],
    ],
    ['length', [{ from: 1, dur: 1.5, text: 'take it off' }]],
  ])('[T6] reads times spelt with %s', (_, value) => {
    expect(readJson(value).transcript.cues).toEqual([cue(1, 2.5, 'take it off')])
  })

  test('[T6] gathers bare words to cues at pauses and speakers', () => {
    const said = (start: number, text: string, speaker = 0) => ({ start, end: start + 0.3, word: text, speaker })
    const { transcript } = readJson({
      words: [said(0, 'take'), said(0.3, 'it'), said(0.6, 'off'), said(2, 'now', 0), said(2.3, 'what', 1)],
    })
    expect(transcript.cues).toEqual([
      cue(0, 0.6 + 0.3, 'take it off', { speaker: 'Speaker 0' }),
      cue(2, 2.3, 'now', { speaker: 'Speaker 0' }),
      cue(2.3, 2.3 + 0.3, 'what', { speaker: 'Speaker 1' }),
    ])
    expect(transcript.words?.length).toBe(5)
  })

  test('[T6] joins punctuation that has no time, and takes the first alternative only', () => {
    const at = (start: number, content: string) => ({
      start_time: String(start),
      end_time: String(start + 0.5),
      alternatives: [{ content }, { content: 'WRONG' }],
    })
    const mark = (content: string) => ({ alternatives: [{ content }] })
    const items = [at(0, 'off'), mark(','), at(0.5, 'then'), at(1, 'on'), mark('.')]
    const { transcript, problems } = readJson({ results: { items } })
    expect(transcript.cues).toEqual([cue(0, 1.5, 'off, then on.')])
    expect(problems).toEqual([])
  })

  test('[T6] takes the time of a segment from its words, and joins the segments of repeated objects', () => {
    const result = (start: number, transcript: string) => ({
      alternatives: [
        { transcript, words: [{ startTime: `${start}s`, endTime: `${start + 1}s`, word: transcript.split(' ')[0] }] },
        { transcript: 'WRONG one', words: [] },
      ],
    })
    expect(readJson({ results: [result(0, 'take it'), result(4, 'put it')] }).transcript.cues).toEqual([
      cue(0, 1, 'take it'),
      cue(4, 5, 'put it'),
    ])
  })

  test('[T6] reads one JSON document a line', () => {
    const line = (start: number) => JSON.stringify({ start, end: start + 1, text: 'on and off' })
    expect(readText(`${line(0)}\n${line(1)}\n`).transcript.cues).toEqual([
      cue(0, 1, 'on and off'),
      cue(1, 2, 'on and off'),
    ])
  })

  test('[T10] reports entries without time or text by path', () => {
    const { problems } = readJson({
      segments: [{ start: 0, end: 1, text: 'on and off' }, { text: 'lost words' }, null],
    })
    expect(problems.map(({ code, place }) => [code, place?.path])).toEqual([
      ['unread-entry', 'segments[1]'],
      ['unread-entry', 'segments[2]'],
    ])
    expect(problems[0]?.message).toContain('lost words')
  })

  test('[T6] refuses JSON that is cut off, holds no segments, or is a project', () => {
    expect(problemCodes('{"segments":[{"start":0,')).toEqual(['not-json'])
    expect(problemCodes('{"a":[1,2]}')).toEqual(['no-segments'])
    expect(problemCodes('{"format":"tellwright","version":1}')).toEqual(['project-as-transcript'])
  })

  test('[T6] gives back what was written', () => {
    const segment = fc.record({
      start: fc.integer({ min: 0, max: 9000 }),
      text: fc.array(fc.stringMatching(/^[a-z]{2,8}$/), { minLength: 6, maxLength: 9 }).map(words => words.join(' ')),
    })
    fc.assert(
      fc.property(fc.array(segment, { minLength: 1 }), list => {
        const segments = list.map(({ start, text }) => ({ start, end: start + 3, text }))
        expect(readJson({ segments }).transcript.cues).toEqual(segments)
      }),
    )
  })

  test('[T14] reads any JSON without failing', () => {
    fc.assert(
      fc.property(fc.oneof(fc.array(fc.jsonValue()), fc.dictionary(fc.string(), fc.jsonValue())), value => {
        problemCodes(JSON.stringify(value))
      }),
    )
  })
})
