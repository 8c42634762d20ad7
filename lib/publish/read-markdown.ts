import type { Root, RootContent } from 'mdast'
import { toString as toPlain } from 'mdast-util-to-string'
import type { Mark } from '@/lib/procedure/mark'
import { type Result, refusal, success } from '@/lib/procedure/problem'
import type { Heading } from '@/lib/procedure/project'
import { type Assembled, assemble, type FrontSighting } from './assemble'
import { echoesOf, type SeenEcho } from './echo'
import { shownScope } from './front-matter'
import { markdown } from './processor'
import type { ReadBack } from './read-back'
import { lineOf, noteUnread, type Source } from './read-blocks'
import { MISSING_FRONT, readFrontMatter } from './read-front-matter'
import { type Gathered, readHead } from './read-head'
import { SECTION_READERS, sectionByContent } from './read-sections'
import { SECTIONS } from './sections'
import { toLine } from './text'

/**
 * A text processor may have turned every quotation mark into a curly one, which ends no title of a link. Only where no time link
 * has straight ones left; each is one character for one, so that places stay.
 */
const withStraightQuotes = (text: string): string =>
  /#t=[\d.,]+ "/.test(text)
    ? text
    : text.replace(
        /(\]\([^()\s]*#t=[\d.,]+ )[“”„]([^“”„"\n]*)[“”„]\)/gu,
        (_, before: string, title: string) => `${before}"${title}")`,
      )

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

/** Headings are known in capitals and small letters alike. */
const sectionReader = (title: string) =>
  SECTION_READERS.get(title) ?? [...SECTION_READERS].find(([name]) => name.toLowerCase() === title.toLowerCase())?.[1]

const readPart = (g: Gathered, { title, blocks }: Part, parts: readonly Part[]): void => {
  const meant = sectionByContent(blocks)
  const isThere = meant !== undefined && parts.some(part => part.title.toLowerCase() === meant.toLowerCase())
  const read = sectionReader(title) ?? (meant === undefined || isThere ? undefined : sectionReader(meant))
  if (read !== undefined) {
    read(g, blocks.slice(1))
    return
  }
  const [heading, ...rest] = blocks
  const why = `a sheet has no section "${title}"; it has ${[...SECTION_READERS.keys()].join(', ')}`
  if (heading !== undefined) noteUnread(g.source, heading, why)
  for (const node of rest) noteUnread(g.source, node, `it stands under "${title}", which is no section of a sheet`)
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

/** A repetition whose link is gone is of the marks of its name. */
const withIds =
  (marks: readonly Mark[]) =>
  (echo: SeenEcho): SeenEcho => {
    if (echo.ids.length > 0) return echo
    const same = marks.filter(({ kind, text }) => kind === echo.kind && toLine(text) === echo.shown.text)
    return { ...echo, ids: same.map(({ id }) => id) }
  }

const toReadBack = (g: Gathered, { marks, lines, fresh, untimed }: Assembled): ReadBack => ({
  heading: toHeading(g),
  front: g.front.lines,
  footage: g.front.footage,
  marks,
  lines,
  fresh,
  untimed,
  echoes: [...g.said, ...echoesOf(marks, g.echoes.map(withIds(marks)))],
  unread: [...g.front.unread, ...g.source.unread].sort((a, b) => a.line - b.line),
  isKeptOnly: g.front.isKeptOnly,
})

/** A span at the end of a line, as a time link leaves it that lost its address. */
const BARE_SPAN = /\d:\d\d *[–—-] *\d+(?::\d\d)+ *(?:\*pencilled\*)? *$/m

/** Whether a line of a list at the front, whose link is gone, repeats a mark of the same name: it is compared with that one. */
const isRepetition = (g: Gathered, { kind, read: { shown }, line }: FrontSighting): boolean => {
  const all = [...g.steps.flatMap(step => [step, ...step.owned]), ...g.loose]
  const same = all.filter(other => other.kind === kind && other.read.shown.text === shown.text)
  const ids = same.flatMap(({ read }) => read.note?.id ?? [])
  if (same.length > 0) g.echoes.push({ ids, kind, shown, section: 'list', line })
  return same.length > 0
}

/**
 * Reads a sheet back from its Markdown, also after a hand edited it.
 *
 * @param text as `toSheetMarkdown` wrote it
 * @returns the same heading and marks (all but the words spoken and fields a sheet has no place for), what repeats them
 *   otherwise, and what was not understood; problem `not-a-sheet` where there is nothing of a sheet in it. Never throws.
 */
export const parseSheetMarkdown = (text: string): Result<ReadBack> => {
  const straight = withStraightQuotes(text.replace(/^\uFEFF/, ''))
  const source: Source = {
    text: straight,
    isLinkless: !straight.includes('#t=') && BARE_SPAN.test(straight),
    unread: [],
  }
  const root = markdown.parse(source.text)
  const parts = partsOf(root)
  const [yaml] = root.children
  // Show notes have some of these headings too.
  const hasSteps = parts.some(part => sectionReader(part.title) === sectionReader(SECTIONS.steps))
  if (yaml?.type !== 'yaml' && !hasSteps && !/#t=[\d.,]+ "/.test(source.text)) {
    const message =
      'this is not a sheet: expected front matter between --- lines or a section "## Steps". Choose a Markdown file that Tellwright published.'
    return refusal({ code: 'not-a-sheet', message, place: { line: 1 } })
  }
  const front = yaml?.type === 'yaml' ? readFrontMatter(yaml.value, lineOf(yaml) + 1) : MISSING_FRONT
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
    else readPart(g, part, parts)
  const added = g.added.filter(each => !isRepetition(g, each))
  const assembled = assemble({ steps: g.steps, loose: g.loose, front: added })
  return success(toReadBack(g, assembled))
}
