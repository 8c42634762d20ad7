import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { type Span, toMilliseconds } from '@/lib/procedure/time'
import { hasNumber } from '@/lib/quantity/quantity'
import { readQuantities } from '@/lib/quantity/read'

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Articles and possessives in front of a thing's name. */
const ARTICLE = /^(?:the|a|an|your|my|our|this|that|some)\s+/i

/** What remains of the words of a spec when its quantity is taken out: usually the name of what is measured. */
const nameOfSpec = (said: string, at: number, to: number): string =>
  `${said.slice(0, at)} ${said.slice(to)}`
    .replace(/\s+/g, ' ')
    .replace(/^[\s,.;:]+|[\s,.;:]+$/g, '')
    .replace(/\s+(?:to|is|at|of|be)$/i, '')
    .replace(ARTICLE, '')

/**
 * A mark the user makes by holding on to words: its text starts as the words, cut for the kind; a spec brings the
 * quantity read in them.
 *
 * @param said the words held
 * @param span their time, seconds
 */
export const toHandMark = (kind: Kind, said: string, span: Span, id: string): Mark => {
  const words = said.replace(/\s+/g, ' ').trim()
  const bare = words.replace(/^[\s,.;:–-]+|[\s,.;:–-]+$/g, '')
  const [start, end] = [toMilliseconds(span.start), toMilliseconds(span.end)]
  const mark: Mark = { id, kind, start, end, text: sentenceCase(bare), said: words }
  if (kind === 'tool' || kind === 'material') return { ...mark, text: bare.replace(ARTICLE, '') }
  if (kind === 'caution') return { ...mark, level: 'caution' }
  if (kind !== 'spec') return mark
  const [reading] = readQuantities(words)
  if (reading === undefined) return { ...mark, basis: 'spoken' }
  const condition = reading.qualitative ?? reading.reference
  return {
    ...mark,
    text: nameOfSpec(words, reading.at, reading.to) || bare,
    basis: 'spoken',
    ...(hasNumber(reading.quantity) ? { quantity: reading.quantity } : {}),
    ...(condition === undefined ? {} : { reference: condition }),
  }
}
