import { useCallback, useRef, useState } from 'react'
import type { Mark } from '@/lib/procedure/mark'
import type { Transcript } from '@/lib/procedure/recording'
import type { Finding } from '@/lib/review/rule'
import type { WordRange } from '@/lib/transcript/talk'
import { openFindings, sameFinding } from './walk'

/**
 * Whether words held in one transcript are still those in another: the same with a line corrected or a speaker named, not one laid
 * or brought back in its place. An edit shares all lines it did not touch.
 */
export const isSameTalk = (a: Transcript | null, b: Transcript | null): boolean =>
  a === b || (a !== null && b !== null && a.cues.length === b.cues.length && a.cues.some((cue, i) => cue === b.cues[i]))

/** Words held, and the transcript they were held in: numbers of words mean nothing in another. */
type Held = { readonly words: WordRange; readonly of: Transcript | null }

/**
 * What is chosen on the bench: a mark, a finding, words held in the talk.
 *
 * @returns only what is there now: a mark that was dropped is not chosen (but is again once the drop is undone), and a
 *   finding is the one of the newest review that says the same of the same place; words only in the transcript they were held in
 */
export const useChoice = (transcript: Transcript | null, marks: readonly Mark[], findings: readonly Finding[]) => {
  const [mark, setMark] = useState<string>()
  const [picked, setPicked] = useState<{ readonly finding: Finding; readonly at: number }>()
  const [held, setHeld] = useState<Held>()
  const talk = useRef(transcript)
  talk.current = transcript
  const setWords = useCallback(
    (words: WordRange | undefined) => setHeld(words === undefined ? undefined : { words, of: talk.current }),
    [],
  )
  const choose = useCallback((next: string | undefined) => {
    setMark(next)
    if (next !== undefined) setHeld(undefined)
  }, [])
  return {
    chosen: mark !== undefined && marks.some(({ id }) => id === mark) ? mark : undefined,
    choose,
    chosenFinding: sameFinding(findings, picked?.finding),
    findingAt: picked?.at,
    pickFinding: (finding: Finding | undefined) =>
      setPicked(finding && { finding, at: Math.max(0, openFindings(findings).indexOf(finding)) }),
    words: held !== undefined && isSameTalk(held.of, transcript) ? held.words : undefined,
    setWords,
  }
}
