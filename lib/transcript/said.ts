import type { Mark } from '@/lib/procedure/mark'
import { firstIndex } from '@/lib/procedure/search'
import type { Talk, WordRange } from './talk'

/** @returns whether a talk has no times at all: every word of an untimed text stands at nought. */
export const isUntimed = (talk: Talk): boolean => (talk.words.at(-1)?.end ?? 0) === 0

/** The running text of a talk as one string, and where each paragraph begins in it. */
const toText = ({ paragraphs }: Talk): { readonly text: string; readonly starts: readonly number[] } => {
  const starts: number[] = []
  let text = ''
  for (const paragraph of paragraphs) {
    starts.push(text.length)
    text += `${paragraph.text}\n`
  }
  return { text: text.toLowerCase(), starts }
}

/** Words of speech hold letters and digits; a hit in the middle of another word is none. */
const INNER = /[\p{L}\p{N}]/u
const isWhole = (text: string, at: number, to: number): boolean =>
  !(INNER.test(text[at - 1] ?? '') && INNER.test(text[at] ?? '')) &&
  !(INNER.test(text[to] ?? '') && INNER.test(text[to - 1] ?? ''))

const find = (text: string, said: string, from: number): number => {
  for (let at = text.indexOf(said, from); at >= 0; at = text.indexOf(said, at + 1))
    if (isWhole(text, at, at + said.length)) return at
  return -1
}

/**
 * Where marks stand in a talk without times: by the words they are made of. Marks of a kind that say the same stand one after
 * the other, in the order given.
 *
 * @returns words by id of the mark; none for a mark whose words are not in the talk
 */
export const wordsBySaid = (talk: Talk, marks: readonly Mark[]): ReadonlyMap<string, WordRange> => {
  const { text, starts } = toText(talk)
  const wordFrom = (offset: number): number => {
    const paragraph = firstIndex(starts.length, i => (starts[i] ?? 0) > offset) - 1
    const { first, last } = talk.paragraphs[paragraph] ?? { first: 0, last: 0 }
    const within = offset - (starts[paragraph] ?? 0)
    return first + firstIndex(last - first, i => (talk.words[first + i]?.to ?? 0) > within)
  }
  const reached = new Map<string, number>()
  const found = new Map<string, WordRange>()
  for (const { id, kind, said } of marks) {
    const words = said.replace(/\s+/g, ' ').trim().toLowerCase()
    if (words === '') continue
    const after = find(text, words, reached.get(kind) ?? 0)
    const at = after >= 0 ? after : find(text, words, 0)
    if (at < 0) continue
    reached.set(kind, at + 1)
    const from = wordFrom(at)
    found.set(id, { from, to: Math.max(from, wordFrom(at + words.length - 1)) + 1 })
  }
  return found
}
