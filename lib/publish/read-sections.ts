import type { Nodes, Paragraph, RootContent, Table } from 'mdast'
import { toString as toPlain } from 'mdast-util-to-string'
import type { Kind } from '@/lib/procedure/kinds'
import { parseSpanAddress } from './address'
import { SIGN_OFF_ROWS } from './head'
import { lineOf, lineText, noteUnread, readDetails, readQuote, readSteps, type Sighting } from './read-blocks'
import { type Gathered, saidOfHeading } from './read-head'
import { readEcho, readSpecRow } from './read-line'
import { SECTIONS, SPEC_COLUMNS } from './sections'
import { kindOfLabel } from './shown'
import { toLine } from './text'
import { CLOSING_HEADING, CLOSING_NOTE } from './words'

const itemsOf = (g: Gathered, blocks: readonly RootContent[]): readonly Paragraph[] =>
  blocks.flatMap(node => {
    if (node.type !== 'list') {
      noteUnread(g.source, node, 'expected a list here')
      return []
    }
    return node.children.flatMap(item => {
      const [first, ...rest] = item.children
      for (const extra of rest) noteUnread(g.source, extra, 'expected nothing beneath this line')
      if (first?.type === 'paragraph') return [first]
      noteUnread(g.source, item, 'expected a line of text here')
      return []
    })
  })

/** A summary or list at the front: what has an id repeats a mark, what has none was added by hand. */
const readFrontList = (g: Gathered, section: string, kind: Kind, blocks: readonly RootContent[]): void => {
  for (const paragraph of itemsOf(g, blocks)) {
    const { shown, ids } = readEcho(paragraph.children, kind === 'caution' ? 'labelled' : 'bare')
    const line = lineOf(paragraph)
    const isCaution = shown.label !== undefined && kindOfLabel(shown.label) === 'caution'
    if (ids.length > 0) g.echoes.push({ ids, kind, shown, section, line })
    else if (kind === 'caution' && !isCaution)
      noteUnread(g.source, paragraph, 'expected a signal word in bold, then the message')
    else g.added.push({ kind, read: { shown, isFlagged: false }, line })
  }
}

const readSpecTable = (g: Gathered, table: Table): void => {
  for (const row of table.children.slice(1)) {
    const { shown, ids, number } = readSpecRow(row.children.map(cell => cell.children))
    const line = row.position?.start.line ?? 1
    if (ids.length > 0) g.echoes.push({ ids, kind: 'spec', shown, section: SECTIONS.specs, line })
    else
      g.added.push({
        kind: 'spec',
        read: { shown, isFlagged: false },
        line,
        ...(number === undefined ? {} : { number }),
      })
  }
}

const readStepsSection = (g: Gathered, blocks: readonly RootContent[]): void => {
  let before: Sighting[] = []
  for (const node of blocks) {
    if (node.type === 'blockquote') before.push(...readQuote(g.source, node))
    else if (node.type === 'list' && node.ordered === true) {
      g.steps.push(...readSteps(g.source, node, before))
      before = []
    } else noteUnread(g.source, node, 'expected numbered steps, and cautions in block quotes before them')
  }
  const last = g.steps.pop()
  if (last === undefined) g.loose.push(...before)
  else g.steps.push({ ...last, owned: [...last.owned, ...before] })
}

const readScope = (g: Gathered, blocks: readonly RootContent[]): void => {
  const paragraphs = blocks.flatMap(node => {
    if (node.type === 'paragraph')
      return [node.children.map(child => (child.type === 'break' ? '\n' : toPlain(child))).join('')]
    noteUnread(g.source, node, 'the scope holds paragraphs of text only')
    return []
  })
  g.scope = paragraphs.join('\n\n')
}

const readReferences = (g: Gathered, blocks: readonly RootContent[]): void => {
  g.references = itemsOf(g, blocks).map(({ children }) => {
    const [first, ...rest] = children
    if (first?.type === 'emphasis') return { title: lineText([first]), part: lineText(rest).replace(/^, ?/, '') }
    return { title: lineText(children).replace(/^, /, ''), part: '' }
  })
}

const readSignOff = (g: Gathered, blocks: readonly RootContent[]): void => {
  for (const node of blocks) {
    const text = node.type === 'paragraph' ? lineText(node.children) : ''
    if (text.startsWith('Revision:')) {
      const revision = toLine(text.slice('Revision:'.length))
      const isNone = revision === 'none stated' && toLine(g.front.heading.revision ?? '') === ''
      if (!isNone) saidOfHeading(g, node, SECTIONS.signOff, 'revision', revision)
    } else if (node.type !== 'table') noteUnread(g.source, node, 'expected the revision and the sign-off table')
    else
      for (const row of node.children.slice(1)) {
        const [name = '', by = '', ...more] = row.children.map(cell => lineText(cell.children))
        const isAuthor =
          name === SIGN_OFF_ROWS[0] && (g.front.lines === undefined || by === toLine(g.front.heading.author ?? ''))
        const isBlank = (by === '' || isAuthor) && more.every(cell => cell === '')
        if (isBlank && (SIGN_OFF_ROWS as readonly string[]).includes(name)) continue
        const line = row.position?.start.line ?? 1
        const words = [name, by, ...more].filter(Boolean).join(', ')
        g.source.unread.push({ line, text: words, why: 'sign-offs are not kept in a project' })
      }
  }
}

/** Lists a review wrote: known by their form, not read back. */
const readReviewed = (g: Gathered, form: RegExp, blocks: readonly RootContent[]): void => {
  for (const paragraph of itemsOf(g, blocks))
    if (!form.test(lineText(paragraph.children))) noteUnread(g.source, paragraph, 'findings come from the review')
}

const eachOf =
  <T extends RootContent['type']>(
    type: T,
    why: string,
    read: (g: Gathered, node: Extract<RootContent, { type: T }>) => void,
  ) =>
  (g: Gathered, blocks: readonly RootContent[]): void => {
    for (const node of blocks)
      if (node.type === type) read(g, node as Extract<RootContent, { type: T }>)
      else noteUnread(g.source, node, why)
  }

const list =
  (kind: Kind, section: string) =>
  (g: Gathered, blocks: readonly RootContent[]): void =>
    readFrontList(g, section, kind, blocks)

const reviewed =
  (form: RegExp) =>
  (g: Gathered, blocks: readonly RootContent[]): void =>
    readReviewed(g, form, blocks)

/** The reader of each section, by its heading. */
export const SECTION_READERS: ReadonlyMap<string, (g: Gathered, blocks: readonly RootContent[]) => void> = new Map([
  [SECTIONS.scope, readScope],
  [SECTIONS.safety, list('caution', SECTIONS.safety)],
  [SECTIONS.tools, list('tool', SECTIONS.tools)],
  [SECTIONS.materials, list('material', SECTIONS.materials)],
  [SECTIONS.symptoms, list('symptom', SECTIONS.symptoms)],
  [SECTIONS.specs, eachOf('table', 'expected the table of specs', readSpecTable)],
  [SECTIONS.steps, readStepsSection],
  [
    SECTIONS.loose,
    eachOf('list', 'expected a list here', (g, node) => void g.loose.push(...readDetails(g.source, node))),
  ],
  [SECTIONS.references, readReferences],
  [SECTIONS.findings, reviewed(/^(?:stop|fix|consider): /)],
  [SECTIONS.waivers, reviewed(/ Let stand: /)],
  [SECTIONS.signOff, readSignOff],
  [
    CLOSING_HEADING,
    eachOf('paragraph', 'the closing note is the same on every sheet', (g, node) => {
      if (toPlain(node) !== CLOSING_NOTE) noteUnread(g.source, node, 'the closing note is the same on every sheet')
    }),
  ],
])

const hasTimeLink = (node: Nodes): boolean =>
  (node.type === 'link' && parseSpanAddress(node.url) !== undefined) ||
  ('children' in node && node.children.some(hasTimeLink))

/**
 * @param blocks a part whose heading is no section's, as where it was translated
 * @returns the section that alone holds the like: numbered lines with times, or the table that leads to the specs
 */
export const sectionByContent = (blocks: readonly RootContent[]): string | undefined => {
  const timed = blocks.filter(hasTimeLink)
  if (timed.some(node => node.type === 'list' && node.ordered === true)) return SECTIONS.steps
  const isSpecs = (node: RootContent) =>
    node.type === 'table' && node.children[0]?.children.length === SPEC_COLUMNS.length
  return timed.some(isSpecs) ? SECTIONS.specs : undefined
}
