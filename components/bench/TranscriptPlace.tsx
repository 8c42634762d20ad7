'use client'

import { useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { FileInput } from '@/components/ui/FileInput'
import { formatProblem } from '@/lib/procedure/problem'
import type { Transcript } from '@/lib/procedure/recording'
import styles from './bench.module.css'
import { filesOfDrop, type GivenFile } from './given'

type Props = { readonly onTranscript: (transcript: Transcript) => void; readonly onNotice: (text: string) => void }

/** Where the talk will be, while there is no transcript. */
export const TranscriptPlace = ({ onTranscript, onNotice }: Props) => {
  const input = useRef<HTMLInputElement>(null)
  const [problem, setProblem] = useState<string>()
  const take = async (given: GivenFile | undefined) => {
    if (given === undefined) return
    const { sortFile } = await import('./sorting')
    const sorted = await sortFile(given)
    if (!sorted.ok) return setProblem(sorted.problems.map(formatProblem).join(' '))
    if (sorted.value.is !== 'transcript')
      return setProblem(
        `“${given.file.name}” is ${sorted.value.is === 'project' ? 'a project file' : 'footage'}, not a transcript.`,
      )
    onNotice(sorted.value.problems.map(formatProblem).join(' '))
    onTranscript(sorted.value.transcript)
  }
  return (
    <section
      className={styles.place}
      aria-label="Place for the transcript"
      onDragOver={event => event.preventDefault()}
      onDrop={event => {
        event.preventDefault()
        void filesOfDrop(event.dataTransfer).then(([first]) => take(first))
      }}
    >
      <p>
        The talk belongs here. Drop the transcript on this page, or choose it: WebVTT, SubRip, text with times, a speech
        recogniser's JSON, a table, or plain text.
      </p>
      <Button look="main" onClick={() => input.current?.click()}>
        Choose a transcript
      </Button>
      <FileInput ref={input} label="Transcript file" onFiles={([file]) => file && void take({ file })} />
      {problem !== undefined && <p role="alert">{problem}</p>}
    </section>
  )
}
