const ONES = 'one two three four five six seven eight nine'.split(' ')
const TEENS = 'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ')
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ')
const NUMBERS: ReadonlySet<string> = new Set([...ONES, ...TEENS, ...TENS, 'hundred', 'thousand', 'half', 'zero'])
const isTens: ReadonlySet<string> = new Set(TENS)
const isOnes: ReadonlySet<string> = new Set(ONES)
const isGreat: ReadonlySet<string> = new Set(['hundred', 'thousand'])

/** Words that measure and mean little else: a figure before one of them belongs to it. */
export const UNITS: ReadonlySet<string> = new Set(
  'newton newtons millimetres millimeters millimetre millimeter centimetres centimeters metres meters litres liters millilitres milliliters volts amps ohms degrees percent psi bar kilopascals pounds foot-pounds inch-pounds inches minutes seconds hours thou microns'.split(
    ' ',
  ),
)

/** Whether a word is of a number, in words or digits. */
export const isFigure = (word: string): boolean => NUMBERS.has(word) || /^\d/.test(word)
/** Where nothing follows, the figure may go on beyond the run. */
const goesOn = (word: string | undefined): boolean => word === undefined || isFigure(word)

/** "At this point | two clips", no decimal. */
const POINTS_OUT: ReadonlySet<string> = new Set('this that the a which each every some any same'.split(' '))

/**
 * Whether one figure with its unit goes on between two words: "a hundred | and twenty", "twenty | five", "forty | newton metres",
 * "two point | five", "plus or | minus two". No sentence ends there, whatever the captions do.
 *
 * @param before the word before `last`, for "hundred and | twenty"
 * @param after the word after `next`: "a hundred | and then" and "at twenty | point the lamp" go on with no figure
 */
export const isInsideFigure = (
  before: string | undefined,
  last: string,
  next: string,
  after: string | undefined,
): boolean =>
  (isGreat.has(last) && (isOnes.has(next) || isTens.has(next))) ||
  (isGreat.has(last) && next === 'and' && goesOn(after)) ||
  (last === 'and' && before !== undefined && isGreat.has(before) && isFigure(next)) ||
  (isTens.has(last) && isOnes.has(next)) ||
  (last === 'point' && isFigure(next) && !POINTS_OUT.has(before ?? '')) ||
  (isFigure(last) && ((next === 'point' && goesOn(after)) || UNITS.has(next))) ||
  (last === 'newton' && /^met(?:re|er)s?$/.test(next)) ||
  (last === 'or' && before === 'plus' && next === 'minus') ||
  (last === 'minus' && before === 'or' && isFigure(next))
