'use client'

import Link from 'next/link'
import { useSyncExternalStore } from 'react'
import { Button } from '@/components/ui/Button'
import type { Finding } from '@/lib/review/rule'
import styles from './bench.module.css'
import type { Session, SessionState } from './session'
import { useUnsaved, useUntaken } from './useUnsaved'

type Props = {
  readonly title: string
  readonly session: Session
  /** Undefined before the first review is done. */
  readonly findings: readonly Finding[] | undefined
  readonly isReading: boolean
  readonly isOpenElsewhere: boolean
  readonly onReading: () => void
  readonly onPublish: () => void
  readonly onSaveFile: () => void
  readonly onKeys: () => void
  readonly onNextFinding: () => void
}

const savedWords = ({ saved }: SessionState, isTyping: boolean): string => {
  if (saved.is === 'failed') return `not saved: ${saved.why}`
  if (isTyping) return 'not saved yet: a field is being written'
  return saved.is === 'saved' ? 'saved in this browser' : 'saving'
}

const findingWords = (findings: readonly Finding[] | undefined): string => {
  if (findings === undefined) return 'not reviewed yet'
  const open = findings.filter(finding => finding.waived === undefined)
  const parts = (['stop', 'fix', 'consider'] as const).flatMap(level => {
    const count = open.filter(finding => finding.level === level).length
    return count === 0 ? [] : [`${count} ${level}`]
  })
  return parts.length === 0 ? 'no findings' : parts.join(', ')
}

/** Over the three surfaces: where one is, whether it is saved, what can be done with the whole. */
export const TopBar = (props: Props) => {
  const { title, session, findings, isReading, isOpenElsewhere } = props
  // Here alone: whether it is saved changes twice an edit, and nothing else on the bench hangs on it.
  const state = useSyncExternalStore(session.subscribe, session.get, session.get)
  useUnsaved(session, state, isOpenElsewhere)
  const isTyping = useUntaken() > 0
  return (
    <header className={styles.topBar}>
      <Link href="/" className={styles.wordmark} prefetch={false}>
        Tellwright
      </Link>
      <h1 className={styles.title}>{title === '' ? 'Recording without a title' : title}</h1>
      <span
        className={styles.saved}
        role="status"
        // Each pause in typing saves: nobody needs to hear it while writing.
        aria-live={isTyping || state.history.typing !== undefined ? 'off' : 'polite'}
        data-saved={isOpenElsewhere ? 'elsewhere' : state.saved.is}
      >
        {isOpenElsewhere ? 'open in another tab: changes here are not saved' : savedWords(state, isTyping)}
      </span>
      {state.saved.is === 'failed' && <Button onClick={session.save}>Try saving again</Button>}
      <span className={styles.actions}>
        <Button disabled={state.history.past.length === 0} onClick={session.undo}>
          Undo
        </Button>
        <Button disabled={state.history.future.length === 0} onClick={session.redo}>
          Redo
        </Button>
        <Button look="quiet" title="To the next finding (F)" onClick={props.onNextFinding}>
          {findingWords(findings)}
        </Button>
        <span className="apart" role="status">
          findings: {findingWords(findings)}
        </span>
        <Button aria-pressed={isReading} onClick={props.onReading}>
          Read the sheet
        </Button>
        <Button onClick={props.onSaveFile}>Save to a file</Button>
        <Button look="main" onClick={props.onPublish}>
          Publish
        </Button>
        <Button look="quiet" aria-label="Keys in use" onClick={props.onKeys}>
          ?
        </Button>
      </span>
    </header>
  )
}
