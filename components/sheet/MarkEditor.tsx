'use client'

import { Button } from '@/components/ui/Button'
import { Choice, Field } from '@/components/ui/Field'
import { KIND_KEYS, SIGNAL_LEVELS } from '@/components/ui/kinds'
import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { formatTime, parseTime } from '@/lib/procedure/time'
import type { SheetActions } from './actions'
import { changeMark, setText } from './changes'
import { Reword } from './Reword'
import { SpecFields } from './SpecFields'
import { StillFields } from './StillFields'
import styles from './sheet.module.css'

type Props = { readonly mark: Mark; readonly steps: readonly Mark[]; readonly actions: SheetActions }

/** Kinds whose words a model may propose anew; names of things and of quantities stay. */
const REWORDABLE: readonly Kind[] = ['step', 'caution', 'check', 'reason', 'symptom']

const exact = (seconds: number): string => {
  const whole = formatTime(seconds)
  const rest = Math.round((seconds - Math.floor(seconds + 1e-6)) * 100)
  return `${whole}.${String(Math.max(0, rest)).padStart(2, '0')}`
}

const Edges = ({ mark, actions }: Omit<Props, 'steps'>) => {
  const setEdge = (side: 'start' | 'end') => (typed: string) => {
    const seconds = parseTime(typed)
    if (seconds === undefined) return `“${typed}” is no time: write 83.5 or 1:23.5`
    if (side === 'start' ? seconds >= mark.end : seconds <= mark.start)
      return side === 'start'
        ? `must be before the end, ${exact(mark.end)}`
        : `must be after the start, ${exact(mark.start)}`
    actions.perform({ do: 'change-mark', id: mark.id, to: { [side]: seconds } })
    return undefined
  }
  return (
    <div className={styles.fields}>
      <Field label="From" figures value={exact(mark.start)} onDone={setEdge('start')} />
      <Field label="To" figures value={exact(mark.end)} onDone={setEdge('end')} />
      <Button onClick={() => setEdge('start')(String(actions.now()))}>From the playhead</Button>
      <Button onClick={() => setEdge('end')(String(actions.now()))}>To the playhead</Button>
      <Button onClick={() => actions.playSpan(mark)}>Play this span</Button>
    </div>
  )
}

const StepFields = ({ mark, steps, actions }: Props) => (
  <div className={styles.fields}>
    <Field
      label={`Place in the procedure (1 to ${steps.length})`}
      figures
      value={String(mark.place ?? '')}
      onDone={typed => {
        const place = Number(typed)
        if (!Number.isInteger(place) || place < 1 || place > steps.length)
          return `a whole number from 1 to ${steps.length}`
        actions.perform({ do: 'move-step', id: mark.id, place })
        return undefined
      }}
    />
    <Button
      disabled={mark.place === 1}
      onClick={() => actions.perform({ do: 'move-step', id: mark.id, place: (mark.place ?? 1) - 1 })}
    >
      Earlier
    </Button>
    <Button
      disabled={mark.place === steps.length}
      onClick={() => actions.perform({ do: 'move-step', id: mark.id, place: (mark.place ?? 1) + 1 })}
    >
      Later
    </Button>
  </div>
)

const CautionFields = ({ mark, actions }: Omit<Props, 'steps'>) => (
  <div className={styles.fields}>
    <Choice
      label="Signal word"
      value={mark.level ?? 'caution'}
      options={SIGNAL_LEVELS.map(level => [level, level] as const)}
      onChoose={level => level !== '' && actions.perform({ do: 'change-mark', id: mark.id, to: { level } })}
    />
    <Field label="Hazard" value={mark.hazard ?? ''} onDone={setText(mark, 'hazard', actions)} />
  </div>
)

const Belonging = ({ mark, steps, actions }: Props) => (
  <Choice
    label="Belongs to step"
    value={mark.step ?? ''}
    options={[
      ['', 'the one it stands by in time'] as const,
      ...steps.map((step, i) => [step.id, `${i + 1}. ${step.text.slice(0, 60)}`] as const),
    ]}
    onChoose={step => actions.perform(changeMark(mark.id, 'step', step))}
  />
)

/** The fields of the chosen mark. Every change is done when its field is left, and can be taken back. */
export const MarkEditor = ({ mark, steps, actions }: Props) => (
  <section className={styles.editor} aria-label={`Fields of this ${mark.kind}`}>
    <Field
      label={mark.kind === 'spec' ? 'Name of the quantity' : 'What the sheet says'}
      value={mark.text}
      rows={mark.kind === 'spec' || mark.kind === 'tool' || mark.kind === 'material' ? 1 : 2}
      onDone={text => {
        actions.perform({ do: 'change-mark', id: mark.id, to: { text: text.replace(/\s+/g, ' ').trim() } })
        return undefined
      }}
    />
    {mark.said !== '' && (
      <p className={styles.said}>
        Said: <q>{mark.said}</q>
      </p>
    )}
    {REWORDABLE.includes(mark.kind) && <Reword mark={mark} actions={actions} />}
    {mark.kind === 'step' && <StepFields mark={mark} steps={steps} actions={actions} />}
    {mark.kind === 'step' && <StillFields mark={mark} actions={actions} />}
    {mark.kind === 'caution' && <CautionFields mark={mark} actions={actions} />}
    {mark.kind === 'spec' && <SpecFields mark={mark} actions={actions} />}
    {(mark.kind === 'tool' || mark.kind === 'material') && (
      <div className={styles.fields}>
        <Field label="Price, if it was said" value={mark.price ?? ''} onDone={setText(mark, 'price', actions)} />
      </div>
    )}
    <div className={styles.fields}>
      <Choice
        label="Kind"
        value={mark.kind}
        options={KIND_KEYS.map(({ kind, key }) => [kind, `${kind} (${key.toUpperCase()})`] as const)}
        onChoose={kind => kind !== '' && actions.perform({ do: 'change-mark', id: mark.id, to: { kind } })}
      />
      {mark.kind !== 'step' && <Belonging mark={mark} steps={steps} actions={actions} />}
    </div>
    <Edges mark={mark} actions={actions} />
    <div className={styles.fields}>
      {mark.pencilled !== undefined && (
        <Button look="main" onClick={() => actions.perform({ do: 'keep-marks', ids: [mark.id] })}>
          Keep this mark
        </Button>
      )}
      <Button onClick={() => actions.drop(mark.id)}>
        {mark.pencilled === undefined ? 'Rub this mark out' : 'Drop this mark'}
      </Button>
      <Button look="quiet" onClick={() => actions.choose(undefined)}>
        Done
      </Button>
    </div>
  </section>
)
