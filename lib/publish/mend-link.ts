import type { PhrasingContent } from 'mdast'
import { parseTime } from '@/lib/procedure/time'
import { link, text } from './nodes'

/** What is left at the end of a line of a time link that a hand broke: its words, and perhaps pieces of its address and title. */
const REMAINS = /\s*\[(\d[\d:.]*)(?:\s*[–—-]\s*(\d[\d:.]*))?\](?:\([^\s"“”„()]*(?:\s+["“”„][^"“”„]*)?["“”„)]*)?\s*$/u

/** A span at the end of a line, without brackets: what is left where a whole sheet lost its links, as in another program's text. */
const BARE_SPAN = /\s*(\d+(?::\d\d)+)\s*[–—-]\s*(\d+(?::\d\d)+)\s*$/u

/** Likewise, or a single time: lines that open with their kind are as short as a word. */
const BARE_TIME = /\s*(\d+(?::\d\d)+)(?:\s*[–—-]\s*(\d+(?::\d\d)+))?\s*$/u

/** How far links are lost: of single lines, or of the whole sheet, where a bare time at the end of a line is one too. */
export type LostLinks = 'some' | 'all-spans' | 'all-times'

const PATTERNS: Readonly<Record<LostLinks, RegExp>> = { some: REMAINS, 'all-spans': BARE_SPAN, 'all-times': BARE_TIME }

/**
 * @param nodes the inline content of a line without a time link
 * @returns the same line, with the time that stands in brackets at its end as a link again: `Lift the lid. [0:11–0:16]` says
 *   when. Lines without such an end come back as they are.
 */
export const withMendedLink = (nodes: readonly PhrasingContent[], lost: LostLinks): readonly PhrasingContent[] => {
  const at = nodes.findLastIndex(node => node.type === 'text' && node.value.trim() !== '')
  const node = nodes[at]
  const value = node?.type === 'text' ? node.value : ''
  const found = REMAINS.exec(value) ?? PATTERNS[lost].exec(value)
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
