'use client'

import { useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Dialog } from '@/components/ui/Dialog'
import { Field } from '@/components/ui/Field'
import type { OpenFootage } from '@/lib/footage/open'
import type { Edit } from '@/lib/procedure/edit'
import type { Project } from '@/lib/procedure/project'
import type { Transcript } from '@/lib/procedure/recording'
import { formatTime } from '@/lib/procedure/time'
import { shiftTranscript } from '@/lib/transcript/shift'
import { AlignSection } from './AlignSection'
import styles from './bench.module.css'
import { TranscriptChoice } from './TranscriptPlace'
import type { Listening } from './useListening'

type Props = {
  readonly project: Project
  readonly opened: OpenFootage | undefined
  readonly listening: Listening
  /** Where the footage stands, seconds. */
  readonly now: number
  readonly onPerform: (...edits: Edit[]) => void
  readonly onTranscript: (transcript: Transcript, ...words: readonly string[]) => void
  readonly onClose: () => void
}

const shiftEdits = (project: Project, seconds: number, from: number, areMarksMeant: boolean): readonly Edit[] => {
  const { transcript } = project.recording
  if (transcript === null) return []
  const range = { start: from, end: Number.POSITIVE_INFINITY }
  const marks = areMarksMeant ? project.marks.filter(mark => mark.start >= from) : []
  return [
    { do: 'set-transcript', transcript: shiftTranscript(transcript, seconds, range) },
    ...marks.map(({ id, start, end }): Edit => {
      const to = { start: Math.max(0, start + seconds), end: Math.max(0.01, end + seconds) }
      return { do: 'change-mark', id, to }
    }),
  ]
}

/** The times of the talk: shifted as a whole or from the playhead on, or found anew against the sound. */
export const TimesDialog = ({ project, opened, listening, now, onPerform, onTranscript, onClose }: Props) => {
  const [seconds, setSeconds] = useState(0)
  const [isFromHere, setFromHere] = useState(false)
  const [areMarksMeant, setMarksMeant] = useState(true)
  const from = isFromHere ? now : 0
  const { transcript } = project.recording
  return (
    <Dialog title="Times of the talk" onClose={onClose}>
      {transcript !== null && (
        <AlignSection
          transcript={transcript}
          opened={opened}
          speech={listening.speech}
          isListening={listening.running !== undefined}
          hasMarks={project.marks.length > 0}
          onPerform={onPerform}
        />
      )}
      <section className={styles.times}>
        <h3>Shift the times</h3>
        <p>When the words run ahead of the footage or behind it by the same time throughout.</p>
        <div className={styles.publishOptions}>
          <Field
            label="Seconds later (negative: earlier)"
            figures
            value={String(seconds)}
            onDone={typed => {
              const value = Number(typed.trim().replace(',', '.').replace('−', '-'))
              if (!Number.isFinite(value)) return `“${typed}” is no number of seconds`
              setSeconds(value)
              return undefined
            }}
          />
          <label className={styles.tick}>
            <input type="checkbox" checked={isFromHere} onChange={event => setFromHere(event.target.checked)} />
            only from the playhead on ({formatTime(now)})
          </label>
          <label className={styles.tick}>
            <input type="checkbox" checked={areMarksMeant} onChange={event => setMarksMeant(event.target.checked)} />
            marks as well
          </label>
          <Button
            look="main"
            disabled={seconds === 0}
            onClick={() => {
              onPerform(...shiftEdits(project, seconds, from, areMarksMeant))
              onClose()
            }}
          >
            Shift by {seconds} s
          </Button>
        </div>
      </section>
      <section className={styles.times}>
        <h3>Another transcript</h3>
        <p>Takes the place of this one, such as a better recogniser's of the same footage. Marks stay as they are.</p>
        <div className={styles.publishOptions}>
          <TranscriptChoice
            look="plain"
            label="Choose another transcript"
            onTranscript={(taken, ...words) => {
              onTranscript(taken, ...words)
              onClose()
            }}
          />
        </div>
      </section>
    </Dialog>
  )
}
