import type { Mark } from '@/lib/procedure/mark'
import type { Sentence } from '@/lib/procedure/recording'
import type { Quantity } from '@/lib/quantity/quantity'
import { convert, dimensionOf } from '@/lib/quantity/units'
import { eachMarkInTalk } from '../chunks'
import { quote } from '../late'
import { onceFor } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { numbersIn, readingsIn, sentenceAt, wordsAround } from '../said'
import { sample } from '../sample'

const NEAR = 0.006
const areNear = (a: number, b: number): boolean => Math.abs(a - b) <= NEAR * Math.max(Math.abs(a), Math.abs(b), 1e-9)

const valuesOf = ({ low, high, nominal }: Quantity): readonly number[] =>
  [low, high, nominal].filter(value => value !== undefined)

/** One, said without a figure: "a minute", "every month", "yearly"; not "half a turn", nor "a turn and a half". English, no source. */
const ONE =
  /(?<!\b(?:half|(?:quarters?|thirds?|fifths?|eighths?|tenths?|fraction) of) )\b(?:an?|each|every|per|once an?) (?:(?:good|full|whole|bare|solid|single) )?(?:seconds?|minutes?|hours?|days?|weeks?|months?|years?|seasons?|shifts?|turns?|rounds?|drops?|lit(?:re|er)|metre|meter|inch|foot|bar|millimet(?:re|er)|mil|kilo\w*|pint|quart|gallon|volt|degree|per ?cent|percent)\b(?! and an? (?:half|quarter))|\b(?:yearly|annual(?:ly)?|monthly|weekly|daily|hourly)\b/i

/** The number as said, or said in another unit. */
const isSaid = (value: number, unit: string | undefined, words: string): boolean => {
  if (value === 1 && ONE.test(words)) return true
  if (numbersIn(words).some(number => areNear(number, value))) return true
  return readingsIn(words).some(({ quantity }) =>
    valuesOf(quantity).some(said => {
      if (quantity.unit === undefined || unit === undefined) return areNear(said, value)
      const converted = convert(said, quantity.unit, unit)
      return converted.ok && areNear(converted.value, value)
    }),
  )
}

/** Limits that follow from a nominal value and a tolerance that were both said. */
const isDerived = ({ low, high, nominal, unit }: Quantity, value: number, words: string): boolean => {
  if (low === undefined || high === undefined) return false
  const middle = nominal ?? (low + high) / 2
  const half = (high - low) / 2
  const isTolerance = isSaid(half, unit, words) || isSaid(Math.round((half / middle) * 1000) / 10, undefined, words)
  return value !== middle && isSaid(middle, unit, words) && isTolerance
}

const wrongIn = (mark: Mark, words: string): number | undefined => {
  const { quantity } = mark
  if (quantity === undefined) return undefined
  return valuesOf(quantity).find(
    value => value !== 0 && !isSaid(value, quantity.unit, words) && !isDerived(quantity, value, words),
  )
}

/** A value from plate or manual needs nobody to say it; but where another was said, one of the two is wrong. */
const otherThanSaid = (mark: Mark): readonly Found[] => {
  const { quantity, said } = mark
  const kind = dimensionOf(quantity?.unit ?? '')
  if (quantity === undefined || kind === undefined) return []
  const told = readingsIn(said).filter(reading => dimensionOf(reading.quantity.unit ?? '') === kind)
  if (told.length === 0 || valuesOf(quantity).some(value => isSaid(value, quantity.unit, said))) return []
  return [
    {
      place: atMark(mark),
      level: 'consider',
      message: `${quote(mark)} has ${valuesOf(quantity).join(' to ')}, and the talk says "${told[0]?.text}". Look it up again and keep the right one.`,
    },
  ]
}

const FIGURES = /(?<![\p{L}\d./-])\d+(?:[.,]\d+)?(?![\p{L}\d/-])/gu

const strangeIn = (text: string, words: string): string | undefined =>
  (text.match(FIGURES) ?? []).find(figure => !isSaid(Number(figure.replace(',', '.')), undefined, words))

/** Grades by which stuff is bought: the list names them, the talk says "light oil". */
const GRADE = /\b(?:ISO(?: VG)?|VG|SAE|NLGI|DOT|API|GL|ATF|FFP|HLP|class|grade|filter class)[ -]?\d+\w*(?:-\d+)?\b/gi
/** Which spanner it takes is said once and holds from then on. */
const TOOL_SIZE =
  /(?<![\d./-])\d+(?:[./]\d+)?[ -]?(?:mm|mil|in|inch)\b[ -](?=(?:[a-z-]+ ){0,2}(?:spanners?|wrench(?:es)?|sockets?|keys?|hex|allen|drivers?|screwdrivers?|bits?|drills?|punch|reamer|brush)\b)/gi
/** Whether a tool's size is said at all: "the ten mil socket". Unsaid, it was looked up. */
const saysSize = (words: string): boolean =>
  [...words.matchAll(SIZED)].some(([, size = '']) => numbersIn(size).length > 0)
const SIZED =
  /\b((?:[\w./-]+ ){1,4})(?:spanners?|wrench(?:es)?|sockets?|keys?|hex|allen|drivers?|screwdrivers?|bits?|drills?)\b/gi
const allOf = onceFor((sentences: readonly Sentence[]): string => sentences.map(({ text }) => text).join(' '))

const checkMark = (mark: Mark, sentences: readonly Sentence[]): readonly Found[] => {
  if (sentences.length === 0 || sentenceAt(sentences, mark.start) >= sentences.length) return []
  if (mark.kind !== 'spec') {
    const sizes = mark.text.match(TOOL_SIZE) ?? []
    const figure =
      strangeIn(
        mark.text.replace(TOOL_SIZE, '').replace(GRADE, ''),
        `${mark.said} ${wordsAround(sentences, mark, 2, 2)}`,
      ) ??
      (sizes.length > 0 && saysSize(`${mark.said} ${wordsAround(sentences, mark, 2, 2)}`)
        ? strangeIn(sizes.join(' '), allOf(sentences))
        : undefined)
    if (figure === undefined) return []
    return [
      {
        place: atMark(mark),
        level: 'consider',
        message: `${quote(mark)} has the number ${figure}, which nobody says there. Listen again.`,
      },
    ]
  }
  if (mark.quantity === undefined) return []
  if ((mark.basis ?? 'spoken') !== 'spoken') return otherThanSaid(mark)
  const value = wrongIn(mark, `${mark.said} ${wordsAround(sentences, mark, 2, 2)}`)
  if (value === undefined) return []
  return [
    {
      place: atMark(mark),
      message: `${quote(mark)} says ${value}, which nobody says there. Listen again, or note the plate or manual it is from.`,
    },
  ]
}

/** A number that is on the sheet and not in the talk. */
export const numberNotSaid: Rule = {
  id: 'number-not-said',
  level: 'fix',
  about: 'A mark has a number that was not said.',
  why: 'A slip of the keyboard turns 14 into 41, and the sheet looks as sure as before.',
  source: 'common practice, no source',
  trips: sample([['spec', 'cover screw torque', { quantity: { nominal: 41, unit: 'N.m' } }]], {
    talk: ['Torque the cover screws to 14 newton metres.'],
  }),
  passes: sample([['spec', 'cover screw torque', { quantity: { nominal: 14, unit: 'N.m' } }]], {
    talk: ['Torque the cover screws to fourteen newton metres.'],
  }),
  check: eachMarkInTalk(['spec', 'step', 'check'], checkMark),
}
