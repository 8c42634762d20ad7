/** Small cardinals. @source English */
export const ONES: ReadonlyMap<string, number> = new Map(
  'zero one two three four five six seven eight nine'.split(' ').map((word, i) => [word, i]),
)

export const TEENS: ReadonlyMap<string, number> = new Map(
  'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
    .split(' ')
    .map((word, i) => [word, i + 10]),
)

export const TENS: ReadonlyMap<string, number> = new Map([
  ...'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ').map((word, i) => [word, 10 * i + 20] as const),
  ['fourty', 40],
  ['ninty', 90],
])

/** Words for nought that are also ordinary words: read as 0 only beside a point or as one side of a tolerance. */
export const NOUGHTS: ReadonlySet<string> = new Set([
  'zero',
  'nought',
  'naught',
  'nil',
  'nothing',
  'oh',
  'o',
  'ought',
  'aught',
  'none',
])

export const SCALES: ReadonlyMap<string, number> = new Map([
  ['thousand', 1e3],
  ['million', 1e6],
  ['billion', 1e9],
])

/** Denominators by their ordinal; singular and plural. */
export const DENOMINATORS: ReadonlyMap<string, number> = new Map(
  (
    [
      ['half', 2],
      ['third', 3],
      ['quarter', 4],
      ['fourth', 4],
      ['fifth', 5],
      ['sixth', 6],
      ['seventh', 7],
      ['eighth', 8],
      ['eigth', 8],
      ['ninth', 9],
      ['tenth', 10],
      ['twelfth', 12],
      ['sixteenth', 16],
      ['twentieth', 20],
      ['thirtysecond', 32],
      ['sixtyfourth', 64],
      ['hundredth', 100],
      ['thousandth', 1000],
      ['thousanth', 1000],
    ] as const
  ).flatMap(([word, value]) => [
    [word, value],
    [word === 'half' ? 'halves' : `${word}s`, value],
  ]),
)

/** Tens that make a denominator together with the ordinal after them: thirty-second, sixty-fourth. */
export const COMPOUND_DENOMINATORS: ReadonlyMap<string, ReadonlyMap<string, number>> = new Map([
  [
    'thirty',
    new Map([
      ['second', 32],
      ['seconds', 32],
    ]),
  ],
  [
    'sixty',
    new Map([
      ['fourth', 64],
      ['fourths', 64],
    ]),
  ],
])

/** Words a number may begin with. */
export const NUMBER_STARTS: ReadonlySet<string> = new Set([
  ...ONES.keys(),
  ...TEENS.keys(),
  ...TENS.keys(),
  ...NOUGHTS,
  'a',
  'an',
  'another',
  'half',
  'quarter',
  'quarters',
  'eighth',
  'sixteenth',
  'point',
  'dot',
  'hundred',
  'thousand',
  'million',
  'dozen',
  'couple',
])
