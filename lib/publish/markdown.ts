import type { Sheet } from '@/lib/procedure/sheet'
import { markdown } from './processor'
import type { PublishOptions } from './publication'
import { toSheetTree } from './tree'

/**
 * A sheet as Markdown (CommonMark with GFM tables and YAML front matter), with a time link into the footage at every
 * mark. No text of a mark can change the document's structure; `parseSheetMarkdown` reads it back.
 *
 * @param pictures relative address of the picture of a step, by its mark's id
 * @returns the text, closed by a line feed. Never throws.
 */
export const toSheetMarkdown = (
  sheet: Sheet,
  options: PublishOptions = {},
  pictures: ReadonlyMap<string, string> = new Map(),
): string => markdown.stringify(toSheetTree(sheet, options, pictures))
