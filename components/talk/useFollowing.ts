import { type RefObject, useCallback, useEffect, useRef, useState } from 'react'
import { type Talk, type WordRange, wordAt } from '@/lib/transcript/talk'
import type { Playhead } from '../bench/playhead'
import { rangesOfWords } from './ranges'

type Options = {
  readonly root: RefObject<HTMLElement | null>
  readonly talk: Talk
  readonly playhead: Playhead
  readonly show: (name: string, range: WordRange | undefined) => void
  /** While words are held, the talk stays where it is. */
  readonly isHeld: boolean
}

/** Underlines the word being spoken and keeps it in view until the reader scrolls away. */
export const useFollowing = ({ root, talk, playhead, show, isHeld }: Options) => {
  const [isFollowing, setFollowing] = useState(true)
  const isOn = useRef(true)
  const last = useRef<number>(undefined)
  const stays = useRef(isHeld)
  stays.current = isHeld

  const reveal = useCallback(
    (word: number) => {
      const element = root.current
      if (element === null) return
      const rect = rangesOfWords(element, talk, { from: word, to: word + 1 })[0]?.getBoundingClientRect()
      const frame = element.getBoundingClientRect()
      if (rect === undefined || (rect.top > frame.top + 20 && rect.bottom < frame.bottom - 80)) return
      element.scrollTop += rect.top - frame.top - frame.height / 3
    },
    [root, talk],
  )

  useEffect(
    () =>
      playhead.subscribe(seconds => {
        const word = wordAt(talk, seconds)
        if (word === last.current) return
        last.current = word
        const spoken = word === undefined ? undefined : talk.words[word]
        const isSpeaking = spoken !== undefined && seconds < spoken.end + 1
        show('spoken-word', isSpeaking && word !== undefined ? { from: word, to: word + 1 } : undefined)
        if (isOn.current && !stays.current && word !== undefined) reveal(word)
      }),
    [playhead, talk, show, reveal],
  )

  const set = (on: boolean) => {
    isOn.current = on
    setFollowing(on)
  }
  return {
    isFollowing,
    follow: () => {
      set(true)
      if (last.current !== undefined) reveal(last.current)
    },
    letGo: () => {
      if (isOn.current) set(false)
    },
  }
}
