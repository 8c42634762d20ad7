import { useCallback, useState } from 'react'
import type { Mark } from '@/lib/procedure/mark'
import type { Finding } from '@/lib/review/rule'
import type { WordRange } from '@/lib/transcript/talk'
import { openFindings, sameFinding } from './walk'

/**
 * What is chosen on the bench: a mark, a finding, words held in the talk.
 *
 * @returns only what is there now: a mark that was dropped is not chosen (but is again once the drop is undone), and a
 *   finding is the one of the newest review that says the same of the same place
 */
export const useChoice = (marks: readonly Mark[], findings: readonly Finding[]) => {
  const [mark, setMark] = useState<string>()
  const [picked, setPicked] = useState<{ readonly finding: Finding; readonly at: number }>()
  const [words, setWords] = useState<WordRange>()
  const choose = useCallback((next: string | undefined) => {
    setMark(next)
    if (next !== undefined) setWords(undefined)
  }, [])
  return {
    chosen: mark !== undefined && marks.some(({ id }) => id === mark) ? mark : undefined,
    choose,
    chosenFinding: sameFinding(findings, picked?.finding),
    findingAt: picked?.at,
    pickFinding: (finding: Finding | undefined) =>
      setPicked(finding && { finding, at: Math.max(0, openFindings(findings).indexOf(finding)) }),
    words,
    setWords,
  }
}
