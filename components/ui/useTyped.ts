'use client'

import { type KeyboardEvent, useContext, useEffect, useId, useRef, useState } from 'react'
import { TypingContext, untaken } from './typing'

type Given = {
  readonly value: string
  /** A message back refuses the words. */
  readonly onDone: (typed: string) => string | undefined
  /** Whether words are taken over in the pauses of typing, not only when the field is left. */
  readonly isLive: boolean
  /** What else the answer hangs on: refused words are tried again when it changes. */
  readonly retry: unknown
  /** Whether Enter starts a line. */
  readonly hasLines: boolean
}

/** Words on their way: as typed, as last taken over, and why they were refused. */
type Words = { readonly typed?: string; readonly taken?: string; readonly problem?: string | undefined }

/** A pause in typing, ms. Judged by hand. */
const PAUSE = 400

/**
 * What is typed into a field and not yet in the project. It is taken over in pauses, when the field is left, on Enter and on
 * Escape; from entering to leaving is one change to take back. What is refused stays with its reason; a second Escape gives it up.
 */
export const useTyped = ({ value, onDone, isLive, retry, hasLines }: Given) => {
  const during = useContext(TypingContext)
  const id = useId()
  const [words, setWords] = useState<Words>({})
  const visit = useRef(0)
  const isInside = useRef(false)
  const now = useRef({ words, value, onDone })
  now.current = { words, value, onDone }

  const put = (next: Words) => {
    now.current = { ...now.current, words: next }
    setWords(next)
  }
  const isWaiting = ({ typed, taken }: Words): boolean =>
    typed !== undefined && typed !== now.current.value && typed !== taken
  /** Gives over what waits. @returns why it was refused */
  const give = (key: string | undefined): string | undefined => {
    const { typed } = now.current.words
    return typed === undefined ? undefined : during(key, () => now.current.onDone(typed))
  }
  const ownKey = () => `${id} ${visit.current}`

  const finish = (): string | undefined => {
    const { words } = now.current
    const problem = isWaiting(words) ? give(ownKey()) : undefined
    put(problem === undefined ? {} : { ...words, problem })
    return problem
  }
  const takeInPause = () => {
    const { typed } = now.current.words
    if (typed !== undefined && isWaiting(now.current.words) && give(ownKey()) === undefined)
      put({ typed, taken: typed })
  }
  /** The field goes with words in it: they are taken over where they can be. */
  const leave = useRef(() => {})
  leave.current = () => {
    untaken.remove(id)
    if (isWaiting(now.current.words)) give(ownKey())
  }

  // biome-ignore lint/correctness/useExhaustiveDependencies: only another value takes the words back
  useEffect(() => {
    if (!isInside.current) put({})
  }, [value])
  // biome-ignore lint/correctness/useExhaustiveDependencies: only what the answer hangs on asks again
  useEffect(() => {
    if (now.current.words.problem === undefined || isInside.current) return
    const problem = give(undefined)
    put(problem === undefined ? {} : { ...now.current.words, problem })
  }, [retry])
  // biome-ignore lint/correctness/useExhaustiveDependencies: each stroke begins the pause anew
  useEffect(() => {
    if (!isWaiting(words)) return untaken.remove(id)
    untaken.add(id, finish)
    if (!isLive) return
    const pause = setTimeout(takeInPause, PAUSE)
    return () => clearTimeout(pause)
  }, [words, value])
  useEffect(() => () => leave.current(), [])

  return {
    id,
    problem: words.problem,
    field: {
      id,
      value: words.typed ?? value,
      onFocus: () => {
        isInside.current = true
        visit.current++
      },
      onBlur: () => {
        isInside.current = false
        finish()
      },
      onChange: (event: { target: { value: string } }) => put({ ...now.current.words, typed: event.target.value }),
      onKeyDown: (event: KeyboardEvent) => {
        if (event.nativeEvent.isComposing) return
        if (event.key === 'Enter' && (!hasLines || event.ctrlKey || event.metaKey)) finish()
        if (event.key !== 'Escape') return
        const wasRefused = now.current.words.problem !== undefined
        if (finish() === undefined) return
        if (wasRefused) return put({})
        event.preventDefault()
        event.stopPropagation()
      },
    },
  }
}
