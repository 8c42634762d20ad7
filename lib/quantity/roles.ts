import { type Trie, trieOf } from './trie'

/** What a word or phrase does to the number beside it. */
export type Role =
  | 'plus-minus'
  | 'plus'
  | 'minus'
  | 'between'
  | 'from'
  | 'up-to'
  | 'within'
  | 'about'
  | 'filler'
  | 'or-so'
  | 'max'
  | 'min'
  | 'at-most'
  | 'at-least'
  | 'max-after'
  | 'min-after'
  | 'more'
  | 'less'
  | 'nearly'
  | 'either-way'
  | 'negation'
  | 'correction'
  | 'weak-correction'
  | 'clarification'
  | 'every'
  | 'once-a'
  | 'twice-a'
  | 'interval'
  | 'range'

/**
 * Words and phrases of limits. Rows may hold a phrase only once; the longest match wins.
 *
 * @source English; common practice, no source
 */
const ROWS: readonly (readonly [Role, string])[] = [
  [
    'plus-minus',
    'plus or minus, plus minus, plus and minus, plus slash minus, plus stroke minus, give or take, give and take, minus or plus, ±, + / -, + -, + or -, or minus, +/ -',
  ],
  ['plus', 'plus, +'],
  ['minus', 'minus, negative'],
  ['between', 'between, in between, anywhere between, somewhere between, anything between'],
  ['from', 'from, anywhere from, somewhere from, anything from'],
  ['up-to', 'up to, upto, as much as, as many as, as high as, as long as, as far as'],
  ['within', 'within, to within, inside of, inside, plus or minus within'],
  [
    'about',
    'about, around, roughly, approximately, approx, approx ., right around, right about, somewhere around, somewhere about, somewhere near, something like, like, say, maybe, close to, more like, nearer, nearly, almost, in the neighborhood of, in the neighbourhood of, in the region of, in the order of, of the order of, circa, call it, call that, ~, ≈, perhaps, probably, some, just about, just on, give it about, on the order of, approximately about, ballpark',
  ],
  [
    'filler',
    'only, just, exactly, precisely, a good, a solid, even, an even, a clean, bang on, dead on, a further, another, an extra, an additional, a full, the full, right on',
  ],
  [
    'or-so',
    'or so, ish, or thereabouts, thereabouts, more or less, - ish, odd, or something like that, or something, roughly speaking',
  ],
  ['max', 'max, maximum, upper limit, top limit, ceiling'],
  ['min', 'minimum, lower limit, bottom limit, mini mum'],
  [
    'at-most',
    'at or under, at or below, at or less than, equal to or less than, less than or equal to, at or beneath, at most, at the most, at the very most, at the outside, not to exceed, not exceeding, to a maximum of, max of, maximum of, a maximum of, the most, keep it to, keep them to, keep to, cap it at, cap them at, cap at, capped at, cap that at, cap the pressure at, limit it to, limit them to, limited to, limit to, limit yourself to, limit that to, tops out at, top out at, maxes out at, max out at, to a limit of, a limit of, with a limit of, no higher, restricted to, restrict it to, hold it to',
  ],
  [
    'at-least',
    'not before, never before, no sooner than, not sooner than, no earlier than, not earlier than, at or above, at or over, at or more than, greater than or equal to, more than or equal to, equal to or greater than, at least, at the least, at the minimum, at the bare minimum, at the very least, at very least, at a minimum, a minimum of, minimum of, min of, not less, no less, as little as',
  ],
  [
    'max-after',
    'or less, or under, or below, or lower, or shorter, or fewer, or smaller, or thinner, or cooler, or anything less, or anything shorter, or anything thinner, or anything smaller, or anything lower, or anything narrower, or anything under, or anything below, and below, and under, tops, and no more, and not more, and no further, at the outside, at the top end, and down, is the limit, is the max, is the maximum, is the most, is the top, is the ceiling, is as far as, no more, not more, not any more, not over, max on that, limit, and not one more, absolute tops, is your limit, is your max, is the upper limit, is as high as, as most, as maximum, as a maximum, as max, is maximum, are maximum, is max, are max, is the highest, is the ceiling on it, maximum allowed, max allowed, at maximum, at max',
  ],
  [
    'min-after',
    'or more, or anything more, or anything over, or anything above, or anything longer, or anything bigger, or anything higher, or anything thicker, or better, or above, or over, or greater, or longer, or higher, or deeper, or thicker, and up, and over, and above, and upwards, upwards, or upwards, is the minimum, is the least, is the floor, no less, not less, not any less, or bigger, is the lower limit, is the lowest, is your minimum, or hotter, is the bare minimum, as least, as minimum, as a minimum, is minimum, are minimum, or a bit more, or a little more, or a touch more, or a bit over, or a bit better, at minimum',
  ],
  [
    'more',
    'more than, greater than, over, above, beyond, past, exceed, exceeds, surpass, surpasses, exceeding, higher than, deeper than, longer than, thicker than, bigger than, wider than, hotter than, heavier than, faster than, farther than, further than, larger than, taller than, warmer than, louder than, looser than, upwards of, upward of, north of, in excess of, better than, >, ≥, > =, tighter than, any more than, any higher than, any further than, goes over, go over, gone over, more then, anything over, anything above, anything past, anything more than, anything beyond, over than, rougher than, stronger than, sharper than, broader than, coarser than, stiffer than, later than',
  ],
  [
    'less',
    'less than, under, below, fewer than, lower than, shorter than, thinner than, smaller than, narrower than, cooler than, colder than, slower than, lighter than, shallower than, south of, beneath, <, ≤, < =, any less than, any lower than, less then, underneath, inside of, anything under, anything below, anything less than, short of, shy of, weaker than, nothing like, down under, closer than, sooner than, earlier than, finer than',
  ],
  [
    'nearly',
    'just over, just under, just above, just below, just past, just shy of, just short of, a little over, a little under, a bit over, a bit under, slightly over, slightly under, slightly more than, slightly less than, a hair over, a hair under, a touch over, a touch under, a shade over, a shade under, a bit more than, a bit less than, a little more than, a little less than, little over, little under, well over, a bit past, a little past, just a hair over, not far off, a tad over, a tad under',
  ],
  [
    'either-way',
    'either way, either side, either side of, each way, both ways, each side of, of tolerance, tolerance, on either side, up or down, either direction, one way or the other, each side, of leeway, leeway, of slop, of wiggle room',
  ],
  [
    'negation',
    "no, not, never, cannot, can't, don't, doesn't, shouldn't, mustn't, won't, wouldn't, isn't, aren't, nothing, without, nowhere, nobody, neither, nor, dont, cant, shouldnt, isnt, ain't, didn't, hasn't, haven't, wasn't, needn't, couldn't, none, wouldnt, mustnt, doesnt, wont, avoid, nae, cannae, dinnae",
  ],
  [
    'correction',
    "sorry, pardon, what'd i say, what did i say, let me think, dash it, wait till i think, wait now, read that again, listen to me, do i mean, wait, hang on, hold on, scratch that, strike that, correction, i mean, i meant, make that, make it, or rather, my mistake, my bad, excuse me, pardon me, i beg your pardon, beg your pardon, beg pardon, forgive me, i tell a lie, tell a lie, i'm lying, i lie, what am i saying, i correct myself, let me correct that, let me correct myself, oops, whoops, nope, no no, no wait, no sorry, no hang on, i misspoke, misspoke, i stand corrected, that's wrong, that is wrong, i should say, my apologies, apologies, back up, let me start over, let me rephrase, check that, hold up, uh no, er no, um no, no i'm lying, i said that wrong, rather, wait a minute, wait a second, hold on a second, hang on a second, hang on a minute, one second, no it's, no its, i take that back, take that back, i'm wrong, wrong, not that, forget that, ignore that, excuse my math, ah no, oh no, ah wait, oh wait, nah, get away, get out of it, get away with you, give over, hear me out, hear me now, hold your horses, listen at me, what am i talking about, what am i on about, i beg its pardon",
  ],
  ['weak-correction', 'actually, well actually, no actually, or actually'],
  [
    'clarification',
    "that is, that's to say, that is to say, meaning, as in, in other words, i'm talking, we're talking, talking, and that's, i do mean, and i mean, which is, and that is, and those are, those are, that'd be",
  ],
  ['every', 'every, each and every'],
  [
    'once-a',
    'once a, once an, once every, once per, once each, one time a, once in a, once in the, one time in a, one time in the, one time per, one time every, one time each, once in every, once in each',
  ],
  [
    'twice-a',
    'twice a, two times a, twice every, twice per, twice in a, twice in the, two times in a, two times in the, two times per',
  ],
  [
    'interval',
    'yearly, annually, monthly, weekly, daily, hourly, quarterly, every other year, every other month, every other week, every other day, every second week, every second month, every second year, each second week, each second month, each second year, each other week, each other month, each other year, each year, each month, each week, each season, twice yearly, biannually, fortnightly, every spring, every summer, every autumn, every fall, every winter, every season',
  ],
  ['range', 'to, through, thru, till, until, up through, on up to, all the way to, all the way up to'],
]

const phrasesOf = (role: Role): readonly string[] =>
  ROWS.flatMap(([own, phrases]) => (own === role ? phrases.split(',').map(phrase => phrase.trim()) : []))

/** `no more than`, `not under`: a comparison with its negation is a bound of the other side. */
const negatedRows = (): readonly (readonly [Role, string])[] =>
  (
    [
      ['at-most', 'more'],
      ['at-least', 'less'],
    ] as const
  ).map(([bound, comparison]) => [
    bound,
    [
      'no',
      'not',
      'never',
      'not any',
      'nothing',
      'and not',
      'but not',
      'and no',
      'but no',
      'and never',
      'but never',
      'or no',
      'nor',
      'not a hair',
      'not a thou',
    ]
      .flatMap(no => phrasesOf(comparison).map(phrase => `${no} ${phrase}`))
      .join(', '),
  ])

export const ROLES: Trie<Role> = trieOf([...negatedRows(), ...ROWS])
/** Intervals said in one word: count and UCUM code. */
export const INTERVALS: Readonly<Record<string, readonly [number, string]>> = Object.setPrototypeOf(
  {
    yearly: [1, 'a'],
    annually: [1, 'a'],
    monthly: [1, 'mo'],
    weekly: [1, 'wk'],
    daily: [1, 'd'],
    hourly: [1, 'h'],
    quarterly: [3, 'mo'],
    'every other year': [2, 'a'],
    'every second year': [2, 'a'],
    'every other month': [2, 'mo'],
    'every second month': [2, 'mo'],
    'every other week': [2, 'wk'],
    'every second week': [2, 'wk'],
    'every other day': [2, 'd'],
    'twice yearly': [6, 'mo'],
    biannually: [6, 'mo'],
    'each year': [1, 'a'],
    'each season': [1, 'a'],
    'each month': [1, 'mo'],
    'each week': [1, 'wk'],
    'each second year': [2, 'a'],
    'each other year': [2, 'a'],
    'each second month': [2, 'mo'],
    'each other month': [2, 'mo'],
    'each second week': [2, 'wk'],
    'each other week': [2, 'wk'],
    fortnightly: [2, 'wk'],
    'every spring': [1, 'a'],
    'every summer': [1, 'a'],
    'every autumn': [1, 'a'],
    'every fall': [1, 'a'],
    'every winter': [1, 'a'],
    'every season': [1, 'a'],
  },
  null,
)
