import { sayTokens } from './clause-text'
import * as kind from './wording-kinds'
import { withArticle, yours } from './wording-place'
import { guess, headOf, isNamed, nounOf, type Rule, type Scene, sure } from './wording-scene'
import { fromTorque } from './wording-torque'

/** "rag under the joint": laid there, not worked with. */
const isSoftPlaced = (noun: string, word: string): boolean =>
  /\b(?:rag|cloth|tissue|sponge|pad|towel)s?$/i.test(noun) &&
  /^(?:under|over|in|into|behind|between|onto|below|beneath)$/.test(word)

/** What the reader does with the body: a noun by its tag, "stand to the side". */
const STAYS = /^(?:stand|stay|sit|lean|kneel|step|walk|reach)$/

export const fromStaying: Rule = ({ reading: { tokens }, first, all }) =>
  STAYS.test(tokens[first.from]?.word ?? '') && kind.PUTS.test(tokens[first.from + 1]?.word ?? '')
    ? sure(all)
    : undefined

export const fromLimit: Rule = ({ all, reading }) => {
  const torque = fromTorque(all, reading.text)
  if (torque !== undefined) return sure(torque)
  const time = kind.TIME.exec(all)?.[0]
  if (time === undefined) return undefined
  const more = all.slice(time.length)
  if (/^, (?!at\b|with\b|for\b|on\b)/.test(more)) return undefined
  const where = /^,? (?:at|on|with|under) [^,]+/.exec(more)?.[0] ?? ''
  return guess(`wait ${time.replace(/^(?:for|another) /i, '')}${where}`)
}

export const fromStrokes: Rule = ({ all }) => {
  if (/^(?:a )?(?:quarter|half)(?: of)?(?: a)? turns?\b/i.test(all))
    return sure(`make ${/^a /i.test(all) ? '' : 'a '}${all}`)
  const stroke = kind.STROKES.exec(all)?.[2]
  if (stroke === undefined) return undefined
  const few = /^(?:couple|few|quick|light|gentle|good)/i.test(all) ? 'a ' : ''
  return sure(`${/turn/i.test(stroke) ? 'make' : 'give'} ${few}${all}`)
}

const FOR_WHOM = / for (?:that|this|both of (?:us|you)|the same reason|it)\b/i

/** "goggles on", but for "gloves on the bench". */
const WORN_ON = /^((?:\S+ ){1,3}?)on\b(?! (?:the|its|an?|your|top|each)\b)/i

export const fromWorn: Rule = ({ noun, all }) => {
  const worn = WORN_ON.exec(all)?.[1]?.trim()
  if (worn !== undefined && kind.WORN.test(worn)) return sure(`put on ${yours(worn)}`)
  return kind.WORN.test(noun) && !/\b(?:off|out)\b| on\b/i.test(all)
    ? sure(`put on ${yours(all.replace(FOR_WHOM, ''))}`)
    : undefined
}

/** A time, a way or a time of doing, no place a part is put. */
const NO_PLACE =
  /\b(?:lines?|circles?|direction|order|pattern|way|turns?|end|ends|morning|night|evening|day|week|time|times|car|machine|model|job|beginning|start|middle|go|goes|front|back|other|one|ones|this|that|last|first|second|third|old|same|circumstances|handlebar|roof)\b/i

/** "off at the wall", "with a soft brush, along the grain", "into the vice by its lug". */
export const fromOpening: Rule = ({ reading, first, all }) => {
  const { tokens, text } = reading
  const [opener, next] = [tokens[first.from], tokens[first.from + 1]]
  const after = sayTokens(text, tokens, first.from + 1, first.to)
  if (/^(?:off|on)$/.test(opener?.word ?? '') && next?.word === 'at') return sure(`switch ${all}`)
  if (opener?.word === 'with' && all.length > after.length + 8 && !/\bone [a-z]+s\b| at its /i.test(all))
    return kind.HANDY.test(nounOf(headOf(reading, { from: first.from + 1, to: first.to }).head))
      ? sure(`use ${all.slice(5)}`)
      : undefined
  const isPlace = next?.tag === 'determiner' && !NO_PLACE.test(after) && isNamed(reading, first.from + 2, first.to)
  if (opener?.word === 'off' && isPlace && after.split(' ').length < 8) return guess(`take it ${all}`)
  const isInto = /^(?:into|onto)$/.test(opener?.word ?? '') && isPlace
  return isInto && after.split(' ').length < 8 ? guess(`put it ${all}`) : undefined
}

/** "spark plug by hand": what fingers do first. */
export const fromByHand: Rule = ({ reading, first, head, rest, at, word, around, all }) => {
  if (word !== 'by' || !/^by (?:hand|fingers?)\b/i.test(rest.trim()) || !isNamed(reading, first.from, at))
    return undefined
  const way = kind.direction([all, ...around])
  return guess(`${way === 'off' ? 'undo' : 'fit'} ${withArticle(yours(head))}${rest}`)
}

export const fromStuff: Rule = ({ reading: { tokens }, stretches, head, noun, rest, word, all }) => {
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
export const fromMeans: Rule = scene => {
  const { reading, first, head, noun, rest, at, word } = scene
  const { tokens, text } = reading
  if (!isNamed(reading, first.from, at)) return undefined
  if (word === 'to' && tokens[at + 1]?.tag === 'number' && head.split(' ').length < 6)
    return sure(`set ${withArticle(yours(head))}${rest}`)
  if (word !== 'with' || kind.FASTENERS.test(noun) || /^an? /i.test(head)) return undefined
  if (/ or /.test(head)) return undefined
  const means = sayTokens(text, tokens, at + 1, first.to)
  if (kind.CLEANS.test(means) && !kind.hasTool(noun)) return sure(`clean ${withArticle(yours(head))}${rest}`)
  return kind.MEASURES.test(means) && !isHandy(scene) ? sure(`measure ${withArticle(yours(head))}${rest}`) : undefined
}

export const fromTool: Rule = scene => {
  const { head, noun, rest, all, holders } = scene
  const hasWay = all.length > head.length || / (?:first|twice|once)$/i.test(head)
  if (/^(?:off|out|away)$/.test(scene.word)) return undefined
  if (!hasWay || holders.length > 0 || kind.FASTENERS.test(noun) || !isHandy(scene)) return undefined
  return sure(`use ${kind.withA(yours(head), noun)}${rest}`)
}

export const fromFresh: Rule = ({ head, rest }) =>
  kind.FRESH.test(head) && head.includes(' ') ? sure(`fit ${withArticle(head)}${rest}`) : undefined

/** "idler, one bolt": who puts things back says so, who takes them off names them with what holds them. */
const isTakenOff = ({ reading: { tokens, text }, holders, around, noun, head }: Scene): boolean =>
  !kind.tellsFitting([text, ...around]) &&
  !/^(?:\d|one|two|three|four|five|six)\b.* (?:and|of) /i.test(head) &&
  !/nails?$/i.test(noun) &&
  (kind.FASTENERS.test(noun) || holders.some(({ from }) => tokens[from]?.tag === 'number'))

export const fromFasteners: Rule = scene => {
  const { noun, head, rest, all, around, holders } = scene
  const isFastener = kind.FASTENERS.test(noun)
  if (!(isFastener || holders.length > 0) || / or (?:the|it|you) /i.test(all)) return undefined
  const way = kind.direction([all, ...around]) ?? (isTakenOff(scene) ? 'off' : undefined)
  if (way === undefined) return undefined
  return guess(`${way === 'on' ? 'fit' : isFastener ? 'undo' : 'remove'} ${withArticle(yours(head))}${rest}`)
}
