import { remark } from 'remark'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'

/** The one reader and writer of Markdown: CommonMark with GFM tables and YAML front matter. */
export const markdown = remark()
  .use(remarkFrontmatter, ['yaml'])
  .use(remarkGfm, { tablePipeAlign: false })
  .data('settings', { bullet: '-', emphasis: '*', strong: '*', rule: '-', listItemIndent: 'one' })
  .freeze()
