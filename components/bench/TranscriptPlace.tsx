'use client'

import { useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { FileInput } from '@/components/ui/FileInput'
import { formatProblem } from '@/lib/procedure/problem'
import type { Transcript } from '@/lib/procedure/recording'
import styles from './bench.module.css'

type ChoiceProps = {
  readonly look: 'main' | 'plain'
  readonly label: string
  /** @param words what was found when it was read */
  readonly onTranscript: (transcript: Transcript, ...words: readonly string[]) => void
}

/** Chooses a transcript from a file; what is none is refused with its reason beneath. */
export const TranscriptChoice = ({ look, label, onTranscript }: ChoiceProps) => {
  const input = useRef<HTMLInputElement>(null)
  const [problem, setProblem] = useState<string>()
  const take = async (file: File | undefined) => {
    if (file === undefined) return
    const { sortFile } = await import('./sorting')
    const sorted = await sortFile({ file })
    if (!sorted.ok) return setProblem(sorted.problems.map(formatProblem).join(' '))
    if (sorted.value.is !== 'transcript')
      return setProblem(
        `“${file.name}” is ${sorted.value.is === 'project' ? 'a project file' : 'footage'}, not a transcript.`,
      )
    setProblem(undefined)
    onTranscript(sorted.value.transcript, ...sorted.value.problems.map(formatProblem))
  }
  return (
    <>
      <Button look={look} onClick={() => input.current?.click()}>
        {label}
      </Button>
      <FileInput ref={input} label="Transcript file" onFiles={([file]) => void take(file)} />
      {problem !== undefined && <p role="alert">{problem}</p>}
    </>
  )
}

/** Where the talk will be, while there is no transcript. */
export const TranscriptPlace = ({ onTranscript }: Pick<ChoiceProps, 'onTranscript'>) => (
  <section className={styles.place} aria-label="Place for the transcript">
    <p>
      The talk belongs here. Drop the transcript on this page, or choose it: WebVTT, SubRip, text with times, a speech
      recogniser's JSON, a table, or plain text.
    </p>
    <TranscriptChoice look="main" label="Choose a transcript" onTranscript={onTranscript} />
  </section>
)
