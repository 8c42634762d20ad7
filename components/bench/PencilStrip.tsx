'use client'

import { useEffect, useId, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { countOf } from '@/lib/procedure/count'
import type { Edit } from '@/lib/procedure/edit'
import type { Mark } from '@/lib/procedure/mark'
import type { Coverage } from '@/lib/review/coverage'
import styles from './bench.module.css'
import type { Drafting } from './useDrafting'

type Props = {
  readonly marks: readonly Mark[]
  readonly hasTalk: boolean
  readonly isUntimed: boolean
  readonly drafting: Drafting
  readonly coverage: Coverage
  readonly onNextLeft: () => void
  readonly onTimes: () => void
  readonly onPerform: (...edits: Edit[]) => void
}

/** Over the talk: draft it, and keep what was drafted, all above a confidence at once. */
export const PencilStrip = ({
  marks,
  hasTalk,
  isUntimed,
  drafting,
  coverage,
  onPerform,
  onNextLeft,
  onTimes,
}: Props) => {
  const [least, setLeast] = useState(80)
  const id = useId()
  const pencilled = marks.filter(mark => mark.pencilled !== undefined)
  const sure = pencilled.filter(mark => (mark.pencilled?.confidence ?? 0) * 100 >= least)
  const draft = useRef<HTMLButtonElement>(null)
  const wasRunning = useRef(false)
  // The button pressed goes while the draft runs: focus goes to the one that stops it, and back.
  useEffect(() => {
    if (drafting.isRunning !== wasRunning.current && document.activeElement === document.body) draft.current?.focus()
    wasRunning.current = drafting.isRunning
  }, [drafting.isRunning])
  if (!hasTalk) return null
  return (
    <div className={styles.pencilStrip}>
      {drafting.isRunning ? (
        <>
          <progress value={drafting.done} max={1} aria-label="Drafting" />
          <span>{drafting.left}</span>
          <Button ref={draft} onClick={drafting.stop}>
            Stop drafting
          </Button>
        </>
      ) : (
        <Button ref={draft} look={marks.length === 0 ? 'main' : 'plain'} onClick={drafting.start}>
          {pencilled.length === 0 ? 'Draft marks from the talk' : 'Draft again'}
        </Button>
      )}
      <Button look="quiet" onClick={onTimes}>
        {isUntimed ? 'No times yet: time the text…' : 'Times…'}
      </Button>
      {drafting.problem !== undefined && <span role="alert">{drafting.problem}</span>}
      {pencilled.length > 0 && (
        <>
          <label htmlFor={id}>sure to {least} %</label>
          <input
            id={id}
            type="range"
            min={0}
            max={100}
            step={5}
            value={least}
            onChange={event => setLeast(Number(event.target.value))}
          />
          <Button
            disabled={sure.length === 0}
            onClick={() => {
              // Nothing more to keep: the button goes, or is off; focus goes to the one beside it.
              draft.current?.focus()
              onPerform({ do: 'keep-marks', ids: sure.map(mark => mark.id) })
            }}
          >
            {sure.length === 0 ? 'None is that sure' : `Keep ${countOf(sure.length, 'pencilled mark')}`}
          </Button>
        </>
      )}
      {marks.length > 0 && coverage.instructing > 0 && (
        <span className={styles.coverage}>
          <span title="of the instructing talk: what is to be done, minded, measured or looked at">
            marks cover {Math.round(coverage.share * 100)} % <span>of the instructing talk</span>
          </span>
          {coverage.left.length > 0 && (
            <Button look="quiet" onClick={onNextLeft}>
              Next of {coverage.left.length} left over
            </Button>
          )}
        </span>
      )}
    </div>
  )
}
