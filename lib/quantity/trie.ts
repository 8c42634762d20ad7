import { type Token, toTokens } from './tokens'

type Node<T> = { readonly next: Map<string, Node<T>>; value?: T }

/** Phrases found by their words; `T` is what a phrase means. */
export type Trie<T> = Node<T>

/** The longest phrase at a place. `to` is the index after its last token. */
export type Match<T> = { readonly value: T; readonly to: number }

const JOINERS = new Set(['-', '·', '.', '*', '×'])

const branch = <T>(node: Node<T>, key: string): Node<T> => {
  const known = node.next.get(key)
  if (known !== undefined) return known
  const fresh: Node<T> = { next: new Map() }
  node.next.set(key, fresh)
  return fresh
}

export const emptyTrie = <T>(): Trie<T> => ({ next: new Map() })

/** Adds a phrase; the first meaning given to it stays. With `isExact`, its case counts. */
export const addPhrase = <T>(trie: Trie<T>, phrase: string, value: T, isExact = false): void => {
  let node = trie
  for (const token of toTokens(phrase)) node = branch(node, isExact ? `=${token.raw}` : token.text)
  if (node.value === undefined) node.value = value
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
  let nodes: readonly Node<T>[] = [trie]
  let found: Match<T> | undefined
  for (let j = i; j < tokens.length; j++) {
    const token = tokens[j]
    if (token === undefined) break
    const onward: Node<T>[] = []
    for (const node of nodes) {
      const plain = node.next.get(token.text)
      const exact = node.next.get(`=${token.raw}`)
      if (exact !== undefined) onward.push(exact)
      if (plain !== undefined) onward.push(plain)
    }
    if (onward.length === 0) {
      if (j > i && token.isGlued && JOINERS.has(token.text)) continue
      break
    }
    nodes = onward
    for (const node of nodes) if (node.value !== undefined) found = { value: node.value, to: j + 1 }
  }
  return found
}
