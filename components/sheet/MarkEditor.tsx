'use client'

import { Choice, Field } from '@/components/ui/Field'
import { focusMark } from '@/components/ui/focus'
import { KeyButton } from '@/components/ui/KeyButton'
import { KIND_KEYS, SIGNAL_LEVELS } from '@/components/ui/kinds'
import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { hazardWords } from '@/lib/publish/words'
import type { SheetActions } from './actions'
import { changeMark, setText } from './changes'
import { EdgeFields } from './EdgeFields'
import { Reword } from './Reword'
import { SpecFields } from './SpecFields'
import { StillFields } from './StillFields'
import styles from './sheet.module.css'

type Props = { readonly mark: Mark; readonly steps: readonly Mark[]; readonly actions: SheetActions }

/** Kinds whose words a model may propose anew; names of things and of quantities stay. */
const REWORDABLE: readonly Kind[] = ['step', 'caution', 'check', 'reason', 'symptom']

const StepFields = ({ mark, steps, actions }: Props) => (
  <div className={styles.fields}>
    <Field
      label={`Place (1 to ${steps.length})`}
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
    <KeyButton
      keys="Alt ↑"
      disabled={mark.place === 1}
      onClick={() => actions.perform({ do: 'move-step', id: mark.id, place: (mark.place ?? 1) - 1 })}
    >
      Earlier
    </KeyButton>
    <KeyButton
      keys="Alt ↓"
      disabled={mark.place === steps.length}
      onClick={() => actions.perform({ do: 'move-step', id: mark.id, place: (mark.place ?? 1) + 1 })}
    >
      Later
    </KeyButton>
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
    <Field label="Hazard" value={hazardWords(mark)} onDone={setText(mark, 'hazard', actions)} />
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

/** The fields of the chosen mark. What is typed into a field is one change, and can be taken back. */
export const MarkEditor = ({ mark, steps, actions }: Props) => (
  <section className={styles.editor} data-editor aria-label={`Fields of this ${mark.kind}`}>
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
    <EdgeFields mark={mark} actions={actions} />
    <div className={styles.fields}>
      {mark.pencilled !== undefined && (
        <KeyButton
          keys="A"
          look="main"
          onClick={event => {
            // The button goes with what it did: focus stays on the mark.
            focusMark(event.currentTarget)
            actions.perform({ do: 'keep-marks', ids: [mark.id] })
          }}
        >
          Keep this mark
        </KeyButton>
      )}
      <KeyButton keys="Delete" onClick={() => actions.drop(mark.id)}>
        {mark.pencilled === undefined ? 'Rub this mark out' : 'Drop this mark'}
      </KeyButton>
      <KeyButton
        keys="Esc"
        look="quiet"
        onClick={event => {
          focusMark(event.currentTarget)
          actions.choose(undefined)
        }}
      >
        Done
      </KeyButton>
    </div>
  </section>
)
