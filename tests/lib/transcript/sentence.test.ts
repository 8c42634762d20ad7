import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Cue, Transcript } from '@/lib/procedure/recording'
import { isInsideFigure } from '@/lib/transcript/figure'
import { isInsideLimit } from '@/lib/transcript/inside-limit'
import { toSentences } from '@/lib/transcript/sentence'
import { cue, readText, transcriptOf, word } from '../../transcripts'

const texts = (transcript: Transcript) => toSentences(transcript).map(({ text }) => text)
const textsOf = (...cues: Cue[]) => texts(transcriptOf(cues))
const round = (n: number) => Math.round(n * 1000) / 1000
const spans = (transcript: Transcript) =>
  toSentences(transcript).map(({ start, end, text }) => [round(start), round(end), text])

describe('reflow', () => {
  test('[T11] joins sentences across cues and folds white space', () => {
    expect(
      textsOf(cue(0, 2, 'Take the\n cover'), cue(2, 4, 'off. Now  the bolt'), cue(4, 6, 'comes out. Good.')),
    ).toEqual(['Take the cover off.', 'Now the bolt comes out.', 'Good.'])
  })

  test('[T11] is not fooled by shortened words, decimals and dots of hesitation', () => {
    expect(
      textsOf(cue(0, 9, 'Set approx. 0.5 mm, i.e. half a turn... or so, says Dr. Voss. It is No. 4 now!')),
    ).toEqual(['Set approx. 0.5 mm, i.e. half a turn... or so, says Dr. Voss.', 'It is No. 4 now!'])
  })

  test('[T11] ends sentences in text without capitals, also inside quotes', () => {
    expect(textsOf(cue(0, 9, 'take it off. he said "slowly." then put it back? yes.'))).toEqual([
      'take it off.',
      'he said "slowly."',
      'then put it back?',
      'yes.',
    ])
  })

  test('[T11] splits talk without punctuation at pauses and before words that open a thought', () => {
    const cues = [
      cue(0, 3, 'take the four screws out of the back'),
      cue(3.6, 6, 'keep them in the lid'),
      cue(6, 9, 'so that none of them rolls under the bench and gets lost'),
      cue(9, 12, 'okay now lift the cover off with both hands'),
    ]
    expect(textsOf(...cues)).toEqual([
      'take the four screws out of the back',
      'keep them in the lid so that none of them rolls under the bench and gets lost',
      'okay now lift the cover off with both hands',
    ])
  })

  test('[T11] never lets talk without any break run on for ever', () => {
    const run = Array.from({ length: 400 }, (_, i) => `word${i}`).join(' ')
    const lengths = toSentences(transcriptOf([cue(0, 100, run), cue(110, 200, run)])).map(({ words }) => words.length)
    expect(lengths.reduce((sum, n) => sum + n, 0)).toBe(800)
    expect(Math.max(...lengths)).toBeLessThanOrEqual(60)
  })

  test('[T11] lines of plain text are sentences, wrapped lines are not', () => {
    const wrapped = 'take the long cover off the housing and put it where nobody steps'
    expect(
      texts(
        transcriptOf(
          [cue(0, 0, wrapped), cue(0, 0, 'on it'), cue(0, 0, 'Turn the handle'), cue(0, 0, 'Oil it')],
          'untimed',
        ),
      ),
    ).toEqual([`${wrapped} on it`, 'Turn the handle', 'Oil it'])
  })

  /** Each the whole of what is said in a breath; written without a point or a capital. */
  const PHRASES = [
    'shut the two valves on the pump and hang your lock on the switch',
    'let it stand until the casing is cold to the hand',
    'the drain plug is the small one at the back',
    'undo the six nuts a little at a time crosswise',
    'lift the cover off with both hands',
    'the gasket stays on one face or the other',
    'scrape it off without scratching the face',
    'wipe both faces with a clean rag',
    'put the new gasket on dry',
    'cover back on and the nuts finger tight',
    'tighten them in three rounds to 20 newton metres',
    'open the valves slowly and look for drips',
  ]

  test('[T11] captions without punctuation that hold a phrase each end where these do', () => {
    expect(textsOf(...PHRASES.map((text, i) => cue(i * 4, i * 4 + 4, text)))).toEqual(PHRASES)
  })

  test('[T11] lines without punctuation that hold a phrase each are sentences', () => {
    expect(texts(readText(PHRASES.join('\n'), 'talk.txt').transcript)).toEqual(PHRASES)
    expect(texts(readText(PHRASES.slice(0, 4).join('\n'), 'talk.txt').transcript)).toEqual(PHRASES.slice(0, 4))
  })

  test('[T11] the same words wrapped at a width end at few of the lines', () => {
    const lines = PHRASES.join(' ').match(/\S.{0,30}(?=\s|$)/g) ?? []
    const ends = new Set(
      texts(readText(lines.join('\n'), 'talk.txt').transcript).map(text => text.split(' ').slice(-2).join(' ')),
    )
    const kept = lines.filter(line => ends.has(line.split(' ').slice(-2).join(' ')))
    expect(kept.length).toBeLessThan(lines.length / 2)
    expect([...ends].filter(end => PHRASES.some(phrase => phrase.endsWith(end))).length).toBeGreaterThan(5)
  })

  test.each([
    'at minus | twelve',
    'give or take | a tenth',
    "it mustn't be over | six",
    'the bar reads nothing | under nine',
    'it moves at most | 30 grams',
    'we want it down to 40 | or lower',
    'proud by an eighth | at the least',
    'loosen it three turns | and no further',
    'twenty degrees half a degree | either way',
    'between one sixty and one | sixty five',
    'by two to two | and a half',
    'for half | an hour',
    'from 30 | up to 36',
  ])('[T11] no limit is cut from its bound: %s', said => {
    const words = said.split(' ')
    const cut = words.indexOf('|')
    const whole = words.filter(one => one !== '|')
    expect(isInsideLimit(offset => whole[cut - 1 + offset] ?? '')).toBe(true)
  })

  test.each([
    'it takes 20 bar at least | two men hold it',
    'wind it two turns | and no one minds',
    'so much for that half | now the other',
    'the rest is all over | two bolts hold it',
    'that is number four | at last',
  ])('[T11] where words of a bound stand for something else a sentence may end: %s', said => {
    const words = said.split(' ')
    const cut = words.indexOf('|')
    const whole = words.filter(one => one !== '|')
    expect(isInsideLimit(offset => whole[cut - 1 + offset] ?? '')).toBe(false)
  })

  test('[T11] no figure is cut in two where captions are', () => {
    const cues = [
      cue(0, 5, 'the fan bolts go in by hand first and then you torque those to a hundred'),
      cue(5, 9, 'and twenty newton metres with a tolerance of plus or'),
      cue(9, 13, 'minus five and then the cover goes back on with all forty'),
      cue(13, 17, 'five screws and the oil takes two point'),
      cue(17, 21, 'four litres so get the funnel'),
    ]
    const all = textsOf(...cues)
    for (const figure of [
      'a hundred and twenty newton metres',
      'plus or minus five',
      'forty five screws',
      'two point four litres',
    ])
      expect(all.filter(text => text.includes(figure))).toHaveLength(1)
  })

  test.each([
    [undefined, 'hundred', 'and', 'twenty', true],
    [undefined, 'hundred', 'and', undefined, true],
    [undefined, 'hundred', 'and', 'then', false],
    ['hundred', 'and', 'twenty', undefined, true],
    ['tight', 'and', 'twenty', undefined, false],
    [undefined, 'forty', 'newton', 'metres', true],
    [undefined, 'at', 'forty', undefined, false],
    [undefined, 'two', 'point', 'five', true],
    ['at', 'twenty', 'point', 'the', false],
    ['is', 'point', 'five', undefined, true],
    ['this', 'point', 'two', 'clips', false],
    ['plus', 'or', 'minus', 'two', true],
    [undefined, 'ten', 'then', undefined, false],
  ])('[T11] of %s, %s, %s and %s', (before, last, next, after, isInside) => {
    expect(isInsideFigure(before, last, next, after)).toBe(isInside)
  })

  test('[T11] numbers of a list are not said', () => {
    const text = '1. Isolate the pump.\n2) Shut both valves.\n(3) Drain 3 litres.\n4. Fit 2. Then go on.'
    expect(texts(readText(text, 'talk.txt').transcript)).toEqual([
      'Isolate the pump.',
      'Shut both valves.',
      'Drain 3 litres.',
      'Fit 2.',
      'Then go on.',
    ])
  })

  test('[T11] a new speaker ends a sentence, a dash or arrows before a line too', () => {
    expect(
      toSentences(
        transcriptOf([
          cue(0, 2, 'is it', { speaker: 'Bea' }),
          cue(2, 4, 'off', { speaker: 'Bea' }),
          cue(4, 6, 'it is', { speaker: 'Orrin' }),
        ]),
      ).map(({ speaker, text }) => [speaker, text]),
    ).toEqual([
      ['Bea', 'is it off'],
      ['Orrin', 'it is'],
    ])
    expect(textsOf(cue(0, 4, '- is it off\n- it is'), cue(4, 6, '>> good'))).toEqual(['is it off', 'it is', 'good'])
  })

  test('[T11] leaves out what nobody said', () => {
    expect(textsOf(cue(0, 2, '[Music]'), cue(2, 4, '♪ Take it off. (laughs) [0:20]'))).toEqual([
      'Take it off.',
      '[0:20]',
    ])
  })
})

describe('rolling captions', () => {
  const rolling = [
    cue(0, 2, 'take the bolt out'),
    cue(2, 4, 'take the bolt out\nand set it aside'),
    cue(4, 6, 'and set it aside\nnow clean the face'),
    cue(6, 6.01, 'now clean the face'),
    cue(6.01, 8, 'now clean the face\nwith a rag'),
  ]
  test('[T12] say everything once', () => {
    expect(textsOf(...rolling).join(' ')).toBe('take the bolt out and set it aside now clean the face with a rag')
  })

  test('[T12] time the new words only over their own cue', () => {
    const words = toSentences(transcriptOf(rolling)).flatMap(sentence => sentence.words)
    const rag = words.at(-1)
    expect([rag?.cue, round(rag?.end ?? 0)]).toEqual([4, 8])
    const second = words.filter(({ cue: from }) => from === 1)
    expect(second.map(({ start }) => round(start))).toEqual([2, 2.471, 2.941, 3.294])
  })

  test('[T12] growing captions say everything once', () => {
    expect(textsOf(cue(0, 1, 'so we'), cue(1, 2, 'so we take the'), cue(2, 3, 'so we take the bolt out'))).toEqual([
      'so we take the bolt out',
    ])
  })

  test('[T12] people may say a thing twice', () => {
    const said = ['Turn it, turn it.', 'Turn it slowly.', 'Hold the nut.', 'Check the gap.', 'Wipe it.']
    expect(textsOf(...said.map((text, i) => cue(i * 2, i * 2 + 2, text)))).toEqual(said)
  })

  test('[T12] a correction counts wherever it was made, and repetitions are still known', () => {
    const [first, second, ...rest] = rolling
    if (first === undefined || second === undefined) throw new Error('no cues')
    const expected = 'take the nut out and set it aside now clean the face with a rag'
    expect(textsOf({ ...first, corrected: 'take the nut out' }, second, ...rest).join(' ')).toBe(expected)
    const later = { ...second, corrected: 'take the bolt out\nand put it aside' }
    expect(textsOf(first, later, ...rest).join(' ')).toBe(
      'take the bolt out and put it aside now clean the face with a rag',
    )
  })
})

describe('times', () => {
  test('[T13] are interpolated by letters over the cue', () => {
    expect(spans(transcriptOf([cue(10, 14, 'Abcd efgh. Ijkl mnop.')]))).toEqual([
      [10, 12, 'Abcd efgh.'],
      [12, 14, 'Ijkl mnop.'],
    ])
  })

  test('[T13] are those of the words where the transcript has them', () => {
    const words = [word(0.5, 0.8, 'Take'), word(0.9, 1, 'it'), word(1.5, 1.9, 'off'), word(3, 3.2, 'Good')]
    const sentences = toSentences(transcriptOf([cue(0, 4, 'Take it off. Good.')], 'recogniser-json', words))
    expect(sentences.map(({ start, end }) => [start, end])).toEqual([
      [0.5, 1.9],
      [3, 3.2],
    ])
    expect(sentences[0]?.words).toEqual([
      { at: 0, to: 4, start: 0.5, end: 0.8, cue: 0 },
      { at: 5, to: 7, start: 0.9, end: 1, cue: 0 },
      { at: 8, to: 12, start: 1.5, end: 1.9, cue: 0 },
    ])
  })

  test('[T13] of a corrected word lie between its neighbours', () => {
    const words = [word(1, 2, 'the'), word(2, 3, 'bold'), word(3, 4, 'turns')]
    const corrected = cue(0, 5, 'the bold turns', { corrected: 'the old bolt turns' })
    const [sentence] = toSentences(transcriptOf([corrected], 'recogniser-json', words))
    expect(sentence?.words.map(({ start, end }) => [round(start), round(end)])).toEqual([
      [1, 2],
      [2, expect.any(Number)],
      [expect.any(Number), 3],
      [3, 4],
    ])
  })

  test('[T13] find words that a recogniser writes in pieces', () => {
    const words = [word(0, 1, 'pre'), word(1, 2, 'load'), word(2, 3, 'it')]
    const [sentence] = toSentences(transcriptOf([cue(0, 3, 'Preload it.')], 'recogniser-json', words))
    expect(sentence?.words.map(({ start, end }) => [start, end])).toEqual([
      [0, 2],
      [2, 3],
    ])
  })

  test('[T13] hold for overlapping, unordered and simultaneous cues', () => {
    expect(texts(transcriptOf([cue(4, 8, 'Third.'), cue(0, 3, 'First.'), cue(2, 6, 'Second.')]))).toEqual([
      'First.',
      'Second.',
      'Third.',
    ])
    expect(spans(transcriptOf([cue(0, 5, 'One two.'), cue(2, 7, 'Three four.')]))).toEqual([
      [0, 2, 'One two.'],
      [2, 7, 'Three four.'],
    ])
    const together = toSentences(transcriptOf([cue(0, 4, 'One two'), cue(0, 4, 'three four.')]))
    expect(together.map(({ start, end, text }) => [start, end, text])).toEqual([[0, 4, 'One two three four.']])
  })

  test('[T13] of people who talk over each other are kept apart', () => {
    const sentences = toSentences(
      transcriptOf([cue(0, 10, 'I am telling you how.', { speaker: 'Bea' }), cue(5, 6, 'Wait.', { speaker: 'Orrin' })]),
    )
    expect(sentences.map(({ start, end, speaker }) => [start, end, speaker])).toEqual([
      [0, 10, 'Bea'],
      [5, 6, 'Orrin'],
    ])
  })

  test('[T13] are guessed by speaking rate where a cue ends before it starts', () => {
    const [first] = toSentences(transcriptOf([cue(9, 1, 'back to front'), cue(20, 21, 'Next.')]))
    expect([first?.start, round((first?.end ?? 0) - 9)]).toEqual([9, round(3 / 2.7)])
  })

  test('[T13] are nought in untimed text', () => {
    expect(spans(transcriptOf([cue(0, 0, 'Take it off. Good.')], 'untimed'))).toEqual([
      [0, 0, 'Take it off.'],
      [0, 0, 'Good.'],
    ])
  })

  const anyText = fc
    .array(
      fc.constantFrom('take', 'it', 'off', 'off.', 'Now', 'the', '20', '—', 'so', 'bolt,', '[Music]', '- no', '\n'),
      { maxLength: 12 },
    )
    .map(words => words.join(' '))
  const anyCue = fc.record({
    start: fc.integer({ min: 0, max: 60 }),
    end: fc.integer({ min: 0, max: 70 }),
    text: anyText,
    speaker: fc.constantFrom('Bea', 'Orrin'),
  })
  test('[T13] never fall within a sentence, and every word is where it says it is', () => {
    const anyTranscript = fc.record({
      cues: fc.array(anyCue, { maxLength: 12 }),
      form: fc.constantFrom('webvtt' as const, 'untimed' as const),
    })
    fc.assert(
      fc.property(anyTranscript, ({ cues, form }) => {
        const sentences = toSentences(transcriptOf(cues, form))
        let last = 0
        for (const { start, end, text, words } of sentences) {
          expect(start).toBeGreaterThanOrEqual(last)
          last = start
          expect(text).toBe(text.trim().replace(/\s+/g, ' '))
          expect(words[0]?.start).toBe(start)
          let [offset, moment] = [0, start]
          for (const said of words) {
            expect(said.at).toBeGreaterThanOrEqual(offset)
            expect(text.slice(said.at, said.to)).toMatch(/^\S+$/)
            expect(cues[said.cue]?.text).toContain(text.slice(said.at, said.to))
            expect(said.start).toBeGreaterThanOrEqual(moment)
            expect(said.end).toBeGreaterThanOrEqual(said.start)
            expect(said.end).toBeLessThanOrEqual(end)
            ;[offset, moment] = [said.to, said.start]
          }
        }
      }),
    )
  })

  test('[T11] no word is lost or made up where nothing rolls', () => {
    const line = fc
      .array(fc.stringMatching(/^[a-z]{2,9}[.,?]?$/), { minLength: 1, maxLength: 9 })
      .map(words => words.join(' '))
    fc.assert(
      fc.property(fc.uniqueArray(line, { minLength: 1, maxLength: 15 }), lines => {
        // Three seconds of silence between cues: nothing rolls over that.
        const cues = lines.map((text, i) => cue(i * 6, i * 6 + 3, text))
        expect(textsOf(...cues).join(' ')).toBe(lines.join(' '))
      }),
    )
  })
})

test('[T14] work grows with the number of words, not with its square', () => {
  const talk = (n: number) =>
    transcriptOf(
      Array.from({ length: n }, (_, i) => cue(i * 3, i * 3 + 3, `so take bolt ${i % 90} out and put it in the tray`)),
    )
  let reads = 0
  const counted = (n: number) => {
    reads = 0
    const { cues, ...rest } = talk(n)
    toSentences({
      ...rest,
      cues: cues.map(one => ({
        ...one,
        get text() {
          reads++
          return one.text
        },
      })),
    })
    return reads / n
  }
  expect(counted(2000)).toBeCloseTo(counted(200), 0)
})

test('[T11] reads and reflows a file as a whole', () => {
  const { transcript } = readText(
    '1\n00:00:00,400 --> 00:00:03,000\nTake the cover\n\n2\n00:00:03,000 --> 00:00:05,000\noff. Slowly.\n',
  )
  expect(texts(transcript)).toEqual(['Take the cover off.', 'Slowly.'])
})
