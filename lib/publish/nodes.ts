import type { BlockContent, Blockquote, Heading, ListItem, Paragraph, PhrasingContent, Root, Table } from 'mdast'

/** Blocks of a document, as mdast nodes. Text is text: the writer escapes whatever Markdown would take for more. */
export type Block = Root['children'][number]

export const text = (value: string): PhrasingContent => ({ type: 'text', value })

export const strong = (value: string): PhrasingContent => ({ type: 'strong', children: [text(value)] })

export const emphasis = (...children: PhrasingContent[]): PhrasingContent => ({ type: 'emphasis', children })

export const link = (label: string, url: string, title?: string): PhrasingContent => ({
  type: 'link',
  url,
  ...(title === undefined ? {} : { title }),
  children: [text(label)],
})

export const paragraph = (...children: PhrasingContent[]): Paragraph => ({ type: 'paragraph', children })

export const heading = (depth: 1 | 2 | 3, label: string): Heading => ({
  type: 'heading',
  depth,
  children: [text(label)],
})

export const quote = (...children: BlockContent[]): Blockquote => ({ type: 'blockquote', children })

export const item = (...children: BlockContent[]): ListItem => ({ type: 'listItem', spread: false, children })

export const bullets = (children: ListItem[]): BlockContent => ({
  type: 'list',
  ordered: false,
  spread: false,
  children,
})

/** A numbered list that starts at `start`. */
export const numbered = (start: number, children: ListItem[]): BlockContent => ({
  type: 'list',
  ordered: true,
  start,
  spread: false,
  children,
})

/** A table; the first row is its head. */
export const table = (rows: readonly (readonly (readonly PhrasingContent[])[])[]): Table => ({
  type: 'table',
  children: rows.map(row => ({
    type: 'tableRow',
    children: row.map(cell => ({ type: 'tableCell', children: [...cell] })),
  })),
})
