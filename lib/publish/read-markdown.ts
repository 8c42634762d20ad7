import type { Root, RootContent } from 'mdast'
import { toString as toPlain } from 'mdast-util-to-string'
import { type Result, refusal, success } from '@/lib/procedure/problem'
import type { Heading } from '@/lib/procedure/project'
import { type Assembled, assemble } from './assemble'
import { echoesOf } from './echo'
import { shownScope } from './front-matter'
import { markdown } from './processor'
import type { ReadBack } from './read-back'
import { lineOf, noteUnread, type Source } from './read-blocks'
import { type ReadFront, readFrontMatter } from './read-front-matter'
import { type Gathered, readHead } from './read-head'
import { SECTION_READERS } from './read-sections'
import { toLine } from './text'

type Part = { readonly title: string; readonly blocks: readonly RootContent[] }

/** The blocks under each heading of level 2; the first part has none. */
const partsOf = (root: Root): readonly Part[] => {
  const parts: { title: string; blocks: RootContent[] }[] = [{ title: '', blocks: [] }]
  for (const node of root.children) {
    if (node.type === 'heading' && node.depth === 2) parts.push({ title: toLine(toPlain(node)), blocks: [node] })
    else parts.at(-1)?.blocks.push(node)
  }
  return parts
}

const readPart = (g: Gathered, { title, blocks }: Part): void => {
  const read = SECTION_READERS.get(title)
  if (read !== undefined) read(g, blocks.slice(1))
  else for (const node of blocks) noteUnread(g.source, node, `a sheet has no section "${title}"`)
}

const toHeading = ({ front, scope, references }: Gathered): Heading => {
  const { heading } = front
  const isExactScope = heading.scope !== undefined && shownScope(heading.scope) === scope
  const shownAs = (list: Heading['references']) => JSON.stringify(list.map(r => [toLine(r.title), toLine(r.part)]))
  const noted = heading.references
  const isExactReferences = noted !== undefined && shownAs(asShown(noted)) === shownAs(references)
  return {
    title: heading.title ?? '',
    equipment: heading.equipment ?? '',
    scope: isExactScope ? (heading.scope ?? '') : scope,
    ...(heading.interval === undefined ? {} : { interval: heading.interval }),
    revision: heading.revision ?? '',
    author: heading.author ?? '',
    references: isExactReferences ? noted : references,
  }
}

/** References as their lines read: an empty one has no line, one without a title reads as its part. */
const asShown = (list: Heading['references']): Heading['references'] =>
  list.flatMap(({ title, part }) => {
    const [name, rest] = [toLine(title), toLine(part)]
    if (name === '' && rest === '') return []
    return name === '' ? [{ title: rest, part: '' }] : [{ title: name, part: rest }]
  })

const toReadBack = (g: Gathered, { marks, lines, fresh }: Assembled): ReadBack => ({
  heading: toHeading(g),
  footage: g.front.footage,
  marks,
  lines,
  fresh,
  echoes: [...g.said, ...echoesOf(marks, g.echoes)],
  unread: [...g.front.unread, ...g.source.unread].sort((a, b) => a.line - b.line),
  isKeptOnly: g.front.isKeptOnly,
})

/**
 * Reads a sheet back from its Markdown, also after a hand edited it.
 *
 * @param text as `toSheetMarkdown` wrote it
 * @returns the same heading and marks (all but the words spoken and fields a sheet has no place for), what repeats them
 *   otherwise, and what was not understood; problem `not-a-sheet` where there is nothing of a sheet in it. Never throws.
 */
export const parseSheetMarkdown = (text: string): Result<ReadBack> => {
  const source: Source = { text: text.replace(/^\uFEFF/, ''), unread: [] }
  const root = markdown.parse(source.text)
  const parts = partsOf(root)
  const [yaml] = root.children
  if (yaml?.type !== 'yaml' && !parts.some(part => SECTION_READERS.has(part.title))) {
    const message =
      'this is not a sheet: expected front matter between --- lines or a section such as "## Steps". Choose a Markdown file that Tellwright published.'
    return refusal({ code: 'not-a-sheet', message, place: { line: 1 } })
  }
  const front: ReadFront =
    yaml?.type === 'yaml'
      ? readFrontMatter(yaml.value, lineOf(yaml) + 1)
      : { heading: {}, footage: null, isKeptOnly: false, unread: [] }
  const g: Gathered = {
    source,
    front,
    steps: [],
    loose: [],
    added: [],
    echoes: [],
    said: [],
    scope: '',
    references: [],
  }
  for (const [i, part] of parts.entries())
    if (i === 0) readHead(g, part.blocks)
    else readPart(g, part)
  const assembled = assemble({ steps: g.steps, loose: g.loose, front: g.added })
  return success(toReadBack(g, assembled))
}
