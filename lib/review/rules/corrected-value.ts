import type { Mark } from '@/lib/procedure/mark'
import type { Sentence } from '@/lib/procedure/recording'
import { isComparable } from '@/lib/quantity/units'
import { eachMarkInTalk } from '../chunks'
import { quote } from '../late'
import { atMark, type Found, type Remedy, type Rule } from '../rule'
import { numbersIn, readingsIn, wordsAround } from '../said'
import { sample } from '../sample'
import { contentStems, stemSet } from '../words'

const CUE =
  /\b(?:sorry|no[,—-]? |correct\w*|scratch that|strike|i mean|i meant|make that|wait|rather|actually|my mistake|i misspoke|not \d|take that back)\b/i

const remedyFor = (mark: Mark, quantity: NonNullable<Mark['quantity']>): Remedy => ({
  label: 'Take the corrected value',
  edits: [{ do: 'change-mark', id: mark.id, to: { quantity } }],
})

/** A slip of the tongue: near in size, or the point is lost. */
const isSlip = (from: number, to: number): boolean => {
  const ratio = Math.max(from, to) / Math.max(1e-9, Math.min(from, to))
  return ratio <= 4 || Math.abs(ratio - 10) < 0.1 || Math.abs(ratio - 100) < 1
}

const sharesName = (mark: Mark, words: string): boolean => {
  const stems = stemSet(words)
  return contentStems(mark.text).some(stem => stems.has(stem))
}

const checkMark = (mark: Mark, sentences: readonly Sentence[]): readonly Found[] => {
  if (sentences.length === 0) return []
  const { quantity } = mark
  const value = quantity?.nominal ?? quantity?.low ?? quantity?.high
  if (mark.kind !== 'spec' || value === undefined) return []
  const words = wordsAround(sentences, mark, 0, 1)
  if (!CUE.test(words)) return []
  const own = wordsAround(sentences, mark, 0, 0)
  for (const reading of readingsIn(words)) {
    const withdrawn = reading.notes.filter(({ kind }) => kind === 'withdrawn').flatMap(({ text }) => numbersIn(text))
    const now = [reading.quantity.nominal, reading.quantity.low, reading.quantity.high]
    const isAlike =
      isComparable(reading.quantity.unit ?? '', quantity?.unit ?? '') &&
      (own.includes(reading.text) || sharesName(mark, words))
    const isNear = now.some(number => number !== undefined && isSlip(value, number))
    if (isAlike && isNear && withdrawn.includes(value) && !now.includes(value))
      return [
        {
          place: atMark(mark),
          message: `${quote(mark)} still has ${value}, which the speaker takes back ("${reading.text}"). Take the corrected value.`,
          remedy: remedyFor(mark, reading.quantity),
        },
      ]
  }
  return []
}

/** The slip was put right in the talk, not on the sheet. */
export const correctedValue: Rule = {
  id: 'corrected-value',
  level: 'stop',
  about: 'The speaker corrects a value, and the mark still has the old one.',
  why: 'The sheet would pass on the very slip that was put right.',
  source: 'common practice, no source',
  trips: sample([['spec', 'hub nut torque', { quantity: { nominal: 40, unit: 'N.m' } }]], {
    talk: ['Torque the hub nut to 40, no, sorry, 30 newton metres.'],
  }),
  passes: sample([['spec', 'hub nut torque', { quantity: { nominal: 30, unit: 'N.m' } }]], {
    talk: ['Torque the hub nut to 40, no, sorry, 30 newton metres.'],
  }),
  check: eachMarkInTalk(['spec'], checkMark),
}
