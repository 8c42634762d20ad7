import { type Token, toTokens } from './tokens'

type Node<T> = { readonly next: Map<string, Node<T>>; readonly exact: Map<string, Node<T>>; value?: T }

/** Phrases found by their words; `T` is what a phrase means. */
export type Trie<T> = Node<T>

/** The longest phrase at a place. `to` is the index after its last token. */
export type Match<T> = { readonly value: T; readonly to: number }

const JOINERS = new Set(['-', '·', '.', '*', '×'])

const node = <T>(): Node<T> => ({ next: new Map(), exact: new Map() })

const branch = <T>(from: Map<string, Node<T>>, key: string): Node<T> => {
  const known = from.get(key)
  if (known !== undefined) return known
  const fresh = node<T>()
  from.set(key, fresh)
  return fresh
}

export const emptyTrie = <T>(): Trie<T> => node()

/** Adds a phrase; the first meaning given to it stays. With `isExact`, its case counts. */
export const addPhrase = <T>(trie: Trie<T>, phrase: string, value: T, isExact = false): void => {
  let at = trie
  for (const token of toTokens(phrase)) at = isExact ? branch(at.exact, token.raw) : branch(at.next, token.text)
  if (at.value === undefined) at.value = value
}

/** @returns a trie of phrases, each row a meaning with its phrases separated by commas */
export const trieOf = <T>(rows: readonly (readonly [value: T, phrases: string])[]): Trie<T> => {
  const trie = emptyTrie<T>()
  for (const [value, phrases] of rows) for (const phrase of phrases.split(',')) addPhrase(trie, phrase.trim(), value)
  return trie
}

/**
 * The longest phrase that starts at token `i`. A hyphen, dot or raised dot between words is passed over, so that
 * `foot-pounds`, `N·m`, `ft.lbs` and `hand-tight` match their words.
 */
export const longestMatch = <T>(trie: Trie<T>, tokens: readonly Token[], i: number): Match<T> | undefined => {
  const first = tokens[i]
  if (first === undefined || !(trie.next.has(first.text) || trie.exact.has(first.raw))) return undefined
  return walk(trie, tokens, i, i)
}

const walk = <T>(from: Node<T>, tokens: readonly Token[], i: number, start: number): Match<T> | undefined => {
  const token = tokens[i]
  if (token === undefined) return undefined
  const plain = from.next.get(token.text)
  const exact = from.exact.get(token.raw)
  if (plain === undefined && exact === undefined)
    return i > start && token.isGlued && JOINERS.has(token.text) ? walk(from, tokens, i + 1, start) : undefined
  const a = plain === undefined ? undefined : reach(plain, tokens, i + 1, start)
  const b = exact === undefined ? undefined : reach(exact, tokens, i + 1, start)
  return a === undefined || (b !== undefined && b.to >= a.to) ? b : a
}

const reach = <T>(at: Node<T>, tokens: readonly Token[], to: number, start: number): Match<T> | undefined => {
  const further = at.next.size + at.exact.size === 0 ? undefined : walk(at, tokens, to, start)
  return further ?? (at.value === undefined ? undefined : { value: at.value, to })
}
