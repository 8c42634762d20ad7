import { wordSet } from '@/lib/trade/list'
import { isFigure, UNITS } from './figure'

/** More words that measure, each of something else now and then: of use only beside the words of a limit. */
const MEASURES = wordSet(
  'mil mils mm cm thousandths hundredths tenths thousandth hundredth tenth turn turns bar amp amps volt ohm kilos kilo grams gram inch foot feet metre meter litre liter pound kg hour minute second day days week weeks month months year years half quarter third eighth sixteenth eighths sixteenths revs rpm fahrenheit celsius centigrade degree cent strokes clicks times',
)
const isMeasure = (word: string | undefined): boolean =>
  word !== undefined && (isFigure(word) || UNITS.has(word) || MEASURES.has(word))

const COMPARED = wordSet(
  'more less lower higher below above under over longer shorter further farther closer nearer bigger smaller wider narrower thicker thinner deeper hotter colder cooler warmer faster slower tighter looser beyond past',
)
/** Compares what follows, so that nothing ends after it before a figure. */
const COMPARES = wordSet('than exceed exceeds exceeding beyond minus roughly approximately about')
/** Bounds what follows where one of `BOUNDED` stands before. */
const BOUNDS = wordSet('over under above below past')
const BOUNDED = wordSet('be not nothing anything never always anywhere stay stays keep kept well just')
const NOTHING = wordSet('nothing anything')
const PARTS = wordSet('half quarter third eighth sixteenth tenth')
const FINE_PARTS = wordSet(
  'eighths sixteenths tenths hundredths thousandths quarters thirds halves sixteenth thousandth',
)
const WAYS = wordSet('way side direction')
const UTMOST = wordSet('most least')
const SINGLE = wordSet('one two three four five six seven eight nine')
const TENFOLD = wordSet('twenty thirty forty fifty sixty seventy eighty ninety')

/** Words from a place on: `at(0)` is the last before it, `at(1)` the first after. */
type At = (offset: number) => string

/** Whether a figure begins there: `24`, `a hundred`, `half a turn`, `a tenth`. */
const beginsFigure = (at: At, i: number): boolean =>
  isFigure(at(i)) || PARTS.has(at(i)) || ((at(i) === 'a' || at(i) === 'an') && isMeasureOrHundred(at(i + 1)))

const isMeasureOrHundred = (word: string): boolean => isMeasure(word) || word === 'hundred' || word === 'thousand'

/** `give or take | a tenth`, `nothing | under five`, `at most | 24 amps`, `it mustn't be over | 5`. */
const isBoundBefore = (at: At): boolean => {
  if (NOTHING.has(at(0))) return BOUNDS.has(at(1)) && beginsFigure(at, 2)
  if (!beginsFigure(at, 1)) return false
  if (COMPARES.has(at(0))) return true
  if (BOUNDS.has(at(0))) return BOUNDED.has(at(-1)) || at(-1).endsWith("n't")
  if (UTMOST.has(at(0))) return at(-1) === 'at' && !isMeasure(at(-2))
  return at(0) === 'take' && at(-1) === 'or' && at(-2) === 'give'
}

/** `25 | or lower`, `a sixteenth | at the least`, `three turns | and no further`, `half a degree | either way`. */
const isBoundAfter = (at: At): boolean => {
  if (!isMeasure(at(0))) return false
  const [next, second, third] = [at(1), at(2), at(3)]
  if (next === 'or') return COMPARED.has(second) || second === 'so' || second === 'better'
  if (next === 'at')
    return (
      (UTMOST.has(second) && !beginsFigure(at, 3)) || (second === 'the' && UTMOST.has(third) && !beginsFigure(at, 4))
    )
  if (next === 'either' || next === 'each') return WAYS.has(second)
  if (next === 'and') return (second === 'no' || second === 'not') && COMPARED.has(third)
  return (next === 'no' || next === 'not') && COMPARED.has(second) && third !== 'than'
}

/** `one | eighty five`, `five | eighths`, `one | and a half`, `half | an hour`, `12 | per cent`, `14 | up to 17`. */
const isFigureParted = (at: At): boolean => {
  const [last, next, second, third] = [at(0), at(1), at(2), at(3)]
  if (last === 'half') return (next === 'a' || next === 'an') && isMeasure(second)
  if (!isFigure(last)) return false
  if (SINGLE.has(last) && TENFOLD.has(next)) return true
  if (FINE_PARTS.has(next)) return true
  if (next === 'and') return second === 'a' && PARTS.has(third)
  if (next === 'per') return second === 'cent'
  if (next === 'to') return isFigure(second)
  return next === 'up' && second === 'to' && isFigure(third)
}

/** The same for a figure and what bounds it from before: not even a comma stands there. `at` as in `isInsideLimit`. */
export const isBoundToFigure = (at: (offset: number) => string): boolean => isFigureParted(at) || isBoundBefore(at)

/**
 * Whether a limit goes on between two words: a figure parted in itself, or from the words that bound it.
 *
 * @param at words by their offset from the place: 0 the last before it, 1 the first after; empty beyond the run
 */
export const isInsideLimit = (at: (offset: number) => string): boolean => isBoundToFigure(at) || isBoundAfter(at)
