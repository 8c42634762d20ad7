'use client'

import { Field } from '@/components/ui/Field'
import { KeyButton } from '@/components/ui/KeyButton'
import type { Mark } from '@/lib/procedure/mark'
import { formatTime, parseTime } from '@/lib/procedure/time'
import type { SheetActions } from './actions'
import styles from './sheet.module.css'

const exact = (seconds: number): string => {
  const whole = formatTime(seconds)
  const rest = Math.round((seconds - Math.floor(seconds + 1e-6)) * 100)
  return `${whole}.${String(Math.max(0, rest)).padStart(2, '0')}`
}

type Props = { readonly mark: Mark; readonly actions: SheetActions }

/** Where a mark begins and ends in the footage: as times, or from the playhead. */
export const EdgeFields = ({ mark, actions }: Props) => {
  // A mark of a text without times has none to show.
  const isUntimed = mark.end === 0
  const setEdge = (side: 'start' | 'end') => (typed: string) => {
    const seconds = parseTime(typed)
    if (seconds === undefined) return `“${typed}” is no time: write 83.5 or 1:23.5`
    if (side === 'start' && isUntimed) return 'write the end first'
    if (side === 'start' ? seconds >= mark.end : seconds <= mark.start)
      return side === 'start'
        ? `must be before the end, ${exact(mark.end)}`
        : `must be after the start, ${exact(mark.start)}`
    actions.perform({ do: 'change-mark', id: mark.id, to: { [side]: seconds } })
    return undefined
  }
  return (
    <div className={styles.fields}>
      <Field
        label="From"
        figures
        value={isUntimed ? '' : exact(mark.start)}
        retry={mark.end}
        onDone={setEdge('start')}
      />
      <Field label="To" figures value={isUntimed ? '' : exact(mark.end)} retry={mark.start} onDone={setEdge('end')} />
      <KeyButton keys="I" onClick={() => setEdge('start')(String(actions.now()))}>
        From the playhead
      </KeyButton>
      <KeyButton keys="O" onClick={() => setEdge('end')(String(actions.now()))}>
        To the playhead
      </KeyButton>
      <KeyButton keys="P" onClick={() => actions.playSpan(mark)}>
        Play this span
      </KeyButton>
    </div>
  )
}
