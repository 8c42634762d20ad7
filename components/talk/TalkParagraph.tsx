'use client'

import { type CSSProperties, memo, type ReactNode, useLayoutEffect, useRef, useState } from 'react'
import { Glyph } from '@/components/ui/Glyph'
import { formatTime } from '@/lib/procedure/time'
import type { TalkParagraph as Paragraph, TalkWord } from '@/lib/transcript/talk'
import type { Bracket } from './brackets'
import { fitLanes } from './fit'
import { PARAGRAPH } from './ranges'
import styles from './talk.module.css'

type Props = {
  readonly index: number
  readonly paragraph: Paragraph
  /** All words of the talk; this paragraph's are [first, last). */
  readonly words: readonly TalkWord[]
  /** The same list while they would be drawn the same: brackets.ts. */
  readonly brackets: readonly Bracket[]
  readonly chosen: string | undefined
  /** Near the visible part: only then are brackets measured and drawn. */
  readonly isNear: boolean
  /** Width of the talk in pixels: measured afresh when it changes. */
  readonly width: number
  /** A text without times shows none. */
  readonly hasTimes: boolean
  /** The first of the words held, where it stands in this paragraph. */
  readonly held: number | undefined
  readonly onCorrect: (word: number) => void
  readonly onChoose: (id: string) => void
  readonly onTime: (seconds: number) => void
  readonly onSpeaker: (paragraph: number) => void
  readonly children?: ReactNode
}

type Drawn = {
  readonly bracket: Bracket
  readonly top: number
  readonly height: number
  readonly first: boolean
  readonly last: boolean
  /** Counted from the text outwards. */
  readonly lane: number
}

/** A lane's place; its width is the style sheet's. */
const placeOf = (lane: number): string => `calc(${lane} * var(--pitch))`

/** Where the brackets stand, in pixels from the top of the text. */
const measure = (
  text: HTMLElement,
  { paragraph, words, brackets }: Pick<Props, 'paragraph' | 'words' | 'brackets'>,
): Drawn[] => {
  const node = text.firstChild
  if (!(node instanceof Text)) return []
  const { top, left, right } = text.getBoundingClientRect()
  const rectOf = (index: number): DOMRect | undefined => {
    const word = words[index]
    if (word === undefined || word.to > node.length) return undefined
    const range = document.createRange()
    range.setStart(node, word.at)
    range.setEnd(node, word.to)
    return range.getBoundingClientRect()
  }
  const boxes = brackets.flatMap(bracket => {
    const from = Math.max(bracket.words.from, paragraph.first)
    const to = Math.min(bracket.words.to, paragraph.last)
    const [a, b] = [rectOf(from), rectOf(to - 1)]
    if (a === undefined || b === undefined) return []
    const [first, last] = [from === bracket.words.from, to === bracket.words.to]
    // A mark that begins or ends inside a line leaves the other half of that line to its neighbour.
    const isSingle = b.top - a.top < 14
    const upper = a.top - top + (first && !isSingle && a.left - left > 24 ? 10 : 1)
    const lower = b.bottom - top - (last && !isSingle && right - b.right > 120 ? 9 : 1)
    const held = first && last ? {} : { held: bracket.lane }
    return [{ bracket, top: upper, height: Math.max(lower - upper, 18), first, last, ...held }]
  })
  const lanes = fitLanes(boxes)
  return boxes.map(({ bracket, top: upper, height, first, last }, i) => {
    const lane = lanes[i] ?? 0
    return { bracket, top: upper, height, first, last, lane }
  })
}

const Plain = (props: Props) => {
  const { index, paragraph, brackets, chosen, isNear, width, hasTimes, held, children } = props
  const { onCorrect, onChoose, onTime, onSpeaker } = props
  const text = useRef<HTMLParagraphElement>(null)
  const [drawn, setDrawn] = useState<readonly Drawn[]>([])
  // biome-ignore lint/correctness/useExhaustiveDependencies: width is no input, but what was measured depends on it
  useLayoutEffect(() => {
    if (isNear && text.current !== null) setDrawn(measure(text.current, props))
  }, [isNear, width, paragraph, brackets])
  const lanes = Math.max(1, ...drawn.map(({ lane }) => lane + 1))
  return (
    <div className={styles.paragraph}>
      <div className={styles.gutter}>
        {hasTimes && (
          <button type="button" className={styles.time} tabIndex={-1} onClick={() => onTime(paragraph.start)}>
            {formatTime(paragraph.start)}
          </button>
        )}
        <button type="button" className={styles.speaker} tabIndex={-1} onClick={() => onSpeaker(index)}>
          {paragraph.speaker ?? <span className={styles.unnamed}>who?</span>}
        </button>
        {held !== undefined && (
          <button
            type="button"
            className={styles.correct}
            tabIndex={-1}
            title="Correct the words of this line (F2)"
            onClick={() => onCorrect(held)}
          >
            correct
          </button>
        )}
      </div>
      <div className={styles.body}>
        <p ref={text} className={styles.text} dir="auto" {...{ [PARAGRAPH]: index }}>
          {paragraph.text}
        </p>
        {children}
      </div>
      <div className={styles.margin} style={{ '--lanes': lanes } as CSSProperties}>
        {isNear &&
          drawn.map(({ bracket, top, height, first, last, lane }) => [
            <button
              key={bracket.id}
              type="button"
              tabIndex={-1}
              className={styles.bracket}
              data-first={first}
              data-last={last}
              data-kind={bracket.kind}
              data-pencilled={bracket.isPencilled}
              data-chosen={bracket.id === chosen}
              data-mark={bracket.id}
              style={{ top, height, left: placeOf(lane) }}
              title={bracket.label}
              aria-label={bracket.label}
              onClick={() => onChoose(bracket.id)}
            >
              {first &&
                (bracket.kind === 'doubt' ? <span className={styles.doubt}>?</span> : <Glyph kind={bracket.kind} />)}
            </button>,
            hasTimes && bracket.id === chosen && first && (
              <div
                key="start"
                className={styles.edge}
                data-edge="start"
                style={{ top: top - 18, left: placeOf(lane) }}
              />
            ),
            hasTimes && bracket.id === chosen && last && (
              <div
                key="end"
                className={styles.edge}
                data-edge="end"
                style={{ top: top + height - 6, left: placeOf(lane) }}
              />
            ),
          ])}
      </div>
    </div>
  )
}

const holds = (brackets: readonly Bracket[], id: string | undefined): boolean =>
  id !== undefined && brackets.some(bracket => bracket.id === id)

/** One paragraph of the talk with its time, speaker and brackets. Drawn anew only when something in it changed. */
export const TalkParagraph = memo(Plain, (a, b) => {
  const isSameText =
    a.index === b.index &&
    a.paragraph.text === b.paragraph.text &&
    a.paragraph.start === b.paragraph.start &&
    a.paragraph.speaker === b.paragraph.speaker &&
    a.paragraph.first === b.paragraph.first
  const isSameChoice = a.chosen === b.chosen || (!holds(a.brackets, a.chosen) && !holds(b.brackets, b.chosen))
  return (
    isSameText &&
    isSameChoice &&
    a.brackets === b.brackets &&
    a.isNear === b.isNear &&
    a.width === b.width &&
    a.hasTimes === b.hasTimes &&
    a.held === b.held &&
    a.children === b.children
  )
})
