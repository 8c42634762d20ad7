import type { Paragraph, RootContent } from 'mdast'
import { toString as toPlain } from 'mdast-util-to-string'
import type { Heading } from '@/lib/procedure/project'
import type { FrontSighting } from './assemble'
import type { SeenEcho } from './echo'
import type { Echo } from './read-back'
import { lineOf, lineText, noteUnread, type Sighting, type Source, type StepSighting } from './read-blocks'
import type { ReadFront } from './read-front-matter'
import { toLine } from './text'
import { formatInterval } from './words'

/** What is gathered while walking the sections. */
export type Gathered = {
  readonly source: Source
  readonly front: ReadFront
  readonly steps: StepSighting[]
  readonly loose: Sighting[]
  readonly added: FrontSighting[]
  readonly echoes: SeenEcho[]
  readonly said: Echo[]
  scope: string
  references: Heading['references']
}

/** Notes what a repetition of the heading says, where it is not what the front matter says. */
export const saidOfHeading = (
  g: Gathered,
  node: RootContent,
  section: string,
  key: keyof Echo['heading'],
  value: string,
) => {
  const known = g.front.heading[key] ?? ''
  if (toLine(known) !== value)
    g.said.push({ line: lineOf(node), section, ids: [], fields: {}, heading: { [key]: value } })
}

const NOTICES = [/^Not fit for release: /, /^Left out: /, /^Unchecked: /]

const readHeadLine = (g: Gathered, node: Paragraph): void => {
  const [first] = node.children
  const label = first?.type === 'strong' ? toPlain(first).replace(/:$/, '') : ''
  const value = lineText(node.children.slice(1))
  if (label === 'Equipment' || label === 'Revision' || label === 'Author')
    saidOfHeading(g, node, 'head', label.toLowerCase() as 'equipment' | 'revision' | 'author', value)
  else if (label === 'Due' && (g.front.lines === undefined || value === formatInterval(g.front.heading.interval)))
    return
  else if (label !== 'Footage') noteUnread(g.source, node, 'the front matter says when it is due; change it there')
}

/** Reads what stands before the first section. */
export const readHead = (g: Gathered, blocks: readonly RootContent[]): void => {
  for (const node of blocks) {
    if (node.type === 'yaml') continue
    if (node.type === 'heading' && node.depth === 1) {
      const title = toLine(toPlain(node))
      const isStandIn = title === 'Untitled procedure' && toLine(g.front.heading.title ?? '') === ''
      if (!isStandIn) saidOfHeading(g, node, 'title', 'title', title)
    } else if (node.type === 'list') {
      for (const item of node.children) {
        const [first] = item.children
        if (first?.type === 'paragraph') readHeadLine(g, first)
        else noteUnread(g.source, item, 'expected a line such as `**Revision:** B`')
      }
    } else if (node.type !== 'blockquote' || !NOTICES.some(notice => notice.test(toPlain(node))))
      noteUnread(g.source, node, 'expected the title, the head lines and the notices of a sheet here')
  }
}
