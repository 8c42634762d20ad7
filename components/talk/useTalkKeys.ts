import { type KeyboardEvent, type RefObject, useCallback, useRef } from 'react'
import type { Talk, WordRange } from '@/lib/transcript/talk'
import { rangesOfWords, wordAtPoint } from './ranges'

type Caret = { readonly anchor: number; readonly head: number }

/** Words from the anchor to the head, both included. */
const rangeOf = ({ anchor, head }: Caret): WordRange => ({
  from: Math.min(anchor, head),
  to: Math.max(anchor, head) + 1,
})

const lineAway = (root: HTMLElement, talk: Talk, from: number, direction: 1 | -1): number => {
  const rect = rangesOfWords(root, talk, { from, to: from + 1 })[0]?.getBoundingClientRect()
  if (rect !== undefined)
    for (const lines of [1, 2, 3]) {
      const y = rect.top + rect.height / 2 + direction * 28 * lines
      const found = wordAtPoint(talk, rect.left + rect.width / 2, y)
      if (found !== undefined && (found - from) * direction > 0) return found
    }
  return Math.max(0, Math.min(talk.words.length - 1, from + direction * 10))
}

type Options = {
  readonly root: RefObject<HTMLElement | null>
  readonly talk: Talk
  readonly words: WordRange | undefined
  readonly onWords: (words: WordRange | undefined) => void
  readonly onCaret: (word: number) => void
  readonly onSeek: (seconds: number) => void
  readonly onCorrect: (word: number) => void
}

/**
 * Moving through the talk word by word: arrows move, Shift holds on to the words passed, Home and End go to the
 * paragraph's ends, Enter plays from here, F2 corrects the words.
 */
export const useTalkKeys = ({ root, talk, words, onWords, onCaret, onSeek, onCorrect }: Options) => {
  const caret = useRef<Caret>({ anchor: 0, head: 0 })

  const place = useCallback(
    (head: number, anchor = head) => {
      caret.current = { anchor, head }
      onCaret(head)
      onWords(anchor === head ? undefined : rangeOf(caret.current))
      const element = root.current
      const rect = element && rangesOfWords(element, talk, { from: head, to: head + 1 })[0]?.getBoundingClientRect()
      const frame = element?.getBoundingClientRect()
      if (element && rect && frame) {
        if (rect.top < frame.top + 30) element.scrollTop -= frame.top + 90 - rect.top
        if (rect.bottom > frame.bottom - 30) element.scrollTop += rect.bottom - frame.bottom + 90
      }
    },
    [root, talk, onWords, onCaret],
  )

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || talk.words.length === 0) return
    const { anchor, head } = caret.current
    const element = root.current
    const block = talk.paragraphs[talk.words[head]?.paragraph ?? 0]
    const last = talk.words.length - 1
    const goalOf = (key: string): number | undefined => {
      switch (key) {
        case 'ArrowLeft':
          return head - 1
        case 'ArrowRight':
          return head + 1
        case 'ArrowUp':
          return element === null ? head : lineAway(element, talk, head, -1)
        case 'ArrowDown':
          return element === null ? head : lineAway(element, talk, head, 1)
        case 'Home':
          return block?.first ?? 0
        case 'End':
          return (block?.last ?? 1) - 1
        default:
          return undefined
      }
    }
    const goal = goalOf(event.key)
    if (goal !== undefined) {
      event.preventDefault()
      document.getSelection()?.removeAllRanges()
      const to = Math.max(0, Math.min(last, goal))
      // The first Shift press holds on to the word under the caret as well.
      place(to, event.shiftKey ? anchor : to)
      return
    }
    if (event.key === ' ' && event.shiftKey) {
      event.preventDefault()
      event.stopPropagation()
      caret.current = { anchor: head, head }
      onWords({ from: head, to: head + 1 })
    } else if (event.key === 'Enter') {
      event.preventDefault()
      event.stopPropagation()
      onSeek(talk.words[head]?.start ?? 0)
    } else if (event.key === 'F2') {
      event.preventDefault()
      onCorrect(head)
    } else if (event.key === 'Escape' && words !== undefined) {
      event.stopPropagation()
      document.getSelection()?.removeAllRanges()
      place(head)
    }
  }

  return { onKeyDown, place, caret }
}
