import type { Token } from '@/lib/trade/tagger'
import type { Clause } from './clause'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { FASTENERS } from './wording-kinds'
import { fromInverted } from './wording-place'
import { fromLatePassive, fromMove, fromPassive } from './wording-told'
import { DIRECT } from './wording-verb'

const NAMING: ReadonlySet<string> = new Set([
  'part',
  'tool',
  'material',
  'noun',
  'word',
  'adjective',
  'number',
  'verb',
  'ing',
])

const IS = /^(?:is|are|gets)$/

/** "Mould cleaner is sprayed on", "wet vacuum takes the water": a verb by its tag, told of behind; undefined for an order. */
const asTold = (tokens: readonly Token[], clause: Clause): Clause | undefined => {
  let at = clause.start + 1
  while (at < clause.to && NAMING.has(tokens[at]?.tag ?? '') && !tokens[at]?.isAfterPause) at++
  const token = tokens[at]
  if (token === undefined || at >= clause.to || at === clause.start + 1 || token.isAfterPause) return undefined
  if (token.tag !== 'third' && !IS.test(token.word)) return undefined
  const past = tokens.findIndex(({ tag }, i) => i > at && i < clause.to && tag === 'past')
  return { ...clause, frame: 'passive', verb: IS.test(token.word) && past >= 0 ? past : at }
}

const MOVES = /^(?:go|goes|come|comes)$/
const WAY = /^(?:on|off|in|out|up|down|back)$/

/**
 * What a clause says that has the frame of an order by its first word's tag alone: "last job down here", "dust goes in a
 * bag", "on go the rollers", "the pins get a film of grease".
 *
 * @returns undefined for an order; else what it says, and whether a thing and its place follow the first word
 */
export const takenForOrder = (
  reading: Reading,
  clause: Clause,
): { readonly order?: string | undefined; readonly isPlace?: true } | undefined => {
  const { tokens, text } = reading
  const { from, start, to } = clause
  const verb = tokens[clause.verb ?? -1]?.word ?? ''
  if (verb === 'meantime') return { isPlace: true }
  if (verb === 'last') return {}
  const isNamed =
    tokens[from]?.isAfterPause === false &&
    tokens[from]?.tag !== 'and' &&
    /^(?:part|tool|material|noun|word)$/.test(tokens[from - 1]?.tag ?? '')
  if (verb === 'get' && isNamed) return {}
  if (clause.verb !== start) return undefined
  const object = tokens[start + 1]?.word ?? ''
  if (MOVES.test(verb) && WAY.test(tokens[start - 1]?.word ?? '') && DIRECT.test(object))
    return { order: fromInverted(sayTokens(text, tokens, start - 1, to)) }
  if (verb !== 'let' && MOVES.test(object)) return { order: fromMove(reading, clause, start + 1) }
  // "Heat makes it grow", "lamp bolt four newton metres".
  if (tokens[start + 1]?.tag === 'third') return {}
  if (FASTENERS.test(verb) && tokens[start + 1]?.tag === 'number' && tokens[start + 2]?.tag === 'unit') return {}
  const told = asTold(tokens, clause)
  return told === undefined ? undefined : { order: fromPassive(reading, told) ?? fromLatePassive(reading, told) }
}
