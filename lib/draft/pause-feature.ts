import { wordSet } from '@/lib/trade/list'
import type { Emit } from '@/lib/trade/model'
import type { Token } from '@/lib/trade/tagger'

/** A word of a sentence by its parts: as said, figures alike; its kind; how it ends. */
type Seen<Part> = { readonly word: Part; readonly tag: Part; readonly suffix: Part }

const OPENERS = wordSet('if when once unless until till after before because since where while as whenever')

const TENS = /^(?:twen|thir|for|fif|six|seven|eigh|nine)ty$/
const TEENS = /^(?:ten|eleven|twelve|[a-z]+teen)$/
const UNITS = /^(?:one|two|three|four|five|six|seven|eight|nine)$/

/** Figures by how many digits they have, number words by their size; other words as they are. */
const kindOfWord = (word: string): string => {
  if (/^\d/.test(word)) return '#'
  if (TENS.test(word)) return '#ty'
  if (TEENS.test(word)) return '#teen'
  return UNITS.test(word) ? '#one' : word
}

const suffixOf = (word: string): string => /(ing|ed|ly|s|er)$/.exec(word)?.[1] ?? '-'

/** @returns the words of a sentence as parts, one before and two after for its edges */
export const seenIn = <Part>(tokens: readonly Token[], partOf: (text: string) => Part): readonly Seen<Part>[] => {
  const edge = (sign: string): Seen<Part> => ({ word: partOf(sign), tag: partOf(sign), suffix: partOf(sign) })
  const seen = tokens.map(({ word, tag }) => ({
    word: partOf(kindOfWord(word)),
    tag: partOf(tag),
    suffix: partOf(suffixOf(word)),
  }))
  return [edge('^'), ...seen, edge('$'), edge('$')]
}

/** Which word opened the clause that runs at each place, by the last such word before it; `-` for none. */
export const openersOf = (tokens: readonly Token[]): readonly string[] => {
  let open = '-'
  return tokens.map(({ word }) => {
    if (OPENERS.has(word)) open = word
    return open
  })
}

/** Tells the features of the place after tokens[i]: would a writer set a comma there? */
export const eachPauseFeature = <Part>(
  seen: readonly Seen<Part>[],
  opener: Part,
  i: number,
  emit: Emit<Part>,
): void => {
  const [a, b, c, d, e] = [seen[i], seen[i + 1], seen[i + 2], seen[i + 3], seen[i + 4]]
  if (a === undefined || b === undefined || c === undefined || d === undefined) return
  emit('bias')
  emit('b', b.word)
  emit('c', c.word)
  emit('a', a.word)
  emit('d', d.word)
  emit('bc', b.word, c.word)
  emit('cd', c.word, d.word)
  emit('ab', a.word, b.word)
  if (e !== undefined) emit('cde', c.word, d.word, e.word)
  emit('bs', b.suffix)
  emit('bsc', b.suffix, c.word)
  emit('tb', b.tag)
  emit('tc', c.tag)
  emit('td', d.tag)
  emit('tbc', b.tag, c.tag)
  emit('tcd', c.tag, d.tag)
  emit('tab', a.tag, b.tag)
  emit('tbcd', b.tag, c.tag, d.tag)
  emit('tabcd', a.tag, b.tag, c.tag, d.tag)
  emit('tbwc', b.tag, c.word)
  emit('wbtc', b.word, c.tag)
  emit('tbwctd', b.tag, c.word, d.tag)
  emit('otc', opener, c.tag)
  emit('otbc', opener, b.tag, c.tag)
  emit('owc', opener, c.word)
}
