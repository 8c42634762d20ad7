'use client'

import { type ClipboardEvent, type MouseEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { useGrowing } from '@/components/ui/useGrowing'
import type { Mark } from '@/lib/procedure/mark'
import type { Cue } from '@/lib/procedure/recording'
import { isUntimed } from '@/lib/transcript/said'
import { type Talk as TalkText, textOfWords, type WordRange, wordsOfCue, wordsOfSpan } from '@/lib/transcript/talk'
import type { Playhead } from '../bench/playhead'
import { bracketsByParagraph, type Doubt, type Portion, placesOf, portionsOf } from './brackets'
import { PARAGRAPH, paint, rangesOfWords, selectedWords, wordAtPoint } from './ranges'
import { type OpenForm, TalkForm } from './TalkForm'
import { PORTION, TalkPortion } from './TalkPortion'
import styles from './talk.module.css'
import { useEdgeDrag } from './useEdgeDrag'
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
  readonly onCorrect: (cue: number, text: string, isEverywhere: boolean) => void
  readonly onNameSpeaker: (cues: readonly number[], speaker: string) => void
}

const NONE: Portion = []

/** Portions drawn at once: the first fill the window. */
const AT_ONCE = 6

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
  const [form, setForm] = useState<OpenForm>()
  const drawn = useGrowing(Math.ceil(talk.paragraphs.length / PORTION), AT_ONCE)
  const { near, width } = useNear(root, drawn)
  const hasTimes = useMemo(() => !isUntimed(talk), [talk])
  const places = useMemo(() => placesOf(talk, marks), [talk, marks])
  const lastBrackets = useRef<readonly Portion[]>([])
  const brackets = useMemo(() => {
    const all = bracketsByParagraph(talk, marks, doubts, places)
    lastBrackets.current = portionsOf(all, talk.paragraphs.length, PORTION, lastBrackets.current)
    return lastBrackets.current
  }, [talk, marks, doubts, places])
  const portions = useMemo(
    () =>
      Array.from({ length: Math.ceil(talk.paragraphs.length / PORTION) }, (_, at) =>
        talk.paragraphs.slice(at * PORTION, (at + 1) * PORTION),
      ),
    [talk],
  )
  const chosenMark = useMemo(() => marks.find(mark => mark.id === chosen), [marks, chosen])

  const show = useCallback(
    (name: string, range: WordRange | undefined) => {
      if (root.current !== null) paint(name, range === undefined ? [] : rangesOfWords(root.current, talk, range))
    },
    [talk],
  )
  // While words are corrected, all of their line are shown held: the form stands under the paragraph, perhaps far below.
  const corrected = form?.is === 'cue' ? form.cue : undefined
  const line = useMemo(() => (corrected === undefined ? undefined : wordsOfCue(talk, corrected)), [talk, corrected])
  useEffect(() => show('chosen-words', line ?? words), [show, line, words])
  const place = chosen === undefined ? undefined : places.get(chosen)
  useEffect(
    () => show('chosen-mark', chosenMark && (hasTimes ? wordsOfSpan(talk, chosenMark) : place)),
    [show, talk, chosenMark, hasTimes, place],
  )
  const onCaret = useCallback((word: number) => show('caret-word', { from: word, to: word + 1 }), [show])
  const { isFollowing, follow, letGo } = useFollowing({ root, talk, playhead, show, isHeld: words !== undefined })

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
    const range = place
    if (range === undefined || root.current === null) return
    keys.caret.current = { anchor: range.from, head: range.from }
    const block = root.current.querySelector(`[${PARAGRAPH}="${talk.words[range.from]?.paragraph}"]`)
    const [frame, at] = [root.current.getBoundingClientRect(), block?.getBoundingClientRect()]
    if (at !== undefined && (at.bottom < frame.top + 40 || at.top > frame.bottom - 80))
      block?.scrollIntoView({ block: 'center' })
  }, [chosen, place, talk, keys.caret])

  // Words held by the keyboard are copied as well as those selected by the mouse.
  const onCopy = (event: ClipboardEvent) => {
    if (words === undefined || document.getSelection()?.isCollapsed === false) return
    event.clipboardData.setData('text/plain', textOfWords(talk, words))
    event.preventDefault()
  }
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

  const edges = useEdgeDrag({ root, talk, mark: chosenMark, onShow: range => show('chosen-mark', range), onEdge })
  const openSpeaker = useCallback((paragraph: number) => setForm({ is: 'speaker', paragraph }), [])
  const close = () => {
    setForm(undefined)
    root.current?.focus()
  }

  const shownForm = (open: OpenForm) => ({
    paragraph: open.paragraph,
    shown: (
      <TalkForm
        form={open}
        talk={talk}
        cues={cues}
        onCorrect={onCorrect}
        onNameSpeaker={onNameSpeaker}
        onClose={close}
      />
    ),
  })
  const portionOfWord = (word: number | undefined): number | undefined => {
    const paragraph = word === undefined ? undefined : talk.words[word]?.paragraph
    return paragraph === undefined ? undefined : Math.floor(paragraph / PORTION)
  }
  const heldAt = portionOfWord(words?.from)
  const [chosenFrom, chosenTo] = [portionOfWord(place?.from) ?? -1, portionOfWord(place && place.to - 1) ?? -1]

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
      onCopy={onCopy}
      {...edges}
      onWheel={letGo}
      onTouchMove={letGo}
      onFocus={() => onCaret(keys.caret.current.head)}
    >
      {portions.slice(0, drawn).map((paragraphs, at) => (
        <TalkPortion
          // biome-ignore lint/suspicious/noArrayIndexKey: a portion is its place in the talk
          key={at}
          at={at}
          paragraphs={paragraphs}
          words={talk.words}
          brackets={brackets[at] ?? NONE}
          chosen={at >= chosenFrom && at <= chosenTo ? chosen : undefined}
          isNear={near.has(at)}
          width={width}
          hasTimes={hasTimes}
          held={at === heldAt ? words?.from : undefined}
          form={form !== undefined && Math.floor(form.paragraph / PORTION) === at ? shownForm(form) : undefined}
          onCorrect={openCorrection}
          onChoose={onChoose}
          onTime={onSeek}
          onSpeaker={openSpeaker}
        />
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
