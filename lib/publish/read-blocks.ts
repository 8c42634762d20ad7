import type { BlockContent, DefinitionContent, List, ListItem, PhrasingContent, RootContent } from 'mdast'
import { toString as toPlain } from 'mdast-util-to-string'
import type { Kind } from '@/lib/procedure/kinds'
import type { Unread } from './read-back'
import { type ReadLine, readLine } from './read-line'
import { kindOfLabel } from './shown'
import { toLine } from './text'

/** A mark as it stands in the text, before its fields are settled. */
export type Sighting = {
  readonly kind: Kind
  readonly read: ReadLine
  /** Line of the text, counted from 1. */
  readonly line: number
  /** Alternative text of the picture beneath it. */
  readonly alt?: string
}

/** A step with what stands before and beneath it. */
export type StepSighting = Sighting & { readonly owned: readonly Sighting[] }

/** The text being read, for quoting what was not understood. */
export type Source = {
  readonly text: string
  /** Whether its time links are words now: none is left, but a span stands at the end of a line. */
  readonly isLinkless: boolean
  readonly unread: Unread[]
}

type Block = RootContent | BlockContent | DefinitionContent | ListItem

export const lineOf = (node: Block): number => node.position?.start.line ?? 1

export const noteUnread = (source: Source, node: Block, why: string, id?: string): void => {
  const { start, end } = node.position ?? {}
  const text = start === undefined || end === undefined ? toPlain(node) : source.text.slice(start.offset, end.offset)
  source.unread.push({ line: lineOf(node), text, why, ...(id === undefined ? {} : { id }) })
}

const noteTime = (source: Source, line: number, { badTime }: ReadLine): void => {
  if (badTime === undefined) return
  const why = 'expected a time such as 0:16–0:21, its start before its end; the time stays as it was'
  source.unread.push({ line, text: badTime, why })
}

const NO_LABEL = 'expected a line that opens with Spec:, Tool:, Material:, Check:, Reason:, Symptom: or a signal word'

/** Reads a line that must say its kind. */
const readLabelled = (source: Source, node: Block, children: readonly PhrasingContent[]): Sighting | undefined => {
  const read = readLine(children, 'labelled', source.isLinkless)
  const kind = read.shown.label === undefined ? undefined : kindOfLabel(read.shown.label)
  if (kind === undefined || kind === 'step') {
    noteUnread(source, node, NO_LABEL, read.note?.id)
    return undefined
  }
  noteTime(source, lineOf(node), read)
  return { kind, read, line: lineOf(node) }
}

const readItem = (source: Source, item: ListItem): readonly Sighting[] => {
  const [first, ...rest] = item.children
  for (const extra of rest) noteUnread(source, extra, 'expected nothing beneath this line')
  if (first?.type !== 'paragraph') {
    if (first !== undefined) noteUnread(source, first, NO_LABEL)
    return []
  }
  const sighting = readLabelled(source, first, first.children)
  return sighting === undefined ? [] : [sighting]
}

/** @returns what a bulleted list of labelled lines holds. */
export const readDetails = (source: Source, list: List): readonly Sighting[] =>
  list.children.flatMap(item => readItem(source, item))

/** @returns the cautions of a block quote. */
export const readQuote = (source: Source, quote: Block & { type: 'blockquote' }): readonly Sighting[] =>
  quote.children.flatMap(child => {
    if (child.type === 'paragraph') return readLabelled(source, child, child.children) ?? []
    noteUnread(source, child, 'expected a caution: a signal word in bold, then the message')
    return []
  })

const pictureOf = (block: Block): string | undefined => {
  const [only, ...rest] = block.type === 'paragraph' ? block.children : []
  return only?.type === 'image' && rest.length === 0 ? (only.alt ?? '') : undefined
}

/** @returns the steps of a numbered list; `before` stands before the first of them. */
export const readSteps = (source: Source, list: List, before: readonly Sighting[]): readonly StepSighting[] =>
  list.children.flatMap((item, i): readonly StepSighting[] => {
    const [first, ...rest] = item.children
    const children = first?.type === 'paragraph' ? first.children : []
    const isBare = first?.type === 'paragraph' && pictureOf(first) === undefined
    const owned: Sighting[] = i === 0 ? [...before] : []
    let alt: string | undefined
    for (const block of isBare ? rest : item.children) {
      const picture = pictureOf(block)
      if (picture !== undefined) alt = picture
      else if (block.type === 'list') owned.push(...readDetails(source, block))
      else if (block.type === 'blockquote') owned.push(...readQuote(source, block))
      else noteUnread(source, block, 'expected a picture, or a list of what belongs to the step')
    }
    const read = readLine(children, 'step', source.isLinkless)
    noteTime(source, lineOf(item), read)
    return [{ kind: 'step', read, line: lineOf(item), owned, ...(alt === undefined ? {} : { alt }) }]
  })

/** @returns the text of inline content as a line. */
export const lineText = (nodes: readonly PhrasingContent[]): string =>
  toLine(nodes.map(node => (node.type === 'break' ? ' ' : toPlain(node))).join(''))
