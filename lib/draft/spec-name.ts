import { matchesOf } from '@/lib/quantity/matches'
import { singular } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { toDimension } from './dimension'
import type { Reading } from './feature'
import type { NounPhrase } from './noun-phrase'
import type { LimitFound } from './spec-feature'
import { designationAt, IDLE_ADJECTIVES } from './thing-name'

/** What a limit is of, by what its unit measures; a word said in the sentence goes first. */
const PROPERTIES: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    torque: 'torque',
    pressure: 'pressure',
    temperature: 'temperature',
    length: 'distance',
    volume: 'quantity',
    angle: 'angle',
    turn: 'turning',
    speed: 'speed',
    voltage: 'voltage',
    current: 'current',
    resistance: 'resistance',
    power: 'power',
    mass: 'weight',
    time: 'time',
    interval: 'interval',
    share: 'share',
  },
  null,
)

const LENGTHS =
  'gap clearance deflection slack play depth thickness height length travel diameter width level backlash runout run-out preload overlap spacing stroke lift pitch wear rise drop distance'
/** What measures are called, by what their unit can be: "torque the bolts … 90 degrees" is an angle. */
const SAID_OF: readonly (readonly [words: string, dimensions: string])[] = [
  [LENGTHS, 'length'],
  ['end float', 'length'],
  ['capacity level', 'volume'],
  ['play slack backlash', 'angle turn'],
  ['slope angle', 'angle share length'],
  ['interval time', 'time interval'],
  ['wear slope', 'share'],
  ['torque preload', 'torque'],
  ['drop pressure', 'pressure'],
  ['drop voltage', 'voltage'],
  ['speed', 'speed'],
  ['temperature rise', 'temperature'],
  ['current', 'current'],
  ['resistance', 'resistance'],
  ['weight tension preload', 'mass'],
]
const ALL_SAID = [...new Set(SAID_OF.flatMap(([words]) => (words === 'end float' ? [words] : words.split(' '))))]
const SAID = new RegExp(`\\b(${ALL_SAID.join('|')})\\b`, 'gi')

const isOf = (word: string, dimension: string | undefined): boolean =>
  dimension === undefined ||
  SAID_OF.some(
    ([words, of]) => of.split(' ').includes(dimension) && (words === word || words.split(' ').includes(word)),
  )

/** Other words by which talk tells what a length is; of what wears down it is the thickness. */
const LENGTH_WORDS: readonly (readonly [RegExp, string])[] = [
  [/\bdeflects?\b/i, 'deflection'],
  [/\b(?:thick|thinner|thicker|thin)\b/i, 'thickness'],
  [/\b(?:deep|deeper)\b/i, 'depth'],
  [/\b(?:wide|wider)\b/i, 'width'],
  [/\b(?:tall|high|taller)\b/i, 'height'],
  [/\b(?:long|longer|shorter)\b/i, 'length'],
  [/\bfeelers?\b/i, 'gap'],
]
const WEARS_DOWN = /\b(?:pad|lining|brush|brushe|rotor|disc|shoe|tread|liner)$/i

/** Words that are no thing to be measured. */
const EMPTY = new Set(
  'turn minute hour second degree mil mill millimetre millimeter centimetre centimeter metre meter newton pound foot inch thou litre liter gallon quart psi bar volt amp ohm percent sorry stage pass way time thing bit lot end side number value limit middle centre center bottom top back front side'.split(
    ' ',
  ),
)

type Thing = {
  readonly name: string
  readonly at: number
  readonly to: number
  readonly isUsed: boolean
  readonly isStuff: boolean
}

const MEASURES =
  /\b(?:wrench|socket|spanner|driver|screwdriver|gauge|feeler|meter|multimeter|micrometer|key|ruler|scale|scales|hand|hands)$/i

const isUsed = (tokens: readonly Token[], { from, isTool, name }: NounPhrase): boolean =>
  MEASURES.test(name) || (isTool && /^(?:an?|with|using|your|my)$/.test(tokens[from - 1]?.word ?? ''))

/** "We do this every six months": the whole job. */
const WHOLE_JOB = /\b(?:do|does|done|repeat|redo|service) (?:this|it|that|the (?:lot|job|whole thing|service))\b/i

/** Things a sentence names, but for numbers with their units; of words no lexicon has only where `isLoose`. */
const thingsIn = ({ tokens, phrases }: Reading, isLoose = false): readonly Thing[] =>
  phrases
    .filter(phrase => {
      const head = tokens[phrase.to - 1]
      return (
        !EMPTY.has(phrase.name.split(' ').at(-1) ?? '') &&
        head?.tag !== 'unit' &&
        (isLoose || head?.tag !== 'word' || ALL_SAID.includes(head.word))
      )
    })
    .map(phrase => {
      const size = designationAt(tokens, phrase.from)
      const words = tokens
        .slice(phrase.from, phrase.to)
        .filter(({ tag, word }) => !['number', 'unit', 'past', 'ing'].includes(tag) && !IDLE_ADJECTIVES.has(word))
        .map(({ word }) => word)
      return {
        name: (size === undefined ? words : [size, ...words]).join(' '),
        at: tokens[phrase.from]?.at ?? 0,
        to: tokens[phrase.to - 1]?.to ?? 0,
        isUsed: isUsed(tokens, phrase),
        isStuff: phrase.isMaterial,
      }
    })
    .filter(({ name }) => name !== '')

/** "two litres of oil", "1 mm at each valve": named as what the limit is of. */
const RIGHT_BEHIND =
  /^ ?(?:(?:of|for|on|at|in|into|to|between|around|round|from|off|under|the|a|an|each|every|all|both|your|its|left|here) ?)+$/i

/** Between what is measured and its figure. */
const IS = /^ (?:(?:should be|is|must be|has to be|needs to be|reads?|at|to be) )?(?:about |around |at )?$/i

/** The thing that fits best of these, the nearest last. */
const nearest = (things: readonly Thing[], dimension: string | undefined): Thing | undefined => {
  // What nobody measures in figures is often told by the tool: "the feeler just drags".
  const worked = dimension === undefined ? things : things.filter(thing => !thing.isUsed)
  return (dimension === 'volume' ? worked.findLast(({ isStuff }) => isStuff) : undefined) ?? worked.at(-1)
}

const inSingular = (name: string): string => {
  const words = name.split(' ')
  return [...words.slice(0, -1), singular(words.at(-1) ?? '')].join(' ')
}

const isEvery = (said: string, { at, text }: LimitFound['limit']): boolean =>
  /\bevery\b/i.test(`${said.slice(Math.max(0, at - 8), at)}${text}`)

/** What goes on for a time, by its verb: "let it drip for ten minutes". */
const DOING: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    run: 'running',
    wait: 'waiting',
    leave: 'standing',
    sit: 'standing',
    stand: 'standing',
    rest: 'resting',
    drip: 'dripping',
    drain: 'draining',
    soak: 'soaking',
    cool: 'cooling',
    warm: 'warming',
    dry: 'drying',
    cure: 'curing',
    hold: 'holding',
    press: 'holding',
    charge: 'charging',
    spin: 'spinning',
    boil: 'boiling',
    rinse: 'rinsing',
    flush: 'flushing',
    idle: 'idling',
  },
  null,
)
const doingBefore = ({ tokens }: Reading, at: number): string | undefined => {
  const verb = tokens.findLast(token => token.at < at && (token.base ?? token.word) in DOING)
  return verb === undefined ? undefined : DOING[verb.base ?? verb.word]
}

const propertyOf = (found: LimitFound, thing: string, own: string, before: string): string => {
  const { limit, quantity } = found
  const dimension = toDimension(quantity.unit)
  const said = matchesOf(own, SAID)
    .map(([word]) => word.toLowerCase())
    .find(word => isOf(word, dimension))
  if (said !== undefined) return said
  if (dimension === 'length') {
    const word = LENGTH_WORDS.find(([pattern]) => pattern.test(own))?.[1]
    if (word !== undefined) return word
    if (WEARS_DOWN.test(inSingular(thing))) return 'thickness'
    if (/\bfeelers?\b/i.test(before)) return 'gap'
  }
  // Hours run and months gone by are two limits, not one told twice.
  return isEvery(own, limit) && quantity.unit === 'h' ? 'interval in hours' : (PROPERTIES[dimension ?? ''] ?? '')
}

/**
 * A limit's name such as "drain plug torque": the thing named nearest before the limit, else right behind it, else in the
 * sentence before, else behind it anywhere; then what is measured, as its unit allows.
 */
export const nameOfLimit = (found: LimitFound, reading: Reading, before: Reading | undefined): string => {
  const { limit, quantity } = found
  const dimension = toDimension(quantity.unit)
  const own = thingsIn(reading).filter(({ at, to }) => to <= limit.at || at >= limit.to)
  // "The tyre pressure to 36": thing and measure in one name.
  const whole = own.findLast(({ at, name }) => {
    const words = name.split(' ')
    return (
      at < limit.at && words.length > 1 && isOf(words.at(-1) ?? '', dimension) && ALL_SAID.includes(words.at(-1) ?? '')
    )
  })
  if (whole !== undefined && dimension !== undefined) return whole.name
  const named = own.filter(({ name }) => !ALL_SAID.includes(name))
  const behind = named.filter(({ at }) => at >= limit.to)
  const isRepeated = isEvery(reading.text, limit)
  if (WHOLE_JOB.test(reading.text.slice(0, limit.to)))
    if (dimension === 'interval') return 'service interval'
    else if (dimension === 'time' && isRepeated) return 'service interval in hours'
  const ahead = nearest(
    named.filter(({ at }) => at < limit.at),
    dimension,
  )
  const doing = dimension === 'time' && !isRepeated && ahead === undefined ? doingBefore(reading, limit.at) : undefined
  if (doing !== undefined) return `${doing} time`
  const thing =
    ahead ??
    behind.find(({ at }) => RIGHT_BEHIND.test(reading.text.slice(limit.to, at))) ??
    // "Cut-in should be six bar": a word of the trade we do not know.
    thingsIn(reading, true).findLast(({ to }) => IS.test(reading.text.slice(to, limit.at))) ??
    (before === undefined
      ? undefined
      : nearest(
          thingsIn(before).filter(({ name }) => !ALL_SAID.includes(name)),
          dimension,
        )) ??
    behind.find(one => !one.isUsed)
  const property = propertyOf(found, thing?.name ?? '', reading.text, before?.text ?? '')
  if (thing === undefined) return property === '' ? limit.text : property
  const name = thing.name.split(' ').includes(property)
    ? thing.name
    : `${property === '' ? thing.name : inSingular(thing.name)} ${property}`
  return name.trim()
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth']
const STAGED = /\b(?:stages?|steps|passes)\b/i

/** A limit's name, which pass of a sequence it is if the reader knows, and its turn among the limits of its sentence alike. */
export type NamedLimit = { readonly name: string; readonly part: number | undefined; readonly turn: number }

/** Names of one sentence's limits: passes of one sequence are told apart, "head bolt torque, second stage". */
export const withStages = (limits: readonly NamedLimit[], text: string): readonly string[] =>
  limits.map(({ name, turn }) => {
    const alike = limits.filter(other => other.name === name)
    const isStaged = STAGED.test(text) || alike.some(({ part }) => part !== undefined)
    const ordinal = ORDINALS[turn]
    return alike.length < 2 || !isStaged || ordinal === undefined ? name : `${name}, ${ordinal} stage`
  })
