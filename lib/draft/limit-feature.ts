import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { onceForText } from '@/lib/trade/memo'
import { toDimension } from './dimension'
import type { Reading } from './feature'
import { isTurnerSize, sizeFeatures } from './size-feature'
import { cuesOf } from './spec-cue'

/** A text with straight apostrophes, as the patterns of limits have them; places stay the same. */
export const straight = (text: string): string => (text.includes('’') ? text.replaceAll('’', "'") : text)

/** Takes back what was just said. */
const RETRACTS =
  /^(?:(?:oh|um|uh|er|and|so|well|right|okay)[,.]? )*(?:sorry|no,|no wait|wait|hang on|hold on|scratch that|strike that|correction|i correct|i tell a lie|i beg your pardon|i'm lying|i lie|let me correct|not )|\b(?:i tell a lie|i correct myself|i misspoke|strike that|scratch that|i meant|i mean to say|let me correct)\b/i

const bucket = (share: number): string => (share < 0.34 ? 'early' : share < 0.67 ? 'middle' : 'late')

const around = (reading: Reading, at: number, to: number): readonly string[] => {
  const { tokens } = reading
  const first = tokens.findIndex(token => token.to > at)
  const last = tokens.findLastIndex(token => token.at < to)
  const name = (i: number): string => {
    const token = tokens[i]
    if (token === undefined) return 'edge'
    if (token.tag === 'number') return '#'
    if (['verb', 'third', 'past', 'ing'].includes(token.tag)) return token.base ?? token.tag
    return ['noun', 'word', 'part', 'tool', 'material', 'adjective', 'adverb'].includes(token.tag)
      ? token.tag
      : token.word
  }
  const found = [
    `b1:${name(first - 1)}`,
    `b2:${name(first - 2)} ${name(first - 1)}`,
    `a1:${name(last + 1)}`,
    `a2:${name(last + 1)} ${name(last + 2)}`,
  ]
  for (let i = Math.max(0, first - 5); i < first; i++) found.push(`b:${name(i)}`)
  for (let i = last + 1; i < Math.min(tokens.length, last + 5); i++) found.push(`a:${name(i)}`)
  const clause = reading.clauses.find(one => first >= one.from && first < one.to)
  if (clause !== undefined)
    found.push(`clause:${clause.frame}${clause.isNegated ? '-not' : ''}`, `clause-marker:${clause.marker ?? 'none'}`)
  if (
    tokens
      .slice(Math.max(0, first - 4), first)
      .some(token => token.word === 'my' || token.word === 'mine' || token.word === 'ours')
  )
    found.push('mine')
  return found
}

/** Which ends of a quantity are told. */
export const shapeOf = (quantity: Quantity): string => {
  const { low, high } = quantity
  if (!hasNumber(quantity)) return 'qualitative'
  if (low !== undefined && high !== undefined) return 'range'
  return low !== undefined ? 'least' : high !== undefined ? 'most' : 'nominal'
}

/** What a quantity measures, as the model has it. */
export const dimensionOf = ({ unit }: Quantity): string => toDimension(unit) ?? (unit === undefined ? 'none' : 'other')

/** A feature of a limit's sentence as one of the limit, and of one that is no plain value; none for those that count or that place words. */
const asOfItsSentence = onceForText((name: string) => {
  if (/^(?:w|word|tag|tag2|long|order-then)[:]/.test(name) || name.includes('@')) return undefined
  return { own: `in:${name}`, shaped: onceForText(shape => `${shape}-in:${name}`) }
})

/** Names of what holds of a limit in its sentence, the i-th. */
export const featuresOf = (
  readings: readonly Reading[],
  i: number,
  limit: Limit,
  quantity: Quantity,
  count: number,
  isRepeat: boolean,
): readonly string[] => {
  const reading = readings[i]
  if (reading === undefined) return []
  const { nominal } = quantity
  const said = straight(reading.text)
  const shape = shapeOf(quantity)
  const dimension = dimensionOf(quantity)
  const own: string[] = []
  for (const name of reading.own) {
    const told = asOfItsSentence(name)
    if (told === undefined) continue
    own.push(told.own)
    if (shape !== 'nominal') own.push(told.shaped(shape))
  }
  const after: string[] = []
  for (const name of readings[i + 1]?.own ?? [])
    if (name === 'question' || name === 'all-past' || name === 'has:i') after.push(`next-${name}`)
  const next = readings[i + 1]?.text ?? ''
  if (RETRACTS.test(next)) after.push('next-retracts')
  if (RETRACTS.test(reading.text)) after.push('retracts')
  const near = around(reading, limit.at, limit.to)
  const before = readings[i - 1]?.isQuestion === true ? ['answers'] : []
  return [
    'bias',
    `shape:${shape}`,
    `of:${dimension}`,
    `${shape}-of:${dimension}`,
    `count:${Math.min(3, count)}`,
    ...own,
    ...after,
    ...before,
    ...near.flatMap(name => (name.startsWith('clause:') ? [name, `${shape}+${name}`] : [name])),
    ...(limit.isApproximate === true ? ['approximate', `approximate-${shape}`] : []),
    ...(limit.reference === undefined ? [] : ['referenced']),
    ...(limit.notes.some(note => note.kind === 'withdrawn') ? ['withdrew'] : []),
    ...(limit.notes.some(note => note.kind === 'question') ? ['open'] : []),
    ...(isRepeat ? ['repeat'] : []),
    ...(isTurnerSize(reading.text, limit.at, limit.to) ? ['turner-size'] : []),
    ...sizeFeatures(limit, quantity, dimension, shape, said),
    ...cuesOf(said, limit.at, limit.to, shape),
    ...(limit.doubt === undefined ? ['sure'] : [`doubt:${limit.doubt}`, `doubt:${limit.doubt}+${shape}`]),
    ...(nominal !== undefined && Number.isInteger(nominal) ? [] : ['fraction']),
    `at:${bucket(i / Math.max(1, readings.length - 1))}`,
    i / Math.max(1, readings.length) < 0.1 ? 'opening' : 'later',
    ...(reading.own.includes('has:money') ? ['money'] : []),
    `words:${Math.min(4, Math.floor(reading.tokens.length / 6))}`,
  ]
}
