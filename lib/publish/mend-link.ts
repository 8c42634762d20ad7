import type { PhrasingContent } from 'mdast'
import { parseTime } from '@/lib/procedure/time'
import { link, text } from './nodes'

/** What is left at the end of a line of a time link that a hand broke: its words, and perhaps pieces of its address and title. */
const REMAINS = /\s*\[(\d[\d:.]*)(?:\s*[–—-]\s*(\d[\d:.]*))?\](?:\([^\s"“”„()]*(?:\s+["“”„][^"“”„]*)?["“”„)]*)?\s*$/u

/**
 * @param nodes the inline content of a line without a time link
 * @returns the same line, with the time that stands in brackets at its end as a link again: `Lift the lid. [0:11–0:16]` says
 *   when. Lines without such an end come back as they are.
 */
export const withMendedLink = (nodes: readonly PhrasingContent[]): readonly PhrasingContent[] => {
  const at = nodes.findLastIndex(node => node.type === 'text' && node.value.trim() !== '')
  const node = nodes[at]
  const found = node?.type === 'text' ? REMAINS.exec(node.value) : null
  if (node?.type !== 'text' || found === null) return nodes
  const [all, from = '', to] = found
  const start = parseTime(from)
  const end = to === undefined ? start : parseTime(to)
  if (start === undefined || end === undefined) return nodes
  return [
    ...nodes.slice(0, at),
    text(node.value.slice(0, node.value.length - all.length)),
    link(to === undefined ? from : `${from}–${to}`, `#t=${start},${Math.max(start, end)}`),
    ...nodes.slice(at + 1),
  ]
}
