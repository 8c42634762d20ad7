'use client'

import { type FormEvent, memo, useEffect, useId, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { focusMark, showAdded } from '@/components/ui/focus'
import { KeyButton } from '@/components/ui/KeyButton'
import type { Edit } from '@/lib/procedure/edit'
import type { Finding } from '@/lib/review/rule'
import { raiseAgain, waiverFor } from '@/lib/review/waiver'
import styles from './findings.module.css'

type Props = {
  readonly finding: Finding
  /** Number in the walk through all findings; the chosen one is shown so. */
  readonly isChosen: boolean
  readonly onPerform: (...edits: Edit[]) => void
}

/** One finding, in the margin of what it is about: what is doubtful, the remedy where there is one, and a way to let it stand. */
export const FindingNote = memo(({ finding, isChosen, onPerform }: Props) => {
  const [isWaiving, setWaiving] = useState(false)
  const [reason, setReason] = useState('')
  const id = useId()
  const note = useRef<HTMLElement>(null)
  useEffect(() => {
    if (isChosen) note.current?.scrollIntoView({ block: 'nearest' })
  }, [isChosen])
  const { rule, level, message, remedy, waived } = finding
  const perform = (from: Element, edits: readonly Edit[]) => {
    focusMark(from)
    onPerform(...edits)
    showAdded(edits)
  }
  const waive = (event: FormEvent) => {
    event.preventDefault()
    if (reason.trim() !== '') perform(event.currentTarget, [waiverFor(finding, reason.trim())])
  }
  if (waived !== undefined)
    return (
      <aside
        ref={note}
        className={styles.note}
        data-level="waived"
        data-chosen={isChosen}
        aria-label={`let stand: ${message}`}
      >
        <p>
          <b>let stand</b> {message} <i>Reason: {waived}</i>
        </p>
        <Button look="quiet" onClick={event => perform(event.currentTarget, [raiseAgain(finding)])}>
          Raise it again
        </Button>
      </aside>
    )
  return (
    <aside
      ref={note}
      className={styles.note}
      data-level={level}
      data-chosen={isChosen}
      data-rule={rule}
      aria-label={`${level}: ${message}`}
    >
      <p>
        <b>{level}</b> {message}
      </p>
      <div className={styles.row}>
        {remedy !== undefined && (
          <KeyButton keys={isChosen ? 'X' : ''} onClick={event => perform(event.currentTarget, remedy.edits)}>
            {remedy.label}
          </KeyButton>
        )}
        {!isWaiving && (
          <KeyButton look="quiet" keys={isChosen ? 'V' : ''} data-let-stand onClick={() => setWaiving(true)}>
            Let it stand…
          </KeyButton>
        )}
      </div>
      {isWaiving && (
        <form
          onSubmit={waive}
          className={styles.waive}
          onKeyDown={event => {
            if (event.key === 'Escape') {
              event.stopPropagation()
              focusMark(event.currentTarget)
              setWaiving(false)
            }
          }}
        >
          <label htmlFor={id}>Why it may stand (printed with the sheet)</label>
          {/* biome-ignore lint/a11y/noAutofocus: opened by the user to be typed into */}
          <input id={id} value={reason} autoFocus onChange={event => setReason(event.target.value)} />
          <Button type="submit" disabled={reason.trim() === ''}>
            Let it stand
          </Button>
        </form>
      )}
    </aside>
  )
})
