'use client'

import { memo, type ReactNode, useEffect, useRef } from 'react'
import { FindingNote } from '@/components/findings/FindingNote'
import { Button } from '@/components/ui/Button'
import { Glyph } from '@/components/ui/Glyph'
import { Signal } from '@/components/ui/Signal'
import type { Mark } from '@/lib/procedure/mark'
import { formatTime } from '@/lib/procedure/time'
import { formatQuantity } from '@/lib/quantity/format'
import type { Finding } from '@/lib/review/rule'
import type { SheetActions } from './actions'
import { MarkEditor } from './MarkEditor'
import styles from './sheet.module.css'

type Props = {
  readonly mark: Mark
  /** Steps: number in the procedure. */
  readonly number?: number
  readonly isChosen: boolean
  readonly findings: readonly Finding[]
  readonly chosenFinding: Finding | undefined
  /** Steps it could belong to, for the editor; the same list all the time while steps stay. */
  readonly steps: readonly Mark[]
  readonly actions: SheetActions
}

const BASIS_WORDS = {
  spoken: 'spoken only',
  plate: 'plate or label',
  manual: 'manual',
  'common-practice': 'common practice',
} as const

const specLine = (mark: Mark): ReactNode => {
  const value = mark.quantity === undefined ? undefined : formatQuantity(mark.quantity)
  const second = mark.equivalent === undefined ? undefined : ` (${formatQuantity(mark.equivalent)})`
  return (
    <>
      <bdi>{mark.text}</bdi>: <b className={styles.value}>{[value, second].join('')}</b>
      {mark.reference !== undefined && <bdi> {mark.reference}</bdi>}
      {mark.basis !== undefined && (
        <small>
          {' '}
          [{BASIS_WORDS[mark.basis]}
          {mark.citation === undefined || mark.citation === '' ? '' : `, ${mark.citation}`}]
        </small>
      )}
    </>
  )
}

const lineOf = (mark: Mark): ReactNode => {
  if (mark.text.trim() === '') return <i>(no words yet)</i>
  if (mark.kind === 'spec') return specLine(mark)
  if (mark.kind === 'caution')
    return (
      <>
        <Signal level={mark.level ?? 'caution'} /> <bdi>{mark.text}</bdi>
      </>
    )
  return mark.text
}

const Pencil = ({ mark, actions }: { readonly mark: Mark; readonly actions: SheetActions }) => {
  const { pencilled } = mark
  if (pencilled === undefined) return null
  return (
    <span className={styles.pencil}>
      <i>
        pencilled, {Math.round(pencilled.confidence * 100)} %: {pencilled.reason}
      </i>
      {pencilled.question !== undefined && <b> {pencilled.question}</b>}
      <span className={styles.pencilKeys}>
        <Button look="quiet" tabIndex={-1} onClick={() => actions.perform({ do: 'keep-marks', ids: [mark.id] })}>
          Keep
        </Button>
        <Button look="quiet" tabIndex={-1} onClick={() => actions.drop(mark.id)}>
          Drop
        </Button>
      </span>
    </span>
  )
}

/** One mark on the sheet: its line, its findings in the margin, and its fields while it is chosen. */
export const SheetItem = memo(({ mark, number, isChosen, findings, chosenFinding, steps, actions }: Props) => {
  const item = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (isChosen) item.current?.scrollIntoView({ block: 'nearest' })
  }, [isChosen])
  return (
    <div
      ref={item}
      className={styles.item}
      data-kind={mark.kind}
      data-level={mark.kind === 'caution' ? (mark.level ?? 'caution') : undefined}
      data-chosen={isChosen}
      data-pencilled={mark.pencilled !== undefined}
      data-item={mark.id}
    >
      <div className={styles.line}>
        <button
          type="button"
          className={styles.choose}
          aria-pressed={isChosen}
          aria-label={`${mark.kind}${number === undefined ? '' : ` ${number}`}: ${mark.text}`}
          onClick={() => actions.choose(isChosen ? undefined : mark.id)}
        >
          {number === undefined ? <Glyph kind={mark.kind} /> : <span className={styles.number}>{number}</span>}
          <span className={styles.words} dir="auto">
            {lineOf(mark)}
          </span>
        </button>
        {mark.end > 0 && (
          <button
            type="button"
            className={styles.time}
            tabIndex={-1}
            title="Play this span"
            onClick={() => actions.playSpan(mark)}
          >
            {formatTime(mark.start)}–{formatTime(mark.end)}
          </button>
        )}
      </div>
      <Pencil mark={mark} actions={actions} />
      {findings.length > 0 && (
        <div className={styles.findings}>
          {findings.map(finding => (
            <FindingNote
              key={finding.rule + finding.message}
              finding={finding}
              isChosen={finding === chosenFinding}
              onPerform={actions.perform}
            />
          ))}
        </div>
      )}
      {isChosen && <MarkEditor mark={mark} steps={steps} actions={actions} />}
    </div>
  )
})
