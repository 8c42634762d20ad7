'use client'

import { type MouseEvent, type PointerEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import type { Mark } from '@/lib/procedure/mark'
import type { Cue } from '@/lib/procedure/recording'
import { type Talk as TalkText, textOfWords, type WordRange, wordsOfSpan } from '@/lib/transcript/talk'
import type { Playhead } from '../bench/playhead'
import { type Bracket, bracketsByParagraph, type Doubt } from './brackets'
import { PARAGRAPH, paint, rangesOfWords, selectedWords, wordAtPoint } from './ranges'
import { CueCorrection, SpeakerName } from './TalkForms'
import { TalkParagraph } from './TalkParagraph'
import styles from './talk.module.css'
import { useFollowing } from './useFollowing'
import { useNear } from './useNear'
import { useTalkKeys } from './useTalkKeys'

type Props = {
  readonly talk: TalkText
  readonly cues: readonly Cue[]
  readonly marks: readonly Mark[]
  /** Findings about the talk itself. */
  readonly doubts: readonly Doubt[]
  /** Id of the chosen mark. */
  readonly chosen: string | undefined
  readonly words: WordRange | undefined
  readonly playhead: Playhead
  readonly onWords: (words: WordRange | undefined) => void
  readonly onChoose: (id: string | undefined) => void
  readonly onSeek: (seconds: number) => void
  readonly onEdge: (id: string, side: 'start' | 'end', seconds: number) => void
  readonly onCorrect: (cue: number, text: string) => void
  readonly onNameSpeaker: (cues: readonly number[], speaker: string) => void
}

const NONE: readonly Bracket[] = []

/** The talk: running text on a ruled page, marks scribed in its margin. */
export const Talk = (props: Props) => {
  const {
    talk,
    cues,
    marks,
    doubts,
    chosen,
    words,
    playhead,
    onWords,
    onChoose,
    onSeek,
    onEdge,
    onCorrect,
    onNameSpeaker,
  } = props
  const root = useRef<HTMLElement>(null)
  const [form, setForm] = useState<
    { is: 'cue'; cue: number; paragraph: number } | { is: 'speaker'; paragraph: number }
  >()
  const { near, width } = useNear(root, talk)
  const brackets = useMemo(() => bracketsByParagraph(talk, marks, doubts), [talk, marks, doubts])
  const chosenMark = useMemo(() => marks.find(mark => mark.id === chosen), [marks, chosen])

  const show = useCallback(
    (name: string, range: WordRange | undefined) => {
      if (root.current !== null) paint(name, range === undefined ? [] : rangesOfWords(root.current, talk, range))
    },
    [talk],
  )
  useEffect(() => show('chosen-words', words), [show, words])
  useEffect(() => show('chosen-mark', chosenMark && wordsOfSpan(talk, chosenMark)), [show, talk, chosenMark])
  const onCaret = useCallback((word: number) => show('caret-word', { from: word, to: word + 1 }), [show])
  const { isFollowing, follow, letGo } = useFollowing({ root, talk, playhead, show })

  const openCorrection = useCallback(
    (word: number) => {
      const found = talk.words[word]
      if (found !== undefined) setForm({ is: 'cue', cue: found.cue, paragraph: found.paragraph })
    },
    [talk],
  )
  const keys = useTalkKeys({ root, talk, words, onWords, onCaret, onSeek, onCorrect: openCorrection })

  // A mark chosen elsewhere comes into view, and the caret goes to its first word.
  const lastShown = useRef<string>(undefined)
  useEffect(() => {
    if (chosen === lastShown.current) return
    lastShown.current = chosen
    const range = chosenMark && wordsOfSpan(talk, chosenMark)
    if (range === undefined || root.current === null) return
    keys.caret.current = { anchor: range.from, head: range.from }
    const block = root.current.querySelector(`[${PARAGRAPH}="${talk.words[range.from]?.paragraph}"]`)
    const [frame, at] = [root.current.getBoundingClientRect(), block?.getBoundingClientRect()]
    if (at !== undefined && (at.bottom < frame.top + 40 || at.top > frame.bottom - 80))
      block?.scrollIntoView({ block: 'center' })
  }, [chosen, chosenMark, talk, keys.caret])

  const onMouseUp = (event: MouseEvent) => {
    if (event.button !== 0 || !(event.target instanceof Element) || event.target.closest('button, form, [data-edge]'))
      return
    const range = selectedWords(talk)
    if (range !== undefined) {
      keys.caret.current = { anchor: range.from, head: range.to - 1 }
      onWords(range)
      return
    }
    const word = wordAtPoint(talk, event.clientX, event.clientY)
    if (word === undefined) return
    keys.place(word)
    onChoose(undefined)
    onSeek(talk.words[word]?.start ?? 0)
  }

  const dragging = useRef<'start' | 'end'>(undefined)
  const wordUnder = (event: PointerEvent, side: 'start' | 'end'): number | undefined => {
    const text = root.current?.querySelector(`[${PARAGRAPH}]`)?.getBoundingClientRect()
    if (text === undefined) return undefined
    const inText = Math.max(text.left + 2, Math.min(text.right - 2, event.clientX))
    const x = event.clientX <= text.right ? inText : side === 'start' ? text.left + 2 : text.right - 2
    return wordAtPoint(talk, x, event.clientY)
  }
  const onPointerDown = (event: PointerEvent) => {
    const side = (event.target as HTMLElement).dataset.edge
    if (side !== 'start' && side !== 'end') return
    event.preventDefault()
    dragging.current = side
    event.currentTarget.setPointerCapture(event.pointerId)
  }
  const dragRange = (event: PointerEvent): WordRange | undefined => {
    const side = dragging.current
    const range = chosenMark && wordsOfSpan(talk, chosenMark)
    const word = side && wordUnder(event, side)
    if (side === undefined || range === undefined || word === undefined) return undefined
    return side === 'start'
      ? { from: Math.min(word, range.to - 1), to: range.to }
      : { from: range.from, to: Math.max(word + 1, range.from + 1) }
  }
  const onPointerMove = (event: PointerEvent) => {
    if (dragging.current !== undefined) show('chosen-mark', dragRange(event))
  }
  const onPointerUp = (event: PointerEvent) => {
    const side = dragging.current
    const range = dragRange(event)
    dragging.current = undefined
    if (side === undefined || range === undefined || chosenMark === undefined) return
    const seconds = side === 'start' ? talk.words[range.from]?.start : talk.words[range.to - 1]?.end
    if (seconds !== undefined) onEdge(chosenMark.id, side, seconds)
  }

  const openSpeaker = useCallback((paragraph: number) => setForm({ is: 'speaker', paragraph }), [])
  const known = useMemo(
    () => [...new Set(cues.flatMap(cue => (cue.speaker === undefined ? [] : [cue.speaker])))],
    [cues],
  )
  const close = () => {
    setForm(undefined)
    root.current?.focus()
  }
  const formFor = (index: number) => {
    if (form?.paragraph !== index) return undefined
    const paragraph = talk.paragraphs[index]
    if (form.is === 'cue') {
      const cue = cues[form.cue]
      return (
        cue && (
          <CueCorrection
            cue={cue}
            onDone={text => {
              if (text !== undefined) onCorrect(form.cue, text)
              close()
            }}
          />
        )
      )
    }
    const same = cues.flatMap((cue, i) => (cue.speaker === paragraph?.speaker ? [i] : []))
    const here = new Set(talk.words.slice(paragraph?.first, paragraph?.last).map(word => word.cue))
    return (
      <SpeakerName
        speaker={paragraph?.speaker}
        everywhere={same.length}
        known={known}
        onDone={choice => {
          if (choice !== undefined) onNameSpeaker(choice.isEverywhere ? same : [...here], choice.name)
          close()
        }}
      />
    )
  }

  return (
    <section
      ref={root}
      className={styles.talk}
      role="application"
      aria-roledescription="talk"
      aria-label="The talk. Arrow keys move by word, with Shift they hold on to words, a kind's key marks them."
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it is interactive, see role
      tabIndex={0}
      onKeyDown={keys.onKeyDown}
      onMouseUp={onMouseUp}
      onDoubleClick={event => {
        const word = wordAtPoint(talk, event.clientX, event.clientY)
        if (word !== undefined) onWords({ from: word, to: word + 1 })
      }}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onWheel={letGo}
      onFocus={() => onCaret(keys.caret.current.head)}
    >
      {talk.paragraphs.map((paragraph, index) => (
        <TalkParagraph
          // biome-ignore lint/suspicious/noArrayIndexKey: a paragraph is its place in the talk
          key={index}
          index={index}
          paragraph={paragraph}
          words={talk.words}
          brackets={brackets.get(index) ?? NONE}
          chosen={chosen}
          isNear={near.has(index)}
          width={width}
          onChoose={onChoose}
          onTime={onSeek}
          onSpeaker={openSpeaker}
        >
          {formFor(index)}
        </TalkParagraph>
      ))}
      <div className={styles.follow}>
        {!isFollowing && (
          <Button tabIndex={-1} onClick={follow}>
            Follow the footage again
          </Button>
        )}
      </div>
      <span className="apart" aria-live="polite">
        {words === undefined ? '' : `held: ${textOfWords(talk, words).slice(0, 200)}`}
      </span>
    </section>
  )
}
