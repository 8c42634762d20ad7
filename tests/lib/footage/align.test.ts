import { createHash } from 'node:crypto'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Alignment, align } from '@/lib/footage/align'
import { detectorOn } from '@/lib/footage/detector'
import { loadFvad, loadRecogniser } from '@/lib/footage/engines-node'
import type { Recogniser } from '@/lib/footage/recogniser'
import { speechFinder } from '@/lib/footage/speech'
import type { Span } from '@/lib/procedure/time'
import { WHEEL } from './sentences'
import { makeSpeech, random, type Talk, withNoise } from './talk'

/** The same sound is heard once for all tests: it is most of the work. */
const remembering = (recogniser: Recogniser): Recogniser => {
  const known = new Map<string, ReturnType<Recogniser['hearPhones']>>()
  return {
    ...recogniser,
    hearPhones: samples => {
      const key = createHash('sha1').update(samples).digest('hex')
      const heard = known.get(key) ?? recogniser.hearPhones(samples)
      known.set(key, heard)
      return heard
    },
  }
}

let recogniser: Recogniser
let talk: Talk

beforeAll(async () => {
  recogniser = remembering(await loadRecogniser('node_modules/soundswallower/model/'))
  talk = await makeSpeech(WHEEL.slice(0, 20))
}, 120_000)
afterAll(() => recogniser.free())

/** Sentences the talk has nothing like. */
const STRANGE = ['Grease the hinge of the lid with a brush.', 'Count the cartons on the pallet twice.']

const alignTo = async ({ samples }: Talk, texts: readonly string[], hints?: readonly Span[]): Promise<Alignment> => {
  const finder = speechFinder(detectorOn(await loadFvad(), 1))
  finder.push(samples)
  const hear = (from: number, to: number) => samples.slice(Math.round(from * 16_000), Math.round(to * 16_000))
  return align(texts, finder.end(), hear, recogniser, { hints })
}

/** Errors of the sentences' starts, seconds, in order of size. */
const errorsOf = (alignment: Alignment, texts: readonly string[]) =>
  alignment.lines
    .flatMap(({ line, start }) => {
      const spoken = talk.sentences.find(({ text }) => text === texts[line])
      return spoken === undefined ? [] : [Math.abs(start - spoken.start)]
    })
    .sort((a, b) => a - b)

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
const p95 = (values: readonly number[]) => values[Math.floor(values.length * 0.95)]

test('[F12] sentences are timed to 0.15 s in the mean and 0.4 s in 95 of 100', async () => {
  const texts = talk.sentences.map(({ text }) => text)
  const alignment = await alignTo(talk, texts)
  const errors = errorsOf(alignment, texts)
  expect(errors.length).toBe(20)
  expect(mean(errors)).toBeLessThan(0.15)
  expect(p95(errors)).toBeLessThan(0.4)
  expect(alignment.lines.every(({ isHeard }) => isHeard)).toBe(true)
  expect(alignment.unwritten).toEqual([])
  expect(alignment.words.map(({ text }) => text).join(' ')).toBe(texts.join(' '))
}, 120_000)

test('[F12] with a fan 10 dB below the voice they are timed to 0.3 s in the mean', async () => {
  const texts = talk.sentences.map(({ text }) => text)
  expect(mean(errorsOf(await alignTo(withNoise(talk, 'fan', 10), texts), texts))).toBeLessThan(0.3)
}, 120_000)

test('[F13] with sentences left out of the text and others added, each is pointed out and the rest is timed to 0.5 s', async () => {
  const [left, added] = [
    [4, 13],
    ['Grease the hinge of the lid with a brush.', 'Count the cartons on the pallet twice.'],
  ]
  const texts = talk.sentences.map(({ text }) => text).filter((_, i) => !left.includes(i))
  texts.splice(7, 0, added[0] ?? '')
  texts.splice(15, 0, added[1] ?? '')
  const alignment = await alignTo(talk, texts)
  expect(mean(errorsOf(alignment, texts))).toBeLessThan(0.5)
  expect(alignment.lines.filter(({ isHeard }) => !isHeard).map(({ line }) => texts[line])).toEqual(added)
  const unwritten = left.map(i => {
    const { start, end } = talk.sentences[i] ?? { start: 0, end: 1 }
    return alignment.unwritten.filter(span => span.start < end && span.end > start).length
  })
  expect(unwritten).toEqual([1, 1])
  expect(alignment.unwritten.length).toBe(2)
}, 120_000)

test.each([[11], [12], [13]])(
  '[F13] the same with sentences left out and added at random (seed %i)',
  async seed => {
    const next = random(seed)
    const pick = (count: number) => Math.floor(next() * count)
    const left = [pick(10), 10 + pick(10)]
    const added = [STRANGE[pick(STRANGE.length)] ?? '', 'Ask at the office for the parcel from Norway.']
    const texts = talk.sentences.map(({ text }) => text).filter((_, i) => !left.includes(i))
    for (const text of added) texts.splice(pick(texts.length + 1), 0, text)
    const alignment = await alignTo(talk, texts)
    expect(alignment.lines.flatMap(({ line, isHeard }) => (isHeard ? [] : [texts[line]])).sort()).toEqual(added.sort())
    for (const i of left) {
      const { start, end } = talk.sentences[i] ?? { start: 0, end: 1 }
      const seen = alignment.unwritten.map(span => Math.min(end, span.end) - Math.max(start, span.start))
      expect(Math.max(...seen)).toBeGreaterThan(0.8 * (end - start))
    }
    expect(mean(errorsOf(alignment, texts))).toBeLessThan(0.5)
  },
  120_000,
)

test('[F13] a tune 10 dB below the voice is not taken for speech that is not in the text', async () => {
  const texts = talk.sentences.map(({ text }) => text)
  const alignment = await alignTo(withNoise(talk, 'tune', 10), texts)
  expect(mean(errorsOf(alignment, texts))).toBeLessThan(0.3)
  // A sentence may be lost in it, but the tune alone is not told as speech.
  expect(alignment.unwritten.length).toBeLessThanOrEqual(1)
  for (const { start, end } of alignment.unwritten) {
    const shares = talk.sentences.map(
      one => (Math.min(end, one.end) - Math.max(start, one.start)) / (one.end - one.start),
    )
    expect(Math.max(...shares)).toBeGreaterThan(0.9)
  }
}, 120_000)

test.each([
  ['coarse ones', 0],
  ['ones of another recording', 400],
])(
  '[F16] times the text has are hints: %s',
  async (_, late) => {
    const texts = talk.sentences.map(({ text }) => text)
    // One time for every five sentences, floored to 10 s as a hand would note it.
    const noted = (i: number) => 10 * Math.floor((talk.sentences[i]?.start ?? 0) / 10) + late
    const hints = texts.map((_, i) => {
      const first = i - (i % 5)
      return { start: noted(first), end: first + 5 < texts.length ? noted(first + 5) : late + 600 }
    })
    const alignment = await alignTo(talk, texts, hints)
    expect(mean(errorsOf(alignment, texts))).toBeLessThan(0.15)
    expect(alignment.lines.every(({ isHeard }) => isHeard)).toBe(true)
  },
  120_000,
)

test('[F13] lines are in order of time, whatever text is given', async () => {
  const texts = [
    'One.',
    '',
    '…',
    'Nothing of this was ever said by anybody here.',
    ...talk.sentences.slice(0, 3).map(({ text }) => text),
  ]
  const { lines } = await alignTo(talk, texts)
  expect(lines.map(({ line }) => line)).toEqual(texts.map((_, i) => i))
  expect(lines.map(({ start }) => start)).toEqual(lines.map(({ start }) => start).sort((a, b) => a - b))
}, 120_000)
