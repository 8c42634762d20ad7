import { readDesignation } from './designations'
import type { Designation } from './thread-names'
import { type Token, toTokens } from './tokens'

/** A thread designation read from talk or writing, as far as it was said. */
export type Fastener = {
  readonly series: 'metric' | 'unified'
  /** For people: `M8 × 1.25`, `3/8-16`. */
  readonly size: string
  /** Nominal diameter, mm. */
  readonly diameter: number
  /** Pitch, mm; the coarse series where none was said. */
  readonly pitch: number
  readonly isPitchSaid: boolean
  /** Property class of ISO 898-1 (`8.8`) or grade of SAE J429 (`5`). */
  readonly grade?: string
  /** The words; offsets [at, to) into the text. */
  readonly text: string
  readonly at: number
  readonly to: number
}

const INCH = 25.4

/** Coarse pitch by diameter, mm. @source ISO 261/262 coarse series, from memory */
const COARSE: Readonly<Record<string, number>> = {
  '1.6': 0.35,
  '2': 0.4,
  '2.5': 0.45,
  '3': 0.5,
  '3.5': 0.6,
  '4': 0.7,
  '5': 0.8,
  '6': 1,
  '7': 1,
  '8': 1.25,
  '10': 1.5,
  '12': 1.75,
  '14': 2,
  '16': 2,
  '18': 2.5,
  '20': 2.5,
  '22': 2.5,
  '24': 3,
  '27': 3,
  '30': 3.5,
  '33': 3.5,
  '36': 4,
  '39': 4,
}

/** How far from its thread a class may be said, in tokens. */
const GRADE_REACH = 6

const FRACTION_SIZES: readonly (readonly [number, string])[] = [
  1 / 8,
  3 / 16,
  1 / 4,
  5 / 16,
  3 / 8,
  7 / 16,
  1 / 2,
  9 / 16,
  5 / 8,
  3 / 4,
  7 / 8,
  1,
].map(size => {
  for (const bottom of [1, 2, 4, 8, 16])
    if (Number.isInteger(size * bottom)) return [size, bottom === 1 ? '1' : `${size * bottom}/${bottom}`]
  return [size, String(size)]
})

const toFastener = (
  text: string,
  first: Token,
  last: Token,
  designation: Designation,
  grade: string | undefined,
): Fastener | undefined => {
  const { diameter } = designation
  if (diameter === undefined) return undefined
  const common = {
    text: text.slice(first.at, last.to),
    at: first.at,
    to: last.to,
    ...(grade === undefined ? {} : { grade }),
  }
  if (designation.is === 'metric thread') {
    const pitch = designation.pitch ?? COARSE[String(diameter)]
    if (pitch === undefined || pitch >= diameter) return undefined
    return {
      series: 'metric',
      size: designation.pitch === undefined ? `M${diameter}` : `M${diameter} × ${pitch}`,
      diameter,
      pitch,
      isPitchSaid: designation.pitch !== undefined,
      ...common,
    }
  }
  if (designation.pitch === undefined) return undefined
  const name = FRACTION_SIZES.find(([size]) => size === diameter)?.[1] ?? `No. ${Math.round((diameter - 0.06) / 0.013)}`
  return {
    series: 'unified',
    size: `${name}-${designation.pitch}`,
    diameter: diameter * INCH,
    pitch: INCH / designation.pitch,
    isPitchSaid: true,
    ...common,
  }
}

type Found = { readonly designation: Designation; readonly from: number }

/**
 * Every thread named in a text, with its property class or grade where one is named near it.
 *
 * @returns in order; never throws
 */
export const readFasteners = (text: string): readonly Fastener[] => {
  const tokens = toTokens(text)
  const found: Found[] = []
  for (let i = 0; i < tokens.length; ) {
    const designation = readDesignation(tokens, i)
    if (designation !== undefined) found.push({ designation, from: i })
    i = designation?.to ?? i + 1
  }
  return found.flatMap(({ designation, from }) => {
    const [first, last] = [tokens[from], tokens[designation.to - 1]]
    if (!designation.is.endsWith('thread') || first === undefined || last === undefined) return []
    const grade = found.find(
      other =>
        other.designation.is === 'grade' &&
        other.from - designation.to <= GRADE_REACH &&
        from - other.designation.to <= GRADE_REACH,
    )
    const fastener = toFastener(text, first, last, designation, grade?.designation.grade)
    return fastener === undefined ? [] : [fastener]
  })
}

/**
 * Stress area of a thread, mm².
 *
 * @source ISO 898-1: As = π/4 (d − 0.9382 P)²; ASME B1.1: As = π/4 (d − 0.9743/n)² (both from memory; checked in tests against
 *   published tables)
 */
export const stressArea = ({ series, diameter, pitch }: Pick<Fastener, 'series' | 'diameter' | 'pitch'>): number =>
  (Math.PI / 4) * (diameter - (series === 'metric' ? 0.9382 : 0.9743) * pitch) ** 2

/** Proof stress by property class, MPa, up to and above a diameter in mm. @source ISO 898-1, as tabled at mem50212.com and from memory (8.8 to M16: 580) */
const CLASSES: Readonly<Record<string, readonly [upTo: number, at: number, above: number]>> = {
  '4.6': [0, 225, 225],
  '4.8': [0, 310, 310],
  '5.8': [0, 380, 380],
  '8.8': [16, 580, 600],
  '9.8': [0, 650, 650],
  '10.9': [0, 830, 830],
  '12.9': [0, 970, 970],
}
const KSI = 6.894757293168361
/** Proof stress by grade, ksi, up to and above a diameter in inches. @source SAE J429, as tabled at china-bolts.com */
const GRADES: Readonly<Record<string, readonly [upTo: number, at: number, above: number]>> = {
  '1': [0, 33, 33],
  '2': [0.75, 55, 33],
  '5': [1, 85, 74],
  '8': [0, 120, 120],
}

/**
 * Proof stress of a fastener, MPa.
 *
 * @param grade as read, such as `8.8` or `5`
 * @returns undefined for a class or grade the tables do not hold
 */
export const proofStress = (
  { series, diameter }: Pick<Fastener, 'series' | 'diameter'>,
  grade: string,
): number | undefined => {
  const row = series === 'metric' ? CLASSES[grade] : GRADES[grade]
  if (row === undefined) return undefined
  const [upTo, at, above] = row
  const size = series === 'metric' ? diameter : diameter / INCH
  const stress = upTo === 0 || size <= upTo + 1e-9 ? at : above
  return series === 'metric' ? stress : stress * KSI
}

/** Classes or grades of a series from weakest to strongest. */
export const gradesOf = (series: Fastener['series']): readonly string[] =>
  series === 'metric' ? ['4.6', '8.8', '10.9', '12.9'] : ['2', '5', '8']
