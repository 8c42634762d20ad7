import { DENOMINATORS, ONES, TEENS, TENS } from '@/lib/quantity/number-words'
import { toTokens } from '@/lib/quantity/tokens'
import { readSmall } from '@/lib/quantity/whole-number'

const ONE = [...ONES.keys()].filter(word => word !== 'zero').join('|')
const TEEN = [...TEENS.keys()].join('|')
const TEN = [...TENS.keys()].join('|')

/** Only before a number. */
const NUMBER_NEXT = `(?= \\d| (?:an?|half|${ONE}|ten|${TEEN}|(?:${TEN})(?:-(?:${ONE}))?)\\b)`

/** Value of a number under a hundred, in words or figures; undefined for others. */
export const under100 = (said: string): number | undefined =>
  /^\d+$/.test(said) ? Number(said) : readSmall(toTokens(said), 0)?.value

type Rule = {
  readonly pattern: RegExp
  /** From the groups of a match, what is said in other words; undefined where nothing is. */
  readonly plain: (...groups: readonly string[]) => string | undefined
  /** A sentence without this, in lower case, holds nothing of the kind: spares most the look. */
  readonly needs?: string
}

/** Two figures this far apart are no ends of a range: thirteen-fifty is a number. Common practice, no source. */
const FAR_APART = 2.5

const RULES: readonly Rule[] = [
  // Divisions of a rule: `a 32nd`, `a sixteenth`, but not of a turn.
  {
    pattern:
      /\b(?:an?|one) (16th|32nd|64th|sixteenth|thirty-?second|sixty-?fourth)\b(?! (?:of an? (?!inch)|turn|note))/gi,
    plain: (name = '') =>
      `1/${/^\d/.test(name) ? Number.parseInt(name, 10) : DENOMINATORS.get(name.toLowerCase().replace('-', ''))}`,
  },
  // `thirteen-fifty` revs, `eleven-eighty`.
  {
    needs: 'ty',
    pattern: new RegExp(`\\b(${TEEN}|(?:${TEN})(?:-(?:${ONE}))?)-((?:${TEN})(?:-(?:${ONE}))?)\\b`, 'gi'),
    plain: (above = '', below = '') => {
      const [a, b] = [under100(above), under100(below)]
      return a === undefined || b === undefined || b < FAR_APART * a ? undefined : String(100 * a + b)
    },
  },
  // `five-oh to seven-oh`.
  {
    needs: '-oh',
    pattern: new RegExp(`\\b(${ONE})-oh\\b`, 'gi'),
    plain: (tens = '') => String(10 * (ONES.get(tens.toLowerCase()) ?? 0)),
  },
  // `more than, oh, thirty thousandths`.
  {
    pattern:
      /(?<=\b(?:than|about|at|to|by|of|is|say|under|over|within|around|near|roughly|between)),? (?:oh|uh|um|ah|er|eh|hm+|what|let's say|let me (?:think|see)|i'd say|what is it|call it|shall we say|i don't know|i dunno|i think|i reckon|i guess|i suppose|i'd guess|if i remember(?: right(?:ly)?)?|as i recall|shall i say|what was it|how shall i put it),(?= )/gi,
    plain: () => '',
  },
  // `it can't be over, I wanna say 80`.
  {
    needs: 'say',
    pattern: new RegExp(
      `(?<=\\b(?:than|over|under|above|below|past|exceed|by|within|about|around)),? +(?:(?:oh|uh|um|ah|er|well|i think),? +)?(?:i (?:wanna|want to|would|'d) say|i'd (?:say|guess)|i'll say|let's say|let me say|i was about to say|shall we say|shall i say|say),?${NUMBER_NEXT}`,
      'gi',
    ),
    plain: () => '',
  },
  // `one up or one down`, `and I'll take one either way`, after a figure.
  {
    pattern: new RegExp(
      `, (?:and )?(\\d+|${ONE}|ten|half) (?:(?:up|over|more|above|plus) (?:or|and|to) \\1 (?:down|under|less|below|minus))\\b`,
      'gi',
    ),
    plain: (by = '') => `, ± ${by}`,
  },
  {
    pattern: new RegExp(
      `, (?:and |but |so )?(?:i'll|i'd|we'll|i|we|you can) (?:take|accept|allow|have|pass|tolerate) (\\d+|${ONE}|ten|half)(?: (?:up or down|either (?:way|side)|each way|one way or the other)| more or less)\\b`,
      'gi',
    ),
    plain: (by = '') => `, ± ${by}`,
  },
  { pattern: /\bgive or take one(?=[,.;?!]|$)/gi, plain: () => 'give or take 1' },
  // `more than, I think I read this somewhere, a thirty-second`.
  {
    pattern: new RegExp(
      `(?<=\\bthan),(?: (?!(?:${ONE}|ten|${TEEN}|${TEN}|half|no|not|sorry)\\b)[a-z']+){1,8},${NUMBER_NEXT}`,
      'gi',
    ),
    plain: () => '',
  },
  // `every fortnight`, `five thousand k`.
  { needs: 'fortnight', pattern: /\b(every|each) fortnight\b/gi, plain: (every = '') => `${every} 2 weeks` },
  { needs: 'fortnight', pattern: /\ba fortnight\b/gi, plain: () => '2 weeks' },
  {
    needs: 'thousand k',
    pattern: new RegExp(`\\b(${ONE}|ten|${TEEN}|(?:${TEN})(?:-(?:${ONE}))?) thousand k\\b`, 'gi'),
    plain: (thousands = '') => `${1000 * (under100(thousands) ?? 0)} km`,
  },
  // `nought to two`.
  { pattern: new RegExp(`\\b(?:nought|naught|nil) to${NUMBER_NEXT}`, 'gi'), plain: () => '0 to' },
  // `nothin' under eleven`.
  { pattern: /\bnothin'/gi, plain: () => 'nothing' },
  // `within the hour`.
  { pattern: /(?<=\b(?:within|inside) )the(?= (?:hour|minute|day|week|month|year)\b)/gi, plain: () => 'one' },
  // `a good quarter of an hour`.
  {
    pattern: /\b(an?) (good|full|solid|whole|clear|bare|scant|short) (?=(?:quarter|third|half|eighth|sixteenth)\b)/gi,
    plain: (article = '', word = '') => `${article}${' '.repeat(word.length + 1)} `,
  },
  // `more than a single volt`.
  { pattern: /\ban? single(?= \w)/gi, plain: () => 'one' },
  // `one second's burst`, `a minute's soak`.
  {
    needs: "'s ",
    pattern: /\b(second|minute|hour|day|week|month|year|inch|foot|metre|meter|millimetre|litre)'s(?= [a-z])/gi,
    plain: unit => unit,
  },
  // `fifty-two turns a minute`.
  {
    needs: ' minute',
    pattern: /\b(?:turns|revs|revolutions|rounds) (?:a|per|to the|in the|in a|every|each) minute\b/gi,
    plain: () => 'rpm',
  },
  // `zip ties every foot`, `one peg each 75 centimetres`.
  {
    needs: 'e',
    pattern:
      /(?<!\b(?:for|in|to|of|per|on|from) )\b(?:every|each) (inch|foot|yard|met(?:re|er))\b(?! (?:of|counts|hurts))/gi,
    plain: unit => `at 1 ${unit}`,
  },
  {
    needs: 'each ',
    pattern: /(?<= )each(?= \S+ (?:centi|milli)?(?:met(?:re|er)|inch|feet|mil)\w*\b)/gi,
    plain: () => 'at',
  },
  // `six millimetres, to the nearest tenth`.
  {
    needs: 'to the nearest ',
    pattern:
      /(?<=\w,? )to the nearest (tenth|hundredth|half|quarter|degree|millimetre|millimeter|mil|volt|gram|bar|thou)\b/gi,
    plain: (part = '') =>
      `give or take ${({ tenth: '0.1', hundredth: '0.01', half: '0.5', quarter: '0.25' } as Record<string, string>)[part.toLowerCase()] ?? '1'}`,
  },
  // `every quarter`.
  {
    needs: ' quarter',
    pattern: /\b(?:every|each|once a|once every) quarter\b(?! (?:of|turn|inch|hour|mile|pound|to|past|note)|[- ])/gi,
    plain: () => 'quarterly',
  },
  {
    needs: ' quarter',
    pattern:
      /\b(?:every|each|once a|once every) quarter\b(?= (?:the|you|we|i|they|he|she|it|somebody|someone|at|in|and)\b)/gi,
    plain: () => 'quarterly',
  },
  // `two metres twelve`.
  {
    needs: 'met',
    pattern: new RegExp(
      `\\b(\\d|${ONE}|ten) (met(?:re|er)s?) (\\d\\d|${TEEN}|(?:${TEN})(?:-(?:${ONE}))?)\\b(?! ?(?:mm|mill?|centi|cm|inch|degrees|bar|volt|minute|second|by|screws|bolts|times|pieces))`,
      'gi',
    ),
    plain: (above = '', unit = '', below = '') => {
      const [a, b] = [under100(above), under100(below)]
      return a === undefined || b === undefined ? undefined : `${a}.${b} ${unit}`
    },
  },
  // `grams to every litre`.
  {
    needs: 'gram',
    pattern:
      /\b((?:milli)?grams?) (?:of (?!the\b)[a-z]+ )?(?:to|in|per|for|into|on|with)(?: each| every| the| a| one)* (lit(?:re|er))\b/gi,
    plain: (gram, litre) => `${gram} per ${litre}`,
  },
  // `after the first hour`, `for another minute`: one of them.
  {
    pattern:
      /\b(?:the|its|that|your|her|his|their|a) first(?= (?:hour|minute|day|week|month|year|mile|kilomet(?:re|er))\b)/gi,
    plain: () => 'one',
  },
  {
    pattern: /\banother(?= (?:hour|minute|day|week|month|turn|inch|millimet(?:re|er)|lit(?:re|er))\b)/gi,
    plain: () => 'one',
  },
  { pattern: /\bthe(?= (?:quarter of an|half) hour\b)/gi, plain: () => 'a' },
  // `a thousand, twelve hundred`.
  {
    needs: 'thousand',
    pattern: new RegExp(`\\b(?:an?|one) thousand(,| to| or| and) (${TEEN}) hundred\\b`, 'gi'),
    plain: (sign = '', hundreds = '') => `1000${sign} ${100 * (under100(hundreds) ?? 0)}`,
  },
  // `not bigger as eight`, as those say it whose own tongue does.
  {
    pattern: new RegExp(
      `\\b(?:bigger|larger|wider|deeper|longer|higher|thicker|heavier|hotter|faster|more) as${NUMBER_NEXT}`,
      'gi',
    ),
    plain: () => 'over',
  },
  {
    pattern: new RegExp(
      `\\b(?:smaller|lower|thinner|shorter|narrower|shallower|cooler|colder|slower|less) as${NUMBER_NEXT}`,
      'gi',
    ),
    plain: () => 'under',
  },
  // `never flatter than forty degrees`.
  { needs: 'er than', pattern: /\b(?:flatter|shallower) than\b/gi, plain: () => 'less than' },
  { needs: 'steeper', pattern: /\bsteeper than\b/gi, plain: () => 'more than' },
  // `twenty-five below, Celsius`.
  {
    needs: ' below',
    pattern: new RegExp(
      `\\b((?:\\d+|${ONE}|ten|${TEEN}|(?:${TEN})(?:-(?:${ONE}))?)) below(?: zero\\b|(?=[,.;?!]|$| freezing\\b))(?=.*\\b(?:celsius|frost|freez\\w*|cold\\w*|fahrenheit)\\b)`,
      'gi',
    ),
    plain: (figure = '') => {
      const n = under100(figure)
      return n === undefined ? undefined : `minus ${n}`
    },
  },
  // `nearer than five and it catches`.
  { pattern: /\b(?:nearer|closer) than\b/gi, plain: () => 'less than' },
  // `no further apart than three`.
  { pattern: /\b[a-z]{3,}er (?:apart|off|out|away|down|back|up)(?= than\b)/gi, plain: () => 'more' },
]

/** A sentence without any of these is plain. */
const MAY =
  /(?:(?:second|minute|hour|day|week|month|year|inch|foot|met(?:re|er)|litre)'s |(?:a|per|the|every|each) minute|nearest |(?:every|each|once a) quarter|(?:every|each) (?:inch|foot|yard|met)|each \S+ (?:centi|milli|met|inch|feet|mil)|16th|32nd|64th|sixteenth|second|fourth|ty\b|-oh\b|\d\d\b| (?:oh|uh|um|ah|er|eh|hm+|what|say|think|see|is it|call it|know|dunno|reckon|guess|suppose|remember|right|rightly|recall|was it),|than, | say,? |give or take one|(?:up|over|more|above|plus) (?:or|and|to) \w+|up or down|either (?:way|side)|each way|more or less|nothin'|fortnight|(?:nought|naught|nil) to |(?:within|inside) the |an? (?:good|full|solid|whole|clear|bare|scant|short) |an? single |first |another |the (?:half|quarter)|thousand|(?:er|more|less) as |(?:nearer|closer|flatter|shallower|steeper) than| below\b|er (?:apart|off|out|away|down|back|up) than|met(?:re|er)s? |lit(?:re|er)\b)/i

/**
 * A sentence with its figures put as they are mostly said, so that the reader of quantities knows them. Places stay the
 * same: what becomes shorter is filled up with blanks.
 *
 * @returns text of the same length
 */
export const sayPlainly = (text: string): string => {
  if (!MAY.test(text)) return text
  let said = text
  const low = text.toLowerCase()
  for (const { pattern, plain, needs = '' } of RULES) {
    if (!low.includes(needs)) continue
    said = said.replace(pattern, (whole: string, ...rest: readonly unknown[]) => {
      const put = plain(...rest.filter(part => typeof part === 'string').slice(0, -1))
      return put === undefined || put.length > whole.length ? whole : put.padEnd(whole.length)
    })
  }
  return said
}
