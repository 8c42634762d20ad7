import type { Mark } from '@/lib/procedure/mark'
import type { Sentence } from '@/lib/procedure/recording'
import type { Reading } from '@/lib/quantity/read'
import { isComparable } from '@/lib/quantity/units'
import { FASTENERS } from '@/lib/trade/pairs'
import { eachMarkInTalk } from '../chunks'
import { quote } from '../late'
import { atMark, type Found, type Remedy, type Rule } from '../rule'
import { numbersIn, readingsIn, sentenceAt, wordsAround } from '../said'
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

/** How people take back what they said before. Common speech, no source. */
const TAKES_BACK =
  /\b(?:tell a lie|hang on|hold on|scrap that|scratch that|strike that|forget that|correction|(?:my|our) (?:mistake|bad|error)|i was wrong|(?:that's|that was|that is|it's|i got (?:that|it)|had (?:that|it)) (?:wrong|the wrong|not right|for the|the other)|wrong (?:one|number|figure|value|page|line|column)|misread|misspoke|mis-spoke|misspoken|slip of the tongue|let me correct|correct (?:that|myself)|i (?:meant|should have said|mean)|take (?:that|it) back|make that|oops|whoops|sorry|no,? (?:wait|not|it's|that's|sorry|hang)|not \d[\d.]* (?:but|it's)|rather|actually)\b/i
/** Sentences after a mark in which people notice their slip. */
const SOON = 4

/** Words that go with many limits. */
const GENERAL = new Set(
  'torque pressure gap limit temperature time level value tension length clearance voltage reading set'.split(' '),
)
const namesIt = (mark: Mark, words: string): boolean => {
  const stems = stemSet(words)
  const own = contentStems(mark.text).filter(stem => !GENERAL.has(stem))
  const telling = own.filter(stem => !FASTENERS.has(stem))
  return (telling.length > 0 ? telling : own).some(stem => stems.has(stem))
}

/** "Those two screws", "it's": said at once, of what was said just before; "the spindle bolts" are others. */
const pointsBack = (mark: Mark, words: string, i: number): boolean => {
  if (i > 1) return false
  const own = contentStems(mark.text).find(stem => FASTENERS.has(stem))
  const named = /\b([a-z]+) (?:screw|bolt|nut|stud|clamp|clip|pin)s?\b/i.exec(words)?.[1]?.toLowerCase()
  if (named === undefined) return i === 0 && /\b(?:it|that|those|they|this|them)(?:'s|'re)?\b/i.test(words)
  return own !== undefined && /^(?:those|these|the|two|three|four|six|eight|both|all|each|them|that)$/.test(named)
}

/** The value that a sentence soon after the mark gives for the same thing instead. */
const takenBackLater = (mark: Mark, sentences: readonly Sentence[]): Reading | undefined => {
  const { quantity } = mark
  if (quantity?.unit === undefined) return undefined
  const own = [quantity.low, quantity.high, quantity.nominal].filter(value => value !== undefined)
  const from = sentenceAt(sentences, mark.end)
  for (const [i, { text, start }] of sentences.slice(from, from + SOON).entries()) {
    if (start < mark.end || !TAKES_BACK.test(text)) continue
    if (!namesIt(mark, text) && !pointsBack(mark, text, i)) continue
    const other = readingsIn(text).find(reading => {
      const values = [reading.quantity.low, reading.quantity.high, reading.quantity.nominal]
      return (
        isComparable(reading.quantity.unit ?? '', quantity.unit ?? '') &&
        !values.some(value => value !== undefined && own.includes(value)) &&
        values.some(value => value !== undefined && own.some(mine => isSlip(mine, value)))
      )
    })
    if (other !== undefined) return other
  }
  return undefined
}

const checkMark = (mark: Mark, sentences: readonly Sentence[]): readonly Found[] => {
  if (sentences.length === 0) return []
  const { quantity } = mark
  const value = quantity?.nominal ?? quantity?.low ?? quantity?.high
  if (mark.kind !== 'spec' || value === undefined) return []
  const words = wordsAround(sentences, mark, 0, 1)
  const later = takenBackLater(mark, sentences)
  if (later !== undefined)
    return [
      {
        place: atMark(mark),
        message: `${quote(mark)} still has ${value}, which the speaker takes back afterwards ("${later.text}"). Take the corrected value.`,
        remedy: remedyFor(mark, later.quantity),
      },
    ]
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
