import { type Talk, type WordRange, wordAtOffset } from '@/lib/transcript/talk'

/** Marks the element that holds a paragraph's text: `data-paragraph="7"`, its first child the one text node. */
export const PARAGRAPH = 'data-paragraph'

const textNodeOf = (root: HTMLElement, paragraph: number): Text | undefined => {
  const node = root.querySelector(`[${PARAGRAPH}="${paragraph}"]`)?.firstChild
  return node instanceof Text ? node : undefined
}

/** @returns the document ranges of words, one a paragraph. */
export const rangesOfWords = (root: HTMLElement, talk: Talk, { from, to }: WordRange): readonly Range[] => {
  const ranges: Range[] = []
  for (let at = from; at < to; ) {
    const word = talk.words[at]
    const block = word && talk.paragraphs[word.paragraph]
    if (word === undefined || block === undefined) break
    const stop = Math.min(to, block.last)
    const node = textNodeOf(root, word.paragraph)
    const end = talk.words[stop - 1]?.to ?? word.to
    if (node !== undefined && end <= node.length) {
      const range = document.createRange()
      range.setStart(node, word.at)
      range.setEnd(node, end)
      ranges.push(range)
    }
    at = stop
  }
  return ranges
}

/** Shows ranges under a highlight's name (CSS Custom Highlight API); does nothing where the browser has none. */
export const paint = (name: string, ranges: readonly Range[]): void => {
  if (typeof CSS === 'undefined' || !('highlights' in CSS)) return
  if (ranges.length === 0) CSS.highlights.delete(name)
  else CSS.highlights.set(name, new Highlight(...ranges))
}

const paragraphOf = (node: Node): number | undefined => {
  const element = node instanceof Element ? node : node.parentElement
  const value = element?.closest(`[${PARAGRAPH}]`)?.getAttribute(PARAGRAPH)
  return value === undefined || value === null ? undefined : Number(value)
}

/** @returns the word at a place of the document, or undefined outside the talk's text. */
export const wordAtPlace = (talk: Talk, node: Node, offset: number): number | undefined => {
  const paragraph = paragraphOf(node)
  return paragraph === undefined ? undefined : wordAtOffset(talk, paragraph, node instanceof Text ? offset : 0)
}

/** @returns the word under a point of the window, or undefined where there is no text. */
export const wordAtPoint = (talk: Talk, x: number, y: number): number | undefined => {
  const place = document.caretPositionFromPoint?.(x, y)
  if (place) return wordAtPlace(talk, place.offsetNode, place.offset)
  const range = document.caretRangeFromPoint?.(x, y)
  return range ? wordAtPlace(talk, range.startContainer, range.startOffset) : undefined
}

/** @returns the words the browser's own selection touches; undefined for none. */
export const selectedWords = (talk: Talk): WordRange | undefined => {
  const selection = document.getSelection()
  if (selection === null || selection.isCollapsed || selection.rangeCount === 0) return undefined
  const range = selection.getRangeAt(0)
  const from = wordAtPlace(talk, range.startContainer, range.startOffset)
  const last = wordAtPlace(talk, range.endContainer, Math.max(0, range.endOffset - 1))
  if (from === undefined) return undefined
  return { from, to: Math.max(from, last ?? from) + 1 }
}
