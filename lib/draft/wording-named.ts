import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import * as kind from './wording-kinds'
import { type Stretch, TAKEN_BACK } from './wording-late'
import { orderOfPlace, withArticle, yours } from './wording-place'
import { fromTorque } from './wording-torque'

/** What an order by names alone says, and whether it was guessed from the sentences around. */
export type Named = { readonly text: string; readonly isGuess: boolean }

const sure = (text: string): Named => ({ text, isGuess: false })
const guess = (text: string): Named => ({ text, isGuess: true })

/** The thing a stretch opens with, up to the first word that places it. */
const headOf = (
  { tokens, text }: Reading,
  { from, to }: Stretch,
): { readonly head: string; readonly at: number; readonly word: string } => {
  for (let i = from + 1; i < to; i++) {
    const { tag, word } = tokens[i] ?? {}
    if (word === 'of') continue
    if (tag === 'preposition' || tag === 'particle' || tag === 'to')
      return { head: sayTokens(text, tokens, from, i), at: i, word: word ?? '' }
  }
  return { head: sayTokens(text, tokens, from, to), at: to, word: '' }
}

const nounOf = (head: string): string =>
  head
    .replace(/,? (?:first|next|last|again|now|then|twice|once|only|here|too)$/i, '')
    .replace(/ (?:of|wi'|with) .*$/i, '')

const isNamed = ({ tokens }: Pick<Reading, 'tokens'>, from: number, to: number): boolean =>
  tokens
    .slice(from, to)
    .some(
      ({ tag }) =>
        tag === 'part' || tag === 'tool' || tag === 'material' || tag === 'noun' || tag === 'ing' || tag === 'word',
    )

/** "hood, four bolts, off", "breaker, number ten, off". */
const fromFarParticle = (reading: Reading, stretches: readonly Stretch[]): string | undefined => {
  const { tokens, text } = reading
  const [first, ...more] = stretches
  if (first === undefined || headOf(reading, first).word === 'off' || !isNamed(reading, first.from, first.to))
    return undefined
  const at = more.findIndex(
    ({ from, to }) =>
      /^(?:off|out|on|in|shut|open|closed|down|up|back|tight|loose)$/.test(tokens[from]?.word ?? '') && to - from < 4,
  )
  const place = more[at]
  if (place === undefined || at > 2 || place.to - place.from > 1) return undefined
  const next = tokens[place.to]
  if (next !== undefined && !next.isAfterPause && /^(?:pronoun|third|verb|auxiliary)$/.test(next.tag)) return undefined
  // "The fan, and then the breaker, off": it is the last one named.
  const named =
    more.slice(0, at).findLast(({ from }) => /^(?:the|my|your|its)$/.test(tokens[from]?.word ?? '')) ?? first
  const { head, at: end } = headOf(reading, named)
  if (head.split(' ').length > 6 || kind.NO.test(head) || /\band\b/.test(head)) return undefined
  const order = orderOfPlace(head, tokens[place.from]?.word ?? '')
  const between = sayTokens(text, tokens, end, place.from)
  return between === '' ? order : `${order}${end === named.to ? ',' : ''} ${between}`
}

/** "rag under the joint": laid there, not worked with. */
const isSoftPlaced = (noun: string, word: string): boolean =>
  /\b(?:rag|cloth|tissue|sponge|pad|towel)s?$/i.test(noun) &&
  /^(?:under|over|in|into|behind|between|onto|below|beneath)$/.test(word)

/** What the reader does with the body: a noun by its tag, "stand to the side". */
const STAYS = /^(?:stand|stay|sit|lean|kneel|step|walk|reach)$/
const ENDS = /^(?:off|out|on|in|shut|open|closed|up|down|tight|loose|away|apart)$/
/** What is on or off by itself: "padlock on" ends there. */
const SWITCHED =
  /\b(?:power|isolator|breaker|ignition|pump|gas|water|fuel|mains|motor|lights?|air|compressor|switch|fan|padlock|lock|tag|brakes?|handbrake|gloves|goggles|glasses|mask|cover|lid|cap|nut|heater)$/i

/** A sentence that names no action, taken apart. */
type Scene = {
  readonly reading: Reading
  readonly stretches: readonly Stretch[]
  readonly around: readonly (string | undefined)[]
  readonly first: Stretch
  /** Everything said, with commas. */
  readonly all: string
  /** The first stretch; its thing; that thing's name; what follows the thing in `all`. */
  readonly whole: string
  readonly head: string
  readonly noun: string
  readonly rest: string
  /** Token and word that place the thing; the first stretch's end where none does. */
  readonly at: number
  readonly word: string
  readonly hasPauses: boolean
  readonly holdsFasteners: boolean
}

type Rule = (scene: Scene) => Named | undefined

const fromStaying: Rule = ({ reading: { tokens }, first, all }) =>
  STAYS.test(tokens[first.from]?.word ?? '') && kind.PUTS.test(tokens[first.from + 1]?.word ?? '')
    ? sure(all)
    : undefined

const fromLimit: Rule = ({ all, reading }) => {
  const torque = fromTorque(all, reading.text)
  if (torque !== undefined) return sure(torque)
  return kind.TIME.test(all) ? guess(`wait ${all.replace(/^for /i, '')}`) : undefined
}

const fromStrokes: Rule = ({ all }) => {
  if (/^(?:a )?(?:quarter|half)(?: of)?(?: a)? turns?\b/i.test(all))
    return sure(`make ${/^a /i.test(all) ? '' : 'a '}${all}`)
  const stroke = kind.STROKES.exec(all)?.[2]
  if (stroke === undefined) return undefined
  const few = /^(?:couple|few|quick|light|gentle|good)/i.test(all) ? 'a ' : ''
  return sure(`${/turn/i.test(stroke) ? 'make' : 'give'} ${few}${all}`)
}

const FOR_WHOM = / for (?:that|this|both of (?:us|you)|the same reason|it)\b/i
const fromWorn: Rule = ({ noun, all }) =>
  kind.WORN.test(noun) && !/\b(?:off|out)\b| on\b/i.test(all)
    ? sure(`put on ${yours(all.replace(FOR_WHOM, ''))}`)
    : undefined

/** Behind this rule the first word names a thing. */
const opensPlace = ({ reading, first }: Scene): boolean =>
  /^(?:preposition|particle|to)$/.test(reading.tokens[first.from]?.tag ?? '')

/** "isolator on, tag off": each breath a thing and where it goes. */
const fromParticles: Rule = ({ reading: { tokens, text }, stretches }) => {
  const orders: string[] = []
  for (const { from, to } of stretches) {
    const last = tokens[to - 1]
    const isPlaced = last !== undefined && to - from > 1 && to - from < 6 && ENDS.test(last.word)
    const thing = sayTokens(text, tokens, from, to - 1)
    if (!isPlaced || kind.NO.test(thing) || !isNamed({ tokens }, from, to - 1) || / (?:and|or) /.test(thing)) break
    if (tokens.slice(from, to - 1).some(({ tag }) => /^(?:preposition|particle|to|past)$/.test(tag))) break
    if (
      /^(?:on|in)$/.test(last.word) &&
      to < tokens.length &&
      tokens[to]?.isAfterPause === false &&
      !SWITCHED.test(thing)
    )
      break
    orders.push(orderOfPlace(yours(thing), last.word))
  }
  const [first, ...more] = orders.slice(0, 4)
  if (first === undefined) return undefined
  return sure(more.length === 0 ? first : `${[first, ...more.slice(0, -1)].join(', ')} and ${more.at(-1)}`)
}

const fromFar: Rule = ({ reading, stretches }) => {
  const far = fromFarParticle(reading, stretches)
  return far === undefined ? undefined : sure(far)
}

const fromStuff: Rule = ({ reading: { tokens }, stretches, head, noun, rest, word, all }) => {
  if (!kind.MEASURED.test(head) && !kind.PIECES.test(head) && !kind.isStuff(noun)) return undefined
  const isCounted = kind.MEASURED.test(`a ${head}`) || kind.PIECES.test(`a ${head}`)
  const said = isCounted && !kind.SETTLED.test(head) ? `a ${head}` : head
  if (word === 'for' && kind.isStuff(noun)) return sure(`apply ${said} to ${all.slice(head.length + 5)}`)
  if (word === 'to' && kind.isStuff(noun)) return sure(`fill with ${said}${rest}`)
  if (word === 'with') return undefined
  const isPlaced = kind.PUTS.test(word) || kind.PUTS.test(tokens[stretches[1]?.from ?? -1]?.word ?? '')
  return sure(`${isPlaced ? 'put' : kind.PIECES.test(said) ? 'use' : 'apply'} ${said}${rest}`)
}

const isHandy = ({ head, noun, word }: Scene): boolean =>
  kind.HANDY.test(noun) &&
  !/^(?:this|these|those|that)\b/i.test(head) &&
  !/\b(?:upper|lower|rear|front|inner|outer)\b|^(?:\S+) bars?$/i.test(noun) &&
  !isSoftPlaced(noun, word)

/** "the floor with a cloth", "the knob to three": what is done shows in what it is done with, or to. */
const fromMeans: Rule = scene => {
  const { reading, first, head, noun, rest, at, word } = scene
  const { tokens, text } = reading
  if (!isNamed(reading, first.from, at)) return undefined
  if (word === 'to' && tokens[at + 1]?.tag === 'number') return sure(`set ${withArticle(yours(head))}${rest}`)
  if (word !== 'with' || kind.FASTENERS.test(noun) || /^an? /i.test(head)) return undefined
  if (/ or /.test(head)) return undefined
  const means = sayTokens(text, tokens, at + 1, first.to)
  if (kind.CLEANS.test(means) && !kind.hasTool(noun)) return sure(`clean ${withArticle(yours(head))}${rest}`)
  return kind.MEASURES.test(means) && !isHandy(scene) ? sure(`measure ${withArticle(yours(head))}${rest}`) : undefined
}

const fromTool: Rule = scene => {
  const { head, noun, rest, all, holdsFasteners } = scene
  const hasWay = all.length > head.length || / (?:first|twice|once)$/i.test(head)
  if (/^(?:off|out|away)$/.test(scene.word)) return undefined
  if (!hasWay || holdsFasteners || kind.FASTENERS.test(noun) || !isHandy(scene)) return undefined
  return sure(`use ${kind.withA(yours(head), noun)}${rest}`)
}

const fromFresh: Rule = ({ head, rest }) =>
  kind.FRESH.test(head) && head.includes(' ') ? sure(`fit ${withArticle(head)}${rest}`) : undefined

const fromFasteners: Rule = ({ noun, head, rest, all, around, holdsFasteners }) => {
  const isFastener = kind.FASTENERS.test(noun)
  const way = isFastener || holdsFasteners ? kind.direction([all, ...around]) : undefined
  if (way === undefined) return undefined
  return guess(`${way === 'on' ? 'fit' : isFastener ? 'undo' : 'remove'} ${withArticle(yours(head))}${rest}`)
}

/** "plank under the shaft", "left end first, into the slot". */
const fromPlaced: Rule = ({
  reading,
  stretches,
  first,
  head,
  noun,
  whole,
  all,
  at,
  word,
  hasPauses,
  holdsFasteners,
}) => {
  const { tokens, text } = reading
  if (holdsFasteners || kind.FASTENERS.test(noun) || !isNamed(reading, first.from, at)) return undefined
  const next = tokens[at + 1]?.tag ?? ''
  const second = tokens[stretches[1]?.from ?? -1]
  if (at === first.to)
    return kind.PUTS.test(second?.word ?? '') &&
      whole.split(' ').length < 7 &&
      !/\b(?:last|time|thing|step|job|side)\b/i.test(head)
      ? sure(`put ${withArticle(yours(whole))} ${all.slice(whole.length).replace(/^, /, '')}`)
      : undefined
  if (/^(?:off|out)$/.test(word) && next === 'determiner' && !/^(?:one|two|three|four|\d)/i.test(head))
    return sure(`${orderOfPlace(yours(head), sayTokens(text, tokens, at, first.to))}${all.slice(whole.length)}`)
  if (!kind.PUTS.test(word) || kind.BEARS.test(word) || /^(?:one|two|three|four|\d)/i.test(head)) return undefined
  if (!hasPauses && /^(?:on|in)$/.test(word) && !/^(?:determiner|pronoun|number)$/.test(next) && at + 2 < first.to)
    return undefined
  if (kind.ONLY_THERE.test(word) && /^(?:the|its|this|that)\b/i.test(head) && !kind.hasTool(noun)) return undefined
  const where = sayTokens(text, tokens, at, first.to)
  const more = all.slice(whole.length)
  if (word !== 'to') return sure(`${orderOfPlace(yours(head), where)}${more}`)
  return /^(?:the|your|my|old)\b/i.test(head) ? sure(`put ${withArticle(yours(head))} ${where}${more}`) : undefined
}

const BEFORE_THINGS: readonly Rule[] = [fromStaying, fromLimit, fromStrokes, fromWorn]
const OF_THINGS: readonly Rule[] = [
  fromParticles,
  fromFar,
  fromStuff,
  fromMeans,
  fromTool,
  fromFresh,
  fromFasteners,
  fromPlaced,
]

const firstOf = (rules: readonly Rule[], scene: Scene): Named | undefined => {
  for (const rule of rules) {
    const named = rule(scene)
    if (named !== undefined) return named
  }
  return undefined
}

/** Running captions have no commas: they are put where another thing begins. */
const sayAll = ({ tokens, text }: Reading, stretches: readonly Stretch[], hasPauses: boolean): string =>
  hasPauses
    ? sayTokens(text, tokens, stretches[0]?.from ?? 0, stretches.at(-1)?.to ?? 0)
    : stretches
        .map(({ from, to }, i) => {
          const seam = i === 0 ? '' : tokens[from]?.word === 'and' ? ' and ' : ', '
          return `${seam}${sayTokens(text, tokens, from, to)}`
        })
        .join('')

/**
 * The order of a sentence that names no action but what it takes: stuff and its place, a tool and its way, a limit, a time,
 * what is worn, how often. Undefined where names don't tell.
 *
 * @param stretches verbless, one after the other
 * @param around sentences before and after, nearest first, for which way fasteners go
 */
export const namedOrder = (
  reading: Reading,
  stretches: readonly Stretch[],
  around: readonly (string | undefined)[],
): Named | undefined => {
  const { tokens, text } = reading
  const [first] = stretches
  if (first === undefined || TAKEN_BACK.test(text)) return undefined
  const hasPauses = tokens.some(({ isAfterPause }, i) => i > 0 && isAfterPause)
  const { head, at, word } = headOf(reading, first)
  const noun = nounOf(head)
  const all = sayAll(reading, stretches, hasPauses)
  if (noun === '' || kind.NO.test(all) || kind.NO_THING.test(head) || /. (?:where|which|that|what)\b/i.test(head))
    return undefined
  const holdsFasteners = stretches
    .slice(1, 3)
    .some(({ from, to }) => to - from < 6 && kind.FASTENERS.test(sayTokens(text, tokens, from, to)))
  const whole = sayTokens(text, tokens, first.from, first.to)
  const rest = all.slice(head.length)
  const scene = { reading, stretches, around, first, all, whole, head, noun, rest, at, word, hasPauses, holdsFasteners }
  const named = firstOf(BEFORE_THINGS, scene)
  if (named !== undefined || opensPlace(scene)) return named
  // Running captions past three breaths are not told apart well enough, but for "lock on, tag off, …".
  return firstOf(hasPauses || stretches.length < 4 ? OF_THINGS : [fromParticles], scene)
}
