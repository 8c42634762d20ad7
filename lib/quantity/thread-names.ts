import { readNumeral } from './numeral'
import type { Token } from './tokens'

/** Figures that name a thing and are not a limit. */
export type Designation = {
  readonly is: 'metric thread' | 'unified thread' | 'grade' | 'oil' | 'price' | 'clock' | 'part' | 'size'
  /** Index after its last token. */
  readonly to: number
  /** Threads: nominal diameter (mm or inch) and pitch (mm) or threads an inch, as far as said. */
  readonly diameter?: number
  readonly pitch?: number
  /** Property class or grade as written, such as `8.8` or `5`. */
  readonly grade?: string
}

const PITCHES = new Set([
  0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6,
])

/** Threads an inch in the unified coarse, fine and extra-fine series. @source ASME B1.1, from memory */
const THREADS = new Set([4, 4.5, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 24, 27, 28, 32, 36, 40, 44, 48])

const INCH_DIAMETERS = new Set([1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 9 / 16, 5 / 8, 3 / 4, 7 / 8, 1])

const NUMBER_SIZES = new Set([2, 4, 5, 6, 8, 10, 12])

export const text = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? ''

export const metricThread = (tokens: readonly Token[], i: number): Designation | undefined => {
  if (text(tokens, i) !== 'm') return undefined
  const token = tokens[i + 1]
  const isWritten = token?.is === 'figure' && token.isGlued
  if (!isWritten && tokens[i - 1]?.is === 'figure') return undefined
  const spoken = isWritten ? undefined : readNumeral(tokens, i + 1, { joinsAnd: false })
  const diameter = isWritten ? token?.value : spoken?.value
  const after = isWritten ? i + 2 : (spoken?.to ?? 0)
  if (diameter === undefined || diameter < 1 || diameter > 100) return undefined
  const by = text(tokens, after)
  if (by === 'x' || by === '×' || by === 'by' || by === '*') {
    const pitch = readNumeral(tokens, after + 1)
    if (pitch !== undefined) {
      const isPitch = PITCHES.has(pitch.value)
      // A length may stand there too: M8 x 40.
      const second = text(tokens, pitch.to)
      const length = isPitch && ['x', '×', 'by'].includes(second) ? readNumeral(tokens, pitch.to + 1) : undefined
      return {
        is: 'metric thread',
        to: skipMillimetres(tokens, length?.to ?? pitch.to),
        diameter,
        ...(isPitch ? { pitch: pitch.value } : {}),
      }
    }
  }
  return { is: 'metric thread', to: after, diameter }
}

const skipMillimetres = (tokens: readonly Token[], i: number): number =>
  ['mm', 'millimeter', 'millimetre', 'millimeters', 'millimetres', 'mil'].includes(text(tokens, i)) ? i + 1 : i

/** `3/8-16`, `1/4-20`, `10-32`, `five sixteenths eighteen`, `quarter twenty`. */
export const unifiedThread = (tokens: readonly Token[], i: number): Designation | undefined => {
  const size = readNumeral(tokens, i, { joinsAnd: false })
  if (size === undefined) return undefined
  let at = size.to
  const isHyphened = text(tokens, at) === '-' && tokens[at]?.isGlued === true
  if (isHyphened) at++
  else if (text(tokens, at) === 'by' || text(tokens, at) === 'inch') at++
  const isFraction = size.denominator !== undefined && INCH_DIAMETERS.has(size.value)
  const isNumber = isHyphened && NUMBER_SIZES.has(size.value) && size.hasFigures === true
  if (!isFraction && !isNumber) return undefined
  const pitch = readNumeral(tokens, at, { joinsAnd: false })
  if (pitch === undefined || !THREADS.has(pitch.value) || pitch.denominator !== undefined || pitch.value < 8)
    return undefined
  const next = text(tokens, pitch.to)
  if (isNumber) {
    const isNamed = [
      'screw',
      'screws',
      'bolt',
      'bolts',
      'tap',
      'thread',
      'threads',
      'unf',
      'unc',
      'machine',
      'nut',
      'nuts',
      'stud',
    ].includes(next)
    if (!isNamed || pitch.value < 24) return undefined
  } else if (
    [
      'percent',
      '%',
      'mm',
      'psi',
      'foot',
      'inch',
      'of',
      'degrees',
      'to',
      '/',
      'pounds',
      'thou',
      'turns',
      'newton',
      'ounces',
      'volts',
      'minutes',
      'hours',
    ].includes(next)
  )
    return undefined
  return {
    is: 'unified thread',
    to: ['unc', 'unf', 'unef'].includes(next) ? pitch.to + 1 : pitch.to,
    diameter: isNumber ? 0.06 + 0.013 * size.value : size.value,
    pitch: pitch.value,
  }
}

/** Property classes and grades: `8.8`, `class 10.9`, `grade 5`, `grade eight`. */
export const grade = (tokens: readonly Token[], i: number): Designation | undefined => {
  const word = text(tokens, i)
  if (word === 'grade' || word === 'class') {
    const number = readNumeral(tokens, i + 1)
    if (number === undefined) return undefined
    return { is: 'grade', to: number.to, grade: String(number.value) }
  }
  const number =
    tokens[i]?.is === 'figure' || word === 'eight' || word === 'ten' || word === 'twelve'
      ? readNumeral(tokens, i)
      : undefined
  if (number === undefined || ![8.8, 10.9, 12.9].includes(number.value)) return undefined
  const next = text(tokens, number.to)
  const isNamed = [
    'bolt',
    'bolts',
    'screw',
    'screws',
    'stud',
    'studs',
    'cap',
    'fastener',
    'fasteners',
    'class',
    'hardware',
    'grade',
  ].includes(next)
  // "8.8s": bolts of the class.
  if (next === 's' && tokens[number.to]?.isGlued === true)
    return { is: 'grade', to: number.to + 1, grade: String(number.value) }
  return isNamed ? { is: 'grade', to: number.to, grade: String(number.value) } : undefined
}
