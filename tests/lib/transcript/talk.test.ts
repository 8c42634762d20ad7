import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Sentence } from '@/lib/procedure/recording'
import { spanOfWords, textOfWords, toTalk, wordAt, wordAtOffset, wordsOfCue, wordsOfSpan } from '@/lib/transcript/talk'

/** A sentence whose words take half a second each. */
const sentence = (start: number, text: string, speaker?: string): Sentence => {
  let at = 0
  const words = text.split(' ').map((word, i) => {
    const found = { at, to: at + word.length, start: start + i / 2, end: start + (i + 1) / 2, cue: 0 }
    at += word.length + 1
    return found
  })
  return { start, end: start + words.length / 2, text, words, ...(speaker === undefined ? {} : { speaker }) }
}

const talk = toTalk([
  sentence(0, 'Pull the cover off.', 'Ada'),
  sentence(2.5, 'Mind the spring.', 'Ada'),
  sentence(4, 'Why?', 'Bo'),
  sentence(10, 'It jumps.', 'Bo'),
])

describe('[T17] the talk as running text', () => {
  test('[T17] a change of speaker or a long pause starts a paragraph', () => {
    expect(talk.paragraphs.map(({ text, speaker, first, last }) => ({ text, speaker, first, last }))).toEqual([
      { text: 'Pull the cover off. Mind the spring.', speaker: 'Ada', first: 0, last: 7 },
      { text: 'Why?', speaker: 'Bo', first: 7, last: 8 },
      { text: 'It jumps.', speaker: 'Bo', first: 8, last: 10 },
    ])
  })

  test('[T17] every word stands in its paragraph where it says it does', () => {
    const words = talk.words.map(word => talk.paragraphs[word.paragraph]?.text.slice(word.at, word.to))
    expect(words).toEqual('Pull the cover off. Mind the spring. Why? It jumps.'.split(' '))
  })

  test('[T17] words are found by time, by span and by place in the text', () => {
    expect([wordAt(talk, -1), wordAt(talk, 0.6), wordAt(talk, 9), wordAt(talk, 99)]).toEqual([undefined, 1, 7, 9])
    expect(wordsOfSpan(talk, { start: 0.5, end: 2 })).toEqual({ from: 1, to: 4 })
    expect(wordsOfSpan(talk, { start: 6, end: 9 })).toBeUndefined()
    expect([wordsOfCue(talk, 0), wordsOfCue(talk, 1)]).toEqual([{ from: 0, to: 10 }, undefined])
    expect([
      wordAtOffset(talk, 0, 0),
      wordAtOffset(talk, 0, 5),
      wordAtOffset(talk, 0, 999),
      wordAtOffset(talk, 9, 0),
    ]).toEqual([0, 1, 6, undefined])
    expect(textOfWords(talk, { from: 2, to: 9 })).toBe('cover off. Mind the spring. Why? It')
  })
})

test('[T18] the words of the span of words are those words', () => {
  const ranges = fc
    .tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 1, max: 10 }))
    .filter(([from, to]) => from < to)
  fc.assert(
    fc.property(ranges, ([from, to]) => {
      const span = spanOfWords(talk, { from, to })
      expect(span && wordsOfSpan(talk, span)).toEqual({ from, to })
    }),
  )
})
