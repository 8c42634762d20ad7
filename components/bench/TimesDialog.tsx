'use client'

import { type ReactNode, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Dialog } from '@/components/ui/Dialog'
import { Field } from '@/components/ui/Field'
import type { Edit } from '@/lib/procedure/edit'
import type { Project } from '@/lib/procedure/project'
import { formatTime } from '@/lib/procedure/time'
import { shiftTranscript } from '@/lib/transcript/shift'
import styles from './bench.module.css'

type Props = {
  readonly project: Project
  /** Where the footage stands, seconds. */
  readonly now: number
  readonly onPerform: (...edits: Edit[]) => void
  readonly onClose: () => void
  /** Timing the text against the sound, where footage is open. */
  readonly children?: ReactNode
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
export const TimesDialog = ({ project, now, onPerform, onClose, children }: Props) => {
  const [seconds, setSeconds] = useState(0)
  const [isFromHere, setFromHere] = useState(false)
  const [areMarksMeant, setMarksMeant] = useState(true)
  const from = isFromHere ? now : 0
  return (
    <Dialog title="Times of the talk" onClose={onClose}>
      {children}
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
    </Dialog>
  )
}
