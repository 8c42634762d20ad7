import type { Link, PhrasingContent } from 'mdast'
import { toString as toPlain } from 'mdast-util-to-string'
import { parseTime } from '@/lib/procedure/time'
import { formatSpan, parseSpanAddress, spanAddress } from './address'
import { PENCILLED } from './line'
import { fromNote, type ReadNote } from './mark-note'
import { withMendedLink } from './mend-link'
import { parseNote } from './note'
import { kindOfLabel, type Shown } from './shown'
import { toLine } from './text'

/** A line about a mark, taken apart. */
export type ReadLine = {
  readonly shown: Shown
  readonly note?: ReadNote
  /** Seconds. */
  readonly span?: { readonly start: number; readonly end: number }
  readonly isFlagged: boolean
  /** A time written over the link's words that is none. */
  readonly badTime?: string
}

/** A line of a summary or list: what it shows, and the ids it links to. */
export type ReadEcho = { readonly shown: Shown; readonly ids: readonly string[] }

const plain = (nodes: readonly PhrasingContent[]): string =>
  nodes.map(node => (node.type === 'break' ? ' ' : toPlain(node))).join('')

const isTimeLink = (node: PhrasingContent): node is Link =>
  node.type === 'link' && parseSpanAddress(node.url) !== undefined

const noteOf = (link: Link): ReadNote | undefined => {
  const note = link.title === null || link.title === undefined ? undefined : parseNote(link.title)
  return note && fromNote(note)
}

/** The span a time link says: its exact note where the address still agrees, then a time written over its words, then its address. */
const spanOf = (link: Link, note: ReadNote | undefined): Pick<ReadLine, 'span' | 'badTime'> => {
  const read = parseSpanAddress(link.url)
  if (read === undefined) return {}
  const noted = note?.span
  const isNoted = noted !== undefined && link.url.endsWith(spanAddress('', noted))
  const span = isNoted ? noted : { start: read.start, end: read.end ?? read.start }
  const words = toPlain(link).trim()
  if (words === '' || words === formatSpan(span)) return { span }
  const [from, to, ...more] = words.split(/\s*[–—-]\s*/).map(parseTime)
  const end = /[–—-]/.test(words) ? to : Math.max(from ?? 0, span.end)
  if (from === undefined || end === undefined || end < from || more.length > 0) return { span, badTime: words }
  return { span: { start: from, end } }
}

const unbracketed = (text: string): string => text.trim().replace(/^\(([\s\S]*)\)$/, '$1')

const isAside = (node: PhrasingContent): boolean =>
  node.type === 'emphasis' && /^\([\s\S]*\)$/.test(toPlain(node).trim())

/** A label typed without bold, as in `Check: no leaks`. */
const splitLabel = (text: string): { label?: string; rest: string } => {
  const match = /^\s*(\p{L}+(?: \([^()]*\))?):\s*/u.exec(text)
  const label = match?.[1]
  return label !== undefined && kindOfLabel(label) !== undefined
    ? { label, rest: text.slice(match?.[0].length) }
    : { rest: text }
}

/** What stands at the start of a line: nothing (steps, which have no brackets either), a label, or a bare name. */
export type LineForm = 'step' | 'labelled' | 'bare'

/** @returns the parts of a line from its inline content, time link and flag left out. */
const readParts = (nodes: readonly PhrasingContent[], form: LineForm): Shown => {
  const [first] = nodes
  const bold = first?.type === 'strong' && form === 'labelled' ? toLine(toPlain(first)) : ''
  const isLabel = bold.endsWith(':') && kindOfLabel(bold.slice(0, -1)) !== undefined
  let label = isLabel ? bold.slice(0, -1) : undefined
  const rest = isLabel ? nodes.slice(1) : nodes
  const isSpec = label !== undefined && kindOfLabel(label) === 'spec'
  const at = isSpec ? rest.findIndex(node => node.type === 'strong') : -1
  const asideAt = form === 'step' ? -1 : rest.findLastIndex(isAside)
  const end = asideAt < 0 || asideAt < at ? rest.length : asideAt
  let text = toLine(plain(rest.slice(0, at < 0 ? end : at)))
  if (label === undefined && form === 'labelled') {
    const split = splitLabel(text)
    label = split.label
    text = split.rest
  }
  const after = asideAt < 0 ? '' : toLine(plain(rest.slice(asideAt + 1)))
  const value = at < 0 ? undefined : toLine(plain(rest.slice(at, at + 1)))
  const tail = at < 0 ? '' : toLine(plain(rest.slice(at + 1, end))).replace(/^[,;] ?/, '')
  const asideNode = asideAt < 0 || asideAt < at ? undefined : rest[asideAt]
  return {
    ...(label === undefined ? {} : { label }),
    text: toLine(`${text} ${after}`),
    ...(value === undefined || value === '' ? {} : { value }),
    ...(tail === '' ? {} : { tail }),
    ...(asideNode === undefined ? {} : { aside: toLine(unbracketed(toPlain(asideNode))) }),
  }
}

/**
 * @param isLinkless the time links of the whole sheet are words now: times at the end of lines are read in their place
 * @returns a line that defines a mark, taken apart
 */
export const readLine = (given: readonly PhrasingContent[], form: LineForm, isLinkless: boolean): ReadLine => {
  const lost = isLinkless ? (form === 'step' ? 'all-spans' : 'all-times') : 'some'
  const nodes = given.some(isTimeLink) ? given : withMendedLink(given, lost)
  const at = nodes.findLastIndex(isTimeLink)
  const link = nodes[at]
  const isFlag = (node: PhrasingContent) => node.type === 'emphasis' && toPlain(node).trim() === PENCILLED
  const isFlagged = nodes.slice(at + 1).some(isFlag)
  const rest = nodes.filter((node, i) => i !== at && !(i > at && isFlag(node)))
  const note = link === undefined || link.type !== 'link' ? undefined : noteOf(link)
  const time = link === undefined || link.type !== 'link' ? {} : spanOf(link, note)
  return {
    shown: readParts(rest, form),
    ...(note === undefined ? {} : { note }),
    ...time,
    isFlagged,
  }
}

/** Where a mark is said, as a list's line names it; its numbers may have gone with their links. */
const WHERE = /^\((?:(?:steps? )?(?:\d+|footage)(?:, (?:\d+|footage))*|(?:steps?)?[\s,]*)(?:, pencilled)?\)$/

const isWhere = (node: PhrasingContent): boolean =>
  node.type === 'emphasis' && (node.children.some(isTimeLink) || WHERE.test(toPlain(node).trim()))

/** @returns a line of a summary or list, taken apart. */
export const readEcho = (nodes: readonly PhrasingContent[], form: LineForm): ReadEcho => {
  const at = nodes.findLastIndex(isWhere)
  const links = nodes[at]
  const ids =
    links?.type === 'emphasis' ? links.children.filter(isTimeLink).flatMap(link => noteOf(link)?.id ?? []) : []
  return { shown: readParts(at < 0 ? nodes : [...nodes.slice(0, at), ...nodes.slice(at + 1)], form), ids }
}

/** @returns a row of the table of specs: its shown parts, the id it links to, the step number it names. */
export const readSpecRow = (
  cells: readonly (readonly PhrasingContent[])[],
): { readonly shown: Shown; readonly ids: readonly string[]; readonly number: number | undefined } => {
  const [text = '', value = '', tail = '', aside = '', step = ''] = cells.map(cell => toLine(plain(cell)))
  const link = cells[4]?.find(isTimeLink)
  const id = link === undefined ? undefined : noteOf(link)?.id
  const number = /\d+/.exec(step)?.[0]
  return {
    shown: {
      label: 'Spec',
      text,
      ...(value === '' ? {} : { value }),
      ...(tail === '' ? {} : { tail }),
      ...(aside === '' ? {} : { aside }),
    },
    ids: id === undefined ? [] : [id],
    number: number === undefined ? undefined : Number(number),
  }
}
