import fc from 'fast-check'
import { expect, test } from 'vitest'
import { shiftTranscript } from '@/lib/transcript/shift'
import { cue, transcriptOf, word } from '../../transcripts'

const talk = transcriptOf([cue(1, 3, 'one'), cue(3, 5, 'two')], 'recogniser-json', [
  word(1, 2, 'one'),
  word(3, 4, 'two'),
])

test('[T15] moves all cues and words, none below nought', () => {
  expect(shiftTranscript(talk, 1.5)).toEqual({
    ...talk,
    cues: [cue(2.5, 4.5, 'one'), cue(4.5, 6.5, 'two')],
    words: [word(2.5, 3.5, 'one'), word(4.5, 5.5, 'two')],
  })
  expect(shiftTranscript(talk, -2).cues).toEqual([cue(0, 1, 'one'), cue(1, 3, 'two')])
})

test('[T15] moves only what starts in a range', () => {
  expect(shiftTranscript(talk, 10, { start: 3, end: 9 })).toEqual({
    ...talk,
    cues: [cue(1, 3, 'one'), cue(13, 15, 'two')],
    words: [word(1, 2, 'one'), word(13, 14, 'two')],
  })
})

test('[T15] back and forth changes nothing', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 100_000 }), seconds => {
      expect(shiftTranscript(shiftTranscript(talk, seconds), -seconds)).toEqual(talk)
    }),
  )
})
